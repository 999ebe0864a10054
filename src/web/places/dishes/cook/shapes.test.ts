import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { BodyInput } from '../../../../contract/body.ts';
import type { Cook } from './programme.ts';
import {
  addPoint,
  asShape,
  movePoint,
  parseProfile,
  removePoint,
  type Shape,
  thickestMm,
  withThickest,
} from './shapes.ts';
import { merged } from './use-draft.ts';

const composition = { water: 0.66, protein: 0.15, fat: 0.16, carbohydrate: 0.015, fibre: 0, ash: 0.015 };
const layers = [{ name: 'meat', composition }];
const profile = [
  { atMm: 0, diameterMm: 40 },
  { atMm: 120, diameterMm: 56 },
  { atMm: 180, diameterMm: 50 },
];
const body: BodyInput = { shape: 'revolved', profile, layers };
const shapes: Shape[] = ['revolved', 'cylinder', 'sphere', 'slab', 'block'];

describe('another shape', () => {
  test.each(shapes.flatMap((a) => shapes.map((b) => [a, b] as const)))(
    '%s to %s: allowed by the contract, as thick, same layers',
    (a, b) => {
      const from = asShape(body, a);
      const to = asShape(from, b);
      expect(BodyInput.safeParse(to).success).toBe(true);
      expect(to.shape).toBe(b);
      expect(thickestMm(to)).toBeCloseTo(thickestMm(from), 0);
      expect(to.layers).toEqual(layers);
    },
  );

  test.each(shapes)('withThickest sets the thickness of a %s', (shape) => {
    expect(thickestMm(withThickest(asShape(body, shape), 71.5))).toBeCloseTo(71.5, 1);
  });
});

describe('points of a profile', () => {
  const rises = (points: readonly { atMm: number }[]) =>
    points.every((p, i) => i === 0 || p.atMm > points[i - 1]!.atMm);

  test('however a point is dragged the distances rise and the first stays at 0 (property)', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 2 }),
        fc.double({ min: -500, max: 900, noNaN: true }),
        fc.double({ min: -50, max: 3_000, noNaN: true }),
        (index, atMm, diameterMm) => {
          const moved = movePoint(profile, index, { atMm, diameterMm });
          return (
            rises(moved) &&
            moved[0]!.atMm === 0 &&
            moved.every((p) => p.diameterMm >= 1 && p.diameterMm <= 2_000)
          );
        },
      ),
    );
  });

  test('addPoint changes no shape and lands in the gap asked, or the longest', () => {
    const asked = addPoint(profile, 1);
    expect(asked.at).toBe(2);
    expect(asked.profile[2]).toEqual({ atMm: 150, diameterMm: 53 });
    expect(addPoint(profile).profile[1]).toEqual({ atMm: 60, diameterMm: 48 });
    expect(
      addPoint([
        { atMm: 0, diameterMm: 40 },
        { atMm: 1, diameterMm: 40 },
      ]).profile,
    ).toHaveLength(2);
  });

  test('removePoint keeps two, and begins at 0', () => {
    expect(removePoint(profile, 0)).toEqual([
      { atMm: 0, diameterMm: 56 },
      { atMm: 60, diameterMm: 50 },
    ]);
    expect(removePoint(profile.slice(0, 2), 0)).toHaveLength(2);
  });
});

describe('parseProfile', () => {
  test.each([
    ['tabs, with a heading', 'distance\tdiameter\n0\t40\n120\t56\n180\t50\n'],
    ['spaces', '0 40\n120 56\n180 50'],
    ['semicolons and decimal commas', '0;40,0\n120;56,0\n180;50,0'],
    ['units written', '0 mm\t4 cm\n12cm\t56mm\n180mm\t50mm'],
    ['not from 0', '20\t40\n140\t56\n200\t50'],
    ['commas', '0, 40\n120, 56\n180, 50'],
  ])('%s', (_, text) => {
    expect(parseProfile(text)).toEqual({ ok: true, profile });
  });

  test('inches where the kitchen measures so', () => {
    expect(parseProfile('0\t2\n10\t2', 25.4)).toEqual({
      ok: true,
      profile: [
        { atMm: 0, diameterMm: 50.8 },
        { atMm: 254, diameterMm: 50.8 },
      ],
    });
  });

  test.each([
    ['0\t40', /1 rows|1 row/],
    ['0\t40\n10\tabc', /line 2.*two numbers/],
    ['0\t40\n50\t41\n20\t42', /row 3: 20 mm does not come after 50 mm/],
    ['0\t40\n10\t-3', /row 2: a diameter of -3/],
    ['hello', /line 1/],
  ])('refuses %j, naming the line', (text, message) => {
    const read = parseProfile(text);
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.message).toMatch(message);
  });
});

describe('merged', () => {
  const step = (over: Partial<Cook>): Cook => ({
    kind: 'cook',
    id: '01900000-0000-7000-8000-000000000001',
    name: 'steam',
    how: '',
    handsMin: 0,
    asks: [],
    body,
    startC: 4,
    stages: [],
    target: { referenceC: 70, zC: 7.5, min: 2 },
    rules: [],
    ...over,
  });
  test('a name changed elsewhere does not undo what is being edited here', () => {
    const result = merged(step({ startC: 8 }), step({}), step({ name: 'steam, slowly' }));
    expect(result).toMatchObject({ startC: 8, name: 'steam, slowly' });
  });
  test('an undo from outside takes the part it changes', () => {
    const result = merged(step({ startC: 8, rules: ['a'] }), step({ startC: 8 }), step({ startC: 4 }));
    expect(result).toMatchObject({ startC: 4, rules: ['a'] });
  });
});
