/** What went wrong, by meaning; which HTTP status or exit code that is, is decided elsewhere, once. */
import type { Problem } from '../contract/problem.ts';

export type AppCode =
  | 'invalid'
  | 'not_found'
  | 'conflict'
  | 'frozen'
  | 'unfinished'
  | 'unsafe'
  | 'unlawful'
  | 'blocked'
  | 'unsigned'
  | 'forbidden'
  | 'too_large'
  | 'busy'
  | 'unavailable';

export class AppError extends Error {
  override readonly name = 'AppError';
  readonly code: AppCode;
  readonly problems: readonly Problem[];
  constructor(code: AppCode, message: string, problems: readonly Problem[] = [], cause?: unknown) {
    super(message, cause === undefined ? undefined : { cause });
    this.code = code;
    this.problems = problems;
  }
}

export const notFound = (what: string) =>
  new AppError('not_found', `This kitchen has no ${what} of that id.`);

export function invalid(message: string, problems: readonly Problem[]): never {
  throw new AppError('invalid', message, problems);
}
