import { describe, expect, it } from 'vitest';
import { runKeep } from './keep.ts';
import { keepInputOf } from './keep-step.ts';
import type { Method, StepOf } from './steps.ts';

const common = { how: '', handsMin: 0, asks: [] };
const keep: StepOf<'keep'> = {
  kind: 'keep',
  id: 'k',
  name: 'Keep',
  ...common,
  maxC: 5,
  days: 3,
  packed: 'vacuum-packed',
};
const cook: StepOf<'cook'> = {
  kind: 'cook',
  id: 'c',
  name: 'Steam',
  ...common,
  body: {
    shape: 'cylinder',
    diameterMm: 50,
    layers: [{ name: 'meat', properties: { kWmK: 0.48, rhoKgM3: 1050, cpJkgK: 3500 } }],
  },
  startC: 5,
  stages: [],
  target: { referenceC: 70, zC: 7.5, min: 2 },
  rules: ['gb-70c-2min'],
};
const wrap: StepOf<'wrap'> = {
  kind: 'wrap',
  id: 'w',
  name: 'Bag',
  ...common,
  material: 'bag',
  layers: 1,
  micrometres: 80,
  kWmK: 0.3,
};
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
