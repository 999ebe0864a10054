/**
 * What a kitchen means by the small amounts that it does not weigh. All of it common practice, no source: a guess that is
 * shown as one, to be weighed once.
 */

export interface SmallAmount {
  /** As it is said: 'a pinch'. */
  readonly words: string;
  /** Of what is dry or solid [g]; null: it is only said of liquids. */
  readonly g: number | null;
  /** Of what is poured [ml]; null: it is only said of what is dry. */
  readonly ml: number | null;
}

/** Words for a small amount, singular. Source: common-practice. Confidence: common practice. */
export const smallAmounts: Readonly<Record<string, SmallAmount>> = {
  pinch: { words: 'a pinch', g: 0.3, ml: null },
  dash: { words: 'a dash', g: 0.3, ml: 0.6 },
  splash: { words: 'a splash', g: null, ml: 5 },
  drizzle: { words: 'a drizzle', g: null, ml: 5 },
  glug: { words: 'a glug', g: null, ml: 15 },
  drop: { words: 'a drop', g: null, ml: 0.05 },
  glass: { words: 'a glass', g: null, ml: 150 },
  shot: { words: 'a shot', g: null, ml: 25 },
  knob: { words: 'a knob', g: 15, ml: null },
  handful: { words: 'a handful', g: 20, ml: null },
  turn: { words: 'a turn of the mill', g: 0.1, ml: null },
  grind: { words: 'a turn of the mill', g: 0.1, ml: null },
  grating: { words: 'a grating', g: 0.1, ml: null },
  scrape: { words: 'a scrape', g: 0.1, ml: null },
  sprig: { words: 'a sprig', g: 1, ml: null },
};

/** Weights of pieces that the published table does not have [g], by the row's id. Source: common-practice. Confidence: common practice. */
export const pieceWeights: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  'shallot-raw': { each: 25 },
  'bay-leaf-dried': { each: 0.2, leaf: 0.2 },
  'cloves-ground': { each: 0.08 },
  'black-pepper-ground': { each: 0.05 },
  'star-anise': { each: 1 },
  'garlic-raw': { head: 45, bulb: 45, each: 3 },
  'celeriac-raw': { each: 600 },
  'fennel-bulb-raw': { each: 230 },
  'streaky-bacon-cured-raw': { rasher: 20, slice: 20 },
  'smoked-bacon': { rasher: 20, slice: 20 },
  'parsley-fresh': { bunch: 60 },
  'chives-fresh': { bunch: 20 },
  'thyme-fresh': { sprig: 1, bunch: 20 },
  'rosemary-fresh': { sprig: 2, bunch: 20 },
  'lemon-juice': { each: 45 },
  'orange-juice': { each: 85 },
  'lime-juice': { each: 25 },
  'lemon-zest': { each: 6 },
  'orange-zest': { each: 12 },
  'pigs-trotter-raw': { each: 450 },
};
