/** Two versions of a method line by line: what was added, taken out, moved and changed, in a cook's words. */
import type { Method, Step } from './steps.ts';

export interface FieldChange {
  /** What it is of, from the step inwards: "stage Steam", "Back fat". Empty for a field of the step itself. */
  readonly of: readonly string[];
  /** "weight", "until", "temperature of the medium". */
  readonly field: string;
  /** As it was and is, with the unit; null where it was not there. */
  readonly before: string | null;
  readonly after: string | null;
}

export type StepChange =
  | { readonly how: 'added' | 'taken out'; readonly step: Step }
  | {
      readonly how: 'kept';
      readonly before: Step;
      readonly after: Step;
      /** Its place among the steps that both versions have is another one. */
      readonly moved: boolean;
      readonly changes: readonly FieldChange[];
    };

/** In the order of the newer version; what was taken out stands where it was. */
export function compareMethods(before: Method, after: Method): StepChange[] {
  const partner = matched(before, after);
  const kept = before.filter((s) => partner.has(s));
  const order = kept.map((s) => partner.get(s)!);
  const movedSteps = outOfOrder(order, after);
  const changes: StepChange[] = after.map((step) => {
    const old = kept.find((s) => partner.get(s) === step);
    return old === undefined
      ? { how: 'added', step }
      : {
          how: 'kept',
          before: old,
          after: step,
          moved: movedSteps.has(step),
          changes: fieldChanges(old, step),
        };
  });
  before.forEach((step, i) => {
    if (partner.has(step)) return;
    // After the nearest step before it that is still there.
    const anchor = before.slice(0, i).findLast((s) => partner.has(s));
    const at =
      anchor === undefined ? 0 : 1 + changes.findIndex((c) => c.how === 'kept' && c.before === anchor);
    let place = at;
    while (changes[place]?.how === 'taken out') place += 1;
    changes.splice(place, 0, { how: 'taken out', step });
  });
  return changes;
}

/** By identity first: a copied version keeps the ids of its steps. Then, of what is left, by kind and name. */
function matched(before: Method, after: Method): Map<Step, Step> {
  const partner = new Map<Step, Step>();
  const taken = new Set<Step>();
  const pair = (test: (a: Step, b: Step) => boolean) => {
    for (const a of before) {
      if (partner.has(a)) continue;
      const b = after.find((s) => !taken.has(s) && s.kind === a.kind && test(a, s));
      if (b === undefined) continue;
      partner.set(a, b);
      taken.add(b);
    }
  };
  pair((a, b) => a.id === b.id);
  pair((a, b) => a.name === b.name);
  return partner;
}

/** The fewest steps that must move to come from one order to the other: all but a longest rising run. */
function outOfOrder(order: readonly Step[], after: Method): Set<Step> {
  const places = order.map((s) => after.indexOf(s));
  const best: number[] = [];
  const from: number[] = [];
  places.forEach((p, i) => {
    best[i] = 1;
    from[i] = -1;
    for (let j = 0; j < i; j += 1)
      if (places[j]! < p && best[j]! + 1 > best[i]!) {
        best[i] = best[j]! + 1;
        from[i] = j;
      }
  });
  let at = best.indexOf(Math.max(0, ...best));
  const stays = new Set<Step>();
  while (at >= 0 && order[at] !== undefined) {
    stays.add(order[at]!);
    at = from[at]!;
  }
  return new Set(order.filter((s) => !stays.has(s)));
}

const words: Readonly<Record<string, string>> = {
  name: 'name',
  how: 'how it is done',
  handsMin: 'hands',
  grade: 'whose hands',
  lossPct: 'loss, as weighed here',
  part: 'part',
  weightG: 'weight',
  yieldPct: 'kept by trimming',
  by: 'by',
  saltPct: 'salt',
  brinePerKg: 'brine to a kilogram of meat',
  h: 'hours',
  mediumC: 'temperature of the medium',
  hWm2K: 'surface coefficient',
  wantedSaltPct: 'salt wanted in the end',
  rinseMin: 'rinse',
  dryMin: 'dry',
  g: 'weight',
  maxC: 'never warmer than',
  casing: 'casing',
  diameterMm: 'diameter',
  skinMm: 'skin',
  gramsPerPiece: 'filling in a piece',
  headSpacePct: 'head space',
  swellPct: 'swelling',
  pieces: 'pieces',
  material: 'material',
  layers: 'layers',
  micrometres: 'thickness of a layer',
  kWmK: 'conductivity',
  startC: 'temperature going in',
  min: 'time',
  coldestC: 'until the coldest point has',
  warmestC: 'until the warmest point has',
  lethalityMin: 'until the coldest point has the worth of',
  atMostMin: 'at the most',
  referenceC: 'reference temperature',
  zC: 'z',
  medium: 'medium',
  rules: 'rules',
  days: 'keeps',
  packed: 'packed',
  pH: 'pH',
  waterActivity: 'water activity',
  coreC: 'core',
  portionG: 'portion',
  portionsPerPiece: 'portions from a piece',
  low: 'not under',
  high: 'not over',
  critical: 'critical',
  thicknessMm: 'thickness',
  pricePerKg: 'price of a kilogram',
  allergens: 'allergens',
  ingredient: 'ingredient',
  toPct: 'cooked down to',
};

const units: readonly (readonly [RegExp, string])[] = [
  [/Wm2K$/, 'W/(m² K)'],
  [/kWmK$/, 'W/(m K)'],
  [/Pct$/, '%'],
  [/Ppm$/, 'mg/kg'],
  [/Mm$/, 'mm'],
  [/^micrometres$/, 'µm'],
  [/Min$|^min$/, 'min'],
  [/^h$/, 'h'],
  [/^days$/, 'days'],
  [/C$/, '°C'],
  [/G$|^g$|^gramsPerPiece$/, 'g'],
];

const human = (key: string) =>
  words[key] ??
  key
    .replace(/(Pct|Mm|Min|Wm2K|C|G|Kg)$/, '')
    .replace(/([A-Z])/g, ' $1')
    .toLowerCase()
    .trim();

const unitOf = (key: string) => units.find(([end]) => end.test(key))?.[1];

/** Not shown: identities, and what the pantry says of itself. */
const hidden = new Set(['id', 'kind', 'composition', 'of', 'ingredientId']);

type Plain = Readonly<Record<string, unknown>>;
const isPlain = (x: unknown): x is Plain => typeof x === 'object' && x !== null && !Array.isArray(x);

/** What an entry of a list is called: by its name, not by its place. */
function nameIn(list: string, item: unknown, index: number): string {
  if (!isPlain(item)) return String(item);
  if (typeof item.ingredient === 'string') return item.ingredient;
  if (typeof item.label === 'string') return item.label;
  if (typeof item.atMm === 'number') return `at ${item.atMm} mm`;
  if (typeof item.name === 'string') return list === 'stages' ? `stage ${item.name}` : item.name;
  return `${human(list)} ${index + 1}`;
}

/** What is asked to be recorded is known by its words: a copied method may have given it another id. */
const keyIn = (list: string, item: unknown, index: number): string =>
  isPlain(item) && typeof item.id === 'string' && typeof item.label !== 'string'
    ? item.id
    : nameIn(list, item, index);

function said(key: string, value: unknown): string | null {
  if (value === undefined || value === null) return null;
  if (typeof value === 'number') {
    const unit = unitOf(key);
    return unit === undefined ? String(value) : `${value} ${unit}`;
  }
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (Array.isArray(value)) return value.length === 0 ? 'none' : value.map(String).join(', ');
  if (isPlain(value))
    return Object.entries(value)
      .filter(([k]) => !hidden.has(k))
      .map(([k, v]) => (isPlain(v) || Array.isArray(v) ? human(k) : `${human(k)} ${said(k, v)}`))
      .join(', ');
  return String(value);
}

function fieldChanges(before: unknown, after: unknown, of: readonly string[] = []): FieldChange[] {
  if (!isPlain(before) || !isPlain(after)) return [];
  const keys = [...new Set([...Object.keys(before), ...Object.keys(after)])].filter((k) => !hidden.has(k));
  return keys.flatMap((key): FieldChange[] => {
    const a = before[key];
    const b = after[key];
    if (Array.isArray(a) && Array.isArray(b) && [...a, ...b].some(isPlain)) return listChanges(key, a, b, of);
    if (isPlain(a) && isPlain(b)) return fieldChanges(a, b, key === 'until' ? of : [...of, human(key)]);
    const was = said(key, a);
    const is = said(key, b);
    return was === is ? [] : [{ of, field: human(key), before: was, after: is }];
  });
}

function listChanges(
  list: string,
  before: readonly unknown[],
  after: readonly unknown[],
  of: readonly string[],
): FieldChange[] {
  const changes: FieldChange[] = [];
  const left = new Map<string, unknown[]>();
  before.forEach((item, i) => {
    const key = keyIn(list, item, i);
    left.set(key, [...(left.get(key) ?? []), item]);
  });
  after.forEach((item, i) => {
    const old = left.get(keyIn(list, item, i))?.shift();
    const name = nameIn(list, item, i);
    if (old === undefined)
      changes.push({ of: [...of, name], field: 'added', before: null, after: said(list, item) ?? '' });
    else changes.push(...fieldChanges(old, item, [...of, name]));
  });
  for (const items of left.values())
    for (const item of items)
      changes.push({
        of: [...of, nameIn(list, item, before.indexOf(item))],
        field: 'taken out',
        before: said(list, item) ?? '',
        after: null,
      });
  return changes;
}
