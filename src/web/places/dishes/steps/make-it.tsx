/** *Make it…*: the mix cheaper, leaner, less salty or better bound, beside what it is; what each limit costs; what clashes. */
import { useState } from 'react';
import { keepsOnSalt, taken } from '../../../../contract/make-it.ts';
import {
  bindRanges,
  type Held,
  type HeldName,
  heldAs,
  heldNames,
  type Made,
  type MakeGoal,
  makeGoals,
  usualNear,
} from '../../../../contract/make-it-question.ts';
import type { StepOf } from '../../../../contract/steps.ts';
import { plainNumber } from '../../../../core/units.ts';
import { useOperation } from '../../../api.ts';
import { Button } from '../../../parts/button.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { money } from '../../../parts/money.ts';
import { NumberField } from '../../../parts/number-field.tsx';
import { say } from '../../../parts/toast.tsx';
import { Verdict } from '../../../parts/verdict.tsx';
import { limitCostWords } from './make-it-words.ts';
import type { StepForm } from './step-form.ts';
import { useMakeIt } from './use-make-it.ts';
import './make-it.css';

const none: Held = { low: null, high: null };
type HeldAll = Readonly<Partial<Record<HeldName, Held>>>;

export function MakeIt(form: StepForm<StepOf<'mix'>>) {
  const { kitchen, method, step, set, readOnly } = form;
  const [open, setOpen] = useState(false);
  const pantry = useOperation('pantry', { params: { kitchenId: kitchen.id } });
  const [held, setHeld] = useState<HeldAll>({});
  const [movePct, setMove] = useState(50);
  const [meatPct, setMeat] = useState(90);
  const [answer, setAnswer] = useState<{ readonly key: string; readonly made: Made } | null>(null);
  const ask = useMakeIt();
  if (readOnly || step.lines.every((l) => l.g === 0)) return null;
  const key = JSON.stringify([step.lines, held, movePct, meatPct]);
  const make = async (goal: MakeGoal) => {
    if (pantry.data === undefined) throw new Error('The pantry is not here yet. Try again in a moment.');
    const { ingredients, parts, dishes } = pantry.data;
    const made = await ask({
      lines: step.lines,
      pantry: { ingredients, parts, dishes },
      goal,
      held,
      movePct,
      meatPct,
      saltIsKept: keepsOnSalt(method),
    });
    setAnswer({ key, made });
  };
  const use = (made: Extract<Made, { status: 'made' }>) => {
    set({ lines: taken(step.lines, made) }, `make it ${made.goal} ${Date.now()}`);
    setAnswer(null);
    say(`The mix is as proposed: ${made.goal}. Undo brings back what it was.`);
  };
  return (
    <section className="stack make-it" aria-labelledby="make-it-heading">
      <h3 id="make-it-heading">Make it…</h3>
      <p className="row">
        {makeGoals.map((goal) => (
          <Button
            key={goal}
            onPress={() => make(goal)}
            busy="Working it out"
            disabled={pantry.data === undefined}
          >
            {goal}
          </Button>
        ))}
        <Button kind="quiet" onPress={() => setOpen(!open)} expanded={open} controls="make-it-limits">
          {open ? 'Put the limits away' : 'Limits it has to hold'}
        </Button>
      </p>
      <div id="make-it-limits" className="stack" hidden={!open}>
        <Limits held={held} setHeld={setHeld} currency={kitchen.currency} />
        <div className="fields">
          <NumberField
            label="A line may move by, up or down"
            unit="%"
            value={movePct}
            low={0}
            high={100}
            onChange={(v) => v !== null && setMove(v)}
          />
          <NumberField
            label="Of the meat’s share, keep at least"
            unit="%"
            value={meatPct}
            low={0}
            high={100}
            hint="Of the lines that count as the meat."
            onChange={(v) => v !== null && setMeat(v)}
          />
        </div>
      </div>
      <p className="small quiet">
        The whole stays as heavy as it is. Curing salt is never changed on its own: it is fixed to the meat’s
        weight.{keepsOnSalt(method) ? ' The salt in the water never falls: the keeping rests on it.' : ''}
      </p>
      {answer === null ? null : (
        <div aria-live="polite" className="stack">
          {answer.key === key ? null : (
            <p className="quiet">This is of the mix and the limits as they were. Ask again.</p>
          )}
          <Answer made={answer.made} currency={kitchen.currency} use={answer.key === key ? use : null} />
          <Caution place={kitchen.place}>
            <p>
              A mix is reckoned as the sum of its parts; how it eats, binds and keeps is yours to try. Cook,
              keep and label figures follow the new mix: look at them again.
            </p>
          </Caution>
        </div>
      )}
    </section>
  );
}

const units: Record<HeldName, string> = {
  fat: '%',
  protein: '%',
  salt: '%',
  'water to protein': ': 1',
  cost: '',
};

function Limits({
  held,
  setHeld,
  currency,
}: {
  readonly held: HeldAll;
  readonly setHeld: (held: HeldAll) => void;
  readonly currency: string;
}) {
  const field = (name: HeldName, side: 'low' | 'high') => {
    const scale = name === 'cost' ? 100 : 1;
    const value = held[name]?.[side] ?? null;
    return (
      <NumberField
        label={`${name}, at ${side === 'low' ? 'least' : 'most'}`}
        unit={name === 'cost' ? `${currency} a kg` : units[name]}
        value={value === null ? null : value / scale}
        low={0}
        high={name === 'cost' ? 1_000_000 : 100}
        onChange={(v) =>
          setHeld({ ...held, [name]: { ...(held[name] ?? none), [side]: v === null ? null : v * scale } })
        }
      />
    );
  };
  return (
    <>
      <p className="small quiet">
        What is left empty stays close to what it is:{' '}
        {heldNames.flatMap((n) => (usualNear[n] === undefined ? [] : [nearWords(n)])).join(', ')}. Common
        practice, no source; what it is to be made is not held.
      </p>
      <div className="make-it-fields">
        {heldNames.map((name) => (
          <div key={name} className="make-it-pair">
            {field(name, 'low')}
            {field(name, 'high')}
          </div>
        ))}
      </div>
    </>
  );
}

function nearWords(name: HeldName): string {
  const { less, more } = usualNear[name] ?? {};
  const unit = name === 'water to protein' ? '' : ' points';
  return more === undefined ? `${name} no more than ${less}${unit} less` : `${name} ± ${more}${unit}`;
}

const heldWords = (h: Held & { name: HeldName }, value: (name: HeldName, v: number | null) => string) =>
  h.low !== null && h.high !== null
    ? `${h.name} ${value(h.name, h.low)} to ${value(h.name, h.high)}`
    : h.low !== null
      ? `${h.name} at least ${value(h.name, h.low)}`
      : `${h.name} at most ${value(h.name, h.high)}`;

const grams = (g: number) => `${plainNumber(g, g < 20 ? 2 : g < 100 ? 1 : 0)} g`;
const signed = (d: number) => (Math.abs(d) < 0.05 ? 'as it is' : `${d > 0 ? '+' : '−'}${grams(Math.abs(d))}`);

function Answer({
  made,
  currency,
  use,
}: {
  readonly made: Made;
  readonly currency: string;
  readonly use: ((made: Extract<Made, { status: 'made' }>) => void) | null;
}) {
  if (made.status === 'not known')
    return (
      <Verdict state="unknown" word="No answer">
        {made.why}
      </Verdict>
    );
  if (made.status === 'impossible')
    return (
      <Verdict state="does not hold" word="Not possible">
        <p>These cannot hold together; without any one of them the others can:</p>
        <ul>
          {made.clash.map((c) => (
            <li key={c.words}>
              {c.words}
              {c.becomes !== null
                ? `: it would work with ${c.becomes}, the others as they are.`
                : c.hard !== null
                  ? `: not for the taking, ${c.hard}.`
                  : '.'}
            </li>
          ))}
        </ul>
        {made.together.length === 0 ? null : <p>Or these give way together: {made.together.join('; ')}.</p>}
      </Verdict>
    );
  const value = (name: HeldName, v: number | null) =>
    v === null
      ? 'not known'
      : name === 'cost'
        ? `${money(v, currency)} a kg`
        : `${plainNumber(v, name === 'salt' ? 2 : name === 'water to protein' ? 2 : 1)} ${heldAs[name].unit}`;
  const same = made.lines.every((l) => Math.abs(l.newG - l.nowG) < 0.05);
  return (
    <div className="stack">
      {same ? <p>Within these limits it cannot be made {made.goal} than it is.</p> : null}
      <table className="make-it-table">
        <caption>{same ? 'As it is' : `Proposed: ${made.goal}, beside the mix as it is`}</caption>
        <thead>
          <tr>
            <th scope="col">Ingredient</th>
            <th scope="col" className="number">
              Now
            </th>
            <th scope="col" className="number">
              Proposed
            </th>
            <th scope="col" className="number">
              Change
            </th>
          </tr>
        </thead>
        <tbody>
          {made.lines.map((l, i) => (
            <tr key={i}>
              <th scope="row">
                {l.ingredient}
                {l.fixed === null ? null : <span className="quiet small"> {l.fixed}</span>}
              </th>
              <td className="number">{grams(l.nowG)}</td>
              <td className="number">{grams(l.newG)}</td>
              <td className="number">{signed(l.newG - l.nowG)}</td>
            </tr>
          ))}
        </tbody>
        <tbody>
          {made.figures.map((f) => (
            <tr key={f.name}>
              <th scope="row">{f.name}</th>
              <td className="number">{value(f.name, f.before)}</td>
              <td className="number">{value(f.name, f.after)}</td>
              <td />
            </tr>
          ))}
        </tbody>
      </table>
      {made.held.length === 0 ? null : (
        <p className="small quiet">Held: {made.held.map((h) => heldWords(h, value)).join('; ')}.</p>
      )}
      {made.costs.length === 0 ? null : (
        <>
          <p>What the limits cost, the dearest first:</p>
          <ul>
            {made.costs.map((c) => (
              <li key={`${c.name} ${c.side}`}>
                {limitCostWords(c, made.goal, (minor) => money(minor, currency))}
              </li>
            ))}
          </ul>
        </>
      )}
      {made.goal !== 'better bound' ? null : (
        <p className="small quiet">
          Held to be good, common practice, no source:{' '}
          {bindRanges
            .map((r) => {
              const per = r.shown === null ? 1 : heldAs[r.shown].per;
              return `${r.name} ${plainNumber((r.low ?? 0) * per, 1)} to ${plainNumber((r.high ?? 0) * per, 1)}`;
            })
            .join(', ')}
          .
        </p>
      )}
      {made.notes.map((n) => (
        <p key={n} className="small">
          {n}
        </p>
      ))}
      {made.proven ? null : <p>The time was over before it was shown that nothing better is possible.</p>}
      {same || use === null ? null : (
        <p>
          <Button kind="strong" onPress={() => use(made)}>
            Use this
          </Button>
        </p>
      )}
    </div>
  );
}
