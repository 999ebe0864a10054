import { both, checkedOn, mixed, unfit } from './parts-law-rows.ts';

/** Of whatever animal: these come before any other row. */
export const anyAnimalLaw = checkedOn('2026-11-25', [
  {
    species: 'any',
    names: ['foetus', 'fetus', 'unborn young', 'animal under 7 days'],
    books: both,
    status: 'prohibited',
    condition: 'Unborn young are Category 2; animals slaughtered under seven days old are unfit.',
    citation: `Reg (EC) 1069/2009 Article 9(f); ${unfit}`,
    confidence: 'read',
    sources: ['eu-1069-2009', 'eu-2019-627'],
  },
  {
    species: 'any',
    names: ['sticking-point trimming', 'sticking point', 'sticking', 'stick trimming'],
    books: both,
    status: 'prohibited',
    condition: 'Declared unfit.',
    citation: unfit,
    confidence: 'read',
    sources: ['eu-2019-627'],
  },
  {
    species: 'any',
    names: ['gut content', 'stomach content', 'rumen content', 'crop content', 'manure'],
    books: both,
    status: 'prohibited',
    condition: 'Category 2.',
    citation: 'Reg (EC) 1069/2009 Article 9(a)',
    confidence: 'read',
    sources: ['eu-1069-2009'],
  },
  {
    species: 'any',
    names: [
      'by-product',
      'animal by-product',
      'part already a by-product',
      'category 1 material',
      'category 2 material',
      'category 3 material',
    ],
    books: both,
    status: 'prohibited',
    condition:
      'Once a by-product, never food again, however fit it is: it cannot come back from the bin, the label or the book.',
    citation:
      'Reg (EC) 1069/2009 Articles 2(1)(b), 3(1) and 4(1); FSA Manual for Official Controls chapter 2.8 section 1.1.4',
    confidence: mixed,
    sources: ['eu-1069-2009', 'fsa-manual-official-controls'],
  },
  {
    species: 'any',
    names: ['animal found dead', 'dead animal', 'fallen stock', 'stillborn animal'],
    books: both,
    status: 'prohibited',
    condition:
      'Dead before slaughter, stillborn or not inspected alive: unfit (hunted game has rules of its own).',
    citation: `${unfit}; Reg (EC) 1069/2009 Article 9`,
    confidence: mixed,
    sources: ['eu-2019-627', 'eu-1069-2009'],
  },
]);
