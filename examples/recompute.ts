/** The numbers kept in `independent/` against what their scripts give now, where Python with scipy is on this machine. */
import { execFileSync, spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { independent, keptValues } from './kept.ts';

/** A script that marches in time by a library's solver may step otherwise in another version of it; the others may not. */
const tolerance = (script: string) => (script.includes('solve_ivp') ? 1e-4 : 1e-8);

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
      const text = readFileSync(join(independent, script), 'utf8');
      if (text.includes('glpsol') && spawnSync('glpsol', ['--version']).status !== 0) continue;
      const kept = keptValues(script.replace('.py', ''));
      const allowed = tolerance(text);
      const output = execFileSync('python3', ['-B', script], { cwd: independent, maxBuffer: 1e7 });
      const again = JSON.parse(output.toString()) as Record<string, number>;
      for (const id of new Set([...Object.keys(kept), ...Object.keys(again)])) {
        const [a = Number.NaN, b = Number.NaN] = [kept[id], again[id]];
        if (Math.abs(a - b) <= allowed * Math.max(1, Math.abs(a))) same++;
        else problems.push(`${script} ${id}: kept ${a}, now ${b}`);
      }
    } catch (error) {
      problems.push(`${script} did not run: ${error instanceof Error ? error.message : String(error)}`);
    }
  return { said: `${same} kept numbers computed again by ${scripts.length} scripts.`, same, problems };
}
