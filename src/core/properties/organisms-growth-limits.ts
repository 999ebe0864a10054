/**
 * Where organisms have been found to grow at all, as tabulated: outside every table's range growth is not expected, inside it
 * nothing is said of how fast. What does not grow may still live, and come back when the food is warmed or thinned.
 */
import type { Confidence } from '../sources.ts';

export interface GrowthLimits {
  readonly organism: string;
  /** Temperatures [°C]. */
  readonly C?: readonly [low: number, high: number];
  readonly pH?: readonly [low: number, high: number];
  /** The least water activity. */
  readonly waterActivity?: number;
  /** The most salt in the water phase, mass fraction. */
  readonly waterPhaseSalt?: number;
  readonly source: string;
  readonly confidence: Confidence;
}

const icmsf = { source: 'icmsf-1996', confidence: 'secondary' } as const;
const fda = { source: 'fda-hazards-guide-growth', confidence: 'memory' } as const;

export const growthLimits: readonly GrowthLimits[] = [
  // The lowest temperature printed for Clostridium perfringens there, 4 °C, is left out: every other source has 10 to 12 °C.
  { organism: 'clostridium-perfringens', pH: [5.5, 9], waterActivity: 0.93, ...icmsf },
  {
    organism: 'clostridium-perfringens',
    C: [10, 52],
    pH: [5, 9],
    waterActivity: 0.93,
    waterPhaseSalt: 0.07,
    ...fda,
  },
  { organism: 'listeria-monocytogenes', C: [-0.4, 45], pH: [4.39, 9.4], waterActivity: 0.92, ...icmsf },
  {
    organism: 'listeria-monocytogenes',
    C: [-0.4, 45],
    pH: [4.4, 9.4],
    waterActivity: 0.92,
    waterPhaseSalt: 0.1,
    ...fda,
  },
  { organism: 'salmonella', C: [5.2, 46.2], pH: [3.8, 9.5], waterActivity: 0.94, ...icmsf },
  {
    organism: 'salmonella',
    C: [5.2, 46.2],
    pH: [3.7, 9.5],
    waterActivity: 0.94,
    waterPhaseSalt: 0.08,
    ...fda,
  },
  { organism: 'bacillus-cereus', C: [4, 55], pH: [5, 8.8], waterActivity: 0.93, ...icmsf },
  {
    organism: 'bacillus-cereus',
    C: [4, 55],
    pH: [4.3, 9.3],
    waterActivity: 0.92,
    waterPhaseSalt: 0.1,
    ...fda,
  },
  { organism: 'escherichia-coli', C: [7, 46], pH: [4.4, 9], waterActivity: 0.95, ...icmsf },
  {
    organism: 'escherichia-coli',
    C: [6.5, 49.4],
    pH: [4, 10],
    waterActivity: 0.95,
    waterPhaseSalt: 0.065,
    ...fda,
  },
  { organism: 'staphylococcus-aureus', C: [7, 48], pH: [4, 10], waterActivity: 0.83, ...icmsf },
  {
    organism: 'staphylococcus-aureus',
    C: [7, 50],
    pH: [4, 10],
    waterActivity: 0.83,
    waterPhaseSalt: 0.2,
    ...fda,
  },
  { organism: 'campylobacter', C: [32, 45], pH: [4.9, 9], waterActivity: 0.987, ...icmsf },
  {
    organism: 'campylobacter',
    C: [30, 45],
    pH: [4.9, 9.5],
    waterActivity: 0.987,
    waterPhaseSalt: 0.017,
    ...fda,
  },
  // The table gives about 5 % salt in place of a water activity.
  { organism: 'yersinia-enterocolitica', C: [-1.3, 42], pH: [4.2, 9.6], ...icmsf },
  {
    organism: 'yersinia-enterocolitica',
    C: [-1.3, 42],
    pH: [4.2, 10],
    waterActivity: 0.945,
    waterPhaseSalt: 0.07,
    ...fda,
  },
  { organism: 'clostridium-botulinum-proteolytic', C: [10, 50], pH: [4.7, 9], waterActivity: 0.93, ...icmsf },
  {
    organism: 'clostridium-botulinum-proteolytic',
    C: [10, 48],
    pH: [4.6, 9],
    waterActivity: 0.935,
    waterPhaseSalt: 0.1,
    ...fda,
  },
  // Its highest temperature and pH are not in that table.
  { organism: 'clostridium-botulinum-non-proteolytic', waterActivity: 0.965, ...icmsf },
  {
    organism: 'clostridium-botulinum-non-proteolytic',
    C: [3.3, 45],
    pH: [5, 9],
    waterActivity: 0.97,
    waterPhaseSalt: 0.05,
    ...fda,
  },
  { organism: 'shigella', C: [6.1, 47.1], pH: [4.9, 9.34], waterPhaseSalt: 0.0518, ...icmsf },
  {
    organism: 'shigella',
    C: [6.1, 47.1],
    pH: [4.8, 9.3],
    waterActivity: 0.96,
    waterPhaseSalt: 0.052,
    ...fda,
  },
];
