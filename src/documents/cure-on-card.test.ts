import { describe, expect, it } from 'vitest';
import { cureProblemOf } from '../contract/method-cure.ts';
import type { StepOf } from '../contract/steps.ts';
import { foreseeCure } from '../core/salt/foresee.ts';
import { cureOnCard } from './cure-on-card.ts';

const step: StepOf<'cure'> = {
  kind: 'cure',
  id: '0198c0de-0000-7000-8000-000000000001',
  name: 'Cure',
  how: '',
  handsMin: 5,
  asks: [],
  by: 'dry cure',
  saltPct: 2,
  h: 12,
  mediumC: 3,
  piece: { shape: 'slab', acrossMm: 30, faces: 2, waterPct: 70 },
};
const curingSalt = { gPerKg: 20, nitritePct: 0.6, product: 'meat product' } as const;
const foreseen = foreseeCure(cureProblemOf([step], step)!.problem);
const cured = { stepId: step.id, foreseen };

describe('cureOnCard', () => {
  it('says how far the salt gets, with the slow case, and that it stays raw', () => {
    const printed = cureOnCard(step, cured, 'GB-ENG');
    expect(printed?.word).toBe('Salt, reckoned');
    expect(printed?.text).toContain('where the salt is slow');
    expect(printed?.text).toContain('raw until it has been cooked');
    expect(printed?.text).toContain('Computed, not measured');
  });

  it('nitrite over the limit or not known stands before everything and stops it', () => {
    const over = cureOnCard({ ...step, curingSalt: { ...curingSalt, gPerKg: 30 } }, cured, 'GB-ENG');
    expect(over).toMatchObject({ word: 'Too much nitrite', colour: 'rust' });
    expect(over?.text).toContain('Not to be made');
    expect(cureOnCard({ ...step, curingSalt }, cured, 'GB-NIR')?.text).toContain('ask your local authority');
    expect(
      cureOnCard({ ...step, curingSalt: { ...curingSalt, product: 'raw meat preparation' } }, cured, 'EU')
        ?.word,
    ).toBe('Nitrite is not let in');
  });

  it('within: the amount and the limit; nothing reckoned: nothing said, or why', () => {
    expect(cureOnCard({ ...step, curingSalt }, cured, 'GB-ENG')?.text).toContain(
      '120 mg/kg of sodium nitrite go in (dry), within the limit of 150 mg/kg',
    );
    expect(cureOnCard(step, undefined, 'GB-ENG')).toBeNull();
    expect(cureOnCard({ ...step, curingSalt }, undefined, 'GB-ENG')?.word).toBe('Curing salt');
    expect(cureOnCard(step, { stepId: step.id, why: 'too strong' }, 'GB-ENG')).toMatchObject({
      word: 'Salt: not known',
      colour: 'rust',
    });
  });
});
