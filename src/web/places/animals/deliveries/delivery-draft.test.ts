import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DeliveryInput } from '../../../../contract/delivery.ts';
import { pointsOf } from '../../../../contract/delivery-points.ts';
import { beginSpecification, specificationStarts } from '../../../../contract/specification-starts.ts';
import {
  arrivalDoubt,
  type DeliveryDraft,
  emptyDraft,
  inputOf,
  markKey,
  missingIn,
  newLine,
  saidAt,
  soFar,
  tagsOf,
  tagsTwice,
} from './delivery-draft.ts';

const supplierId = '0193b6a0-0000-7000-8000-000000000001';
const versionId = '0193b6a0-0000-7000-8000-000000000002';
const uuid = (n: number) => `0193b6a0-0000-7000-8000-0000000000${String(n).padStart(2, '0')}`;
const arrivedAt = '2026-11-19T09:00:00.000Z';
const neck = { ...beginSpecification(specificationStarts[0]!, 'GB-ENG'), days: [3] };
const asked = { species: 'goose', content: neck };
const line = (n: number, more: Partial<ReturnType<typeof newLine>> = {}) => ({
  ...newLine(uuid(n), `261119-${n}`, asked),
  grams: 2_400,
  count: 6,
  arrivalC: 3,
  ...more,
});
const draft = (more: Partial<DeliveryDraft> = {}): DeliveryDraft => ({
  ...emptyDraft(uuid(9), supplierId, arrivedAt),
  versionId,
  lines: [line(10)],
  ...more,
});
const now = (d: DeliveryDraft) => soFar(d, neck, 'GB-ENG', 'Europe/London');

describe('tagsOf', () => {
  test('a pasted column, commas and tabs; spaces inside a tag stay', () => {
    expect(tagsOf('UK 123456 00001\r\nUK 123456  00002, G7;G8\tG9\n\n')).toEqual([
      'UK 123456 00001',
      'UK 123456 00002',
      'G7',
      'G8',
      'G9',
    ]);
  });
  test('the same tag in two lines is found; a refused line brings no animal', () => {
    expect([...tagsTwice([line(10, { tags: 'a\nb' }), line(11, { tags: 'b' })])]).toEqual(['b']);
    expect(tagsTwice([line(10, { tags: 'a' }), line(11, { tags: 'a', refused: true })]).size).toBe(0);
  });
});

describe('arrivalDoubt', () => {
  test('38 is asked about, and would be 3.3 °C', () => {
    expect(arrivalDoubt({ arrivalC: 38, arrivalCMeant: false })?.ifFahrenheit).toBeCloseTo(3.33, 2);
  });
  test('20 is asked about too, although 20 °F is frozen hard', () => {
    expect(arrivalDoubt({ arrivalC: 20, arrivalCMeant: false })?.ifFahrenheit).toBeCloseTo(-6.67, 2);
  });
  test('said again it is taken; a usual one never asks; the same limits as the server', () => {
    expect(arrivalDoubt({ arrivalC: 38, arrivalCMeant: true })).toBeNull();
    for (const C of [-35, -18, 0, 4, 15])
      expect(arrivalDoubt({ arrivalC: C, arrivalCMeant: false })).toBeNull();
    for (const C of [-36, 15.1, 60])
      expect(arrivalDoubt({ arrivalC: C, arrivalCMeant: false })).not.toBeNull();
  });
});

describe('soFar', () => {
  test('nobody looked: not fine, and not counted as met', () => {
    const s = now(draft());
    expect(s.notLooked).toBe(pointsOf(neck).filter((p) => p.by === 'seen').length);
    expect(s.met).toBe(s.checks.length - s.notLooked);
  });
  test('before anything is weighed the figures decide nothing', () => {
    expect(now(draft({ lines: [] })).checks.every((c) => c.met === 'not looked at')).toBe(true);
  });
  test('too warm for the class and place: not to be accepted, with the citation, on the right line', () => {
    const s = now(draft({ lines: [line(10, { refused: true, arrivalC: 9 }), line(11, { arrivalC: 4.5 })] }));
    expect(s.warm.map((w) => w.line)).toEqual([1]);
    expect(s.warm[0]?.citation).toMatch(/853\/2004/);
    expect(s.mayBeAccepted).toBe(false);
  });
  test('a temperature that nobody took and a class that is not known are said, never fine', () => {
    const s = now(draft({ lines: [line(10, { arrivalC: null }), line(11, { class: null })] }));
    expect(s.unknownWarm.map((u) => u.line)).toEqual([0, 1]);
  });
  test('a mark of an older version does not answer a point that was reworded', () => {
    const point = pointsOf(neck).find((p) => p.point === 'cut')!;
    const marks = { [markKey('cut', point.asked)]: { met: 'met', found: '' } as const };
    expect(now(draft({ marks })).checks.find((c) => c.point === 'cut')?.met).toBe('met');
    const reworded = soFar(draft({ marks }), { ...neck, cut: 'otherwise' }, 'GB-ENG', 'Europe/London');
    expect(reworded.checks.find((c) => c.point === 'cut')?.met).toBe('not looked at');
  });
  test('one point not met stops a plain acceptance, whatever the others say', () => {
    const seen = pointsOf(neck).filter((p) => p.by === 'seen');
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom('met', 'not met', 'not looked at'), {
          minLength: seen.length,
          maxLength: seen.length,
        }),
        (words) => {
          const marks = Object.fromEntries(
            seen.map((p, i) => [markKey(p.point, p.asked), { met: words[i] as 'met', found: '' }]),
          );
          const s = now(draft({ marks }));
          expect(s.mayBeAccepted).toBe(!words.includes('not met'));
          expect(s.met + s.notMet.length + s.notLooked).toBe(s.checks.length);
        },
      ),
    );
  });
});

describe('missingIn and inputOf', () => {
  test('an empty form names every thing that is missing', () => {
    expect(missingIn(emptyDraft(uuid(9), '', arrivedAt)).map((p) => p.path)).toEqual([
      'supplierId',
      'specificationVersionId',
      'lines',
    ]);
  });
  test('a code twice, a tag twice and a doubted temperature are named beside their field', () => {
    const two = draft({
      lines: [line(10, { tags: 'a' }), line(11, { code: '261119-10', tags: 'a', arrivalC: 38 })],
    });
    const problems = missingIn(two);
    expect(saidAt(problems, 'lines[1].code')).toContain('the code of line 1 too');
    expect(saidAt(problems, 'lines[0].tags')).toContain('twice');
    expect(saidAt(problems, 'lines[1].arrivalC')).toContain('38 °C');
    expect(saidAt(problems, 'lines[0].code')).toBeUndefined();
  });
  test('what is sent is what the contract takes', () => {
    const d = draft({ lines: [line(10, { tags: 'a\nb', useBy: '2026-11-27', cost: 4_200 })] });
    expect(missingIn(d)).toEqual([]);
    const sent = inputOf(d, neck, 'accepted');
    expect(DeliveryInput.parse(sent)).toEqual(sent);
    expect(sent.checks.map((c) => c.point)).not.toContain('arrivesAtMostC');
  });
  test('a problem of the server is found by its path, with or without the body before it', () => {
    const problems = [
      { path: 'body.lines[0].tags[3]', found: 'a, an animal of lot X', allowed: 'each tag once' },
    ];
    expect(saidAt(problems, 'lines[0].tags')).toBe('a, an animal of lot X; allowed: each tag once');
    expect(saidAt(problems, 'lines[0].tag')).toBeUndefined();
  });
});
