/** Targets of one's own and organisms, as rules for the judge: what they say is a model's word, never a rule's. */
import { z } from 'zod';
import type { Log } from '../core/microbes/log.ts';
import { logReduction, mostReductions } from '../core/microbes/log-reduction.ts';
import {
  findHeatResistance,
  type HeatResistance,
  heatResistances,
} from '../core/properties/organisms-heat.ts';
import type { LethalityRule } from '../core/properties/rule.ts';
import type { Complain } from './log-points.ts';
import { nearNames } from './near-names.ts';

/** Time at a reference temperature, or its equal; counted from `fromC` up, where that is stated. */
const OwnTarget = z.strictObject({
  referenceC: z.number().min(-40).max(200),
  zC: z.number().min(1).max(60),
  min: z.number().positive().max(100_000),
  fromC: z.number().min(-40).max(200).optional(),
});

/** So many decades of an organism, by its published D-values. */
const OrganismTarget = z.strictObject({
  organism: z.string().min(1).max(80),
  log10: z.number().positive().max(mostReductions),
});

export const JudgeTarget = z.union([OwnTarget, OrganismTarget]);
export type JudgeTarget = z.infer<typeof JudgeTarget>;

export function checkTargets(targets: readonly JudgeTarget[], complain: Complain): void {
  targets.forEach((target, i) => {
    if (!('organism' in target) || findHeatResistance(target.organism) !== undefined) return;
    const all = heatResistances.map((row) => row.id);
    const near = nearNames(target.organism, all, 1);
    complain(
      ['targets', i, 'organism'],
      `an unknown organism ${JSON.stringify(target.organism)}`,
      `${near.length > 0 ? `perhaps ${near[0]}; ` : ''}one of ${all.join(', ')}`,
    );
  });
}

const authority = 'A target of one’s own is no rule: which rule holds is for your local authority to say.';
const modelOnly =
  'By D-values measured in one food with some strains: others are harder to kill, and slow warming makes them harder still.';

function ownRule({ referenceC, zC, min, fromC }: z.infer<typeof OwnTarget>): LethalityRule {
  const from = fromC === undefined ? '' : `, counted from ${fromC} °C up`;
  return {
    id: `own-${referenceC}c-${min}min-z${zC}`,
    kind: 'lethality',
    title: `${min} min at ${referenceC} °C or its equal (z ${zC} °C)${from}`,
    place: 'your own target',
    appliesTo: 'whatever you set it for',
    scope: { places: [], steps: [], role: 'beside' },
    type: 'model',
    referenceC,
    s: min * 60,
    floorC: fromC ?? -273,
    rate: { by: 'z', below: zC, above: zC },
    source: 'user-input',
    confidence: 'assumption',
    cautions: [authority],
  };
}

function organismRule(row: HeatResistance, log10: number): LethalityRule {
  const top = row.D.at(-1)!;
  return {
    id: `${log10}log-${row.id}`,
    kind: 'lethality',
    title: `${log10} log10 of ${row.organism} in ${row.measuredIn}`,
    place: 'a model',
    appliesTo: `${row.organism}, measured in ${row.measuredIn}`,
    scope: { places: [], steps: [], role: 'beside' },
    type: 'model',
    referenceC: top.C,
    s: log10 * top.s,
    floorC: row.D[0]!.C,
    rate: { by: 'table', rows: row.D.map(({ C, s }) => ({ C, s: log10 * s })) },
    source: row.source,
    confidence: row.confidence,
    cautions: [modelOnly, ...(row.note === undefined ? [] : [row.note]), authority],
  };
}

export const targetRule = (target: JudgeTarget): LethalityRule =>
  'organism' in target ? organismRule(findHeatResistance(target.organism)!, target.log10) : ownRule(target);

export const ReductionAnswer = z.strictObject({
  /** Decades that the log takes off, at most 12. */
  log10: z.number(),
  capped: z.boolean(),
  /** Temperatures between which the D-values were measured: below nothing counts, above no more than there. */
  fromC: z.number(),
  toC: z.number(),
});

export const reductionBy = (target: JudgeTarget, log: Log, gap: number) =>
  'organism' in target ? { ...logReduction(log, findHeatResistance(target.organism)!, gap) } : undefined;
