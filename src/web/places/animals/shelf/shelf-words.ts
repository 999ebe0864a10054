/** What stands on the shelf, in words: how long it is still good for, what is offered of it, what is found; pure. */
import type { ShelfLot } from '../../../../contract/shelf.ts';
import type { VerdictState } from '../../../parts/verdict.tsx';
import { plain } from '../../../shell/find.ts';
import { daysBetween, dayText } from './civil.ts';

export type Standing = ShelfLot['standing'] | 'frozen' | 'by-product';

/** What decides about a lot first: food no more, then past, then frozen, then its day. */
export function standingOf(lot: Pick<ShelfLot, 'standing' | 'byProduct' | 'frozenAt'>): Standing {
  if (lot.byProduct) return 'by-product';
  if (lot.standing === 'past') return 'past';
  return lot.frozenAt === null ? lot.standing : 'frozen';
}

export const standingChoices: readonly { value: Standing | ''; label: string }[] = [
  { value: '', label: 'Everything' },
  { value: 'past', label: 'Past its last day' },
  { value: 'last day', label: 'Last day today' },
  { value: 'ok', label: 'Within its days' },
  { value: 'not known', label: 'Last day not known' },
  { value: 'frozen', label: 'Frozen' },
  { value: 'by-product', label: 'By-product, no food' },
];

const left = (days: number) => (days === 1 ? '1 day left after today' : `${days} days left after today`);

/** A word and a shape for a lot. Not known is never drawn as holding. */
export function standingWords(
  lot: Pick<ShelfLot, 'standing' | 'byProduct' | 'frozenAt' | 'useBy'>,
  today: string,
): { readonly state: VerdictState; readonly word: string; readonly why: string } {
  const day = lot.useBy === null ? '' : dayText(lot.useBy);
  switch (standingOf(lot)) {
    case 'by-product':
      return { state: 'does not hold', word: 'By-product', why: 'Never food again. Keep it apart.' };
    case 'past': {
      const over = lot.useBy === null ? 0 : daysBetween(lot.useBy, today);
      return {
        state: 'does not hold',
        word: 'Past its last day',
        why: `It was ${day}, ${over === 1 ? 'yesterday' : `${over} days ago`}.`,
      };
    }
    case 'frozen':
      return {
        state: 'neutral',
        word: 'Frozen',
        why: lot.useBy === null ? 'No last day is written.' : `To be used by ${day}.`,
      };
    case 'last day':
      return { state: 'not yet', word: 'Last day today', why: day };
    case 'not known':
      return { state: 'unknown', word: 'Last day not known', why: 'Nobody has written how long it keeps.' };
    default:
      return {
        state: 'holds',
        word: 'Within its days',
        why: `${day}, ${left(lot.useBy === null ? 0 : daysBetween(today, lot.useBy))}.`,
      };
  }
}

/** How old it is since it came. */
export function ageWords(arrivedOn: string, today: string): string {
  const days = daysBetween(arrivedOn, today);
  if (days < 0) return 'dated to come';
  if (days === 0) return 'came today';
  return days === 1 ? 'came yesterday' : `${days} days here`;
}

export interface Wanted {
  readonly asked: string;
  readonly species: string;
  readonly part: string;
  readonly standing: Standing | '';
}

export const speciesOf = (lots: readonly ShelfLot[]): string[] =>
  [...new Set(lots.flatMap((l) => l.species?.toLowerCase() ?? []))].sort();

export const partsOf = (lots: readonly ShelfLot[], species: string): string[] =>
  [
    ...new Set(
      lots.flatMap((l) =>
        l.partName !== null && (species === '' || l.species?.toLowerCase() === species)
          ? [l.partName.toLowerCase()]
          : [],
      ),
    ),
  ].sort();

/** The lots that are wanted, in the order in which they came: what runs out first stands first. */
export function wantedLots(lots: readonly ShelfLot[], wanted: Wanted): ShelfLot[] {
  const words = plain(wanted.asked).split(/\s+/).filter(Boolean);
  return lots.filter((lot) => {
    if (wanted.species !== '' && lot.species?.toLowerCase() !== wanted.species) return false;
    if (wanted.part !== '' && lot.partName?.toLowerCase() !== wanted.part) return false;
    if (wanted.standing !== '' && standingOf(lot) !== wanted.standing) return false;
    const text = plain(
      `${lot.code} ${lot.what} ${lot.species ?? ''} ${lot.partName ?? ''} ${lot.supplierName ?? ''} ${lot.note}`,
    );
    return words.every((w) => text.includes(w));
  });
}

type Dishlike = {
  readonly id: string;
  readonly name: string;
  readonly species: string;
  readonly part: string;
  readonly stage: string;
};

/** Which dishes a lot can become: those of its animal and part. */
export const dishesFor = <D extends Dishlike>(
  lot: Pick<ShelfLot, 'species' | 'partName'>,
  dishes: readonly D[],
): D[] =>
  lot.species === null || lot.partName === null
    ? []
    : dishes.filter(
        (d) =>
          d.stage !== 'retired' &&
          plain(d.species) === plain(lot.species ?? '') &&
          plain(d.part) === plain(lot.partName ?? ''),
      );

export type MoveWhat =
  | 'drawn'
  | 'frozen'
  | 'thawed'
  | 'thrown away'
  | 'made a by-product'
  | 'weighed again'
  | 'use-by shortened';

/** What can be done with a lot now; the server holds the same rules. */
export function movesFor(
  lot: Pick<ShelfLot, 'byProduct' | 'frozenAt' | 'thawedAt' | 'blocked' | 'leftGrams' | 'standing'>,
): MoveWhat[] {
  if (lot.leftGrams <= 0) return lot.byProduct ? [] : ['made a by-product'];
  if (lot.byProduct) return ['thrown away'];
  const moves: MoveWhat[] = [];
  if (lot.blocked === null) moves.push('drawn');
  if (lot.frozenAt !== null && lot.standing !== 'past') moves.push('thawed');
  if (lot.frozenAt === null && lot.thawedAt === null && lot.standing !== 'past') moves.push('frozen');
  moves.push('weighed again', 'use-by shortened', 'thrown away', 'made a by-product');
  return moves;
}
