/** Which rules the core is held to at a step: those it names, and for cooking always one that speaks of cooking. */

import { findRule } from '../core/properties/rules.ts';
import type { Step } from './steps.ts';

/** What a cook step is held to when it names nothing that would make food safe by itself. */
export const usualCooking = 'gb-70c-2min';

/** They speak of one organism in one meat; what they leave alive may still harm. */
const oneOrganism = new Set(['woah-avian-influenza', 'us-trichinella-heating']);

function isCooking(id: string): boolean {
  const kind = findRule(id)?.kind;
  return (kind === 'lethality' || kind === 'hold') && !oneOrganism.has(id);
}

export function rulesOfStep(step: Step): readonly string[] {
  if (step.kind === 'chill') return step.rules;
  if (step.kind !== 'cook') return [];
  return step.rules.some(isCooking) ? step.rules : [...step.rules, usualCooking];
}

/** A single reading that is to stand for a cooked core is at least this hot: the lowest published temperature of the usual rule [°C]. */
export const leastCore = 60;

/** Does a batch of this step show how hot the core was: a log, or a critical reading with a lower limit that means something? */
export const measuresCore = (step: Step): boolean =>
  step.asks.some(
    (ask) =>
      ask.kind === 'core log' ||
      (ask.kind === 'temperature' && ask.critical === true && (ask.low ?? 0) >= leastCore),
  );
