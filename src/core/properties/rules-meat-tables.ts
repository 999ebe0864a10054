/**
 * Dwell times for cooked meat (beef, pork, lamb and the like): 6.5-log10 and 7-log10 reductions of Salmonella from one table of
 * the guideline, 5-log10 from another, as printed. Zero: reached the moment the temperature is.
 */

export interface MeatRow {
  readonly F: number;
  /** As printed (the guideline prints 58.4 and 59.5 at 137 and 139 °F here). */
  readonly C: number;
  readonly unit: 'min' | 's';
  readonly log65: number;
  readonly log7: number;
  readonly log5: number;
}

export const meatRows: readonly MeatRow[] = [
  { F: 130, C: 54.4, unit: 'min', log65: 112, log7: 121, log5: 86 },
  { F: 131, C: 55, unit: 'min', log65: 89, log7: 97, log5: 69 },
  { F: 132, C: 55.6, unit: 'min', log65: 71, log7: 77, log5: 55 },
  { F: 133, C: 56.1, unit: 'min', log65: 56, log7: 62, log5: 44 },
  { F: 134, C: 56.7, unit: 'min', log65: 45, log7: 47, log5: 35 },
  { F: 135, C: 57.2, unit: 'min', log65: 36, log7: 37, log5: 28 },
  { F: 136, C: 57.8, unit: 'min', log65: 28, log7: 32, log5: 22 },
  { F: 137, C: 58.4, unit: 'min', log65: 23, log7: 24, log5: 18 },
  { F: 138, C: 58.9, unit: 'min', log65: 18, log7: 19, log5: 14 },
  { F: 139, C: 59.5, unit: 'min', log65: 15, log7: 15, log5: 11 },
  { F: 140, C: 60, unit: 'min', log65: 12, log7: 12, log5: 9 },
  { F: 141, C: 60.6, unit: 'min', log65: 9, log7: 10, log5: 7 },
  { F: 142, C: 61.1, unit: 'min', log65: 8, log7: 8, log5: 6 },
  { F: 143, C: 61.7, unit: 'min', log65: 6, log7: 6, log5: 5 },
  { F: 144, C: 62.2, unit: 'min', log65: 5, log7: 5, log5: 4 },
  { F: 145, C: 62.8, unit: 'min', log65: 4, log7: 4, log5: 3 },
  { F: 146, C: 63.3, unit: 's', log65: 169, log7: 182, log5: 130 },
  { F: 147, C: 63.9, unit: 's', log65: 134, log7: 144, log5: 103 },
  { F: 148, C: 64.4, unit: 's', log65: 107, log7: 115, log5: 82 },
  { F: 149, C: 65, unit: 's', log65: 85, log7: 91, log5: 65 },
  { F: 150, C: 65.6, unit: 's', log65: 67, log7: 72, log5: 52 },
  { F: 151, C: 66.1, unit: 's', log65: 54, log7: 58, log5: 41 },
  { F: 152, C: 66.7, unit: 's', log65: 43, log7: 46, log5: 33 },
  { F: 153, C: 67.2, unit: 's', log65: 34, log7: 37, log5: 26 },
  { F: 154, C: 67.8, unit: 's', log65: 27, log7: 29, log5: 21 },
  { F: 155, C: 68.3, unit: 's', log65: 22, log7: 23, log5: 17 },
  { F: 156, C: 68.9, unit: 's', log65: 17, log7: 19, log5: 14 },
  { F: 157, C: 69.4, unit: 's', log65: 14, log7: 15, log5: 11 },
  { F: 158, C: 70, unit: 's', log65: 0, log7: 0, log5: 0 },
  { F: 159, C: 70.6, unit: 's', log65: 0, log7: 0, log5: 0 },
  { F: 160, C: 71.1, unit: 's', log65: 0, log7: 0, log5: 0 },
];
