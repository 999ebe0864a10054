/**
 * Where to begin: an animal, its cuts by their common British names, and what becomes of each. A share stands only where
 * somebody published one (study and row of the table of yields); where nobody did there is none, and the kitchen weighs.
 */
import { yieldRow } from './yields.ts';
import type { YieldSpecies } from './yields-rows.ts';

/** What becomes of a piece: cut on or kept, run out as drip, or bone and trim that nobody keeps. */
export type Becomes = 'part' | 'drip' | 'bone and waste';

export interface TreeCut {
  readonly name: string;
  readonly becomes: Becomes;
  /** Study and row of the published share, with the row's own whole. */
  readonly figure?: readonly [study: string, part: string];
  readonly children?: readonly TreeCut[];
}

export interface StartingTree {
  readonly species: YieldSpecies;
  /** The names of cuts are common practice, no source. */
  readonly root: TreeCut;
}

type Figure = TreeCut['figure'];

const cut = (name: string, figure?: Figure, children?: readonly TreeCut[]): TreeCut => ({
  name,
  becomes: 'part',
  ...(figure === undefined ? {} : { figure }),
  ...(children === undefined ? {} : { children }),
});
const cuts = (...names: string[]) => names.map((name) => cut(name));
const waste = (name: string, figure?: Figure): TreeCut => ({
  name,
  becomes: 'bone and waste',
  ...(figure === undefined ? {} : { figure }),
});
const drip: TreeCut = { name: 'drip', becomes: 'drip' };

const broiler = (part: string): Figure => ['us-broiler-cuts', part];
const goose = (part: string): Figure => ['goose-india-dressed', part];
const gooseLive = (part: string): Figure => ['goose-india-live', part];
const turkey = (part: string): Figure => ['turkey-9kg', part];
const guinea = (part: string): Figure => ['helmeted-guinea-fowl', part];
const pig = (part: string): Figure => ['ahdb-pig', part];
const pigCut = (part: string): Figure => ['us-pig-cuts', part];
const lamb = (part: string): Figure => ['ahdb-lamb', part];
const beef = (part: string): Figure => ['ahdb-beef', part];
const rabbit = (part: string): Figure => ['rabbit-male', part];

const fish = (species: YieldSpecies, fillet: string): StartingTree => ({
  species,
  root: cut(species, undefined, [
    cut('fillets', [`fao-${species.replace(' ', '-')}`, fillet]),
    cut('head', undefined, cuts('cheeks', 'collar')),
    cut('bones'),
    ...cuts('roe', 'liver'),
    waste('guts'),
    drip,
  ]),
});

export const startingTrees: readonly StartingTree[] = [
  {
    species: 'chicken',
    root: cut('chicken', undefined, [
      cut('breast', broiler('breast'), cuts('breast fillets', 'mini fillets')),
      cut('legs', broiler('legs'), cuts('thighs', 'drumsticks')),
      cut('wings', broiler('wings')),
      cut('back', broiler('back'), cuts('oysters', 'parson’s nose')),
      cut('neck', broiler('neck'), [
        cut('neck skin', broiler('neck skin and fat')),
        cut('neck meat', broiler('neck meat')),
        cut('neck bone', broiler('neck bone')),
      ]),
      cut('giblets', broiler('giblets'), [cut('heart', broiler('heart')), ...cuts('liver', 'gizzard')]),
      ...cuts('head', 'feet'),
      drip,
    ]),
  },
  {
    species: 'spent hen',
    root: cut('spent hen', undefined, [
      cut('breast', ['cage-hens-40wk', 'breast'], [cut('breast meat', ['cage-hens-40wk', 'breast meat'])]),
      ...cuts('legs', 'wings', 'back'),
      cut('neck', ['us-stewing-hen', 'neck']),
      cut('giblets', ['us-stewing-hen', 'giblets'], cuts('liver', 'heart', 'gizzard', 'unlaid eggs')),
      ...cuts('head', 'feet'),
      drip,
    ]),
  },
  {
    species: 'duck',
    root: cut('duck', undefined, [
      ...cuts('breasts', 'legs', 'wings', 'back', 'loose fat'),
      cut(
        'neck and giblets',
        ['us-duck', 'neck and giblets'],
        [cut('liver', ['us-duck', 'liver']), ...cuts('neck', 'heart', 'gizzard')],
      ),
      ...cuts('head', 'tongue', 'feet'),
      drip,
    ]),
  },
  {
    species: 'goose',
    root: cut('goose', undefined, [
      cut('breast', goose('breast')),
      cut('drumsticks', goose('drumsticks')),
      cut('thighs', goose('thighs')),
      cut('wings', goose('wings')),
      cut('back', goose('back')),
      cut('neck', goose('neck'), [
        cut('neck skin', ['goose-turkey-tissues', 'neck skin']),
        ...cuts('neck meat', 'neck bone'),
      ]),
      cut('loose fat', ['kars-geese', 'abdominal fat']),
      cut(
        'giblets',
        ['goose-assam-live', 'giblets'],
        [
          cut('liver', ['kars-geese', 'liver']),
          cut('heart', ['kars-geese', 'heart']),
          cut('gizzard', ['kars-geese', 'gizzard']),
        ],
      ),
      cut('head', gooseLive('head')),
      cut('feet', gooseLive('feet')),
      cut('blood', gooseLive('blood')),
      waste('feathers', gooseLive('feathers')),
      drip,
    ]),
  },
  {
    species: 'turkey',
    root: cut('turkey', undefined, [
      cut('breast', turkey('breast')),
      cut('thighs', turkey('thighs')),
      cut('drumsticks', turkey('drumsticks')),
      cut('wings', turkey('wings')),
      cut('back', turkey('back')),
      cut('neck', turkey('neck')),
      cut('giblets', undefined, cuts('liver', 'heart', 'gizzard')),
      drip,
    ]),
  },
  {
    species: 'guinea fowl',
    root: cut('guinea fowl', undefined, [
      cut('breast', guinea('breast')),
      cut('thighs', guinea('thighs')),
      cut('drumsticks', guinea('drumsticks')),
      cut('wings', guinea('wings')),
      cut('ribs', guinea('ribs')),
      cut('back', guinea('back')),
      ...cuts('neck', 'liver', 'heart', 'gizzard'),
      drip,
    ]),
  },
  {
    species: 'pig',
    root: cut('pig', undefined, [
      cut('carcass', pig('carcass'), [
        cut('leg', pigCut('leg'), cuts('chump', 'hind hock', 'hind trotters')),
        cut('loin', pigCut('loin'), [
          cut('fillet', pigCut('fillet')),
          cut('back ribs', pigCut('back ribs')),
          ...cuts('back fat', 'rind', 'kidneys'),
        ]),
        cut('belly', pigCut('belly and spare ribs'), [
          cut('spare ribs', pigCut('spare ribs')),
          ...cuts('belly without ribs', 'flare fat'),
        ]),
        cut('collar', pigCut('upper shoulder')),
        cut('hand', pigCut('lower shoulder'), cuts('fore hock', 'fore trotters')),
        ...cuts('tail'),
        drip,
      ]),
      cut('head', pig('head'), cuts('ears', 'cheeks', 'snout', 'brains')),
      cut('tongue', pig('tongue')),
      cut('jowls', pig('jowls')),
      cut('blood', pig('blood')),
      cut('liver', pig('liver')),
      cut('heart', pig('heart')),
      cut('lungs and windpipe', pig('lungs and trachea')),
      cut('spleen', pig('spleen')),
      cut('skirt', pig('skirt')),
      cut('caul', pig('caul fat')),
      cut('stomach', pig('stomach')),
      cut('small intestines', pig('small intestines')),
      cut('large intestines', pig('large intestines')),
      cut('mesentery fat', pig('intestinal fat')),
      waste('gut contents', pig('gut contents')),
      waste('hair and hooves', pig('hair scrapings and hooves')),
      drip,
    ]),
  },
  {
    species: 'lamb',
    root: cut('lamb', undefined, [
      cut('carcass', lamb('carcass'), [
        ...cuts('leg', 'chump', 'loin', 'best end', 'middle neck', 'scrag', 'shoulder', 'breast', 'shanks'),
        drip,
      ]),
      cut('kidneys', lamb('kidneys')),
      cut('suet', lamb('kidney knob and channel fat')),
      cut('head with tongue', lamb('head with tongue'), cuts('tongue', 'cheeks')),
      cut('liver', lamb('liver')),
      cut('heart', lamb('heart')),
      cut('lungs, windpipe and sweetbreads', lamb('lungs, trachea and sweetbreads')),
      cut('skirt', lamb('skirt')),
      cut('caul', lamb('caul fat')),
      cut('stomachs', lamb('stomachs')),
      cut('intestines', lamb('intestines')),
      cut('feet', lamb('feet')),
      cut('tail', lamb('tail')),
      cut('blood', lamb('blood')),
      waste('fleece and pelt', lamb('fleece and pelt')),
      waste('gut contents', lamb('gut contents')),
      drip,
    ]),
  },
  {
    species: 'beef',
    root: cut('steer', undefined, [
      cut('carcass', beef('carcass'), [
        cut(
          'forequarter',
          undefined,
          cuts('neck and clod', 'chuck and blade', 'fore rib', 'thin rib', 'brisket', 'shin'),
        ),
        cut(
          'hindquarter',
          undefined,
          cuts('rump', 'sirloin', 'fillet', 'flank', 'topside', 'silverside', 'thick flank', 'leg'),
        ),
        drip,
      ]),
      cut('tongue', beef('tongue')),
      cut('head and cheek meat', beef('head and cheek meat')),
      cut('heart', beef('heart')),
      cut('liver', beef('liver')),
      cut('kidneys', beef('kidneys')),
      cut('suet', beef('kidney knob and channel fat')),
      cut('tail', beef('tail')),
      cut('skirt', beef('skirt')),
      cut('sweetbreads', beef('sweetbreads')),
      cut('stomachs', beef('stomachs')),
      cut('feet', beef('feet')),
      cut('blood', beef('blood')),
      waste('hide', beef('hide')),
      waste('gut contents', beef('gut contents')),
      drip,
    ]),
  },
  {
    species: 'rabbit',
    root: cut('rabbit', undefined, [
      cut('hind legs', rabbit('hind legs')),
      cut('saddle', rabbit('saddle'), cuts('loins', 'flaps', 'kidneys')),
      cut('forelegs', rabbit('forelegs')),
      cut('neck and breast', rabbit('neck and breast')),
      cut('head', ['rabbit-male-live', 'head']),
      ...cuts('liver', 'heart'),
      drip,
    ]),
  },
  {
    species: 'deer',
    root: cut('deer', undefined, [
      cut(
        'carcass',
        ['fallow-male', 'carcass'],
        [...cuts('haunch', 'saddle', 'shoulder', 'neck', 'breast', 'shanks'), drip],
      ),
      cut('pluck', ['fallow-male', 'pluck'], cuts('liver', 'heart', 'kidneys', 'lungs')),
      ...cuts('head', 'tongue'),
      waste('skin'),
      waste('guts'),
    ]),
  },
  fish('salmon', 'fillet'),
  fish('cod', 'fillet, skin on'),
  fish('haddock', 'fillet, skin on'),
  fish('mackerel', 'fillet, skin on'),
  fish('herring', 'fillet, skin on'),
  fish('flatfish', 'fillet, skin on'),
];

/**
 * The published share of a cut, in the whole that its row names [%].
 * @param cut a piece of a starting tree
 * Assumes nothing: undefined where nobody published one.
 * Checked: every figure that a tree names is in the table of yields.
 * @example publishedShare({ name: 'head', becomes: 'part', figure: ['ahdb-pig', 'head'] }).pct // → 3.95
 * Source: ahdb-pork-yield-guide
 */
export function publishedShare(cut: TreeCut) {
  return cut.figure === undefined ? undefined : yieldRow(...cut.figure);
}
