/** The demo kitchen as records, with ids by counting and a fixed day: what the store would hand to the printer. */
import { demoKitchen } from '../../demo/kitchen.ts';
import type { DemoBatch, DemoDish, DemoMoment, DemoStep } from '../../src/app/demo-shape.ts';
import { runJudge } from '../../src/contract/judge.ts';
import { programmeOf } from '../../src/contract/method-cook.ts';
import { cureProblemOf } from '../../src/contract/method-cure.ts';
import { readProbeLog } from '../../src/contract/probe-log.ts';
import type {
  Batch,
  Dish,
  Judgement,
  LawStatus,
  ProbeLog,
  RecordedReading,
} from '../../src/contract/records.ts';
import { type Ask, Method, type Step } from '../../src/contract/steps.ts';
import { cook } from '../../src/core/heat/cook.ts';
import { foreseeCure } from '../../src/core/salt/foresee.ts';
import type { BatchRecordData } from '../../src/documents/batch-record.ts';
import type { MethodCardData } from '../../src/documents/method-card-data.ts';

let counted = 0;
/** A well-formed version 7 UUID with a running number in it. */
export const nextId = (): string => `01980000-0000-7000-8000-${String(++counted).padStart(12, '0')}`;

export function layMethod(steps: readonly DemoStep[]): Method {
  return Method.parse(
    steps.map((step) => ({
      ...step,
      id: nextId(),
      asks: step.asks.map((ask) => ({ ...ask, id: nextId() })),
    })),
  );
}

/** The day of laying is fixed, and in winter, so that the kitchen's clock is UTC. */
const midnight = Date.UTC(2026, 10, 25);
export const printedAt = '2026-11-25T10:30:00Z';

export const at = (moment: DemoMoment, min = 0): string => {
  const [hours = 0, minutes = 0] = moment.clock.split(':').map(Number);
  return new Date(
    midnight - moment.daysAgo * 86_400_000 + (hours * 60 + minutes + min) * 60_000,
  ).toISOString();
};

const law: LawStatus = {
  status: 'food on conditions',
  part: 'as the law names it',
  reason: 'A stand-in for the test: the law’s own rows are tested where they live.',
  citation: 'none',
  confidence: 'invented',
};

export const kitchen = { ...demoKitchen.kitchen, demo: true };

export const dishNamed = (name: string): DemoDish => {
  const dish = demoKitchen.dishes.find((d) => d.name === name);
  if (dish === undefined) throw new Error(`no demo dish ${name}`);
  return dish;
};

/** What is needed to print the card of any method. */
export function cardOf(
  dish: Pick<Dish, 'name' | 'species' | 'part' | 'story'>,
  method: Method,
  signedBy: string | null = 'Wren Aldous',
): MethodCardData {
  return {
    kitchen,
    printedAt,
    dish: { name: dish.name, species: dish.species, part: dish.part, story: dish.story, law },
    version: {
      number: 2,
      rev: 3,
      status: signedBy === null ? 'draft' : 'signed',
      reason: 'Chestnuts whole.',
      method,
      createdAt: '2026-11-04T15:20:00Z',
      createdBy: 'Wren Aldous',
      signedAt: signedBy === null ? null : '2026-11-05T09:45:00Z',
      signedBy,
    },
    cooks: method.flatMap((step) => {
      if (step.kind !== 'cook') return [];
      const { problem, cookStages } = programmeOf(method, step.id);
      return [{ stepId: step.id, problem, cookStages, result: cook(problem, { frames: { count: 8 } }) }];
    }),
    cures: method.flatMap((step) => {
      const cure = step.kind === 'cure' ? cureProblemOf(method, step) : null;
      return cure === null ? [] : [{ stepId: step.id, foreseen: foreseeCure(cure.problem) }];
    }),
  };
}

export function demoCard(name: string): MethodCardData {
  const dish = dishNamed(name);
  const version = dish.versions.at(-1);
  return cardOf(dish, layMethod(version?.method ?? []), version?.sign?.by ?? null);
}

const find = <T extends { name: string }>(steps: readonly T[], name: string): T => {
  const found = steps.find((s) => s.name === name);
  if (found === undefined) throw new Error(`no step ${name}`);
  return found;
};

function holdsOf(ask: Ask, value: number | null): RecordedReading['holds'] {
  if (value === null || (ask.low === undefined && ask.high === undefined)) return 'no limit';
  return value < (ask.low ?? -Infinity) || value > (ask.high ?? Infinity) ? 'out' : 'in';
}

function judged(points: readonly { s: number; C: number }[], rules: readonly string[]): Judgement[] {
  const verdicts = runJudge({ log: points.map((p) => ({ min: p.s / 60, C: p.C })), rules: [...rules] });
  return verdicts.map((v) => ({
    rule: v.rule,
    title: v.title,
    type: v.type,
    place: v.place,
    passes: v.passes,
    value: v.value,
    limit: v.limit,
    unit: v.unit,
    failedAtMin: v.failedAtMin,
    decidingMin: v.decidingMin,
    why: v.why,
    source: v.source,
  }));
}

function logsOf(batch: DemoBatch, method: Method, batchId: string): ProbeLog[] {
  return (batch.logs ?? []).map((log, i) => {
    const read = readProbeLog(log.text);
    const channel = read.channels.find((c) => c.name === log.channel);
    if (channel === undefined)
      throw new Error(`no channel ${log.channel}, only ${read.channels.map((c) => c.name).join(', ')}`);
    return {
      id: nextId(),
      batchId,
      trialId: null,
      dishId: null,
      stepId: find<Step>(method, log.step).id,
      name: log.name,
      channel: channel.name,
      points: channel.points.map(({ s, C }) => ({ s, C })),
      startedAt: null,
      warnings: read.warnings.map((w) => w.what),
      sha256: String(i).repeat(64),
      judgements: judged(channel.points, log.rules),
      importedAt: at(batch.at, log.min),
      importedBy: log.by,
    };
  });
}

export function recordOf(batch: DemoBatch): BatchRecordData {
  const dish = dishNamed(batch.dish);
  const method = layMethod(dish.versions.at(-1)?.method ?? []);
  const id = nextId();
  const ids = batch.readings.map(() => nextId());
  const readings = batch.readings.map((reading, i): RecordedReading => {
    const step = find<Step>(method, reading.step);
    const ask = step.asks.find((a) => a.label === reading.ask);
    if (ask === undefined || ask.kind === 'core log')
      throw new Error(`no ask ${reading.ask} in ${reading.step}`);
    return {
      id: ids[i]!,
      stepId: step.id,
      askId: ask.id,
      kind: ask.kind,
      value: reading.value,
      note: reading.note ?? '',
      at: at(batch.at, reading.min),
      corrects: reading.corrects === undefined ? null : ids[reading.corrects]!,
      by: reading.by,
      recordedAt: at(batch.at, reading.min),
      holds: holdsOf(ask, reading.value),
    };
  });
  const record: Batch = {
    id,
    code: 'ST-1118-1',
    dishId: nextId(),
    dishName: dish.name,
    versionId: nextId(),
    versionNumber: 2,
    pieces: batch.pieces,
    startedAt: at(batch.at),
    startedBy: batch.by,
    status: batch.close?.as ?? 'open',
    closedAt: batch.close === undefined ? null : at(batch.at, batch.close.min),
    closedBy: batch.close?.by ?? null,
    open: 0,
    out: readings.filter((r) => r.holds === 'out').length,
    method,
    draws: [],
    lots: batch.lots.map((code) => {
      const delivered = demoKitchen.animals.deliveries.flatMap((d) =>
        d.lines.map((line) => ({ ...line, supplier: d.supplier, at: d.at })),
      );
      const known = [...demoKitchen.lots, ...delivered];
      // What was cut of a lot goes by the lot's code and the part; on paper it comes from where the lot came from.
      const lot = known.find((l) => l.code === code) ?? known.find((l) => code.startsWith(`${l.code} `));
      if (lot === undefined) throw new Error(`no lot ${code}`);
      const { what, grams, arrivalC, note, supplier, at: arrived } = lot;
      return {
        ...{ id: nextId(), code, what, grams, arrivalC, note },
        ...{ supplierId: supplier, partId: null, arrivedAt: at(arrived) },
      };
    }),
    readings,
    decisions: (batch.decisions ?? []).map((d) => {
      const step = find<Step>(method, d.step);
      return {
        id: nextId(),
        stepId: step.id,
        askId: step.asks.find((a) => a.label === d.ask)?.id ?? null,
        what: d.what,
        reason: d.reason,
        at: at(batch.at, d.min),
        by: d.by,
      };
    }),
    logs: logsOf(batch, method, id),
    blocking: batch.close === undefined ? ['Steam: no core log yet'] : [],
    closingNote: batch.close?.note ?? null,
  };
  return {
    kitchen,
    printedAt,
    dish: { name: dish.name, species: dish.species, part: dish.part },
    batch: record,
    version: { number: 2, signedAt: '2026-11-05T09:45:00Z', signedBy: 'Wren Aldous' },
    suppliers: demoKitchen.suppliers.map((s) => ({ id: s.name, name: s.name })),
    journal: { seq: 412, at: '2026-11-25T10:29:40Z', hash: 'c0ffee'.repeat(10).padEnd(64, '0') },
  };
}
