/** The published figure for a part as a kitchen names it, if anybody published one. */
import { startingTrees, type TreeCut } from '../core/properties/breakdown-trees.ts';
import { findYieldStudy, yieldStudies } from '../core/properties/yields.ts';
import type { YieldRow, YieldStudy } from '../core/properties/yields-rows.ts';
import { animalOf } from './tree-edit.ts';

export interface PublishedYield {
  readonly study: YieldStudy;
  readonly row: YieldRow;
  /** What is 100 %. */
  readonly of: string;
  /** In % of the dressed or chilled animal, so that it can stand beside one's own and count. */
  readonly comparable: boolean;
}

const same = (a: string, b: string) => a.toLowerCase() === b.toLowerCase();

function cutOf(cut: TreeCut, name: string): TreeCut | undefined {
  if (same(cut.name, name) && cut.figure !== undefined) return cut;
  for (const child of cut.children ?? []) {
    const found = cutOf(child, name);
    if (found !== undefined) return found;
  }
  return undefined;
}

const wholes = { live: 'live weight', dressed: 'dressed weight', chilled: 'chilled weight' } as const;

const asPublished = (study: YieldStudy, row: YieldRow): PublishedYield => ({
  study,
  row,
  of: row.of === undefined ? wholes[study.basis] : `the ${row.of}`,
  comparable: study.basis !== 'live' && row.of === undefined && row.pct > 0 && row.pct < 100,
});

/**
 * The figure that the starting tree names for a cut of that name; where it names none, or one of the live weight, a study
 * of the same animal with a row of that name in % of the dressed weight.
 */
export function publishedYield(species: string, part: string): PublishedYield | null {
  const animal = animalOf(species);
  const tree = startingTrees.find((t) => t.species === animal);
  const figure = tree === undefined ? undefined : cutOf(tree.root, part)?.figure;
  const study = figure === undefined ? undefined : findYieldStudy(figure[0]);
  const row = study?.rows.find((r) => r.part === figure?.[1]);
  const named = study === undefined || row === undefined ? null : asPublished(study, row);
  if (named?.comparable === true) return named;
  for (const other of yieldStudies) {
    if (other.species !== animal) continue;
    const own = other.rows.find((r) => same(r.part, part));
    if (own === undefined) continue;
    const found = asPublished(other, own);
    if (found.comparable) return found;
  }
  return named;
}
