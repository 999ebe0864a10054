import { prelude } from './typst.ts';

/** The layout: as many pages as the process needs, the answer's room kept together at the end. */
export const authorityRequestSource = `${prelude}
#set page(
  paper: "a4", margin: (x: 16mm, top: 14mm, bottom: 27mm),
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
    [◆ ] + strong-text(d.deference)
    v(1.2mm, weak: true)
    grid(columns: (1fr, auto, auto), column-gutter: 6mm,
      text(fill: faded, d.printed),
      if d.demo { invented },
      context strong-text("Page " + str(counter(page).get().first()) + " of " + str(counter(page).final().first())))
  },
)
#set text(size: 9.5pt)
#set par(leading: 0.5em, spacing: 0.6em)
#let section(words) = block(above: 1.3em, below: 0.55em, sticky: true, serif(size: 12pt, fill: oxblood, words))
#let field(label, body) = (text(fill: faded, label), body)

#grid(columns: (1fr, auto), column-gutter: 6mm, align: (left + bottom, right + bottom),
  { set par(leading: 0.35em); serif(size: if d.title.len() > 60 { 15pt } else { 19pt }, fill: oxblood, d.title) },
  { text(size: 9pt, fill: faded, d.asked) })
#v(2mm, weak: true)
#rule(colour: oxblood, thickness: 1.2pt)
#v(2mm, weak: true)
#grid(columns: (26mm, 1fr), row-gutter: 0.6em, column-gutter: 3mm,
  ..field("To", d.to),
  ..field("From", strong-text(d.kitchen) + ", " + d.place),
  ..field("Part", strong-text(d.what)),
  ..field("Dish", d.dish),
  ..field("Supplier", d.supplier),
  ..field("Specification", d.specification))
#if d.demo { block(above: 0.8em, invented) }

#block(width: 100%, above: 1.2em, below: 0.6em, inset: 3mm, stroke: 1pt + oxblood, {
  serif(size: 12pt, fill: oxblood, "The question")
  v(1.5mm, weak: true)
  text(size: 10.5pt, d.question)
})

#section("What the law’s sources say of it")
#block(below: 0.5em, text(weight: 600, fill: if d.law.holds { herb } else { rust }, upper(d.law.status.first()) + d.law.status.slice(1) + ". ") + d.law.reason)
#block(below: 0.5em, text(size: 8.5pt, fill: faded, d.law.cite))
#for n in d.notes { block(above: 0.4em, below: 0.4em, text(size: 8.5pt, "– " + n)) }

#for s in d.sections {
  section(s.name)
  if s.lines.len() == 0 { text(fill: faded, s.none) }
  if s.lines.len() == 1 { s.lines.first() }
  if s.lines.len() > 1 { for (i, l) in s.lines.enumerate() { block(above: 0.45em, below: 0.45em, grid(columns: (1.8em, 1fr), text(fill: faded, str(i + 1)), l)) } }
}

#if d.answers.len() > 0 {
  section("Answered so far")
  for a in d.answers { block(above: 0.45em, below: 0.45em, { strong-text(a.word); ", " + a.text; if a.conditions != "" { linebreak(); "Conditions: " + a.conditions } }) }
}

#let blank(label, width: 1fr) = { text(size: 8.5pt, fill: faded, label); v(4.2mm); rule(colour: faded, thickness: 0.4pt) }
#block(width: 100%, above: 1.5em, breakable: false, inset: 3.5mm, stroke: 0.8pt + ink, {
  serif(size: 12pt, "The authority’s answer")
  v(2mm, weak: true)
  grid(columns: (1fr, 1fr, 1fr, 1fr), "□ agreed", "□ agreed on conditions", "□ refused", "□ more is needed")
  v(3mm, weak: true)
  text(size: 8.5pt, fill: faded, "Conditions, or what more is needed")
  for _ in range(4) { v(6mm); rule(colour: faded, thickness: 0.4pt) }
  v(4mm, weak: true)
  grid(columns: (1fr, 1fr, 1fr), column-gutter: 6mm, row-gutter: 4mm,
    blank("Authority"), blank("Name and office"), blank("Reference"),
    blank("Date"), blank("Holds until"), blank("Signature"))
})
`;
