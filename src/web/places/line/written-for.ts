/** For how many pieces a method is written: its weights are as written, whatever the batch makes. */
import type { Method, Step } from '../../../contract/steps.ts';

/** From the first filling and what goes into a piece; null where the method does not say both. */
export function writtenFor(method: Method): number | null {
  const fill = method.find((s) => s.kind === 'fill');
  const mix = method.find((s) => s.kind === 'mix');
  if (fill?.kind !== 'fill' || mix?.kind !== 'mix' || !(fill.gramsPerPiece > 0)) return null;
  const pieces = Math.round(mix.lines.reduce((sum, l) => sum + l.g, 0) / fill.gramsPerPiece);
  return pieces > 0 ? pieces : null;
}

const times = (n: number): string => String(Number(n.toPrecision(2)));

/** What to mind about a step's weights in a batch of so many pieces; null where there is nothing to mind. */
export function weightsWords(method: Method, step: Step, pieces: number): string | null {
  if (step.kind !== 'trim' && step.kind !== 'mix') return null;
  const written = writtenFor(method);
  const making = `You are making ${pieces}`;
  if (written === null) return `The weights are as the method is written, not reckoned for ${pieces}.`;
  const ratio = pieces / written;
  // A mix is made with a little over: a piece fewer of thirteen is no other recipe.
  if (ratio >= 0.85 && ratio <= 1.1) return null;
  return `The weights and their limits are written for about ${written} pieces. ${making}: take ${times(ratio)} times as much, and expect a limit on the whole weight not to fit.`;
}
