/** Words of a food's name, brought to one form: case, accents, plurals, and spellings of the trade. Pure. */

/** Spellings and words of another country's kitchen, each to the one that the table has. */
const spellings: Readonly<Record<string, string>> = {
  yogurt: 'yoghurt',
  yoghourt: 'yoghurt',
  gelatin: 'gelatine',
  sulfite: 'sulphite',
  chile: 'chilli',
  chili: 'chilli',
  whiskey: 'whisky',
  broiled: 'grilled',
  filet: 'fillet',
  pastis: 'aniseed',
  minced: 'mince',
  soy: 'soya',
  soyabean: 'soybean',
  barbecued: 'grilled',
  poached: 'simmered',
  boiled: 'simmered',
  roasted: 'roast',
  hens: 'chicken',
  cockerel: 'chicken',
  sow: 'pig',
  mutton: 'mutton',
  cow: 'beef',
  oxen: 'ox',
  geese: 'goose',
  feet: 'foot',
  calves: 'calf',
  leaves: 'leaf',
  halves: 'half',
  loaves: 'loaf',
  knives: 'knife',
  hocks: 'hock',
};

/** Words that say nothing of which food it is. */
const empty = new Set([
  'of',
  'the',
  'a',
  'an',
  'and',
  'or',
  'in',
  'its',
  'for',
  'to',
  'some',
  'good',
  'quality',
]);

/** A text without case, accents and apostrophes [-]. @example plain('Pig’s Gruyère') // → 'pigs gruyere' Source: own-computation */
export const plain = (text: string): string =>
  text
    .normalize('NFKD')
    .replaceAll(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replaceAll('œ', 'oe')
    .replaceAll(/['’‘`]/g, '')
    .replaceAll(/[^a-z0-9%.]+/g, ' ')
    .replaceAll(/\.(?!\d)/g, ' ')
    .trim();

/**
 * One word in its singular, for comparing only [-]: what comes out need not be a word.
 * Assumptions: English plurals. Source: own-computation
 * @example stem('tomatoes') === stem('tomato') // → true
 */
export function stem(word: string): string {
  let w = spellings[word] ?? word;
  if (w.length > 3 && w.endsWith('s') && !/(ss|us|is|as)$/.test(w)) w = w.slice(0, -1);
  w = spellings[w] ?? w;
  if (w.length > 3 && w.endsWith('ie')) w = `${w.slice(0, -2)}y`;
  return w.length > 3 && w.endsWith('e') ? w.slice(0, -1) : w;
}

/** Words of a text that say which food it is, in one form [-]. Source: own-computation */
export const wordsOf = (text: string): string[] =>
  plain(text)
    .split(' ')
    .filter((word) => word !== '' && !empty.has(word))
    .map(stem);
