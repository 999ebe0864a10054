/** What an answer rests on at its surface, in words. */
import type { Basis } from '../sources.ts';
import type { StageEnd } from './march.ts';
import type { CookProblem } from './types.ts';
import type { Wet } from './water.ts';

/** Above this the water of a food boils in any kitchen but in a closed vessel [°C]. */
const boils = 102;

const assumed = (what: string): Basis => ({ what, source: 'own-assumption', confidence: 'assumption' });

/**
 * What the surface was taken to do [-]: what dries, what condenses, and what of it cannot be known.
 * @param ends of the stages, with what would dry off a surface that never dries out
 * @param wet the body's mass, and the water in it
 * @param highest temperature anywhere, ever [°C]
 * Source: own-assumption
 */
export function surfaceBasis(
  { stages, body }: CookProblem,
  ends: readonly StageEnd[],
  { mass, water }: Wet,
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
  const asWet = ends.reduce((sum, end) => sum + (end.water?.lost ?? 0), 0);
  const lost = Math.min(asWet, water);
  const share = (kg: number) => (100 * kg) / mass;
  if (exchanging.some(({ surface }) => (surface?.vapour?.activity ?? 0) > 0))
    basis.push(
      assumed(
        `the surface is taken to stay as wet as it is given to be (${share(lost).toFixed(1)} % of the weight dries off): nobody has said how fast juice reaches it. Where it dries out it gets hotter in an oven than computed, cools slower in cold air, and loses less; size and composition stay as they were`,
      ),
    );
  if (asWet > water)
    basis.push(
      assumed(
        `NOT VALID: a surface that stayed wet would lose ${share(asWet).toFixed(0)} % of the weight, and there is no more than ${share(water).toFixed(0)} % in it that could dry off: the loss is stated as all of that, and temperatures from then on are those of a wet surface that is not there`,
      ),
    );
  else if (lost > 0.35 * mass)
    basis.push(
      assumed(
        `NOT VALID: more than a third of the weight would have to dry off (${share(lost).toFixed(0)} %); no surface stays wet so long`,
      ),
    );
  return basis;
}
