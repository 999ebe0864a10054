/** One batch on screen: what the server has, with what this device has not sent yet laid over it, and how to add to it. */
import { useMemo } from 'react';
import { v7 as newId } from 'uuid';
import type { Batch, Decision, Reading } from '../../../contract/records.ts';
import type { Ask, Step } from '../../../contract/steps.ts';
import { queryClient, useOperation } from '../../api.ts';
import { useKitchen } from '../../kitchen.tsx';
import { whoSigns } from '../../person.ts';
import type { Outgoing } from './outbox.ts';
import { keepAndSend, useOutbox } from './outbox-driver.ts';
import { progressOf, recordsOf } from './progress.ts';

export interface Recording {
  readonly step: Step;
  readonly ask: Ask;
  readonly value: number | null;
  readonly note?: string;
  readonly corrects?: string;
}

export function useBatch(batchId: string) {
  const kitchen = useKitchen();
  const query = useOperation('batch', { params: { kitchenId: kitchen.id, batchId } });
  const outbox = useOutbox();
  const batch = query.data ?? null;
  const waiting = useMemo(
    () => outbox.entries.filter((e) => e.batchId === batchId),
    [outbox.entries, batchId],
  );
  const records = useMemo(() => (batch === null ? null : recordsOf(batch, waiting)), [batch, waiting]);
  const progress = useMemo(
    () => (batch === null || records === null ? [] : progressOf(batch.method, records)),
    [batch, records],
  );
  return { kitchen, query, batch, records, progress, waiting };
}

/** Ways to add to a batch. Each resolves when it is kept on this device; the server's word comes later and is shown. */
export function useRecorder(batch: Batch) {
  const kitchen = useKitchen();
  const people = useOperation('people', { params: { kitchenId: kitchen.id } });

  return useMemo(() => {
    const add = async (what: Outgoing): Promise<void> => {
      const personId = await whoSigns(kitchen.id);
      const personName = people.data?.find((p) => p.id === personId)?.name ?? 'the person at this device';
      keepAndSend({ kitchenId: kitchen.id, batchId: batch.id, personId, personName }, what);
    };
    const record = (r: Recording): Promise<void> => {
      const kind: Reading['kind'] = r.ask.kind === 'core log' ? 'temperature' : r.ask.kind;
      return add({
        kind: 'reading',
        reading: {
          id: newId(),
          stepId: r.step.id,
          askId: r.ask.id,
          kind,
          value: r.value,
          note: r.note ?? '',
          at: new Date().toISOString(),
          corrects: r.corrects ?? null,
        },
      });
    };
    const decide = (step: Step, ask: Ask, what: Decision['what'], reason: string): Promise<void> =>
      add({
        kind: 'decision',
        decision: { id: newId(), stepId: step.id, askId: ask.id, what, reason, at: new Date().toISOString() },
      });
    const keepLog = (step: Step, text: string, channel: string, rules: readonly string[]): Promise<void> =>
      add({
        kind: 'log',
        log: {
          id: newId(),
          dishId: batch.dishId,
          stepId: step.id,
          name: `${step.name}, batch ${batch.code}: typed at the line`,
          text,
          channel,
          rules,
        },
      });
    return { record, decide, keepLog, reread: () => queryClient.invalidateQueries({ queryKey: ['batch'] }) };
  }, [kitchen.id, batch.id, batch.dishId, batch.code, people.data]);
}
export type Recorder = ReturnType<typeof useRecorder>;
