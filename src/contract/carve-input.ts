/** What `carve` is asked: animals that were weighed and cut, what they cost, and how to share the cost out (kg, major units of money). */
import { z } from 'zod';
import { checkCuts, wholesOf } from './carve-tree.ts';
import { nearNames } from './near-names.ts';
import { Text } from './quantities.ts';

/** A gram at least, so that no share is of nothing. */
const weight = () => z.number().min(0.001).max(10_000);

const AnimalInput = z.strictObject({
  name: Text(80).optional(),
  supplier: Text(120).optional(),
  cutter: Text(80).optional(),
  /** How many animals were cut and weighed together; all weights and the cost are of them together. */
  count: z.int().min(1).max(10_000).optional(),
  liveKg: weight().optional(),
  dressedKg: weight(),
  costTotal: z.number().min(0).max(10_000_000),
  /** A part that is not listed was not weighed; one that was not there is listed with 0 kg. */
  parts: z
    .array(
      z.strictObject({
        part: Text(80),
        kg: z.number().min(0).max(10_000),
        /** The part it was cut from; the animal itself where nothing is said. */
        from: Text(80).optional(),
      }),
    )
    .min(1)
    .max(200),
});
export type AnimalInput = z.infer<typeof AnimalInput>;

const byPart = (value: z.ZodNumber) => z.record(Text(80), value);

/** What is still lost of a part, one after the other, and the work it takes. */
const FinishInput = z.strictObject({
  trimPct: z.number().min(0).max(99).optional(),
  cookingLossPct: z.number().min(0).max(99).optional(),
  /** For a kilogram as cut. */
  labourMinPerKg: z.number().min(0).max(1_000).optional(),
});

const CarveFields = z.strictObject({
  species: Text(60),
  /** In the order they were cut. */
  animals: z.array(AnimalInput).min(1).max(100_000),
  /** What a kilogram of a part would bring; 0 for nothing, below 0 for what it costs to be rid of it. */
  values: byPart(z.number().min(-10_000).max(1_000_000)).optional(),
  /** The chef's own shares of the cost; only their ratio counts. */
  shares: byPart(z.number().min(0).max(1_000_000)).optional(),
  /** Parts sold or rendered off: what they bring is taken off the cost of the rest. */
  credited: z.array(Text(80)).max(200).optional(),
  /** Parts that carry no cost: bone, trim, drip. */
  wasted: z.array(Text(80)).max(200).optional(),
  /** For the cost of a kilogram that can be served. */
  finish: z.record(Text(80), FinishInput).optional(),
  /** What an hour of work costs; needed where work is given. */
  labourPerHour: z.number().min(0).max(10_000).optional(),
  /** Half width of the 95 % interval that is wanted, in % of the part's own mean. */
  precisionPct: z.number().min(0.1).max(100).optional(),
  /** The most that the scales are out by in one weighing; 0.5 g where nothing is said. */
  scaleAccuracyG: z.number().min(0).max(10_000).optional(),
  /** A published study whose figures count as so many animals of one's own. */
  published: z.strictObject({ study: Text(80), animals: z.number().min(1).max(1_000) }).optional(),
});
type CarveFields = z.infer<typeof CarveFields>;

type Complain = (path: (string | number)[], found: string, allowed: string) => void;

function checkAnimal(animal: AnimalInput, index: number, complain: Complain): void {
  const at = ['animals', index];
  const { liveKg, dressedKg, parts } = animal;
  if (liveKg !== undefined && dressedKg > liveKg)
    complain([...at, 'dressedKg'], `${dressedKg} kg`, `at most ${liveKg} kg, the live weight`);
  const seen = new Map<string, number>();
  parts.forEach(({ part }, i) => {
    const before = seen.get(part);
    if (before === undefined) seen.set(part, i);
    else
      complain(
        [...at, 'parts', i, 'part'],
        `${JSON.stringify(part)} a second time (first parts[${before}])`,
        'each part once for an animal; weigh it together or name its pieces apart',
      );
  });
}

/** A key of its own, not one that every object has. */
export const has = (record: Readonly<Record<string, number>> | undefined, key: string) =>
  record !== undefined && Object.hasOwn(record, key);

/** Money for a part that no animal has is a typing mistake, or money that would go missing. */
function checkNames(input: CarveFields, complain: Complain): void {
  const parts = [...new Set(input.animals.flatMap((a) => a.parts.map((p) => p.part)))];
  const known = new Set(parts);
  const cutOn = new Set(wholesOf(input.animals).values());
  const unknown = (path: (string | number)[], name: string) => {
    const near = nearNames(name, parts, 1);
    const listed = parts.length > 12 ? [...parts.slice(0, 12), '…'] : parts;
    complain(
      path,
      `a part that no animal has, ${JSON.stringify(name)}`,
      `${near.length > 0 ? `perhaps ${near[0]}; ` : ''}one of ${listed.join(', ')}`,
    );
  };
  for (const key of ['values', 'shares', 'finish'] as const)
    for (const name of Object.keys(input[key] ?? {})) if (!known.has(name)) unknown([key, name], name);
  for (const key of ['credited', 'wasted'] as const)
    (input[key] ?? []).forEach((name, i) => {
      if (!known.has(name)) unknown([key, i], name);
    });
  for (const key of ['credited', 'wasted'] as const)
    (input[key] ?? []).forEach((name, i) => {
      if (cutOn.has(name))
        complain([key, i], `${JSON.stringify(name)}, which is cut on`, 'a part that is not cut on');
    });
  for (const name of Object.keys(input.values ?? {}))
    if (cutOn.has(name))
      complain(['values', name], 'a price for what is cut on', 'prices for the pieces it is cut into');
  (input.credited ?? []).forEach((name, i) => {
    if (known.has(name) && !has(input.values, name))
      complain(['credited', i], `${JSON.stringify(name)} without a price`, 'a part with a price in values');
    if (input.wasted?.includes(name) === true)
      complain(['credited', i], `${JSON.stringify(name)}, which is wasted as well`, 'one or the other');
  });
  for (const [name, { labourMinPerKg = 0 }] of Object.entries(input.finish ?? {}))
    if (labourMinPerKg > 0 && input.labourPerHour === undefined)
      complain(['labourPerHour'], 'nothing', `what an hour costs, as finish has work on ${name}`);
  if (input.shares !== undefined)
    for (const name of parts)
      if (
        !has(input.shares, name) &&
        !cutOn.has(name) &&
        !(input.wasted?.includes(name) ?? false) &&
        !(input.credited?.includes(name) ?? false) &&
        !(has(input.values, name) && input.values![name]! < 0)
      )
        complain(['shares', name], 'nothing', `a share for ${JSON.stringify(name)}, 0 for none`);
}

export const CarveInput = CarveFields.superRefine((input, context) => {
  const complain: Complain = (path, found, allowed) =>
    context.addIssue({ code: 'custom', path, message: allowed, params: { found } });
  input.animals.forEach((animal, i) => {
    checkAnimal(animal, i, complain);
  });
  checkCuts(input.animals, complain);
  checkNames(input, complain);
});
export type CarveInput = z.infer<typeof CarveInput>;
