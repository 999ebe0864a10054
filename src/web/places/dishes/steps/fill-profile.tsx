/** The shape of a filled piece: measured points, or a casing's width lying flat. */
import { useState } from 'react';
import { roundFromFlat } from '../../../../core/filling/casing.ts';
import { plainNumber } from '../../../../core/units.ts';
import { Button } from '../../../parts/button.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import type { Fill } from './fill-shape.ts';
import type { StepForm } from './step-form.ts';

type Props = Pick<StepForm<Fill>, 'step' | 'set' | 'readOnly'>;

export function FillProfile({ step, set, readOnly }: Props) {
  const put = (profile: Fill['profile'], about: string) => set({ profile }, about);
  const change = (i: number, patch: Partial<Fill['profile'][number]>) =>
    put(
      step.profile.map((p, j) => (j === i ? { ...p, ...patch } : p)),
      `point ${i} ${Object.keys(patch)[0]}`,
    );
  const add = () => {
    const last = step.profile.at(-1)!;
    const before = step.profile.at(-2) ?? last;
    put(
      [
        ...step.profile,
        { atMm: last.atMm + Math.max(10, last.atMm - before.atMm), diameterMm: last.diameterMm },
      ],
      'add point',
    );
  };
  return (
    <section>
      <h3>Shape of a filled piece</h3>
      <div className="scroll-x">
        <table className="profile-table">
          <thead>
            <tr>
              <th scope="col">From the end</th>
              <th scope="col">Across</th>
              <th scope="col">
                <span className="unseen">Remove</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {step.profile.map((p, i) => (
              <tr key={i}>
                <td>
                  <NumberField
                    label={<span className="unseen">Point {i + 1}, from the end</span>}
                    unit="mm"
                    value={p.atMm}
                    low={0}
                    high={2_000}
                    readOnly={readOnly}
                    onChange={(v) => v !== null && change(i, { atMm: v })}
                  />
                </td>
                <td>
                  <NumberField
                    label={<span className="unseen">Point {i + 1}, across</span>}
                    unit="mm"
                    value={p.diameterMm}
                    low={0}
                    high={2_000}
                    readOnly={readOnly}
                    onChange={(v) => v !== null && change(i, { diameterMm: v })}
                  />
                </td>
                <td>
                  {readOnly || step.profile.length <= 2 ? null : (
                    <Button
                      kind="quiet"
                      label={`Remove point ${i + 1}`}
                      onPress={() =>
                        put(
                          step.profile.filter((_, j) => j !== i),
                          'remove point',
                        )
                      }
                    >
                      Remove
                    </Button>
                  )}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {readOnly ? null : (
        <>
          {step.profile.length >= 60 ? null : <Button onPress={add}>Add a point</Button>}
          <FromFlat step={step} put={put} />
        </>
      )}
    </section>
  );
}

/** A casing is sold by its width lying flat: filled round it is narrower. */
function FromFlat({
  step,
  put,
}: {
  readonly step: Fill;
  readonly put: (profile: Fill['profile'], about: string) => void;
}) {
  const [flat, setFlat] = useState<number | null>(null);
  const [long, setLong] = useState<number | null>(null);
  const length = long ?? (step.profile.at(-1)?.atMm ?? 0) - (step.profile[0]?.atMm ?? 0);
  const round = flat === null ? null : Math.round(roundFromFlat(flat / 1000) * 10_000) / 10;
  return (
    <details className="fold">
      <summary>From its width lying flat</summary>
      <div className="fields">
        <NumberField
          label="Flat width"
          unit="mm"
          value={flat}
          low={5}
          high={1_000}
          optional
          onChange={setFlat}
        />
        <NumberField
          label="Filled length"
          unit="mm"
          value={length}
          low={10}
          high={2_000}
          onChange={setLong}
        />
      </div>
      <Button
        disabled={round === null || length <= 0}
        onPress={() => {
          if (round === null) return;
          put(
            [
              { atMm: 0, diameterMm: round },
              { atMm: length, diameterMm: round },
            ],
            'from flat',
          );
        }}
      >
        {round === null ? 'Make it round' : `Make it ${plainNumber(round, 1)} mm round`}
      </Button>
    </details>
  );
}
