/** Temperature columns into points in °C. */
import { type Decimal, holdsNothing, readFigure } from './cells.ts';
import type { Row } from './columns.ts';
import type { Timed } from './order.ts';
import type { Channel, ChannelColumn, TemperatureUnit, Warning } from './types.ts';

/** What a probe in a kitchen can read [°C]; beyond it a reading is a fault and is left out. */
const lowest = -60;
const highest = 350;

export const toCelsius = (value: number, unit: TemperatureUnit): number =>
  unit === 'C' ? value : (value - 32) / 1.8;

/**
 * Unit of channels that do not say theirs. A unit fits where some channel is then a hot log a piece of food can have (50 to 101 °C at
 * its hottest, never below −40 °C) and none is beyond an oven. °C is taken only where in °F the food would also have been
 * frozen: a cool log in °F must not pass for a hot one in °C. null: ask.
 */
export function likelyUnit(
  rows: readonly Row[],
  columns: readonly number[],
  decimal: Decimal,
): TemperatureUnit | null {
  const ranges = columns.map((column) => {
    const values = rows
      .map((row) => readFigure(row.cells[column] ?? '', decimal)?.value)
      .filter((v): v is number => v !== undefined && v > -150 && v < 900)
      .sort((a, b) => a - b);
    // A single faulty cell must not decide: the middle 99 per cent.
    const cut = Math.floor(values.length / 200);
    return { low: values[cut] ?? Number.NaN, high: values[values.length - 1 - cut] ?? Number.NaN };
  });
  const fits = (unit: TemperatureUnit) => {
    const inCelsius = ranges.map(({ low, high }) => ({
      low: toCelsius(low, unit),
      high: toCelsius(high, unit),
    }));
    return (
      inCelsius.every(({ low, high }) => low >= -60 && high <= 300) &&
      inCelsius.some(({ low, high }) => low >= -40 && high >= 50 && high <= 101)
    );
  };
  const frozenInF = ranges.some(({ low }) => low < 32);
  if (fits('C')) return !fits('F') && frozenInF ? 'C' : null;
  return fits('F') ? 'F' : null;
}

/** Points of one channel; cells without a temperature and impossible ones are left out and told. */
export function readChannel(
  { column, name, unit }: ChannelColumn & { readonly unit: TemperatureUnit },
  timed: readonly Timed[],
  decimal: Decimal,
  start: string | null,
  warn: (warning: Warning) => void,
): Channel {
  const points: { s: number; C: number }[] = [];
  const lines: number[] = [];
  const zero = timed[0]?.s ?? 0;
  let dropped = 0;
  let blank = 0;
  for (const { row, s } of timed) {
    const cell = row.cells[column] ?? '';
    const figure = readFigure(cell, decimal);
    if (figure === null) {
      dropped++;
      if (cell === '') blank++;
      else
        warn({
          line: row.line,
          what: `${name}: no temperature in ${holdsNothing(cell) ? '' : 'the text '}“${cell.slice(0, 20)}”, left out`,
        });
      continue;
    }
    const C = toCelsius(figure.value, figure.unit ?? unit);
    if (!(C >= lowest && C <= highest)) {
      dropped++;
      warn({ line: row.line, what: `${name}: impossible temperature “${cell}”, left out` });
      continue;
    }
    points.push({ s: s - zero, C });
    lines.push(row.line);
  }
  if (blank > 0) warn({ line: null, what: `${name}: ${blank} empty cells, left out` });
  tellSpikes(name, points, lines, warn);
  const longestGapS = points.reduce((gap, p, i) => (i === 0 ? 0 : Math.max(gap, p.s - points[i - 1]!.s)), 0);
  return { name, points, dropped, longestGapS, ...(start === null ? {} : { start }) };
}

/** A single reading far off both its neighbours: kept, but told, since one hot cell can make a cook look safe. */
function tellSpikes(
  name: string,
  points: readonly { readonly C: number }[],
  lines: readonly number[],
  warn: (warning: Warning) => void,
): void {
  for (let i = 1; i + 1 < points.length; i++) {
    const here = points[i]!.C;
    const a = here - points[i - 1]!.C;
    const b = here - points[i + 1]!.C;
    if (Math.sign(a) === Math.sign(b) && Math.min(Math.abs(a), Math.abs(b)) > 20)
      warn({
        line: lines[i]!,
        what: `${name}: jumps to ${here.toFixed(1)} °C and back; kept, but look at it before you trust a verdict`,
      });
  }
}
