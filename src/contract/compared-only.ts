/** What promises minutes takes no layer that conducts better than meat was measured to: such a rule is there for comparisons. */
import { conductivityDoubts } from '../core/heat/conductivity-basis.ts';
import type { BodyInput } from './body.ts';
import { toBody } from './cook.ts';
import { InputProblems } from './problem.ts';

/** Refuses a body that is good for a comparison only; `fq cook` answers for one, without a verdict. */
export function refuseComparedOnly(body: BodyInput): void {
  const problems = toBody(body).layers.flatMap((layer, i) =>
    conductivityDoubts([layer]).length === 0
      ? []
      : [
          {
            path: `body.layers[${i}].conductivityBy`,
            found: JSON.stringify(layer.conductivityBy),
            allowed:
              'levy or perpendicular; the others are quicker than measured and for comparing with cook',
          },
        ],
  );
  if (problems.length > 0) throw new InputProblems(problems);
}
