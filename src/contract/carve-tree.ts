/** The tree of a breakdown from its flat list: which part was cut from which, the same in every animal. */
import {
  type BalancedNode,
  type BreakdownNode,
  balanceOf,
  type Weighing,
} from '../core/carcass/mass-balance.ts';
import type { Problem } from './problem.ts';

interface WeighedPart {
  readonly part: string;
  readonly kg: number;
  /** The part it was cut from; the animal itself where nothing is said. */
  readonly from?: string | undefined;
}

interface WeighedAnimal {
  readonly dressedKg: number;
  readonly parts: readonly WeighedPart[];
}

export const milligramsOf = (kg: number) => Math.round(kg * 1e6);
export const kilograms = (mg: number) => mg / 1e6;
/** A part's id in the engine's records: no name of a part can be a word of the language. */
export const idOf = (part: string) => `part ${part}`;

type Complain = (path: (string | number)[], found: string, allowed: string) => void;

/** What each part is cut from, by the first animal that has it; null: from the animal itself. */
export function wholesOf(animals: readonly WeighedAnimal[]): ReadonlyMap<string, string | null> {
  const wholes = new Map<string, string | null>();
  for (const { parts } of animals)
    for (const { part, from } of parts) if (!wholes.has(part)) wholes.set(part, from ?? null);
  return wholes;
}

/** Every part from the same whole in every animal, every whole weighed, no ring, no whole cut in one animal and not in another. */
export function checkCuts(animals: readonly WeighedAnimal[], complain: Complain): void {
  const wholes = wholesOf(animals);
  const cutOn = new Set([...wholes.values()].filter((whole) => whole !== null));
  if (cutOn.size === 0) return;
  animals.forEach(({ parts }, index) => {
    const own = new Set(parts.map((p) => p.part));
    const cutHere = new Set(parts.map((p) => p.from));
    parts.forEach(({ part, from, kg }, i) => {
      const at = ['animals', index, 'parts', i];
      if (from !== undefined && !own.has(from))
        complain(
          [...at, 'from'],
          `${JSON.stringify(from)}, which this animal does not have`,
          'a part of this animal',
        );
      const first = wholes.get(part);
      if ((from ?? null) !== first)
        complain(
          [...at, 'from'],
          `${part} from ${from ?? 'the animal'}`,
          `${first ?? 'nothing: the animal'}, as in the animal before; name a part by where it comes from`,
        );
      if (cutOn.has(part) && !cutHere.has(part) && kg > 0)
        complain(
          [...at, 'part'],
          `${part} left whole, and cut on in another animal`,
          'one way for all animals: give what is left whole another name',
        );
      const ring = new Set<string>();
      for (let up: string | null | undefined = part; up != null; up = wholes.get(up)) {
        if (ring.has(up)) {
          complain([...at, 'from'], `${part}, which comes from itself`, 'a part that does not come from it');
          break;
        }
        ring.add(up);
      }
    });
  });
}

/** Parts in the tree under one whole, each with its own pieces. */
function under(
  whole: string | null,
  parts: readonly WeighedPart[],
): readonly (BreakdownNode & { readonly children: readonly BreakdownNode[] })[] {
  return parts
    .filter((p) => (p.from ?? null) === whole)
    .map((p) => ({
      id: idOf(p.part),
      name: p.part,
      becomes: 'part' as const,
      children: under(p.part, parts),
    }));
}

/** The balance of one animal, or the cuts that are heavier than what they came from. */
export function balanced(
  animal: WeighedAnimal,
  index: number,
  name: string,
  accuracyG: number,
): BalancedNode | Problem[] {
  const { parts, dressedKg } = animal;
  const heavier: Problem[] = [];
  const wholes = new Set([null, ...parts.flatMap((p) => p.from ?? [])]);
  for (const whole of wholes) {
    const pieces = parts.filter((p) => (p.from ?? null) === whole);
    const at = parts.findIndex((p) => p.part === whole);
    const kg = whole === null ? dressedKg : (parts[at]?.kg ?? 0);
    const sum = pieces.reduce((total, p) => total + milligramsOf(p.kg), 0);
    const tolerance = (pieces.length + 1) * Math.round(accuracyG * 1000);
    if (sum <= milligramsOf(kg) + tolerance) continue;
    heavier.push({
      path: whole === null ? `animals[${index}].parts` : `animals[${index}].parts[${at}].kg`,
      found: `${kilograms(sum)} kg of ${whole === null ? 'parts' : `pieces from ${whole}`}`,
      allowed: `at most ${kg} kg, what ${whole === null ? 'the animal weighed dressed' : 'it weighed'}, and ${kilograms(tolerance)} kg for the scales`,
    });
  }
  if (heavier.length > 0) return heavier;
  const weighings: Weighing[] = [
    { node: 'whole', grams: milligramsOf(dressedKg) / 1000, accuracy: accuracyG },
    ...parts.map((p) => ({ node: idOf(p.part), grams: milligramsOf(p.kg) / 1000, accuracy: accuracyG })),
  ];
  return balanceOf({ id: 'whole', name, becomes: 'part', children: under(null, parts) }, weighings);
}

/** All animals as one lot: the parts of the same name together. Its own weight is that of its parts: they carry the cost. */
export function lotOf(
  species: string,
  animals: readonly WeighedAnimal[],
  wasted: readonly string[],
): BalancedNode {
  const wholes = wholesOf(animals);
  const mg = new Map<string, number>();
  for (const { parts } of animals)
    for (const { part, kg } of parts) mg.set(part, (mg.get(part) ?? 0) + milligramsOf(kg));
  const lot = (whole: string | null): BalancedNode[] =>
    [...wholes]
      .filter(([, from]) => from === whole)
      .map(([part]) => ({
        id: idOf(part),
        name: part,
        becomes: wasted.includes(part) ? 'bone and waste' : 'part',
        mg: mg.get(part) ?? 0,
        weighed: true,
        superseded: [],
        balance: null,
        children: lot(part),
      }));
  const children = lot(null);
  return {
    id: 'whole',
    name: species,
    becomes: 'part',
    mg: children.reduce((sum, c) => sum + (c.mg ?? 0), 0),
    weighed: false,
    superseded: [],
    balance: null,
    children,
  };
}

/** The lot's pieces in the order of the tree, each after its whole. */
export function piecesOf<N extends { readonly children: readonly N[] }>(node: N): N[] {
  return node.children.flatMap((child) => [child, ...piecesOf(child)]);
}
