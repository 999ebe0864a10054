/** The kitchen's own machines beside a stage's medium, each with what its last log said. */
import type { StageInput } from '../../../../contract/body.ts';
import type { Machine } from '../../../../contract/machines.ts';
import { useOperation } from '../../../api.ts';
import { Choice } from '../../../parts/choice.tsx';
import { roundedDown } from './fit-order.ts';

export interface MachineChoiceProps {
  readonly kitchenId: string;
  readonly stage: StageInput;
  readonly onChange: (stage: StageInput) => void;
}

const none = '';

/** What is taken from a machine's newest fit: its cautious end. */
function fromMachine({ name, latest }: Machine): NonNullable<StageInput['hFrom']> | null {
  if (latest === null) return null;
  const day = latest.at.slice(0, 10);
  return {
    hWm2K: roundedDown(latest.hWm2K.low95),
    text: `the cautious end of what log ${latest.logName} of ${day} said of ${name}`,
  };
}

export function MachineChoice({ kitchenId, stage, onChange }: MachineChoiceProps) {
  const { data = [] } = useOperation('machines', { params: { kitchenId } });
  // A stage in steam is offered steamers; one without a medium, everything.
  const fitting = data.filter((m) => stage.medium === undefined || m.medium === stage.medium);
  const known = fitting.flatMap((machine) => {
    const from = fromMachine(machine);
    return from === null ? [] : [{ machine, from }];
  });
  if (known.length === 0) return null;
  const from = stage.hFrom?.hWm2K === stage.hWm2K ? stage.hFrom : undefined;
  const chosen = known.find((k) => k.from.text === from?.text && k.from.hWm2K === from.hWm2K);
  const pick = (id: string) => {
    const { hWm2K: _, hFrom: __, ...rest } = stage;
    const next = known.find((k) => k.machine.id === id);
    if (next === undefined) {
      // Without a medium the coefficient is all there is: it stays as a number of the kitchen's own.
      onChange(
        rest.medium === undefined && stage.hWm2K !== undefined ? { ...rest, hWm2K: stage.hWm2K } : rest,
      );
      return;
    }
    onChange({ ...rest, hWm2K: next.from.hWm2K, hFrom: next.from });
  };
  return (
    <Choice
      className="machine-choice"
      label="In which machine"
      value={chosen?.machine.id ?? none}
      options={[
        { value: none, label: from === undefined ? 'none: by the medium' : 'as this dish’s own log says' },
        ...known.map(({ machine, from: f }) => ({
          value: machine.id,
          label: `${machine.name}: ${f.hWm2K} W/(m² K), measured`,
        })),
      ]}
      hint={from === undefined ? undefined : `${from.text.charAt(0).toUpperCase()}${from.text.slice(1)}.`}
      onChange={pick}
    />
  );
}
