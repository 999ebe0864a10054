/** What an answer says about the rule by which a composed layer's conductivity was put together, and how far off it may be. */
import type { MixtureRule } from '../properties/mixture-conductivity.ts';
import { ruleOf } from './material.ts';
import type { Basis, Layer } from './types.ts';

interface Words {
  readonly by: string;
  readonly source: string;
  readonly confidence: Basis['confidence'];
  /** Conducts better than meat was measured to: its times are too short. */
  readonly quick: boolean;
}

const words: Readonly<Record<MixtureRule, Words>> = {
  levy: {
    by: 'Levy’s rule: for meat, offal and fat within 10 % of what was measured (Pham and Willix 1989)',
    source: 'levy-1981',
    confidence: 'memory',
    quick: false,
  },
  parallel: {
    by: 'the parallel rule, as asked: the upper bound, 6 % above chicken as measured',
    source: 'ashrae-refrigeration-properties',
    confidence: 'secondary',
    quick: true,
  },
  perpendicular: {
    by: 'the perpendicular rule, as asked: the lower bound, which is slow to heat and to cool',
    source: 'ashrae-refrigeration-properties',
    confidence: 'secondary',
    quick: false,
  },
  'maxwell-eucken': {
    by: 'Maxwell and Eucken’s rule, as asked: 3 % above chicken as measured',
    source: 'eucken-1940',
    confidence: 'secondary',
    quick: true,
  },
  kopelman: {
    by: 'Kopelman’s rule, as asked: 4 % above chicken as measured',
    source: 'kopelman-1966',
    confidence: 'memory',
    quick: true,
  },
};

const composed = (layers: readonly Layer[]) => layers.filter((l) => 'composition' in l.material);

/**
 * By which rule each composed layer conducts, with its source and its error [-].
 * @param layers of the body
 * Checked by tests for the rule that is used by itself and for one that is asked for. Source: levy-1981
 */
export function conductivityBasis(layers: readonly Layer[]): Basis[] {
  const rules = new Map<MixtureRule, string[]>();
  for (const layer of composed(layers))
    rules.set(ruleOf(layer), [...(rules.get(ruleOf(layer)) ?? []), layer.name]);
  return [...rules].map(([rule, names]) => ({
    what: `conductivity of ${names.join(', ')} by ${words[rule].by}`,
    source: words[rule].source,
    confidence: words[rule].confidence,
  }));
}

/**
 * What takes from an answer its standing: a layer that is made to conduct better than meat was measured to [-].
 * @param layers of the body
 * Checked by a test of the verdict. Source: pham-willix-1989
 */
export function conductivityDoubts(layers: readonly Layer[]): { what: string; source: string }[] {
  return composed(layers)
    .filter((l) => words[ruleOf(l)].quick)
    .map((l) => ({
      what: `${l.name} conducts by ${words[ruleOf(l)].by}: it heats and cools too quickly on paper, good for a comparison only`,
      source: 'pham-willix-1989',
    }));
}
