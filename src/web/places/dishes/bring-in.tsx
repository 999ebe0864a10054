import { useState } from 'react';
import { useLocation } from 'wouter';
import type { BroughtDish } from '../../../contract/exchange-operations.ts';
import type { Kitchen } from '../../../contract/records.ts';
import { at } from '../../addresses.ts';
import { call, queryClient } from '../../api.ts';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { Choice } from '../../parts/choice.tsx';
import { TextField } from '../../parts/field.tsx';

const longest = 1_000_000;

/** A dish from a file or a page: read, shown, and kept only then. */
export function BringIn({ kitchen }: { readonly kitchen: Pick<Kitchen, 'id' | 'place'> }) {
  const [text, setText] = useState('');
  const [read, setRead] = useState<BroughtDish | null>(null);
  const [wrong, setWrong] = useState('');
  const put = (next: string) => {
    setText(next);
    setRead(null);
  };
  const take = async (file: File | undefined) => {
    if (file === undefined) return;
    setWrong('');
    if (file.size > longest * 2) {
      setWrong(`${file.name} is too large: at most 1,000,000 characters are read.`);
      return;
    }
    try {
      put(await file.text());
    } catch (error) {
      setWrong(`${file.name} could not be read: ${error instanceof Error ? error.message : String(error)}`);
    }
  };
  const look = async (version?: number) => {
    const body = { text, keep: false, ...(version === undefined ? {} : { version }) };
    const answer = await call('importDish', { params: { kitchenId: kitchen.id }, body });
    setRead(answer.read);
  };
  const other = (version: number) => {
    setWrong('');
    look(version).catch((error: unknown) => setWrong(error instanceof Error ? error.message : String(error)));
  };
  return (
    <div className="stack">
      <p className="quiet measure">
        A dish file, a recipe as JSON-LD, or the source of a saved page that has one in it. You see what was
        understood before anything is kept.
      </p>
      <div>
        <label className="button button-plain">
          Choose a file to bring in
          <input
            className="unseen"
            type="file"
            accept=".json,.jsonld,.html,.htm,application/json,application/ld+json,text/html"
            onChange={(e) => void take(e.target.files?.[0])}
          />
        </label>
      </div>
      {wrong === '' ? null : (
        <p className="field-error" role="alert">
          {wrong}
        </p>
      )}
      <TextField label="Or paste it" value={text} onChange={put} lines={5} />
      <div>
        <Button onPress={() => look()} busy="Reading…" disabled={text.trim() === ''}>
          See what is in it
        </Button>
      </div>
      {read === null ? null : (
        <Understood
          key={`${read.name} ${read.version}`}
          kitchen={kitchen}
          text={text}
          read={read}
          onVersion={other}
        />
      )}
    </div>
  );
}

interface UnderstoodProps {
  readonly kitchen: Pick<Kitchen, 'id' | 'place'>;
  readonly text: string;
  readonly read: BroughtDish;
  readonly onVersion: (version: number) => void;
}

function Understood({ kitchen, text, read, onVersion }: UnderstoodProps) {
  const [, navigate] = useLocation();
  const [name, setName] = useState(read.name);
  const [species, setSpecies] = useState(read.species);
  const [part, setPart] = useState(read.part);
  const [asked, setAsked] = useState(false);
  const missing = (value: string, why: string) => (asked && value.trim() === '' ? why : undefined);
  const keep = async () => {
    setAsked(true);
    if ([name, species, part].some((v) => v.trim() === '')) return;
    const { dish } = await call('importDish', {
      params: { kitchenId: kitchen.id },
      body: {
        text,
        keep: true,
        name: name.trim(),
        species: species.trim(),
        part: part.trim(),
        ...(read.version === null ? {} : { version: read.version }),
      },
    });
    await queryClient.invalidateQueries({ queryKey: ['dishes'] });
    if (dish !== null) navigate(at.dish(kitchen.id, dish.id));
  };
  return (
    <section className="stack" aria-labelledby="understood">
      <h3 id="understood">What was understood</h3>
      {read.versions.length < 2 ? null : (
        <Choice
          label="Version to bring in"
          value={String(read.version)}
          options={read.versions.map((n) => ({ value: String(n), label: `Version ${n}` }))}
          onChange={(n) => onVersion(Number(n))}
        />
      )}
      <div className="fields">
        <TextField
          label="Name of the dish brought in"
          value={name}
          onChange={setName}
          maxLength={120}
          error={missing(name, 'Give it a name.')}
        />
        <TextField
          label="Its animal"
          value={species}
          onChange={setSpecies}
          maxLength={40}
          error={missing(species, 'Which animal? The law is read by it.')}
        />
        <TextField
          label="Its part"
          value={part}
          onChange={setPart}
          maxLength={80}
          error={missing(part, 'Which part? The law is read by it.')}
        />
      </div>
      {read.story === '' ? null : <p className="measure">{read.story}</p>}
      <ul className="measure">
        {read.said.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {read.ingredients.length === 0 ? null : (
        <ul className="measure" aria-label="Ingredients as they were read">
          {read.ingredients.map((i, n) => (
            <li key={n}>
              <strong>{i.text}</strong>:{' '}
              {i.taken === null
                ? 'not understood'
                : `${i.taken}${i.sure === 'sure' ? '' : ' (a guess: to be chosen on the bench)'}`}
              {i.g === null ? ', no weight' : `, ${Number(i.g.toPrecision(4))} g`}
              <span className="quiet small"> {i.why === '' ? i.how : i.why}</span>
            </li>
          ))}
        </ul>
      )}
      <ol className="measure" aria-label="Steps">
        {read.method.map((step) => (
          <li key={step.id}>
            {step.name} <span className="quiet">({step.kind})</span>
            {step.how === '' ? null : <span className="quiet small"> {step.how.slice(0, 300)}</span>}
          </li>
        ))}
      </ol>
      <Caution place={kitchen.place}>
        <p>
          It comes in as a draft. What was safe in another kitchen is not therefore safe in yours: its
          allergens, its cook and its limits have to be looked at here before it is signed.
        </p>
      </Caution>
      <div>
        <Button kind="strong" onPress={keep} busy="Keeping…">
          Keep it as a draft
        </Button>
      </div>
    </section>
  );
}
