import { useRef, useState } from 'react';
import { v7 as newId } from 'uuid';
import type { ShelfLotDetail } from '../../../../contract/shelf.ts';
import { freezingLimits } from '../../../../core/properties/freezing-limits.ts';
import { formatQuantity } from '../../../../core/units.ts';
import { call, queryClient } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Button } from '../../../parts/button.tsx';
import { Dialog } from '../../../parts/dialog.tsx';
import { Field, TextField } from '../../../parts/field.tsx';
import { NumberField, unsettledIn } from '../../../parts/number-field.tsx';
import { say } from '../../../parts/toast.tsx';
import { dayIn, dayText, plusDays, plusMonths } from './civil.ts';
import type { MoveWhat } from './shelf-words.ts';

export const moveWords: Readonly<Record<MoveWhat, { readonly press: string; readonly done: string }>> = {
  drawn: { press: 'Draw from it', done: 'drawn' },
  frozen: { press: 'Freeze it', done: 'frozen' },
  thawed: { press: 'Thaw it', done: 'thawed' },
  'weighed again': { press: 'Weigh it again', done: 'weighed again' },
  'use-by shortened': { press: 'Shorten its last day', done: 'last day brought forward' },
  'thrown away': { press: 'Throw away', done: 'thrown away' },
  'made a by-product': { press: 'Make it a by-product', done: 'a by-product for good' },
};

const weighs = new Set<MoveWhat>(['drawn', 'thrown away', 'weighed again']);
const dates = new Set<MoveWhat>(['frozen', 'thawed', 'use-by shortened']);

/** How many months such a piece usually stays frozen; null where the kitchen has not said what it is. */
const monthsFor = (lot: ShelfLotDetail): number | null =>
  freezingLimits.find((l) => l.class === lot.class)?.months ?? null;

function firstDay(what: MoveWhat, lot: ShelfLotDetail, today: string): string {
  if (what === 'frozen') {
    const months = monthsFor(lot);
    return months === null ? '' : plusMonths(today, months);
  }
  if (what !== 'thawed') return '';
  const tomorrow = plusDays(today, 1);
  return lot.useBy !== null && lot.useBy < tomorrow ? lot.useBy : tomorrow;
}

export interface MoveDialogProps {
  readonly lot: ShelfLotDetail;
  readonly what: MoveWhat;
  readonly onClose: () => void;
}

/** One move of a lot, with what follows from it said before it is written. */
export function MoveDialog({ lot, what, onClose }: MoveDialogProps) {
  const kitchen = useKitchen();
  const today = dayIn(kitchen.zone, new Date());
  const [id] = useState(() => newId());
  const [grams, setGrams] = useState<number | null>(what === 'thrown away' ? lot.leftGrams : null);
  const [useBy, setUseBy] = useState(() => firstDay(what, lot, today));
  const [reason, setReason] = useState('');
  const [sure, setSure] = useState(false);
  const form = useRef<HTMLDivElement>(null);
  const needsReason = what === 'thrown away' || what === 'made a by-product';
  const forGood = what === 'made a by-product';

  const write = async () => {
    const open = unsettledIn(form.current);
    if (open !== null) throw new Error(`${open}: what was typed is not settled yet. See beside the field.`);
    if (weighs.has(what) && grams === null)
      throw new Error('The weight is empty. Weigh it; sums such as 3*420g may be typed.');
    if (dates.has(what) && useBy === '') throw new Error('The last day is empty. Choose a day.');
    if (needsReason && reason.trim() === '') throw new Error('Say why: it is read again by an inspector.');
    if (forGood && !sure) {
      setSure(true);
      return;
    }
    await call('moveLot', {
      params: { kitchenId: kitchen.id, lotId: lot.id },
      body: {
        id,
        what,
        grams: weighs.has(what) ? grams : null,
        useBy: dates.has(what) ? useBy : null,
        reason: reason.trim(),
        at: new Date().toISOString(),
      },
    });
    await Promise.all(
      ['shelf', 'lot', 'lots'].map((key) => queryClient.invalidateQueries({ queryKey: [key] })),
    );
    say(`Lot ${lot.code}: ${moveWords[what].done}.`);
    onClose();
  };

  if (forGood && sure)
    return (
      <Dialog open onClose={onClose} title={`Lot ${lot.code}: asked once more`}>
        <p>
          <strong>This cannot be undone.</strong> Lot {lot.code}
          {lot.descendants.length === 0
            ? ''
            : ` and what was cut from it (${lot.descendants.map((d) => d.code).join(', ')})`}{' '}
          can never be food again, here or anywhere.
        </p>
        {lot.batches.length === 0 ? null : (
          <p>
            It was used in {lot.batches.map((b) => `${b.code} (${b.dishName})`).join(', ')}. Those batches are
            not stopped by this: look at each, and ask your authority what becomes of them.
          </p>
        )}
        <div className="row">
          <Button kind="danger" onPress={write} busy="Writing…">
            A by-product for good
          </Button>
          <Button kind="quiet" onPress={onClose}>
            Leave it as it is
          </Button>
        </div>
      </Dialog>
    );

  return (
    <Dialog open onClose={onClose} title={`Lot ${lot.code}: ${moveWords[what].press.toLowerCase()}`}>
      <Consequence lot={lot} what={what} today={today} />
      <div className="stack" ref={form}>
        {weighs.has(what) ? (
          <NumberField
            label={what === 'weighed again' ? 'What the scales say' : 'How much'}
            unit="g"
            value={grams}
            low={what === 'weighed again' ? 0 : 0.1}
            high={lot.leftGrams}
            onChange={setGrams}
            hint={`By the records ${formatQuantity(lot.leftGrams, 'mass', kitchen.units)} are left.`}
          />
        ) : null}
        {dates.has(what) ? (
          <Field label="Last day" hint={useBy === '' ? undefined : dayText(useBy)}>
            {(tie) => (
              <input
                {...tie}
                className="control"
                type="date"
                value={useBy}
                min={today}
                {...(what === 'frozen' || lot.useBy === null ? {} : { max: lot.useBy })}
                onChange={(e) => setUseBy(e.target.value)}
              />
            )}
          </Field>
        ) : null}
        <TextField
          label={needsReason ? 'Why' : 'Note'}
          value={reason}
          onChange={setReason}
          maxLength={500}
          lines={2}
        />
      </div>
      <div className="row">
        <Button kind={needsReason ? 'danger' : 'strong'} onPress={write} busy="Writing…">
          {forGood ? 'Go on' : moveWords[what].press}
        </Button>
        <Button kind="quiet" onPress={onClose}>
          Leave it
        </Button>
      </div>
    </Dialog>
  );
}

/** What follows from it, before it is done. */
function Consequence({ lot, what, today }: Omit<MoveDialogProps, 'onClose'> & { readonly today: string }) {
  const months = monthsFor(lot);
  switch (what) {
    case 'drawn':
      return (
        <p>
          What is drawn leaves the shelf for the bench. To have it followed to a plate, name the lot when the
          batch is started.
        </p>
      );
    case 'weighed again':
      return (
        <p>The difference is written down as lost. A lot does not grow: more than was left is refused.</p>
      );
    case 'use-by shortened':
      return <p>A last day is only ever brought forward, never put back, not even to what it was.</p>;
    case 'frozen':
      return (
        <div className="stack">
          <p>
            Nothing can be drawn while it is frozen. <strong>It is frozen once:</strong> after thawing it is
            not frozen again. A day in the freezer gives back no day that was lost before it.
          </p>
          <p className="quiet small">
            {months === null
              ? 'Nobody has said what kind of meat this is, so no day is proposed.'
              : `${lot.class}: about ${months} ${months === 1 ? 'month' : 'months'} at −18 °C or below, wrapped without air. For how it eats, not for safety; common practice, no source. Change it to your own.`}
          </p>
        </div>
      );
    case 'thawed':
      return (
        <div className="stack">
          <p>
            Thaw it in the cold, at most as warm as it is kept, on a tray that catches the drip.{' '}
            <strong>Once thawed it is never frozen again.</strong>
          </p>
          <p className="quiet small">
            Proposed: used by {dayText(firstDay('thawed', lot, today))}, a day after thawing (common practice,
            no source). Never later than its last day in the freezer.
          </p>
        </div>
      );
    case 'thrown away':
      return (
        <p>
          {lot.byProduct
            ? 'It is a by-product: it goes by the collector, with its document, not into the bin.'
            : 'It is taken off the shelf and stays in the records. Parts of animals may have to go by a by-product collector: ask your authority if you have none.'}
        </p>
      );
    default:
      return (
        <div className="stack">
          <p>
            <strong>It cannot be undone.</strong> What is once treated as an animal by-product can never be
            food again, and what was cut of it goes with it
            {lot.descendants.length === 0
              ? '. Nothing has been cut of this lot.'
              : `: ${lot.descendants.length} ${lot.descendants.length === 1 ? 'lot' : 'lots'}.`}
          </p>
          <p className="quiet small">
            Reported from Regulation (EC) No 1069/2009, Articles 3 and 4, from memory of the articles; confirm
            with your authority.
          </p>
        </div>
      );
  }
}
