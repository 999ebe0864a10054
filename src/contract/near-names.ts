/** Names near to one that was mistyped, so that an error can say what was perhaps meant. */

/** Letters to add, drop or change to make one text the other. */
function distance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(change, row[j]! + 1, next[j - 1]! + 1));
    }
    row = next;
  }
  return row[b.length]!;
}

/** Parts of a name: letters and numbers apart. */
const words = (name: string) => new Set(name.toLowerCase().match(/[a-z]+|\d+(?:\.\d+)?/g) ?? []);

/** Up to `most` names near to the one found, nearest first: few letters changed, or most words shared. */
export function nearNames(found: string, names: readonly string[], most = 3): string[] {
  const wanted = words(found);
  return names
    .map((name) => {
      const theirs = words(name);
      const shared = [...wanted].filter((word) => theirs.has(word)).length;
      const apart = distance(found.toLowerCase(), name.toLowerCase()) / Math.max(found.length, name.length);
      return { name, score: apart - shared / Math.max(1, wanted.size, theirs.size) };
    })
    .filter(({ score }) => score < 0.45)
    .sort((a, b) => a.score - b.score)
    .slice(0, most)
    .map(({ name }) => name);
}
