import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { begin, change, type History, pause, redo, undo } from './history.ts';

describe('history', () => {
  it('joins changes about the same thing until there is a pause', () => {
    let h = begin('');
    for (const text of ['s', 'st', 'ste']) h = change(h, text, 'name');
    expect(undo(h).present).toBe('');
    h = change(pause(h), 'steam', 'name');
    expect(undo(h).present).toBe('ste');
    h = change(h, 'steam!', 'other');
    expect(undo(h).present).toBe('steam');
  });

  it('never joins a change to one that was undone', () => {
    let h = change(begin(0), 1, 'a');
    h = undo(h);
    h = change(h, 2, 'a');
    expect(undo(h).present).toBe(0);
    expect(h.future).toEqual([]);
  });

  it('comes back to every state, however many there were', () => {
    const moves = fc.array(
      fc.oneof(
        fc.integer({ min: 0, max: 99 }),
        fc.constant('undo' as const),
        fc.constant('redo' as const),
        fc.constant('pause' as const),
      ),
      {
        maxLength: 300,
      },
    );
    fc.assert(
      fc.property(moves, (list) => {
        let h: History<number> = begin(-1);
        for (const move of list) {
          const before = h;
          if (move === 'undo') {
            h = undo(h);
            if (before.past.length > 0) expect(redo(h).present).toBe(before.present);
          } else if (move === 'redo') {
            h = redo(h);
            if (before.future.length > 0) expect(undo(h).present).toBe(before.present);
          } else if (move === 'pause') h = pause(h);
          else {
            h = change(h, move);
            if (move !== before.present) expect(undo(h).present).toBe(before.present);
          }
        }
        while (h.past.length > 0) h = undo(h);
        expect(h.present).toBe(-1);
      }),
    );
  });

  it('keeps a thousand steps', () => {
    let h = begin(0);
    for (let i = 1; i <= 1000; i += 1) h = change(h, i);
    for (let i = 0; i < 1000; i += 1) h = undo(h);
    expect(h.present).toBe(0);
    expect(h.future).toHaveLength(1000);
  });
});
