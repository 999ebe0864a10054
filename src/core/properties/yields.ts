/** All published yields: what is known of what an animal gives, by whom, of how many animals. */
import { fishYields } from './yields-fish.ts';
import { pigYields } from './yields-pig.ts';
import { poultryYields } from './yields-poultry.ts';
import type { YieldRow, YieldStudy } from './yields-rows.ts';
import { ruminantYields } from './yields-ruminants.ts';
import { waterfowlYields } from './yields-waterfowl.ts';

export const yieldStudies: readonly YieldStudy[] = [
  ...poultryYields,
  ...waterfowlYields,
  ...pigYields,
  ...ruminantYields,
  ...fishYields,
];

/**
 * A published study by its id, undefined where there is none [-].
 * @param id kebab-case
 * Checked: every id is unique and found.
 * @example findYieldStudy('ahdb-pig').rows.length // → 23
 * Source: own-computation
 */
export function findYieldStudy(id: string): YieldStudy | undefined {
  return yieldStudies.find((study) => study.id === id);
}

/**
 * What a study gives for one part, with the unit of its row [%].
 * @param study id of the study
 * @param part as the study has it
 * Assumes nothing: where the study has no such row there is no figure, and none is made up.
 * Checked: every figure that a breakdown tree names is found.
 * @example yieldRow('ahdb-pig', 'head').pct // → 3.95
 * Source: ahdb-pork-yield-guide
 */
export function yieldRow(study: string, part: string): YieldRow | undefined {
  return findYieldStudy(study)?.rows.find((row) => row.part === part);
}
