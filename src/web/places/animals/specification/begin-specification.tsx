import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import {
  beginSpecification,
  openSpecification,
  specificationStarts,
  startBasis,
} from '../../../../contract/specification-starts.ts';
import { at } from '../../../addresses.ts';
import { call, queryClient, useOperation } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Basis } from '../../../parts/basis.tsx';
import { Button } from '../../../parts/button.tsx';
import { TextField } from '../../../parts/field.tsx';
import { LawAsked } from './law-asked.tsx';

/** What is asked for, and what the paper begins with. */
export function BeginSpecification({ supplierId }: { readonly supplierId: string }) {
  const kitchen = useKitchen();
  const [, navigate] = useLocation();
  const suppliers = useOperation('suppliers', { params: { kitchenId: kitchen.id } });
  const [startId, setStart] = useState<string | null>(null);
  const [species, setSpecies] = useState('');
  const [what, setWhat] = useState('');
  const [name, setName] = useState('');
  const start = specificationStarts.find((s) => s.id === startId);
  const supplier = suppliers.data?.find((s) => s.id === supplierId);
  const choose = (id: string) => {
    const next = specificationStarts.find((s) => s.id === id);
    setStart(id);
    setSpecies(next?.species ?? '');
    setWhat(next?.words.what ?? '');
    setName(next?.name ?? '');
  };
  const begin = async () => {
    if (species.trim() === '') throw new Error('Say of which animal.');
    if (what.trim() === '') throw new Error('Say what: the whole animal, or the part by the trade’s name.');
    const content = {
      ...(start === undefined ? openSpecification : beginSpecification(start, kitchen.place)),
      what: what.trim(),
    };
    const made = await call('addSpecification', {
      params: { kitchenId: kitchen.id },
      body: {
        supplierId,
        species: species.trim(),
        name: (name.trim() === '' ? `${species.trim()}, ${what.trim()}` : name.trim()).slice(0, 120),
        content,
      },
    });
    await queryClient.invalidateQueries({ queryKey: ['specifications'] });
    navigate(at.specification(kitchen.id, supplierId, made.id), { replace: true });
  };
  return (
    <article className="stack-wide">
      <header className="stack">
        <p className="small">
          <Link href={at.supplier(kitchen.id, supplierId)}>{supplier?.name ?? 'The supplier'}</Link>
        </p>
        <h2 className="supply-name">Ask for something in writing</h2>
        <p className="measure">
          Begin with what is usual for the part, and change what you like: nothing is sent until you say so.
        </p>
      </header>
      <fieldset className="starts">
        <legend className="field-label">Begin with</legend>
        {specificationStarts.map((s) => (
          <label key={s.id} className="start">
            <input type="radio" name="start" checked={startId === s.id} onChange={() => choose(s.id)} />
            <span>{s.name}</span>
          </label>
        ))}
        <label className="start">
          <input type="radio" name="start" checked={startId === 'open'} onChange={() => choose('open')} />
          <span>An open sheet</span>
        </label>
      </fieldset>
      {startId === null ? null : (
        <>
          {start === undefined ? null : (
            <div className="stack measure">
              <p>
                <strong>Common practice, no source:</strong> how it is bled, dressed, cut and packed, the
                lengths and what is refused. Read every line before you send it.
              </p>
              <Basis items={startBasis(start, kitchen.place)} />
            </div>
          )}
          <form className="stack" onSubmit={(e) => e.preventDefault()}>
            <div className="fields">
              <TextField label="Animal" value={species} onChange={setSpecies} maxLength={40} />
              <TextField
                label="What"
                value={what}
                onChange={setWhat}
                maxLength={80}
                hint="“whole animal”, or the part by the trade’s name."
              />
              <TextField
                label="Call it"
                value={name}
                onChange={setName}
                maxLength={120}
                hint={name.trim() === '' && species !== '' ? `Empty: ${species}, ${what}.` : undefined}
              />
            </div>
            <Button kind="strong" type="submit" onPress={begin} busy="Writing…">
              Begin the sheet
            </Button>
          </form>
          {species.trim() === '' || what.trim() === '' ? null : <LawAsked species={species} what={what} />}
        </>
      )}
    </article>
  );
}
