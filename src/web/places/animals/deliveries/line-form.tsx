import { ProductClass } from '../../../../contract/delivery.ts';
import type { Problem } from '../../../../contract/problem.ts';
import type { Part } from '../../../../contract/records.ts';
import { arrivalLimit, frozenAtMostC } from '../../../../core/properties/arrival-limits.ts';
import { formatQuantity } from '../../../../core/units.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { confidenceWord } from '../../../parts/basis.tsx';
import { Button } from '../../../parts/button.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { Field, TextField, Tick } from '../../../parts/field.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { Verdict } from '../../../parts/verdict.tsx';
import { arrivalDoubt, type DraftLine, saidAt, tagsOf } from './delivery-draft.ts';

export interface LineFormProps {
  readonly line: DraftLine;
  readonly index: number;
  readonly parts: readonly Part[];
  readonly problems: readonly Problem[];
  /** Warmer than the limit, as it was found. */
  readonly warm: string | undefined;
  readonly twice: ReadonlySet<string>;
  readonly onChange: (part: Partial<DraftLine>) => void;
  readonly onRemove: () => void;
}

/** One thing that came: weighed, counted, measured, coded. What is rarely needed is folded. */
export function LineForm(props: LineFormProps) {
  const { line, index, onChange, problems, twice } = props;
  const kitchen = useKitchen();
  const at = (key: string) => saidAt(problems, `lines[${index}].${key}`);
  const tags = tagsOf(line.tags);
  const again = tags.find((t) => twice.has(t));
  const folded = ['tags', 'tradeLot', 'slaughteredOn', 'useBy', 'cost', 'class', 'partId', 'species'];
  return (
    <li className="came-line">
      <h3>
        {index + 1}. {line.what.trim() === '' ? 'What came' : line.what}
      </h3>
      <div className="fields came-fields">
        <TextField
          label="What came"
          value={line.what}
          onChange={(what) => onChange({ what })}
          maxLength={120}
          error={at('what')}
        />
        <NumberField
          label="Weight"
          unit="g"
          value={line.grams}
          low={0.001}
          high={10_000_000}
          onChange={(grams) => onChange({ grams })}
          hint="As weighed: 12.4kg, 3*4200."
          error={at('grams')}
        />
        <NumberField
          label={line.kind === 'whole' ? 'How many animals' : 'How many'}
          unit="pieces"
          whole
          optional
          value={line.count}
          low={1}
          high={100_000}
          onChange={(count) => onChange({ count })}
          error={at('count')}
        />
        <NumberField
          label="Temperature"
          unit="°C"
          optional
          value={line.arrivalC}
          low={-60}
          high={60}
          onChange={(arrivalC) => onChange({ arrivalC, arrivalCMeant: false })}
          hint="Between two pieces, or in the core."
          error={arrivalDoubt(line) === null ? at('arrivalC') : undefined}
        />
        <TextField
          label="Code"
          value={line.code}
          onChange={(code) => onChange({ code })}
          maxLength={60}
          hint="Write it on every crate."
          error={at('code')}
        />
      </div>
      <Doubted line={line} onChange={onChange} />
      <Limit line={line} warm={props.warm} />
      <div className="row">
        <Tick label="Frozen" value={line.frozen} onChange={(frozen) => onChange({ frozen })} />
        <Tick
          label="Refuse this one alone"
          value={line.refused}
          onChange={(refused) => onChange({ refused })}
        />
      </div>
      {line.refused ? (
        <p>
          <strong>Not taken in:</strong> no lot is made of it; it stays on the record of this delivery.
        </p>
      ) : null}
      <details className="fold" open={folded.some((key) => at(key) !== undefined) || undefined}>
        <summary>
          Tags, their lot, days, price
          {tags.length === 0 ? '' : `: ${tags.length} ${tags.length === 1 ? 'tag' : 'tags'}`}
        </summary>
        <div className="fields came-fields">
          <TextField
            className="whole"
            label="Tags of the animals"
            value={line.tags}
            onChange={(text) => onChange({ tags: text })}
            lines={3}
            hint={`Paste them, one a line or with commas between.${tags.length === 0 ? '' : ` ${tags.length} read.`}${line.kind === 'whole' && line.count !== null && tags.length > 0 && tags.length !== line.count ? ` ${line.count} animals were counted.` : ''}`}
            error={again === undefined ? at('tags') : `${again} stands twice: one tag, one animal.`}
          />
          <TextField
            label="The supplier’s own lot"
            value={line.tradeLot}
            onChange={(tradeLot) => onChange({ tradeLot })}
            maxLength={80}
            error={at('tradeLot')}
          />
          <Day
            label="Use by"
            value={line.useBy}
            onChange={(useBy) => onChange({ useBy })}
            error={at('useBy')}
          />
          <Day
            label="Slaughtered on"
            value={line.slaughteredOn}
            onChange={(slaughteredOn) => onChange({ slaughteredOn })}
            error={at('slaughteredOn')}
          />
          <NumberField
            label="Price of the line"
            unit={kitchen.currency}
            optional
            value={line.cost === null ? null : line.cost / 100}
            low={0}
            high={10_000_000}
            onChange={(cost) => onChange({ cost: cost === null ? null : Math.round(cost * 100) })}
            hint="Without it no part of it has a cost."
            error={at('cost')}
          />
          <NumberField
            label="Not older than"
            unit="months"
            optional
            value={line.ageMonthsAtMost}
            low={0}
            high={600}
            onChange={(ageMonthsAtMost) => onChange({ ageMonthsAtMost })}
            error={at('ageMonthsAtMost')}
          />
          <Choice
            label="It is"
            value={line.kind}
            options={[
              { value: 'whole', label: 'whole animals' },
              { value: 'part', label: 'a part' },
              { value: 'other', label: 'something else' },
            ]}
            onChange={(kind) => onChange({ kind })}
          />
          <TextField
            label="Animal"
            value={line.species ?? ''}
            onChange={(species) => onChange({ species: species === '' ? null : species })}
            maxLength={40}
            error={at('species')}
          />
          <Choice
            label="Limit of temperature as for"
            value={line.class ?? ''}
            options={[
              { value: '', label: 'not known' },
              ...ProductClass.options.map((value) => ({ value, label: value })),
            ]}
            onChange={(kind) => onChange({ class: kind === '' ? null : (kind as ProductClass) })}
            error={at('class')}
          />
          <Choice
            label="Part of the kitchen’s list"
            value={line.partId ?? ''}
            options={[
              { value: '', label: 'none' },
              ...props.parts.map((p) => ({ value: p.id, label: `${p.species}, ${p.name}` })),
            ]}
            onChange={(partId) => onChange({ partId: partId === '' ? null : partId })}
            error={at('partId')}
          />
          <TextField
            className="whole"
            label="Note"
            value={line.note}
            onChange={(note) => onChange({ note })}
            maxLength={500}
          />
        </div>
        <Button kind="quiet" onPress={props.onRemove}>
          Take this line out
        </Button>
      </details>
    </li>
  );
}

/** A figure that nothing arrives at has to be meant twice. */
function Doubted({
  line,
  onChange,
}: {
  readonly line: DraftLine;
  readonly onChange: (part: Partial<DraftLine>) => void;
}) {
  const { units } = useKitchen();
  const doubt = arrivalDoubt(line);
  if (doubt === null || line.arrivalC === null) return null;
  const shown = formatQuantity(line.arrivalC, 'temperature', units);
  const plain = `${Number(line.arrivalC.toFixed(1))}`;
  const f = doubt.ifFahrenheit;
  return (
    <div className="number-doubt" role="alert">
      <p>
        {shown}? Nothing chilled or frozen arrives like that.
        {f === null || units === 'US'
          ? ''
          : ` ${plain} °F would be ${formatQuantity(f, 'temperature', units)}.`}
      </p>
      <div className="row">
        {f === null || units === 'US' ? null : (
          <Button onPress={() => onChange({ arrivalC: f, arrivalCMeant: false })}>
            It was °F: {formatQuantity(f, 'temperature', units)}
          </Button>
        )}
        <Button onPress={() => onChange({ arrivalCMeant: true })}>Measured again: it is {shown}</Button>
      </div>
    </div>
  );
}

/** The legal limit for what it is, here, and whether the figure keeps to it. */
function Limit({ line, warm }: { readonly line: DraftLine; readonly warm: string | undefined }) {
  const { place, units } = useKitchen();
  const limit = line.class === null ? undefined : arrivalLimit(line.class, place);
  if (!line.frozen && limit === undefined)
    return (
      <Verdict state="unknown" word="No limit is known for it">
        <p>Say under “Limit of temperature as for” what it is, or go by what your authority says.</p>
      </Verdict>
    );
  const most = line.frozen ? frozenAtMostC : (limit?.atMostC ?? 0);
  const words = `${formatQuantity(most, 'temperature', units)} or colder for ${line.frozen ? 'frozen food' : line.class}`;
  const source = line.frozen
    ? 'Reg (EC) 853/2004 Annex III Section V Chapter III (from memory, not read again)'
    : `${limit?.citation ?? ''} (${confidenceWord(limit?.confidence ?? '')})`;
  return (
    <Verdict
      state={line.arrivalC === null ? 'unknown' : warm === undefined ? 'holds' : 'does not hold'}
      word={
        line.arrivalC === null
          ? `Not measured: ${words}`
          : warm === undefined
            ? `Within ${words}`
            : `Too warm: ${words}`
      }
    >
      <p className="quiet small">
        {source}. The limit binds the plant and the carrier; you check it at the door.
      </p>
    </Verdict>
  );
}

function Day({
  label,
  value,
  onChange,
  error,
}: {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly error: string | undefined;
}) {
  return (
    <Field label={label} error={error}>
      {(tie) => (
        <input
          {...tie}
          className="control"
          type="date"
          value={value}
          onChange={(e) => onChange(e.target.value)}
        />
      )}
    </Field>
  );
}
