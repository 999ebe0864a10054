import { expect, it, vi } from 'vitest';
import { register, settleAll } from './settle.ts';

it('asks every open panel, and only those, and reports each reason', () => {
  const tell = vi.fn(() => null);
  const closeFirst = register(tell);
  const closeSecond = register(() => 'the cook step: skin thicker than the piece');
  expect(settleAll()).toEqual(['the cook step: skin thicker than the piece']);
  closeSecond();
  expect(settleAll()).toEqual([]);
  expect(tell).toHaveBeenCalledTimes(2);
  closeFirst();
  settleAll();
  expect(tell).toHaveBeenCalledTimes(2);
});
