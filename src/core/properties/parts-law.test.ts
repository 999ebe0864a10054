import { describe, expect, it } from 'vitest';
import { cite } from '../sources.ts';
import { type LawPlace, lawOf, lawSpeciesOf, partsLaw } from './parts-law.ts';

const places: LawPlace[] = ['GB-ENG', 'GB-SCT', 'GB-WLS', 'GB-NIR', 'EU', 'US'];
const status = (species: string, part: string, place: LawPlace = 'GB-ENG') =>
  lawOf(species, part, place).status;

describe('lawOf', () => {
  it('finds a part by the names a kitchen uses for it', () => {
    for (const name of ['trotter', 'Trotters', 'pig’s trotters', 'hind trotter', 'feet', 'trotter (hind)'])
      expect(status('pig', name), name).toBe('food on conditions');
    for (const bird of ['goose', 'Duck', 'ducks', 'chicken'])
      expect(status(bird, 'necks'), bird).toBe('food');
    expect(status('goose', 'goose neck')).toBe('food');
    expect(status('goose', 'neck with skin')).toBe('food');
  });

  it('stops the head of a bird in Britain, in Northern Ireland and in the EU, and puts conditions on it in the US', () => {
    for (const place of places.filter((p) => p !== 'US'))
      expect(status('goose', 'head', place), place).toBe('by-product by default: ask');
    expect(status('goose', 'head', 'US')).toBe('food on conditions');
  });

  it('prohibits lungs of livestock in the US only, and skin-on sheep here', () => {
    expect(status('pig', 'lungs', 'US')).toBe('prohibited');
    expect(status('pig', 'lungs')).toBe('food on conditions');
    expect(status('lamb', 'skin')).toBe('prohibited');
    expect(status('chicken', 'feathers')).toBe('prohibited');
    expect(status('pig', 'foetus')).toBe('prohibited');
  });

  it('tells a lamb’s head from a head whose age nobody has said', () => {
    expect(status('lamb', 'head')).toBe('food on conditions');
    expect(status('sheep', 'head')).toBe('not known: ask');
    expect(status('sheep', 'head over 12 months')).toBe('prohibited');
  });

  it('does not know what is not in the table', () => {
    for (const [species, part] of [
      ['swan', 'neck'],
      ['pig', 'gland'],
      ['pig', ''],
      ['', 'heart'],
      ['constructor', 'heart'],
    ] as const)
      for (const place of places)
        expect(status(species, part, place), `${species} ${part}`).toBe('not known: ask');
    expect(lawSpeciesOf('beef')).toBeNull();
  });

  it('lets the worst of several parts decide', () => {
    expect(status('pig', 'trotter, hock and gland')).toBe('not known: ask');
    expect(status('pig', 'trotter and ear')).toBe('food on conditions');
    expect(status('goose', 'neck and head')).toBe('by-product by default: ask');
    expect(status('pig', 'heart + lungs', 'US')).toBe('prohibited');
  });

  it('adds the rule on uncooked products in Britain, with its citation', () => {
    const england = lawOf('pig', 'spleen', 'GB-ENG');
    expect(england.citation).toContain('SI 2014/3001');
    expect(lawOf('pig', 'spleen', 'EU').citation).not.toContain('SI 2014/3001');
  });
});

describe('partsLaw', () => {
  it('names sources that the bibliography holds, a condition and a citation for every row', () => {
    for (const row of partsLaw) {
      expect(row.condition.length).toBeGreaterThan(5);
      expect(row.citation.length).toBeGreaterThan(5);
      expect(row.sources.length).toBeGreaterThan(0);
      for (const key of row.sources) expect(cite(key).length).toBeGreaterThan(10);
    }
  });

  it('gives one answer for each animal, name and law book', () => {
    const seen = new Map<string, string>();
    for (const row of partsLaw)
      for (const book of row.books)
        for (const name of row.names) {
          const key = `${row.species}|${name}|${book}`;
          expect(seen.has(key), key).toBe(false);
          seen.set(key, row.status);
        }
  });
});
