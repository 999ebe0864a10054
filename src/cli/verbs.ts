/** What the command line can do: one entry a verb. A new verb is a new entry and nothing else. */
import type { z } from 'zod';
import { BrineInput, runBrine } from '../contract/brine.ts';
import { runCarve } from '../contract/carve.ts';
import { CarveInput } from '../contract/carve-input.ts';
import { runChill } from '../contract/chill.ts';
import { ChillInput } from '../contract/chill-input.ts';
import { CookInput, runCook } from '../contract/cook.ts';
import { runCure } from '../contract/cure.ts';
import { CureInput } from '../contract/cure-input.ts';
import { FitInput, runFit } from '../contract/fit.ts';
import { GentleInput, runGentle } from '../contract/gentle.ts';
import { GrowInput, LimitsInput, runGrow, runLimits } from '../contract/grow.ts';
import { JudgeInput, listRules, runJudge } from '../contract/judge.ts';
import { KeepInput, runKeep } from '../contract/keep.ts';
import { MixInput, runMix } from '../contract/mix.ts';
import { runSure } from '../contract/sure.ts';
import { SureInput, studyOf } from '../contract/sure-input.ts';
import { runTaste, TasteInput } from '../contract/taste.ts';
import { runWhich, WhichInput } from '../contract/which.ts';
import { openTaskPool } from './task-pool.ts';

export interface VerbOptions {
  /** Called now and then with words for what is being done. */
  readonly onProgress?: (words: string) => void;
}

export interface Verb {
  readonly summary: string;
  /** What the input must be; absent for a verb that takes none. */
  readonly input?: z.ZodType;
  /** From JSON to JSON. Throws `InputProblems` for an input that is wrong. */
  readonly run: (input: unknown, options: VerbOptions) => unknown;
}

export const verbs: Readonly<Record<string, Verb>> = {
  cook: {
    summary: 'temperature and lethality in a body through its stages',
    input: CookInput,
    run: (input, { onProgress }) =>
      runCook(
        input,
        onProgress === undefined
          ? {}
          : {
              onProgress: (s) => {
                onProgress(`${(s / 60).toFixed(1)} min simulated`);
                return true;
              },
            },
      ),
  },
  gentle: {
    summary: 'the gentlest programme that is still safe: at which temperature, and how long',
    input: GentleInput,
    run: (input, { onProgress }) =>
      runGentle(input, { onProgress: (done) => onProgress?.(`${Math.round(100 * done)} %`) }),
  },
  sure: {
    summary: 'how long, so that the worst piece of a batch passes as often as is asked',
    input: SureInput,
    run: async (input, { onProgress }) => {
      studyOf(input);
      const pool = openTaskPool(input);
      try {
        return await runSure(input, {
          run: pool.run,
          onProgress: (done, words) => onProgress?.(`${Math.round(100 * done)} %, ${words}`),
        });
      } finally {
        await pool.close();
      }
    },
  },
  fit: {
    summary: 'the kitchen’s own coefficients from a probe log, with what the log cannot tell',
    input: FitInput,
    run: (input, { onProgress }) =>
      runFit(
        input,
        onProgress === undefined
          ? {}
          : {
              onProgress: (runs, share) => {
                onProgress(`${runs} runs of the engine, about ${Math.round(100 * share)} %`);
                return true;
              },
            },
      ),
  },
  chill: {
    summary: 'whether a piece cools as the rules ask, how large it may be, how many go in at once',
    input: ChillInput,
    run: (input, { onProgress }) =>
      runChill(input, { onProgress: (done) => onProgress?.(`about ${Math.round(100 * done)} %`) }),
  },
  grow: {
    summary: 'how much an organism grows along a temperature log',
    input: GrowInput,
    run: (input) => runGrow(input),
  },
  limits: {
    summary: 'whether an organism can grow at all at a temperature and in a food',
    input: LimitsInput,
    run: (input) => runLimits(input),
  },
  cure: {
    summary: 'salt into a piece by brine or dry salt, through cure, rinse and rest',
    input: CureInput,
    run: (input) => runCure(input),
  },
  carve: {
    summary:
      'a breakdown of weighed animals: yields and how sure they are, what is missing, cost of the parts',
    input: CarveInput,
    run: (input) => runCarve(input),
  },
  mix: {
    summary:
      'a filling as weighed or solved for: what is in it, what it costs, its allergens and list of ingredients',
    input: MixInput,
    run: (input) => runMix(input),
  },
  brine: {
    summary: 'one brine on every scale: %, salometer, gravity, Baumé, density, freezing',
    input: BrineInput,
    run: (input) => runBrine(input),
  },
  judge: {
    summary: 'a measured log against named rules',
    input: JudgeInput,
    run: (input) => runJudge(input),
  },
  keep: {
    summary: 'how long a food may be kept, by the earliest rule that applies',
    input: KeepInput,
    run: (input) => runKeep(input),
  },
  which: {
    summary: 'which rules a food is held to at a step and a place, and why not the others',
    input: WhichInput,
    run: (input) => runWhich(input),
  },
  taste: {
    summary: 'what a tasting shows and what it does not, and how many tasters it takes',
    input: TasteInput,
    run: (input) => runTaste(input),
  },
  rules: {
    summary: 'the rules a log can be judged by; takes no file',
    run: () => listRules(),
  },
};
