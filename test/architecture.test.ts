/** One direction of imports, read from the sources themselves: type imports, re-exports and dynamic imports count. */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';

const root = resolve(import.meta.dirname, '..');

const siblings = ['heat', 'microbes', 'salt', 'filling', 'carcass', 'planning', 'tasting'];
const ground = ['core/units', 'core/sources', 'core/errors'];

/** Which rooms each room may look into, besides itself. `packages` names what it may import from outside. */
const may: Record<string, { rooms: string[]; packages: 'none' | 'any' | string[] }> = {
  'core/units': { rooms: ['core/errors'], packages: 'none' },
  'core/sources': { rooms: ['core/errors'], packages: 'none' },
  'core/errors': { rooms: [], packages: 'none' },
  'core/numerics': { rooms: ground, packages: 'none' },
  'core/properties': { rooms: [...ground, 'core/numerics', 'core/heat/types'], packages: 'none' },
  'core/method': {
    rooms: [...ground, 'core/numerics', 'core/properties', ...siblings.map((s) => `core/${s}`)],
    packages: 'none',
  },
  contract: {
    rooms: ['core'],
    packages: ['zod', 'papaparse', 'temporal-polyfill', 'ml-levenberg-marquardt', 'lib-r-math.js', 'highs'],
  },
  documents: { rooms: ['core', 'contract'], packages: 'none' },
  store: { rooms: ['core/errors'], packages: 'any' },
  app: { rooms: ['core', 'contract', 'store'], packages: 'any' },
  server: { rooms: ['core', 'contract', 'documents', 'store', 'app', 'demo'], packages: 'any' },
  cli: { rooms: ['core', 'contract', 'documents', 'app'], packages: 'any' },
  web: { rooms: ['core', 'contract', 'documents'], packages: 'any' },
  demo: { rooms: ['core', 'contract', 'app'], packages: ['node:fs', 'node:url', 'node:path'] },
};
for (const s of siblings) {
  may[`core/${s}`] = { rooms: [...ground, 'core/numerics', 'core/properties'], packages: 'none' };
}

/** `src/core/heat/cook.ts` → `core/heat/cook`; `demo/kitchen.ts` → `demo/kitchen`. */
const address = (file: string) =>
  relative(root, file)
    .replace(/\\/g, '/')
    .replace(/^src\//, '')
    .replace(/\.(tsx?|css|json|csv)$/, '');

const roomOf = (addr: string) =>
  Object.keys(may)
    .filter((room) => addr === room || addr.startsWith(`${room}/`))
    .sort((a, b) => b.length - a.length)[0];

const sources = ['src', 'demo']
  .flatMap((top) =>
    readdirSync(join(root, top), { recursive: true, withFileTypes: true })
      .filter(
        (e) =>
          e.isFile() && /\.tsx?$/.test(e.name) && !/\.test\.tsx?$/.test(e.name) && !e.name.endsWith('.d.ts'),
      )
      .map((e) => join(e.parentPath, e.name)),
  )
  .sort();

const importsOf = (text: string) =>
  [
    ...text.matchAll(/(?:^|\n)\s*(?:import|export)\s[^'"`;]*?from\s*['"]([^'"]+)['"]/g),
    ...text.matchAll(/(?:^|\n)\s*import\s*['"]([^'"]+)['"]/g),
    ...text.matchAll(/\bimport\s*\(\s*['"]([^'"]+)['"]\s*\)/g),
    ...text.matchAll(/new URL\(\s*['"](\.[^'"]+\.tsx?)['"]/g),
  ].map((m) => m[1] as string);

interface Breach {
  file: string;
  imports: string;
}

function breaches(files: { file: string; text: string }[]): Breach[] {
  const found: Breach[] = [];
  for (const { file, text } of files) {
    const room = roomOf(address(file));
    for (const spec of importsOf(text)) {
      if (!room) {
        found.push({ file, imports: 'a file in no room' });
        continue;
      }
      const rule = may[room] as (typeof may)[string];
      if (!spec.startsWith('.')) {
        const ok = rule.packages === 'any' || (rule.packages !== 'none' && rule.packages.includes(spec));
        if (!ok) found.push({ file: address(file), imports: spec });
        continue;
      }
      const target = address(resolve(dirname(file), spec.split('?')[0] as string));
      const inside = (r: string) => target === r || target.startsWith(`${r}/`);
      if (!inside(room) && !rule.rooms.some(inside)) found.push({ file: address(file), imports: target });
    }
  }
  return found;
}

describe('the house', () => {
  test('reads the sources at all', () => {
    expect(sources.length).toBeGreaterThan(60);
    const imports = sources.flatMap((f) => importsOf(readFileSync(f, 'utf8')));
    expect(imports.length).toBeGreaterThan(200);
  });

  test('imports go one way', () => {
    expect(breaches(sources.map((file) => ({ file, text: readFileSync(file, 'utf8') })))).toEqual([]);
  });

  test('a planted breach is found', () => {
    const at = (p: string) => join(root, p);
    const planted = [
      { file: at('src/core/heat/x.ts'), text: "import type { Y } from '../microbes/y.ts';" },
      { file: at('src/core/heat/x.ts'), text: "import { readFileSync } from 'node:fs';" },
      { file: at('src/documents/x.ts'), text: "export { y } from '../web/y.ts';" },
      { file: at('src/web/x.ts'), text: "const y = await import('../app/dishes.ts');" },
    ];
    expect(breaches(planted)).toHaveLength(4);
  });

  test('the engine knows no clock, no chance, no machine', () => {
    const core = sources.filter((f) => address(f).startsWith('core/'));
    expect(core.length).toBeGreaterThan(15);
    const guilty = core.filter((f) =>
      /\b(Date\.now|new Date\(|Math\.random|process\.|performance\.|console\.|globalThis|fetch\()/.test(
        readFileSync(f, 'utf8').replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, ''),
      ),
    );
    expect(guilty.map(address)).toEqual([]);
  });

  test('one idea a file: none over 400 lines but tables of published figures and the bibliography', () => {
    const long = sources
      .filter((f) => !/core\/(properties\/|sources$)/.test(address(f)) && !address(f).startsWith('demo/'))
      .map((f) => ({ file: address(f), lines: readFileSync(f, 'utf8').split('\n').length }))
      .filter((f) => f.lines > 400);
    expect(long).toEqual([]);
  });
});
