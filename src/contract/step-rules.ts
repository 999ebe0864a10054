/** Which rules the core is held to at a step: those it names, and for cooking always one that speaks of cooking. */
import type { Step } from '../contract/steps.ts';
import { findRule } from '../core/properties/rules.ts';

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
