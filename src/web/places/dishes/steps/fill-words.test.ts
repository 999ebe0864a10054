import { describe, expect, it } from 'vitest';
import { CookStep, FillStep, type StepOf } from '../../../../contract/steps.ts';
import type { ShapeCost } from '../../../../core/method/shape-cost.ts';
import { newStep } from '../bench/new-step.ts';
import { cookAfter, cooksShape, cookWithShape, held, shapeToCook } from './fill-shape.ts';
import { overfullWords, thickestOf, unevenWords } from './fill-words.ts';

const fill: StepOf<'fill'> = {
  ...newStep('fill', 'GB-ENG'),
  profile: [
    { atMm: 20, diameterMm: 40 },
    { atMm: 140, diameterMm: 56 },
    { atMm: 200, diameterMm: 50 },
  ],
  skinMm: 3,
};
const cook = newStep('cook', 'GB-ENG');
const heating = { status: 'found', duration: 38 * 60, lethality: 120, runs: 3 } as const;

describe('unevenWords', () => {
  const cost: ShapeCost = { even: { diameter: 0.05, heating, saves: 7 * 60 }, perMetre: 70_000 };
  it('says which bulge, where, and what it costs', () => {
    const words = unevenWords(cost, { at: 0.12, diameter: 0.056 }, 'Steam', 'metric');
    expect(words[0]).toBe(
      'The 6 mm bulge at 120 mm costs 7 min of “Steam”: 50 mm throughout, the same filling is done in 38 min.',
    );
    expect(words[1]).toBe('Each millimetre more where it is coldest costs 70 s.');
  });

  it('an even piece is said to be even; what costs nothing is not told as a saving', () => {
    expect(unevenWords({ even: null, perMetre: null }, thickestOf([]), 'Steam', 'metric')).toEqual([
      'Even throughout.',
    ]);
    expect(
      unevenWords({ ...cost, even: { ...cost.even!, saves: 5 } }, thickestOf([]), 'Steam', 'US')[0],
    ).toContain('Even enough');
  });
});

describe('overfullWords', () => {
  it('minutes where they are known, not known where not, nothing where it fits', () => {
    expect(overfullWords(0.003, 90_000, 'Steam', 'metric')).toContain(
      '3 mm thicker than drawn at its thickest: about 5 min',
    );
    expect(overfullWords(0.003, null, 'Steam', 'metric')).toContain('not known');
    expect(overfullWords(0, 90_000, 'Steam', 'metric')).toBeNull();
  });
});

describe('the shape handed on', () => {
  const of = (gramsPerPiece: number) => held({ ...fill, gramsPerPiece }, 1040);
  it('begins at 0 and is as drawn while it fits', () => {
    const fits = of(100);
    if (!fits.ok) throw new Error(fits.problem);
    expect(shapeToCook(fill, fits.cold)).toEqual([
      { atMm: 0, diameterMm: 40 },
      { atMm: 120, diameterMm: 56 },
      { atMm: 180, diameterMm: 50 },
    ]);
  });

  it('is fatter where too much was put in, never slimmer than reckoned', () => {
    const over = of(500);
    if (!over.ok) throw new Error(over.problem);
    const profile = shapeToCook(fill, over.cold);
    profile.forEach((p, i) => {
      expect(p.diameterMm).toBeGreaterThanOrEqual(over.cold.profile[i]!.diameter * 1000 - 1e-9);
    });
    expect(profile[1]?.diameterMm).toBeGreaterThan(56);
  });

  it('makes a cook step that the contract takes and that is then known to cook this shape', () => {
    const fits = of(100);
    if (!fits.ok) throw new Error(fits.problem);
    const profile = shapeToCook(fill, fits.cold);
    expect(cooksShape(cook, fill, profile)).toBe(false);
    const skin = { ...cook.body.layers[0]!, name: 'skin', thicknessMm: 1 };
    const layered = { ...cook, body: { ...cook.body, layers: [skin, cook.body.layers[0]!] } };
    for (const before of [cook, layered]) {
      const next = cookWithShape(before, fill, profile);
      expect(CookStep.parse(next).body.shape).toBe('revolved');
      expect(cooksShape(next, fill, profile)).toBe(true);
      expect(next.body.layers).toHaveLength(before.body.layers.length);
    }
    expect(cookWithShape(layered, fill, profile).body.layers[0]?.thicknessMm).toBe(3);
  });

  it('to the first cook step after the filling', () => {
    const later = newStep('cook', 'GB-ENG');
    expect(cookAfter([cook, fill, later], fill)?.id).toBe(later.id);
    expect(cookAfter([cook, fill], fill)).toBeUndefined();
    expect(FillStep.parse({ ...fill, swellPct: 8 }).swellPct).toBe(8);
  });

  it('a skin thicker than the piece is told, not reckoned', () => {
    expect(held({ ...fill, skinMm: 30 }, 1040).ok).toBe(false);
  });
});
