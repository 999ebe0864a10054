/** Laying the demo's pantry: prices as they moved, labels, rates and risks, each at its moment. */
import { v7 as uuid } from 'uuid';
import type { Actor } from './app.ts';
import { plusDays } from './civil-day.ts';
import type { Event } from './demo-animals.ts';
import type { DemoMoment, DemoPantry } from './demo-shape.ts';
import { priceIngredient } from './ingredients.ts';
import { setRates } from './kitchen-rates.ts';
import { declareRisk, lookAtLabel } from './labels-and-risks.ts';

export interface PantryNames {
  readonly moment: (m: DemoMoment) => Date;
  readonly who: (name: string) => Actor;
  readonly supplier: (name: string) => string;
  readonly ingredient: (name: string) => string;
  /** The day of laying, where the kitchen is. */
  readonly today: string;
}

export function pantryEvents(names: PantryNames, pantry: DemoPantry): Event[] {
  const { moment, who, today } = names;
  const supplierOf = (name: string | null) => (name === null ? null : names.supplier(name));
  return [
    ...pantry.prices.map((p) => ({
      at: moment(p.at),
      happen: (app: Parameters<Event['happen']>[0]) =>
        priceIngredient(app, who(p.by), names.ingredient(p.ingredient), {
          id: uuid(),
          packG: p.packG,
          price: p.price,
          supplierId: supplierOf(p.supplier),
          from: plusDays(today, -p.fromDaysAgo),
          note: 'Invented.',
        }),
    })),
    ...pantry.labels.map(({ ingredient, supplier, by, at, ...said }) => ({
      at: moment(at),
      happen: (app: Parameters<Event['happen']>[0]) =>
        lookAtLabel(app, who(by), names.ingredient(ingredient), {
          id: uuid(),
          supplierId: supplierOf(supplier),
          at: moment(at).toISOString(),
          ...said,
        }),
    })),
    ...pantry.rates.map((r) => ({
      at: moment(r.at),
      happen: (app: Parameters<Event['happen']>[0]) =>
        setRates(app, who(r.by), {
          ...r.content,
          id: uuid(),
          from: plusDays(today, -r.fromDaysAgo),
          note: r.note,
        }),
    })),
    ...pantry.risks.map(({ by, at, ...risk }) => ({
      at: moment(at),
      happen: (app: Parameters<Event['happen']>[0]) => declareRisk(app, who(by), { id: uuid(), ...risk }),
    })),
  ];
}
