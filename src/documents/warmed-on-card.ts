/** What the card says of warming through: reckoned, never measured, and never fine where it is short, unknown or not asked. */
import { duration, temperature, type Units } from './format.ts';
import type { WarmedStep } from './method-card-data.ts';

/** Rounded down: what is not there is not printed as there. */
const down = (C: number) => Math.floor(C * 10) / 10;

export function warmedOnCard({ seen, startC }: WarmedStep, units: Units) {
  const got = `From ${temperature(startC, units)} right through, lifted out after ${duration(seen.liftOut / 60)}, its coldest point is at ${temperature(down(seen.coldest), units)}.`;
  const thawed = seen.thawed === null ? '' : ` The ice has gone after ${duration(seen.thawed / 60)}.`;
  const unmet = seen.rules
    .filter((v) => v.outcome !== 'holds')
    .map((v) => ` ${v.rule.title}: ${v.why.replaceAll('into the log', 'into the programme')}`)
    .join('');
  const wanted =
    seen.wanted !== null && !(seen.coldest >= seen.wanted)
      ? ` ${temperature(seen.wanted, units)} are wanted there.`
      : '';
  const doubts = [
    ...seen.doubts.map((d) => ` ${d.what}.`),
    ...seen.notReached.map((name) => ` “${name}” did not reach its goal in its time.`),
  ].join('');
  const text = `${got}${thawed}${unmet}${wanted}${doubts}`;
  const rust = 'rust' as const;
  switch (seen.word) {
    case 'holds':
      return {
        word: 'Reckoned to be hot right through',
        colour: 'herb' as const,
        text: `${text} Probe it. Reheat once only.`,
      };
    case 'short':
      return {
        word: 'Not hot enough right through',
        colour: rust,
        text: `${text} Not to be served as it stands.`,
      };
    case 'unknown':
      return { word: 'Unknown', colour: rust, text: `${text} Not to be served as it stands.` };
    case 'not asked':
      return {
        word: 'Unknown how hot it must be',
        colour: rust,
        text: `${text} No rule of reheating is named and no core is asked for: ask your local authority. Reheat once only.`,
      };
  }
}
