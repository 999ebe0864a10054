/** What may be done with a lot, and what each move leaves of it. */
import type { LotMoveInput } from '../contract/shelf.ts';
import type * as t from '../store/tables.ts';
import { AppError } from './errors.ts';

type LotRow = typeof t.lot.$inferSelect;

/** Why nothing may be taken from a lot today; null when it may. */
export function blockedWhy(lot: LotRow, today: string): string | null {
  if (lot.byProductAt !== null)
    return `Lot ${lot.code} was treated as an animal by-product on ${lot.byProductAt.toISOString().slice(0, 10)}; it cannot become food again.`;
  if (lot.frozenAt !== null) return `Lot ${lot.code} is frozen: thaw it first.`;
  if (lot.useBy !== null && lot.useBy < today) return `Lot ${lot.code} is past its last day, ${lot.useBy}.`;
  if (lot.leftGrams <= 0) return `Nothing is left of lot ${lot.code}.`;
  return null;
}

/** What a move leaves of a lot, or why it cannot be. */
export function movedTo(
  lot: LotRow,
  input: LotMoveInput,
  { today, now, batch }: { today: string; now: Date; batch: { code: string; heldGrams: number } | null },
): { leftGrams: number; set: Partial<typeof t.lot.$inferInsert> } {
  const refuse = (message: string, path: string, found: string, allowed: string): never => {
    throw new AppError('invalid', message, [{ path, found, allowed }]);
  };
  const grams = () => input.grams ?? refuse('How much is missing.', 'grams', 'nothing', 'a weight in g');
  const stop = (message: string | null) => {
    if (message !== null)
      throw new AppError('blocked', message, [
        { path: 'what', found: message, allowed: 'a lot that may be used' },
      ]);
  };
  if (input.what !== 'thrown away' && lot.byProductAt !== null) stop(blockedWhy(lot, today));
  if (batch !== null && input.what !== 'drawn' && input.what !== 'put back')
    refuse('No batch has a part in this.', 'batchId', batch.code, 'null');
  switch (input.what) {
    case 'put back': {
      if (batch === null)
        return refuse(
          'Say which batch gives it back.',
          'batchId',
          'nothing',
          'a batch that drew on this lot',
        );
      const g = grams();
      if (g > batch.heldGrams + 1e-9)
        refuse(
          `Batch ${batch.code} does not hold that much of lot ${lot.code}.`,
          'grams',
          `${g} g`,
          `at most ${batch.heldGrams} g`,
        );
      if (input.reason.trim() === '') refuse('Say why it comes back.', 'reason', 'nothing', 'a reason');
      return { leftGrams: Math.min(lot.grams, lot.leftGrams + g), set: {} };
    }
    case 'drawn': {
      stop(blockedWhy(lot, today));
      const g = grams();
      if (g > lot.leftGrams)
        refuse(`More than there is of lot ${lot.code}.`, 'grams', `${g} g`, `at most ${lot.leftGrams} g`);
      return { leftGrams: lot.leftGrams - g, set: {} };
    }
    case 'thrown away': {
      const g = grams();
      if (g > lot.leftGrams)
        refuse(`More than there is of lot ${lot.code}.`, 'grams', `${g} g`, `at most ${lot.leftGrams} g`);
      if (input.reason.trim() === '') refuse('Say why it is thrown away.', 'reason', 'nothing', 'a reason');
      return { leftGrams: lot.leftGrams - g, set: {} };
    }
    case 'weighed again': {
      const g = grams();
      if (g > lot.leftGrams)
        refuse(
          `A lot does not grow: ${lot.code} has ${lot.leftGrams} g by its records.`,
          'grams',
          `${g} g`,
          `at most ${lot.leftGrams} g`,
        );
      return { leftGrams: g, set: {} };
    }
    case 'frozen':
      if (lot.frozenAt !== null) stop(`Lot ${lot.code} is frozen already.`);
      if (lot.thawedAt !== null) stop(`Lot ${lot.code} was thawed once and is not frozen again.`);
      if (lot.useBy !== null && lot.useBy < today) stop(blockedWhy(lot, today));
      if (input.useBy === null) refuse('Say until when it may stay frozen.', 'useBy', 'nothing', 'a day');
      return { leftGrams: lot.leftGrams, set: { frozenAt: now, useBy: input.useBy } };
    case 'thawed': {
      if (lot.frozenAt === null) stop(`Lot ${lot.code} is not frozen.`);
      if (lot.useBy !== null && lot.useBy < today)
        stop(`Lot ${lot.code} is past its last day, ${lot.useBy}.`);
      const day = input.useBy ?? refuse('Say by when it is used after thawing.', 'useBy', 'nothing', 'a day');
      if (lot.useBy !== null && day > lot.useBy)
        refuse('Thawing does not lengthen a life.', 'useBy', day, `${lot.useBy} or before`);
      return { leftGrams: lot.leftGrams, set: { frozenAt: null, thawedAt: now, useBy: day } };
    }
    case 'use-by shortened': {
      const day = input.useBy ?? refuse('The new last day is missing.', 'useBy', 'nothing', 'a day');
      if (lot.useBy !== null && day > lot.useBy)
        refuse('A last day is only ever brought forward.', 'useBy', day, `${lot.useBy} or before`);
      return { leftGrams: lot.leftGrams, set: { useBy: day } };
    }
    default:
      if (input.reason.trim() === '') refuse('Say what happened to it.', 'reason', 'nothing', 'a reason');
      return { leftGrams: lot.leftGrams, set: { byProductAt: now } };
  }
}
