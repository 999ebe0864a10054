/**
 * The parts of each animal as the demo kitchen names them. Shares are of what is delivered (carcass, head, blood and
 * pluck), put together from several published breakdowns of different animals so that they sum to 100: good enough for
 * a picture of the whole animal, no yield to plan with. A part without a published share has none.
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
  ['neck', neck * (1 - 0.3924), 'kitchen'],
  ['liver', 1.29, 'menu'],
  ['heart', 0.78, 'kitchen'],
  ['gizzard', 3.58, 'menu'],
  ['body fat', 1.224, 'kitchen'],
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

export const parts: readonly Row[] = [
  ...pig,
  known('pig', 'ear', 'menu'),
  ...goose,
  known('sheep', 'heart', 'menu'),
  known('sheep', 'liver', 'menu'),
  known('sheep', 'shoulder', 'menu'),
  known('sheep', 'breast', 'kitchen'),
  ...rabbit,
  known('rabbit', 'liver', 'kitchen'),
];
