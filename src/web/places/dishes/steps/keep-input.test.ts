import { describe, expect, it } from 'vitest';
import { runKeep } from '../../../../contract/keep.ts';
import type { Method } from '../../../../contract/steps.ts';
import { newStep } from '../bench/new-step.ts';
import { keepInputOf } from './keep-input.ts';

const keep = newStep('keep', 'GB-ENG', { packed: 'vacuum-packed', maxC: 5 });
const cook = newStep('cook', 'GB-ENG');
const wrap = newStep('wrap', 'GB-ENG');
const input = (method: Method) => keepInputOf(keep, method, 'GB-ENG');

describe('keepInputOf', () => {
  it('counts 90 °C for 10 min only where a cook in the pack is held to it', () => {
    const held = { ...cook, rules: ['gb-90c-10min'] };
    expect(input([wrap, held, keep]).heatedInPack).toBe(true);
    expect(input([held, wrap, keep]).heatedInPack).toBe(false);
    expect(input([wrap, cook, keep]).heatedInPack).toBe(false);
  });
  it('is raw where nothing is cooked before, and is taken by the contract', () => {
    expect(input([keep, cook]).ready).toBe(false);
    expect(input([cook, keep])).toMatchObject({ ready: true, packed: 'vacuum', keptC: 5 });
    expect(runKeep(input([cook, keep])).days).toBeGreaterThan(0);
  });
});
