/** What a batch must record so that a rule can be held: one entry with the rule’s own limit. Pure. */
import type { Ask } from '../../../../contract/steps.ts';
import type { Rule } from '../../../../core/properties/rule.ts';
import { cite } from '../../../../core/sources.ts';

const label = 120;
const basisMost = 300;

function basisOf(rule: Rule): string {
  const text = `${rule.title} (${rule.place}). ${cite(rule.source)}`;
  return text.length > basisMost ? `${text.slice(0, basisMost - 1)}…` : text;
}

/** A single reading shows a temperature; a time at it takes a log. */
export function askFor(rule: Rule, id: string): Ask {
  const common = { id, critical: true, basis: basisOf(rule) };
  const named = (text: string) => text.slice(0, label);
  if (rule.kind === 'keep')
    return rule.side === 'at most'
      ? { ...common, kind: 'temperature', label: named('Warmest, kept cold'), high: rule.C }
      : {
          ...common,
          kind: 'temperature',
          label: named('Coldest, kept hot'),
          // “Above 63” is not met by 63 itself.
          low: rule.side === 'above' ? rule.C + 0.1 : rule.C,
        };
  const first = rule.kind === 'hold' ? rule.rows[0] : undefined;
  if (
    rule.kind === 'hold' &&
    rule.rows.length === 1 &&
    first !== undefined &&
    first.s === 0 &&
    rule.within === undefined
  )
    return {
      ...common,
      kind: 'temperature',
      label: named('Core, reheated'),
      low: Math.ceil(first.C * 10) / 10,
    };
  return { ...common, kind: 'core log', label: named(`Core: ${rule.title}`) };
}

/** The entries without those that a rule brought, and with those of a new one. */
export function asksWith(asks: readonly Ask[], rule: Rule, id: string): Ask[] {
  const basis = basisOf(rule);
  return asks.some((ask) => ask.basis === basis) ? [...asks] : [...asks, askFor(rule, id)];
}

export function asksWithout(asks: readonly Ask[], rule: Rule): Ask[] {
  const basis = basisOf(rule);
  return asks.filter((ask) => ask.basis !== basis);
}
