import { capacityOf, volumeOf } from '../src/core/filling/capacity.ts';
import { filledShape, piecesFrom, roundFromFlat } from '../src/core/filling/casing.ts';
import type { Example, Row } from './case.ts';

const R = 0.03;
const ball = Array.from({ length: 801 }, (_, i) => {
  const at = (2 * R * i) / 800;
  return { at, diameter: 2 * Math.sqrt(Math.max(0, R * R - (at - R) ** 2)) };
});
const tube = [
  { at: 0, diameter: 0.05 },
  { at: 0.18, diameter: 0.05 },
];
const row = (
  quantity: string,
  unit: string,
  expected: number,
  ours: number,
  why: string,
  share = 1e-9,
): Row => ({
  quantity,
  source: 'own-computation',
  confidence: 'computed',
  expected,
  ours,
  tolerance: Math.abs(expected) * share,
  unit,
  why,
});

export const example: Example = {
  title: 'What a casing holds, against elementary geometry',
  story: `A casing is measured every few centimetres and taken as straight between. What it holds must be what the closed forms of the
cylinder, the cone and the ball say; a skin takes away the shell it is; one that is given too much widens until it holds it.`,
  equation: 'V = Σ π h (d₁² + d₁ d₂ + d₂²)/12; too full: f = √(V/V_in)',
  sources: ['own-computation'],
  run: () => [
    row('a tube of 50 mm by 180 mm', 'm³', Math.PI * 0.025 ** 2 * 0.18, volumeOf(tube), 'exact'),
    row(
      'a cone of 200 mm by 300 mm',
      'm³',
      (Math.PI * 0.1 ** 2 * 0.3) / 3,
      volumeOf([
        { at: 0, diameter: 0 },
        { at: 0.3, diameter: 0.2 },
      ]),
      'exact',
    ),
    row(
      'a ball of 60 mm from 801 points',
      'm³',
      (4 / 3) * Math.PI * R ** 3,
      volumeOf(ball),
      'straight pieces lie inside the ball',
      1e-4,
    ),
    row(
      'filling of 1000 kg/m³ under a skin of 3 mm, 5 % head space',
      'kg',
      0.95 * 1000 * Math.PI * 0.022 ** 2 * 0.18,
      capacityOf({ profile: tube, skin: 0.003, density: 1000, headSpace: 0.05 }).mass,
      'exact',
    ),
    row('50 mm lying flat, filled round', 'm', 0.1 / Math.PI, roundFromFlat(0.05), 'exact'),
    row(
      'a tube given a fifth more than it holds: how much thicker',
      'm',
      0.05 * (Math.sqrt(1.2) - 1),
      filledShape({
        profile: tube,
        skin: 0,
        mass: 1.2 * 1000 * Math.PI * 0.025 ** 2 * 0.18,
        density: 1000,
        swelling: 0,
      }).bulge,
      'exact',
    ),
    row('left of 2.1 kg after six pieces of 335 g', 'kg', 0.09, piecesFrom(2.1, 0.335).left, 'exact'),
  ],
};
