/** A dish as a file: taken away from one kitchen, brought into another. Prices stay at home; nothing brought in is signed. */
import { z } from 'zod';
import { allergens as fourteen } from '../core/filling/food.ts';
import { unkeepable } from './incoming-text.ts';
import { AllergenMarkInput, LineOf, NutrientsInput } from './pantry.ts';
import { lineOf } from './pantry-reckon.ts';
import { accept } from './problem.ts';
import { Instant, Note, Text } from './quantities.ts';
import { refuse } from './refuse.ts';
import { Method, type MixLine, type Step } from './steps.ts';

export const dishFileFormat = 'fifth-quarter-dish';
export const dishFileVersion = 1;

/** What a line points at, as its kitchen has it: another kitchen cannot look it up. */
export const FileFood = z.strictObject({
  of: LineOf,
  name: Text(200),
  tableId: z.string().max(80).nullable(),
  /** Mass fractions; null is not known. */
  nutrients: NutrientsInput.nullable(),
  allergens: z.array(AllergenMarkInput).max(60),
  /** What may get into it. */
  mayContain: z.array(AllergenMarkInput).max(60),
  /** False: of some of it nobody has said; then the list is not the whole of it. */
  allergensKnown: z.boolean(),
  source: Note(400),
});
export type FileFood = z.infer<typeof FileFood>;

export const DishFile = z.strictObject({
  format: z.literal(dishFileFormat),
  formatVersion: z.literal(dishFileVersion),
  dish: z.strictObject({ name: Text(120), species: Text(40), part: Text(80), story: Note(1_000) }),
  versions: z
    .array(
      z.strictObject({
        number: z.int().min(1),
        /** As it stood where it comes from: it says nothing of the kitchen it is brought into. */
        status: z.enum(['draft', 'signed']),
        reason: Note(500),
        createdAt: Instant,
        method: Method,
      }),
    )
    .min(1)
    .max(200),
  foods: z.array(FileFood).max(500),
});
export type DishFile = z.infer<typeof DishFile>;

const keyOf = (of: LineOf) => `${of.kind} ${of.id}`;

/** Everything that a method points at, each once. */
export function pointedAt(methods: readonly Method[]): LineOf[] {
  const found = new Map<string, LineOf>();
  const see = (of: LineOf | null) => of !== null && found.set(keyOf(of), of);
  for (const step of methods.flat())
    if (step.kind === 'mix') for (const line of step.lines) see(lineOf(line));
    else if (step.kind === 'trim') see(step.of ?? null);
  return [...found.values()];
}

/** The method without what its kitchen pays. */
export const withoutPrices = (method: Method): Method =>
  method.map((step) =>
    step.kind === 'mix' ? { ...step, lines: step.lines.map(({ pricePerKg: _, ...line }) => line) } : step,
  );

export const isDishFile = (value: unknown): value is { formatVersion?: unknown } =>
  typeof value === 'object' && value !== null && 'format' in value && value.format === dishFileFormat;

/** Reads a dish file; refuses keys it does not know and formats that are newer than this program. */
export function readDishFile(value: unknown): DishFile {
  if (isDishFile(value) && typeof value.formatVersion === 'number' && value.formatVersion > dishFileVersion)
    refuse(
      'formatVersion',
      `${value.formatVersion}: written by a newer program`,
      `${dishFileVersion}; bring it in with a program as new as the file`,
    );
  if (unkeepable(value))
    refuse('text', 'a null character or half of a character in a text', 'whole characters');
  return accept(DishFile, value);
}

/** What the receiving kitchen has under that id, with the allergens it is sure of; null where it has nothing. */
export type Here = (of: LineOf) => { readonly allergens: readonly string[]; readonly known: boolean } | null;

export interface BroughtMethod {
  readonly method: Method;
  /** What became of it on the way, in words. */
  readonly said: readonly string[];
}

/** A word that is none of the fourteen: as long as it stands, the line counts as one of which nobody has said everything. */
const othersNotSaid = 'others not said';

const words = (marks: readonly AllergenMarkInput[]) => marks.map((m) => m.allergen as string);

/** The fourteen first, each once; what a line has no room for is handed back. */
function joined(list: readonly string[]): { kept: string[]; over: string[] } {
  const once = [...new Set(list)];
  const lawful = (word: string) => fourteen.some((a) => a === word.trim().toLowerCase());
  const all = [...once.filter(lawful), ...once.filter((w) => !lawful(w))];
  return { kept: all.slice(0, 14), over: all.slice(14) };
}

const six = ['water', 'protein', 'fat', 'carbohydrate', 'fibre', 'ash'] as const;

function compositionOf(food: FileFood | undefined): Pick<MixLine, 'composition' | 'salt'> {
  const n = food?.nutrients;
  if (n === undefined || n === null) return {};
  if (six.some((key) => n[key] === null)) return {};
  const composition = Object.fromEntries(six.map((key) => [key, n[key]])) as MixLine['composition'];
  return { composition, ...(n.salt === null ? {} : { salt: n.salt }) };
}

function lineHere(
  line: MixLine,
  foods: ReadonlyMap<string, FileFood>,
  here: Here,
  say: (s: string) => void,
): MixLine {
  const of = lineOf(line);
  if (of === null) return line;
  const food = foods.get(keyOf(of));
  const stated = food === undefined ? [] : words([...food.allergens, ...food.mayContain]);
  const known = here(of);
  const own = line.allergens ?? [];
  if (known !== null) {
    const more = stated.filter((w) => !known.allergens.includes(w) && !own.includes(w));
    if (more.length === 0) return line;
    say(
      `${line.ingredient}: the file says that it holds ${more.join(', ')}, which this kitchen’s record does not; kept on the line.`,
    );
    return { ...line, allergens: joined([...own, ...more]).kept };
  }
  const { of: _of, ingredientId: _id, ...rest } = line;
  const whole = food?.allergensKnown === true;
  const { kept, over } = joined([...own, ...stated, ...(whole ? [] : [othersNotSaid])]);
  if (over.length > 0) say(`${line.ingredient}: no room on the line for ${over.join(', ')}.`);
  const may = food === undefined ? [] : words(food.mayContain);
  if (may.length > 0) say(`${line.ingredient}: may contain ${may.join(', ')}; counted as in it.`);
  const kinds = [...(food?.allergens ?? []), ...(food?.mayContain ?? [])].flatMap((m) =>
    m.as === undefined ? [] : [`${m.allergen}: ${m.as}`],
  );
  if (kinds.length > 0)
    say(`${line.ingredient}: of the kind ${kinds.join(', ')}, which a line has no room for.`);
  say(
    `${line.ingredient} is not in this kitchen’s pantry: it stands on the line as the file has it. ${
      whole
        ? `Allergens by the file: ${kept.length === 0 ? 'none' : kept.join(', ')}. Look at your own label.`
        : 'Nobody has said all of its allergens.'
    }`,
  );
  return { ...rest, ...(rest.composition === undefined ? compositionOf(food) : {}), allergens: kept };
}

function stepHere(
  step: Step,
  foods: ReadonlyMap<string, FileFood>,
  here: Here,
  say: (s: string) => void,
): Step {
  if (step.kind === 'mix') return { ...step, lines: step.lines.map((l) => lineHere(l, foods, here, say)) };
  if (step.kind !== 'trim' || step.of === undefined || here(step.of) !== null) return step;
  const { of: _, ...rest } = step;
  say(`${step.part} of step ${step.name} is not on this kitchen’s shelf by that id: say which it is.`);
  return rest;
}

/** One version as this kitchen can hold it: ids of its own, and pointing only at what is here. */
export function methodHere(
  file: Pick<DishFile, 'foods'>,
  method: Method,
  here: Here,
  newId: () => string,
): BroughtMethod {
  const said: string[] = [];
  const foods = new Map(file.foods.map((f) => [keyOf(f.of), f]));
  const brought = method.map((step) => {
    const found = stepHere(step, foods, here, (s) => said.push(s));
    return { ...found, id: newId(), asks: found.asks.map((a) => ({ ...a, id: newId() })) };
  });
  return { method: brought, said };
}
