/** The kitchen's machines: each with what its logs have said, newest first, and how that moved. */
import { useMemo, useState } from 'react';
import type { Machine } from '../../contract/machines.ts';
import type { Kitchen } from '../../contract/records.ts';
import { media } from '../../core/properties/media.ts';
import { machineTrendScene } from '../../documents/pictures/machine-trend.ts';
import { call, queryClient, useOperation } from '../api.ts';
import { Button } from '../parts/button.tsx';
import { Choice } from '../parts/choice.tsx';
import { TextField } from '../parts/field.tsx';
import { dayOf } from '../parts/moment.ts';
import { Problem } from '../parts/problem.tsx';
import { SceneView } from '../pictures/SceneView.tsx';
import { useWidth } from '../pictures/use-width.ts';

const saysOf = ({ latest }: Machine): string =>
  latest === null
    ? 'no log fitted yet: the table’s value for its medium is used'
    : latest.hWm2K.says.slice(latest.hWm2K.says.indexOf(':') + 2);

export function Machines({ kitchen }: { readonly kitchen: Kitchen }) {
  const machines = useOperation('machines', { params: { kitchenId: kitchen.id } });
  const list = machines.data ?? [];
  return (
    <section className="stack" aria-labelledby="machines-heading">
      <h2 id="machines-heading">Machines</h2>
      <p className="measure">
        What your own steamer, bath or chiller does, from the logs of your own probes. On a dish’s cook step
        lay a log over the prediction, ask it, and keep what it says here.
      </p>
      {machines.error === null ? null : <Problem error={machines.error} retry={() => machines.refetch()} />}
      <ul className="machines">
        {list.map((machine) => (
          <li key={machine.id}>
            <h3>{machine.name}</h3>
            <p>
              {machine.medium} · {saysOf(machine)}
            </p>
            {machine.note === '' ? null : <p className="quiet">{machine.note}</p>}
            {machine.fits === 0 ? null : (
              <details className="fold">
                <summary>
                  {machine.fits} {machine.fits === 1 ? 'log has' : 'logs have'} spoken
                </summary>
                <History kitchen={kitchen} machine={machine} />
              </details>
            )}
          </li>
        ))}
      </ul>
      <AddMachine kitchenId={kitchen.id} />
    </section>
  );
}

function History({ kitchen, machine }: { readonly kitchen: Kitchen; readonly machine: Machine }) {
  const fits = useOperation('machineFits', { params: { kitchenId: kitchen.id, machineId: machine.id } });
  const [box, width] = useWidth<HTMLDivElement>();
  const list = fits.data;
  const scene = useMemo(
    () =>
      width < 80 || list === undefined
        ? null
        : machineTrendScene(
            list.toReversed().map(({ at, hWm2K }) => ({
              day: dayOf(at, kitchen.zone),
              value: hWm2K.value,
              low95: hWm2K.low95,
              high95: hWm2K.high95,
              highOpen: hWm2K.highOpen,
            })),
            { width: Math.min(width, 760) },
          ),
    [list, width, kitchen.zone],
  );
  if (fits.error !== null) return <Problem error={fits.error} retry={() => fits.refetch()} />;
  return (
    <div ref={box} className="stack">
      {scene === null ? null : <SceneView scene={scene} table="unseen" />}
      <ul className="machine-fits">
        {(list ?? []).map((fit) => (
          <li key={fit.id}>
            <p>
              <strong>{dayOf(fit.at, kitchen.zone)}</strong>, {fit.by}: {fit.hWm2K.says}
            </p>
            <p className="small quiet">
              Log {fit.logName}, stage {fit.stage}; the model runs {fit.rmseC.toFixed(2)} °C beside it; engine{' '}
              {fit.engine}.
            </p>
            {fit.warnings.map((warning) => (
              <p key={warning} className="small">
                {warning}
              </p>
            ))}
          </li>
        ))}
      </ul>
      <p className="small">
        A prediction takes the cautious end. It is no measurement: probe every batch; your local authority and
        qualified people decide.
      </p>
    </div>
  );
}

function AddMachine({ kitchenId }: { readonly kitchenId: string }) {
  const [open, setOpen] = useState(false);
  const [name, setName] = useState('');
  const [medium, setMedium] = useState('steam');
  const [note, setNote] = useState('');
  const add = async () => {
    await call('addMachine', {
      params: { kitchenId },
      body: { name: name.trim(), medium, note: note.trim() },
    });
    await queryClient.invalidateQueries({ queryKey: ['machines'] });
    setName('');
    setNote('');
    setOpen(false);
  };
  return (
    <div className="stack measure">
      <Button onPress={() => setOpen(!open)} expanded={open}>
        {open ? 'Put this away' : 'Name a machine'}
      </Button>
      {open ? (
        <>
          <TextField label="What the kitchen calls it" value={name} maxLength={80} onChange={setName} />
          <Choice
            label="What is in it"
            value={medium}
            options={Object.keys(media).map((m) => ({ value: m, label: m }))}
            onChange={setMedium}
          />
          <TextField label="Anything to know of it" value={note} maxLength={500} onChange={setNote} />
          <Button kind="strong" onPress={add} busy="Adding…" disabled={name.trim() === ''}>
            Add it
          </Button>
        </>
      ) : null}
    </div>
  );
}
