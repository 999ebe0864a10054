/** A delivery as it is taken in at the door: half filled in, kept on this device, and what it says so far. Pure. */
import type { DeliveryCheck, DeliveryInput, DeliveryLine } from '../../../../contract/delivery.ts';
import { measuredChecks, pointsOf, tooWarm } from '../../../../contract/delivery-points.ts';
import type { Problem } from '../../../../contract/problem.ts';
import type { SpecificationContent } from '../../../../contract/specification.ts';
import { classOf } from '../../../../contract/tree-edit.ts';
import { plausibleArrival } from '../../../../core/properties/arrival-limits.ts';

/** As in the record, but for what is still being typed. */
export type DraftLine = Omit<DeliveryLine, 'grams' | 'tags' | 'tradeLot' | 'slaughteredOn' | 'useBy'> & {
  readonly grams: number | null;
  /** As pasted: one tag a line, or with commas between. */
  readonly tags: string;
  readonly tradeLot: string;
  readonly slaughteredOn: string;
  readonly useBy: string;
};

export interface Mark {
  readonly met: DeliveryCheck['met'];
  readonly found: string;
}

export interface DeliveryDraft {
  readonly id: string;
  readonly supplierId: string;
  /** Null: nothing was agreed for it. Undefined: not chosen yet. */
  readonly versionId: string | null | undefined;
  readonly arrivedAt: string;
  readonly documents: string;
  readonly lines: readonly DraftLine[];
  /** By the point's key and its words, so that a mark never moves to another point of a later version. */
  readonly marks: Readonly<Record<string, Mark>>;
  readonly reason: string;
}

export const markKey = (point: string, asked: string) => `${point} ${asked}`;

export const emptyDraft = (id: string, supplierId: string, arrivedAt: string): DeliveryDraft => ({
  id,
  supplierId,
  versionId: undefined,
  arrivedAt,
  documents: '',
  lines: [],
  marks: {},
  reason: '',
});

/** A line as the specification leads one to expect it. */
export function newLine(
  id: string,
  code: string,
  asked: { readonly species: string; readonly content: SpecificationContent } | null,
): DraftLine {
  const species = asked?.species ?? null;
  const what = asked?.content.what ?? '';
  const whole = asked === null || /^whole\b/i.test(what);
  return {
    id,
    kind: whole ? 'whole' : 'part',
    what: species === null ? '' : whole ? species : `${species} ${what}`,
    species,
    partId: null,
    class: species === null ? null : classOf(species, whole ? 'carcass' : what),
    count: null,
    grams: null,
    arrivalC: null,
    arrivalCMeant: false,
    frozen: false,
    code,
    tradeLot: '',
    tags: '',
    ageMonthsAtMost: asked?.content.ageMonthsAtMost ?? null,
    slaughteredOn: '',
    useBy: '',
    cost: null,
    refused: false,
    note: '',
  };
}

/** Tags as pasted: a line each, or parted by commas, semicolons or tabs; spaces belong to the tag. */
export const tagsOf = (text: string): string[] =>
  text
    .split(/[\r\n,;\t]+/)
    .map((t) => t.trim().replace(/\s+/g, ' '))
    .filter((t) => t !== '');

/** Tags that stand more than once in a delivery: one tag is one animal. */
export function tagsTwice(lines: readonly DraftLine[]): Set<string> {
  const seen = new Set<string>();
  const twice = new Set<string>();
  for (const tag of lines.filter((l) => !l.refused).flatMap((l) => tagsOf(l.tags))) {
    if (seen.has(tag)) twice.add(tag);
    seen.add(tag);
  }
  return twice;
}

export interface ArrivalDoubt {
  /** What it is if it was read in °F. */
  readonly ifFahrenheit: number | null;
}

/** A temperature that nothing chilled or frozen arrives at, until it is said again. */
export function arrivalDoubt(line: Pick<DraftLine, 'arrivalC' | 'arrivalCMeant'>): ArrivalDoubt | null {
  const { lowC, highC } = plausibleArrival;
  const C = line.arrivalC;
  if (C === null || line.arrivalCMeant || (C >= lowC && C <= highC)) return null;
  const asF = (C - 32) / 1.8;
  return { ifFahrenheit: asF >= lowC && asF <= highC ? asF : null };
}

export interface DeliverySoFar {
  readonly checks: readonly DeliveryCheck[];
  readonly met: number;
  readonly notMet: readonly DeliveryCheck[];
  readonly notLooked: number;
  readonly warm: readonly {
    readonly line: number;
    readonly found: string;
    readonly limit: string;
    readonly citation: string;
  }[];
  /** Lines whose limit of temperature is not known or that nobody measured: not shown as fine. */
  readonly unknownWarm: readonly { readonly line: number; readonly why: string }[];
  readonly mayBeAccepted: boolean;
}

/** What the points, the figures and the limits say so far, as the server will. */
export function soFar(
  draft: DeliveryDraft,
  content: SpecificationContent | null,
  place: string,
  zone: string,
): DeliverySoFar {
  const weighed = draft.lines.map((l) => ({
    kind: l.kind,
    arrivalC: l.arrivalC,
    grams: l.grams ?? 0,
    count: l.grams === null ? null : l.count,
  }));
  const measured = content === null ? [] : measuredChecks(content, weighed, draft.arrivedAt, zone);
  const checks =
    content === null
      ? []
      : pointsOf(content).map((p): DeliveryCheck => {
          const mark = draft.marks[markKey(p.point, p.asked)];
          const own = measured.find((c) => c.point === p.point);
          if (own !== undefined && draft.lines.length > 0) return own;
          return {
            point: p.point,
            asked: p.asked,
            met: p.by === 'seen' ? (mark?.met ?? 'not looked at') : 'not looked at',
            found: mark?.found ?? '',
          };
        });
  const taken = draft.lines.map((l, line) => ({ ...l, line })).filter((l) => !l.refused);
  const warm = tooWarm(taken, place).map((w) => ({ ...w, line: taken[w.line]?.line ?? w.line }));
  const unknownWarm = taken.flatMap((l) =>
    l.arrivalC === null
      ? [{ line: l.line, why: 'temperature not measured' }]
      : l.class === null && !l.frozen
        ? [{ line: l.line, why: 'no limit of temperature is known for it' }]
        : [],
  );
  const notMet = checks.filter((c) => c.met === 'not met');
  return {
    checks,
    met: checks.filter((c) => c.met === 'met').length,
    notMet,
    notLooked: checks.filter((c) => c.met === 'not looked at').length,
    warm,
    unknownWarm,
    mayBeAccepted: notMet.length === 0 && warm.length === 0,
  };
}

/** What is still missing before it can be decided, in the contract's own paths. */
export function missingIn(draft: DeliveryDraft): Problem[] {
  const problems: Problem[] = [];
  const miss = (path: string, allowed: string, found = 'nothing') => problems.push({ path, found, allowed });
  if (draft.supplierId === '') miss('supplierId', 'who brings it');
  if (draft.versionId === undefined)
    miss('specificationVersionId', 'what it is checked against, or that nothing was agreed');
  if (draft.lines.length === 0) miss('lines', 'at least one line: what came');
  const twice = tagsTwice(draft.lines);
  const codes = new Map<string, number>();
  draft.lines.forEach((l, i) => {
    if (l.what.trim() === '') miss(`lines[${i}].what`, 'what came');
    if (l.grams === null) miss(`lines[${i}].grams`, 'its weight');
    if (l.code.trim() === '') miss(`lines[${i}].code`, 'a code of its own');
    if (arrivalDoubt(l) !== null)
      miss(`lines[${i}].arrivalC`, 'the figure in its unit, or that it is meant', `${l.arrivalC} °C`);
    if (l.refused) return;
    const other = codes.get(l.code.trim());
    if (other !== undefined)
      miss(`lines[${i}].code`, 'a code of its own', `${l.code}, the code of line ${other + 1} too`);
    codes.set(l.code.trim(), i);
    const own = tagsOf(l.tags).find((t) => twice.has(t));
    if (own !== undefined) miss(`lines[${i}].tags`, 'each tag once: one tag, one animal', `${own}, twice`);
  });
  return problems;
}

/** The record, once nothing is missing. */
export function inputOf(
  draft: DeliveryDraft,
  content: SpecificationContent | null,
  decision: DeliveryInput['decision'],
): DeliveryInput {
  const or = (text: string) => (text.trim() === '' ? null : text.trim());
  return {
    id: draft.id,
    supplierId: draft.supplierId,
    specificationVersionId: draft.versionId ?? null,
    arrivedAt: draft.arrivedAt,
    documents: draft.documents,
    lines: draft.lines.map((l): DeliveryLine => {
      if (l.grams === null) throw new Error(`${l.what} was not weighed`);
      return {
        ...l,
        what: l.what.trim(),
        species: l.species === null ? null : or(l.species),
        grams: l.grams,
        code: l.code.trim(),
        tags: tagsOf(l.tags),
        tradeLot: or(l.tradeLot),
        slaughteredOn: or(l.slaughteredOn),
        useBy: or(l.useBy),
      };
    }),
    checks:
      content === null
        ? []
        : pointsOf(content)
            .filter((p) => p.by === 'seen')
            .map(({ point, asked }) => ({
              point,
              asked,
              met: draft.marks[markKey(point, asked)]?.met ?? 'not looked at',
              found: draft.marks[markKey(point, asked)]?.found ?? '',
            })),
    decision,
    reason: draft.reason.trim(),
  };
}

/** What the server or the form says about one field, in words; undefined where nothing. */
export function saidAt(problems: readonly Problem[], ...paths: string[]): string | undefined {
  const own = problems.filter((p) => {
    const path = p.path.replace(/^body\./, '');
    return paths.some((q) => path === q || path.startsWith(`${q}[`));
  });
  if (own.length === 0) return undefined;
  return own
    .map((p) => (p.found === 'nothing' ? `Missing: ${p.allowed}` : `${p.found}; allowed: ${p.allowed}`))
    .join('. ');
}
