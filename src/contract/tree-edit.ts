/**
 * A breakdown tree as it is laid out and changed before the knife: from the published beginning, or from the kitchen's
 * own; what the law stops is a by-product in it and stays in sight. Pure.
 */
import { startingTrees, type TreeCut } from '../core/properties/breakdown-trees.ts';
import { type LawAnswer, lawOf, type Origin } from '../core/properties/parts-law.ts';
import type { TreeNode } from './breakdown.ts';
import type { Part, Place } from './records.ts';

type Becomes = TreeNode['becomes'];
type Class = TreeNode['class'];
type KnownPart = Pick<Part, 'species' | 'name' | 'use' | 'class'>;

const likeWords: Readonly<Record<string, string>> = {
  geese: 'goose',
  sheep: 'lamb',
  hogget: 'lamb',
  mutton: 'lamb',
  pork: 'pig',
  hog: 'pig',
  cattle: 'beef',
  steer: 'beef',
  heifer: 'beef',
  cow: 'beef',
  ox: 'beef',
  hen: 'spent hen',
  venison: 'deer',
  'fallow deer': 'deer',
  'red deer': 'deer',
  'roe deer': 'deer',
  'guinea fowl': 'guinea fowl',
};

/** The animal of the published tables for a kitchen's word, in any number; the word itself where there is none. */
export function animalOf(species: string): string {
  const word = species.toLowerCase().trim();
  const single = word.replace(/s$/, '');
  return (
    likeWords[word] ??
    likeWords[single] ??
    startingTrees.find((t) => t.species === word || t.species === single)?.species ??
    word
  );
}

const red = new Set(['pig', 'lamb', 'beef', 'goat', 'veal']);
const fowl = new Set(['chicken', 'spent hen', 'duck', 'goose', 'turkey', 'guinea fowl']);
const fish = new Set(['salmon', 'cod', 'haddock', 'mackerel', 'herring', 'flatfish', 'sea bass']);
const organ =
  /\b(liver|heart|kidneys?|gizzards?|giblets|lungs?|windpipe|spleen|stomachs?|tripe|tongue|brains?|sweetbreads|intestines?|pluck|caul|skirt|roe|testes|testicles)\b/;

/** Which limits of temperature a part comes under, by its name; null where the name does not say. */
export function classOf(species: string, part: string): Class {
  const animal = animalOf(species);
  const name = part.toLowerCase();
  if (fish.has(animal)) return 'fish';
  if (/\bblood\b/.test(name)) return 'blood';
  if (organ.test(name)) return 'offal';
  if (/\b(bones?|fat|suet|lard)\b/.test(name)) return 'fat and bone';
  if (fowl.has(animal)) return 'poultry';
  if (animal === 'rabbit') return 'rabbit';
  if (animal === 'deer') return 'large game';
  if (['pheasant', 'quail', 'pigeon'].includes(animal)) return 'small game';
  return red.has(animal) ? 'red meat' : null;
}

/** A word for an id: lower case, no marks, not taken yet. */
export function idFor(name: string, taken: ReadonlySet<string>): string {
  const plain = name
    .toLowerCase()
    .normalize('NFD')
    .replace(/[\u0300-\u036f’']/g, '')
    .replace(/[^a-z0-9]+/g, ' ')
    .trim()
    .slice(0, 50);
  const base = plain === '' ? 'part' : plain;
  for (let n = 1; ; n++) {
    const id = n === 1 ? base : `${base} ${n}`;
    if (!taken.has(id)) return id;
  }
}

const becomesOf = (cut: TreeCut): Becomes => {
  if ((cut.children?.length ?? 0) > 0) return 'step';
  if (cut.becomes === 'drip') return 'drip';
  if (cut.becomes === 'part') return 'part';
  return /\bbones?\b/.test(cut.name) ? 'bone' : 'bin';
};

/** A place in the tree: what the kitchen already says of a part of that name comes first. */
function place(
  species: string,
  name: string,
  parent: string | null,
  becomes: Becomes,
  id: string,
  parts: readonly KnownPart[],
): TreeNode {
  const own = parts.find(
    (p) => p.name.toLowerCase() === name.toLowerCase() && p.species.toLowerCase() === species.toLowerCase(),
  );
  const kept = becomes === 'part' || becomes === 'step' || becomes === 'sold';
  const usual = !kept ? 'thrown away' : /\bbones?\b/.test(name.toLowerCase()) ? 'kitchen' : 'menu';
  return {
    id,
    parent,
    name,
    becomes,
    class: own?.class ?? (becomes === 'part' ? classOf(species, name) : null),
    use: kept ? (own?.use ?? usual) : 'thrown away',
    piecesPerAnimal: null,
  };
}

/** The published beginning for an animal; the whole and one part where none was published. */
export function startingNodes(species: string, parts: readonly KnownPart[] = []): TreeNode[] {
  const tree = startingTrees.find((t) => t.species === animalOf(species));
  const own = parts.filter((p) => p.species.toLowerCase() === species.toLowerCase());
  const root: TreeCut = tree?.root ?? {
    name: species,
    becomes: 'part',
    children: (own.length === 0 ? [{ name: 'meat' }] : own).map((p) => ({
      name: p.name,
      becomes: 'part' as const,
    })),
  };
  const taken = new Set<string>();
  const nodes: TreeNode[] = [];
  const walk = (cut: TreeCut, parent: string | null): void => {
    const id = idFor(cut.name, taken);
    taken.add(id);
    const name = parent === null ? species : cut.name;
    nodes.push(place(species, name, parent, becomesOf(cut), id, parts));
    for (const child of cut.children ?? []) walk(child, id);
  };
  walk(root, null);
  return nodes;
}

/** A kept tree with what the kitchen says of its parts today: a part that went on the menu since is on the menu. */
export const asSaidToday = (
  nodes: readonly TreeNode[],
  species: string,
  parts: readonly KnownPart[],
): TreeNode[] =>
  nodes.map((n) => {
    if (n.becomes !== 'part' && n.becomes !== 'sold') return n;
    const { use, class: limits } = place(species, n.name, n.parent, n.becomes, n.id, parts);
    const known = parts.some(
      (p) =>
        p.name.toLowerCase() === n.name.toLowerCase() && p.species.toLowerCase() === species.toLowerCase(),
    );
    return known ? { ...n, use, class: limits ?? n.class } : n;
  });

export const hasStartingTree = (species: string): boolean =>
  startingTrees.some((t) => t.species === animalOf(species));

export interface Stopped {
  readonly law: LawAnswer;
  /** Never food, whoever is asked. */
  readonly never: boolean;
}

/**
 * What the law says of every part that is a by-product by it, by the place's id. `origin`: the most the animals may be old
 * where the law goes by age; null counts as over every limit.
 */
export function stoppedByLaw(
  nodes: readonly TreeNode[],
  species: string,
  where: Place,
  origin: Origin = {},
): ReadonlyMap<string, Stopped> {
  const found = new Map<string, Stopped>();
  for (const n of nodes) {
    if (n.becomes === 'step' || n.becomes === 'drip') continue;
    const law = lawOf(species, n.name, where, origin);
    if (law.status === 'prohibited') found.set(n.id, { law, never: true });
    else if (law.status === 'by-product by default: ask') found.set(n.id, { law, never: false });
  }
  return found;
}

/** The tree with everything that the law stops as a by-product. */
export function lawful(
  nodes: readonly TreeNode[],
  species: string,
  where: Place,
  origin: Origin = {},
): TreeNode[] {
  const stopped = stoppedByLaw(nodes, species, where, origin);
  return nodes.map((n) =>
    stopped.has(n.id) && (n.becomes === 'part' || n.becomes === 'sold')
      ? { ...n, becomes: 'by-product', use: 'thrown away', class: null }
      : n,
  );
}

const childrenOf = (nodes: readonly TreeNode[], id: string) => nodes.filter((n) => n.parent === id);

/** What is cut on is a step, what is not is no step; each place after what it comes from. */
function settled(nodes: readonly TreeNode[]): TreeNode[] {
  const fixed = nodes.map((n): TreeNode => {
    const cut = childrenOf(nodes, n.id).length > 0;
    if (cut && n.becomes !== 'step') return { ...n, becomes: 'step' };
    if (!cut && n.becomes === 'step' && n.parent !== null) return { ...n, becomes: 'part' };
    return n;
  });
  const out: TreeNode[] = [];
  const walk = (n: TreeNode): void => {
    out.push(n);
    childrenOf(fixed, n.id).forEach(walk);
  };
  fixed.filter((n) => n.parent === null).forEach(walk);
  return out;
}

/** Everything below a place, and the place itself. */
export function branchOf(nodes: readonly TreeNode[], id: string): ReadonlySet<string> {
  const found = new Set([id]);
  for (let grown = true; grown; ) {
    grown = false;
    for (const n of nodes)
      if (n.parent !== null && found.has(n.parent) && !found.has(n.id)) {
        found.add(n.id);
        grown = true;
      }
  }
  return found;
}

export function addPlace(
  nodes: readonly TreeNode[],
  species: string,
  parent: string,
  name: string,
  becomes: Becomes = 'part',
  parts: readonly KnownPart[] = [],
): TreeNode[] {
  const id = idFor(name, new Set(nodes.map((n) => n.id)));
  return settled([...nodes, place(species, name.trim(), parent, becomes, id, parts)]);
}

export const renamePlace = (nodes: readonly TreeNode[], id: string, name: string): TreeNode[] =>
  nodes.map((n) => (n.id === id ? { ...n, name: name.trim() === '' ? n.name : name.trim() } : n));

export const removePlace = (nodes: readonly TreeNode[], id: string): TreeNode[] => {
  const gone = branchOf(nodes, id);
  return settled(nodes.filter((n) => n.parent === null || !gone.has(n.id)));
};

export const changePlace = (
  nodes: readonly TreeNode[],
  id: string,
  change: Partial<Pick<TreeNode, 'becomes' | 'use' | 'class' | 'piecesPerAnimal'>>,
): TreeNode[] =>
  settled(
    nodes.map((n) => {
      if (n.id !== id) return n;
      const becomes = change.becomes ?? n.becomes;
      const kept = becomes === 'part' || becomes === 'step' || becomes === 'sold';
      const wasKept = n.becomes === 'part' || n.becomes === 'step' || n.becomes === 'sold';
      return { ...n, ...(kept ? (wasKept ? {} : { use: 'menu' }) : { use: 'thrown away' }), ...change };
    }),
  );

/** Moved among those that come from the same piece: −1 earlier, 1 later. */
export function shiftPlace(nodes: readonly TreeNode[], id: string, by: -1 | 1): TreeNode[] {
  const node = nodes.find((n) => n.id === id);
  if (node === undefined || node.parent === null) return [...nodes];
  const siblings = childrenOf(nodes, node.parent);
  const other = siblings[siblings.indexOf(node) + by];
  if (other === undefined) return [...nodes];
  return settled(nodes.map((n) => (n === node ? other : n === other ? node : n)));
}

/** Comes from another piece from now on; never from itself or from what is cut of it. */
export function movePlace(nodes: readonly TreeNode[], id: string, parent: string): TreeNode[] {
  if (branchOf(nodes, id).has(parent) || !nodes.some((n) => n.id === parent)) return [...nodes];
  return settled(nodes.map((n) => (n.id === id && n.parent !== null ? { ...n, parent } : n)));
}

/** How deep a place lies, the whole being 0. */
export function depthOf(nodes: readonly TreeNode[], id: string): number {
  const node = nodes.find((n) => n.id === id);
  return node === undefined || node.parent === null ? 0 : 1 + depthOf(nodes, node.parent);
}
