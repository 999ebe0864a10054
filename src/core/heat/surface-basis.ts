/** What an answer rests on at its surface, in words. */
import type { Basis } from '../sources.ts';
import type { StageEnd } from './march.ts';
import type { CookProblem } from './types.ts';

/** Above this the water of a food boils in any kitchen but in a closed vessel [°C]. */
const boils = 102;

const assumed = (what: string): Basis => ({ what, source: 'own-assumption', confidence: 'assumption' });

/**
 * What the surface was taken to do [-]: what dries, what condenses, and what of it cannot be known.
 * @param mass of the body [kg, as the water]
 * @param highest temperature anywhere, ever [°C]
 * Source: own-assumption
 */
export function surfaceBasis(
  { stages, body }: CookProblem,
  ends: readonly StageEnd[],
  mass: number,
  highest: number,
): Basis[] {
  const basis: Basis[] = [];
  const wet = body.layers.some(
    ({ material }) => 'composition' in material && material.composition.water > 0.1,
  );
  if (wet && highest > boils)
    basis.push(
      assumed(
        `parts of the piece get to ${highest.toFixed(0)} °C, where its own water would boil and hold them: neither that nor a crust is computed, and it heats faster here than it will`,
      ),
    );
  const dry = stages.filter(({ surface }) => surface?.vapour === undefined);
  if (dry.length > 0)
    basis.push(
      assumed(
        'no evaporation, no loss of juice, no change of size: a surface that dries in hot air stays cooler than computed',
      ),
    );
  const exchanging = stages.filter(({ surface }) => surface?.vapour !== undefined);
  if (exchanging.length === 0) return basis;
  basis.push({
    what: `${exchanging.map((s) => s.name).join(', ')}: vapour that condenses on the surface or dries off it, and its heat, by the analogy of heat and mass transfer (Le 0.865) through a stagnant film`,
    source: 'chilton-colburn-1934',
    confidence: 'memory',
  });
  const lost = ends.reduce((sum, { water }) => sum + (water?.lost ?? 0), 0);
  if (exchanging.some(({ surface }) => (surface?.vapour?.activity ?? 0) > 0))
    basis.push(
      assumed(
        `the surface is taken to stay as wet as it is given to be (${((100 * lost) / mass).toFixed(1)} % of the weight dries off): nobody has said how fast juice reaches it. Where it dries out it gets hotter in an oven than computed, cools slower in cold air, and loses less; size and composition stay as they were`,
      ),
    );
  if (lost > 0.35 * mass)
    basis.push(
      assumed(
        `NOT VALID: more than a third of the weight would have to dry off (${((100 * lost) / mass).toFixed(0)} %); no surface stays wet so long`,
      ),
    );
  return basis;
}
