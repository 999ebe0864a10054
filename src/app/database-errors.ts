/** The database's own complaints, by meaning. Most never get here: the rules are checked before anything is written. */
import { AppError } from './errors.ts';

interface Complaint {
  readonly code?: string;
  readonly message?: string;
  readonly constraint?: string;
  readonly constraint_name?: string;
}

function complaintOf(error: unknown): Complaint | null {
  for (let at: unknown = error; at !== null && typeof at === 'object'; at = (at as { cause?: unknown }).cause)
    if (typeof (at as Complaint).code === 'string') return at as Complaint;
  return null;
}

/** A lost race that the next try may win. */
export function isWorthAnotherTry(error: unknown): boolean {
  const code = complaintOf(error)?.code;
  return code === '40001' || code === '40P01';
}

const gone = new Set([
  'ECONNREFUSED',
  'ECONNRESET',
  'ENOTFOUND',
  'EPIPE',
  'ETIMEDOUT',
  'EAI_AGAIN',
  'ENOENT',
]);

export function databaseError(error: unknown): unknown {
  if (error instanceof AppError) return error;
  const complaint = complaintOf(error);
  if (complaint === null) {
    const message =
      error instanceof Error ? `${error.message} ${(error.cause as Error | undefined)?.message ?? ''}` : '';
    return /terminated|timeout exceeded when trying to connect|Connection terminated|PGlite is clos/i.test(
      message,
    )
      ? unavailable(error)
      : error;
  }
  const { code = '', message = '' } = complaint;
  if (code === 'FQ001') return new AppError('frozen', `This record is only added to: ${message}.`, [], error);
  if (code === '23505')
    return new AppError(
      'conflict',
      'There is already a record like this one (the same name, code or id).',
      [],
      error,
    );
  if (code === '23503')
    return new AppError('invalid', 'Something that this record refers to is not in this kitchen.', [], error);
  if (code.startsWith('22') || code.startsWith('23'))
    return new AppError('invalid', `The record cannot be kept: ${message}.`, [], error);
  if (
    code.startsWith('08') ||
    code.startsWith('57') ||
    code.startsWith('53') ||
    code.startsWith('58') ||
    gone.has(code)
  )
    return unavailable(error);
  return error;
}

const unavailable = (cause: unknown) =>
  new AppError(
    'unavailable',
    'The store does not answer: nothing was written. Try again; what you typed is still yours to send.',
    [],
    cause,
  );
