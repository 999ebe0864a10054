/** How long a step takes, as far as its settings say, and the limits it is held to, in words. */
import type { StageInput } from '../../contract/body.ts';
import type { Ask, Step } from '../../contract/steps.ts';
import { formatQuantity, type UnitSystem } from '../../core/units.ts';

export interface StepTime {
  /** Minutes of somebody's hands. */
  readonly handsMin: number;
  /** Minutes that pass by themselves, as far as they are known. */
  readonly waitMin: number;
  /** A stage ends when the piece is ready, not by the clock: the wait is at least `waitMin`. */
  readonly open: boolean;
  /** A longest time, not a needed one (keeping). */
  readonly upTo: boolean;
}

function stagesTime(stages: readonly StageInput[]): { waitMin: number; open: boolean } {
  let waitMin = 0;
  let open = false;
  for (const { until } of stages) {
    if ('min' in until) waitMin += until.min;
    else open = true;
  }
  return { waitMin, open };
}

/** The time of a step from its settings [min]. */
export function stepTime(step: Step): StepTime {
  const plain = { handsMin: step.handsMin, waitMin: 0, open: false, upTo: false };
  switch (step.kind) {
    case 'cure':
      return { ...plain, waitMin: (step.h + (step.rest?.h ?? 0)) * 60 };
    case 'rinse and dry':
      return { ...plain, waitMin: step.rinseMin + step.dryMin };
    case 'cook':
    case 'chill':
      return { ...plain, ...stagesTime(step.stages) };
    case 'keep':
      return { ...plain, waitMin: step.days * 1_440, upTo: true };
    case 'finish':
      return { ...plain, waitMin: step.min };
    default:
      return plain;
  }
}

/** The time in words: `35 min`, `12 h`, `48 min or more`, `up to 3 days`. */
export function timeText({ handsMin, waitMin, open, upTo }: StepTime): string {
  if (waitMin === 0 && open) return 'until ready';
  if (waitMin === 0) return handsMin === 0 ? 'no time given' : formatQuantity(handsMin, 'time', 'metric');
  const wait = formatQuantity(waitMin, 'time', 'metric');
  return upTo ? `up to ${wait}` : open ? `${wait} or more` : wait;
}

const kinds = { weight: 'mass', temperature: 'temperature', duration: 'time' } as const;

/** A limit in words, or null where the ask has none: `≤ 8 °C`, `850 to 1150 g`. */
export function limitText(ask: Ask, units: UnitSystem): string | null {
  const show = (v: number) =>
    ask.kind === 'weight' || ask.kind === 'temperature' || ask.kind === 'duration'
      ? formatQuantity(v, kinds[ask.kind], units)
      : String(v);
  if (ask.low !== undefined && ask.high !== undefined) return `${show(ask.low)} to ${show(ask.high)}`;
  if (ask.high !== undefined) return `≤ ${show(ask.high)}`;
  return ask.low === undefined ? null : `≥ ${show(ask.low)}`;
}

export interface StepLimit {
  readonly text: string;
  readonly what: string;
  readonly critical: boolean;
}

/** Every limit of a step: what its asks are held to, and for a cook step its target. */
export function stepLimits(step: Step, units: UnitSystem): StepLimit[] {
  const limits: StepLimit[] = [];
  if (step.kind === 'cook') {
    const { referenceC, min } = step.target;
    limits.push({
      text: `${formatQuantity(referenceC, 'temperature', units)} for ${formatQuantity(min, 'time', units)}`,
      what: 'the coldest point, or the same by its lethality',
      critical: true,
    });
  }
  for (const ask of step.asks) {
    const text = limitText(ask, units);
    if (text !== null) limits.push({ text, what: ask.label, critical: ask.critical === true });
    else if (ask.critical === true && ask.kind !== 'core log')
      limits.push({ text: ask.label, what: ask.kind, critical: true });
  }
  return limits;
}
