import { prelude } from './typst.ts';

/** The layout of the record: tables whose heads repeat on every page. */
export const batchRecordSource = `${prelude}
#set page(
  paper: "a4", margin: (x: 14mm, top: 13mm, bottom: 27mm),
  background: if d.status.stamp != "" { stamp(d.status.stamp) },
  header: context if counter(page).get().first() > 1 {
    set text(size: 8pt, fill: faded)
    grid(columns: (1fr, auto), d.title, d.kitchen)
  },
  footer-descent: 3mm,
  footer: {
    set text(size: 7pt)
    set par(leading: 0.4em, spacing: 0.45em)
    rule()
    v(1mm, weak: true)
    for c in d.cautions { [◆ ] + c + [ ] }
    strong-text(d.deference)
    v(1.2mm, weak: true)
    grid(columns: (1fr, auto, auto), column-gutter: 6mm,
      text(fill: faded, d.printed),
      if d.demo { invented },
      context strong-text("Page " + str(counter(page).get().first()) + " of " + str(counter(page).final().first())))
  },
)
#set text(size: 9pt)
#set par(leading: 0.5em, spacing: 0.6em)
#let section(words) = block(above: 1.6em, below: 0.7em, sticky: true, serif(size: 13pt, fill: oxblood, words))
#let cell-head(words) = text(size: 8pt, weight: 600, fill: faded, words)
#set table.cell(breakable: false)
#set table(stroke: (x, y) => (bottom: 0.4pt + bone.darken(15%)), inset: (x: 1.2mm, y: 1.1mm), align: left + top)

#grid(columns: (1fr, auto), column-gutter: 6mm, align: (left + bottom, right + bottom),
  { set par(leading: 0.35em); serif(size: if d.dish.len() > 70 { 15pt } else { 20pt }, fill: oxblood, d.dish) },
  serif(size: 15pt, d.code))
#v(2.2mm, weak: true)
#rule(colour: oxblood, thickness: 1.2pt)
#v(1.5mm, weak: true)
#grid(columns: (1fr, auto), column-gutter: 6mm,
  {
    block(below: 0.5em, d.made)
    block(below: 0.5em, d.started)
    block(below: 0.5em, d.what)
  },
  align(right, {
    text(weight: 600, fill: if d.status.good { herb } else { rust }, d.status.word)
    linebreak()
    text(fill: faded, d.kitchen + " · " + d.place)
    if d.demo { linebreak(); invented }
  }))
#if d.blocking.len() > 0 {
  block(width: 100%, above: 0.8em, inset: 2mm, stroke: 0.8pt + rust, {
    text(weight: 600, fill: rust, "Stands in the way of closing it")
    for b in d.blocking { linebreak(); [▲ ] + b }
  })
}

#section("Lots")
#if d.lots.len() == 0 { text(fill: rust, weight: 600, "No lots named: this batch cannot be traced back.") } else {
  table(columns: (auto, 1.6fr, 1.2fr, auto, auto, auto, 1.2fr),
    table.header(..("Lot", "What", "From", "Weight", "Arrived", "At", "Note").map(cell-head)),
    ..d.lots.flatten().map(c => [#c]))
}

#section("Readings")
#let mark(holds) = if holds == "in" { text(fill: herb, weight: 600, "● in") } else if holds == "out" { text(fill: rust, weight: 600, "▲ OUT") } else if holds == "missing" { text(fill: ember, weight: 600, "○ missing") } else { text(fill: faded, "no limit") }
#let maybe-struck(row, words) = if row.struck { strike(words) } else { words }
#table(columns: (8mm, 1.7fr, 1.05fr, 1.15fr, 16mm, 1.2fr, 1.3fr),
  table.header(..("Line", "What", "Value", "Limit", "Holds", "Who and when", "Note").map(cell-head)),
  ..d.steps.filter(s => s.rows.len() > 0).map(s => (
    // A header of its own, so that it never stands alone at the foot of a page, and stands again at the head of the next.
    table.header(level: 2, table.cell(colspan: 7, inset: (x: 1.2mm, top: 2.2mm, bottom: 1mm), text(weight: 600, s.n + "  " + s.name))),
    ..s.rows.map(r => (
      text(fill: faded, r.line),
      [#r.what],
      maybe-struck(r, text(weight: 600, r.value)),
      [#r.limit],
      mark(r.holds),
      [#r.by],
      [#r.note],
    )).flatten(),
  )).flatten())

#let judged(l) = if l.judgements.len() == 0 { block(text(weight: 600, fill: rust, "Judged by no rule: unknown.")) } else {
  table(columns: (1.3fr, 24mm, 19mm, 17mm, 2fr),
    table.header(..("Rule", "Verdict", "Found", "Limit", "Why, and source").map(cell-head)),
    ..l.judgements.map(j => (
      { [#j.title]; linebreak(); text(size: 7.5pt, fill: faded, j.kind) },
      text(weight: 600, fill: if j.holds { herb } else { rust }, if j.holds { "● " } else { "▲ " } + j.word),
      [#j.value],
      [#j.limit],
      { [#j.why]; if j.at != "" { [ (] + j.at + [)] }; linebreak(); text(size: 7.5pt, fill: faded, j.source) },
    )).flatten())
}

#if d.logs.len() > 0 {
  section("Core logs")
  for l in d.logs {
    block(width: 100%, breakable: l.judgements.len() + l.warnings.len() > 8, below: 1.4em, {
      text(weight: 600, l.name) + if l.step != "" { text(fill: faded, "  for step: " + l.step) }
      linebreak()
      text(size: 8pt, fill: faded, l.about)
      for w in l.warnings { linebreak(); text(size: 8pt, fill: ember, "Told when read: " + w) }
      block(above: 0.6em, below: 0.4em, picture(l.picture))
      text(size: 7pt, fill: faded, "SHA-256 of the file as it came: " + l.sha256)
      judged(l)
    })
  }
}

#section("Decisions")
#if d.decisions.len() == 0 { text(fill: faded, "None: nothing was decided about a limit.") } else {
  table(columns: (19mm, 1fr, 1.2fr, 19mm, 2.2fr, 18mm),
    table.header(..("When", "Step", "About", "Decided", "Why", "Who").map(cell-head)),
    ..d.decisions.flatten().map(c => [#c]))
}

#block(width: 100%, breakable: false, above: 1.8em, {
  serif(size: 13pt, fill: oxblood, "Closing")
  v(0.8em, weak: true)
  text(weight: 600, fill: if d.status.good { herb } else { rust }, d.status.word)
  if d.closingNote != "" { block(above: 0.6em, d.closingNote) }
  block(above: 0.8em, text(size: 7.5pt, fill: faded, d.journal.before + " " + box(d.journal.hash) + d.journal.after))
})
`;
