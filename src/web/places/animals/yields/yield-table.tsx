import type { YieldPart, YieldsAnswer } from '../../../../contract/yields.ts';
import { plainNumber } from '../../../../core/units.ts';
import { yieldIntervalsScene } from '../../../../documents/pictures/yield-intervals.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { confidenceWord } from '../../../parts/basis.tsx';
import { Figure } from '../../../parts/figure.tsx';
import { money } from '../../../parts/money.ts';
import { ScrollAcross } from '../../../parts/scroll-across.tsx';
import { useWidth } from '../../../pictures/use-width.ts';

const percent = (x: number) => `${plainNumber(x, x < 10 ? 2 : 1)} %`;

/** A published figure may stand on the same scale only where it is of the same whole. */
const sameWhole = (p: YieldPart): boolean =>
  p.published !== null && /^(dressed|chilled) weight$/.test(p.published.of);

export function YieldTable({ answer }: { readonly answer: YieldsAnswer }) {
  const [ref, width] = useWidth<HTMLElement>();
  const rows = [...answer.parts].filter((p) => p.becomes !== 'step').sort((a, b) => b.meanPct - a.meanPct);
  return (
    <section className="stack" ref={ref}>
      <h2>What each part gives</h2>
      {width === 0 ? null : (
        <Figure
          scene={yieldIntervalsScene(
            rows.map((p) => ({ ...p, publishedPct: sameWhole(p) ? (p.published?.pct ?? null) : null })),
            { width },
          )}
          caption="Dot: the mean. Heavy line: where the mean lies, nineteen times of twenty. Thin line: where the next animal falls. Diamond: the published figure of the same whole."
          table="none"
        />
      )}
      <ScrollAcross label="Table: what each part gives">
        <table className="yields">
          <caption>In per cent of what went on the table</caption>
          <thead>
            <tr>
              <th scope="col">Part</th>
              <th scope="col" className="number">
                Mean
              </th>
              <th scope="col" className="number">
                Mean lies between
              </th>
              <th scope="col" className="number">
                Next animal
              </th>
              <th scope="col" className="number">
                Animals
              </th>
              <th scope="col">Until ± {plainNumber(answer.precisionPct, 1)} %</th>
              <th scope="col">Published</th>
              <th scope="col" className="number">
                Cost a kg
              </th>
            </tr>
          </thead>
          <tbody>
            {answer.parts.map((p) => (
              <Row key={p.part} part={p} />
            ))}
          </tbody>
        </table>
      </ScrollAcross>
      <PublishedFigures answer={answer} />
    </section>
  );
}

/** Whose figures stand beside ours: of which animals, by whom, how sure. */
function PublishedFigures({ answer }: { readonly answer: YieldsAnswer }) {
  const beside = answer.parts.flatMap((p) =>
    p.published === null ? [] : [{ part: p.part, ...p.published }],
  );
  if (beside.length === 0) return null;
  return (
    <details className="fold">
      <summary>Where the published figures come from</summary>
      <ul className="fold-list">
        {beside.map((p) => (
          <li key={p.part}>
            {p.part}: {percent(p.pct)} of {p.of}, {p.animals}
            {p.n === null ? '' : `, ${p.n} animals`}.{' '}
            <span className="quiet">
              {p.citation} ({confidenceWord(p.confidence)})
            </span>
          </li>
        ))}
      </ul>
    </details>
  );
}

function Row({ part: p }: { readonly part: YieldPart }) {
  const kitchen = useKitchen();
  const range = (low: number | null, high: number | null) =>
    low === null || high === null ? (
      <span className="quiet">not known yet</span>
    ) : (
      `${percent(low)} to ${percent(high)}`
    );
  const { published } = p;
  return (
    <tr>
      <th scope="row">
        {p.part}
        {p.from === null || p.pctOfFrom === null ? null : (
          <span className="quiet small">
            {' '}
            {plainNumber(p.pctOfFrom, 0)} % of the {p.from}
          </span>
        )}
      </th>
      <td className="number">{percent(p.meanPct)}</td>
      <td className="number">{range(p.low95, p.high95)}</td>
      <td className="number">{range(p.nextLow95, p.nextHigh95)}</td>
      <td className="number">{p.animals}</td>
      <td>
        {p.moreAnimals === null
          ? 'not known yet: weigh some one by one'
          : p.moreAnimals === 0
            ? 'known'
            : `weigh ${p.moreAnimals} more`}
      </td>
      <td>
        {published === null ? (
          <span className="quiet">none</span>
        ) : (
          <>
            {percent(published.pct)} of {published.of}
            {published.countedAs > 0 ? (
              <span className="quiet small"> counted: middle animal {percent(p.centrePct)}</span>
            ) : null}
            {published.fits === false ? <span className="small"> ◆ outside of what yours give</span> : null}
          </>
        )}
      </td>
      <td className="number">
        {p.costPerKg === null ? '' : money(Math.round(p.costPerKg), kitchen.currency)}
      </td>
    </tr>
  );
}
