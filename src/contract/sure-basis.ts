/** What an answer of `sure` rests on, in words. */
import type { Basis } from '../core/sources.ts';
import { cookingRules } from './cooking-rules.ts';
import { isComposed } from './sure-conductivity.ts';
import type { Study, Variable } from './sure-input.ts';

const assumed = (what: string): Basis => ({ what, source: 'own-assumption', confidence: 'assumption' });

/** What the answer of `sure` rests on; `rough` where the times are not smooth in what varies. */
export function basisOf(study: Study, rough: boolean): Basis[] {
  const { variables, rules } = study;
  const shared = variables.filter((v) => v.shared).map((v) => v.input);
  const own = variables.filter((v) => !v.shared).map((v) => v.input);
  const basis: Basis[] = [
    {
      what: 'time: the coldest point has what the target asks at the moment the stage ends; nothing that comes after lifting out is counted',
      source: 'bigelow-1921',
      confidence: 'secondary',
    },
    ...variables.map((v) => spreadBasis(study, v)),
    assumed('the spreads are independent of one another'),
  ];
  if (shared.length > 0) basis.push(assumed(`the same for all pieces of a batch: ${shared.join(', ')}`));
  if (own.length > 0) basis.push(assumed(`drawn afresh for every piece: ${own.join(', ')}`));
  if (variables.some((v) => /composition/.test(v.input)))
    basis.push(
      assumed('fractions of a mixture that are not drawn make room for those that are, in proportion'),
    );
  const { stages, body } = study.nominal;
  if (body.layers.some(isComposed) && !variables.some((v) => v.input === 'conductivityFactor'))
    basis.push(assumed('conductivities are taken to be as their compositions say, with no spread'));
  const at = stages[study.stage];
  if (study.usualConductivity && at?.hFrom !== undefined && at.hFrom.hWm2K === at.hWm2K)
    basis.push(
      assumed(
        'the surface coefficient was fitted to a log with the conductivity as composed, and made up for some of its error: drawn each by itself, the two stray further here than they do',
      ),
    );
  if (variables.some((v) => v.input === 'probeErrorC'))
    basis.push(
      assumed('the computed core is as much too warm as the probe that it was fitted to reads high'),
    );
  basis.push({
    what: 'pieces spread evenly over what varies by Sobol’s sequence, scrambled; a polynomial fitted to the times they need; worst pieces drawn from it; the fine engine asked again at the worst',
    source: 'sudret-2008',
    confidence: 'computed',
  });
  basis.push({
    what: 'the spread of lethality is that of the coarse engine; whether pieces pass is told by the times they need',
    source: 'own-computation',
    confidence: 'computed',
  });
  if (rough)
    basis.push(
      assumed(
        'the times are not smooth in what varies: the answer is not below what independent pieces would need',
      ),
    );
  if (rules.length === 0)
    basis.push({
      what: 'no rule of the book was asked for: the target alone decides, counted at every temperature; a rule of 70 °C for 2 min counts only from 60 °C',
      source: 'fsa-cooking-safely',
      confidence: 'secondary',
    });
  for (const rule of cookingRules(rules))
    basis.push({
      what: `rule that must hold too: ${rule.title}`,
      source: rule.source,
      confidence: rule.confidence,
    });
  basis.push(
    assumed(
      'what was not given a spread does not vary; a fault (a valve shut, a piece forgotten) is in no spread',
    ),
  );
  return basis;
}

function spreadBasis(study: Study, v: Variable): Basis {
  const far =
    v.kind === 'normal'
      ? `mean ${v.middle}, standard deviation ${v.reach}, cut at four of them`
      : `anywhere from ${tidy(v.middle - v.reach)} to ${tidy(v.middle + v.reach)}`;
  if (v.input === 'conductivityFactor' && study.usualConductivity)
    return {
      what: `${v.input}, as none was given: ${far}: so far were conductivities by Levy’s rule from those measured on lamb, offal and fat, −40 to 30 °C; hotter, where it was not measured, it is taken to be no worse`,
      source: 'pham-willix-1989',
      confidence: 'secondary',
    };
  const where = v.input === 'conductivityFactor' ? ', on every layer that conducts by its composition' : '';
  return { what: `${v.input}: ${far}${where}`, source: 'user-input', confidence: 'assumption' };
}

const tidy = (x: number) => Number(x.toPrecision(9));
