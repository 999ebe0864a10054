/** A fill step in the engine's terms: what it holds, how it comes out, and the cook step that heats it. Pure. */
import type { Method, StepOf } from '../../../../contract/steps.ts';
import { type Capacity, capacityOf } from '../../../../core/filling/capacity.ts';
import { type Filled, filledShape } from '../../../../core/filling/casing.ts';
import { density, normalised } from '../../../../core/properties/food-components.ts';
import { mixSums } from './mix-sums.ts';

export type Fill = StepOf<'fill'>;
type Cook = StepOf<'cook'>;

/** Of a filling nobody has described: between lean meat and a creamy forcemeat, assumed and said [kg/m³]. */
export const ASSUMED_DENSITY = 1_040;
export const MIXED_AT_C = 5;

/** The mix that goes into it: the last before it. */
export function mixBefore(method: Method, step: Fill): StepOf<'mix'> | undefined {
  const at = method.findIndex((s) => s.id === step.id);
  return method.slice(0, at === -1 ? undefined : at).findLast((s): s is StepOf<'mix'> => s.kind === 'mix');
}

export function fillingDensity(method: Method, step: Fill): { rho: number; known: boolean } {
  const mix = mixBefore(method, step);
  const sums = mix === undefined ? null : mixSums(mix.lines);
  if (sums === null || sums.unknown.length > 0 || sums.mixture?.composition == null)
    return { rho: ASSUMED_DENSITY, known: false };
  return { rho: density(normalised(sums.mixture.composition), MIXED_AT_C), known: true };
}

export const metres = (profile: Fill['profile']) =>
  profile.map((p) => ({ at: p.atMm / 1000, diameter: p.diameterMm / 1000 }));

export type Held =
  | { readonly ok: true; readonly capacity: Capacity; readonly cold: Filled; readonly hot: Filled }
  | { readonly ok: false; readonly problem: string };

/** What the casing holds, and how it comes out with what is written: as filled, and once it has swollen. */
export function held(step: Fill, rho: number): Held {
  const casing = { profile: metres(step.profile), skin: step.skinMm / 1000, density: rho };
  const mass = step.gramsPerPiece / 1000;
  try {
    return {
      ok: true,
      capacity: capacityOf({ ...casing, headSpace: step.headSpacePct / 100 }),
      cold: filledShape({ ...casing, mass, swelling: 0 }),
      hot: filledShape({ ...casing, mass, swelling: (step.swellPct ?? 0) / 100 }),
    };
  } catch (error) {
    if (error instanceof RangeError || error instanceof TypeError)
      return { ok: false, problem: error.message };
    throw error;
  }
}

const tenths = (m: number) => Math.round(m * 10_000) / 10;

/** The outside as it goes into the heat, in the contract's terms, from 0: as drawn, or fatter where too much was put in. */
export function shapeToCook(step: Fill, cold: Filled): Fill['profile'] {
  const from = step.profile[0]?.atMm ?? 0;
  return cold.profile.map(({ at, diameter }) => ({
    atMm: Math.round((at * 1000 - from) * 10) / 10,
    // Upwards: a piece is never reckoned slimmer than it is.
    diameterMm: cold.factor > 1 ? Math.ceil(diameter * 10_000 - 1e-6) / 10 : tenths(diameter),
  }));
}

/** The cook step that heats it: the first after the filling. */
export function cookAfter(method: Method, step: Fill): Cook | undefined {
  const at = method.findIndex((s) => s.id === step.id);
  return at < 0 ? undefined : method.slice(at + 1).find((s): s is Cook => s.kind === 'cook');
}

/** The cook step with the filled shape; its layers stay, the outer one as thick as the skin where there is more than one. */
export function cookWithShape(cook: Cook, step: Fill, profile: Fill['profile']): Cook {
  const { layers } = cook.body;
  const several = layers.length > 1;
  return {
    ...cook,
    body: {
      shape: 'revolved',
      profile: [...profile],
      lengthMm: profile.at(-1)?.atMm ?? 0,
      layers: layers.map((layer, i) =>
        i === 0 && several && step.skinMm > 0 ? { ...layer, thicknessMm: step.skinMm } : layer,
      ),
    },
  };
}

/** Whether a cook step is reckoned for this very shape, to a tenth of a millimetre. */
export function cooksShape(cook: Cook, step: Fill, profile: Fill['profile']): boolean {
  const { body } = cook;
  if (body.shape !== 'revolved' || body.profile.length !== profile.length) return false;
  const same = (a: number, b: number) => Math.abs(a - b) < 0.051;
  const skin = body.layers.length > 1 ? body.layers[0]?.thicknessMm : undefined;
  return (
    body.profile.every(
      (p, i) => same(p.atMm, profile[i]!.atMm) && same(p.diameterMm, profile[i]!.diameterMm),
    ) &&
    (skin === undefined || step.skinMm === 0 || same(skin, step.skinMm))
  );
}
