/** Numbers as a reader needs them: no more figures than the comparison is worth. */
import type { Row } from './case.ts';

const raised = (n: number) => [...String(n)].map((c) => (c === '-' ? '⁻' : '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(c)])).join('');

/** A number to at most seven significant figures, very large and small ones with a power of ten. */
export function figures(value: number, significant = 7): string {
  if (!Number.isFinite(value)) return String(value);
  const size = Math.abs(value);
  if (size !== 0 && (size < 1e-3 || size >= 1e7)) {
    const [mantissa = '', power = '0'] = value.toExponential(significant - 1).split('e');
    return minus(`${String(Number(mantissa))}·10${raised(Number(power))}`);
  }
  return minus(String(Number(value.toPrecision(significant))));
}

const minus = (text: string) => text.replace('-', '−');

/** The place of the last figure worth printing beside a tolerance: a tenth of its first. */
function lastPlace(row: Row): number {
  if (row.tolerance > 0) return 10 ** (Math.floor(Math.log10(row.tolerance)) - 1);
  const size =
    typeof row.expected === 'number'
      ? Math.abs(row.expected)
      : Math.max(Math.abs(row.expected.low), Math.abs(row.expected.high));
  return size === 0 ? 1e-3 : 10 ** (Math.floor(Math.log10(size)) - 3);
}

/** A computed value to the last figure worth printing beside the row's tolerance. */
export function measured(value: number, row: Row): string {
  if (!Number.isFinite(value)) return String(value);
  const place = lastPlace(row);
  const size = Math.abs(value);
  if (size < place / 2) return '0';
  if (place >= 1 || place < 1e-7 || size < 1e-3) {
    const significant = Math.floor(Math.log10(size)) - Math.round(Math.log10(place)) + 1;
    return figures(value, Math.min(12, Math.max(1, significant)));
  }
  return minus(value.toFixed(-Math.round(Math.log10(place))));
}

/** A number as it was written down; one that was worked out on the way, to the last figure worth printing, in asterisks. */
function written(value: number, row: Row, asterisk: string): string {
  return Number(value.toPrecision(7)) === value
    ? figures(value)
    : `${asterisk}${measured(value, row)}${asterisk}`;
}

export function expectedText(row: Row, asterisk = ''): string {
  return typeof row.expected === 'number'
    ? written(row.expected, row, asterisk)
    : `${written(row.expected.low, row, asterisk)} to ${written(row.expected.high, row, asterisk)}`;
}
