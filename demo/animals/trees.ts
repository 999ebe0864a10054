/** The trees by which the demo kitchen cuts, and the shares that it gets: both invented, in the names of demo/parts.ts. */
import type { TreeNode } from '../../src/contract/breakdown.ts';
import { parts } from '../parts.ts';

type Becomes = TreeNode['becomes'];

/** `[name, per cent of what came, what becomes of it, from which piece]`. */
export type Cut = readonly [name: string, pct: number, becomes: Becomes, from?: string];

export interface Animal {
  readonly species: string;
  readonly tree: string;
  readonly cuts: readonly Cut[];
}

const step = (name: string, from?: string): Cut =>
  from === undefined ? [name, 0, 'step'] : [name, 0, 'step', from];

export const goose: Animal = {
  species: 'goose',
  tree: 'Geese, long necks',
  cuts: [
    ['breast', 25.5, 'part'],
    ['thighs', 8.6, 'part'],
    ['drumsticks', 8.8, 'part'],
    ['wings', 13.2, 'part'],
    ['back', 18.4, 'part'],
    step('neck'),
    ['neck skin', 2.3, 'part', 'neck'],
    ['neck meat and bone', 3.4, 'part', 'neck'],
    ['loose fat', 5, 'part'],
    ['liver', 1.9, 'part'],
    ['heart', 0.9, 'part'],
    ['gizzard', 3.4, 'part'],
    ['feet', 2.9, 'by-product'],
    ['head', 4.6, 'by-product'],
    ['drip', 0, 'drip'],
  ],
};

export const pig: Animal = {
  species: 'pig',
  tree: 'Pig, two sides with head and pluck',
  cuts: [
    step('sides'),
    ['leg', 22.2, 'part', 'sides'],
    ['loin', 20.1, 'part', 'sides'],
    ['belly', 12.6, 'part', 'sides'],
    ['shoulder', 9.4, 'part', 'sides'],
    ['hand and hock', 9.5, 'part', 'sides'],
    ['trotter', 1.6, 'part', 'sides'],
    ['tail and bones', 2.7, 'part', 'sides'],
    ['skin, bones and back fat', 7.9, 'part', 'sides'],
    step('whole head'),
    ['head', 4.7, 'part', 'whole head'],
    ['jowl', 1.5, 'part', 'whole head'],
    step('pluck'),
    ['tongue', 0.5, 'part', 'pluck'],
    ['liver', 2.1, 'part', 'pluck'],
    ['heart', 0.4, 'part', 'pluck'],
    ['caul fat', 0.2, 'part', 'pluck'],
    ['skirt', 0.5, 'part', 'pluck'],
    ['stomach', 0.8, 'by-product', 'pluck'],
    ['spleen', 0.2, 'by-product', 'pluck'],
    ['lungs', 1.8, 'by-product', 'pluck'],
    ['drip', 0, 'drip'],
  ],
};

export const lamb: Animal = {
  species: 'sheep',
  tree: 'Hill lamb with pluck',
  cuts: [
    ['leg', 30.6, 'part'],
    ['shoulder', 28.4, 'part'],
    ['loin', 8.9, 'part'],
    ['best end', 8.1, 'part'],
    ['breast', 12.2, 'part'],
    ['neck', 5.9, 'part'],
    ['kidneys', 0.8, 'part'],
    ['heart', 0.9, 'part'],
    ['liver', 3.3, 'part'],
    ['drip', 0, 'drip'],
  ],
};

export const rabbit: Animal = {
  species: 'rabbit',
  tree: 'Rabbit in four, with its liver',
  cuts: [
    ['hind legs', 28.6, 'part'],
    ['saddle', 26.9, 'part'],
    ['forelegs', 20.4, 'part'],
    ['neck and breast', 17.3, 'part'],
    ['liver', 4.6, 'part'],
    ['kidneys', 1.2, 'part'],
    ['drip', 0, 'drip'],
  ],
};

/** The id of a place in a tree. */
export const idOf = (name: string): string => name.replace(/[^a-z0-9 -]/g, '');

/** What a kitchen says of a part by its name, so that the tree and the list of parts agree. */
const usedAs = (species: string, name: string): TreeNode['use'] =>
  parts.find((p) => p.species === species && p.name === name)?.use ?? 'thrown away';

export const nodesOf = ({ species, cuts }: Animal): TreeNode[] => [
  {
    id: species,
    parent: null,
    name: species,
    becomes: 'step',
    class: null,
    use: 'menu',
    piecesPerAnimal: null,
  },
  ...cuts.map(([name, , becomes, from]): TreeNode => {
    const cut = becomes === 'step';
    const known = parts.find((p) => p.species === species && p.name === name);
    return {
      id: idOf(name),
      parent: from === undefined ? species : idOf(from),
      name,
      becomes,
      class: known?.class ?? null,
      use: cut ? 'menu' : usedAs(species, name),
      piecesPerAnimal: null,
    };
  }),
];
