/**
 * How fast organisms die of heat, as measured: decimal reduction times with what they were measured in. For plausibility
 * and for showing where a rule comes from; a rule's verdict never rests on these.
 */
import type { RuleConfidence } from './rule.ts';

export interface HeatResistance {
  readonly id: string;
  readonly organism: string;
  readonly measuredIn: string;
  /** Temperature [°C] and decimal reduction time [s]. Valid between the lowest and the highest temperature. */
  readonly D: readonly { readonly C: number; readonly s: number }[];
  /** As published [°C]; where absent, fit it to the D-values. */
  readonly z?: number;
  readonly source: string;
  readonly confidence: RuleConfidence;
  readonly note?: string;
}

const inMinutes = (...pairs: readonly (readonly [C: number, min: number])[]) =>
  pairs.map(([C, min]) => ({ C, s: min * 60 }));

export const heatResistances: readonly HeatResistance[] = [
  {
    id: 'salmonella-broth',
    organism: 'Salmonella, eight serotypes',
    measuredIn: 'chicken broth',
    D: inMinutes([55, 4.87], [58, 2.72], [60, 1.3], [62, 0.41]),
    source: 'juneja-eblen-ransom-2001',
    confidence: 'read',
    note: 'In beef, pork, turkey and chicken the times at 58 and 60 °C were significantly longer than in broth.',
  },
  {
    id: 'perfringens-beef',
    organism: 'Clostridium perfringens, vegetative cells',
    measuredIn: 'minced beef',
    D: inMinutes([55, 21.6], [57.5, 10.2], [60, 5.3], [62.5, 1.6]),
    source: 'juneja-marmer-1998',
    confidence: 'read',
  },
  {
    id: 'perfringens-turkey',
    organism: 'Clostridium perfringens, vegetative cells',
    measuredIn: 'minced turkey',
    D: inMinutes([55, 17.5], [62.5, 1.3]),
    source: 'juneja-marmer-1998',
    confidence: 'read',
  },
  {
    id: 'listeria-regression',
    organism: 'Listeria monocytogenes',
    measuredIn: 'broth and foods, regression log10 D(s) = 10.888 − 0.14519 T',
    D: [60, 65, 70].map((C) => ({ C, s: 10 ** (10.888 - 0.14519 * C) })),
    z: 1 / 0.14519,
    source: 'mackey-bratchell-1989',
    confidence: 'memory',
  },
  {
    id: 'salmonella-senftenberg-turkey',
    organism: 'Salmonella Senftenberg',
    measuredIn: 'minced turkey',
    D: inMinutes([55, 211.35], [60, 13.24], [65, 3.43]),
    source: 'thermal-food-processing-7-1',
    confidence: 'secondary',
    note: 'An unusually resistant strain: the worst case, not the rule.',
  },
  {
    id: 'listeria-bologna',
    organism: 'Listeria monocytogenes',
    measuredIn: 'turkey bologna',
    D: inMinutes([61, 2.1], [65, 0.27]),
    z: 4.44,
    source: 'thermal-food-processing-7-1',
    confidence: 'secondary',
  },
  {
    id: 'listeria-turkey',
    organism: 'Listeria monocytogenes',
    measuredIn: 'minced turkey',
    D: inMinutes([51.7, 81.3], [57.2, 2.6], [62.8, 0.6]),
    source: 'thermal-food-processing-7-1',
    confidence: 'secondary',
  },
  {
    id: 'ecoli-turkey',
    organism: 'Escherichia coli O157:H7',
    measuredIn: 'minced turkey',
    D: inMinutes([60, 5.47], [65, 1.69]),
    source: 'thermal-food-processing-7-1',
    confidence: 'secondary',
    note: 'A third value, at 55 °C, could not be read with certainty and is left out.',
  },
  {
    id: 'ecoli-beef',
    organism: 'Escherichia coli O157:H7',
    measuredIn: 'minced beef',
    D: [
      { C: 57.2, s: 270 },
      { C: 60, s: 45 },
      { C: 62.8, s: 24 },
      { C: 64.3, s: 9.6 },
    ],
    source: 'doyle-schoeni-1984',
    confidence: 'memory',
  },
  {
    id: 'perfringens-beef-phosphate',
    organism: 'Clostridium perfringens, vegetative cells',
    measuredIn: 'minced beef with 0.15 % phosphate',
    D: inMinutes([55, 17.9], [57.5, 9.4], [60, 3.5], [62.5, 1.2]),
    source: 'juneja-marmer-1998',
    confidence: 'read',
  },
];

/** The published resistance of an id; undefined where there is none [-]. Source: own-assumption */
export function findHeatResistance(id: string): HeatResistance | undefined {
  return heatResistances.find((row) => row.id === id);
}
