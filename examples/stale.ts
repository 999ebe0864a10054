/** Whether a written report still says what a run finds. What was computed stands in *asterisks* and may move a little. */

const computed = /\*(?=[\d−])([\d.−·⁰¹²³⁴⁵⁶⁷⁸⁹⁻]+)\*/g;

function numberOf(text: string): number {
  const plain = text
    .replaceAll('−', '-')
    .replace(
      /·10([⁰¹²³⁴⁵⁶⁷⁸⁹⁻]+)/,
      (_, power: string) => `e${[...power].map((c) => (c === '⁻' ? '-' : '⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(c))).join('')}`,
    );
  return Number(plain);
}

/** Two units of the last printed place. */
function slack(text: string): number {
  const [mantissa = '', power] = text.replaceAll('−', '').split('·10');
  const decimals = mantissa.split('.')[1]?.length ?? 0;
  const exponent = power === undefined ? 0 : Math.log10(Math.abs(numberOf(`1·10${power}`)));
  return 2.01 * 10 ** (exponent - decimals);
}

function same(a: string, b: string): boolean {
  const [x, y] = [numberOf(a), numberOf(b)];
  return Math.abs(x - y) <= Math.max(slack(a), slack(b), 0.02 * Math.abs(x));
}

/** What differs, line by line, at most ten; empty when the report stands. */
export function staleness(written: string, now: string): string[] {
  const [old, fresh] = [written.split('\n'), now.split('\n')];
  const found: string[] = [];
  for (let i = 0; i < Math.max(old.length, fresh.length) && found.length < 10; i++) {
    const [a = '(no such line)', b = '(no such line)'] = [old[i], fresh[i]];
    const [as, bs] = [a, b].map((line) => [...line.matchAll(computed)].map((m) => m[1] ?? ''));
    const words = [a, b].map((line) => line.replace(computed, '*'));
    if (words[0] !== words[1]) {
      found.push(`line ${i + 1}: found ${a.slice(0, 120)}, now ${b.slice(0, 120)}`);
      break;
    }
    as?.forEach((value, j) => {
      if (!same(value, bs?.[j] ?? '')) found.push(`line ${i + 1}: found ${value}, now ${bs?.[j]}`);
    });
  }
  return found;
}
