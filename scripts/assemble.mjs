/**
 * Assembles every `NAME.wat` in the engine into `NAME.wat.ts`, the same module as bytes in hexadecimal, which is what runs. A test holds
 * the two together. Run it after a change of a `.wat` file: node scripts/assemble.mjs
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import wabt from 'wabt';
import { root } from './setup.mjs';

const { parseWat } = await wabt();

for (const file of readdirSync(join(root, 'src/core'), { recursive: true })) {
  if (!file.endsWith('.wat')) continue;
  const path = join(root, 'src/core', file);
  const module = parseWat(file, readFileSync(path, 'utf8'), { simd: true, bulk_memory: true });
  module.resolveNames();
  module.validate();
  const hex = Buffer.from(module.toBinary({ write_debug_names: false }).buffer).toString('hex');
  const lines = hex.match(/.{1,100}/g).map((line) => `  '${line}',`);
  writeFileSync(
    `${path}.ts`,
    `// Assembled from ${basename(file)} by scripts/assemble.mjs: change that, not this.\nexport default [\n${lines.join('\n')}\n].join('');\n`,
  );
  console.log(`src/core/${file}.ts`);
  module.destroy();
}
