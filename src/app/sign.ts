/** Signing a version: the law is asked, the engine is run, and what they said is kept with the signature. */
import { eq } from 'drizzle-orm';
import { nitriteProblems } from '../contract/method-cure.ts';
import type { Problem } from '../contract/problem.ts';
import type { Subject } from '../contract/product-of.ts';
import type { Place, SignedEvidence, Version } from '../contract/records.ts';
import { standing } from '../contract/standing.ts';
import { leastCore, measuresCore, rulesOfStep, withRules } from '../contract/step-rules.ts';
import type { Method, Step, StepOf } from '../contract/steps.ts';
import { findRule } from '../core/properties/rules.ts';
import * as t from '../store/tables.ts';
import { type Actor, type App, asKitchen, change, kitchenOf, look } from './app.ts';
import { dayIn } from './civil-day.ts';
import { asVersion, dishRow, draft, namesIn, versionRow } from './dishes.ts';
import type { Foreseen } from './engine.ts';
import { AppError } from './errors.ts';
import { partsUsed, stopsOf, unlawful } from './law.ts';
import { methodCautions } from './method-cautions.ts';
import { checkReferences } from './mix-references.ts';
import { signatureDigest } from './record-digests.ts';
import { foreseeReheats } from './sign-reheat.ts';

export async function signVersion(app: App, actor: Actor, versionId: string, rev: number): Promise<Version> {
  const { version, dish, place } = await look(app, async (db) => {
    const kitchen = asKitchen(await kitchenOf(db, actor.kitchenId));
    const found = await draft(db, actor.kitchenId, versionId, rev);
    return { version: found, dish: await dishRow(db, actor.kitchenId, found.dishId), place: kitchen.place };
  });
  const subject: Subject = { species: dish.species, part: dish.part, place };
  // What is signed names every rule it is held to, those that are usual here for such food included.
  const method = withRules(version.method as Method, subject);
  const agreements = await checkLaw(app, actor.kitchenId, dish, method, place);
  checkComplete(dish, method);
  // The engine runs outside the transaction; that the draft is still this one is asked again under its lock.
  const evidence: SignedEvidence = {
    ...(await foreseeAll(app, method, subject)),
    ...(agreements.length === 0 ? {} : { agreements }),
  };
  return change(app, actor, async ({ tx, kitchen, person, now, tell }) => {
    await draft(tx, kitchen.id, versionId, rev);
    // Signed it is what other dishes are made of: two drafts that were no circle may be one once both count.
    await checkReferences(tx, kitchen.id, dish, method);
    const signature = { status: 'signed', signedAt: now, signedBy: person.id, evidence, method };
    await tx.update(t.version).set(signature).where(eq(t.version.id, versionId));
    await tx.update(t.dish).set({ stage: 'signed', updatedAt: now }).where(eq(t.dish.id, dish.id));
    await tell({
      action: 'signed',
      subject: 'version',
      subjectId: versionId,
      summary: `${dish.name}, version ${version.number}, signed${agreements.map((a) => `, ${a.part} of ${a.species} by the word of ${a.authority}, ${a.reference}`).join('')}.`,
      records: [
        {
          table: 'signature',
          id: versionId,
          sha256: signatureDigest({ method, evidence, signedAt: now, signedBy: person.id }),
        },
      ],
    });
    return asVersion(await versionRow(tx, kitchen.id, versionId), await namesIn(tx, kitchen.id));
  });
}

/** By whose word what the law stops is made all the same; refused where nobody has given it. */
async function checkLaw(
  app: App,
  kitchenId: string,
  dish: { id: string; species: string; part: string },
  method: Method,
  place: Place,
): Promise<NonNullable<SignedEvidence['agreements']>> {
  const used = await look(app, async (db) => {
    const kitchen = await kitchenOf(db, kitchenId);
    return partsUsed(db, kitchen, dish, method, dayIn(kitchen.zone, app.now()));
  });
  const problems = [...stopsOf(used, place), ...nitriteProblems(method, place)];
  if (problems.length > 0) throw unlawful(problems);
  return used.flatMap(({ species, part, law, agreed }) =>
    agreed === null ? [] : [{ species, part, status: law.status, ...agreed }],
  );
}

const judged = (step: Step): step is StepOf<'cook' | 'chill' | 'keep' | 'finish'> =>
  step.kind === 'cook' || step.kind === 'chill' || step.kind === 'keep' || step.kind === 'finish';

function checkComplete(dish: { species: string; part: string }, method: Method): void {
  if (method.length === 0)
    throw new AppError('unfinished', 'There is nothing to sign: the method has no steps.', [
      { path: 'method', found: 'an empty list', allowed: 'the steps that make the dish' },
    ]);
  if (!method.some((step) => step.kind === 'cook'))
    throw new AppError(
      'unsafe',
      `The ${dish.part} of ${dish.species} is never cooked: the method has no cook step.`,
      [{ path: 'method', found: 'no cook step', allowed: `a cook step for the ${dish.part}` }],
    );
  const problems: Problem[] = [];
  for (const [i, step] of method.entries()) {
    if (step.kind === 'cook' && step.stages.length === 0)
      problems.push({
        path: `method[${i}].stages`,
        found: 'no stages',
        allowed: 'how the piece is cooked: a medium, its temperature, how long',
      });
    if (judged(step))
      for (const [j, rule] of (step.rules ?? []).entries())
        if (findRule(rule) === undefined)
          problems.push({
            path: `method[${i}].rules[${j}]`,
            found: JSON.stringify(rule),
            allowed: 'the id of a rule of the book',
          });
    if (step.kind === 'cook' && !measuresCore(step))
      problems.push({
        path: `method[${i}].asks`,
        found: `"${step.name}" asks for no measurement of the core`,
        allowed: `a core log, or a critical temperature of at least ${leastCore} °C`,
      });
    const logs = step.asks.findIndex((ask) => ask.kind === 'core log');
    if (logs >= 0 && rulesOfStep(step).length === 0)
      problems.push({
        path: `method[${i}].asks[${logs}]`,
        found: `a core log in "${step.name}", which names no rule`,
        allowed: 'a rule that the log is judged by, or no core log here',
      });
  }
  if (problems.length > 0)
    throw new AppError('unfinished', `The method is not ready to sign: ${tellAll(problems)}`, problems);
}

async function foreseeAll(app: App, method: Method, subject: Subject): Promise<SignedEvidence> {
  const problems: Problem[] = [];
  const verdicts: SignedEvidence['verdicts'] = [];
  const cautions = [...standing, ...methodCautions(method, subject)];
  for (const [i, step] of method.entries()) {
    if (step.kind !== 'cook') continue;
    let seen: Foreseen;
    try {
      seen = await app.engine.foresee(method, step.id);
    } catch (error) {
      if (!(error instanceof AppError) || error.code !== 'invalid') throw error;
      problems.push(...error.problems.map((p) => ({ ...p, path: `method[${i}].${p.path}` })));
      continue;
    }
    problems.push(...unsafe(step, i, seen, subject.place));
    cautions.push(...cautionsOf(step, seen, subject.place));
    verdicts.push({
      stepId: step.id,
      stepName: step.name,
      lethalityMin: seen.lethalityMin,
      lethalityAtLiftOutMin: seen.lethalityAtLiftOutMin,
      neededMin: seen.neededMin,
      referenceC: step.target.referenceC,
      zC: step.target.zC,
      passes: seen.passes,
      warmestC: seen.warmestC,
    });
  }
  const warmed = await foreseeReheats(app.engine, method);
  problems.push(...warmed.problems);
  cautions.push(...warmed.cautions);
  if (problems.length > 0)
    throw new AppError('unsafe', `The coldest point is not shown to be safe: ${tellAll(problems)}`, problems);
  const engine = `Fifth Quarter ${app.version}, heat engine, fine mesh`;
  const { reheats } = warmed;
  return { engine, verdicts, ...(reheats.length === 0 ? {} : { reheats }), cautions };
}

/** The six hours on the way up are an American guideline; elsewhere it is used for want of a figure of one's own. */
const whoseComeUp = (place: Place) =>
  place === 'US'
    ? ''
    : ' No figure for this is published for your place: the American guideline for plants is used in its stead.';

function unsafe(step: StepOf<'cook'>, i: number, seen: Foreseen, place: Place): Problem[] {
  const problems: Problem[] = [];
  const figure = (min: number) => (min < 10 ? min.toFixed(2) : min.toFixed(0));
  if (!seen.passes || !(seen.lethalityMin >= seen.neededMin))
    problems.push({
      path: `method[${i}].target`,
      // Rounded down: what is not there is not shown as there.
      found: `"${step.name}": ${figure(Math.floor(seen.lethalityMin * 100) / 100)} min at ${step.target.referenceC} °C at the coldest point`,
      allowed: `${seen.neededMin} min; cook longer or hotter, or make the piece slimmer`,
    });
  if (seen.doubts.length > 0)
    problems.push({
      path: `method[${i}]`,
      found: `"${step.name}": not known (${seen.doubts.join('; ')})`,
      allowed: 'a programme that the engine can answer for: nothing frozen when the cook begins',
    });
  if (seen.comeUp?.passes === false)
    problems.push({
      path: `method[${i}].stages`,
      found: `"${step.name}" warms too slowly: ${seen.comeUp.why}${whoseComeUp(place)}`,
      allowed: 'a quicker way up: no cook undoes toxin that is formed on it',
    });
  for (const verdict of seen.cooking)
    if (verdict.passes !== true)
      problems.push({
        path: `method[${i}].rules`,
        found: `"${step.name}" against ${verdict.title}: ${verdict.why}`,
        allowed:
          'a programme that meets every rule it is held to: those it names, and what is usual where you are for such food',
      });
  for (const stage of seen.unreached)
    if (!stage.chilling)
      problems.push({
        path: `method[${i}].stages`,
        found: `"${step.name}": the goal of the stage "${stage.name}" is not reached in its time`,
        allowed: 'a stage that ends',
      });
  return problems;
}

function cautionsOf(step: StepOf<'cook'>, seen: Foreseen, place: Place): string[] {
  const cautions: string[] = [];
  const { referenceC, zC, min } = step.target;
  if (seen.ownTarget)
    cautions.push(
      `"${step.name}" has a target of the kitchen’s own, ${min} min at ${referenceC} °C (z ${zC} °C), which is less than 70 °C for 2 min. It is signed because it also meets ${seen.cooking.map((v) => v.title).join('; ')}.`,
    );
  if (seen.comeUp?.passes === null)
    cautions.push(`On the way up in "${step.name}": ${seen.comeUp.why}${whoseComeUp(place)}`);
  if (!step.asks.some((ask) => ask.kind === 'core log'))
    cautions.push(
      `"${step.name}" asks for no core log: a batch of it will have single readings of the core to show, and no time at temperature.`,
    );
  for (const verdict of seen.chilling)
    if (verdict.passes !== true)
      cautions.push(`Chilling after "${step.name}" is not foreseen to meet ${verdict.title}: ${verdict.why}`);
  for (const stage of seen.unreached)
    if (stage.chilling) cautions.push(`The goal of the stage "${stage.name}" is not reached in its time.`);
  return cautions;
}

const tellAll = (problems: readonly Problem[]) => `${problems.map((p) => p.found).join('; ')}.`;
