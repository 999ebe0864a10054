/** Documents from records: the engine is run again for what is drawn, and the page is set. Runs in the engine thread. */
import { AppError } from '../app/errors.ts';
import { inInputTerms } from '../contract/cook.ts';
import { programmeOf } from '../contract/method-cook.ts';
import { cureProblemOf } from '../contract/method-cure.ts';
import { reheatProblemOf } from '../contract/method-reheat.ts';
import { InputProblems } from '../contract/problem.ts';
import { rulesOfStep, withRules } from '../contract/step-rules.ts';
import { Contradiction, OutOfRange } from '../core/errors.ts';
import { cook } from '../core/heat/cook.ts';
import { foreseenReheat } from '../core/method/reheat.ts';
import { findRule } from '../core/properties/rules.ts';
import { foreseeCure } from '../core/salt/foresee.ts';
import type { AuthorityRequestData } from '../documents/authority-request.ts';
import type { BatchRecordData } from '../documents/batch-record.ts';
import type { CuredStep } from '../documents/cure-on-card.ts';
import type { MethodCardData } from '../documents/method-card-data.ts';
import { cureFaultWords } from '../documents/salt-words.ts';
import type { SpecificationSheetData } from '../documents/specification-sheet.ts';
import {
  authorityRequestPdf,
  batchRecordPdf,
  DoesNotFit,
  methodCardPdf,
  specificationSheetPdf,
} from './typeset.ts';

export type PrintTask =
  | { readonly kind: 'method card'; readonly data: Omit<MethodCardData, 'cooks' | 'cures' | 'warmed'> }
  | { readonly kind: 'batch record'; readonly data: BatchRecordData }
  | { readonly kind: 'specification'; readonly data: SpecificationSheetData }
  | { readonly kind: 'authority request'; readonly data: AuthorityRequestData };

export async function print(task: PrintTask): Promise<Uint8Array> {
  if (task.kind === 'batch record') return batchRecordPdf(task.data);
  if (task.kind === 'authority request') return authorityRequestPdf(task.data);
  try {
    if (task.kind === 'specification') return await specificationSheetPdf(task.data);
    const data = heldHere(task.data);
    return await methodCardPdf({
      ...data,
      cooks: cooksOf(data.version.method),
      cures: curesOf(data.version.method),
      warmed: warmedOf(data.version.method),
    });
  } catch (error) {
    if (error instanceof DoesNotFit) throw new AppError('unfinished', error.message, [], error);
    throw error;
  }
}

/** A signed method names every rule it was signed by; a draft is printed with those it would be. */
function heldHere(
  data: Omit<MethodCardData, 'cooks' | 'cures' | 'warmed'>,
): Omit<MethodCardData, 'cooks' | 'cures' | 'warmed'> {
  const { dish, kitchen, version } = data;
  if (version.status === 'signed') return data;
  const subject = { species: dish.species, part: dish.part, place: kitchen.place };
  return { ...data, version: { ...version, method: withRules(version.method, subject) } };
}

function cooksOf(method: MethodCardData['version']['method']): MethodCardData['cooks'] {
  return method
    .filter((step) => step.kind === 'cook')
    .map((step) => {
      try {
        const { problem, cookStages } = programmeOf(method, step.id);
        return {
          stepId: step.id,
          problem,
          cookStages,
          result: cook(problem, { mode: 'fine', frames: { count: 12 } }),
        };
      } catch (error) {
        return { stepId: step.id, why: whyNot(error) };
      }
    });
}

function warmedOf(method: MethodCardData['version']['method']): NonNullable<MethodCardData['warmed']> {
  return method
    .filter((step) => step.kind === 'finish')
    .filter((step) => (step.stages ?? []).length > 0)
    .map((step) => {
      try {
        const problem = reheatProblemOf(method, step.id);
        const result = cook(problem, { mode: 'fine' });
        const rules = rulesOfStep(step).flatMap((id) => findRule(id) ?? []);
        return {
          stepId: step.id,
          startC: problem.start,
          seen: foreseenReheat(problem, result, rules, step.coreC ?? null),
          minutes: result.stages.map((s) => (s.end - s.start) / 60),
        };
      } catch (error) {
        return { stepId: step.id, why: whyNot(error) };
      }
    });
}

function curesOf(method: MethodCardData['version']['method']): CuredStep[] {
  return method.flatMap((step): CuredStep[] => {
    if (step.kind !== 'cure') return [];
    const cure = cureProblemOf(method, step);
    if (cure === null) return [];
    try {
      return [{ stepId: step.id, foreseen: foreseeCure({ ...cure.problem, withoutNineTenths: true }) }];
    } catch (error) {
      if (!(error instanceof OutOfRange || error instanceof Contradiction)) throw error;
      return [{ stepId: step.id, why: cureFaultWords(error) }];
    }
  });
}

/** A draft may hold what the engine cannot run: the card then says so. Anything else is a fault. */
function whyNot(error: unknown): string {
  const problems =
    error instanceof InputProblems
      ? error.problems
      : error instanceof OutOfRange || error instanceof Contradiction
        ? [inInputTerms(error)]
        : null;
  if (problems === null) throw error;
  return problems.map((p) => `${p.path}: found ${p.found}, allowed ${p.allowed}`).join('; ');
}
