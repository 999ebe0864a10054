import { describe, expect, it, vi } from 'vitest';
import { type Action, actionFor, keyName, register } from './actions.ts';

const press = (
  key: string,
  mods: Partial<Record<'ctrlKey' | 'metaKey' | 'shiftKey' | 'altKey', boolean>> = {},
) => ({
  key,
  ctrlKey: false,
  metaKey: false,
  shiftKey: false,
  altKey: false,
  ...mods,
});

describe('keyName', () => {
  it('spells keys as the table does', () => {
    expect(keyName(press('/'))).toBe('/');
    expect(keyName(press('?', { shiftKey: true }))).toBe('?');
    expect(keyName(press('Z', { ctrlKey: true, shiftKey: true }))).toBe('mod+shift+z');
    expect(keyName(press('z', { metaKey: true }))).toBe('mod+z');
    expect(keyName(press('ArrowLeft', { altKey: true }))).toBe('alt+arrowleft');
  });
});

describe('actionFor', () => {
  const undo: Action = { id: 'undo', label: 'Undo', keys: ['mod+z'], run: vi.fn(), whileTyping: true };
  const search: Action = { id: 'search', label: 'Search', keys: ['/'], run: vi.fn() };

  it('leaves a plain key to the field somebody types in', () => {
    expect(actionFor(press('/'), false, [search])).toBe(search);
    expect(actionFor(press('/'), true, [search])).toBeUndefined();
    expect(actionFor(press('z', { ctrlKey: true }), true, [undo])).toBe(undo);
  });

  it('never runs what is not possible now', () => {
    expect(actionFor(press('z', { ctrlKey: true }), false, [{ ...undo, enabled: false }])).toBeUndefined();
  });

  it('gives a key to the screen that opened last, and back when it closes', () => {
    const away = register([search]);
    const other = { ...search, id: 'other' };
    const close = register([other]);
    expect(actionFor(press('/'), false)).toBe(other);
    close();
    expect(actionFor(press('/'), false)).toBe(search);
    away();
    expect(actionFor(press('/'), false)).toBeUndefined();
  });
});
