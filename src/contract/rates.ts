/** What the kitchen's hour, kilowatt-hour and shelf space cost, and what the place adds to a price. Rates are only added to. */
import { z } from 'zod';
import { Id, Instant, Minor, Note, percent, Text } from './quantities.ts';

/** Machines by what they heat or cool with; their efficiency is the share of the energy paid for that reaches food. */
export const EnergyUse = z.enum(['steamer', 'oven', 'hob', 'fryer', 'water bath', 'chiller', 'freezer']);
export type EnergyUse = z.infer<typeof EnergyUse>;

export const KitchenRates = z.strictObject({
  /** First day they hold. */
  from: z.iso.date(),
  /** Pay with everything that comes on top, for an hour of each grade. */
  labour: z.array(z.strictObject({ grade: Text(40), perHour: Minor })).max(12),
  /** Minor units for a kilowatt-hour, not rounded; null where nobody has said. */
  electricityPerKwh: z.number().min(0).max(100_000).nullable(),
  gasPerKwh: z.number().min(0).max(100_000).nullable(),
  machines: z
    .array(
      z.strictObject({
        use: EnergyUse,
        fuel: z.enum(['electricity', 'gas']),
        /** Of the energy paid for, what ends in the food; of a chiller, heat moved for each unit paid for, in per cent. */
        efficiencyPct: z.number().positive().max(600),
      }),
    )
    .max(20),
  /** Film, boxes, labels: for one portion. */
  packagingPerPortion: Minor.nullable(),
  /** Rent, insurance and the like, per cent of the cost of food and hands. */
  overheadPct: z.number().min(0).max(500).nullable(),
  /** What does not change with the number of portions, for one service: to find the break-even. */
  fixedPerService: Minor.nullable(),
  /** Value-added or sales tax on food served here; whether menu prices are quoted with it. */
  vatPct: percent().nullable(),
  pricesIncludeVat: z.boolean(),
  /** Service added to the bill, per cent; null: none. */
  servicePct: percent().nullable(),
  /** Of the price without tax, what is to be left when food (and hands, if they count) is paid. */
  marginPct: z.number().min(0).max(99).nullable(),
  /** Whether that margin is taken after hands and energy, or after food alone. */
  marginAfter: z.enum(['food', 'food, hands and energy']),
  /** Menu prices end on a multiple of this. */
  priceStep: z.int().min(1).max(100_000),
});
export type KitchenRates = z.infer<typeof KitchenRates>;

/** The rates as they were entered: the newest whose day has come holds. */
export const RatesEntry = KitchenRates.extend({
  id: Id,
  recordedAt: Instant,
  by: z.string(),
  note: Note(300),
});
export type RatesEntry = z.infer<typeof RatesEntry>;
