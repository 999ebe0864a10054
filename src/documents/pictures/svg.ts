/** A scene as an SVG text for paper. The screen draws the same scenes with its own colours (src/web/pictures). */
import { rampColour } from './ramp.ts';
import type { Ink, Mark, Scene, Stroke } from './scene.ts';

export type InkName = Extract<Ink, string>;
export type Palette = Readonly<Record<InkName, string>>;

/** The look's colours as values, for pictures that leave the screen (src/web/look/tokens.css has them for the screen). */
export const palettes: Readonly<Record<'day' | 'night' | 'print', Palette>> = {
  day: {
    paper: '#f3e9dc',
    bone: '#e4d5c1',
    ink: '#241a15',
    faded: '#665546',
    oxblood: '#7d1f28',
    herb: '#3f5b22',
    ember: '#8a4b00',
    rust: '#a12c12',
    slate: '#43586b',
  },
  night: {
    paper: '#19130f',
    bone: '#352a22',
    ink: '#f1e6d6',
    faded: '#b9a995',
    oxblood: '#ee9a95',
    herb: '#a3c585',
    ember: '#efad55',
    rust: '#ff8a66',
    slate: '#a9bfd1',
  },
  print: {
    paper: '#ffffff',
    bone: '#ebe1d3',
    ink: '#241a15',
    faded: '#5a4b3e',
    oxblood: '#7d1f28',
    herb: '#3f5b22',
    ember: '#8a4b00',
    rust: '#a12c12',
    slate: '#43586b',
  },
};

/** Font families as the embedded font files name themselves. */
const families = { sans: 'Source Sans 3', serif: 'Literata' } as const;

/** Escapes text for an XML text node or attribute and drops what XML 1.0 cannot hold. */
export function escapeXml(text: string): string {
  return (
    text
      // biome-ignore lint/suspicious/noControlCharactersInRegex: exactly the characters XML 1.0 forbids
      .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '')
      .replace(/&/g, '&amp;')
      .replace(/</g, '&lt;')
      .replace(/>/g, '&gt;')
      .replace(/"/g, '&quot;')
      .replace(/'/g, '&#39;')
  );
}

/** A number as short as the picture can see: hundredths of a unit. */
export function svgNumber(v: number): string {
  if (!Number.isFinite(v)) throw new RangeError(`a picture cannot hold the coordinate ${v}`);
  const rounded = Math.round(v * 100) / 100;
  return String(Object.is(rounded, -0) ? 0 : rounded);
}

/** Corners to a tenth of a unit: a picture of thousands of cells is half as long, and no eye sees the difference. */
const corner = (v: number): string => svgNumber(Math.round(v * 10) / 10);

export const pointsText = (points: readonly (readonly [number, number])[]): string =>
  points.map(([x, y]) => `${corner(x)},${corner(y)}`).join(' ');

export function inkColour(ink: Ink, palette: Palette): string {
  return typeof ink === 'string' ? palette[ink] : rampColour(ink.ramp);
}

function strokeText(stroke: Stroke | undefined, palette: Palette): string {
  if (stroke === undefined) return '';
  const dash = stroke.dash === undefined ? '' : ` stroke-dasharray="${stroke.dash.map(svgNumber).join(' ')}"`;
  return ` stroke="${inkColour(stroke.ink, palette)}" stroke-width="${svgNumber(stroke.width)}" stroke-linejoin="round"${dash}`;
}

function fillText(fill: Ink | undefined, palette: Palette): string {
  return ` fill="${fill === undefined ? 'none' : inkColour(fill, palette)}"`;
}

const hatchId = (colour: string) => `hatch-${colour.slice(1)}`;

function markText(mark: Mark, palette: Palette): string {
  switch (mark.kind) {
    case 'circle':
      return `<circle cx="${svgNumber(mark.x)}" cy="${svgNumber(mark.y)}" r="${svgNumber(mark.r)}"${fillText(mark.fill, palette)}${strokeText(mark.stroke, palette)}/>`;
    case 'text':
      return `<text x="${svgNumber(mark.x)}" y="${svgNumber(mark.y)}" font-family="${families[mark.family ?? 'sans']}" font-size="${svgNumber(mark.size)}" font-weight="${mark.weight === 'strong' ? 600 : 400}" text-anchor="${mark.anchor ?? 'start'}" fill="${inkColour(mark.ink, palette)}">${escapeXml(mark.text)}</text>`;
    default: {
      const tag = mark.kind;
      const points = ` points="${pointsText(mark.points)}"`;
      if (mark.hatch !== true)
        return `<${tag}${points}${fillText(mark.fill, palette)}${strokeText(mark.stroke, palette)}/>`;
      const colour = inkColour(mark.fill ?? 'ink', palette);
      return `<${tag}${points} fill="url(#${hatchId(colour)})"${strokeText(mark.stroke, palette)}/>`;
    }
  }
}

function hatchesOf(scene: Scene, palette: Palette): string {
  const colours = new Set<string>();
  for (const mark of scene.marks)
    if ((mark.kind === 'polygon' || mark.kind === 'polyline') && mark.hatch === true)
      colours.add(inkColour(mark.fill ?? 'ink', palette));
  if (colours.size === 0) return '';
  const patterns = [...colours].map(
    (colour) =>
      `<pattern id="${hatchId(colour)}" width="6" height="6" patternUnits="userSpaceOnUse"><path d="M-1.5 1.5L1.5 -1.5M0 6L6 0M4.5 7.5L7.5 4.5" stroke="${colour}" stroke-width="1" fill="none"/></pattern>`,
  );
  return `<defs>${patterns.join('')}</defs>`;
}

/**
 * A scene as one self-contained SVG text. A mark with `hatch` is filled with diagonal lines in its `fill` colour (ink
 * where it has none). Any text is data: it is escaped, never markup.
 */
export function toSvg(scene: Scene, palette: Palette = palettes.print): string {
  const w = svgNumber(scene.width);
  const h = svgNumber(scene.height);
  const marks = scene.marks.map((mark) => markText(mark, palette)).join('\n');
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${w}" height="${h}" viewBox="0 0 ${w} ${h}" role="img"><title>${escapeXml(scene.title)}</title>${hatchesOf(scene, palette)}\n${marks}\n</svg>\n`;
}
