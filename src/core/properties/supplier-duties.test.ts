import { expect, it } from 'vitest';
import { cite } from '../sources.ts';
import { animalNames, type LawPlace, lawOf, partsLaw } from './parts-law.ts';
import { lawNotes } from './parts-law-notes.ts';
import { supplierDuties } from './supplier-duties.ts';

const places: LawPlace[] = ['GB-ENG', 'GB-SCT', 'GB-WLS', 'GB-NIR', 'EU', 'US'];
const about = (species: string, part: string, place: LawPlace = 'GB-ENG') =>
  supplierDuties(species, part, place).map((d) => d.about);
const notes = (species: string, part: string, place: LawPlace = 'GB-ENG') =>
  lawNotes(species, part, place).map((n) => n.about);

it('every line has a citation, a source that is in the bibliography, a day and how it is known', () => {
  let seen = 0;
  for (const species of ['goose', 'pig', 'ox', 'pheasant'])
    for (const part of ['whole animal', ...new Set(partsLaw.flatMap((r) => r.names))])
      for (const place of places) {
        const lines = [...supplierDuties(species, part, place), ...lawNotes(species, part, place)];
        seen += lines.length;
        for (const line of lines) {
          expect(line.citation).toMatch(/\d|National Health Service|Food Standards Agency/);
          expect(line.checked).toMatch(/^\d{4}-\d\d-\d\d$/);
          for (const key of line.sources) expect(cite(key).length).toBeGreaterThan(10);
        }
        expect(new Set(lines.map((l) => l.text)).size).toBe(lines.length);
      }
  expect(seen).toBeGreaterThan(1_000);
});

it('asks for inspection, intention and records of every animal in Britain and the EU, and of none it does not know', () => {
  for (const species of Object.keys(animalNames))
    for (const place of places.filter((p) => p !== 'US'))
      for (const wanted of ['intention', 'records', 'temperature'])
        expect(about(species, 'liver', place), `${species} ${place}`).toContain(wanted);
  expect(supplierDuties('emu', 'neck', 'GB-ENG')).toEqual([]);
  expect(lawNotes('emu', 'neck', 'GB-ENG')).toEqual([]);
});

it('asks what the part calls for', () => {
  expect(about('pig', 'blood')).toContain('blood');
  expect(about('pig', 'trotter')).not.toContain('blood');
  expect(about('pig', 'hind trotter, cut long')).toContain('dressing');
  expect(about('lamb', 'head')).toContain('age');
  expect(about('lamb', 'whole animal')).toContain('age');
  expect(about('lamb', 'liver')).not.toContain('age');
  expect(about('lamb', 'head', 'US')).not.toContain('age');
  expect(about('beef', 'brains', 'US')).toContain('age');
  const cold = (species: string, part: string) =>
    supplierDuties(species, part, 'GB-ENG').filter((d) => d.about === 'temperature');
  expect(cold('pig', 'liver')[0]?.text).toContain('3 °C');
  expect(cold('pig', 'trotters')).toHaveLength(1);
  expect(cold('pig', 'trotters')[0]?.text).toContain('7 °C');
  expect(cold('goose', 'neck with skin')[0]?.text).toContain('4 °C');
});

it('notes what may not be made of a part, what comes off it and what it carries', () => {
  expect(notes('duck', 'head')).toEqual(
    expect.arrayContaining(['meat products', 'mechanically separated meat', 'by-product']),
  );
  expect(notes('pig', 'head meat')).toContain('minced meat');
  expect(notes('pig', 'spleen')).toContain('uncooked products');
  expect(notes('pig', 'spleen', 'GB-NIR')).toContain('uncooked products');
  expect(notes('pig', 'spleen', 'EU')).not.toContain('uncooked products');
  expect(notes('goose', 'gizzard')).not.toContain('uncooked products');
  expect(notes('pheasant', 'breast')).toContain('lead');
  expect(notes('venison', 'liver')).toEqual(expect.arrayContaining(['lead', 'vitamin A', 'heavy metals']));
  expect(notes('goose', 'liver')).toContain('vitamin A');
  expect(notes('pig', 'windpipe')).toEqual(expect.arrayContaining(['glands', 'meat products']));
  expect(notes('pig', 'neck')).toContain('sticking point');
});

it('what the rows put under the rule on uncooked products, the notes do as well', () => {
  for (const row of partsLaw.filter((r) => r.uncookedRule === true))
    for (const name of row.names) {
      if (
        /under 12/.test(name) ||
        !lawOf(row.species, name, 'GB-ENG', { ageMonths: 6 }).reason.includes('uncooked')
      )
        continue;
      // A head holds a brain, and pluck holds lungs; the rows of whole heads say so, the notes name brain and lungs.
      if (/head|skull/.test(name)) continue;
      expect(notes(row.species, name), `${row.species} ${name}`).toContain('uncooked products');
    }
});
