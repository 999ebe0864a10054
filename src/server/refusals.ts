/** The one table from what went wrong to what HTTP says. Everything that is not in it is a fault of the program. */
import { randomUUID } from 'node:crypto';
import type { Context } from 'hono';
import { HTTPException } from 'hono/http-exception';
import type { ContentfulStatusCode } from 'hono/utils/http-status';
import { type AppCode, AppError } from '../app/errors.ts';
import type { ApiError } from '../contract/operations.ts';
import { InputProblems } from '../contract/problem.ts';

const statusOf: Readonly<Record<AppCode, ContentfulStatusCode>> = {
  invalid: 400,
  unsigned: 401,
  forbidden: 403,
  not_found: 404,
  conflict: 409,
  frozen: 409,
  unfinished: 409,
  unsafe: 409,
  unlawful: 409,
  blocked: 409,
  too_large: 413,
  busy: 503,
  unavailable: 503,
};

export function refuse(error: unknown, c: Context): Response {
  const { status, body } = answerFor(error);
  if (status === 503) c.header('Retry-After', '2');
  return c.json(body, status);
}

export function answerFor(error: unknown): { status: ContentfulStatusCode; body: ApiError } {
  if (error instanceof AppError)
    return {
      status: statusOf[error.code],
      body: {
        code: error.code,
        message: error.message,
        ...(error.problems.length > 0
          ? { problems: error.problems.map(({ path, found, allowed }) => ({ path, found, allowed })) }
          : {}),
      },
    };
  if (error instanceof InputProblems)
    return {
      status: 400,
      body: { code: 'invalid', message: 'The message was not understood.', problems: [...error.problems] },
    };
  if (error instanceof HTTPException)
    return {
      status: error.status,
      body: { code: error.status === 413 ? 'too_large' : 'invalid', message: error.message },
    };
  const mark = randomUUID();
  const told = error instanceof Error ? (error.stack ?? error.message) : String(error);
  process.stderr.write(`fault ${mark}: ${told}\n`);
  return {
    status: 500,
    body: {
      code: 'fault',
      message: `A fault of the program; nothing was acknowledged. The server's own log has it under ${mark}.`,
    },
  };
}
