/** The chapters of the validation report: which cases belong to which, by the first word of their file's name. */
export interface Subject {
  readonly title: string;
  readonly intro: string;
  readonly words: readonly string[];
}

export const subjects: readonly Subject[] = [
  {
    title: 'What food is made of, and how it takes heat',
    intro:
      'How dense a food is, how much heat it takes to warm it and how well it conducts follow from its water, protein, fat and the rest. Everything else rests on these.',
    words: ['properties'],
  },
  {
    title: 'Heat in a piece',
    intro:
      'For a slab, a cylinder, a sphere and what can be built from them the temperature at every point and time is known exactly. Where nothing exact is known, another program, written apart, answers the same question.',
    words: ['heat'],
  },
  {
    title: 'Steam, air, water and what they bring to a surface',
    intro: 'At which temperature steam is steam, how an oven dries, and what a surface gets from either.',
    words: ['steam', 'media', 'surfaces'],
  },
  {
    title: 'Chilling and freezing',
    intro: 'How long a piece takes to chill or freeze, how much of it is ice, and whether a limit is met.',
    words: ['cooling', 'chill', 'freezing', 'thawing'],
  },
  {
    title: 'What heat kills',
    intro:
      'A temperature held for a time, added up as the publications add it; tables read as they are printed; the rules of three places.',
    words: ['lethality', 'rules'],
  },
  {
    title: 'What grows, and how long food keeps',
    intro:
      'Growth is the least certain of all that is computed here: the same organism differs from meat to meat.',
    words: ['growth', 'shelf', 'keep'],
  },
  {
    title: 'Salt, brine and filling',
    intro:
      'How salt moves into a piece, what brine is, how much water is left to organisms, how much nitrite goes in.',
    words: ['salt', 'fill', 'mix', 'brine'],
  },
  {
    title: 'What cooking does to the meat',
    intro: 'Juice lost, colour changed, energy used.',
    words: ['loss', 'energy', 'gentle'],
  },
  {
    title: 'How sure, and what a log says',
    intro: 'Numbers that describe spread, and numbers found from a probe’s log.',
    words: ['sure', 'fit'],
  },
  {
    title: 'The carcass',
    intro: 'What an animal yields and what its parts cost.',
    words: ['carcass', 'yields', 'carve'],
  },
  {
    title: 'Tasting and planning',
    intro: 'Statistics of tasting, and plans solved.',
    words: ['tasting', 'taste', 'plan', 'planning', 'schedule'],
  },
];

export function subjectOf(file: string): Subject | undefined {
  const word = file.split('-')[0] ?? '';
  return subjects.find((s) => s.words.includes(word.replace('.example.ts', '')));
}
