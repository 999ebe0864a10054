import { useMemo, useState } from 'react';
import { Link } from 'wouter';
import type { Breakdown, TreeNode } from '../../../../contract/breakdown.ts';
import { depthOf } from '../../../../contract/tree-edit.ts';
import { formatQuantity, plainNumber } from '../../../../core/units.ts';
import { balanceBarScene } from '../../../../documents/pictures/balance-bar.ts';
import { useActions } from '../../../actions.ts';
import { at } from '../../../addresses.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Button } from '../../../parts/button.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { Tick } from '../../../parts/field.tsx';
import { moment } from '../../../parts/moment.ts';
import { Problem } from '../../../parts/problem.tsx';
import { say } from '../../../parts/toast.tsx';
import { SceneView } from '../../../pictures/SceneView.tsx';
import { useWidth } from '../../../pictures/use-width.ts';
import { WaitingBar } from '../../line/waiting-bar.tsx';
import { BreakdownHead } from './breakdown-head.tsx';
import { DoneBreakdown } from './done-breakdown.tsx';
import { useHabit } from './kept-on-device.ts';
import { asWeighing, type Line, type Live, liveOf, useBreakdown, useScale } from './use-breakdown.ts';
import { type Typed, WeighField } from './weigh-field.tsx';
import { beside, type Item, itemsOf, nextOpen, type Way } from './weigh-order.ts';
import './breakdown.css';
import { ScrollAcross } from '../../../parts/scroll-across.tsx';

/** A breakdown: at the scale while it is open, as it was finished afterwards. */
export function BreakdownScreen({ breakdownId }: { readonly breakdownId: string }) {
  const { query, breakdown, lines, standing, live } = useBreakdown(breakdownId);
  if (breakdown === null || live === null)
    return query.error === null ? (
      <p className="quiet">Reading the breakdown…</p>
    ) : (
      <Problem error={query.error} retry={() => query.refetch()} />
    );
  return breakdown.status === 'open' ? (
    <AtTheScale breakdown={breakdown} lines={lines} standing={standing} live={live} />
  ) : (
    <DoneBreakdown breakdown={breakdown} />
  );
}

interface ScaleProps {
  readonly breakdown: Breakdown;
  readonly lines: readonly Line[];
  readonly standing: readonly Line[];
  readonly live: Live;
}

const ways: readonly { value: Way; label: string }[] = [
  { value: 'together', label: 'All animals of a part together' },
  { value: 'part by part', label: 'A part of every animal, then the next part' },
  { value: 'animal by animal', label: 'One animal from end to end, then the next' },
];

/** What an item is called: "Breast", "Breast, goose 3". */
export const titleOf = (item: Item, species: string): string =>
  `${item.node.parent === null ? `The whole ${item.node.name}` : item.node.name.replace(/^./, (c) => c.toUpperCase())}${
    item.animal === null ? '' : `, ${species} ${item.animal}`
  }`;

function AtTheScale({ breakdown, lines, standing, live }: ScaleProps) {
  const kitchen = useKitchen();
  const [habit, keepHabit] = useHabit(breakdown.id);
  const items = useMemo(
    () => itemsOf(breakdown.nodes, breakdown.animals, habit.way, habit),
    [breakdown.nodes, breakdown.animals, habit],
  );
  const weighed = useMemo(() => new Set(standing.map((l) => `${l.node}#${l.animal ?? ''}`)), [standing]);
  const [chosen, setChosen] = useState<string | null>(null);
  const current = items.find((i) => i.key === chosen) ?? items.find((i) => !weighed.has(i.key)) ?? items[0];
  /** The line that the next weight takes the place of. */
  const [again, setAgain] = useState<Line | null>(null);
  const [turn, setTurn] = useState(0);
  const scale = useScale(breakdown.id);
  const mass = (grams: number) => formatQuantity(grams, 'mass', kitchen.units);

  const go = (key: string | null) => {
    setAgain(null);
    setChosen(key);
    setTurn((n) => n + 1);
  };
  const last = [...standing].sort((a, b) => Date.parse(a.at) - Date.parse(b.at)).at(-1);
  const takeBack = async (line = last) => {
    if (line === undefined) {
      say('Nothing has been weighed yet.');
      return;
    }
    await scale(asWeighing({ ...line, corrects: line.id, takenBack: true }));
    const node = breakdown.nodes.find((n) => n.id === line.node);
    say(
      `${node?.name ?? line.node}, ${mass(line.grossGrams - line.tareGrams)}: taken back. The line stays on record.`,
    );
    go(`${line.node}#${line.animal ?? ''}`);
  };
  useActions([
    {
      id: 'breakdown.takeBack',
      label: 'Take the last weighing back',
      keys: ['mod+z'],
      run: () => takeBack(),
    },
  ]);

  const weigh = async (item: Item, typed: Typed): Promise<string | null> => {
    const weighing = asWeighing({
      node: item.node.id,
      animal: item.animal,
      ...typed,
      ...(again === null ? {} : { corrects: again.id }),
    });
    const { wrong } = liveOf(breakdown, [...standing.filter((l) => l.id !== again?.id), weighing]);
    if (wrong !== null) return `Not written: ${wrong} Check the tare, or which part is on the scale.`;
    await scale(weighing);
    go(nextOpen(items, item.key, new Set([...weighed, item.key])) ?? beside(items, item.key, 1));
    return null;
  };

  const open = items.filter((i) => !weighed.has(i.key)).length;
  const here = current === undefined ? [] : linesOf(lines, standing, current);
  return (
    <div className="cutting stack-wide">
      <BreakdownHead breakdown={breakdown} />
      <LiveBalance live={live} />
      {open === 0 ? (
        <p className="lead">Everything is weighed. Finish below, or weigh a part again.</p>
      ) : null}
      {current === undefined ? null : (
        <>
          <WeighField
            key="scale"
            item={current}
            turn={turn}
            left={`${mass(Math.max(0, live.unaccountedGrams))} of ${mass(live.inGrams)} not accounted for`}
            title={`${titleOf(current, breakdown.species)}${again !== null ? ', again' : weighed.has(current.key) ? ', another tray' : ''}`}
            pieces={
              current.node.piecesPerAnimal === null
                ? null
                : current.node.piecesPerAnimal * (current.animal === null ? breakdown.animals : 1)
            }
            onWeigh={(typed) => weigh(current, typed)}
            onSkip={() => go(nextOpen(items, current.key, weighed) ?? beside(items, current.key, 1))}
            onMove={(by) => go(beside(items, current.key, by))}
            onTakeBack={() => void takeBack()}
          />
          <LinesHere
            lines={here}
            again={again}
            onAgain={(line) => {
              setAgain(line);
              setTurn((n) => n + 1);
            }}
            onTakeBack={(line) => takeBack(line)}
          />
        </>
      )}
      <WaitingBar />
      <Places breakdown={breakdown} live={live} items={items} weighed={weighed} current={current} onGo={go} />
      <details className="fold">
        <summary>How it is weighed</summary>
        <div className="fields">
          {breakdown.animals === 1 ? null : (
            <Choice
              label="Order"
              value={habit.way}
              options={ways}
              onChange={(way) => {
                go(null);
                keepHabit({ way });
              }}
            />
          )}
          <Tick
            label="Weigh the whole animal first"
            value={habit.whole}
            onChange={(whole) => keepHabit({ whole })}
          />
          <Tick
            label="Weigh what is cut further, too"
            value={habit.cuts}
            onChange={(cuts) => keepHabit({ cuts })}
          />
        </div>
        <p className="quiet small">
          Enter writes and goes on; with nothing typed it leaves the part for later. T holds what is typed as
          the weight of the container, and again to change it. P counts pieces. Arrows go up and down. Ctrl+Z
          takes the last back. 0 says that there is none.
        </p>
      </details>
      <div className="row">
        <Link
          className="button button-strong button-line"
          href={at.finishBreakdown(kitchen.id, breakdown.id)}
        >
          {open === 0 ? 'Finish' : `Finish, ${open} not weighed`}
        </Link>
      </div>
    </div>
  );
}

function LiveBalance({ live }: { readonly live: Live }) {
  const kitchen = useKitchen();
  const [ref, width] = useWidth<HTMLDivElement>();
  const gone = live.unaccountedGrams;
  return (
    <section ref={ref} className="balance" aria-label="Balance">
      {width === 0 ? null : (
        <SceneView
          scene={balanceBarScene(live.inGrams, live.pieces, { width, units: kitchen.units })}
          table="unseen"
        />
      )}
      <p aria-live="polite">
        {formatQuantity(live.inGrams, 'mass', kitchen.units)} in;{' '}
        <strong>
          {gone < 0
            ? `the parts are ${formatQuantity(-gone, 'mass', kitchen.units)} heavier, within the scales`
            : `${formatQuantity(gone, 'mass', kitchen.units)} not accounted for`}
          {live.inGrams > 0 && gone >= 0 ? ` (${plainNumber((100 * gone) / live.inGrams, 1)} %)` : ''}
        </strong>
      </p>
      {live.wrong === null ? null : (
        <Problem error={live.wrong} todo="Weigh one of them again, or take one back." />
      )}
    </section>
  );
}

const linesOf = (lines: readonly Line[], standing: readonly Line[], item: Item) =>
  lines
    .filter((l) => l.node === item.node.id && l.animal === item.animal && !l.takenBack)
    .map((line) => ({ line, stands: standing.includes(line) }));

function LinesHere(props: {
  readonly lines: readonly { line: Line; stands: boolean }[];
  readonly again: Line | null;
  readonly onAgain: (line: Line | null) => void;
  readonly onTakeBack: (line: Line) => Promise<void>;
}) {
  const kitchen = useKitchen();
  if (props.lines.length === 0) return null;
  return (
    <ol className="scale-lines" aria-label="Weighed here already">
      {props.lines.map(({ line, stands }) => {
        const text = `${formatQuantity(line.grossGrams - line.tareGrams, 'mass', kitchen.units)}${line.pieces === null ? '' : `, ${line.pieces} pieces`}`;
        return (
          <li key={line.id}>
            <span className="number">{stands ? text : <s>{text}</s>}</span>
            <span className="quiet small">
              {line.by}, {moment(line.at, kitchen.zone)}
              {stands || line.sending === 'refused' ? '' : '; no longer counts'}
            </span>
            {line.sending === 'sent' ? null : (
              <strong className="not-sent">{line.sending === 'waiting' ? 'not sent yet' : 'refused'}</strong>
            )}
            {!stands ? null : props.again?.id === line.id ? (
              <Button kind="quiet" onPress={() => props.onAgain(null)}>
                Add to it instead
              </Button>
            ) : (
              <>
                <Button kind="quiet" onPress={() => props.onAgain(line)}>
                  Weigh again
                </Button>
                <Button kind="quiet" onPress={() => props.onTakeBack(line)}>
                  Take back
                </Button>
              </>
            )}
          </li>
        );
      })}
    </ol>
  );
}

const becomesWords: Readonly<Record<TreeNode['becomes'], string>> = {
  step: 'cut further',
  part: 'a lot of its own',
  bone: 'bone',
  drip: 'drip',
  bin: 'thrown away',
  'by-product': 'by-product, not food',
  sold: 'sold',
};

function Places(props: {
  readonly breakdown: Breakdown;
  readonly live: Live;
  readonly items: readonly Item[];
  readonly weighed: ReadonlySet<string>;
  readonly current: Item | undefined;
  readonly onGo: (key: string) => void;
}) {
  const { breakdown, live, items, weighed, current } = props;
  const kitchen = useKitchen();
  return (
    <ScrollAcross label="Table: places of the tree" className="places-all">
      <table className="places">
        <caption>Everything it is cut into</caption>
        <thead>
          <tr>
            <th scope="col">Part</th>
            <th scope="col" className="number">
              Weight
            </th>
            <th scope="col" className="number">
              Of the whole
            </th>
            <th scope="col" className="places-becomes">
              What becomes of it
            </th>
          </tr>
        </thead>
        <tbody>
          {breakdown.nodes.map((n) => {
            const own = items.filter((i) => i.node.id === n.id);
            const done = own.filter((i) => weighed.has(i.key)).length;
            const target = own.find((i) => !weighed.has(i.key)) ?? own[0];
            const grams = live.grams.get(n.id) ?? null;
            return (
              <tr key={n.id} aria-current={current?.node.id === n.id ? 'true' : undefined}>
                <th scope="row" style={{ paddingInlineStart: `${depthOf(breakdown.nodes, n.id) * 1.1}rem` }}>
                  {target === undefined ? (
                    n.name
                  ) : (
                    <button type="button" className="place-name" onClick={() => props.onGo(target.key)}>
                      {n.name}
                    </button>
                  )}
                </th>
                <td className="number">
                  {grams === null ? (
                    <span className="quiet">not weighed</span>
                  ) : (
                    formatQuantity(grams, 'mass', kitchen.units)
                  )}
                  {own.length > 1 ? (
                    <span className="quiet small">
                      {' '}
                      {done} of {own.length}
                    </span>
                  ) : null}
                </td>
                <td className="number">
                  {grams === null || live.inGrams === 0
                    ? ''
                    : `${plainNumber((100 * grams) / live.inGrams, 1)} %`}
                </td>
                <td className="quiet places-becomes">{becomesWords[n.becomes]}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </ScrollAcross>
  );
}
