import { describe, expect, it } from 'vitest';
import { startingNodes } from '../../../../contract/tree-edit.ts';
import { asTyped, beside, holdTare, itemsOf, nextHeld, nextOpen, readWeight } from './weigh-order.ts';

const goose = startingNodes('goose');
const plain = { whole: false, cuts: false };

describe('itemsOf', () => {
  it('asks for every leaf once when all are weighed together', () => {
    const leaves = goose.filter((n) => n.becomes !== 'step');
    expect(itemsOf(goose, 6, 'together', plain).map((i) => i.node.id)).toEqual(leaves.map((n) => n.id));
  });
  it('one animal after another, or one part after another: the same lines in another order', () => {
    const one = itemsOf(goose, 6, 'animal by animal', { whole: true, cuts: true });
    const other = itemsOf(goose, 6, 'part by part', { whole: true, cuts: true });
    expect(one).toHaveLength(6 * goose.length);
    expect(new Set(one.map((i) => i.key))).toEqual(new Set(other.map((i) => i.key)));
    expect(one[0]).toMatchObject({ animal: 1, node: { parent: null } });
    expect(one[goose.length]).toMatchObject({ animal: 2, node: { parent: null } });
    expect(other[1]).toMatchObject({ animal: 2, node: { parent: null } });
  });
  it('one animal alone needs no number', () => {
    expect(itemsOf(goose, 1, 'animal by animal', plain).every((i) => i.animal === null)).toBe(true);
  });
});

describe('nextOpen', () => {
  const items = itemsOf(goose, 1, 'together', plain);
  it('goes on after the one at hand, then comes back to what was left out', () => {
    const [a, b, c] = items.map((i) => i.key);
    expect(nextOpen(items, null, new Set())).toBe(a);
    expect(nextOpen(items, a!, new Set([a!]))).toBe(b);
    expect(nextOpen(items, items.at(-1)!.key, new Set(items.map((i) => i.key).filter((k) => k !== c)))).toBe(
      c,
    );
    expect(nextOpen(items, a!, new Set(items.map((i) => i.key)))).toBeNull();
  });
  it('up and down stop at the ends', () => {
    expect(beside(items, items[0]!.key, -1)).toBe(items[0]!.key);
    expect(beside(items, items[0]!.key, 1)).toBe(items[1]!.key);
    expect(beside(items, items.at(-1)!.key, 1)).toBe(items.at(-1)!.key);
  });
});

describe('readWeight', () => {
  it.each([
    ['412', 412],
    ['412+398', 810],
    ['3*420g', 1_260],
    ['1.2 kg', 1_200],
    ['1.2kg+300g', 1_500],
    ['412+', 412],
    ['0', 0],
  ])('%s is %d g', (text, grams) =>
    expect(readWeight(text, 'metric')).toMatchObject({ ok: true, grossGrams: grams }),
  );
  it('a bare number is ounces in a US kitchen', () => {
    expect(readWeight('16', 'US')).toMatchObject({ ok: true, grossGrams: 453.592 });
    expect(asTyped(453.592, 'US')).toBe('16');
  });
  it.each(['', 'abc', '-5', '12 °C', '1e12'])('%j is not taken', (text) =>
    expect(readWeight(text, 'metric').ok).toBe(false),
  );
  it('says whether it was a sum', () => {
    expect(readWeight('412+398', 'metric')).toMatchObject({ sum: true });
    expect(readWeight('412', 'metric')).toMatchObject({ sum: false });
  });
});

describe('tares', () => {
  it('one key goes round: none, each container, none', () => {
    const two = [
      { name: 'a', grams: 400 },
      { name: 'b', grams: 120 },
    ];
    expect(nextHeld(two, null)).toBe(0);
    expect(nextHeld(two, 0)).toBe(1);
    expect(nextHeld(two, 1)).toBeNull();
    expect(nextHeld([], null)).toBeNull();
  });
  it('the same weight is the same container; nothing lets go', () => {
    const one = holdTare([], 412);
    expect(one).toEqual({ containers: [{ name: 'Tray 1', grams: 412 }], held: 0 });
    expect(holdTare(one.containers, 412)).toEqual(one);
    expect(holdTare(one.containers, 0)).toEqual({ containers: one.containers, held: null });
  });
});
