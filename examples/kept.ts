/** Numbers worked out apart from the engine, by the scripts in `independent/`, kept beside them. */
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const independent = join(dirname(fileURLToPath(import.meta.url)), 'independent');

export function keptValues(script: string): Record<string, number> {
  return JSON.parse(readFileSync(join(independent, `${script}.json`), 'utf8')) as Record<string, number>;
}

/** The kept numbers of one script by name; an unknown name is an error, not a blank. */
export function kept(script: string): (id: string) => number {
  const values = keptValues(script);
  return (id) => {
    const value = values[id];
    if (value === undefined) throw new RangeError(`independent/${script}.json has no ${id}`);
    return value;
  };
}
