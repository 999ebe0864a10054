import { expect, test } from 'vitest';
import { sheetFits, sheetLeftOff, smallestSheetType } from './specification-sheet-fit.ts';

test('each way to set the sheet asks for no more room than the one before, so that halving finds the first that fits', () => {
  for (let i = 1; i < sheetFits.length; i++) {
    const [before, after] = [sheetFits[i - 1]!, sheetFits[i]!];
    expect(after.size).toBeLessThanOrEqual(before.size);
    expect(after.answers).toBeLessThanOrEqual(before.answers);
    expect(Number(after.picture)).toBeLessThanOrEqual(Number(before.picture));
    expect(after).not.toEqual(before);
  }
  expect(sheetFits.at(-1)).toEqual({ size: smallestSheetType, picture: false, answers: 1 });
});

test('whatever is left off is named at the foot, and nothing that was never there', () => {
  for (const fit of sheetFits)
    for (const picture of [true, false])
      for (const answers of [0, 1, 3, 9]) {
        const text = sheetLeftOff(fit, { picture, answers });
        expect(text.includes('sketch')).toBe(picture && !fit.picture);
        expect(text.includes('answers')).toBe(answers > fit.answers);
      }
});
