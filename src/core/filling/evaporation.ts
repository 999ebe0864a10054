/** What leaves a pan: water by boiling, alcohol by the treatment it gets. */
import { OutOfRange } from '../errors.ts';

/** What was done to the alcohol, in the words of the published table. */
export const alcoholTreatments = [
  'added to boiling liquid, off the heat',
  'flamed',
  'no heat, overnight',
  'baked 25 min, not stirred in',
  'simmered 15 min',
  'simmered 30 min',
  'simmered 60 min',
  'simmered 90 min',
  'simmered 120 min',
  'simmered 150 min',
] as const;
export type AlcoholTreatment = (typeof alcoholTreatments)[number];

/**
 * Share of the alcohol that stays, %, as read on four pages that quote the table alike. The width of the pan, the lid and
 * the strength of the boil move these by much; the table gives no spread.
 */
const stays: Readonly<Record<AlcoholTreatment, number>> = {
  'added to boiling liquid, off the heat': 85,
  flamed: 75,
  'no heat, overnight': 70,
  'baked 25 min, not stirred in': 45,
  'simmered 15 min': 40,
  'simmered 30 min': 35,
  'simmered 60 min': 25,
  'simmered 90 min': 20,
  'simmered 120 min': 10,
  'simmered 150 min': 5,
};

/** Where the shares come from and how they were had. */
export const alcoholBasis = {
  what: 'alcohol that stays after flaming, baking or simmering',
  source: 'usda-retention-2007',
  confidence: 'secondary',
} as const;

/**
 * Share of the alcohol that a treatment leaves [fraction of its weight].
 * Parameters: treatment, one of the ten of the table. Assumptions: stirred in and uncovered where it simmers; nothing
 * between the rows is made up. Checked: against the table, row by row.
 * @example alcoholLeft('simmered 30 min') // → 0.35
 * Source: usda-retention-2007
 */
export function alcoholLeft(treatment: AlcoholTreatment): number {
  const pct = stays[treatment];
  if (pct === undefined)
    throw new OutOfRange('alcohol', String(treatment), `one of ${alcoholTreatments.join('; ')}`);
  return pct / 100;
}
