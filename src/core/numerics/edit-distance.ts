/** How far two words are from one another. */

/**
 * Letters to add, drop or change to make one text the other [letters].
 * Equation: Levenshtein's recurrence, row by row. Parameters: two texts; `most`, beyond which it need not be exact.
 * Source: own-computation
 * @example editDistance('thime', 'thyme') // → 1
 */
export function editDistance(a: string, b: string, most = Number.POSITIVE_INFINITY): number {
  if (Math.abs(a.length - b.length) > most) return Math.abs(a.length - b.length);
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    let least = i;
    for (let j = 1; j <= b.length; j++) {
      const change = row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      const value = Math.min(change, row[j]! + 1, next[j - 1]! + 1);
      next.push(value);
      if (value < least) least = value;
    }
    if (least > most) return least;
    row = next;
  }
  return row[b.length]!;
}
