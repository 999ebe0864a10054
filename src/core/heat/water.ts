/** Water that crossed the surface during a stage, read from its steps. */
import { gauss3 } from '../numerics/gauss.ts';
import { hermite } from '../numerics/hermite.ts';
import type { Conduction } from './conduction.ts';
import type { StepRecord } from './record.ts';
import type { SurfaceLaw } from './surface.ts';
import type { Water } from './types.ts';

/**
 * Water that dried off, and that settled, during these steps [kg; per metre for cylinder and block, per m² for slab].
 *
 *     ∫∫ N dA dt, what dries and what settles each by itself; three Gauss points a step
 *
 * @param steps of one stage
 * @param law of its surface
 * @param body whose surface it is
 * Assumes that what settles drips off and what dries off is made good from inside. Checked: the heat it carries closes the account.
 * Source: own-computation
 */
export function waterWithin(steps: readonly StepRecord[], law: SurfaceLaw, body: Conduction): Water {
  const { exposed, area } = body;
  let lost = 0;
  let settled = 0;
  for (const { h, T0, T1, d0, d1, m0, m1 } of steps)
    for (let g = 0; g < 3; g++) {
      const s = gauss3.x[g];
      law.surround(m0 + s * (m1 - m0));
      for (let b = 0; b < exposed.length; b++) {
        const i = exposed[b];
        law.read(hermite(s, h, T0[i], T1[i], d0[i], d1[i]));
        const kg = gauss3.w[g] * h * area[b] * law.settled;
        if (kg < 0) lost -= kg;
        else settled += kg;
      }
    }
  return { lost, settled };
}

/** A body as far as its water goes: how much there is [kg, as its mass], and its mass. */
export interface Wet {
  readonly mass: number;
  readonly water: number;
}

/**
 * What dries off in each stage, no more altogether than there is [kg, as the mass].
 *
 *     lost_i ≤ water there − what the stages before it took
 *
 * @param lost in each stage, as a surface would lose it that never dries out, ≥ 0
 * @param there all that there is, ≥ 0
 * Assumes that what settled has dripped off. Checked: never more than there is, and nothing is changed where it is less (property test).
 * @example bounded([0.3, 0.5, 0.4], 0.7)[1] // → 0.4
 * Source: own-computation
 */
export function bounded(lost: readonly number[], there: number): number[] {
  let left = there;
  return lost.map((kg) => {
    const own = Math.min(kg, left);
    left -= own;
    return own;
  });
}
