/**
 * The demo kitchen: a small riverside dining room in an invented valley, late autumn. People, suppliers, lots, weights,
 * prices, logs: all invented for looking round, and never used as a check of anything.
 */
import type { DemoKitchen } from '../src/app/demo-shape.ts';
import { animals } from './animals/animals.ts';
import { batches } from './batches.ts';
import { bases } from './dishes/bases.ts';
import { bloodPudding } from './dishes/blood-pudding.ts';
import { brawn } from './dishes/brawn.ts';
import { ears } from './dishes/ears.ts';
import { gizzards } from './dishes/gizzards.ts';
import { gooseHead } from './dishes/goose-head.ts';
import { gooseNeck } from './dishes/goose-neck.ts';
import { heart } from './dishes/heart.ts';
import { stock } from './dishes/stock.ts';
import { trotter } from './dishes/trotter.ts';
import { ingredients } from './ingredients.ts';
import { lots, suppliers } from './lots.ts';
import { pantry } from './pantry.ts';
import { parts } from './parts.ts';

export const demoKitchen: DemoKitchen = {
  kitchen: {
    name: 'The Withy Bed (demo)',
    place: 'GB-ENG',
    zone: 'Europe/London',
    currency: 'GBP',
    units: 'metric',
  },
  people: [
    { name: 'Wren Aldous', role: 'head chef' },
    { name: 'Ines Tarrow', role: 'cook' },
    { name: 'Tobin Rusk', role: 'cook' },
    { name: 'Maud Pellow', role: 'buyer' },
    { name: 'Ansel Grice', role: 'auditor' },
  ],
  suppliers,
  parts,
  ingredients,
  lots,
  dishes: [trotter, gooseNeck, heart, brawn, bloodPudding, gizzards, ears, stock, gooseHead, ...bases],
  batches,
  animals,
  pantry,
};
