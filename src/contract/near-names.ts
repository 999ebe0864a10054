/** Names near to one that was mistyped, so that an error can say what was perhaps meant. */
import { editDistance } from '../core/numerics/edit-distance.ts';

/** Parts of a name: letters and numbers apart. */
const words = (name: string) => new Set(name.toLowerCase().match(/[a-z]+|\d+(?:\.\d+)?/g) ?? []);

/** Up to `most` names near to the one found, nearest first: few letters changed, or most words shared. */
export function nearNames(found: string, names: readonly string[], most = 3): string[] {
  const wanted = words(found);
  return names
    .map((name) => {
      const theirs = words(name);
      const shared = [...wanted].filter((word) => theirs.has(word)).length;
      const apart =
        editDistance(found.toLowerCase(), name.toLowerCase()) / Math.max(found.length, name.length);
      return { name, score: apart - shared / Math.max(1, wanted.size, theirs.size) };
    })
    .filter(({ score }) => score < 0.45)
    .sort((a, b) => a.score - b.score)
    .slice(0, most)
    .map(({ name }) => name);
}
