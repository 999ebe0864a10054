/** Bases that other dishes are made of, to a depth of three: panade → forcemeat base → terrine, stock → glaze. Invented. */
import type { DemoDish, DemoStep } from '../../src/app/demo-shape.ts';
import { line } from '../ingredients.ts';
import { coldMix, coldRoom } from '../limits.ts';

const keep = (days: number): DemoStep => ({
  kind: 'keep',
  name: 'Keep',
  how: 'Covered, labelled with its day.',
  handsMin: 3,
  asks: [coldRoom],
  maxC: 3,
  days,
  packed: 'open or covered',
});

const mix = (name: string, how: string, lines: Extract<DemoStep, { kind: 'mix' }>['lines']): DemoStep => ({
  kind: 'mix',
  name,
  how,
  handsMin: 15,
  asks: [coldMix],
  lines,
  maxC: 12,
});

const base = (
  name: string,
  species: string,
  part: string,
  story: string,
  clock: string,
  method: readonly DemoStep[],
): DemoDish => ({
  name,
  species,
  part,
  story,
  versions: [{ by: 'Wren Aldous', at: { daysAgo: 12, clock }, reason: 'First method.', method }],
});

export const bases: readonly DemoDish[] = [
  base(
    'Panade',
    'pig',
    'skin, bones and back fat',
    'Bread, cream and egg white: what holds a forcemeat together.',
    '15:00',
    [
      mix('Soak and beat', 'Crumbs into the cream, an hour cold, then the egg white, beaten smooth.', [
        line('White breadcrumbs', 400),
        line('Whipping cream, 36 % fat', 450),
        line('Egg white', 150),
      ]),
      keep(1),
    ],
  ),
  base(
    'Forcemeat base',
    'pig',
    'hand and hock',
    'Hock, back fat and panade, seasoned; other fillings begin with it.',
    '15:20',
    [
      mix('Mince and bind', 'Meat and fat through the fine plate, ice cold, salt first, then the panade.', [
        line('Hock meat', 1_400),
        line('Back fat', 250),
        { ingredient: 'Panade', g: 320 },
        line('Shallot', 60),
        line('Salt', 28),
        line('Black pepper', 5),
      ]),
      keep(1),
    ],
  ),
  base('Goose glaze', 'goose', 'neck meat and bone', 'The stock, cooked down to a fifth.', '17:00', [
    mix('Cook down', 'Skimmed, at a bare boil, to a fifth of its weight.', [
      { ingredient: 'Goose stock', g: 5_000, reduced: { toPct: 20 } },
    ]),
    keep(3),
  ]),
  base(
    'Ear and tongue terrine',
    'pig',
    'ear',
    'An idea: the forcemeat base with ear and tongue in it, brushed with glaze.',
    '17:30',
    [
      mix('Fold', 'Ear and tongue in dice, folded into the base with the glaze, cold.', [
        { ingredient: 'Forcemeat base', g: 900, declared: true },
        line('Pig’s ear', 350),
        line('Pig’s tongue', 250),
        { ingredient: 'Goose glaze', g: 60 },
        line('Juniper berries', 2),
      ]),
      keep(2),
    ],
  ),
];
