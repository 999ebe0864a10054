/** One or two steps, in the stage's own medium or a milder one, in a stage's place. */
import type { StageInput } from '../../../../contract/body.ts';

/** Media that hold a temperature well below boiling. */
export const gentleMedia = ['low-temperature steam', 'water bath', 'confit fat'] as const;
export type GentleMedium = (typeof gentleMedia)[number];

/** The stage without its temperature, in another medium where one is named: what was said of its own heat does not hold for that. */
export function inMedium(stage: StageInput, medium: GentleMedium | null): StageInput {
  if (medium === null) {
    const { mediumLog: _log, mediumC: _C, ...own } = stage;
    return own;
  }
  const { name, until, resistanceM2KW, wrapped, altitudeM } = stage;
  return {
    name,
    medium,
    until,
    ...(resistanceM2KW === undefined ? {} : { resistanceM2KW }),
    ...(wrapped === undefined ? {} : { wrapped }),
    ...(altitudeM === undefined ? {} : { altitudeM }),
  };
}

/** The steps as stages of their own, named after the one that they take the place of. */
export function inSteps(
  stage: StageInput,
  steps: readonly { readonly mediumC: number; readonly min: number }[],
  medium: GentleMedium | null,
): StageInput[] {
  const own = inMedium(stage, medium);
  const name = own.name.replace(/(, (first|then))+$/, '').slice(0, 70);
  return steps.map(({ mediumC, min }, i) => ({
    ...own,
    name: steps.length === 1 ? own.name : `${name}, ${i === 0 ? 'first' : 'then'}`,
    mediumC,
    until: { min },
  }));
}
