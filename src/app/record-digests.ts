/** Fingerprints of records, taken when they are written and taken again when the journal is checked. */
import type * as t from '../store/tables.ts';
import { digest } from './digest.ts';

type Told<Row> = Omit<Row, 'line'>;

/** `line` is the database's own counter, not part of what was recorded. */
function told<Row extends object>(row: Row): unknown {
  const { line: _, ...rest } = row as Row & { line?: number };
  return rest;
}

export const readingDigest = (row: Told<typeof t.reading.$inferSelect>): string => digest(told(row));
export const decisionDigest = (row: Told<typeof t.decision.$inferSelect>): string => digest(told(row));
export const probeLogDigest = (row: Told<typeof t.probeLog.$inferSelect>): string => digest(told(row));
export const machineFitDigest = (row: Told<typeof t.machineFit.$inferSelect>): string => digest(told(row));

export const deliveryDigest = (row: Told<typeof t.delivery.$inferSelect>): string => digest(told(row));
export const weighingDigest = (row: Told<typeof t.weighing.$inferSelect>): string => digest(told(row));
export const lotMoveDigest = (row: Told<typeof t.lotMove.$inferSelect>): string => digest(told(row));
export const breakdownDigest = (row: typeof t.breakdown.$inferSelect): string => digest(row);
export const specificationVersionDigest = (row: typeof t.specificationVersion.$inferSelect): string =>
  digest(row);
export const specificationAnswerDigest = (row: Told<typeof t.specificationAnswer.$inferSelect>): string =>
  digest(told(row));
export const authorityRequestDigest = (row: Told<typeof t.authorityRequest.$inferSelect>): string =>
  digest(told(row));
export const authorityAnswerDigest = (row: Told<typeof t.authorityAnswer.$inferSelect>): string =>
  digest(told(row));
export const ingredientChangeDigest = (row: Told<typeof t.ingredientChange.$inferSelect>): string =>
  digest(told(row));
export const ingredientPriceDigest = (row: Told<typeof t.ingredientPrice.$inferSelect>): string =>
  digest(told(row));
export const allergenLookedDigest = (row: Told<typeof t.allergenLooked.$inferSelect>): string =>
  digest(told(row));
export const declaredRiskDigest = (row: Told<typeof t.declaredRisk.$inferSelect>): string =>
  digest(told(row));
export const declaredRiskEndDigest = (row: Told<typeof t.declaredRiskEnd.$inferSelect>): string =>
  digest(told(row));
export const kitchenRatesDigest = (row: Told<typeof t.kitchenRates.$inferSelect>): string =>
  digest(told(row));
/** The bytes by their own fingerprint. */
export const photoDigest = ({ bytes: _, ...row }: typeof t.photo.$inferSelect): string => digest(row);

export const signatureDigest = (
  row: Pick<typeof t.version.$inferSelect, 'method' | 'evidence' | 'signedAt' | 'signedBy'>,
): string =>
  digest({ method: row.method, evidence: row.evidence, signedAt: row.signedAt, signedBy: row.signedBy });

type Batch = typeof t.batch.$inferSelect;

/** What a batch is made of. */
export const startDigest = (row: Batch, lotIds: readonly string[]): string => {
  const { id, kitchenId, versionId, code, pieces, startedAt, startedBy } = row;
  return digest({
    id,
    kitchenId,
    versionId,
    code,
    pieces,
    startedAt,
    startedBy,
    lotIds: [...lotIds].sort(),
  });
};

/** What became of it. */
export const closingDigest = (row: Batch): string => {
  const { id, status, closedAt, closedBy, closingNote } = row;
  return digest({ id, status, closedAt, closedBy, closingNote });
};
