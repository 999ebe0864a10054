/** What may vary about a cook in a kitchen, and by how much unless the kitchen knows better; and the question that makes of it. */
import type { programmeInputOf } from '../../../../contract/method-cook.ts';
import { hasLaw, isHumid, surroundingsOf } from '../../../../contract/surroundings.ts';
import { media, mediumNamed } from '../../../../core/properties/media.ts';
import { defaultRule } from '../../../../core/properties/mixture-conductivity.ts';

export type ProgrammeInput = ReturnType<typeof programmeInputOf>;

/** How far things stray: `±` are standard deviations, but for the probe, which is never out by more. */
export interface Spreads {
  readonly thickMm: number;
  readonly skinMm: number;
  readonly startC: number;
  readonly mediumC: number;
  /** Share of the surface coefficient [%]; where `published`, anywhere in the range of the table instead. */
  readonly hPct: number;
  readonly published: boolean;
  readonly probeC: number;
  /** Conductivity of what is given by its composition: never out by more [%]. */
  readonly conductPct: number;
  readonly pieces: number;
  readonly confidence: number;
  /** How many pieces are tried. */
  readonly samples: number;
}

export const usualSpreads: Spreads = {
  thickMm: 1.5,
  skinMm: 0.3,
  startC: 1,
  mediumC: 1,
  hPct: 20,
  published: true,
  probeC: 0.5,
  conductPct: 10,
  pieces: 24,
  confidence: 0.95,
  samples: 1_000,
};

type StageOf = ProgrammeInput['stages'][number];

/** The table's range for a stage's medium; undefined where the stage has a coefficient of its own, or none that one number could say. */
export function publishedRange(stage: StageOf | undefined) {
  if (stage?.medium === undefined || stage.hWm2K !== undefined || hasLaw(stage) || isHumid(stage))
    return undefined;
  return Object.hasOwn(media, stage.medium) ? mediumNamed(stage.medium) : undefined;
}

/** Can how well this stage heats the surface be said in one number? */
export const hasCoefficient = (stage: StageOf | undefined): boolean =>
  stage !== undefined && (stage.hWm2K !== undefined || publishedRange(stage) !== undefined);

/** How hot the stage is, where it is the same throughout [°C]. */
export function heatOf(stage: StageOf): number | undefined {
  const { medium } = surroundingsOf(stage, 'stage');
  return typeof medium === 'number' ? medium : undefined;
}

const spread = (mean: number, sd: number) => (sd > 0 ? { mean, sd } : mean);

/** The question as the command `sure` takes it. */
export function sureInput(
  input: ProgrammeInput,
  stageIndex: number,
  s: Spreads,
  rules: readonly string[],
): unknown {
  const { body } = input;
  const [outer, ...inner] = body.layers;
  const layers =
    inner.length > 0 && outer?.thicknessMm !== undefined
      ? [
          { ...outer, thicknessMm: spread(outer.thicknessMm, Math.min(s.skinMm, outer.thicknessMm / 5)) },
          ...inner,
        ]
      : body.layers;
  return {
    body: { ...body, layers },
    startC: spread(input.startC, s.startC),
    stages: input.stages.map((stage, i) => (i === stageIndex ? straying(stage, s) : stage)),
    target: input.target,
    stage: stageIndex,
    rules,
    samples: s.samples,
    pieces: s.pieces,
    confidence: s.confidence,
    ...(s.thickMm > 0 ? { thickerMm: { mean: 0, sd: s.thickMm } } : {}),
    ...conductivity(body, s.conductPct),
    ...(s.probeC > 0 ? { probeErrorC: { low: -s.probeC, high: s.probeC } } : {}),
  };
}

/** Is the conductivity of any layer worked out, so that it may be out? */
export const isComposed = ({ layers }: ProgrammeInput['body']): boolean =>
  layers.some((l) => l.composition !== undefined);

/** What is left unsaid is what was published for the rule. */
function conductivity(body: ProgrammeInput['body'], pct: number) {
  const byTheRule = body.layers.some(
    (l) => l.composition !== undefined && (l.conductivityBy ?? defaultRule) === defaultRule,
  );
  if (!isComposed(body) || (byTheRule && pct === usualSpreads.conductPct)) return {};
  return { conductivityFactor: pct > 0 ? { low: 1 - pct / 100, high: 1 + pct / 100 } : 1 };
}

function straying(stage: StageOf, s: Spreads) {
  const C = heatOf(stage);
  const range = publishedRange(stage);
  const h = stage.hWm2K ?? range?.h;
  const drawn =
    range !== undefined && s.published
      ? { low: range.low, high: range.high }
      : h === undefined
        ? undefined
        : spread(h, (h * Math.min(s.hPct, 24)) / 100);
  return {
    ...stage,
    ...(C === undefined ? {} : { mediumC: spread(C, s.mediumC) }),
    ...(drawn === undefined ? {} : { hWm2K: drawn }),
  };
}

/** What varies, in words. */
export function varyingWords(input: string, programme: ProgrammeInput): string {
  const stage = /^stages\[(\d+)\]\.(\w+)$/.exec(input);
  const name = `“${programme.stages[Number(stage?.[1])]?.name ?? 'the heat'}”`;
  if (stage?.[2] === 'mediumC') return `How hot ${name} really is`;
  if (stage?.[2] === 'hWm2K') return `How well ${name} heats the surface`;
  if (input === 'thickerMm') return 'How thick the piece is';
  if (input === 'startC') return 'How cold it goes in';
  if (input === 'probeErrorC') return 'The probe';
  if (input === 'conductivityFactor') return 'How well the piece conducts heat';
  if (/^body\.layers\[0\]\.thicknessMm$/.test(input))
    return `How thick the ${programme.body.layers[0]?.name ?? 'skin'} is`;
  return input;
}
