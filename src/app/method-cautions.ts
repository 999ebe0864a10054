/** What a method leaves open or sets for itself, said where it is signed. None of it is judged; all of it is told. */
import type { BodyInput } from '../contract/body.ts';
import { runKeep } from '../contract/keep.ts';
import { keepInputOf } from '../contract/keep-step.ts';
import type { Subject } from '../contract/product-of.ts';
import type { Place } from '../contract/records.ts';
import { rulesAround } from '../contract/step-rules.ts';
import type { Method, Step, StepOf } from '../contract/steps.ts';
import { findRule } from '../core/properties/rules.ts';

/** How each rule that a step names stands to this dish in this place; nothing where it is the usual one for it. */
function ofRules(step: Step, method: Method, subject: Subject): string[] {
  if (step.kind !== 'cook' && step.kind !== 'chill' && step.kind !== 'finish' && step.kind !== 'keep')
    return [];
  const around = rulesAround(step, method, subject);
  return (step.rules ?? []).flatMap((id) => {
    const rule = findRule(id);
    if (rule === undefined) return [];
    const stands = around.find((r) => r.rule.id === id);
    const usual = stands?.standing === 'held to' || stands?.standing === 'covered';
    if (usual && stands.why === '') return [];
    const here = rule.scope.places.length === 0 || rule.scope.places.includes(subject.place);
    const abroad = here || usual ? '' : `, published for ${rule.place}, not for your place`;
    const needs =
      stands?.standing === 'may stand instead' && rule.scope.needs !== undefined
        ? ` It may stand instead of the usual rule only with ${rule.scope.needs}.`
        : '';
    const why = `${needs}${stands?.why ? ` Here: ${stands.why}.` : ''}`;
    return [
      `"${step.name}" answers to ${rule.title}${abroad}. It is for ${rule.appliesTo}; whether this dish is one of them is for you and your local authority to say.${why}`,
    ];
  });
}

function ofKeeping(method: Method, i: number, subject: Subject): string[] {
  const step = method[i];
  if (step?.kind !== 'keep') return [];
  const cautions: string[] = [];
  for (const { rule, standing } of rulesAround(step, method, subject))
    if (standing === 'held to' && rule.kind === 'keep' && rule.side === 'at most' && step.maxC > rule.C)
      cautions.push(`"${step.name}" allows ${step.maxC} °C; ${rule.title} is what holds where you are.`);
  const cooked = method.slice(0, i).findLastIndex((s) => s.kind === 'cook');
  if (cooked >= 0 && !method.slice(cooked, i).some((s) => s.kind === 'chill'))
    cautions.push(
      `"${step.name}" keeps what was cooked, and no chill step stands before it: how fast it cools is neither computed nor asked.`,
    );
  return [...cautions, ...ofLife(step, method, subject.place)];
}

/** Kept longer than the earliest limit, or for a time that nothing is known of. */
function ofLife(step: StepOf<'keep'>, method: Method, place: Place): string[] {
  const { days, word, why, limits, deciding } = runKeep(keepInputOf(step, method, place));
  const kept = `"${step.name}" keeps it ${step.packed} for ${step.days} days`;
  if (word === 'not known') return [`${kept}; how long it may be kept is not known. ${why}`];
  if (days === null || step.days <= days) return [];
  const limit = limits.find((l) => l.id === deciding);
  return [
    `${kept}; the earliest limit gives it ${days}: ${limit?.title ?? ''} (${limit?.type ?? 'model'}). ${why}`,
  ];
}

/** Through how much the heat must go at the thickest [mm]. */
function thickness(body: BodyInput): number {
  switch (body.shape) {
    case 'revolved':
      return Math.max(...body.profile.map((p) => p.diameterMm));
    case 'slab':
      return body.thicknessMm;
    case 'block':
      return Math.min(body.widthMm, body.heightMm);
    default:
      return body.diameterMm;
  }
}

/** The piece that was filled and the piece that is computed are one; warm at the start is said. */
function ofPiece(method: Method, i: number): string[] {
  const step = method[i];
  if (step?.kind !== 'cook') return [];
  const before = method.slice(0, i);
  const fill = before.findLast((s) => s.kind === 'fill');
  const filled = fill === undefined ? 0 : Math.max(...fill.profile.map((p) => p.diameterMm));
  const cautions: string[] = [];
  if (fill !== undefined && thickness(step.body) < 0.98 * filled)
    cautions.push(
      `"${step.name}" is computed for a piece ${thickness(step.body)} mm thick, and "${fill.name}" fills one of ${filled} mm: as filled it needs longer, and how much longer is not computed.`,
    );
  const mix = before.findLast((s) => s.kind === 'mix');
  if (step.startC > Math.min(15, mix?.maxC ?? 15))
    cautions.push(
      `"${step.name}" is computed from a piece that is at ${step.startC} °C right through when it goes in: a colder one needs longer, and one so warm must not have been so for long.`,
    );
  return cautions;
}

/** Everything that the one who signs must have read about the method itself. */
export function methodCautions(method: Method, subject: Subject): string[] {
  return method.flatMap((step, i) => [
    ...ofRules(step, method, subject),
    ...ofPiece(method, i),
    ...(step.kind === 'chill' && step.rules.length === 0
      ? [`"${step.name}" is held to no rule of cooling: how fast it must be is nowhere said.`]
      : []),
    ...ofKeeping(method, i, subject),
  ]);
}
