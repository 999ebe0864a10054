/** One text for one record, whatever order its keys came in, and its fingerprint. */
import { createHash } from 'node:crypto';

/** JSON with sorted keys and no spaces; dates as UTC instants. */
export function canonical(value: unknown): string {
  return JSON.stringify(sorted(JSON.parse(JSON.stringify(value ?? null)) as unknown));
}

function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (value === null || typeof value !== 'object') return value;
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(entries.map(([key, inner]) => [key, sorted(inner)]));
}

export const sha256 = (text: string): string => createHash('sha256').update(text).digest('hex');

export const digest = (value: unknown): string => sha256(canonical(value));
