import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cite } from '../sources.ts';
import { lawPath, lawQuestions } from './law-questions.ts';
import { type LawPlace, lawOf, partsLaw } from './parts-law.ts';
import { searchLaw } from './parts-law-search.ts';

const places: LawPlace[] = ['GB-ENG', 'GB-SCT', 'GB-WLS', 'GB-NIR', 'EU', 'US'];
const first = (text: string, place: LawPlace = 'GB-ENG') => {
  const [hit] = searchLaw(text, place).hits;
  return hit === undefined ? 'none' : `${hit.species}: ${hit.part}: ${hit.law.status}`;
};

describe('searchLaw', () => {
  it.each([
    ['goose heads', 'poultry: head: by-product by default: ask'],
    ['Head of goose', 'poultry: head: by-product by default: ask'],
    ['pig’s trotters', 'pig: trotter: food on conditions'],
    ['ris de veau', 'cattle: sweetbread: food'],
    ['gésiers', 'poultry: gizzard: food'],
    ['guanciale', 'pig: cheek: food'],
    ['crépine', 'pig: caul: food'],
    ['cockscombs', 'poultry: comb: food on conditions'],
    ['black pudding', 'pig: blood: food on conditions'],
    ['lamb head', 'sheep or goat: head: food on conditions'],
    ['sheep head', 'sheep or goat: head: prohibited'],
    ['ox cheek', 'cattle: cheek: food on conditions'],
    ['wild boar head', 'wild boar: head: food on conditions'],
    ['foetus', 'any: foetus: prohibited'],
    ['feathers', 'poultry: feather: prohibited'],
  ])('%s: %s', (text, expected) => {
    expect(first(text)).toBe(expected);
  });

  it('lists an animal, every part of it, and all animals for a part', () => {
    const pig = searchLaw('pork', 'GB-ENG').hits;
    expect(pig.length).toBeGreaterThan(20);
    expect(new Set(pig.map((h) => h.species))).toEqual(new Set(['pig']));
    const lungs = searchLaw('lungs', 'US').hits.filter((h) => h.part === 'lung');
    expect(lungs.map((h) => h.species)).toEqual(
      expect.arrayContaining(['pig', 'poultry', 'sheep or goat', 'cattle']),
    );
  });

  it('what it does not find is not known, never fine', () => {
    for (const text of ['unicorn horn', 'emu', 'xyzzy', 'salt'])
      for (const place of places) {
        const { hits, none } = searchLaw(text, place);
        expect(hits, text).toEqual([]);
        expect(none?.status, text).toBe('not known: ask');
      }
    expect(searchLaw('  ', 'GB-ENG')).toEqual({ hits: [], none: null });
  });

  it('finds every part of the table by its animal and its name, with the answer the table gives', () => {
    for (const row of partsLaw)
      for (const name of row.names.filter((n) => n !== '*')) {
        const place = row.books.includes('US') ? 'US' : 'GB-ENG';
        const { hits } = searchLaw(name, place);
        const own = hits.find((h) => h.species === row.species && row.names.includes(h.part));
        expect(own, `${row.species} ${name}`).toBeDefined();
      }
  });

  it('takes whatever is typed, and says of a part no more than the table', () => {
    const order = [
      'food',
      'food on conditions',
      'by-product by default: ask',
      'not known: ask',
      'prohibited',
    ];
    fc.assert(
      fc.property(fc.string({ maxLength: 40 }), fc.constantFrom(...places), (text, place) => {
        const { hits, none } = searchLaw(text, place);
        expect(hits.length === 0 || none === null).toBe(true);
        for (const hit of hits) expect(order).toContain(hit.law.status);
      }),
    );
  });
});

describe('lawPath', () => {
  it('stops exactly where the law stops, at the first question that does', () => {
    for (const row of partsLaw)
      for (const name of row.names)
        for (const place of places) {
          const species = row.species === 'any' ? 'pig' : row.species;
          const path = lawPath(species, name, place);
          const fine = ['food', 'food on conditions'].includes(lawOf(species, name, place).status);
          expect(
            path.some((q) => q.stops),
            `${species} ${name} ${place}`,
          ).toBe(!fine);
          expect(path.filter((q) => q.stops).length).toBeLessThan(2);
        }
    expect(lawPath('emu', 'neck', 'GB-ENG').find((q) => q.stops)?.id).toBe('barred');
  });

  it('never takes what only the plant knows as answered', () => {
    for (const q of lawPath('goose', 'neck', 'GB-ENG'))
      if (['by-product', 'inspection', 'wanted', 'dressed', 'cold', 'made into'].includes(q.id))
        expect(q.answer).toBe('ask');
  });

  it('cites every question', () => {
    for (const q of lawQuestions) {
      expect(q.citation).toMatch(/\d/);
      for (const key of q.sources) expect(cite(key).length).toBeGreaterThan(10);
    }
  });
});
