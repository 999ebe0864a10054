import { expect, test } from 'vitest';
import { doubtfulArrivals, measuredChecks, pointsOf, tooWarm } from './delivery-points.ts';
import type { SpecificationContent } from './specification.ts';

const content: SpecificationContent = {
  what: 'neck',
  ageClass: '',
  ageMonthsAtMost: null,
  breedOrSystem: '',
  pieceGrams: { low: 150, high: 250 },
  stunning: '',
  bleeding: '',
  skin: ['dry plucked'],
  head: 'off',
  feet: 'not asked',
  drawn: 'not asked',
  cut: '',
  dimensions: [{ name: 'length', lowMm: 160, highMm: 220 }],
  blood: 'not asked',
  bloodHow: '',
  chilledToC: null,
  chilledWithinHours: null,
  packed: '',
  labelled: ['lot'],
  documents: [],
  days: [3],
  from: '07:00',
  until: '11:00',
  arrivesAtMostC: 4,
  refusedIf: ['torn'],
  note: '',
};
const line = {
  what: 'Necks',
  class: 'poultry' as const,
  kind: 'part' as const,
  grams: 2_000,
  count: 10,
  arrivalC: 3,
  frozen: false,
};
const said = (lines: readonly (typeof line)[], at = '2026-11-19T09:00:00Z', zone = 'Europe/London') =>
  Object.fromEntries(measuredChecks(content, lines, at, zone).map((c) => [c.point, c.met]));

test('pointsOf: only what is asked, each with its own key', () => {
  const points = pointsOf(content).map((p) => p.point);
  expect(points).toEqual([
    'arrivesAtMostC',
    'days',
    'clock',
    'pieceGrams',
    'what',
    'skin',
    'head',
    'dimensions[0]',
    'labelled[0]',
    'refusedIf[0]',
  ]);
});

test('measuredChecks: the day and the clock are the kitchen’s own', () => {
  expect(said([line])).toEqual({ arrivesAtMostC: 'met', days: 'met', clock: 'met', pieceGrams: 'met' });
  expect(said([line], '2026-11-19T23:30:00Z', 'Asia/Tokyo')).toMatchObject({ days: 'not met', clock: 'met' });
  expect(said([line], '2026-11-19T11:01:00Z')).toMatchObject({ clock: 'not met' });
});

test('measuredChecks: one line that is warm is enough; one not measured is not a pass', () => {
  expect(said([line, { ...line, arrivalC: 4.1 }]).arrivesAtMostC).toBe('not met');
  const unmeasured = { ...line, arrivalC: null as unknown as number };
  expect(said([line, unmeasured]).arrivesAtMostC).toBe('not looked at');
  expect(said([{ ...line, arrivalC: 9 }, unmeasured]).arrivesAtMostC).toBe('not met');
  expect(said([{ ...line, count: 20 }]).pieceGrams).toBe('not met');
});

test('tooWarm: by class and place, frozen by its own limit; what is no class is not judged', () => {
  expect(tooWarm([{ ...line, arrivalC: 4.5 }], 'GB-ENG')[0]).toMatchObject({
    line: 0,
    limit: '4 °C or colder (poultry)',
  });
  expect(tooWarm([{ ...line, arrivalC: 4.5 }], 'US')).toEqual([]);
  expect(tooWarm([{ ...line, frozen: true, arrivalC: -12 }], 'EU')).toHaveLength(1);
  expect(tooWarm([{ ...line, frozen: true, arrivalC: -18 }], 'EU')).toEqual([]);
});

test('doubtfulArrivals: 38 °C is asked again, with what it would be in the other unit', () => {
  const whole = { ...line, arrivalC: 38, arrivalCMeant: false } as never;
  const [doubt] = doubtfulArrivals([whole]);
  expect(doubt).toMatchObject({ path: 'lines[0].arrivalC', found: '38 °C' });
  expect(doubt?.allowed).toContain('38 °F would be 3.3 °C');
  expect(doubtfulArrivals([{ ...(whole as object), arrivalCMeant: true } as never])).toEqual([]);
});
