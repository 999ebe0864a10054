import type { YieldsAnswer } from '../../../../contract/yields.ts';
import { plainNumber } from '../../../../core/units.ts';
import { shareDotsScene } from '../../../../documents/pictures/share-dots.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { Figure } from '../../../parts/figure.tsx';
import { moment } from '../../../parts/moment.ts';
import { useWidth } from '../../../pictures/use-width.ts';

const signed = (x: number) => `${x > 0 ? '+' : ''}${plainNumber(x, 2)}`;

/** Who gets better at which part, and which supplier or cutter gives more of it than the others. */
export function Learning(props: {
  readonly answer: YieldsAnswer;
  readonly part: string | null;
  readonly onPart: (part: string) => void;
}) {
  const { answer, part } = props;
  const kitchen = useKitchen();
  const [ref, width] = useWidth<HTMLElement>();
  const shown = answer.learning.filter((l) => l.verdict !== 'not shown');
  const apart = answer.groups.filter((g) => g.againstRest === 'more' || g.againstRest === 'less');
  const options = answer.parts
    .filter((p) => p.becomes !== 'step')
    .map((p) => ({ value: p.part, label: p.part }));
  const dots = answer.weighings;
  const most = Math.max(0, ...dots.map((d) => d.count));
  return (
    <section className="stack" ref={ref}>
      <h2>Hands and suppliers</h2>
      {shown.length === 0 && apart.length === 0 ? (
        <p>
          Nobody’s hand and nobody’s animals stand out so far. It takes five weighings by one cutter to see
          learning, and two on either side to tell suppliers apart.
        </p>
      ) : (
        <ul>
          {shown.map((l) => (
            <li key={`${l.cutter} ${l.part}`}>
              {l.cutter}: {l.part} {l.verdict}, {signed(l.perDoublingPct)} % of the whole for each doubling of
              the animals cut (between {signed(l.low95)} and {signed(l.high95)}, {l.animals} animals).
            </li>
          ))}
          {apart.map((g) => (
            <li key={`${g.by} ${g.name} ${g.part}`}>
              {g.name}: {g.againstRest} {g.part} than the other {g.by}s, {plainNumber(g.meanPct, 1)} % on
              average ({g.animals} animals). Of twenty such comparisons one comes by chance.
            </li>
          ))}
        </ul>
      )}
      <div className="measure">
        <Choice label="Show the weighings of" value={part ?? ''} options={options} onChange={props.onPart} />
      </div>
      {part === null || dots.length === 0 || width === 0 ? null : (
        <Figure
          scene={shareDotsScene(
            dots.map((d) => ({
              x: d.count,
              pct: d.pct,
              series: d.cutter,
              what: `${moment(d.at, kitchen.zone)}, animal ${plainNumber(d.count, 1)}`,
            })),
            {
              width,
              title: `${part}: share of the whole against the animals that each cutter had cut`,
              ends: ['first animal', `animal ${plainNumber(most, 0)}`],
              what: 'Weighing',
            },
          )}
          caption={`${part}, in per cent of the whole, by how many animals its cutter had cut.`}
        />
      )}
    </section>
  );
}
