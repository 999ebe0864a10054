/** From the step on the bench and a log laid over it to what the engine's fit is asked. */
import type { BodyInput, StageInput } from '../../../../contract/body.ts';
import type { FitInput } from '../../../../contract/fit.ts';
import { programmeInputOf } from '../../../../contract/method-cook.ts';
import type { Method } from '../../../../contract/steps.ts';
import type { Overlay } from './measured.tsx';

export type ProbeKey = 'atMm' | 'radiusMm' | 'xMm' | 'yMm';
export type Probe = Partial<Record<ProbeKey, number>>;
export type Also = 'diffusivity' | 'radiusMm' | 'probeMm';

/** The programme as the engine has it: the wraps in series, the chill behind the cook. */
export interface Run {
  readonly body: BodyInput;
  readonly startC: number;
  readonly stages: readonly StageInput[];
}

export const runOf = (method: Method, cookId: string): Run => programmeInputOf(method, cookId);

/** Which distances say where a probe's tip was in a piece of this shape. */
export function probeKeys(shape: BodyInput['shape']): readonly ProbeKey[] {
  if (shape === 'revolved') return ['atMm', 'radiusMm'];
  if (shape === 'slab') return ['xMm'];
  return shape === 'block' ? ['xMm', 'yMm'] : ['radiusMm'];
}

export interface Asked {
  readonly run: Run;
  /** Minutes each stage lasted. */
  readonly lasted: readonly number[];
  readonly probe: Probe;
  /** Stages whose coefficient is fitted. */
  readonly hStages: readonly number[];
  readonly also: readonly Also[];
}

/** Everything but the log: what is kept with a fit. */
export function orderOf({ run, lasted, probe, hStages, also }: Asked): Omit<FitInput, 'log'> {
  return {
    body: run.body,
    startC: run.startC,
    // A log is of what was done: every stage has its minutes, whatever it was meant to end by.
    stages: run.stages.map((stage, i) => ({ ...stage, until: { min: lasted[i] ?? 0 } })),
    probe,
    fit: [...(hStages.length > 0 ? (['hWm2K'] as const) : []), ...also],
    ...(hStages.length > 0 ? { hStages: [...hStages] } : {}),
  };
}

/** The log on the clock of the programme. */
export const logOf = ({ log, fromMin }: Overlay) =>
  log.points.map(({ s, C }) => ({ min: s / 60 + fromMin, C }));

/** Stages that the log sees at least so many readings of. */
export function stagesSeen(overlay: Overlay, lasted: readonly number[], least = 4): number[] {
  const times = logOf(overlay).map((p) => p.min);
  let began = 0;
  return lasted.flatMap((minutes, i) => {
    const from = began;
    began += minutes;
    return times.filter((m) => m >= from && m < began).length >= least ? [i] : [];
  });
}

/** To three figures, never up: a coefficient that is too high is the unsafe side, for heating and for chilling. */
export function roundedDown(value: number): number {
  const unit = 10 ** (Math.floor(Math.log10(value)) - 2);
  const down = Math.floor(value / unit + 1e-9) * unit;
  return Number(down.toPrecision(3));
}
