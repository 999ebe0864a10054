/**
 * The parts of each animal as the demo kitchen names them. Shares are of what is delivered (carcass, head, blood and
 * pluck), put together from several published breakdowns of different animals so that they sum to 100: good enough for
 * a picture of the whole animal, no yield to plan with. A part without a published share has none. How long a part keeps,
 * what a kilogram is worth, what is lost of it and the work it takes are invented, and no advice.
 */
import type { Part, PartInput } from '../src/contract/records.ts';

type Row = PartInput;
type Use = Part['use'];

/** Per cent of live weight → per cent of all that is listed. */
function shared(species: string, rows: readonly (readonly [name: string, live: number, use: Use])[]): Row[] {
  const total = rows.reduce((sum, [, live]) => sum + live, 0);
  return rows.map(([name, live, use]) => ({
    species,
    name,
    sharePct: Math.round((live / total) * 1e4) / 100,
    use,
  }));
}

const known = (species: string, name: string, use: Use): Row => ({ species, name, sharePct: null, use });

/** AHDB Pork yield guide, one pig of 111.5 kg: the carcass is 70.27 % of live weight. */
const carcass = 0.7027;

/**
 * Cuts, % of chilled carcass: National Pork Board / EMI Analytics 2016. Trotters and jowl: a small plant's brochure
 * (rounded); tail and neck bones: the rest of their group. Head, pluck and blood, % of live: AHDB Pork yield guide.
 */
const pig = shared('pig', [
  ['leg', 25.4 * carcass, 'menu'],
  ['loin', 23.0 * carcass, 'menu'],
  ['belly', 14.0 * carcass, 'menu'],
  ['shoulder', 10.7 * carcass, 'menu'],
  ['hand and hock', 10.8 * carcass, 'menu'],
  ['trotter', 1.7 * carcass, 'menu'],
  ['jowl', 1.7 * carcass, 'kitchen'],
  ['tail and bones', 2.9 * carcass, 'kitchen'],
  ['skin, bones and back fat', 8.8 * carcass, 'kitchen'],
  ['head', 3.95, 'menu'],
  ['tongue', 0.4, 'menu'],
  ['blood', 3.69, 'menu'],
  ['liver', 1.62, 'menu'],
  ['heart', 0.3, 'kitchen'],
  ['caul fat', 0.12, 'kitchen'],
  ['skirt', 0.38, 'kitchen'],
  ['stomach', 0.59, 'thrown away'],
  ['spleen', 0.18, 'thrown away'],
  ['lungs', 1.35, 'thrown away'],
]);

/** Adult geese, % of live: a study of 2013 (breast … wings, head, feet, fat); giblets: native Kars geese; neck skin 39.24 % of the neck: Turkish geese. */
const neck = 7.186;
const goose = shared('goose', [
  ['breast', 20.035, 'menu'],
  ['thighs', 6.386, 'menu'],
  ['drumsticks', 7.6, 'menu'],
  ['wings', 11.437, 'kitchen'],
  ['back', 14.119, 'kitchen'],
  ['neck skin', neck * 0.3924, 'menu'],
  ['neck meat and bone', neck * (1 - 0.3924), 'kitchen'],
  ['liver', 1.29, 'menu'],
  ['heart', 0.78, 'kitchen'],
  ['gizzard', 3.58, 'menu'],
  ['loose fat', 1.224, 'kitchen'],
  ['feet', 2.791, 'thrown away'],
  ['head', 4.285, 'thrown away'],
]);

/** % of the carcass with head, 22 rabbits of 2.47 kg: the four cuts sum to 100. */
const rabbit = shared('rabbit', [
  ['hind legs', 30.6, 'menu'],
  ['saddle', 28.8, 'menu'],
  ['forelegs', 21.9, 'menu'],
  ['neck and breast', 18.7, 'kitchen'],
]);

const named: readonly Row[] = [
  ...pig,
  known('pig', 'ear', 'menu'),
  ...goose,
  known('sheep', 'leg', 'menu'),
  known('sheep', 'shoulder', 'menu'),
  known('sheep', 'loin', 'menu'),
  known('sheep', 'best end', 'menu'),
  known('sheep', 'breast', 'kitchen'),
  known('sheep', 'neck', 'kitchen'),
  known('sheep', 'heart', 'menu'),
  known('sheep', 'liver', 'menu'),
  known('sheep', 'kidneys', 'kitchen'),
  ...rabbit,
  known('rabbit', 'liver', 'kitchen'),
  known('rabbit', 'kidneys', 'kitchen'),
];

/** `[class, keeps days, worth a kg in pence, trim %, cooking loss %, work on a kg in min]`. */
type Said = readonly [
  kind: NonNullable<Row['class']>,
  lifeDays: number,
  valuePerKg: number,
  trimPct?: number,
  cookingLossPct?: number,
  labourMinPerKg?: number,
];

const said: Readonly<Record<string, Said>> = {
  'pig leg': ['red meat', 5, 620, 12, 28, 6],
  'pig loin': ['red meat', 5, 950, 14, 24, 7],
  'pig belly': ['red meat', 5, 780, 6, 30, 5],
  'pig shoulder': ['red meat', 5, 640, 10, 32, 6],
  'pig hand and hock': ['red meat', 5, 420, 22, 32, 9],
  'pig trotter': ['red meat', 5, 150, 0, 20, 25],
  'pig jowl': ['red meat', 5, 520, 8, 30, 8],
  'pig tail and bones': ['fat and bone', 4, 90],
  'pig skin, bones and back fat': ['fat and bone', 4, 120],
  'pig head': ['red meat', 4, 260, 48, 30, 28],
  'pig tongue': ['offal', 3, 380, 12, 28, 10],
  'pig blood': ['blood', 2, 180, 0, 8, 5],
  'pig liver': ['offal', 2, 300, 8, 22, 6],
  'pig heart': ['offal', 3, 280, 15, 25, 8],
  'pig caul fat': ['offal', 3, 700],
  'pig skirt': ['offal', 3, 620, 10, 25, 5],
  'pig ear': ['red meat', 4, 220, 5, 25, 14],
  'goose breast': ['poultry', 4, 2_400, 4, 28, 5],
  'goose thighs': ['poultry', 4, 1_400, 3, 32, 4],
  'goose drumsticks': ['poultry', 4, 1_100, 3, 34, 4],
  'goose wings': ['poultry', 4, 450],
  'goose back': ['poultry', 3, 200],
  'goose neck skin': ['poultry', 3, 650, 38, 18, 60],
  'goose neck meat and bone': ['poultry', 3, 250],
  'goose liver': ['offal', 2, 1_500, 6, 18, 8],
  'goose heart': ['offal', 2, 800, 8, 22, 10],
  'goose gizzard': ['offal', 2, 700, 30, 28, 20],
  'goose loose fat': ['fat and bone', 5, 700, 18, 0, 6],
  'sheep leg': ['red meat', 5, 1_450, 10, 28, 5],
  'sheep shoulder': ['red meat', 5, 1_050, 8, 34, 5],
  'sheep loin': ['red meat', 5, 1_900, 12, 24, 7],
  'sheep best end': ['red meat', 5, 2_200, 15, 22, 12],
  'sheep breast': ['red meat', 5, 420, 12, 34, 9],
  'sheep neck': ['red meat', 5, 640, 6, 34, 6],
  'sheep heart': ['offal', 3, 520, 15, 24, 8],
  'sheep liver': ['offal', 2, 780, 8, 20, 6],
  'sheep kidneys': ['offal', 2, 900, 18, 20, 10],
  'rabbit hind legs': ['rabbit', 4, 1_300, 2, 30, 5],
  'rabbit saddle': ['rabbit', 4, 1_700, 8, 24, 9],
  'rabbit forelegs': ['rabbit', 4, 800, 2, 32, 6],
  'rabbit neck and breast': ['rabbit', 3, 350],
  'rabbit liver': ['offal', 2, 900, 6, 20, 8],
  'rabbit kidneys': ['offal', 2, 700],
};

export const parts: readonly Row[] = named.map((row): Row => {
  const known = said[`${row.species} ${row.name}`];
  if (known === undefined) return row;
  const [kind, lifeDays, valuePerKg, trimPct, cookingLossPct, labourMinPerKg] = known;
  return {
    ...row,
    class: kind,
    lifeDays,
    valuePerKg,
    // The chef’s own shares: what a part is worth, and half as much again for what goes on the menu.
    costShare: Math.round(valuePerKg * (row.use === 'menu' ? 1.5 : 1)),
    trimPct: trimPct ?? null,
    cookingLossPct: cookingLossPct ?? null,
    labourMinPerKg: labourMinPerKg ?? null,
  };
});
