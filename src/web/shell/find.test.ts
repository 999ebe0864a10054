import { describe, expect, it } from 'vitest';
import { find } from './find.ts';

const all = [
  { id: '1', what: 'lot', name: 'L-104', detail: 'pig trotters, 12 kg' },
  { id: '2', what: 'dish', name: 'Stuffed trotter, chestnut and juniper', detail: 'pig, trotter' },
  { id: '3', what: 'dish', name: 'Crêpinette of hock', detail: 'pig, hock' },
  { id: '4', what: 'dish', name: 'Trotter croquettes', detail: 'pig' },
];

describe('find', () => {
  it('puts a name that begins with the word first, then a word within the name, then the detail', () => {
    expect(find('trot', all).map((f) => f.id)).toEqual(['4', '2', '1']);
  });
  it('asks for every word and forgives accents and capitals', () => {
    expect(find('CREPINETTE hock', all).map((f) => f.id)).toEqual(['3']);
    expect(find('trotter lamb', all)).toEqual([]);
  });
  it('takes any character as itself', () => {
    expect(find('(', all)).toEqual([]);
    expect(find('', all)).toHaveLength(4);
  });
});
