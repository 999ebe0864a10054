/** A temperature log as the contract has it: minutes and °C in order of time, no time twice, straight lines between. */
import { z } from 'zod';

/** Complains on a path: what was found, and what is allowed. */
export type Complain = (path: (string | number)[], found: string, allowed: string) => void;

const LogPoint = z.strictObject({
  min: z.number().min(-1_000_000).max(10_000_000),
  C: z.number().min(-80).max(400),
});
export type LogPoint = z.infer<typeof LogPoint>;

export const logPoints = (least: number) => z.array(LogPoint).min(least).max(200_000);

/** Times that rise. One complaint for a whole log written backwards, and no more than a handful otherwise. */
export function checkTimes(log: readonly LogPoint[], complain: Complain, key = 'log'): void {
  let wrong = 0;
  for (let i = 1; i < log.length && wrong < 5; i++) {
    const before = log[i - 1]!.min;
    const now = log[i]!.min;
    if (now > before) continue;
    wrong++;
    const what = now === before ? `${now} min a second time` : `${now} min after ${before} min`;
    complain([key, i, 'min'], what, 'times that rise from reading to reading, none twice');
  }
}

/** In the engine's seconds. */
export const inSeconds = (log: readonly LogPoint[]): { s: number; C: number }[] =>
  log.map(({ min, C }) => ({ s: min * 60, C }));
