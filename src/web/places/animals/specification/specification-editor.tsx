import type { ReactNode } from 'react';
import type { SpecificationContent } from '../../../../contract/specification.ts';
import { weekdays } from '../../../../contract/specification-lines.ts';
import { Choice } from '../../../parts/choice.tsx';
import { Field, TextField, Tick } from '../../../parts/field.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { DimensionLines } from './dimension-lines.tsx';
import { TextLines } from './text-lines.tsx';
import type { SpecificationDraft } from './use-specification-draft.ts';

type Content = SpecificationContent;
const skins = [
  'scalded',
  'dry plucked',
  'wax plucked',
  'singed',
  'shaved',
  'scraped',
  'skinned',
  'left on, not treated',
] as const satisfies readonly Content['skin'][number][];
const onOff = ['not asked', 'on', 'off', 'off, sent with it'] as const satisfies readonly Content['head'][];
const drawn = [
  'not asked',
  'drawn',
  'undrawn',
  'drawn, offal sent with it',
] as const satisfies readonly Content['drawn'][];
const bloods = ['not asked', 'not wanted', 'kept for us'] as const satisfies readonly Content['blood'][];
const options = <V extends string>(values: readonly V[]) => values.map((value) => ({ value, label: value }));

const Group = ({ title, children }: { readonly title: string; readonly children: ReactNode }) => (
  <fieldset className="asked-group">
    <legend>{title}</legend>
    {children}
  </fieldset>
);

export interface SpecificationEditorProps {
  readonly draft: SpecificationDraft;
  readonly species: string;
}

/** Everything that can be asked, grouped as the job goes. What is left open is not asked and not checked. */
export function SpecificationEditor({ draft, species }: SpecificationEditorProps) {
  const c = draft.content;
  const set =
    <K extends keyof Content>(key: K) =>
    (value: Content[K]) =>
      draft.change({ [key]: value } as Pick<Content, K>, key);
  const text = (
    key: 'breedOrSystem' | 'ageClass' | 'stunning' | 'bleeding' | 'bloodHow' | 'packed',
    label: string,
    max: number,
    hint?: string,
  ) => <TextField label={label} value={c[key]} onChange={set(key)} maxLength={max} hint={hint} />;
  const toggle = <V,>(list: readonly V[], value: V, on: boolean) =>
    on ? [...list, value] : list.filter((v) => v !== value);
  return (
    <div className="asked">
      <Group title="The animal">
        <div className="fields">
          <TextField
            label="What"
            value={c.what}
            onChange={set('what')}
            maxLength={80}
            hint="“whole animal”, or the part by the trade’s name."
          />
          {text('ageClass', 'Age or class', 120, 'As the trade says it: hogget, spent hen, over 24 weeks.')}
          <NumberField
            label="Not older than"
            unit="months"
            optional
            value={c.ageMonthsAtMost}
            low={0.1}
            high={600}
            onChange={set('ageMonthsAtMost')}
            hint="Where the age decides what may be eaten."
          />
          {text('breedOrSystem', 'Breed, how it is kept', 120)}
          <NumberField
            label="Weight each, at least"
            unit="g"
            optional
            value={c.pieceGrams.low}
            low={0.1}
            high={10_000_000}
            error={crossed(c.pieceGrams.low, c.pieceGrams.high)}
            onChange={(low) => draft.change({ pieceGrams: { ...c.pieceGrams, low } }, 'low')}
          />
          <NumberField
            label="Weight each, at most"
            unit="g"
            optional
            value={c.pieceGrams.high}
            low={0.1}
            high={10_000_000}
            onChange={(high) => draft.change({ pieceGrams: { ...c.pieceGrams, high } }, 'high')}
          />
        </div>
      </Group>
      <Group title="Slaughter">
        <div className="fields asked-wide">
          {text('stunning', 'Stunning', 300, 'Where it must leave the part whole: no shot through the head.')}
          {text('bleeding', 'Bleeding', 300, 'Where the cut is made, and how it must not be made.')}
        </div>
      </Group>
      <Group title="Dressing">
        <fieldset>
          <legend className="field-label">Skin, in the order it is done</legend>
          <div className="row">
            {skins.map((s) => {
              const place = c.skin.indexOf(s);
              return (
                <Tick
                  key={s}
                  label={place < 0 ? s : `${place + 1}. ${s}`}
                  value={place >= 0}
                  onChange={(on) => draft.change({ skin: toggle(c.skin, s, on).slice(0, 6) })}
                />
              );
            })}
          </div>
        </fieldset>
        <div className="fields">
          <Choice label="Head" value={c.head} options={options(onOff)} onChange={set('head')} />
          <Choice label="Feet" value={c.feet} options={options(onOff)} onChange={set('feet')} />
          <Choice label="Drawn or not" value={c.drawn} options={options(drawn)} onChange={set('drawn')} />
        </div>
      </Group>
      <Group title="Where it is cut">
        <TextField
          label="In words"
          value={c.cut}
          onChange={set('cut')}
          lines={3}
          maxLength={600}
          hint="Which joint, which vertebra, what stays on, what is not slit."
        />
        <DimensionLines
          species={species}
          what={c.what}
          dimensions={c.dimensions}
          onChange={(dimensions) => draft.change({ dimensions }, 'dimensions')}
        />
      </Group>
      <Group title="Blood">
        <div className="fields">
          <Choice label="Blood" value={c.blood} options={options(bloods)} onChange={set('blood')} />
          {c.blood === 'kept for us' ? (
            <TextField
              className="whole"
              label="How it is collected and kept"
              value={c.bloodHow}
              onChange={set('bloodHow')}
              lines={2}
              maxLength={300}
            />
          ) : null}
        </div>
      </Group>
      <Group title="Cold">
        <div className="fields">
          <NumberField
            label="Chilled to"
            unit="°C"
            optional
            value={c.chilledToC}
            low={-40}
            high={15}
            onChange={set('chilledToC')}
            hint="Or colder, in the core."
          />
          <NumberField
            label="Within"
            unit="h"
            optional
            value={c.chilledWithinHours}
            low={0.1}
            high={240}
            onChange={set('chilledWithinHours')}
            hint="Of slaughter."
          />
          <NumberField
            label="Arrives at"
            unit="°C"
            optional
            value={c.arrivesAtMostC}
            low={-40}
            high={15}
            onChange={set('arrivesAtMostC')}
            hint="Or colder. Every delivery is measured against it."
          />
        </div>
      </Group>
      <Group title="Packed and labelled">
        {text('packed', 'Packed', 300, 'In what, how deep, dry or on ice, bird by bird or together.')}
        <TextLines
          label="On the label"
          values={c.labelled}
          onChange={(labelled) => draft.change({ labelled }, 'labelled')}
          maxLength={120}
          most={20}
          add="Add to the label"
          suggestions={['lot', 'day of slaughter', 'use-by date', 'health or identification mark']}
        />
        <TextLines
          label="Papers that come with it"
          values={c.documents}
          onChange={(documents) => draft.change({ documents }, 'documents')}
          maxLength={120}
          most={20}
          add="Add a paper"
          suggestions={['delivery note with the lot', 'animals’ tags']}
        />
      </Group>
      <Group title="When it comes">
        <fieldset>
          <legend className="field-label">Days</legend>
          <div className="row">
            {weekdays.map((day, i) => (
              <Tick
                key={day}
                label={day}
                value={c.days.includes(i)}
                onChange={(on) => draft.change({ days: toggle(c.days, i, on).sort((a, b) => a - b) })}
              />
            ))}
          </div>
        </fieldset>
        <div className="fields">
          <Clock label="From" value={c.from} onChange={set('from')} />
          <Clock label="Until" value={c.until} onChange={set('until')} />
        </div>
      </Group>
      <Group title="Refused if">
        <TextLines
          label="Never taken"
          values={c.refusedIf}
          onChange={(refusedIf) => draft.change({ refusedIf }, 'refusedIf')}
          maxLength={200}
          most={30}
          add="Add a reason to refuse"
        />
      </Group>
      <Group title="Note">
        <TextField
          label="Anything else they should know"
          value={c.note}
          onChange={set('note')}
          lines={3}
          maxLength={2_000}
        />
      </Group>
    </div>
  );
}

const crossed = (low: number | null, high: number | null) =>
  low !== null && high !== null && low > high ? 'More than “at most”: nothing could pass.' : undefined;

function Clock({
  label,
  value,
  onChange,
}: {
  readonly label: string;
  readonly value: string | null;
  readonly onChange: (value: string | null) => void;
}) {
  return (
    <Field label={label}>
      {(tie) => (
        <input
          {...tie}
          className="control"
          type="time"
          value={value ?? ''}
          onChange={(e) => onChange(e.target.value === '' ? null : e.target.value.slice(0, 5))}
        />
      )}
    </Field>
  );
}
