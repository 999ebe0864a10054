/** How a line of a mix is meant: by weight, of the meat or for a piece; what it counts as; what cooking down leaves of it. */
import { AlcoholTreatment, type MixLine } from '../../../../contract/steps.ts';
import { Choice } from '../../../parts/choice.tsx';
import { NumberField } from '../../../parts/number-field.tsx';

export interface LineMeantProps {
  readonly line: MixLine;
  readonly readOnly: boolean;
  /** Of the lines that count as meat [g]; 0 where none does. */
  readonly meatG: number;
  /** Pieces that the mix as written makes; null where no fill step says. */
  readonly pieces: number | null;
  readonly onChange: (line: MixLine, about: string) => void;
}

type Amount = 'weight' | 'pct of the meat' | 'per piece';
type Counts = 'plain' | 'meat' | 'carried';

/** The weight that follows from how a line is meant; as it stands where that cannot be told. */
export function weightMeant(line: MixLine, meatG: number, pieces: number | null): MixLine {
  const { amount } = line;
  if (amount === undefined) return line;
  const g =
    amount.by === 'per piece'
      ? pieces === null
        ? line.g
        : amount.g * pieces
      : meatG > 0
        ? (amount.pct / 100) * meatG
        : line.g;
  return { ...line, g: Number(g.toFixed(3)) };
}

/** Weight of the lines that count as meat [g]. */
export const meatOf = (lines: readonly MixLine[]): number =>
  lines.reduce((sum, l) => sum + (l.meat === true ? l.g : 0), 0);

export const without = (line: MixLine, ...keys: (keyof MixLine)[]): MixLine =>
  Object.fromEntries(Object.entries(line).filter(([k]) => !keys.includes(k as keyof MixLine))) as MixLine;

export function LineMeant({ line, readOnly, meatG, pieces, onChange }: LineMeantProps) {
  const by: Amount = line.amount?.by ?? 'weight';
  const counts: Counts = line.carried === true ? 'carried' : line.meat === true ? 'meat' : 'plain';
  const put = (next: MixLine, about: string) => onChange(weightMeant(next, meatG, pieces), about);
  return (
    <div className="fields">
      <Choice
        label="Written by"
        value={by}
        readOnly={readOnly}
        options={[
          { value: 'weight', label: 'weight' },
          { value: 'pct of the meat', label: 'per cent of the meat' },
          { value: 'per piece', label: 'weight for each piece' },
        ]}
        onChange={(v) =>
          put(
            v === 'weight'
              ? without(line, 'amount')
              : v === 'per piece'
                ? { ...line, amount: { by: v, g: pieces === null || pieces === 0 ? 0 : line.g / pieces } }
                : { ...line, amount: { by: v, pct: meatG > 0 ? (100 * line.g) / meatG : 0 } },
            'amount by',
          )
        }
        hint={
          by === 'pct of the meat' && meatG === 0
            ? 'No line counts as meat yet: say which does.'
            : by === 'per piece' && pieces === null
              ? 'No fill step says how many pieces the mix makes.'
              : undefined
        }
      />
      {line.amount === undefined ? null : line.amount.by === 'per piece' ? (
        <NumberField
          label="For each piece"
          unit="g"
          value={line.amount.g}
          low={0}
          high={100_000}
          readOnly={readOnly}
          onChange={(g) => g !== null && put({ ...line, amount: { by: 'per piece', g } }, 'amount')}
        />
      ) : (
        <NumberField
          label="Of the meat"
          unit="%"
          value={line.amount.pct}
          low={0}
          high={1_000}
          readOnly={readOnly}
          onChange={(pct) =>
            pct !== null && put({ ...line, amount: { by: 'pct of the meat', pct } }, 'amount')
          }
        />
      )}
      <Choice
        label="Counts as"
        value={counts}
        readOnly={readOnly}
        options={[
          { value: 'plain', label: 'an ingredient' },
          { value: 'meat', label: 'the meat' },
          { value: 'carried', label: 'what comes from the steps before' },
        ]}
        onChange={(v) => {
          const bare = without(line, 'meat', 'carried');
          onChange(
            v === 'meat' ? { ...bare, meat: true } : v === 'carried' ? { ...bare, carried: true } : bare,
            'counts as',
          );
        }}
        hint={counts === 'carried' ? 'Weighed in again, not bought again.' : undefined}
      />
      <Choice
        label="In the dish’s name, or what it is bought for"
        value={line.declared === true ? 'yes' : 'no'}
        readOnly={readOnly}
        options={[
          { value: 'no', label: 'no' },
          { value: 'yes', label: 'yes: its quantity is declared' },
        ]}
        onChange={(v) =>
          onChange(v === 'yes' ? { ...line, declared: true } : without(line, 'declared'), 'declared')
        }
      />
      <NumberField
        label="Cooked down first, to"
        unit="%"
        value={line.reduced?.toPct ?? null}
        low={0.1}
        high={100}
        optional
        readOnly={readOnly}
        onChange={(toPct) =>
          onChange(
            toPct === null ? without(line, 'reduced') : { ...line, reduced: { ...line.reduced, toPct } },
            'reduced',
          )
        }
        hint="Of its weight; empty where it goes in as it is."
      />
      {line.reduced === undefined ? null : (
        <Choice
          label="What that did to its alcohol"
          value={line.reduced.alcohol ?? 'not said'}
          readOnly={readOnly}
          options={[
            { value: 'not said', label: 'it has none, or nobody has said' },
            ...AlcoholTreatment.options.map((t) => ({ value: t as string, label: t })),
          ]}
          onChange={(v) => {
            const toPct = line.reduced?.toPct ?? 100;
            onChange(
              {
                ...line,
                reduced: v === 'not said' ? { toPct } : { toPct, alcohol: v as AlcoholTreatment },
              },
              'alcohol',
            );
          }}
        />
      )}
    </div>
  );
}
