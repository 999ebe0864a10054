import { describe, expect, test } from 'vitest';
import { inMedium, inSteps } from './gentle-steps.ts';

const steam = {
  name: 'steam',
  medium: 'steam',
  mediumC: 100,
  hWm2K: 900,
  wrapped: true,
  until: { min: 34 },
} as const;

describe('inSteps', () => {
  test('one step keeps the stage and its name, with another temperature and time', () => {
    expect(inSteps(steam, [{ mediumC: 92, min: 38.6 }], null)).toEqual([
      { ...steam, mediumC: 92, until: { min: 38.6 } },
    ]);
  });

  test('two steps are two stages, first and then', () => {
    const two = inSteps(
      steam,
      [
        { mediumC: 95, min: 12 },
        { mediumC: 74, min: 20 },
      ],
      'low-temperature steam',
    );
    expect(two.map((s) => [s.name, s.medium, s.mediumC, s.hWm2K, s.wrapped])).toEqual([
      ['steam, first', 'low-temperature steam', 95, undefined, true],
      ['steam, then', 'low-temperature steam', 74, undefined, true],
    ]);
  });

  test('a step that was one of two is not called so twice', () => {
    const again = inSteps(
      { ...steam, name: 'steam, then' },
      [
        { mediumC: 95, min: 12 },
        { mediumC: 74, min: 20 },
      ],
      null,
    );
    expect(again.map((s) => s.name)).toEqual(['steam, first', 'steam, then']);
  });

  test('a log of the medium gives way to the temperature', () => {
    const { mediumC: _, ...rest } = steam;
    const logged = { ...rest, mediumLog: [{ min: 0, C: 90 }] };
    expect(inMedium(logged, null)).toEqual(rest);
  });
});
