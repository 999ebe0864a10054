import { prelude } from './typst.ts';

/** The layout: a head across, what is asked and what the law asks in two columns, a foot across. */
export const specificationSheetSource = `${prelude}
#let size = d.size * 1pt
#set page(
  paper: "a4", columns: 2, margin: (x: 12mm, top: 11mm, bottom: 9mm),
  background: if d.stamp != "" { stamp(d.stamp) },
)
#set columns(gutter: 7mm)
#set text(size: size)
#set par(leading: 0.48em, spacing: 0.55em)
#let heading-line(words) = block(above: 1em, below: 0.5em, sticky: true, {
  serif(size: 1.25em, fill: oxblood, words)
  v(0.25em, weak: true)
  rule(colour: bone.darken(25%), thickness: 0.5pt)
})

#let head = block(width: 100%, {
  grid(columns: (1fr, auto), column-gutter: 6mm, align: (left + bottom, right + bottom),
    {
      set par(leading: 0.35em)
      serif(size: if d.name.len() > 60 { 14pt } else if d.name.len() > 34 { 17pt } else { 21pt }, fill: oxblood, d.name)
      v(2.6mm, weak: true)
      text(size: 9.5pt, "To " + strong-text(d.supplier) + ": " + d.what)
    },
    {
      set text(size: 9pt)
      strong-text(d.version)
      linebreak()
      text(weight: 600, fill: if d.stands { herb } else { rust }, d.standing)
      linebreak()
      text(fill: faded, d.kitchen + " · " + d.place)
    })
  v(2mm, weak: true)
  rule(colour: oxblood, thickness: 1.2pt)
  v(1.3mm, weak: true)
  set text(size: 8pt)
  set par(leading: 0.42em)
  text(weight: if d.law.holds { 400 } else { 600 }, fill: if d.law.holds { ink } else { rust }, "May it be served: " + d.law.text)
  if d.reason != "" { linebreak(); text(fill: faded, "Why this version: " + d.reason) }
  if d.demo { linebreak(); invented }
  v(1.2mm, weak: true)
  rule()
})

#let foot = block(width: 100%, {
  rule()
  v(1.2mm, weak: true)
  set text(size: 7pt)
  set par(leading: 0.42em, spacing: 0.5em)
  block(below: 0.55em, { for c in d.cautions { [◆ ] + c + [ ] }; [◆ ] + strong-text(d.deference) })
  if d.leftOff != "" { block(below: 0.5em, text(fill: ember, weight: 600, d.leftOff)) }
  grid(columns: (1fr, auto), text(fill: faded, d.printed), if d.demo { invented })
})

#place(top + left, float: true, scope: "parent", clearance: 2.5mm, head)
#place(bottom + left, float: true, scope: "parent", clearance: 2.5mm, foot)

#if d.picture != none { block(below: 0.6em, width: 100%, picture(d.picture)) }
#for g in d.groups {
  heading-line(upper(g.name.first()) + g.name.slice(1))
  grid(columns: (7.2em, 1fr), column-gutter: 0.7em, row-gutter: 0.55em,
    ..g.rows.map(r => (text(fill: faded, r.at(0)), r.at(1))).flatten())
}
#if d.refused.len() > 0 {
  heading-line("Refused if")
  for r in d.refused { block(above: 0.45em, below: 0.45em, grid(columns: (1.1em, 1fr), text(weight: 600, fill: rust, "▲"), text(weight: 600, r))) }
}
#if d.beside { colbreak(weak: true) }
#heading-line("Answered")
#if d.answers.len() == 0 { text(fill: rust, weight: 600, "No answer is written down.") }
#for a in d.answers { block(above: 0.45em, below: 0.45em, strong-text(a.word) + ", " + a.text) }

#heading-line("What the law asks of the supplier")
#if d.duties.len() == 0 {
  text(weight: 600, fill: rust, "Not known here: ask the official veterinarian and the local authority.")
} else {
  for l in d.duties {
    block(above: 0.55em, below: 0.55em, breakable: false, {
      strong-text(upper(l.about.first()) + l.about.slice(1) + ". ")
      l.text
      text(size: 0.85em, fill: faded, " " + l.cite + ".")
    })
  }
  text(size: 0.85em, fill: faded, "Checked " + d.dutiesDay + ".")
}
`;
