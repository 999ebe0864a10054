/**
 * How a nutrition figure is written on a label. The band is chosen by the figure as it is, before it is rounded, because the
 * guidance does not say: 9.96 g lies below 10 g, is rounded to a tenth, and is then written as the 10 g that it comes to.
 */
import { OutOfRange } from '../errors.ts';

/** What of the declaration: the three groups of the guidance's table, and energy. */
export type EuElement = 'energy' | 'fat, carbohydrate, sugars, protein, fibre' | 'saturates' | 'salt';

/** One band of the table: from above `over` to `most`; a step to round to, or the words for next to nothing. */
interface Band {
  readonly from: number;
  /** Whether `from` itself lies in the band. */
  readonly with: boolean;
  readonly step: number | null;
  readonly words?: string;
}

/** Rounding table of the Commission's guidance on tolerances, December 2012; read in summaries of it. */
const bands: Readonly<Record<EuElement, readonly Band[]>> = {
  energy: [{ from: 0, with: true, step: 1 }],
  'fat, carbohydrate, sugars, protein, fibre': [
    { from: 10, with: true, step: 1 },
    { from: 0.5, with: false, step: 0.1 },
    { from: 0, with: true, step: null, words: '<0.5' },
  ],
  saturates: [
    { from: 10, with: true, step: 1 },
    { from: 0.1, with: false, step: 0.1 },
    { from: 0, with: true, step: null, words: '<0.1' },
  ],
  salt: [
    { from: 1, with: true, step: 0.1 },
    { from: 0.0125, with: false, step: 0.01 },
    { from: 0, with: true, step: null, words: '<0.01' },
  ],
};

export interface Rounded {
  /** As it is written, without its unit: '12', '3.1', '<0.5'. */
  readonly text: string;
  /** The number it stands for; of '<0.5' nothing. */
  readonly value: number;
}

/** To the nearest step, a half up; a hair is given so that 0.125 typed and 0.125 added up round alike. */
const nearest = (x: number, step: number) => Math.floor((x / step) * (1 + 1e-12) + 0.5) * step;

const written = (x: number, step: number) => x.toFixed(step >= 1 ? 0 : step >= 0.1 ? 1 : 2);

/**
 * A figure as the guidance for the EU and Great Britain has it written [g, kJ or kcal].
 * Parameters: element; value in g (energy: kJ or kcal), 0 or more. Assumptions: band by the unrounded value; a figure that
 * rounds up into the next band is written as that band writes it (10, 1.0); exactly nothing is "0", next to nothing "<0.5".
 * Checked: every edge of the table.
 * @example roundedEu('salt', 1.04).value // → 1.0
 * @example roundedEu('saturates', 0.1).text // → '<0.1'
 * Source: eu-tolerance-guidance-2012
 */
export function roundedEu(element: EuElement, value: number): Rounded {
  if (!(value >= 0) || !Number.isFinite(value)) throw new OutOfRange(element, String(value), '0 or more');
  const table = bands[element];
  const band = table.find((b) => (b.with ? value >= b.from : value > b.from));
  if (band === undefined || band.step === null)
    return value === 0 ? { text: '0', value: 0 } : { text: band?.words ?? '0', value: 0 };
  const rounded = nearest(value, band.step);
  const next = table.find((b) => b.step !== null && rounded >= b.from - 1e-9) ?? band;
  return { text: written(rounded, next.step ?? band.step), value: Number(rounded.toFixed(2)) };
}

export type UsElement = 'calories' | 'fat, saturated fat' | 'sodium' | 'carbohydrate, fibre, sugars, protein';

/**
 * A figure as the US rules have it written on a label, for one serving [g; sodium mg; calories kcal].
 * Parameters: element; value, 0 or more. Assumptions: calories under 5 and fat under 0.5 g are nothing; the words "less than
 * 1 g" from 0.5 g to under 1 g. Checked: every edge against the table of the FDA's guide to inspections.
 * @example roundedUs('calories', 127).text // → '130'
 * @example roundedUs('fat, saturated fat', 4.3).text // → '4.5'
 * Source: cfr-21-101-9
 */
export function roundedUs(element: UsElement, value: number): Rounded {
  if (!(value >= 0) || !Number.isFinite(value)) throw new OutOfRange(element, String(value), '0 or more');
  const to = (step: number) => {
    const rounded = nearest(value, step);
    return { text: step < 1 && rounded % 1 !== 0 ? rounded.toFixed(1) : rounded.toFixed(0), value: rounded };
  };
  const nothing = { text: '0', value: 0 };
  switch (element) {
    case 'calories':
      return value < 5 ? nothing : to(value <= 50 ? 5 : 10);
    case 'sodium':
      return value < 5 ? nothing : to(value <= 140 ? 5 : 10);
    case 'fat, saturated fat':
      return value < 0.5 ? nothing : to(value < 5 ? 0.5 : 1);
    case 'carbohydrate, fibre, sugars, protein':
      if (value < 0.5) return nothing;
      return value < 1 ? { text: 'less than 1', value: 0 } : to(1);
  }
}
