import { useState } from 'react';
import type { Specification } from '../../../../contract/specification.ts';
import { compareSpecifications } from '../../../../contract/specification-lines.ts';
import { useUnits } from '../../../kitchen.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { Tick } from '../../../parts/field.tsx';
import { ScrollAcross } from '../../../parts/scroll-across.tsx';

const words = { same: 'as before', new: 'new', gone: 'no longer asked', changed: 'changed' } as const;

/** Two versions line by line: what is new, what is gone, what is otherwise. */
export function CompareVersions({ specification }: { readonly specification: Specification }) {
  const units = useUnits();
  const { versions } = specification;
  const [before, setBefore] = useState(versions.at(-2)?.number ?? 1);
  const [after, setAfter] = useState(versions.at(-1)?.number ?? 1);
  const [all, setAll] = useState(false);
  const of = (number: number) => versions.find((v) => v.number === number)?.content;
  const was = of(before);
  const is = of(after);
  if (versions.length < 2 || was === undefined || is === undefined) return null;
  const options = versions.map((v) => ({
    value: String(v.number),
    label: `Version ${v.number}${v.status === 'draft' ? ', not sent' : ''}`,
  }));
  const lines = compareSpecifications(was, is, units);
  const shown = all ? lines : lines.filter((l) => l.change !== 'same');
  return (
    <section className="stack" aria-labelledby="compare">
      <h3 id="compare">What is different</h3>
      <div className="fields">
        <Choice
          label="From"
          value={String(before)}
          options={options}
          onChange={(v) => setBefore(Number(v))}
        />
        <Choice label="To" value={String(after)} options={options} onChange={(v) => setAfter(Number(v))} />
      </div>
      <Tick label="Show the lines that stayed as they were too" value={all} onChange={setAll} />
      {shown.length === 0 ? (
        <p>Nothing: the two ask for the same.</p>
      ) : (
        <ScrollAcross label="Table: the two versions">
          <table className="compare">
            <thead>
              <tr>
                <th scope="col">Line</th>
                <th scope="col">Version {before}</th>
                <th scope="col">Version {after}</th>
                <th scope="col">Change</th>
              </tr>
            </thead>
            <tbody>
              {shown.map((l, i) => (
                <tr key={`${l.key} ${i}`} className={`compare-${l.change}`}>
                  <th scope="row">{l.label}</th>
                  <td>{l.change === 'gone' ? <s>{l.before}</s> : (l.before ?? 'not asked')}</td>
                  <td>{l.after ?? 'not asked'}</td>
                  <td>{words[l.change]}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </ScrollAcross>
      )}
    </section>
  );
}
