/** Where a JSON text is wrong: a scan by the grammar that knows line and column, and sees a key given twice. */
import { pathText } from '../contract/problem.ts';

export interface JsonFault {
  readonly at: number;
  /** Where in the data, as far as it was understood, e.g. `log[2].C`. */
  readonly path: string;
  readonly found: string;
  readonly allowed: string;
}

class Fault extends Error {
  constructor(readonly fault: JsonFault) {
    super('not JSON');
  }
}

/** The first fault of a JSON text; null where it has none. Depth is bounded, so that a hostile text cannot exhaust the stack. */
export function jsonFault(text: string, deepest = 200): JsonFault | null {
  let i = 0;
  const path: (string | number)[] = [];

  const fail = (allowed: string, at = i): never => {
    const rest = text.slice(at);
    const word = /^(?:[\w.+-]+|.)/su.exec(rest)?.[0];
    const found = word === undefined ? 'the end of the text' : JSON.stringify(word.slice(0, 20));
    throw new Fault({ at, path: pathText(path), found, allowed });
  };
  const space = () => {
    while (i < text.length && ' \t\n\r'.includes(text[i]!)) i++;
  };
  const literal = (pattern: RegExp) => {
    pattern.lastIndex = i;
    const match = pattern.exec(text);
    if (match === null) return null;
    i = pattern.lastIndex;
    return match[0];
  };
  const string = /"(?:[^"\\\p{Cc}]|[\u007f-\u009f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/uy;
  const number = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?(?![\w.])/y;
  const word = /(?:true|false|null)(?!\w)/y;

  function quoted(what: string): string {
    return literal(string) ?? fail(text[i] === '"' ? 'a text closed by a quotation mark on its line' : what);
  }
  function value(depth: number): void {
    if (depth > deepest) fail(`no more than ${deepest} levels`);
    space();
    if (text[i] === '{') object(depth);
    else if (text[i] === '[') array(depth);
    else if (text[i] === '"') quoted('a text');
    else if (literal(number) === null && literal(word) === null)
      fail('a JSON value: object, list, text in double quotation marks, finite number, true, false or null');
  }
  function object(depth: number): void {
    const keys = new Set<string>();
    if (empty('}')) return;
    do {
      space();
      const at = i;
      const key = quoted('a key in double quotation marks');
      if (keys.has(key))
        throw new Fault({
          at,
          path: pathText(path),
          found: `the key ${key} a second time`,
          allowed: 'every key once',
        });
      keys.add(key);
      space();
      if (text[i] !== ':') fail('a colon after the key');
      i++;
      path.push(JSON.parse(key) as string);
      value(depth + 1);
      path.pop();
    } while (more('}', 'a comma or a closing brace'));
  }
  function array(depth: number): void {
    if (empty(']')) return;
    let n = 0;
    do {
      path.push(n++);
      value(depth + 1);
      path.pop();
    } while (more(']', 'a comma or a closing bracket'));
  }
  /** Past the opening mark, and past the closing one where nothing lies between. */
  function empty(close: string): boolean {
    i++;
    space();
    if (text[i] !== close) return false;
    i++;
    return true;
  }
  /** Past a comma (true) or the closing mark (false). */
  function more(close: string, allowed: string): boolean {
    space();
    if (text[i] !== close && text[i] !== ',') fail(allowed);
    return text[i++] === ',';
  }

  try {
    value(0);
    space();
    if (i < text.length) fail('nothing after the value');
    return null;
  } catch (error) {
    if (error instanceof Fault) return error.fault;
    throw error;
  }
}

/** Line and column, from 1, of a place in a text. */
export function lineAndColumn(text: string, at: number): { line: number; column: number } {
  const before = text.slice(0, at).split('\n');
  return { line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
}
