/**
 * Documents to PDF bytes. The typesetter reads nothing but what it is handed: its workspace is an empty folder of its own
 * and its fonts are the ones in the package, so the same input gives the same bytes on every machine.
 */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';
import { type AuthorityRequestData, authorityRequest } from '../documents/authority-request.ts';
import { type BatchRecordData, batchRecord } from '../documents/batch-record.ts';
import { methodCard } from '../documents/method-card.ts';
import type { MethodCardData } from '../documents/method-card-data.ts';
import { fits } from '../documents/method-card-fit.ts';
import { type SpecificationSheetData, specificationSheet } from '../documents/specification-sheet.ts';
import { type SheetFit, sheetFits } from '../documents/specification-sheet-fit.ts';
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

/** The ways go from roomiest to tightest, so the first that comes to one page is found by halving. */
function firstOnOnePage(ways: readonly (() => Typeset)[]): Typeset | undefined {
  let low = 0;
  let high = ways.length - 1;
  let best: Typeset | undefined;
  while (low <= high) {
    const middle = (low + high) >> 1;
    const page = ways[middle]!();
    if (page.pages === 1) {
      best = page;
      high = middle - 1;
    } else low = middle + 1;
  }
  return best;
}

/** Exactly one A4 page, set as large as it can be: the first of the ways to set it that comes to one page. */
export async function methodCardPdf(data: MethodCardData): Promise<Uint8Array> {
  const best = firstOnOnePage(fits.map((fit) => () => typeset(methodCard(data, fit))));
  if (best !== undefined) return best.pdf();
  throw new DoesNotFit(
    `The method card of ${data.dish.name} does not fit one page with everything left off that may be: its ${data.version.method.length} steps hold more limits and weights than a page holds. Shorten the names of limits or split the dish.`,
  );
}

/** As many pages as the batch has records for. */
export async function batchRecordPdf(data: BatchRecordData): Promise<Uint8Array> {
  return typeset(batchRecord(data)).pdf();
}

/** One A4 page for the supplier, set as large as it can be. */
export async function specificationSheetPdf(data: SpecificationSheetData): Promise<Uint8Array> {
  const setIn = (fit: SheetFit) => {
    // What the law asks has a column of its own where that costs no page.
    const beside = typeset(specificationSheet(data, fit, true));
    return beside.pages === 1 ? beside : typeset(specificationSheet(data, fit));
  };
  const best = firstOnOnePage(sheetFits.map((fit) => () => setIn(fit)));
  if (best !== undefined) return best.pdf();
  throw new DoesNotFit(
    `The specification ${data.specification.name}, version ${data.version.number}, does not fit one page even in the smallest type: shorten its note, what stands on labels and papers, or what is refused.`,
  );
}

/** As many pages as the question needs. */
export async function authorityRequestPdf(data: AuthorityRequestData): Promise<Uint8Array> {
  return typeset(authorityRequest(data)).pdf();
}
