import { describe, expect, it } from 'vitest';
import { foreseeCure } from '../../../../core/salt/foresee.ts';
import { evenWords, saltRows } from './cure-words.ts';

const cured = (h: number) =>
  foreseeCure({
    piece: { shape: 'slab', size: 0.02, exposedFaces: 2, mass: 1, water: 0.7, salt: 0 },
    stages: [{ medium: { kind: 'bath', mass: 2, salt: 0.05 }, temperature: 4, time: h * 3600 }],
  });

describe('evenWords', () => {
  it('is not yet until even the slowest salt has come through', () => {
    const even = cured(1).even;
    const h = (s: number | null) => (s ?? 0) / 3600;
    expect(evenWords(cured(h(even.usual) * 0.9)).word).toBe('Not even yet');
    expect(evenWords(cured(h(even.usual) * 1.1))).toMatchObject({
      state: 'not yet',
      word: 'Even, unless the salt is slow',
    });
    expect(evenWords(cured(h(even.slowest) * 1.1)).state).toBe('neutral');
  });

  it('the middle is the least salted row', () => {
    const [middle, mean, surface] = saltRows(cured(6).result.history.at(-1)!).map((r) =>
      Number.parseFloat(r[2]),
    );
    expect(middle).toBeLessThan(mean!);
    expect(mean).toBeLessThan(surface!);
  });
});
