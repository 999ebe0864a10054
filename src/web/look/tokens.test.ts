import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { palettes } from '../../documents/pictures/svg.ts';

const css = readFileSync(new URL('./tokens.css', import.meta.url), 'utf8');

function palette(block: string): Record<string, string> {
  return Object.fromEntries([...block.matchAll(/--(\w+):\s*(#[0-9a-f]{6})/g)].map((m) => [m[1], m[2]]));
}
const blocks = [...css.matchAll(/:root[^{]*\{([^}]*)\}/g)].map((m) => palette(m[1] ?? ''));
const [day, device, night] = blocks as [
  Record<string, string>,
  Record<string, string>,
  Record<string, string>,
];

/** Relative luminance and contrast ratio as WCAG 2.2 defines them. */
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5].map((i) => {
    const v = Number.parseInt(hex.slice(i, i + 2), 16) / 255;
    return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
function contrast(a: string, b: string): number {
  const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
  return (high + 0.05) / (low + 0.05);
}

describe('tokens', () => {
  it('measures contrast rightly', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
  });
  it.each([
    ['day', day],
    ['night', night],
  ])('%s: every text colour has 4.5 : 1 on paper and on bone', (_, tokens) => {
    for (const ink of ['ink', 'faded', 'oxblood', 'herb', 'ember', 'rust', 'slate'])
      for (const ground of ['paper', 'bone']) {
        const ratio = contrast(tokens[ink]!, tokens[ground]!);
        expect(ratio, `${ink} on ${ground}: ${ratio.toFixed(2)}`).toBeGreaterThanOrEqual(4.5);
      }
  });
  it('shows the same night whether the device or the person asked for it', () => {
    expect(device).toEqual(night);
  });
  it('draws on paper with the colours of the screen', () => {
    expect(palettes.day).toEqual(day);
    expect(palettes.night).toEqual(night);
  });
});
