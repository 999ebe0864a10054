/** What a fit found: each value with its interval in words, what it left over as a picture, what to know before it is used. */
import { useMemo } from 'react';
import type { FitAnswer, FittedValue } from '../../../../contract/fit.ts';
import { residualsScene } from '../../../../documents/pictures/residuals.ts';
import { useUnits } from '../../../kitchen.tsx';
import { Basis } from '../../../parts/basis.tsx';
import { Verdict } from '../../../parts/verdict.tsx';
import { SceneView } from '../../../pictures/SceneView.tsx';
import { useWidth } from '../../../pictures/use-width.ts';

/** The number that matters, out of the sentence that says no more than is known. */
function shown(says: string): { readonly before: string; readonly number: string } {
  const [, before = '', number = '?'] = /: (at least |at most )?([\d.]+(?:e[+-]?\d+)?)/.exec(says) ?? [];
  const raised = (n: string) => Array.from(n, (d) => '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(d)]).join('');
  return { before, number: number.replace(/e-(\d+)$/, (_, n: string) => `·10⁻${raised(n)}`) };
}

export function FitFound({ answer }: { readonly answer: FitAnswer }) {
  const units = useUnits();
  const [box, width] = useWidth<HTMLDivElement>();
  const scene = useMemo(
    () =>
      width < 80
        ? null
        : residualsScene(
            {
              min: answer.residualsMin,
              K: answer.residuals,
              sd: answer.noiseC,
              stageEndsMin: answer.stageEndsMin,
            },
            { width: Math.min(width, 900), units },
          ),
    [answer, width, units],
  );
  const rmse = units === 'US' ? `${(answer.rmseC * 1.8).toFixed(2)} °F` : `${answer.rmseC.toFixed(2)} °C`;
  return (
    <div className="stack">
      <dl className="fit-values">
        {Object.entries(answer.fitted).map(([name, value]) => (
          <FitValue key={name} value={value} />
        ))}
      </dl>
      {answer.warnings.length === 0 ? null : (
        <Verdict state="not yet" word="Know this first">
          {answer.warnings.map((warning) => (
            <p key={warning}>{warning}</p>
          ))}
        </Verdict>
      )}
      <div ref={box}>{scene === null ? null : <SceneView scene={scene} table="unseen" />}</div>
      <p className="small quiet">
        The fitted model runs {rmse} beside the log on the whole ({answer.readings.used} readings
        {answer.effectiveReadings < 0.8 * answer.readings.used
          ? `, worth ${Math.max(1, Math.round(answer.effectiveReadings))} independent ones`
          : ''}
        ; {answer.runs} runs of the engine).
      </p>
      {answer.cautions.map((caution) => (
        <p key={caution} className="small">
          {caution}
        </p>
      ))}
      <Basis title="What this fit rests on" items={answer.basis} />
    </div>
  );
}

function FitValue({ value }: { readonly value: FittedValue }) {
  const { before, number } = shown(value.says);
  const [name = '', rest = ''] = value.says.split(/: (.*)/s);
  return (
    <div className="fit-value">
      <dt>{name}</dt>
      <dd>
        {before === '' ? null : <span className="fit-before">{before} </span>}
        <span className="big-number">{number}</span> <span>{value.unit}</span>
        <p className={value.told ? 'quiet' : 'fit-untold'}>
          {value.told ? '' : 'Not told by this log alone: '}
          {rest}
        </p>
      </dd>
    </div>
  );
}
