/** How a method card is made to fit its one page: first the type shrinks, then details go, least important first. */

/** What may be left off, in the order it goes. Limits, weights, cautions and the verdict never go. */
export const droppable = [
  { key: 'citations', words: 'full citations' },
  { key: 'story', words: 'the story of the dish' },
  { key: 'curves', words: 'the temperature curves' },
  { key: 'ribbon', words: 'the ribbon of times' },
  { key: 'checks', words: 'what is asked without a critical limit' },
  { key: 'bases', words: 'what the limits rest on' },
  { key: 'sections', words: 'the drawing of the piece' },
] as const;

export type Droppable = (typeof droppable)[number]['key'];

export interface Fit {
  /** Type size of the steps [pt]. */
  readonly size: number;
  readonly without: ReadonlySet<Droppable>;
  /** Longest text of what to do in a step, in characters; the rest is cut at a word and marked. */
  readonly howMost: number;
}

/** Below this the card cannot be read off a wall. */
export const smallestType = 7.5;

const sizes = [11.5, 11, 10.5, 10, 9.5, 9, 8.5, 8, smallestType];
const cuts = [400, 250, 150, 80, 0];

/** Every way to set the card, best first. */
export const fits: readonly Fit[] = [
  ...sizes.map((size) => ({ size, without: new Set<Droppable>(), howMost: Number.POSITIVE_INFINITY })),
  ...droppable.map((_, i) => ({
    size: smallestType,
    without: new Set(droppable.slice(0, i + 1).map((d) => d.key)),
    howMost: Number.POSITIVE_INFINITY,
  })),
  ...cuts.map((howMost) => ({
    size: smallestType,
    without: new Set(droppable.map((d) => d.key)),
    howMost,
  })),
];

/** What the foot of the card says about what is not on it. */
export function leftOffText(fit: Fit): string {
  const gone: string[] = droppable.filter((d) => fit.without.has(d.key)).map((d) => d.words);
  if (Number.isFinite(fit.howMost)) gone.push('the ends of long instructions (marked …)');
  return gone.length === 0
    ? ''
    : `Left off for want of room: ${gone.join('; ')}. All of it stands with the dish on screen.`;
}

/** Cuts at a word. */
export function cut(text: string, most: number): string {
  if (text.length <= most) return text;
  if (most <= 0) return text === '' ? '' : '…';
  const short = text.slice(0, most);
  const space = short.lastIndexOf(' ');
  return `${(space > most / 2 ? short.slice(0, space) : short).trimEnd()} …`;
}
