/** Keeps what a log said for one of the kitchen's machines: chosen, or named here. */
import { useState } from 'react';
import { v7 as uuid } from 'uuid';
import type { FitInput, FittedValue } from '../../../../contract/fit.ts';
import { call, queryClient, useOperation } from '../../../api.ts';
import { Button } from '../../../parts/button.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { TextField } from '../../../parts/field.tsx';
import { say } from '../../../parts/toast.tsx';

export interface KeepFitProps {
  readonly kitchenId: string;
  readonly logId: string;
  readonly fromMin: number;
  readonly stage: number;
  readonly stageName: string;
  /** Kind of medium of that stage. */
  readonly medium: string;
  readonly order: Omit<FitInput, 'log'>;
  readonly value: FittedValue;
}

const fresh = 'new';

export function KeepFit({ kitchenId, logId, fromMin, stage, stageName, medium, order, value }: KeepFitProps) {
  const machines = useOperation('machines', { params: { kitchenId } });
  const list = machines.data ?? [];
  const [chosen, setChosen] = useState<string | null>(null);
  const [name, setName] = useState('');
  const [id] = useState(() => uuid());
  const [kept, setKept] = useState<string | null>(null);
  const picked = chosen ?? list.find((m) => m.medium === medium)?.id ?? fresh;
  const keep = async () => {
    const machine =
      list.find((m) => m.id === picked) ??
      (await call('addMachine', { params: { kitchenId }, body: { name: name.trim(), medium, note: '' } }));
    // The name is taken now: a second try must not make a second machine.
    setChosen(machine.id);
    await queryClient.invalidateQueries({ queryKey: ['machines'] });
    await call('keepFit', {
      params: { kitchenId, machineId: machine.id },
      body: { id, logId, fromMin, stage, input: order },
    });
    await queryClient.invalidateQueries({ queryKey: ['machines'] });
    setKept(machine.name);
    say(`Kept for ${machine.name}. The server fitted the log once more and wrote it down.`);
  };
  if (!value.told && !(value.highOpen && !value.lowOpen)) return null;
  if (kept !== null) return <p>Kept for {kept}. Its history is under the kitchen’s name.</p>;
  return (
    <div className="keep-fit stack">
      <Choice
        label={`Keep the coefficient of ${stageName} for`}
        value={picked}
        options={[
          ...list.map((m) => ({ value: m.id, label: m.name })),
          { value: fresh, label: 'a machine I name now' },
        ]}
        onChange={setChosen}
      />
      {picked === fresh ? (
        <TextField
          label="Its name"
          hint="As the kitchen calls it: the small combi, the steamer by the wall."
          value={name}
          maxLength={80}
          onChange={setName}
        />
      ) : null}
      <Button
        onPress={keep}
        busy="Fitting again and keeping…"
        disabled={picked === fresh && name.trim() === ''}
      >
        Keep it for {picked === fresh ? 'this machine' : (list.find((m) => m.id === picked)?.name ?? 'it')}
      </Button>
    </div>
  );
}
