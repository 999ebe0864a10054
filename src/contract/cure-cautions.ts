/** What is said with every cure: what salt does to bacteria and what it does not. */
import type { CureProblem, CureStageResult, SaltState } from '../core/salt/cure.ts';

/** Salt in the water phase, throughout, that UK guidance on vacuum-packed chilled food names as one controlling factor. */
const controllingSalt = 0.035;

/** Said with a piece that brine was driven into. */
export const pumpedCaution =
  'Needles carry what lives on the surface into the middle: from then on the piece is no longer clean inside. Until the brine has spread, places between the needles have less salt than reckoned here.';

const leastSalted = (state: SaltState) =>
  Math.min(state.coreWaterPhase, state.surfaceWaterPhase, state.meanWaterPhase);

/** The cautions for a computed cure, the ones that this cure calls for first. `slow`: its end with the lowest published diffusivities. */
export function cureCautions(
  stages: readonly CureStageResult[],
  problem: CureProblem,
  slow?: SaltState,
): string[] {
  const last = stages.at(-1);
  if (last === undefined) return [];
  const { end } = last;
  const pct = (x: number) => `${(Math.floor(x * 1e4) / 100).toFixed(2)} %`;
  const cautions: string[] = [];
  const least = leastSalted(end);
  const slowest = slow === undefined ? least : leastSalted(slow);
  if (least < controllingSalt)
    cautions.push(
      `The least salted place has ${pct(least)} salt in its water phase: less than the 3.5 % that counts as one controlling factor. Do not count on salt to keep this piece.`,
    );
  else if (slowest < controllingSalt)
    cautions.push(
      `If the salt is as slow as has been published, the least salted place has only ${pct(slowest)} salt in its water phase, less than the 3.5 % that counts as one controlling factor. Do not count on salt to keep this piece.`,
    );
  else
    cautions.push(
      'At least 3.5 % salt in the water phase throughout, as computed: one factor among several (time, cold, acidity, water activity, heat), against non-proteolytic Clostridium botulinum only, and only where a measurement confirms it. It does not stop Listeria or Staphylococcus aureus.',
    );
  if (end.coreWaterPhase < 0.95 * end.meanWaterPhase)
    cautions.push(
      'The core has not come to rest: it is less salted than the mean. Judge the piece by its core.',
    );
  // A rinse of minutes is no cure in the warm.
  const warm = Math.max(
    ...problem.stages.filter(({ time }) => time > 1800).map(({ temperature }) => temperature),
  );
  if (warm > 5)
    cautions.push(
      `At ${warm} °C bacteria grow inside the piece while the salt is on its way. Cure cold, at 5 °C or below.`,
    );
  if (stages.some(({ undissolvedKg }) => undissolvedKg > 0))
    cautions.push('Dry salt was left on the piece at the end of a stage; it is counted as brushed off.');
  return [
    ...cautions,
    'Salt does not cook and does not kill: a cured piece is raw and is handled as raw until it has been cooked.',
    'Brine that raw meat has lain in is raw: it is thrown away, never used again and never eaten.',
    'Computed, with a diffusivity that differs from piece to piece. Fat, bone, membranes and gaps slow the salt. Where safety rests on salt, have salt and water activity measured at the least salted place.',
    'The word of your local food authority and of a qualified person stands above this.',
  ];
}
