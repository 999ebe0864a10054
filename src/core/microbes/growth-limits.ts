/** Can it grow at all: a food and a temperature against the tabulated limits of an organism. */
import { findGrowthOrganism } from '../properties/organisms-growth.ts';
import { type GrowthLimits, growthLimits } from '../properties/organisms-growth-limits.ts';
import { formCorners } from './growth-rate.ts';

export interface GrowthPlace {
  readonly C?: number;
  readonly pH?: number;
  readonly waterActivity?: number;
  /** Mass fraction of salt in the water phase. */
  readonly waterPhaseSalt?: number;
}

type Factor = keyof GrowthPlace;

/** One factor against the widest of the tabulated limits. */
export interface FactorLimit {
  readonly factor: Factor;
  readonly value: number;
  /** null: no limit on that side. */
  readonly low: number | null;
  readonly high: number | null;
  readonly growthPossible: boolean;
  /** Keys of the bibliography of all tables looked at. */
  readonly sources: readonly string[];
}

function range(factor: Factor, row: GrowthLimits): readonly [number, number] | undefined {
  switch (factor) {
    case 'C':
      return row.C;
    case 'pH':
      return row.pH;
    case 'waterActivity':
      return row.waterActivity === undefined ? undefined : [row.waterActivity, Number.POSITIVE_INFINITY];
    case 'waterPhaseSalt':
      return row.waterPhaseSalt === undefined ? undefined : [Number.NEGATIVE_INFINITY, row.waterPhaseSalt];
  }
}

const factors: readonly Factor[] = ['C', 'pH', 'waterActivity', 'waterPhaseSalt'];
const finite = (x: number) => (Number.isFinite(x) ? x : null);

/**
 * Each stated factor against the widest limits published for an organism [°C, pH, water activity, mass fraction].
 *
 *     growth possible by a factor where lowest ≤ value ≤ highest over all tables, and over the range of its rates
 *
 * @param organism id, e.g. `listeria-monocytogenes`
 * @param place any of temperature [°C], pH, water activity, salt in the water phase (mass fraction)
 * Assumes that each factor stops growth by itself; factors together may stop it sooner, which is not counted on.
 * Checked by hand against both tables.
 * @example checkGrowthLimits('salmonella', { C: 4 })[0].growthPossible // → true
 * Source: icmsf-1996
 * Source: fda-hazards-guide-growth
 */
export function checkGrowthLimits(organism: string, place: GrowthPlace): FactorLimit[] {
  const rows = growthLimits.filter((row) => row.organism === organism);
  const sets = findGrowthOrganism(organism)?.sets ?? [];
  return factors.flatMap((factor): FactorLimit[] => {
    const value = place[factor];
    if (value === undefined) return [];
    const ranges = rows.flatMap((row) => {
      const found = range(factor, row);
      return found === undefined ? [] : [{ found, source: row.source }];
    });
    for (const set of sets) {
      const corners = formCorners(set.temperature);
      if (factor === 'C')
        ranges.push({ found: [corners[0]!, corners.at(-1)!], source: set.basis[0]!.source });
      const effect = set.effect;
      if (effect === undefined) continue;
      const source = effect.basis[0]!.source;
      if (factor === 'pH' && effect.pH !== undefined)
        ranges.push({ found: [effect.pH.min, effect.pH.max], source });
      if (factor === 'waterActivity')
        ranges.push({ found: [effect.waterActivity.min, Number.POSITIVE_INFINITY], source });
    }
    if (ranges.length === 0) return [];
    const low = Math.min(...ranges.map(({ found }) => found[0]));
    const high = Math.max(...ranges.map(({ found }) => found[1]));
    return [
      {
        factor,
        value,
        low: finite(low),
        high: finite(high),
        growthPossible: !(value < low || value > high),
        sources: [...new Set(ranges.map(({ source }) => source))],
      },
    ];
  });
}
