/** The text and the page count of a PDF, read back by an independent program. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const folder = mkdtempSync(join(tmpdir(), 'fifth-quarter-read-pdf-'));

function poppler(program: string, args: string[]): string {
  const run = spawnSync(program, args, { encoding: 'utf8' });
  if (run.error !== undefined)
    throw new Error(
      `${program} is needed to read the printed pages back; install it (apt-get install poppler-utils)`,
    );
  if (run.status !== 0) throw new Error(`${program}: ${run.stderr}`);
  return run.stdout;
}

export interface ReadPdf {
  readonly pages: number;
  /** Text of each page in the order it was set, runs of white space as one space. */
  readonly texts: readonly string[];
  readonly text: string;
  /** Width and height of the first page [mm]. */
  readonly size: readonly [number, number];
  readonly fonts: readonly string[];
}

export function readPdf(bytes: Uint8Array): ReadPdf {
  const file = join(folder, 'page.pdf');
  writeFileSync(file, bytes);
  const info = poppler('pdfinfo', [file]);
  const size = /Page size:\s+([\d.]+) x ([\d.]+)/.exec(info);
  const texts = poppler('pdftotext', ['-raw', file, '-'])
    .split('\f')
    .slice(0, -1)
    .map((page) => page.replace(/\s+/g, ' '));
  const fonts = poppler('pdffonts', [file])
    .split('\n')
    .slice(2)
    .filter((line) => line !== '')
    .map((line) => line.split(/\s+/)[0]!);
  return {
    pages: Number(/Pages:\s+(\d+)/.exec(info)?.[1]),
    texts,
    text: texts.join(' '),
    size: [Number(size?.[1]) * (25.4 / 72), Number(size?.[2]) * (25.4 / 72)],
    fonts,
  };
}
