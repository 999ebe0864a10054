import { judge } from '../src/core/microbes/judge.ts';
import { findRule } from '../src/core/properties/rules.ts';
import type { Example, Row } from './case.ts';

/** The shortest hold at a temperature that meets a rule [min]. */
function shortest(id: string, C: number): number {
  const rule = findRule(id);
  if (rule === undefined) throw new RangeError(`no rule ${id}`);
  let low = 0;
  let high = 6 * 3600;
  while (high - low > 0.05) {
    const s = (low + high) / 2;
    const held = [
      { s: 0, C },
      { s, C },
    ];
    if (judge(held, [rule], { gap: 1e6 })[0]?.passes) high = s;
    else low = s;
  }
  return high / 60;
}

const needed: readonly (readonly [C: number, plain: number, lysozyme: number])[] = [
  [80, 230, 230],
  [85, 36, 84],
  [90, 10, 33.5],
];

/** Ours less what was needed [min]. */
const short: Readonly<Record<string, number>> = {
  'plain meat 80': -101,
  'with lysozyme 80': -101,
  'with lysozyme 85': -48,
  'with lysozyme 90': -23.5,
};

export const example: Example = {
  title: 'Spores of Clostridium botulinum: what the British table asks for, beside what was needed',
  story:
    'A million spores of the kind that grows in the cold were heated in meat without air and kept for 90 days. At 85 and 90 °C the British table asks for just what kept them from growing (at no more than 12 °C). At 80 °C it asks for little more than half of it. With lysozyme in the meat, as egg white brings it, longer was needed at 85 and 90 °C too (at no more than 8 °C): a pack bound with egg white is not made safe for weeks by 90 °C for 10 min. The rule says both where it is read; the figures of the table are not ours to change.',
  equation: 'the shortest hold that the rule passes, found by trying',
  sources: ['cfa-chilled-foods-2006', 'fernandez-peck-1997', 'fernandez-peck-1999'],
  run(): Row[] {
    const row = (C: number, min: number, source: string, words: string): Row => {
      const by = short[`${words} ${C}`];
      return {
        quantity: `${C} °C, ${words}: what was needed, beside what the table asks for`,
        source,
        confidence: 'read',
        expected: min,
        ours: shortest('gb-90c-10min', C),
        tolerance: 0.01 * min,
        unit: 'min',
        why: 'a time that was tried and printed; a hundredth for finding ours',
        ...(by === undefined
          ? {}
          : {
              differs: {
                by,
                why: 'the table asks for less than was found to be needed. Do not rest a life of more than ten days on it alone, and not at all below 85 °C or with egg white in the food: keep it colder, sourer, saltier or shorter, or heat it longer',
                unsafe: true,
              },
            }),
      };
    };
    return needed.flatMap(([C, plain, lysozyme]) => [
      row(C, plain, 'fernandez-peck-1997', 'plain meat'),
      row(C, lysozyme, 'fernandez-peck-1999', 'with lysozyme'),
    ]);
  },
};
