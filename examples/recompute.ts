/** The numbers kept in `independent/` against what their scripts give now, where Python with scipy is on this machine. */
import { execFileSync, spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { independent, keptValues } from './kept.ts';

/** Scripts that march in time by a library leave this much; the others agree to the last digits. */
const tolerance = 1e-7;

export function recompute(): { said: string; same: number; problems: string[] } {
  const scripts = readdirSync(independent).filter((name) => name.endsWith('.py'));
  if (spawnSync('python3', ['-c', 'import numpy, scipy']).status !== 0)
    return {
      said: 'The kept numbers were not computed again: python3 with numpy and scipy is not on this machine.',
      same: 0,
      problems: [],
    };
  const problems: string[] = [];
  let same = 0;
  for (const script of scripts)
    try {
      const kept = keptValues(script.replace('.py', ''));
      const output = execFileSync('python3', ['-B', script], { cwd: independent, maxBuffer: 1e7 });
      const again = JSON.parse(output.toString()) as Record<string, number>;
      for (const id of new Set([...Object.keys(kept), ...Object.keys(again)])) {
        const [a = Number.NaN, b = Number.NaN] = [kept[id], again[id]];
        if (Math.abs(a - b) <= tolerance * Math.max(1, Math.abs(a))) same++;
        else problems.push(`${script} ${id}: kept ${a}, now ${b}`);
      }
    } catch (error) {
      problems.push(`${script} did not run: ${error instanceof Error ? error.message : String(error)}`);
    }
  return { said: `${same} kept numbers computed again by ${scripts.length} scripts.`, same, problems };
}
