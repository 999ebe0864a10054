import { useRef, useState } from 'react';
import type { Part } from '../../../contract/records.ts';
import { classOf } from '../../../contract/tree-edit.ts';
import { call, queryClient } from '../../api.ts';
import { useKitchen } from '../../kitchen.tsx';
import { Button } from '../../parts/button.tsx';
import { Choice } from '../../parts/choice.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { NumberField, unsettledIn } from '../../parts/number-field.tsx';
import { say } from '../../parts/toast.tsx';

export const partUses: readonly { value: Part['use']; label: string }[] = [
  { value: 'menu', label: 'On the menu' },
  { value: 'kitchen', label: 'In stock or staff food' },
  { value: 'thrown away', label: 'Thrown away' },
];

type Limits = NonNullable<Part['class']> | '';
const named: Readonly<Record<NonNullable<Part['class']>, string>> = {
  poultry: 'poultry',
  'red meat': 'red meat',
  offal: 'offal',
  blood: 'blood',
  'large game': 'large game',
  'small game': 'small game',
  rabbit: 'rabbit',
  fish: 'fish',
  'fat and bone': 'fat and bone',
};
const classes: readonly { value: Limits; label: string }[] = [
  { value: '', label: 'Nobody has said' },
  ...(Object.keys(named) as NonNullable<Part['class']>[]).map((value) => ({ value, label: named[value] })),
];

/** What a kitchen says of one part: what becomes of it, how long it keeps, what it is worth. */
export function PartDialog({ part, onClose }: { readonly part: Part; readonly onClose: () => void }) {
  const kitchen = useKitchen();
  const [draft, setDraft] = useState(part);
  const put = (change: Partial<Part>) => setDraft({ ...draft, ...change });
  const { id: _, species: _s, name: _n, ...before } = part;
  const form = useRef<HTMLDivElement>(null);
  const keep = async () => {
    const open = unsettledIn(form.current);
    if (open !== null) throw new Error(`${open}: what was typed is not settled yet. See beside the field.`);
    const { id, species: _species, name: _name, ...now } = draft;
    const changed = Object.fromEntries(
      Object.entries(now).filter(([key, value]) => value !== before[key as keyof typeof before]),
    );
    if (Object.keys(changed).length > 0) {
      await call('changePart', { params: { kitchenId: kitchen.id, partId: id }, body: changed });
      await Promise.all(
        ['parts', 'carcassBars', 'yields', 'breakdownCosts'].map((name) =>
          queryClient.invalidateQueries({ queryKey: [name] }),
        ),
      );
      say(`${part.name} of ${part.species}: kept.`);
    }
    onClose();
  };
  const guess = classOf(part.species, part.name);
  return (
    <Dialog open onClose={onClose} title={`${part.name}, ${part.species}`} wide>
      <div className="fields" ref={form}>
        <Choice
          label="What becomes of it"
          value={draft.use}
          options={partUses}
          onChange={(use) => put({ use })}
        />
        <Choice
          label="Temperature limits it comes under"
          value={draft.class ?? ''}
          options={classes}
          onChange={(c) => put({ class: c === '' ? null : c })}
          {...(draft.class === null && guess !== null ? { hint: `By its name: ${guess}` } : {})}
        />
        <NumberField
          label="Keeps, once cut"
          unit="days"
          optional
          value={draft.lifeDays}
          low={0.1}
          high={3_650}
          onChange={(lifeDays) => put({ lifeDays })}
          hint="The kitchen’s own word; a shorter limit of the animal stands above it."
        />
        <NumberField
          label={`Worth a kilogram (${kitchen.currency})`}
          unit="a kg"
          optional
          value={draft.valuePerKg === null ? null : draft.valuePerKg / 100}
          low={0}
          high={10_000_000}
          onChange={(v) => put({ valuePerKg: v === null ? null : Math.round(v * 100) })}
        />
        <NumberField
          label="Own share of the cost"
          unit="shares"
          optional
          value={draft.costShare}
          low={0}
          high={1_000_000}
          onChange={(costShare) => put({ costShare })}
          hint="Any number: only how they compare counts."
        />
        <NumberField
          label="Share of the weight, where nobody has weighed"
          unit="%"
          optional
          value={draft.sharePct}
          low={0}
          high={100}
          onChange={(sharePct) => put({ sharePct })}
        />
        <NumberField
          label="Trimmed off"
          unit="%"
          optional
          value={draft.trimPct}
          low={0}
          high={99}
          onChange={(trimPct) => put({ trimPct })}
        />
        <NumberField
          label="Then lost in cooking"
          unit="%"
          optional
          value={draft.cookingLossPct}
          low={0}
          high={99}
          onChange={(cookingLossPct) => put({ cookingLossPct })}
        />
        <NumberField
          label="Work on a kilogram"
          unit="min"
          optional
          value={draft.labourMinPerKg}
          low={0}
          high={1_000}
          onChange={(labourMinPerKg) => put({ labourMinPerKg })}
        />
      </div>
      <div className="row">
        <Button kind="strong" onPress={keep} busy="Keeping…">
          Keep it
        </Button>
        <Button kind="quiet" onPress={onClose}>
          Leave it
        </Button>
      </div>
    </Dialog>
  );
}
