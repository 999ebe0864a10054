/** What the engine foresees of warming through, in words: never fine where something is unknown, short or not asked. */
import type { ReheatForeseen } from '../../../../core/method/reheat.ts';
import type { VerdictState } from '../../../parts/verdict.tsx';
import { temperatureWords, timeWords } from '../../../pictures/words.ts';

type Units = Parameters<typeof temperatureWords>[1];

export interface ReheatWords {
  readonly state: VerdictState;
  readonly word: string;
  readonly why: readonly string[];
}

/** Rounded down: what is not there is not shown as there. */
const down = (C: number) => Math.floor(C * 10) / 10;

export function reheatWords(seen: ReheatForeseen, startC: number, units: Units): ReheatWords {
  const out = `Lifted out after ${timeWords(seen.liftOut)} its coldest point is at ${temperatureWords(down(seen.coldest), units)}.`;
  const thawed =
    seen.thawed !== null
      ? [`The ice has gone after ${timeWords(seen.thawed)}.`]
      : startC < -1
        ? ['It goes in frozen; when the ice has gone is not known.']
        : [];
  const unmet = seen.rules
    .filter((v) => v.outcome !== 'holds')
    .map((v) => `${v.rule.title}: ${v.why.replaceAll('into the log', 'into the programme')}`);
  const core =
    seen.wanted !== null && !(seen.coldest >= seen.wanted)
      ? [`${temperatureWords(seen.wanted, units)} are wanted there.`]
      : [];
  const late = seen.notReached.map(
    (name) => `“${name}” did not come to what ends it in the time it may take.`,
  );
  const why = [out, ...core, ...unmet, ...late, ...seen.doubts.map((d) => `${d.what}.`), ...thawed];
  switch (seen.word) {
    case 'holds':
      return {
        state: 'holds',
        word: 'Reckoned to be hot right through',
        why: [...why, ...seen.rules.map((v) => `${v.rule.title}: met.`)],
      };
    case 'short':
      return { state: 'does not hold', word: 'Not hot enough right through', why };
    case 'unknown':
      return { state: 'unknown', word: 'Cannot be told', why };
    case 'not asked':
      return {
        state: 'unknown',
        word: 'How hot it must be is not known',
        why: [
          ...why,
          'No rule of reheating is named here and no core is asked for. Name one below, or ask your local authority.',
        ],
      };
  }
}
