import { describe, expect, test } from 'vitest';
import type { Scene } from './scene.ts';
import { escapeXml, palettes, toSvg } from './svg.ts';

const scene: Scene = {
  width: 100,
  height: 50,
  title: 'A <piece> & its "skin"',
  marks: [
    {
      kind: 'polygon',
      points: [
        [0, 0],
        [10, 0],
        [10, 10.004],
      ],
      fill: { ramp: 1 },
      stroke: { ink: 'ink', width: 0.5, dash: [2, 1] },
    },
    {
      kind: 'polygon',
      points: [
        [0, 0],
        [5, 5],
        [0, 5],
      ],
      fill: 'rust',
      hatch: true,
    },
    {
      kind: 'polyline',
      points: [
        [1, 2],
        [3, 4],
      ],
      stroke: { ink: 'herb', width: 1 },
    },
    { kind: 'circle', x: 5, y: 5, r: 2, stroke: { ink: 'oxblood', width: 1 } },
    {
      kind: 'text',
      x: 1,
      y: 2,
      text: '</text><script>x</script>',
      size: 12,
      ink: 'faded',
      family: 'serif',
      weight: 'strong',
    },
  ],
};

describe('toSvg', () => {
  test('draws every mark in the colours of the palette it is given', () => {
    const day = toSvg(scene, palettes.day);
    expect(day.match(/<(polygon|polyline|circle|text)\b/g)).toHaveLength(5);
    expect(day).toContain(`stroke="${palettes.day.herb}"`);
    expect(toSvg(scene, palettes.night)).toContain(`stroke="${palettes.night.herb}"`);
    expect(day).toContain('font-family="Literata"');
    expect(day).toContain('stroke-dasharray="2 1"');
    expect(day).toContain('10,10"');
  });

  test('a hatch names a pattern that is defined', () => {
    const svg = toSvg(scene);
    const used = /fill="url\(#([^)]+)\)"/.exec(svg)![1];
    expect(svg).toContain(`<pattern id="${used}"`);
  });

  test('text never becomes markup', () => {
    const svg = toSvg(scene);
    expect(svg).not.toContain('<script>');
    expect(svg).toContain('&lt;/text&gt;&lt;script&gt;');
    expect(svg).toContain('<title>A &lt;piece&gt; &amp; its &quot;skin&quot;</title>');
    expect(escapeXml('a\u0000b\u001fc')).toBe('abc');
  });

  test('a coordinate that is no number is refused, not drawn', () => {
    expect(() => toSvg({ ...scene, marks: [{ kind: 'circle', x: Number.NaN, y: 0, r: 1 }] })).toThrow(
      /coordinate NaN/,
    );
  });
});
