/** What is told with a fit: what the log cannot tell apart and what would, where the model does not follow, what to check. */
import type { FitProblem, FitResult } from '../core/method/fit.ts';
import type { FitInput } from './fit.ts';
import type { UsedLog } from './fit-log.ts';
import type { Named } from './fit-values.ts';

export const fitCautions: readonly string[] = [
  'A fitted value holds for the machine as it was loaded and run, and for this probe in this piece; fit again when either changes.',
  'For food that must be safe take the cautious end of the interval, and probe the coldest place of every batch: a computed temperature is no measurement.',
  'Advice, not a licence: your local authority and qualified people decide what is safe in your kitchen.',
];

interface Told {
  readonly input: FitInput;
  readonly order: FitProblem;
  readonly result: FitResult;
  readonly values: readonly Named[];
  readonly used: UsedLog;
  /** The first reading that was used [°C]. */
  readonly first: number;
}

const joined = (names: readonly string[]) =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

const plain: Record<Named['parameter']['kind'], string> = {
  h: 'the surface coefficient',
  diffusivity: 'the diffusivity',
  radius: 'the size of the piece',
  probe: 'the place of the probe',
};

/** What would tell fitted values apart. */
function remedy(kinds: ReadonlySet<string>): string {
  const ways: string[] = [];
  if (kinds.has('radius')) ways.push('measure the piece and leave its size out of the fit');
  if (kinds.has('probe'))
    ways.push('push the probe against a stop or cut the piece to see where its tip was');
  if (kinds.has('h')) ways.push('put the probe nearer to the surface and log from the first minute');
  if (kinds.has('diffusivity')) ways.push('log until the piece is nearly as warm as its medium');
  if (kinds.has('h') && kinds.size === 1)
    ways.push('or take a smaller piece, whose surface holds up more of the heat');
  if (kinds.has('h') && kinds.has('diffusivity')) ways.push('or log pieces of two sizes in the same machine');
  return ways.join('; ');
}

function confounded({ result, values }: Told): string[] {
  // What is alone in its group is told of by its own interval.
  return result.confounded.flatMap((group) => {
    const members = group.flatMap((i) => values[i] ?? []);
    const kinds = new Set(members.map((m) => m.parameter.kind));
    const names = [...kinds].map((kind) => plain[kind]);
    if (group.length < 2) return [];
    const together = names.length > 1 ? `${joined(names)} apart` : `one ${names[0]} from another`;
    return `This log cannot tell ${together}: other values together follow it as well. What would: ${remedy(kinds)}.`;
  });
}

function oneSided({ values }: Told): string[] {
  return values.flatMap(({ value, words, parameter }) =>
    parameter.kind === 'h' && value.highOpen && !value.lowOpen
      ? [
          `${words} is only known from below: at this Biot number (${value.biot?.toFixed(0)}) the heat is held up inside the piece and no longer at its surface, so that a higher value changes nothing the probe could see. What would tell more: ${remedy(new Set(['h']))}.`,
        ]
      : value.lowOpen && value.highOpen
        ? [
            `This log does not tell ${plain[parameter.kind]}. What would: ${remedy(new Set([parameter.kind]))}.`,
          ]
        : value.atBound
          ? [
              `${words} ended at the edge of what was looked for: something that was not fitted is probably wrong.`,
            ]
          : [],
  );
}

function doubts({ input, order, result, values, used, first }: Told): string[] {
  const said: string[] = [];
  const { residuals, rmse, noise } = result;
  let worst = 0;
  residuals.forEach((r, i) => {
    if (Math.abs(r) > Math.abs(residuals[worst] ?? 0)) worst = i;
  });
  if (rmse > 1)
    said.push(
      `The model does not follow this log: it is off by ${rmse.toFixed(1)} K on the whole and by ${Math.abs(residuals[worst] ?? 0).toFixed(1)} K at minute ${((used.t[worst] ?? 0) / 60).toFixed(0)}. Check when the piece went in, its size, where the probe was and the medium’s temperature before the fitted values are used.`,
    );
  if (noise.autocorrelation > 0.5)
    said.push(
      `The residuals drift: each is ${noise.autocorrelation.toFixed(2)} alike the next, so that ${residuals.length} readings are worth about ${Math.max(1, Math.round(noise.effective))}. The intervals are widened for that; a drift also says that the model misses something.`,
    );
  if ((used.t[0] ?? 0) < 120 && Math.abs(first - input.startC) > 3)
    said.push(
      `The first reading is ${first.toFixed(1)} °C and the piece was said to start at ${input.startC} °C: which is right?`,
    );
  if (used.outside > 0)
    said.push(
      `${used.outside} readings lie before the start or after the end of the programme and were left out.`,
    );
  if (used.eachOf > 1)
    said.push(
      `The log is long: means of ${used.eachOf} readings each were fitted. The log itself is kept as it is.`,
    );
  if (order.stages.some(({ until }) => until.kind !== 'time'))
    said.push(
      'A stage ends by a temperature: the model decides when. Give the minutes it lasted for a truer fit.',
    );
  if (!result.converged) said.push('The search did not come to rest: take the values as a first guess.');
  const guessed = order.stages.flatMap((stage, i) =>
    values.some((v) => v.parameter.kind === 'h') &&
    !values.some((v) => v.parameter.kind === 'h' && v.parameter.stage === i) &&
    startOf(result, i) < (used.t.at(-1) ?? 0)
      ? [stage.name]
      : [],
  );
  if (guessed.length > 0)
    said.push(
      `The coefficient of ${joined(guessed)} was taken as given although the log covers it: if it is wrong, the fitted value is pulled off. Fit it as well, or end the log before.`,
    );
  for (const { parameter, value } of values)
    if (parameter.kind === 'diffusivity' && value.told && value.factor !== undefined) {
      const { low95, high95 } = value.factor;
      if (low95 > 1.25 || high95 < 0.8)
        said.push(
          'The fitted diffusivity is far from what the composition gives. The size, the place of the probe or the composition is the likelier fault.',
        );
    }
  return said;
}

const startOf = (result: FitResult, stage: number) => (stage === 0 ? 0 : (result.stageEnds[stage - 1] ?? 0));

/** What to know before a fitted value is used, the gravest first. */
export const fitWarnings = (told: Told): string[] => [
  ...confounded(told),
  ...oneSided(told),
  ...doubts(told),
];

/** How the fitted values lean on one another. */
export function correlationsOf(
  values: readonly Named[],
  { correlation }: FitResult,
): { between: [string, string]; r: number }[] {
  return values.flatMap((a, i) =>
    values.slice(i + 1).map((b, q) => ({
      between: [a.name, b.name] as [string, string],
      r: correlation[i]?.[i + 1 + q] ?? Number.NaN,
    })),
  );
}
