import type { Method } from '../../../../contract/steps.ts';

/** `[3].stages[0].mediumC` → "step 4, Steam: stages[0].mediumC". */
export function whereText(path: string, method: Method): string {
  const match = /^\[(\d+)\]\.?(.*)$/.exec(path);
  if (match === null) return path;
  const index = Number(match[1]);
  const name = method[index]?.name ?? '';
  return `step ${index + 1}${name === '' ? '' : `, ${name}`}${match[2] === '' ? '' : `: ${match[2]}`}`;
}
