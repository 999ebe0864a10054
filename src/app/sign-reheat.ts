/** Signing asks the engine about reheating too: a finish step with a programme is shown to hold, or the version is not signed. */
import type { Problem } from '../contract/problem.ts';
import type { SignedEvidence } from '../contract/records.ts';
import type { Method } from '../contract/steps.ts';
import type { Engine, Warmed } from './engine.ts';
import { AppError } from './errors.ts';

interface ReheatEvidence {
  readonly problems: Problem[];
  readonly reheats: NonNullable<SignedEvidence['reheats']>;
  readonly cautions: string[];
}

export async function foreseeReheats(engine: Engine, method: Method): Promise<ReheatEvidence> {
  const found: ReheatEvidence = { problems: [], reheats: [], cautions: [] };
  for (const [i, step] of method.entries()) {
    if (step.kind !== 'finish' || (step.stages ?? []).length === 0) continue;
    let seen: Warmed;
    try {
      seen = await engine.warm(method, step.id);
    } catch (error) {
      if (!(error instanceof AppError) || error.code !== 'invalid') throw error;
      found.problems.push(...error.problems.map((p) => ({ ...p, path: `method[${i}].${p.path}` })));
      continue;
    }
    found.problems.push(...short(step.name, step.coreC, i, seen));
    if (seen.word === 'not asked')
      found.cautions.push(
        `"${step.name}" comes to ${down(seen.coldestC)} °C at its coldest point by the engine, and nothing says how hot it must be: no rule of reheating is named, and none is known for your place. Ask your local authority.`,
      );
    found.reheats.push({
      stepId: step.id,
      stepName: step.name,
      startC: seen.startC,
      coldestC: seen.coldestC,
      rules: seen.rules.map(({ rule, title, passes, why }) => ({ rule, title, passes, why })),
    });
  }
  return found;
}

/** Rounded down: what is not there is not shown as there. */
const down = (C: number) => (Math.floor(C * 10) / 10).toFixed(1);

function short(name: string, coreC: number | undefined, i: number, seen: Warmed): Problem[] {
  const path = `method[${i}]`;
  const problems = seen.rules.flatMap((verdict): Problem[] =>
    verdict.passes === true
      ? []
      : [
          {
            path: `${path}.rules`,
            found: `"${name}" against ${verdict.title}: ${verdict.why}`,
            allowed: 'a programme that meets every rule of reheating it is held to',
          },
        ],
  );
  if (coreC !== undefined && !(seen.coldestC >= coreC))
    problems.push({
      path: `${path}.coreC`,
      found: `"${name}": ${down(seen.coldestC)} °C at the coldest point when it is lifted out`,
      allowed: `at least ${coreC} °C: longer, hotter, thinner, or less asked for`,
    });
  if (seen.doubts.length > 0)
    problems.push({
      path,
      found: `"${name}": not known (${seen.doubts.join('; ')})`,
      allowed: 'a programme that the engine can answer for',
    });
  for (const stage of seen.unreached)
    problems.push({
      path: `${path}.stages`,
      found: `"${name}": the goal of the stage "${stage}" is not reached in its time`,
      allowed: 'a stage that ends',
    });
  return problems;
}
