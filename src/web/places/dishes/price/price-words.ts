/** Costs and prices in a chef's words. */
import type { CostKind } from '../../../../core/filling/price.ts';
import type { Spread } from '../../../../core/method/weights.ts';
import { money } from '../../../parts/money.ts';

export const kindWords: Readonly<Record<CostKind, string>> = {
  part: 'parts',
  ingredient: 'ingredients',
  hands: 'hands',
  energy: 'energy',
  packaging: 'packaging',
  overhead: 'overheads',
};

/** Under this share of the usual a spread is not worth a word. */
const notable = 0.01;

export function spreadWords({ low, usual, high }: Spread, say: (x: number) => string): string {
  return high - low <= notable * Math.abs(usual) ? say(usual) : `${say(usual)} (${say(low)} to ${say(high)})`;
}

export const moneySpread = (spread: Spread, currency: string): string =>
  spreadWords(spread, (x) => money(Math.round(x), currency));

/** A loss as a cook reads it: what is lost, or taken up. */
export function lossWords(loss: Spread | null): string {
  if (loss === null) return 'not known';
  const pct = (x: number) => `${(Math.round(Math.abs(x) * 1000) / 10).toString()} %`;
  if (loss.low === 0 && loss.high === 0) return 'nothing';
  if (loss.low === loss.high)
    return loss.usual < 0 ? `takes up ${pct(loss.usual)}` : `loses ${pct(loss.usual)}`;
  const end = (x: number) => (x < 0 ? `+${pct(x)}` : x === 0 ? '0 %' : `−${pct(x)}`);
  return `${end(loss.usual)} (${end(loss.high)} to ${end(loss.low)})`;
}
