/** The engine's inner loops are written in WebAssembly text and run from bytes kept beside it: the two are one. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, test } from 'vitest';
import wabt from 'wabt';

const core = resolve(import.meta.dirname, '../src/core');
const modules = readdirSync(core, { recursive: true, encoding: 'utf8' }).filter((file) =>
  file.endsWith('.wat'),
);
const { parseWat } = await wabt();

function assembled(text: string): string {
  const module = parseWat('module.wat', text, { simd: true, bulk_memory: true });
  try {
    module.resolveNames();
    module.validate();
    return Buffer.from(module.toBinary({ write_debug_names: false }).buffer).toString('hex');
  } finally {
    module.destroy();
  }
}

test('there are modules', () => {
  expect(modules.length).toBeGreaterThan(1);
});

test.each(modules)(
  '%s is what runs: its bytes are those kept (else: node scripts/assemble.mjs)',
  async (file) => {
    const path = join(core, file);
    const text = readFileSync(path, 'utf8');
    const kept = (await import(pathToFileURL(`${path}.ts`).href)) as { default: string };
    expect(assembled(text)).toBe(kept.default);
    expect(assembled(text.replace('f64x2.sub', 'f64x2.add'))).not.toBe(kept.default);
  },
);
