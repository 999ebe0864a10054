/** The batch record: every reading with its limit, every log with its judgement, every decision, and who closed it. */
import type {
  Batch,
  Dish,
  JournalLine,
  ProbeLog,
  RecordedReading,
  Supplier,
  Version,
} from '../contract/records.ts';
import type { Ask, Step } from '../contract/steps.ts';
import { batchRecordSource } from './batch-record-source.ts';
import { deference, placeName } from './cautions.ts';
import { moment, momentAfter, number, temperature, weight, worth } from './format.ts';
import { logCurveScene } from './pictures/log-curve.ts';
import { toSvg } from './pictures/svg.ts';
import { limitText, valueText } from './steps-in-words.ts';
import type { PrintedFor, TypstDocument } from './typst.ts';

export interface BatchRecordData extends PrintedFor {
  readonly dish: Pick<Dish, 'name' | 'species' | 'part'>;
  readonly batch: Batch;
  /** The version the batch was made from. */
  readonly version: Pick<Version, 'number' | 'signedAt' | 'signedBy'>;
  /** Those of the batch's lots, at least. */
  readonly suppliers: readonly Pick<Supplier, 'id' | 'name'>[];
  /** The kitchen's newest journal line when printed: its hash binds every line before it. */
  readonly journal: Pick<JournalLine, 'seq' | 'at' | 'hash'> | null;
}

/** Chronological; lines are numbered in this order, so that a correction can name the line it corrects. */
function numbered(batch: Batch): Map<string, number> {
  const inOrder = [...batch.readings].sort(
    (a, b) => Date.parse(a.at) - Date.parse(b.at) || (a.id < b.id ? -1 : 1),
  );
  return new Map(inOrder.map((reading, i) => [reading.id, i + 1]));
}

interface Row {
  readonly line: string;
  readonly what: string;
  readonly value: string;
  readonly limit: string;
  /** in, out, none, missing. */
  readonly holds: 'in' | 'out' | 'none' | 'missing';
  readonly by: string;
  readonly note: string;
  readonly struck: boolean;
}

function readingRow(
  reading: RecordedReading,
  ask: Ask | undefined,
  data: BatchRecordData,
  lines: Map<string, number>,
): Row {
  const { units, zone } = data.kitchen;
  const { batch } = data;
  const correctedBy = batch.readings.find((r) => r.corrects === reading.id);
  const lateMin = (Date.parse(reading.recordedAt) - Date.parse(reading.at)) / 60_000;
  const notes = [
    ...(reading.corrects === null ? [] : [`Corrects line ${lines.get(reading.corrects) ?? '?'}.`]),
    ...(correctedBy === undefined ? [] : [`Corrected by line ${lines.get(correctedBy.id) ?? '?'}.`]),
    ...(reading.note === '' ? [] : [reading.note]),
    ...(lateMin > 15 ? [`Written down ${moment(reading.recordedAt, zone)}.`] : []),
  ];
  return {
    line: String(lines.get(reading.id) ?? '?'),
    what: ask?.label ?? 'Not asked by the method',
    value: reading.kind === 'note' ? '' : valueText(reading.kind, reading.value, units),
    limit: ask === undefined ? '' : limitText(ask, units),
    holds: reading.holds === 'no limit' ? 'none' : reading.holds,
    by: `${reading.by}, ${momentAfter(reading.at, batch.startedAt, zone)}`,
    note: notes.join(' '),
    struck: correctedBy !== undefined,
  };
}

function missingRow(ask: Ask, data: BatchRecordData): Row {
  return {
    line: '',
    what: ask.label,
    value: 'not recorded',
    limit: limitText(ask, data.kitchen.units),
    holds: 'missing',
    by: '',
    note: ask.critical === true ? 'A critical limit: without it nothing is shown.' : '',
    struck: false,
  };
}

function logRow(ask: Ask, log: ProbeLog): Row {
  const judged = log.judgements.length > 0 && log.judgements.every((j) => j.passes === true);
  const failed = log.judgements.some((j) => j.passes === false);
  return {
    line: '',
    what: ask.label,
    value: `log: ${log.name}`,
    limit: 'its rules, below',
    holds: judged ? 'in' : failed ? 'out' : 'missing',
    by: log.importedBy,
    note: judged || failed ? '' : 'Not decided by this log.',
    struck: false,
  };
}

function stepRows(step: Step, data: BatchRecordData, lines: Map<string, number>): Row[] {
  const { batch } = data;
  const rows: Row[] = [];
  for (const ask of step.asks) {
    const readings = batch.readings
      .filter((r) => r.stepId === step.id && r.askId === ask.id)
      .sort((a, b) => lines.get(a.id)! - lines.get(b.id)!);
    rows.push(...readings.map((r) => readingRow(r, ask, data, lines)));
    const logs = ask.kind === 'core log' ? batch.logs.filter((l) => l.stepId === step.id) : [];
    rows.push(...logs.map((log) => logRow(ask, log)));
    if (readings.length + logs.length === 0) rows.push(missingRow(ask, data));
  }
  const asked = new Set(step.asks.map((a) => a.id));
  for (const reading of batch.readings)
    if (reading.stepId === step.id && !asked.has(reading.askId))
      rows.push(readingRow(reading, undefined, data, lines));
  return rows;
}

function logOf(log: ProbeLog, data: BatchRecordData) {
  const { zone, units } = data.kitchen;
  const scene = logCurveScene(log, { width: 720, height: 190, units });
  const shown = (v: number | null, unit: string, decimals: number) => {
    if (v === null) return '';
    return unit === '°C' ? temperature(v, units, decimals) : `${number(v, decimals)} ${unit}`;
  };
  /** What does not hold is never rounded onto its limit. */
  const found = (j: ProbeLog['judgements'][number]) => {
    // A time far beyond the one asked is no precise figure.
    if (
      j.passes === true &&
      j.unit === 'min' &&
      j.value !== null &&
      j.limit !== null &&
      j.value > 100 &&
      j.value > j.limit
    )
      return worth(j.value, j.limit);
    const far = [2, 3, 4, 6, 9].find(
      (n) => j.passes === true || shown(j.value, j.unit, n) !== shown(j.limit, j.unit, n),
    );
    return shown(j.value, j.unit, far ?? 2);
  };
  return {
    name: log.name,
    step: data.batch.method.find((s) => s.id === log.stepId)?.name ?? '',
    about: `${log.channel}; ${log.points.length} readings${log.startedAt === null ? ', the file gives no date' : `, from ${moment(log.startedAt, zone)}`}; kept by ${log.importedBy}, ${moment(log.importedAt, zone)}`,
    sha256: log.sha256,
    warnings: log.warnings,
    picture: { svg: toSvg(scene), alt: scene.title },
    judgements: log.judgements.map((j) => ({
      title: j.title,
      kind: `${j.place}; ${j.type}`,
      word: j.passes === true ? 'holds' : j.passes === false ? 'does not hold' : 'undecided',
      holds: j.passes === true,
      value: found(j),
      limit: shown(j.limit, j.unit, 2),
      at: j.decidingMin === null ? '' : `decided at ${number(j.decidingMin, 1)} min`,
      why: j.why,
      source: j.source,
    })),
  };
}

/** Readings and logs that stand out of their limit. */
const outOf = (batch: Batch): number =>
  batch.out + batch.logs.filter((log) => log.judgements.some((j) => j.passes === false)).length;

function statusOf(batch: Batch, zone: string) {
  const by =
    batch.closedBy === null || batch.closedAt === null
      ? ''
      : ` by ${batch.closedBy}, ${moment(batch.closedAt, zone)}`;
  switch (batch.status) {
    case 'closed': {
      const out = outOf(batch);
      return out === 0
        ? { word: `Closed as fit to serve${by}`, stamp: '', good: true }
        : {
            word: `▲ Closed as fit to serve${by}, with ${out} out of limit and decided on: see below`,
            stamp: '',
            good: false,
          };
    }
    case 'discarded':
      return { word: `Discarded${by}`, stamp: 'DISCARDED', good: false };
    default:
      return { word: 'Open: not yet a record of anything fit to serve', stamp: 'OPEN', good: false };
  }
}

const cautions = [
  'The readings are what somebody wrote down or a probe logged; this page cannot know whether the probe was at the coldest point or read true.',
  'A limit that holds is evidence for one hazard at one place, not a promise that the food is safe.',
];

export function batchRecord(data: BatchRecordData): TypstDocument {
  const { batch, kitchen, dish, version } = data;
  const { units, zone } = kitchen;
  const lines = numbered(batch);
  const body = {
    title: `Batch ${batch.code}: ${dish.name}`,
    author: kitchen.name,
    kitchen: kitchen.name,
    place: placeName(kitchen.place),
    code: batch.code,
    dish: dish.name,
    what: `${dish.part}, ${dish.species}`,
    made: `${batch.pieces} ${batch.pieces === 1 ? 'piece' : 'pieces'} from version ${version.number}${version.signedBy === null || version.signedAt === null ? '' : `, signed by ${version.signedBy}, ${moment(version.signedAt, zone)}`}`,
    started: `Begun by ${batch.startedBy}, ${moment(batch.startedAt, zone)}`,
    status: statusOf(batch, zone),
    blocking: batch.status === 'open' ? batch.blocking : [],
    lots: batch.lots.map((lot) => [
      lot.code,
      lot.what,
      data.suppliers.find((s) => s.id === lot.supplierId)?.name ?? 'not stated',
      weight(lot.grams, units),
      moment(lot.arrivedAt, zone),
      lot.arrivalC === null ? 'not taken' : temperature(lot.arrivalC, units, 2),
      lot.note,
    ]),
    steps: batch.method.map((step, i) => ({
      n: String(i + 1),
      name: step.name,
      rows: stepRows(step, data, lines),
    })),
    logs: batch.logs.map((log) => logOf(log, data)),
    decisions: batch.decisions.map((d) => {
      const step = batch.method.find((s) => s.id === d.stepId);
      const ask = step?.asks.find((a) => a.id === d.askId);
      return [moment(d.at, zone), step?.name ?? '', ask?.label ?? '', d.what, d.reason, d.by];
    }),
    closingNote: batch.closingNote ?? '',
    journal:
      data.journal === null
        ? { before: 'No journal line given: this page is bound to nothing.', hash: '', after: '' }
        : {
            before: `Journal line ${data.journal.seq} of ${moment(data.journal.at, zone)}, hash`,
            hash: data.journal.hash,
            after: '. Whoever has the journal can check that nothing before it was changed.',
          },
    cautions,
    deference: deference(kitchen.place),
    demo: kitchen.demo,
    printed: `Printed ${moment(data.printedAt, zone)}; times on the kitchen’s clock, ${zone}`,
  };
  return { name: 'batch-record', source: batchRecordSource, inputs: { data: JSON.stringify(body) } };
}
