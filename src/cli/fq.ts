/**
 * The engine without a browser: `fq VERB FILE` (`-`: standard input), JSON in, JSON out.
 * Exit 0: the answer on standard output. Exit 2: the input is wrong, one line a problem on standard error. Exit 1: our own fault.
 */
import { readFileSync } from 'node:fs';
import { z } from 'zod';
import { nearNames } from '../contract/near-names.ts';
import { InputProblems, type Problem } from '../contract/problem.ts';
import { Contradiction, OutOfRange } from '../core/errors.ts';
import { jsonFault, lineAndColumn } from './json-text.ts';
import { type Verb, verbs } from './verbs.ts';

const mostBytes = 64_000_000;

const wrong = (path: string, found: string, allowed: string) => new InputProblems([{ path, found, allowed }]);

const verbList = () => Object.keys(verbs).join(', ');

function help(): string {
  const width = Math.max(...Object.keys(verbs).map((name) => name.length));
  return [
    'fq VERB FILE        reads JSON from FILE (- for standard input), answers JSON on standard output',
    'fq schema VERB      the JSON Schema of what VERB takes',
    'fq help             this',
    '--progress          says on standard error how far it is',
    '',
    ...Object.entries(verbs).map(([name, verb]) => `  ${name.padEnd(width)}  ${verb.summary}`),
    '',
    'Exit 0: answered. Exit 2: the input is wrong; standard error says where. Exit 1: a fault of the program.',
    'What it says is advice: your local authority and qualified people decide what is safe and lawful in your kitchen.',
    '',
  ].join('\n');
}

function verbNamed(name: string): Verb {
  const verb = Object.hasOwn(verbs, name) ? verbs[name] : undefined;
  if (verb !== undefined) return verb;
  const near = nearNames(name, Object.keys(verbs), 1);
  throw wrong(
    'VERB',
    JSON.stringify(name),
    `${near.length > 0 ? `perhaps ${near[0]}; ` : ''}one of ${verbList()}, schema, help`,
  );
}

async function bytesOf(file: string): Promise<Uint8Array> {
  if (file !== '-') {
    try {
      return readFileSync(file);
    } catch (error) {
      const code = (error as NodeJS.ErrnoException).code;
      const found =
        code === 'ENOENT'
          ? 'no such file'
          : code === 'EISDIR'
            ? 'a folder'
            : `a file that cannot be read (${code})`;
      throw wrong(file, found, 'a file of JSON, or - for standard input');
    }
  }
  const pieces: Uint8Array[] = [];
  let size = 0;
  for await (const piece of process.stdin as AsyncIterable<Buffer>) {
    size += piece.length;
    if (size > mostBytes) break;
    pieces.push(piece);
  }
  return Buffer.concat(pieces, Math.min(size, mostBytes + 1));
}

async function inputFrom(file: string): Promise<unknown> {
  const bytes = await bytesOf(file);
  if (bytes.length > mostBytes)
    throw wrong(file, `more than ${mostBytes / 1e6} MB`, `at most ${mostBytes / 1e6} MB`);
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw wrong(file, 'bytes that are not UTF-8', 'JSON in UTF-8');
  }
  const fault = jsonFault(text);
  if (fault === null) return JSON.parse(text);
  const { line, column } = lineAndColumn(text, fault.at);
  throw wrong(`${fault.path} (${file} line ${line} column ${column})`, fault.found, fault.allowed);
}

/** At most two lines a second, and none for what is done at once. */
function teller() {
  let last = performance.now();
  return (words: string) => {
    const now = performance.now();
    if (now - last < 500) return;
    last = now;
    process.stderr.write(`${words}\n`);
  };
}

async function answer(args: readonly string[]): Promise<string> {
  const flags = args.filter((arg) => arg.startsWith('--'));
  const [name, file, ...rest] = args.filter((arg) => !arg.startsWith('--'));
  if (name === 'help' || flags.includes('--help')) return help();
  for (const flag of flags)
    if (flag !== '--progress') throw wrong('OPTION', JSON.stringify(flag), '--progress, --help');
  if (name === undefined) throw wrong('VERB', 'nothing', `one of ${verbList()}, schema, help`);
  if (rest.length > 0) throw wrong('arguments', JSON.stringify(rest[0]), 'a verb and one file');
  if (name === 'schema') {
    if (file === undefined) throw wrong('VERB', 'nothing', `schema and one of ${verbList()}`);
    const { input } = verbNamed(file);
    if (input === undefined)
      throw wrong('VERB', JSON.stringify(file), 'a verb that takes an input; this one takes none');
    return `${JSON.stringify(z.toJSONSchema(input, { io: 'input' }), null, 2)}\n`;
  }
  const verb = verbNamed(name);
  if (verb.input === undefined && file !== undefined)
    throw wrong('FILE', JSON.stringify(file), `nothing: ${name} takes no file`);
  if (verb.input !== undefined && file === undefined)
    throw wrong('FILE', 'nothing', 'a file of JSON, or - for standard input');
  const input = verb.input === undefined || file === undefined ? undefined : await inputFrom(file);
  const result = await verb.run(input, flags.includes('--progress') ? { onProgress: teller() } : {});
  return `${JSON.stringify(result)}\n`;
}

/** What was wrong with the input; null where the fault is ours. */
function problemsIn(error: unknown): readonly Problem[] | null {
  if (error instanceof InputProblems) return error.problems;
  if (error instanceof OutOfRange || error instanceof Contradiction)
    return [{ path: error.path, found: error.found, allowed: error.allowed }];
  return null;
}

const oneLine = (text: string) => text.replace(/\s*[\r\n]+\s*/g, ' ');

async function main(): Promise<void> {
  // A reader that stops early (head) is no fault.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') process.exitCode = 1;
  });
  try {
    process.stdout.write(await answer(process.argv.slice(2)));
  } catch (error) {
    const problems = problemsIn(error);
    if (problems !== null) {
      for (const { path, found, allowed } of problems)
        process.stderr.write(`${oneLine(`${path}: found ${found}, allowed ${allowed}`)}\n`);
      process.exitCode = 2;
      return;
    }
    process.stderr.write(`a fault of the program: ${error instanceof Error ? error.stack : String(error)}\n`);
    process.exitCode = 1;
  }
}

await main();
