import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

const root = join(import.meta.dirname, '../..');

function fq(args: string[], input = '') {
  const run = spawnSync(process.execPath, ['--import', 'tsx', join(root, 'src/cli/fq.ts'), ...args], {
    cwd: root,
    input,
    encoding: 'utf8',
    maxBuffer: 1e8,
  });
  return { exit: run.status, out: run.stdout, err: run.stderr };
}

const held = {
  log: [
    { min: 0, C: 70 },
    { min: 2, C: 70 },
  ],
  rules: ['gb-70c-2min'],
};

describe('fq', () => {
  test('answers on standard output and nowhere else', () => {
    const { exit, out, err } = fq(['judge', '-'], JSON.stringify(held));
    expect([exit, err]).toEqual([0, '']);
    expect(JSON.parse(out)).toMatchObject([
      { rule: 'gb-70c-2min', passes: true, value: 2, limit: 2, unit: 'min' },
    ]);
  });
  test('cooks', () => {
    const input = {
      body: {
        shape: 'sphere',
        diameterMm: 60,
        layers: [{ name: 'meat', properties: { kWmK: 0.5, rhoKgM3: 1050, cpJkgK: 3500 } }],
      },
      startC: 5,
      stages: [{ name: 'bath', mediumC: 75, hWm2K: 500, until: { min: 60 } }],
      target: { referenceC: 70, zC: 7.5, min: 2 },
    };
    const { exit, out } = fq(['cook', '-', '--progress'], JSON.stringify(input));
    expect(exit).toBe(0);
    expect(JSON.parse(out).lethality.passes).toBe(true);
  });
  test('says every problem on a line of its own, with nothing on standard output and no stack', () => {
    const { exit, out, err } = fq(['judge', '-'], '{"log":[],"rules":["gb-70c-2min"],"gap":3}');
    expect([exit, out]).toEqual([2, '']);
    expect(
      err
        .trim()
        .split('\n')
        .map((line) => line.split(':')[0]),
    ).toEqual(['log', 'gap']);
    expect(err).not.toMatch(/\bat .*\.ts/);
  });
  test('names line, column and place of what is not JSON', () => {
    const { exit, err } = fq(['judge', '-'], '{"log":[\n{"min":0,"C":NaN}]}');
    expect([exit, err.split(': found')[0]]).toEqual([2, 'log[0].C (- line 2 column 14)']);
  });
  test('refuses an unknown verb and a missing file', () => {
    expect(fq(['jugde', '-'])).toMatchObject({
      exit: 2,
      out: '',
      err: expect.stringContaining('perhaps judge'),
    });
    expect(fq(['judge', '/nowhere.json'])).toMatchObject({
      exit: 2,
      err: expect.stringContaining('no such file'),
    });
  });
  test('publishes the schema it checks with', () => {
    const schema = JSON.parse(fq(['schema', 'judge']).out);
    expect(schema.required).toEqual(['log']);
    expect(schema.additionalProperties).toBe(false);
  });
});
