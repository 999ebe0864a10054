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
