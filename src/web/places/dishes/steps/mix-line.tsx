import { useEffect, useRef, useState } from 'react';
import type { Composition } from '../../../../contract/quantities.ts';
import type { Ingredient } from '../../../../contract/records.ts';
import type { MixLine } from '../../../../contract/steps.ts';
import { plainNumber } from '../../../../core/units.ts';
import { Button } from '../../../parts/button.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { renamed } from './known-line.ts';
import { ownFiguresGone } from './line-choices.ts';
import { LineMeant, without } from './line-meant.tsx';
import { LineOfChoice } from './line-of.tsx';

export interface MixLineProps {
  readonly dishId: string;
  /** What it is by the pantry; null where it points at nothing. */
  readonly is: string | null;
  readonly index: number;
  readonly line: MixLine;
  readonly total: number;
  readonly known: readonly Ingredient[];
  readonly currency: string;
  readonly readOnly: boolean;
  readonly fresh: boolean;
  /** Of the lines that count as meat [g]. */
  readonly meatG: number;
  /** Pieces that the mix as written makes. */
  readonly pieces: number | null;
  readonly onChange: (line: MixLine, about: string) => void;
  readonly onRemove: () => void;
  readonly onEnter: () => void;
  readonly onPaste: (text: string) => void;
}

const parts = ['water', 'protein', 'fat', 'carbohydrate', 'fibre', 'ash'] as const;
const short = (c: Composition) =>
  `${plainNumber(c.water * 100, 0)} % water, ${plainNumber(c.protein * 100, 0)} % protein, ${plainNumber(c.fat * 100, 0)} % fat`;

/** Whether a paste is a list rather than a word: more than one line, a tab, or an amount behind a comma. */
export const isList = (text: string): boolean => /\t|\n\s*\S|,\s*\d/.test(text.trim());

export function MixLineRow(props: MixLineProps) {
  const { index, line, total, known, readOnly, fresh } = props;
  const [open, setOpen] = useState(false);
  const name = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (fresh) name.current?.select();
  }, [fresh]);
  return (
    <li className="mix-line">
      <input
        ref={name}
        className="control"
        aria-label={`Ingredient ${index + 1}`}
        value={line.ingredient}
        list="known-ingredients"
        maxLength={200}
        readOnly={readOnly}
        onChange={(e) => props.onChange(renamed(line, e.target.value, known), 'name')}
        onPaste={(e) => {
          const text = e.clipboardData.getData('text');
          if (readOnly || !isList(text)) return;
          e.preventDefault();
          props.onPaste(text);
        }}
        onKeyDown={(e) => {
          if (e.key === 'Enter' && !readOnly) props.onEnter();
        }}
      />
      <NumberField
        className="mix-weight"
        label={<span className="unseen">Weight of {line.ingredient}</span>}
        unit="g"
        value={line.g}
        low={0}
        high={1_000_000}
        readOnly={readOnly}
        // What is weighed by hand is no longer a share of the meat or a weight for each piece.
        onChange={(g) => g !== null && props.onChange({ ...without(line, 'amount'), g }, 'weight')}
        onEnter={props.onEnter}
      />
      <span className="number quiet">{total > 0 ? `${plainNumber((line.g / total) * 100, 1)} %` : ''}</span>
      <span className="mix-made">
        <button type="button" className="mix-known" aria-expanded={open} onClick={() => setOpen(!open)}>
          {props.is === null ? '' : `${props.is}${line.composition === undefined ? '' : ': '}`}
          {line.composition !== undefined
            ? short(line.composition)
            : props.is === null
              ? 'not known: say'
              : ''}
        </button>
        {readOnly ? null : (
          <Button kind="quiet" onPress={props.onRemove} label={`Remove ${line.ingredient}`}>
            Remove
          </Button>
        )}
      </span>
      {index === 0 ? (
        <datalist id="known-ingredients">
          {known.map((i) => (
            <option key={i.id} value={i.name} />
          ))}
        </datalist>
      ) : null}
      {open ? <LineDetails {...props} /> : null}
    </li>
  );
}

const nothing: Composition = { water: 0, protein: 0, fat: 0, carbohydrate: 0, fibre: 0, ash: 0 };

function LineDetails({ line, dishId, known, currency, readOnly, meatG, pieces, onChange }: MixLineProps) {
  const sum = line.composition === undefined ? 0 : parts.reduce((s, c) => s + line.composition![c], 0);
  const source = known.find((i) => i.id === line.ingredientId)?.source;
  return (
    <div className="mix-details">
      {readOnly ? null : (
        <LineOfChoice line={line} dishId={dishId} onChange={(next) => onChange(next, `of ${next.of?.id}`)} />
      )}
      {line.of === undefined ? null : (
        <p className="quiet small">
          Composition, price and allergens are the pantry’s as they stand today. What is said here, measured
          or paid for this dish, goes before them; allergens are added to them.
          {readOnly ||
          (line.composition === undefined &&
            line.salt === undefined &&
            line.pricePerKg === undefined) ? null : (
            <Button kind="quiet" onPress={() => onChange(ownFiguresGone(line), 'own figures gone')}>
              Only the pantry’s figures
            </Button>
          )}
        </p>
      )}
      <LineMeant line={line} readOnly={readOnly} meatG={meatG} pieces={pieces} onChange={onChange} />
      <div className="fields">
        {parts.map((c) => (
          <NumberField
            key={c}
            label={c}
            unit="%"
            value={line.composition === undefined ? null : line.composition[c] * 100}
            low={0}
            high={100}
            readOnly={readOnly}
            onChange={(v) =>
              v !== null &&
              onChange({ ...line, composition: { ...(line.composition ?? nothing), [c]: v / 100 } }, c)
            }
          />
        ))}
        <NumberField
          label="salt in it"
          unit="%"
          value={line.salt === undefined ? null : line.salt * 100}
          low={0}
          high={100}
          readOnly={readOnly}
          onChange={(v) => v !== null && onChange({ ...line, salt: v / 100 }, 'salt')}
          hint="Counted within the ash."
        />
        <NumberField
          label="price"
          unit={`${currency} a kg`}
          value={line.pricePerKg === undefined ? null : line.pricePerKg / 100}
          low={0}
          high={10_000_000}
          readOnly={readOnly}
          onChange={(v) => v !== null && onChange({ ...line, pricePerKg: Math.round(v * 100) }, 'price')}
        />
      </div>
      {line.composition !== undefined && Math.abs(sum - 1) > 0.005 ? (
        <p className="field-error">
          These sum to {plainNumber(sum * 100, 1)} %; they should sum to 100 ± 0.5 %.
        </p>
      ) : null}
      <p className="quiet small">
        {line.of !== undefined && line.composition === undefined
          ? ''
          : source === undefined || source === ''
            ? 'Nobody has said where this composition is from.'
            : source}
      </p>
    </div>
  );
}
