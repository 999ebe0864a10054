/**
 * A document as the typesetter takes it: a fixed template and its data. Whatever people have typed goes in as data and is
 * set as plain text; nothing is ever spliced into the markup.
 */
import type { Kitchen } from '../contract/records.ts';
import { palettes } from './pictures/svg.ts';

export interface TypstDocument {
  /** File name without extension. */
  readonly name: string;
  readonly source: string;
  /** Read in the template as `json(bytes(sys.inputs.data))`. */
  readonly inputs: { readonly data: string };
}

/** What every printed page says about where it comes from. */
export interface PrintedFor {
  readonly kitchen: Pick<Kitchen, 'name' | 'place' | 'zone' | 'demo' | 'units'>;
  /** UTC instant of printing, given by the caller. */
  readonly printedAt: string;
}

const print = palettes.print;

/** Colours, fonts and the few pieces that all documents share. */
export const prelude = `
#let d = json(bytes(sys.inputs.data))
#let ink = rgb("${print.ink}")
#let faded = rgb("${print.faded}")
#let bone = rgb("${print.bone}")
#let oxblood = rgb("${print.oxblood}")
#let herb = rgb("${print.herb}")
#let ember = rgb("${print.ember}")
#let rust = rgb("${print.rust}")
#let slate = rgb("${print.slate}")
#set document(title: d.title, author: d.author, date: none)
#set text(font: "Source Sans 3", fallback: false, fill: ink, lang: "en", region: "gb", hyphenate: false)
#let serif(body, size: 1em, fill: ink) = text(font: "Literata", weight: 600, size: size, fill: fill, body)
#let strong-text(body) = text(weight: 600, body)
#let rule(colour: ink, thickness: 0.6pt) = line(length: 100%, stroke: thickness + colour)
#let picture(p, width: 100%) = image(bytes(p.svg), format: "svg", width: width, alt: p.alt)
#let stamp(words) = place(center + horizon, rotate(-40deg, reflow: false, box(width: 300mm, align(center, text(font: "Literata", weight: 600, size: 56pt, fill: rust.transparentize(80%), words)))))
#let invented = text(weight: 600, fill: rust, "Invented data: demo kitchen. Proves nothing about any real food.")
`;
