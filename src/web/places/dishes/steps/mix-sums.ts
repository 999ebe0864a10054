/** What a mix comes to, from its lines as the contract holds them. */
import type { StepOf } from '../../../../contract/steps.ts';
import { costOf, type Mixture, mixtureOf } from '../../../../core/filling/composition.ts';

export interface MixSums {
  readonly mixture: Mixture | null;
  /** Why there is no mixture: a line's composition does not sum to one. */
  readonly problem: string | null;
  /** Minor units. */
  readonly cost: number;
  readonly unpriced: readonly string[];
  readonly unknown: readonly string[];
  readonly saltUnknown: readonly string[];
  readonly allergens: readonly string[];
  /** Lines that have never said which allergens they hold. */
  readonly allergensUnknown: readonly string[];
}

export function mixSums(lines: StepOf<'mix'>['lines']): MixSums {
  const names = (indices: readonly number[]) => indices.map((i) => lines[i]?.ingredient || `line ${i + 1}`);
  const weighed = lines.map((l) => ({
    mass: l.g / 1000,
    composition: l.composition,
    salt: l.salt,
    pricePerKg: l.pricePerKg,
  }));
  const { cost, missing } = costOf(weighed);
  const used = lines.filter((l) => l.g > 0);
  const common = {
    cost,
    unpriced: names(missing),
    allergens: [...new Set(used.flatMap((l) => l.allergens ?? []))].sort(),
    allergensUnknown: used.filter((l) => l.allergens === undefined).map((l) => l.ingredient),
  };
  try {
    const mixture = mixtureOf(weighed);
    return {
      ...common,
      mixture,
      problem: null,
      unknown: names(mixture.missing),
      saltUnknown: names(mixture.saltMissing),
    };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    const line = /lines\[(\d+)\]/.exec(error.message)?.[1];
    const name = line === undefined ? 'A line' : names([Number(line)])[0]!;
    return {
      ...common,
      mixture: null,
      problem: `${name}: ${error.message.replace(/^lines\[\d+\]\.composition(\.\w+)?: /, '')}`,
      unknown: [],
      saltUnknown: [],
    };
  }
}
