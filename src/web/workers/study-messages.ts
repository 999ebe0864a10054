/** What the page, the worker that studies a programme, and the workers that do its runs say to one another. */
import type { ChillAnswer } from '../../contract/chill.ts';
import type { GentleAnswer } from '../../contract/gentle.ts';
import type { Problem } from '../../contract/problem.ts';
import type { SureAnswer } from '../../contract/sure.ts';
import type { SureTask } from '../../contract/sure-tasks.ts';

export interface Answers {
  readonly sure: SureAnswer;
  readonly gentle: GentleAnswer;
  readonly chill: ChillAnswer;
}
export type StudyKind = keyof Answers;

export interface StudyQuestion {
  readonly kind: StudyKind;
  readonly input: unknown;
}

export type FromStudy =
  | { readonly progress: number }
  | { readonly answer: Answers[StudyKind] }
  | { readonly problems: readonly Problem[] }
  | { readonly fault: string };

export type ToRuns =
  | { readonly input: unknown }
  | { readonly id: number; readonly tasks: readonly SureTask[] };

export type FromRuns =
  | { readonly id: number; readonly numbers: readonly (readonly number[])[] }
  | { readonly id: number; readonly problems: readonly Problem[] }
  | { readonly id: number; readonly fault: string };
