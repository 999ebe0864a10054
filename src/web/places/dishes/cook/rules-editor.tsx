/** The rules of the book that the step is held to where the kitchen is, what the prediction says of each, and how others compare. */
import { memo } from 'react';
import type { RuleVerdict } from '../../../../contract/judge.ts';
import type { RuleForFood } from '../../../../core/method/rules-for.ts';
import { timeAsked } from '../../../../core/microbes/asked-time.ts';
import type { Rule } from '../../../../core/properties/rule.ts';
import { findRule } from '../../../../core/properties/rules.ts';
import { cite } from '../../../../core/sources.ts';
import type { LengthUnits } from '../../../../documents/pictures/piece-layout.ts';
import { useUnits } from '../../../kitchen.tsx';
import { confidenceWord } from '../../../parts/basis.tsx';
import { Button } from '../../../parts/button.tsx';
import { Verdict } from '../../../parts/verdict.tsx';
import { temperatureWords, timeWords } from '../../../pictures/words.ts';
import '../steps/rules.css';

export interface RulesEditorProps {
  /** Those the step names, and those that are usual here for such food. */
  readonly named: readonly string[];
  readonly held: readonly string[];
  readonly around: readonly RuleForFood[];
  /** Held to here whether the step names them or not. */
  readonly fixed: ReadonlySet<string>;
  readonly kind: 'cook' | 'chill';
  /** Empty while there is no prediction of the current input. */
  readonly predicted: readonly RuleVerdict[];
  /** The highest temperature of the coldest point, where it is predicted [°C]. */
  readonly peakC: number | null;
  readonly onChange: (rules: string[]) => void;
  readonly readOnly: boolean;
}

const typeWords = { statutory: 'law', guidance: 'guidance', model: 'a model, not a rule' } as const;

/** Of several that are held to: one that fails, or else the one that is met last. */
function decidingOf(predicted: readonly RuleVerdict[]): string | null {
  if (predicted.length < 2) return null;
  const open = predicted.find((v) => v.passes === false) ?? predicted.find((v) => v.passes === null);
  if (open !== undefined) return open.rule;
  const last = predicted.reduce((a, b) => ((b.decidingMin ?? 0) > (a.decidingMin ?? 0) ? b : a));
  return last.rule;
}

/** What a rule asks at the hottest the coldest point gets: rules of two places side by side. */
function asks(rule: Rule, peakC: number | null, units: LengthUnits): string | null {
  if (peakC === null || (rule.kind !== 'lethality' && rule.kind !== 'hold')) return null;
  const C = Math.floor(peakC * 10 + 1e-9) / 10;
  const s = timeAsked(rule, C);
  if (!Number.isFinite(s))
    return `At ${temperatureWords(C, units)}, the hottest the coldest point gets, no time is enough for it.`;
  const time = s < 90 ? `${Math.ceil(s)} s` : timeWords(s);
  return `At ${temperatureWords(C, units)}, the hottest the coldest point gets, ${s === 0 ? 'it is met at once' : `it asks for ${time}`}.`;
}

export const RulesEditor = memo(function RulesEditor(props: RulesEditorProps) {
  const { named, held, around, fixed, kind, predicted, peakC, onChange, readOnly } = props;
  const units = useUnits();
  const deciding = decidingOf(predicted);
  const rest = around.filter((r) => !held.includes(r.rule.id));
  const usual = rest.filter((r) => r.standing === 'held to');
  const instead = rest.filter((r) => r.standing === 'may stand instead' || r.standing === 'covered');
  const beside = rest.filter((r) => r.standing === 'one hazard');
  const abroad = rest.filter((r) => r.standing === 'another place' && r.rule.scope.role === 'usual');
  const others = rest.filter((r) => ![...usual, ...instead, ...beside, ...abroad].includes(r));
  const add = (entry: RuleForFood) =>
    readOnly || named.length >= 12 ? null : (
      <Button
        onPress={() => onChange([...named, entry.rule.id])}
        label={`Hold it also to ${entry.rule.title}`}
      >
        Hold it to this
      </Button>
    );
  const group = (words: string, list: readonly RuleForFood[], open = false) =>
    list.length === 0 ? null : (
      <details className="fold" open={open}>
        <summary>{words}</summary>
        <ul className="rules">
          {list.map((entry) => (
            <li key={entry.rule.id} className="rule">
              <Name rule={entry.rule} />
              <About entry={entry} asks={asks(entry.rule, peakC, units)} />
              {entry.standing === 'not for this food' || entry.standing === 'covered' ? null : add(entry)}
            </li>
          ))}
        </ul>
      </details>
    );
  return (
    <section className="stack held-to" aria-labelledby="rules-heading">
      <h3 id="rules-heading">Held to</h3>
      {held.length === 0 ? <p>No rule of the book yet.</p> : null}
      <ul className="rules">
        {held.map((id) => {
          const rule = findRule(id);
          const entry = around.find((r) => r.rule.id === id);
          return (
            <li key={id} className="rule">
              {rule === undefined ? (
                <p>
                  <strong>{id}</strong>{' '}
                  <span className="field-error">not in the rule book: it will never be judged as held</span>
                </p>
              ) : (
                <Name rule={rule} decides={id === deciding} />
              )}
              <Said said={predicted.find((p) => p.rule === id)} />
              {entry === undefined ? (
                rule === undefined ? null : (
                  <p className="field-error">It does not speak of this step.</p>
                )
              ) : (
                <About entry={entry} asks={held.length > 1 && rule ? asks(rule, peakC, units) : null} held />
              )}
              {fixed.has(id) ? (
                <p className="small quiet">
                  Usual where you are for such food: it stays, unless a rule that may stand for it is named.
                </p>
              ) : readOnly ? null : (
                <Button
                  onPress={() => onChange(named.filter((r) => r !== id))}
                  label={`Take out the rule ${rule?.title ?? id}`}
                >
                  Take out
                </Button>
              )}
            </li>
          );
        })}
      </ul>
      {group('Usual where you are', usual, true)}
      {group('What other places ask of such food', abroad, true)}
      {group(`May stand instead, or asks for less: ${instead.length}`, instead)}
      {group(`Of one hazard, beside the others: ${beside.length}`, beside)}
      {group(`Not for this food, or of other places, and why: ${others.length}`, others)}
      <p className="small quiet">
        {kind === 'cook' ? 'A rule of another place is held beside your own, never instead of it. ' : ''}
        Which of them binds your kitchen is for your local authority to say.
      </p>
    </section>
  );
});

function Name({ rule, decides = false }: { readonly rule: Rule; readonly decides?: boolean }) {
  return (
    <p>
      <strong>{rule.title}</strong>
      {decides ? <span className="rule-decides">decides</span> : null}{' '}
      <span className="quiet">
        {rule.place}, {typeWords[rule.type]}: {cite(rule.source)} ({confidenceWord(rule.confidence)})
      </span>
    </p>
  );
}

function About({
  entry,
  asks: asked,
  held = false,
}: {
  readonly entry: RuleForFood;
  readonly asks: string | null;
  readonly held?: boolean;
}) {
  const { rule, why, standing, applies } = entry;
  const wrong = held && standing === 'not for this food';
  const words = [
    held && why === '' ? '' : `For ${rule.appliesTo}.`,
    why === '' ? '' : wrong ? `It is not for this food: ${why}.` : `Here: ${why}.`,
    applies === null && held ? 'So it is taken to apply.' : '',
    standing === 'may stand instead' && rule.scope.needs !== undefined
      ? `Instead of the usual rule only with ${rule.scope.needs}.`
      : '',
    asked ?? '',
  ].filter((w) => w !== '');
  return words.length === 0 ? null : <p className={wrong ? 'field-error' : 'small'}>{words.join(' ')}</p>;
}

function Said({ said }: { readonly said: RuleVerdict | undefined }) {
  if (said === undefined) return null;
  return (
    <Verdict
      state={said.passes === true ? 'neutral' : said.passes === false ? 'does not hold' : 'unknown'}
      word={
        said.passes === true
          ? 'Would hold, as predicted'
          : said.passes === false
            ? 'Would not hold'
            : 'Cannot be told from this programme'
      }
    >
      {said.why}
    </Verdict>
  );
}
