import { prelude } from './typst.ts';

/** The layout of the card: a head across, two columns of steps, a foot across. */
export const methodCardSource = `${prelude}
#let size = d.size * 1pt
#set page(
  paper: "a4", columns: 2, margin: (x: 11mm, top: 10mm, bottom: 9mm),
  background: if not d.signed { stamp("DRAFT — NOT SIGNED") },
)
#set columns(gutter: 7mm)
#set text(size: size)
#set par(leading: 0.5em, spacing: 0.55em)

#let head = block(width: 100%, {
  grid(columns: (1fr, auto), column-gutter: 6mm, align: (left + bottom, right + bottom),
    {
      set par(leading: 0.35em)
      serif(size: if d.dish.len() > 60 { 14pt } else if d.dish.len() > 32 { 18pt } else { 22pt }, fill: oxblood, d.dish)
    },
    {
      set text(size: 9pt)
      strong-text(d.version) + [, ] + d.what
      linebreak()
      if d.signed { d.signature } else { text(weight: 600, fill: rust, d.signature) }
      linebreak()
      text(fill: faded, d.kitchen + " · " + d.place)
    },
  )
  v(2.2mm, weak: true)
  rule(colour: oxblood, thickness: 1.2pt)
  if d.story != "" { v(1.6mm, weak: true); text(size: 9pt, style: "normal", fill: faded, d.story) }
  v(1.4mm, weak: true)
  set text(size: 8pt)
  if d.law.holds { text(fill: faded, "May it be served: " + d.law.text) } else { text(weight: 600, fill: rust, "May it be served: " + d.law.text) }
  if d.demo { linebreak(); invented }
  if d.ribbon != none { v(2mm, weak: true); picture(d.ribbon) }
  for p in d.pictures {
    if p.section != none or p.curves != none {
      v(2mm, weak: true)
      grid(columns: (1fr, 1fr), column-gutter: 7mm, align: top,
        ..(p.section, p.curves).filter(x => x != none).zip((true, false)).map(((x, first)) => {
          if first and p.section != none {
            text(size: 8pt, strong-text(p.title) + text(fill: faded, ": to scale, at lifting out after " + p.lifted))
            linebreak()
          }
          picture(x)
        }))
    }
  }
  v(1.2mm, weak: true)
  rule()
})

#let foot = block(width: 100%, {
  rule()
  v(1.2mm, weak: true)
  set text(size: 7pt)
  set par(leading: 0.42em, spacing: 0.5em)
  if d.told.len() > 0 { block(below: 0.55em, text(fill: rust, weight: 600, for c in d.told { [▲ ] + c + [ ] })) }
  block(below: 0.55em, { for c in d.cautions { [◆ ] + c + [ ] }; [◆ ] + strong-text(d.deference) })
  set text(size: 6.4pt, fill: faded)
  if d.notes.len() > 0 {
    block(below: 0.55em, for (i, n) in d.notes.enumerate() { text(weight: 600, fill: ink, str(i + 1) + sym.space.nobreak) + n + h(0.7em) })
  }
  if d.sources.len() > 0 { block(below: 0.55em, text(weight: 600, fill: ink, "Reckoned after  ") + d.sources.join("  ·  ")) }
  set text(size: 7pt)
  if d.leftOff != "" { block(above: 0.6em, below: 0.5em, text(fill: ember, weight: 600, d.leftOff)) }
  block(above: 0.7em, grid(columns: (1fr, auto), text(fill: faded, d.printed), if d.demo { invented }))
})

#place(top + left, float: true, scope: "parent", clearance: 3mm, head)
#place(bottom + left, float: true, scope: "parent", clearance: 3mm, foot)

#let pill(l) = block(width: 100%, inset: (x: 1.6mm, y: 0.9mm), above: 0.5em, below: 0.5em, stroke: 0.8pt + oxblood, radius: 0.6mm, {
  set text(size: 0.92em)
  text(weight: 600, fill: oxblood, "LIMIT  ") + l.text
  if l.note > 0 { super(typographic: false, size: 0.7em, str(l.note)) }
})

// A step stays together unless it is so long that it might not fit a column.
#let long(s) = s.how.len() + 130 * s.limits.len() + s.checks.join("", default: "").len() + 30 * s.weights.len() > 1400

#for s in d.steps {
  block(width: 100%, below: 0.9em, breakable: long(s), grid(columns: (1.55em, 1fr), column-gutter: 0.5em,
    serif(size: 1.45em, fill: oxblood, s.n),
    {
      block(below: 0.4em, sticky: true, {
        text(weight: 600, size: 1.1em, s.name)
        if s.hands != "" { h(0.6em); text(size: 0.85em, fill: faded, s.hands) }
      })
      block(above: 0.4em, below: 0.5em, text(weight: 600, fill: slate, s.setting))
      if s.weights.len() > 0 {
        block(above: 0.4em, below: 0.5em, {
          set text(size: 0.95em)
          grid(columns: (auto, 1fr, auto, 1fr), column-gutter: (0.5em, 0.9em, 0.5em), row-gutter: 0.42em, align: (right, left, right, left),
            ..s.weights.map(w => (text(weight: 600, w.at(0)), w.at(1))).flatten())
          v(0.35em, weak: true)
          text(fill: faded, "together " + s.total)
        })
      }
      if s.how != "" { block(above: 0.4em, below: 0.5em, s.how) }
      if s.verdict != none {
        let colour = if s.verdict.colour == "herb" { herb } else if s.verdict.colour == "ember" { ember } else { rust }
        block(above: 0.4em, below: 0.5em, text(weight: 600, fill: colour, s.verdict.word + ". ") + s.verdict.text)
      }
      if s.picture != none { block(above: 0.4em, below: 0.5em, picture(s.picture)) }
      for l in s.limits { pill(l) }
      if s.checks.len() > 0 { block(above: 0.4em, below: 0.4em, text(size: 0.9em, fill: faded, s.checks.map(c => "□ " + c).join("   "))) }
    },
  ))
}
#if d.steps.len() == 0 [ #text(fill: rust, weight: 600)[No steps yet: an idea, not a method.] ]
`;
