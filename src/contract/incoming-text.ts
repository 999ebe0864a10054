/** JSON out of a text that somebody has pasted or opened: plain, or the JSON-LD blocks of a saved web page. Nothing of it is run. */
import { InputProblems, type Problem } from './problem.ts';
import { refuse } from './refuse.ts';

/** Longest text that is read [characters], and how deep its lists and objects may lie in one another. */
export const longestText = 1_000_000;
export const deepestValue = 60;

const children = (value: unknown): unknown[] =>
  typeof value === 'object' && value !== null ? Object.values(value) : [];

/** Level by level, so that a hostile depth cannot exhaust the stack. */
function tooDeep(value: unknown): boolean {
  let level = [value];
  for (let depth = 0; level.length > 0; depth++) {
    if (depth > deepestValue) return true;
    level = level.flatMap(children);
  }
  return false;
}

/** Whether a text in it cannot be kept: a null character, or half of a pair. */
export function unkeepable(value: unknown): boolean {
  for (let level = [value]; level.length > 0; level = level.flatMap(children))
    if (level.some((v) => typeof v === 'string' && (v.includes('\0') || /\p{Cs}/u.test(v)))) return true;
  return false;
}

function parsed(text: string, path: string): unknown {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (error) {
    refuse(path, `what is not JSON (${error instanceof Error ? error.message : 'unreadable'})`, 'whole JSON');
  }
  if (tooDeep(value))
    refuse(path, `lists within lists more than ${deepestValue} deep`, `at most ${deepestValue} deep`);
  return value;
}

/** What stands between the tags of the JSON-LD blocks of a page, in their order. */
function blocksOf(page: string): string[] {
  const found: string[] = [];
  const open = /<script\b([^>]{0,1000})>/gi;
  const close = /<\/script/gi;
  for (let tag = open.exec(page); tag !== null; tag = open.exec(page)) {
    close.lastIndex = open.lastIndex;
    const end = close.exec(page);
    if (end === null) break;
    if (/application\/ld\+json/i.test(tag[1]!)) found.push(page.slice(open.lastIndex, end.index));
    open.lastIndex = end.index;
  }
  return found;
}

/** Every JSON value of the text. Of a page, a block that cannot be read is left out as long as another can. */
export function valuesIn(text: string): unknown[] {
  if (text.length > longestText)
    refuse('text', `${text.length} characters`, `at most ${longestText} characters`);
  const bare = text.replace(/^\uFEFF/, '').trim();
  if (bare === '') refuse('text', 'nothing', 'a dish as JSON, or a page with a recipe in it');
  if (bare.startsWith('{') || bare.startsWith('[')) return [parsed(bare, 'text')];
  const blocks = blocksOf(bare);
  if (blocks.length === 0)
    refuse(
      'text',
      'neither JSON nor a page with a JSON-LD block',
      'a dish file, a recipe as JSON-LD, or a saved page that holds one',
    );
  const values: unknown[] = [];
  const problems: Problem[] = [];
  for (const [i, block] of blocks.entries())
    try {
      values.push(parsed(block, `text, JSON-LD block ${i + 1}`));
    } catch (error) {
      if (!(error instanceof InputProblems)) throw error;
      problems.push(...error.problems);
    }
  if (values.length === 0) throw new InputProblems(problems);
  return values;
}
