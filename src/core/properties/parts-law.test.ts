import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cite } from '../sources.ts';
import { type LawPlace, lawOf, lawSpeciesOf, partsLaw, riskMaterial } from './parts-law.ts';
import { riskRules } from './risk-material.ts';

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
    expect(status('sheep', 'head')).toBe('prohibited');
    expect(lawOf('sheep', 'head', 'GB-ENG').reason).toContain('The age is not shown');
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
    expect(lawSpeciesOf('emu')).toBeNull();
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

const origins = [undefined, null, 0, 11, 12, 12.01, 13, 29.9, 30, 30.01, 31, 48, Number.NaN, -1];

describe('riskMaterial', () => {
  const is = (
    species: string,
    part: string,
    place: LawPlace,
    ageMonths?: number | null,
    negligible?: boolean,
  ) =>
    riskMaterial(species, part, place, {
      ...(ageMonths === undefined ? {} : { ageMonths }),
      ...(negligible === undefined ? {} : { negligible }),
    }).is;
  const european = places.filter((p) => p !== 'US');

  it('skull, brain, eyes and cord of cattle: over 12 months in Europe, from 30 months on in the US', () => {
    for (const part of ['skull', 'head', 'brains', 'eyes', 'spinal cord', 'ox brain']) {
      for (const place of european) {
        expect(is('cattle', part, place, 12), `${part} ${place}`).toBe('no');
        expect(is('cattle', part, place, 12.01), `${part} ${place}`).toBe('yes');
        expect(is('beef', part, place, 13), `${part} ${place}`).toBe('yes');
        expect(is('beef', part, place, 13, true), 'a good standing does not free the skull').toBe('yes');
      }
      expect(is('cattle', part, 'US', 29.9), part).toBe('no');
      expect(is('cattle', part, 'US', 30), part).toBe('yes');
    }
  });

  it('backbone: over 30 months; free of it from a negligible origin in the EU, not settled in Britain', () => {
    for (const place of european) {
      expect(is('cattle', 'backbone', place, 30)).toBe('no');
      expect(is('cattle', 'vertebral column', place, 30.01)).toBe('yes');
    }
    expect(is('cattle', 'backbone', 'EU', 48, true)).toBe('no');
    expect(is('cattle', 'backbone', 'GB-NIR', 48, true)).toBe('no');
    expect(is('cattle', 'backbone', 'GB-ENG', 48, true)).toBe('ask');
    expect(is('cattle', 'tail', 'GB-ENG', 48)).toBe('no');
  });

  it('tonsils and gut of cattle at every age', () => {
    for (const part of ['tonsils', 'ileum', 'caecum', 'mesentery'])
      for (const age of [0, 6, 31])
        for (const place of european) {
          expect(is('cattle', part, place, age), part).toBe('yes');
          expect(is('cattle', part, 'EU', age, true), part).toBe('no');
        }
    expect(is('cattle', 'tonsils', 'US', 6)).toBe('yes');
  });

  it('head of sheep and goats: over 12 months, or with nobody saying how old', () => {
    for (const place of european) {
      expect(is('sheep', 'head', place, 11)).toBe('no');
      expect(is('lamb', 'head', place, 12)).toBe('no');
      expect(is('goat', 'brain', place, 12.01)).toBe('yes');
      expect(is('lamb', 'head', place, null)).toBe('yes');
      expect(is('hogget', 'head', place)).toBe('yes');
      expect(is('lamb', 'spleen', place, 6)).toBe('ask');
    }
    expect(is('sheep', 'head', 'US', 60)).toBe('no');
  });

  it('an age not known is never better than an age over every limit', () => {
    const worse = ['no', 'ask', 'yes'];
    for (const rule of riskRules)
      for (const name of rule.names)
        for (const place of places)
          for (const negligible of [undefined, null, false, true]) {
            const at = (ageMonths: number | null) =>
              worse.indexOf(
                riskMaterial(rule.species, name, place, { ageMonths, negligible: negligible ?? null }).is,
              );
            for (const age of [null, Number.NaN, -1]) expect(at(age)).toBeGreaterThanOrEqual(at(600));
            for (const [i, age] of [0, 12, 13, 30, 31].entries())
              expect(at([12, 13, 30, 31, 600][i] as number)).toBeGreaterThanOrEqual(at(age));
          }
  });

  it('decides the law: what is risk material is prohibited, whatever the row says', () => {
    for (const rule of riskRules)
      for (const name of rule.names)
        for (const place of places)
          for (const age of origins) {
            const origin = age === undefined ? {} : { ageMonths: age };
            const risk = riskMaterial(rule.species, name, place, origin);
            const law = lawOf(rule.species, name, place, origin);
            if (risk.is === 'yes') expect(law.status, `${name} ${place} ${age}`).toBe('prohibited');
            if (risk.is === 'ask') expect(law.status).toBe('by-product by default: ask');
            if (law.status === 'food' || law.status === 'food on conditions') expect(risk.is).toBe('no');
          }
  });

  it('the list has a source, a day and a citation for each rule', () => {
    for (const rule of riskRules) {
      for (const key of rule.sources) expect(cite(key).length).toBeGreaterThan(10);
      expect(rule.checked).toMatch(/^\d{4}-\d\d-\d\d$/);
      expect(rule.citation).toMatch(/999\/2001|310\.22/);
    }
  });
});

describe('what was published of single parts', () => {
  it.each([
    ['cattle', 'skull', 'GB-ENG', 13, 'prohibited'],
    ['cattle', 'skull', 'EU', 13, 'prohibited'],
    ['cattle', 'skull', 'US', 13, 'food on conditions'],
    ['cattle', 'skull', 'US', 30, 'prohibited'],
    ['lamb', 'head', 'GB-ENG', 11, 'food on conditions'],
    ['lamb', 'head', 'GB-ENG', null, 'prohibited'],
    ['sheep', 'lung', 'GB-ENG', undefined, 'food on conditions'],
    ['sheep', 'lung', 'US', undefined, 'prohibited'],
    ['duck', 'head', 'GB-ENG', undefined, 'by-product by default: ask'],
    ['duck', 'head', 'EU', undefined, 'by-product by default: ask'],
    ['duck', 'head', 'US', undefined, 'food on conditions'],
    ['chicken', 'comb', 'GB-ENG', undefined, 'food on conditions'],
    ['duck', 'neck', 'GB-ENG', undefined, 'food'],
    ['duck', 'neck', 'EU', undefined, 'food'],
    ['duck', 'neck', 'US', undefined, 'food'],
    ['pig', 'testicle', 'GB-ENG', undefined, 'food on conditions'],
    ['duck', 'category 3 material', 'GB-ENG', undefined, 'prohibited'],
    ['wild boar', 'head', 'EU', undefined, 'food on conditions'],
    ['cattle', 'oxtail', 'GB-ENG', 48, 'food'],
    ['cattle', 'head and cheek meat', 'GB-ENG', 48, 'food on conditions'],
    ['venison', 'lungs', 'GB-ENG', undefined, 'not known: ask'],
    ['calf', 'brain', 'GB-ENG', undefined, 'food on conditions'],
    ['calf', 'brain', 'GB-ENG', null, 'prohibited'],
  ] as const)('%s, %s, in %s at %s months: %s', (species, part, place, age, expected) => {
    expect(lawOf(species, part, place, age === undefined ? {} : { ageMonths: age }).status).toBe(expected);
  });

  it('heads of poultry in Britain and the EU name both texts that stop them', () => {
    for (const place of places.filter((p) => p !== 'US'))
      for (const bird of ['duck', 'goose', 'chicken', 'turkey', 'spent hen']) {
        const law = lawOf(bird, 'head', place);
        expect(law.status).toBe('by-product by default: ask');
        expect(law.citation).toContain('1069/2009');
        expect(law.citation).toContain('853/2004');
      }
  });

  it('a testicle in raw sausage is caught by the rule on uncooked products in Britain only', () => {
    expect(lawOf('pig', 'testicle', 'GB-ENG').reason).toContain('uncooked');
    expect(lawOf('pig', 'testicle', 'EU').reason).not.toContain('uncooked');
  });
});

describe('lawOf over anything that may be typed', () => {
  const order = ['food', 'food on conditions', 'by-product by default: ask', 'not known: ask', 'prohibited'];
  const known = partsLaw.flatMap((r) => r.names.map((n) => [r.species, n] as const));
  const place = fc.constantFrom(...places);
  const age = fc.option(fc.double({ min: 0, max: 600, noNaN: true }), { nil: null });

  it('what is not in the table is never fine', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), place, age, (species, part, where, ageMonths) => {
        const law = lawOf(species, part, where, { ageMonths });
        if (lawSpeciesOf(species) === null) expect(['not known: ask', 'prohibited']).toContain(law.status);
        else if (law.checked === null) expect(law.status).toBe('not known: ask');
      }),
    );
  });

  it('the worst of several parts decides', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...known),
        fc.constantFrom(...known),
        place,
        age,
        (a, b, where, ageMonths) => {
          const species = a[0] === 'any' ? 'pig' : a[0];
          const of = (part: string) => order.indexOf(lawOf(species, part, where, { ageMonths }).status);
          expect(of(`${a[1]}, ${b[1]}`)).toBeGreaterThanOrEqual(Math.max(of(a[1]), of(b[1])));
        },
      ),
    );
  });
});

describe('partsLaw', () => {
  it('names sources that the bibliography holds, a condition and a citation for every row', () => {
    for (const row of partsLaw) {
      expect(row.condition.length).toBeGreaterThan(5);
      expect(row.citation.length).toBeGreaterThan(5);
      expect(row.sources.length).toBeGreaterThan(0);
      for (const key of row.sources) expect(cite(key).length).toBeGreaterThan(10);
      expect(new Set(row.sources).size).toBe(row.sources.length);
      expect(row.books.length).toBeGreaterThan(0);
      expect(new Date(`${row.checked}T00:00:00Z`).toISOString().slice(0, 10)).toBe(row.checked);
      expect(['read', 'partly read, partly from memory', 'memory', 'interpretation']).toContain(
        row.confidence,
      );
      expect(row.citation).toMatch(/\d/);
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
