/** How a method card is made to fit its one page: first the type shrinks, then details go, least important first. */

/** What may be left off, in the order it goes. Limits, weights, cautions and the verdict never go. */
export const droppable = [
  { key: 'salt', words: 'the drawing of the salt' },
  { key: 'ribbon', words: 'the ribbon of times' },
  { key: 'story', words: 'the story of the dish' },
  { key: 'citations', words: 'full citations' },
  { key: 'curves', words: 'the temperature curves' },
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

/** Below this the card cannot be read off a wall; below `comfortable` what nobody cooks by goes first. */
export const smallestType = 7.5;
const comfortable = 9;

/** Quarter points from 12 down. */
const sizes = Array.from({ length: 19 }, (_, i) => 12 - i / 4).filter((size) => size >= smallestType);
const cuts = [400, 250, 150, 80, 0];

const way = (size: number, dropped: number, howMost = Number.POSITIVE_INFINITY): Fit => ({
  size,
  without: new Set(droppable.slice(0, dropped).map((d) => d.key)),
  howMost,
});
const all = droppable.length;

/** Every way to set the card, roomiest first. */
export const fits: readonly Fit[] = [
  ...sizes.filter((size) => size >= comfortable).map((size) => way(size, 0)),
  ...[1, 2, 3, 4].map((dropped) => way(comfortable, dropped)),
  ...sizes.filter((size) => size < comfortable).map((size) => way(size, 4)),
  ...droppable.slice(4).map((_, i) => way(smallestType, 5 + i)),
  ...cuts.map((howMost) => way(smallestType, all, howMost)),
];

/** What the foot of the card says about what is not on it. `never`: what this card would not have had anyway. */
export function leftOffText(fit: Fit, never: ReadonlySet<Droppable> = new Set()): string {
  const gone: string[] = droppable
    .filter((d) => fit.without.has(d.key) && !never.has(d.key))
    .map((d) => d.words);
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
