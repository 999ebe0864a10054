/** How a request becomes a call of an operation: path, query, body and person, each checked by the contract. */
import type { Context } from 'hono';
import { AppError } from '../app/errors.ts';
import type { Operation, OperationName, Operations } from '../contract/operations.ts';
import { accept, InputProblems, type Problem } from '../contract/problem.ts';
import { Id } from '../contract/quantities.ts';

type ParamsOf<Path extends string> = Path extends `${string}:${infer Name}/${infer Rest}`
  ? { readonly [K in Name]: string } & ParamsOf<`/${Rest}`>
  : Path extends `${string}:${infer Name}`
    ? { readonly [K in Name]: string }
    : object;

type OutOf<S> = S extends { _zod: { output: infer T } } ? T : undefined;

export interface Call<N extends OperationName> {
  readonly params: ParamsOf<Operations[N]['path']>;
  readonly body: Operations[N] extends { body: infer B } ? OutOf<B> : undefined;
  readonly query: Operations[N] extends { query: infer Q } ? OutOf<Q> : undefined;
  /** Who is writing; only where the operation is signed. */
  readonly personId: Operations[N] extends { signed: true } ? string : null;
}

export async function readCall<N extends OperationName>(c: Context, operation: Operation): Promise<Call<N>> {
  const call = {
    params: paramsOf(c),
    personId: operation.signed === true ? personOf(c) : null,
    query: operation.query === undefined ? undefined : accept(operation.query, c.req.query()),
    body: operation.body === undefined ? undefined : accept(operation.body, await bodyOf(c)),
  };
  return call as unknown as Call<N>;
}

function paramsOf(c: Context): Record<string, string> {
  const params: Record<string, string> = {};
  for (const [name, value] of Object.entries(c.req.param() as Record<string, string>)) {
    const id = Id.safeParse(value);
    if (!id.success)
      throw new AppError(
        'not_found',
        `There is nothing at this address: ${JSON.stringify(value.slice(0, 60))} is no id.`,
      );
    params[name] = id.data;
  }
  return params;
}

function personOf(c: Context): string {
  const id = Id.safeParse(c.req.header('x-person') ?? '');
  if (!id.success)
    throw new AppError(
      'unsigned',
      'Say who is writing: the header X-Person holds the id of a person of this kitchen.',
    );
  return id.data;
}

async function bodyOf(c: Context): Promise<unknown> {
  const type = c.req.header('content-type') ?? '';
  if (!/^application\/json\s*(;|$)/i.test(type))
    throw new InputProblems([
      {
        path: 'Content-Type',
        found: type === '' ? 'nothing' : type.slice(0, 60),
        allowed: 'application/json',
      },
    ]);
  let bytes: ArrayBuffer;
  try {
    bytes = await c.req.arrayBuffer();
  } catch (error) {
    throw new AppError('invalid', 'The message broke off before its end; nothing was kept.', [], error);
  }
  let body: unknown;
  try {
    body = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch (error) {
    throw new InputProblems([
      { path: '$', found: (error as Error).message.slice(0, 120), allowed: 'JSON in UTF-8' },
    ]);
  }
  const problems: Problem[] = [];
  checkTexts(body, '$', problems, 0);
  if (problems.length > 0) throw new InputProblems(problems);
  return body;
}

const deepest = 64;

/** Texts that cannot be kept as they are: the database has no place for U+0000, and half a surrogate pair is no character. */
function checkTexts(value: unknown, path: string, problems: Problem[], depth: number): void {
  if (problems.length >= 10) return;
  if (typeof value === 'string') {
    if (value.includes('\0'))
      problems.push({
        path,
        found: 'a text with the character U+0000',
        allowed: 'text without it (is it a file in UTF-16?)',
      });
    else if (/\p{Surrogate}/u.test(value))
      problems.push({ path, found: 'half a surrogate pair', allowed: 'Unicode text' });
    return;
  }
  if (value === null || typeof value !== 'object') return;
  if (depth >= deepest) {
    problems.push({ path, found: `more than ${deepest} levels`, allowed: 'less nesting' });
    return;
  }
  for (const [key, inner] of Object.entries(value)) {
    const at = Array.isArray(value) ? `${path}[${key}]` : path === '$' ? key : `${path}.${key}`;
    checkTexts(key, at, problems, depth + 1);
    checkTexts(inner, at, problems, depth + 1);
  }
}
