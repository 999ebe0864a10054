import type { z } from 'zod';

/** One thing wrong with an input: where (JSON path, e.g. `body.profile[2].diameterMm`), what was found, what is allowed. */
export interface Problem {
  readonly path: string;
  readonly found: string;
  readonly allowed: string;
}

/** Input that an operation refuses. Holds every problem found, not only the first. */
export class InputProblems extends Error {
  override readonly name = 'InputProblems';
  readonly problems: readonly Problem[];
  constructor(problems: readonly Problem[]) {
    super(problems.map((p) => `${p.path}: found ${p.found}, allowed ${p.allowed}`).join('\n'));
    this.problems = problems;
  }
}

type Issue = z.core.$ZodIssue;
type Key = PropertyKey;

/** `['body','profile',2,'atMm']` → `body.profile[2].atMm`; the whole input is `$`. */
export function pathText(path: readonly Key[]): string {
  let text = '';
  for (const key of path) {
    if (typeof key === 'number') text += `[${key}]`;
    else if (/^[A-Za-z_$][\w$-]*$/.test(String(key))) text += text === '' ? String(key) : `.${String(key)}`;
    else text += `[${JSON.stringify(String(key))}]`;
  }
  return text === '' ? '$' : text;
}

/** The value at a path, or undefined. */
function valueAt(input: unknown, path: readonly Key[]): unknown {
  let value = input;
  for (const key of path) {
    if (value === null || typeof value !== 'object') return undefined;
    value = (value as Record<Key, unknown>)[key];
  }
  return value;
}

/** A value as it is shown in a message: short, never a dump of the whole input. */
export function foundText(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (typeof value === 'number') return String(value);
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : `a list of ${value.length}`;
  if (typeof value === 'object' && value !== null) {
    const keys = Object.keys(value);
    return keys.length === 0 ? 'an empty object' : `an object with ${keys.slice(0, 6).join(', ')}`;
  }
  const text = JSON.stringify(value) ?? String(value);
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}

const kinds: Record<string, string> = {
  string: 'a text',
  number: 'a finite number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  object: 'an object',
  record: 'an object',
  null: 'null',
};

function bound(
  issue: { origin: string; inclusive?: boolean | undefined },
  limit: unknown,
  side: 'least' | 'most',
) {
  const n = String(limit);
  if (issue.origin === 'array' || issue.origin === 'set') return `at ${side} ${n} entries`;
  if (issue.origin === 'string') return `at ${side} ${n} characters`;
  if (issue.inclusive === false) return side === 'least' ? `more than ${n}` : `less than ${n}`;
  return `at ${side} ${n}`;
}

function allowedText(issue: Issue): string {
  switch (issue.code) {
    case 'invalid_type':
      return kinds[issue.expected] ?? `a value of type ${issue.expected}`;
    case 'too_small':
      return bound(issue, issue.minimum, 'least');
    case 'too_big':
      return bound(issue, issue.maximum, 'most');
    case 'invalid_value':
      return issue.values.length === 1
        ? JSON.stringify(issue.values[0])
        : `one of ${issue.values.map((v) => JSON.stringify(v)).join(', ')}`;
    case 'invalid_format':
      return `a text of the form ${issue.format}`;
    case 'not_multiple_of':
      return `a multiple of ${issue.divisor}`;
    default:
      return issue.message;
  }
}

/** Of several alternatives that all failed, the one the writer most likely meant: fewest issues, then deepest. */
function likeliest(branches: readonly (readonly Issue[])[]): readonly Issue[] {
  const score = (issues: readonly Issue[]) => {
    const depth = Math.max(0, ...issues.map((i) => i.path.length));
    const wrongKind = issues.some((i) => i.path.length === 0 && i.code === 'invalid_type') ? 1000 : 0;
    return wrongKind + issues.length - depth / 10;
  };
  return [...branches].sort((a, b) => score(a) - score(b))[0] ?? [];
}

/** The choices named by a message that lists them in single quotes. */
function alternatives(message: string): string {
  const named = [...message.matchAll(/'([^']*)'/g)].map((m) => JSON.stringify(m[1]));
  return named.length > 0 ? `one of ${named.join(', ')}` : message;
}

function problemsOfIssue(issue: Issue, above: readonly Key[], input: unknown): Problem[] {
  const path = [...above, ...issue.path];
  const value = valueAt(input, path);
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({
      path: pathText([...path, key]),
      found: `an unknown key ${JSON.stringify(key)}`,
      allowed: 'only the keys of the contract (a typing mistake?)',
    }));
  }
  if (issue.code === 'invalid_union') {
    const allWrongKind = issue.errors.every(
      (e) => e.length === 1 && e[0]?.path.length === 0 && e[0].code === 'invalid_type',
    );
    if (issue.errors.length > 0 && !allWrongKind) {
      const best = likeliest(issue.errors);
      // No alternative fits its keys: what the schema says of the choice is clearer than one alternative's complaint.
      const onlyKeys = best.every(
        (i) => i.code === 'unrecognized_keys' || valueAt(value, i.path) === undefined,
      );
      if (!(onlyKeys && issue.message !== 'Invalid input'))
        return best.flatMap((inner) => problemsOfIssue(inner, path, input));
      return [{ path: pathText(path), found: foundText(value), allowed: issue.message }];
    }
    const options = issue.errors.flatMap((e) => e.map(allowedText));
    const allowed = options.length > 0 ? [...new Set(options)].join(', or ') : alternatives(issue.message);
    return [{ path: pathText(path), found: foundText(value), allowed }];
  }
  if (issue.code === 'invalid_key' || issue.code === 'invalid_element')
    return issue.issues.flatMap((inner) => problemsOfIssue(inner, path, input));
  const stated = issue.code === 'custom' ? (issue.params?.found as unknown) : undefined;
  return [
    {
      path: pathText(path),
      found: typeof stated === 'string' ? stated : foundText(value),
      allowed: allowedText(issue),
    },
  ];
}

/**
 * Turns a schema's complaints about an input into problems that name path, finding and what is allowed.
 * For a `custom` issue the message says what is allowed and `params.found`, where given, what was found.
 */
export function problemsOf(error: z.core.$ZodError, input: unknown): Problem[] {
  return error.issues.flatMap((issue) => problemsOfIssue(issue, [], input));
}

/** Parses an input by its schema, or throws `InputProblems` naming everything that is wrong with it. */
export function accept<S extends z.ZodType>(schema: S, input: unknown): z.output<S> {
  const parsed = schema.safeParse(input);
  if (!parsed.success) throw new InputProblems(problemsOf(parsed.error, input));
  return parsed.data;
}
