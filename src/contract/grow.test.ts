import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { growthOrganisms } from '../core/properties/organisms-growth.ts';
import { GrowAnswer, GrowInput, LimitsAnswer, LimitsInput, runGrow, runLimits } from './grow.ts';
import { InputProblems } from './problem.ts';

const cooling = {
  organism: 'clostridium-perfringens',
  pH: 6.4,
  waterActivity: 0.99,
  log: [
    { min: 0, C: 54.4 },
    { min: 90, C: 26.7 },
    { min: 390, C: 4.4 },
  ],
  startLog10: 1,
};

function problems(run: () => unknown): string[] {
  try {
    run();
  } catch (error) {
    if (error instanceof InputProblems)
      return error.problems.map((p) => `${p.path}: ${p.found}; ${p.allowed}`);
    throw error;
  }
  return [];
}
const refused = (more: object) => problems(() => runGrow({ ...cooling, ...more }));

describe('runGrow', () => {
  test('answers as its own schema says, for every organism that has rates', () => {
    for (const organism of growthOrganisms)
      for (const set of organism.sets) {
        const answer = runGrow({ ...cooling, organism: organism.id, set: set.id });
        expect(GrowAnswer.parse(answer)).toEqual(answer);
        expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
        expect(answer.endLog10 - answer.log10Increase).toBeCloseTo(1, 12);
        expect(answer.history.log10.at(-1)).toBe(answer.endLog10);
        expect(answer.history.min[0]).toBe(0);
        expect(answer.history.min.at(-1)).toBe(390);
        expect(answer.basis.length).toBeGreaterThan(3);
        expect(JSON.stringify(answer)).not.toMatch(/\b(is|are) safe\b|passes|"ok"/i);
        expect(answer.cautions.join(' ')).toMatch(/local authority/);
      }
  });
  test('with the lag that is taken by default the first plant cooling option gives just one log', () => {
    expect(runGrow(cooling).log10Increase).toBeCloseTo(0.988, 2);
    expect(runGrow({ ...cooling, h0: 5 }).log10Increase).toBeCloseTo(1.3102, 2);
    expect(runGrow({ ...cooling, h0: 5 }).log10IncreaseWithoutLag).toBeCloseTo(3.46, 2);
    expect(runGrow({ ...cooling, h0: 0 }).log10Increase).toBeCloseTo(3.46, 2);
  });
  test('Listeria in cooked meats at 5 °C for ten days, as the risk assessment has it', () => {
    const week = [
      { min: 0, C: 5 },
      { min: 14_400, C: 5 },
    ];
    const base = { ...cooling, organism: 'listeria-monocytogenes', log: week, startLog10: 0, maxLog10: 12 };
    expect(runGrow({ ...base, pH: 6.2, waterActivity: 0.97 }).log10Increase).toBeCloseTo(2.82, 6);
    const by = (pH: number, waterActivity: number) => runGrow({ ...base, pH, waterActivity }).log10Increase;
    expect(by(5.2, 0.97)).toBeLessThan(by(6.2, 0.97));
    expect(by(6.2, 0.94)).toBeLessThan(by(6.2, 0.97));
    expect(by(7, 0.99)).toBeGreaterThan(by(6.2, 0.97));
  });
  test('Staphylococcus aureus at its best: the published rate, and less where it is drier', () => {
    const base = { ...cooling, organism: 'staphylococcus-aureus', pH: 7, startLog10: 0, maxLog10: 12 };
    const hours = (waterActivity: number) =>
      runGrow({
        ...base,
        waterActivity,
        log: [
          { min: 0, C: 40.6 },
          { min: 300, C: 40.6 },
        ],
      });
    expect(hours(0.994).log10Increase).toBeCloseTo((5 * 1.97) / Math.LN10, 6);
    expect(hours(0.9).log10Increase).toBeLessThan(hours(0.97).log10Increase);
    expect(hours(0.97).cautions.join(' ')).toMatch(/What pH would take off.*toxin is not destroyed/);
  });
  test('outside the limits nothing grows, and what stopped it is named', () => {
    const sour = runGrow({ ...cooling, pH: 4.5 });
    expect([sour.log10Increase, sour.rateFactor]).toEqual([0, 0]);
    expect(sour.cautions[0]).toMatch(/because of the pH alone.*may still live/);
    expect(runGrow({ ...cooling, waterActivity: 0.92 }).log10Increase).toBe(0);
    expect(runGrow({ ...cooling, waterPhaseSaltPct: 7.5 }).log10Increase).toBe(0);
    expect(runGrow({ ...cooling, waterPhaseSaltPct: 6.9 }).log10Increase).toBeGreaterThan(0.5);
  });
  test('tells time spent where this set has no growth but others report it', () => {
    const cool = [
      { min: 0, C: 12 },
      { min: 600, C: 12 },
    ];
    const answer = runGrow({ ...cooling, set: 'cured-pork', log: cool });
    expect(answer.log10Increase).toBe(0);
    expect(answer.cautions.join(' ')).toMatch(/600 min of the log lie where this set has no growth/);
    expect(runGrow({ ...cooling, log: cool }).cautions.join(' ')).not.toMatch(/lie where this set/);
  });
  test('says that no death is counted, that readings lie far apart, that the ceiling is near', () => {
    const hot = runGrow({
      ...cooling,
      h0: 1,
      log: [
        { min: 0, C: 70 },
        { min: 600, C: 40 },
      ],
    });
    const said = hot.cautions.join(' ');
    expect(said).toMatch(/No death is counted/);
    expect(said).toMatch(/up to 600 min apart/);
    expect(said).toMatch(/close to the most/);
    const close = Array.from({ length: 20 }, (_, i) => ({ min: i * 10, C: 5 }));
    expect(runGrow({ ...cooling, log: close }).cautions.join(' ')).not.toMatch(/apart|No death|most there/);
  });
});

describe('runGrow refuses, naming the place', () => {
  test('an unknown organism or set, and an organism whose rate is not known', () => {
    expect(refused({ organism: 'clostridium-perfringen' })[0]).toMatch(/^organism: an unknown.*perhaps clos/);
    expect(refused({ organism: '__proto__' })[0]).toMatch(/^organism: an unknown/);
    expect(refused({ set: 'goose' })[0]).toMatch(/^set: "goose"; one of "roasted-chicken"/);
    for (const organism of ['bacillus-cereus', 'escherichia-coli'])
      expect(refused({ organism })[0]).toMatch(/^organism: .*not known here; one of .*limits$/);
  });
  test('a food in which it can grow but its rate is not known', () => {
    const organism = 'listeria-monocytogenes';
    expect(refused({ organism, pH: 4.5 })[0]).toMatch(/^pH: 4\.5, where growth is possible but its rate/);
    expect(runGrow({ ...cooling, organism, pH: 4.3 }).log10Increase).toBe(0);
    expect(runGrow({ ...cooling, organism, pH: 4.8 }).log10Increase).toBeGreaterThan(0);
    expect(runGrow({ ...cooling, organism, waterActivity: 0.915 }).log10Increase).toBeGreaterThan(0);
    expect(runGrow({ ...cooling, organism, waterActivity: 1 }).log10Increase).toBeGreaterThan(0);
    expect(runGrow({ ...cooling, organism, waterActivity: 0.91 }).log10Increase).toBe(0);
  });
  test('logs that are none, unknown keys, numbers that no food has', () => {
    expect(refused({ log: [] })[0]).toMatch(/^log: an empty list/);
    expect(refused({ log: [{ min: 0, C: 5 }] })[0]).toMatch(/^log: a list of 1/);
    expect(refused({ log: [cooling.log[1], cooling.log[0]] })[0]).toMatch(/^log\[1\]\.min: 0 min after 90/);
    expect(refused({ log: [cooling.log[0], cooling.log[0]] })[0]).toMatch(/a second time/);
    expect(refused({ aw: 0.9 })[0]).toMatch(/^aw: an unknown key/);
    expect(refused({ pH: 15 })[0]).toMatch(/^pH: 15/);
    expect(refused({ waterActivity: 98 })[0]).toMatch(/^waterActivity: 98/);
    expect(refused({ startLog10: Number.NaN })[0]).toMatch(/^startLog10/);
    expect(refused({ h0: -1 })[0]).toMatch(/^h0: -1/);
    expect(refused({ startLog10: 9 })[0]).toMatch(/^startLog10: 9; at most 8/);
    expect(refused({ startLog10: 3, maxLog10: 2 })[0]).toMatch(/^startLog10: 3; at most 2/);
  });
});

describe('runLimits', () => {
  test('answers as its own schema says, for every organism', () => {
    for (const { id } of growthOrganisms) {
      const answer = runLimits({ organism: id, C: 35, pH: 6.5, waterActivity: 0.99, waterPhaseSaltPct: 1 });
      expect(LimitsAnswer.parse(answer)).toEqual(answer);
      expect(answer.growthPossible).toBe(true);
      expect(answer.limits.length).toBe(4);
      expect(answer.basis.length).toBeGreaterThan(1);
    }
  });
  test('one factor outside is enough, and salt is in per cent', () => {
    const salty = runLimits({ organism: 'escherichia-coli', C: 20, waterPhaseSaltPct: 7 });
    expect(salty.growthPossible).toBe(false);
    expect(salty.limits[1]).toMatchObject({ factor: 'waterPhaseSaltPct', growthPossible: false, low: null });
    expect(salty.limits[1]!.high).toBeCloseTo(6.5, 9);
    expect(salty.limits[1]!.value).toBeCloseTo(7, 9);
    expect(salty.cautions[0]).toMatch(/may still live/);
  });
  test('refuses an organism alone, one that is unknown, and unknown keys', () => {
    expect(problems(() => runLimits({ organism: 'salmonella' }))[0]).toMatch(/^\$: an organism alone/);
    expect(problems(() => runLimits({ organism: 'yeast', C: 4 }))[0]).toMatch(/^organism: an unknown/);
    expect(problems(() => runLimits({ organism: 'salmonella', C: 4, min: 3 }))[0]).toMatch(
      /^min: an unknown/,
    );
  });
});

test('the schemas can be published', () => {
  expect(z.toJSONSchema(GrowInput, { io: 'input' }).required).toEqual([
    'organism',
    'pH',
    'waterActivity',
    'log',
    'startLog10',
  ]);
  expect(z.toJSONSchema(LimitsInput, { io: 'input' }).required).toEqual(['organism']);
});
