import { runCook } from '../src/contract/cook.ts';
import { inSteps, runGentle } from '../src/contract/gentle.ts';
import { groundLoss, myoglobinRate, waterHeld } from '../src/core/properties/cook-loss.ts';
import type { Example, Row } from './case.ts';

const terrine = {
  body: {
    shape: 'block' as const,
    widthMm: 80,
    heightMm: 70,
    layers: [{ name: 'forcemeat', properties: { kWmK: 0.48, rhoKgM3: 1050, cpJkgK: 3500 } }],
  },
  startC: 6,
  stages: [{ name: 'bath', mediumC: { low: 62, high: 95 }, hWm2K: 200, until: { min: 90 } }],
  target: { referenceC: 70, zC: 7.5, min: 2 },
  atMostMin: 110,
  twoSteps: false,
  // By the target alone, so that a grid of plain cooks counts the same.
  rules: [],
};

/** The quick way to see that nothing gentler was missed: every degree of the range, each run until it is safe or out of time. */
function coolestOfAGrid(): number {
  const { atMostMin, twoSteps: _1, rules: _2, ...cook } = terrine;
  for (let mediumC = 62; mediumC <= 95; mediumC += 0.5) {
    const plain = {
      ...cook,
      stages: [{ ...cook.stages[0], mediumC, until: { lethalityMin: 2, atMostMin } }],
    };
    const answer = runCook(plain);
    if (answer.stages[0]?.reached === true) return mediumC;
  }
  return Number.NaN;
}

export const example: Example = {
  title: 'The gentlest safe bath for a terrine',
  story:
    'A terrine must be out of its bath within 110 minutes. Which temperature overcooks least of it and is still safe? The coolest that is quick enough, if a cooler bath is always the gentler one: held against every half degree of the range. What counts as harm is published: the water that meat no longer holds, what ground meat loses, the red that turns.',
  equation:
    'c = 0.745 − 0.345 / (1 + 30 e^(−0.25 (T − 52)));  k = 7.98e43 · exp(−290 000 / (8.314 T)) per minute',
  sources: ['van-der-sman-2007', 'feyissa-2009', 'geileskey-1998', 'bae-2018', 'own-computation'],
  run: (): Row[] => {
    const answer = runGentle(terrine);
    const best = answer.recommended;
    const grid = coolestOfAGrid();
    const { atMostMin: _1, twoSteps: _2, rules: _3, ...cook } = terrine;
    const again = runCook(
      inSteps(
        { ...cook, stages: [{ ...cook.stages[0], mediumC: 90, until: { min: 1 } }] } as Parameters<
          typeof inSteps
        >[0],
        0,
        [{ mediumC: best?.mediumC ?? 0, min: best?.min ?? 0 }],
      ),
    );
    const row = (
      quantity: string,
      source: string,
      expected: Row['expected'],
      ours: number,
      tolerance: number,
      unit: string,
      why: string,
    ): Row => ({
      quantity,
      source,
      confidence: source === 'own-computation' ? 'computed' : source === 'bae-2018' ? 'read' : 'secondary',
      expected,
      ours,
      tolerance,
      unit,
      why,
    });
    return [
      row(
        'water held by beef at 65 °C',
        'van-der-sman-2007',
        0.58552,
        waterHeld(65),
        1e-5,
        'kg/kg',
        'figures printed',
      ),
      row('the same at 80 °C', 'van-der-sman-2007', 0.40919, waterHeld(80), 1e-5, 'kg/kg', 'figures printed'),
      row(
        'myoglobin of beef at 65 °C',
        'geileskey-1998',
        0.126929,
        60 * myoglobinRate(65),
        1.3e-5,
        '1/min',
        'one part in ten thousand, by the gas constant',
      ),
      row(
        'ground chicken, 2 % salt, to 75 °C: loss',
        'bae-2018',
        2.1,
        100 * groundLoss(75, 2),
        1e-9,
        '%',
        'the row itself',
      ),
      row(
        'coolest bath that is quick enough',
        'own-computation',
        { low: grid - 0.5, high: grid + 0.1 },
        best?.mediumC ?? Number.NaN,
        0.1,
        '°C',
        'the grid’s half degree, and tenths rounded up',
      ),
      row(
        'lethality when it is run again',
        'own-computation',
        { low: 2, high: 3 },
        again.lethality.min,
        0,
        'min',
        'the target, and little more',
      ),
    ];
  },
};
