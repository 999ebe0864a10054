import { useMemo, useState } from 'react';
import { useLocation } from 'wouter';
import {
  type ColumnRole,
  type DayOrder,
  type PastTable,
  pastRows,
  readPast,
  type WeightUnit,
} from '../../../../contract/past-breakdowns.ts';
import { formatQuantity } from '../../../../core/units.ts';
import { at } from '../../../addresses.ts';
import { call, queryClient, Refusal, useOperation } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Button } from '../../../parts/button.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { TextField } from '../../../parts/field.tsx';
import { say } from '../../../parts/toast.tsx';

const roles: readonly { value: ColumnRole; label: string }[] = [
  { value: 'date', label: 'Day' },
  { value: 'animals', label: 'How many animals' },
  { value: 'whole', label: 'Weight of the whole' },
  { value: 'part', label: 'A part, used' },
  { value: 'sold', label: 'A part, sold' },
  { value: 'bone', label: 'Bone, not kept' },
  { value: 'drip', label: 'Drip' },
  { value: 'bin', label: 'Thrown away' },
  { value: 'by-product', label: 'By-product' },
  { value: 'leave out', label: 'Leave it out' },
];
const units: readonly { value: WeightUnit; label: string }[] = [
  { value: 'g', label: 'grams' },
  { value: 'kg', label: 'kilograms' },
  { value: 'lb', label: 'pounds' },
  { value: 'oz', label: 'ounces' },
];
const orders: readonly { value: DayOrder; label: string }[] = [
  { value: 'day first', label: '25/11/2026' },
  { value: 'month first', label: '11/25/2026' },
  { value: 'year first', label: '2026-11-25' },
];

/** Breakdowns of before, pasted out of a spreadsheet: they count for the yields, and make no lots. */
export function ImportBreakdowns() {
  const kitchen = useKitchen();
  const params = { kitchenId: kitchen.id };
  const [, navigate] = useLocation();
  const parts = useOperation('parts', { params });
  const suppliers = useOperation('suppliers', { params });
  const [species, setSpecies] = useState('');
  const [supplierId, setSupplier] = useState('');
  const [note, setNote] = useState('');
  const [text, setText] = useState('');
  const [changed, setChanged] = useState<Partial<Pick<PastTable, 'unit' | 'order' | 'columns'>>>({});
  const read = useMemo(() => readPast(text), [text]);
  const table = read === null ? null : { ...read, ...changed };
  const today = new Date().toISOString().slice(0, 10);
  const { rows, problems } = table === null ? { rows: [], problems: [] } : pastRows(table, today);
  const put = (next: string) => {
    setText(next);
    setChanged({});
  };
  const keep = async () => {
    if (species.trim() === '') throw new Error('Write which animal they are of.');
    if (rows.length === 0) throw new Error('There is nothing to bring in yet.');
    try {
      const { imported } = await call('importBreakdowns', {
        params,
        body: {
          species: species.trim(),
          supplierId: supplierId === '' ? null : supplierId,
          note: note.trim(),
          rows: rows.map(({ line: _, ...row }) => ({ ...row, parts: [...row.parts] })),
        },
      });
      await queryClient.invalidateQueries();
      say(`${imported} past breakdowns of ${species.trim()} are in. They count for the yields.`);
      navigate(at.animals(kitchen.id, 'yields'));
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      // The server speaks of rows; whoever pasted them knows lines.
      const lineOf = (path: string) =>
        path.replace(/rows\[(\d+)\]/g, (_, i: string) => `line ${rows[Number(i)]?.line ?? '?'}`);
      throw new Refusal(
        error.status,
        error.code,
        error.message,
        error.problems.map((p) => ({ ...p, path: lineOf(p.path) })),
      );
    }
  };
  return (
    <div className="stack-wide">
      <section className="measure stack">
        <h2>Past breakdowns</h2>
        <p>
          Paste a table out of a spreadsheet, or choose a CSV file: a row for each animal or batch of animals,
          a column for each part, with a first row of headings. They count for the yields; no lots are made of
          them.
        </p>
      </section>
      <div className="fields">
        <TextField
          label="Animal"
          value={species}
          onChange={setSpecies}
          maxLength={40}
          suggestions={[...new Set((parts.data ?? []).map((p) => p.species))]}
        />
        <Choice
          label="From"
          value={supplierId}
          options={[
            { value: '', label: 'Nobody named' },
            ...(suppliers.data ?? []).map((s) => ({ value: s.id, label: s.name })),
          ]}
          onChange={setSupplier}
        />
        <TextField label="Note" value={note} onChange={setNote} maxLength={500} />
      </div>
      <TextField label="The table" value={text} onChange={put} lines={8} />
      <div>
        <label className="button button-plain">
          Choose a file
          <input
            className="unseen"
            type="file"
            accept=".csv,.tsv,.txt,text/csv,text/plain"
            onChange={(e) => {
              const file = e.target.files?.[0];
              if (file !== undefined) void file.text().then(put);
            }}
          />
        </label>
      </div>
      {text.trim() !== '' && table === null ? (
        <p>A first row of headings and at least one row of weights are needed.</p>
      ) : null}
      {table === null ? null : (
        <>
          <section className="stack">
            <h3>How it is read</h3>
            <div className="fields">
              <Choice
                label="Weights, where no column says otherwise"
                value={table.unit}
                options={units}
                onChange={(unit) => setChanged({ ...changed, unit })}
              />
              <Choice
                label="Days are written"
                value={table.order}
                options={orders}
                onChange={(order) => setChanged({ ...changed, order })}
              />
              {table.columns.map((c, i) => (
                <Choice
                  key={i}
                  label={`${c.name === '' ? `Column ${i + 1}` : c.name}${c.unit === null ? '' : ` (${c.unit})`}`}
                  value={c.role}
                  options={roles}
                  onChange={(role) =>
                    setChanged({
                      ...changed,
                      columns: table.columns.map((o, j) => (j === i ? { ...o, role } : o)),
                    })
                  }
                />
              ))}
            </div>
          </section>
          {problems.length === 0 ? (
            <p>
              {rows.length} {rows.length === 1 ? 'row' : 'rows'},{' '}
              {rows.reduce((sum, r) => sum + r.animals, 0)} animals,{' '}
              {formatQuantity(
                rows.reduce((sum, r) => sum + r.inGrams, 0),
                'mass',
                kitchen.units,
              )}{' '}
              in all. The first: {rows[0]?.at.slice(0, 10)},{' '}
              {formatQuantity(rows[0]?.inGrams ?? 0, 'mass', kitchen.units)},{' '}
              {rows[0]?.parts
                .map((p) => `${p.name} ${formatQuantity(p.grams, 'mass', kitchen.units)}`)
                .join(', ')}
              .
            </p>
          ) : (
            <section className="stack">
              <h3>
                {problems.length} {problems.length === 1 ? 'thing stands' : 'things stand'} in the way;
                nothing is brought in until {problems.length === 1 ? 'it is' : 'they are'} put right
              </h3>
              <ul>
                {problems.slice(0, 40).map((p) => (
                  <li key={`${p.line} ${p.column} ${p.found}`}>
                    <strong>
                      Line {p.line}, {p.column}
                    </strong>
                    : found {p.found}; allowed {p.allowed}
                  </li>
                ))}
                {problems.length > 40 ? <li>… and {problems.length - 40} more</li> : null}
              </ul>
            </section>
          )}
          <div className="row">
            <Button kind="strong" onPress={keep} busy="Bringing in…" disabled={problems.length > 0}>
              Bring in {rows.length} breakdowns
            </Button>
          </div>
        </>
      )}
    </div>
  );
}
