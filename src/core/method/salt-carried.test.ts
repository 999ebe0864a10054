import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CureStage } from '../salt/cure-piece.ts';
import { foreseeCure } from '../salt/foresee.ts';
import { saltCarried } from './salt-carried.ts';

describe('saltCarried', () => {
  it('is never more than any place has, cured, rinsed or rested', () => {
    const hours = fc.double({ min: 0.5, max: 60, noNaN: true });
    fc.assert(
      fc.property(
        hours,
        hours,
        fc.double({ min: 0.01, max: 0.2, noNaN: true }),
        fc.boolean(),
        (cured, rested, salt, skin) => {
          const stages: CureStage[] = [
            { medium: { kind: 'bath', mass: 1.5, salt }, temperature: 4, time: cured * 3600 },
            { medium: { kind: 'bath', mass: 5, salt: 0 }, temperature: 10, time: 300 },
            { medium: { kind: 'rest' }, temperature: 4, time: rested * 3600 },
          ];
          const foreseen = foreseeCure({
            piece: {
              shape: 'slab',
              size: 0.03,
              exposedFaces: 2,
              mass: 1,
              water: 0.7,
              salt: 0,
              ...(skin ? { skin: { thickness: 0.003, water: 0.5 } } : {}),
            },
            stages,
            detail: 'coarse',
          });
          const { waterPhase, waterActivity } = saltCarried(foreseen);
          for (const place of foreseen.result.profile)
            expect(waterPhase).toBeLessThanOrEqual(place.waterPhase + 1e-12);
          expect(waterActivity).toBeLessThanOrEqual(1);
        },
      ),
      { numRuns: 40 },
    );
  });
});
