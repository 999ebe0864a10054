/**
 * Documents to PDF bytes. The typesetter reads nothing but what it is handed: its workspace is an empty folder of its own
 * and its fonts are the ones in the package, so the same input gives the same bytes on every machine.
 */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';
import { type BatchRecordData, batchRecord } from '../documents/batch-record.ts';
import { methodCard } from '../documents/method-card.ts';
import type { MethodCardData } from '../documents/method-card-data.ts';
import { fits } from '../documents/method-card-fit.ts';
import type { TypstDocument } from '../documents/typst.ts';

/** The document was refused by the typesetter: a fault of the program, with the typesetter's own words. */
export class TypesetFault extends Error {
  override readonly name = 'TypesetFault';
}

/** The content cannot be set on the page it must stand on, whatever is left off. */
export class DoesNotFit extends Error {
  override readonly name = 'DoesNotFit';
}

const fontFiles = {
  '@expo-google-fonts/source-sans-3': [
    '400Regular/SourceSans3_400Regular.ttf',
    '400Regular_Italic/SourceSans3_400Regular_Italic.ttf',
    '600SemiBold/SourceSans3_600SemiBold.ttf',
  ],
  '@expo-google-fonts/literata': [
    '400Regular/Literata_400Regular.ttf',
    '600SemiBold/Literata_600SemiBold.ttf',
  ],
};

function fonts(): Buffer[] {
  const require = createRequire(import.meta.url);
  return Object.entries(fontFiles).flatMap(([name, files]) => {
    const folder = dirname(require.resolve(`${name}/package.json`));
    return files.map((file) => readFileSync(join(folder, file)));
  });
}

let compiler: NodeCompiler | undefined;

function typesetter(): NodeCompiler {
  if (compiler === undefined) {
    const workspace = mkdtempSync(join(tmpdir(), 'fifth-quarter-typeset-'));
    process.once('exit', () => rmSync(workspace, { recursive: true, force: true }));
    compiler = NodeCompiler.create({ workspace, fontArgs: [{ fontBlobs: fonts() }] });
  }
  return compiler;
}

export interface Typeset {
  readonly pages: number;
  /** The PDF; made only when asked for, so that a page can be counted without being drawn. */
  readonly pdf: () => Uint8Array;
}

/** Lays a document out. */
export function typeset(document: TypstDocument): Typeset {
  const worker = typesetter();
  const laid = worker.compile({ mainFileContent: document.source, inputs: document.inputs });
  const { result } = laid;
  if (result === null)
    throw new TypesetFault(
      `${document.name}: ${JSON.stringify(laid.takeError()?.shortDiagnostics ?? 'no reason given')}`,
    );
  return {
    pages: result.numOfPages,
    pdf: () => {
      const bytes = new Uint8Array(worker.pdf(result, { creationTimestamp: 0 }));
      worker.evictCache(8);
      return bytes;
    },
  };
}

/** Exactly one A4 page, set as large as it can be: the first of the ways to set it that comes to one page. */
export async function methodCardPdf(data: MethodCardData): Promise<Uint8Array> {
  const setAt = (i: number) => typeset(methodCard(data, fits[i]!));
  // The ways go from roomiest to tightest, so the first that fits is found by halving.
  let low = 0;
  let high = fits.length - 1;
  let best: Typeset | undefined;
  while (low <= high) {
    const middle = (low + high) >> 1;
    const card = setAt(middle);
    if (card.pages === 1) {
      best = card;
      high = middle - 1;
    } else low = middle + 1;
  }
  if (best !== undefined) return best.pdf();
  throw new DoesNotFit(
    `The method card of ${data.dish.name} does not fit one page with everything left off that may be: its ${data.version.method.length} steps hold more limits and weights than a page holds. Shorten the names of limits or split the dish.`,
  );
}

/** As many pages as the batch has records for. */
export async function batchRecordPdf(data: BatchRecordData): Promise<Uint8Array> {
  return typeset(batchRecord(data)).pdf();
}
