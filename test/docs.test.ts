/**
 * The engine's documentation, read and run: every exported function of core says what it gives with the unit in
 * brackets, names a source of the bibliography, and its examples are true.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { sources } from '../src/core/sources.ts';

const core = resolve(import.meta.dirname, '../src/core');
const rooms = [
  'units.ts',
  'properties',
  'heat',
  'microbes',
  'salt',
  'filling',
  'carcass',
  'planning',
  'tasting',
  'method',
];

const files = readdirSync(core, { recursive: true, withFileTypes: true })
  .filter((e) => e.isFile() && e.name.endsWith('.ts') && !e.name.endsWith('.test.ts'))
  .map((e) => join(e.parentPath, e.name))
  .filter((f) => rooms.some((r) => relative(core, f) === r || relative(core, f).startsWith(`${r}/`)))
  .sort();

interface Documented {
  file: string;
  name: string;
  doc: string;
}

const functions: Documented[] = files.flatMap((file) => {
  const text = readFileSync(file, 'utf8');
  return [...text.matchAll(/(\/\*\*(?:(?!\*\/)[\s\S])*\*\/\s*)?export (?:async )?function\*? (\w+)/g)].map(
    (m) => ({
      file: relative(core, file),
      name: m[2] as string,
      doc: (m[1] ?? '')
        .split('\n')
        .map((l) => l.replace(/^\s*(\/\*\*|\*\/|\*)\s?/, '').replace(/\*\/\s*$/, ''))
        .join('\n')
        .trim(),
    }),
  );
});

/** `@example expression // → 0.2154` (also `≈`, `=`): expression, expected, and the tolerance its last digit implies. */
const examplesOf = (f: Documented) =>
  [
    ...f.doc.matchAll(
      /@example\s+([\s\S]+?)\s*\/\/\s*(?:→|≈|=|=>)\s*(-?\d[\d.]*(?:e-?\d+)?|true|false|null|'[^']*')/g,
    ),
  ].map((m) => {
    const wanted = m[2] as string;
    const decimals = /\.(\d+)/.exec(wanted)?.[1]?.length ?? 0;
    const exponent = Number(/e(-?\d+)/.exec(wanted)?.[1] ?? 0);
    return { expression: (m[1] as string).trim(), wanted, tolerance: 0.500001 * 10 ** (exponent - decimals) };
  });

describe('core documents itself', () => {
  test('there is something to read', () => {
    expect(files.length).toBeGreaterThan(15);
    expect(functions.length).toBeGreaterThan(30);
    expect(functions.flatMap(examplesOf).length).toBeGreaterThan(15);
    expect(Object.keys(sources).length).toBeGreaterThan(15);
  });

  test.each(functions.map((f) => [`${f.file} ${f.name}`, f] as const))('%s', (_, f) => {
    expect(f.doc, 'has a docstring').not.toBe('');
    expect(
      /\[[^\]]+\]/.test(f.doc),
      'gives the unit of its result in brackets, [-] where there is none',
    ).toBe(true);
    const keys = [...f.doc.matchAll(/[Ss]ource:\s*([a-z0-9-]+)/g)].map((m) => m[1] as string);
    for (const key of keys)
      expect(Object.hasOwn(sources, key), `source ${key} is in the bibliography`).toBe(true);
  });

  const cases = functions.flatMap((f) =>
    examplesOf(f).map((e) => [`${f.name}: ${e.expression}`, f, e] as const),
  );
  test.each(cases)('example of %s', async (_, f, e) => {
    const room = (await import(join(core, f.file))) as Record<string, unknown>;
    const names = Object.keys(room);
    const value = new Function(...names, `return (${e.expression});`)(
      ...names.map((n) => room[n]),
    ) as unknown;
    if (/^-?\d/.test(e.wanted))
      expect(Math.abs((value as number) - Number(e.wanted))).toBeLessThanOrEqual(e.tolerance);
    else expect(String(value)).toBe(e.wanted.replaceAll("'", ''));
  });

  test('every entry of the bibliography is cited somewhere', () => {
    const root = resolve(core, '../..');
    const texts = ['src', 'examples', 'demo', 'test']
      .flatMap((top) => readdirSync(join(root, top), { recursive: true, withFileTypes: true }))
      .filter((e) => e.isFile() && /\.tsx?$/.test(e.name))
      .map((e) => join(e.parentPath, e.name))
      .filter((f) => relative(core, f) !== 'sources.ts')
      .map((f) => readFileSync(f, 'utf8'))
      .join('\n');
    expect(Object.keys(sources).filter((key) => !texts.includes(key))).toEqual([]);
  });

  test('every citation is complete', () => {
    for (const [key, s] of Object.entries(sources)) {
      expect(key).toMatch(/^[a-z0-9-]+$/);
      expect(s.citation.length, key).toBeGreaterThan(10);
    }
  });
});
