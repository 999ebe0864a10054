import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import type { Dish, ProbeLog } from '../../../../contract/records.ts';
import type { Specification } from '../../../../contract/specification.ts';
import { lawOf } from '../../../../core/properties/parts-law.ts';
import { authorityOf } from '../../../../documents/cautions.ts';
import { at } from '../../../addresses.ts';
import { call, queryClient, useOperation } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Button } from '../../../parts/button.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { TextField } from '../../../parts/field.tsx';
import { Problem } from '../../../parts/problem.tsx';
import { say } from '../../../parts/toast.tsx';
import { Verdict } from '../../../parts/verdict.tsx';
import { lawWords } from '../../dishes/stage-words.ts';
import { measuredLines, processLines, questionText, specificationText } from './request-draft.ts';
import { usePredicted } from './use-predicted.ts';

export interface AskAuthorityProps {
  readonly dishId: string | null;
  readonly species: string;
  readonly part: string;
}

/** The question to the authority: it fills itself from the records and the engine, and is then changed by hand. */
export function AskAuthority({ dishId, species, part }: AskAuthorityProps) {
  const kitchen = useKitchen();
  const params = { kitchenId: kitchen.id };
  const dish = useOperation('dish', dishId === null ? null : { params: { ...params, dishId } });
  const logs = useOperation('logs', dishId === null ? null : { params, query: { dishId } });
  const specifications = useOperation('specifications', { params });
  const predicted = usePredicted(dish.data?.current.method ?? null, kitchen.units);
  const error = dish.error ?? logs.error ?? specifications.error;
  if (error !== null) return <Problem error={error} />;
  const waits = dishId !== null && (dish.data === undefined || logs.data === undefined || predicted === null);
  if (specifications.data === undefined || waits)
    return (
      <p className="quiet" role="status">
        Working it out: the records are read, and the engine is run on every cook step…
      </p>
    );
  return (
    <Form
      species={species}
      part={part}
      dish={dish.data ?? null}
      logs={logs.data ?? []}
      predicted={predicted ?? []}
      specifications={specifications.data}
    />
  );
}

interface FormProps {
  readonly species: string;
  readonly part: string;
  readonly dish: Dish | null;
  readonly logs: readonly ProbeLog[];
  readonly predicted: readonly string[];
  readonly specifications: readonly Specification[];
}

const linesOf = (text: string) =>
  text
    .split('\n')
    .map((l) => l.trim())
    .filter((l) => l !== '');

/** A list a line, refused by name where it is longer than what is kept. */
function within(name: string, text: string, most: number): string[] {
  const lines = linesOf(text);
  if (lines.length > most) throw new Error(`${name}: ${lines.length} lines; at most ${most} are kept.`);
  const long = lines.findIndex((l) => l.length > 500);
  if (long >= 0) throw new Error(`${name}, line ${long + 1}: longer than 500 letters. Break it.`);
  return lines;
}

function Form({ species, part, dish, logs, predicted, specifications }: FormProps) {
  const kitchen = useKitchen();
  const [, navigate] = useLocation();
  const law = lawOf(species, part, kitchen.place);
  const words = lawWords(law);
  const [begun] = useState(() => specificationText(specifications, species, kitchen.units));
  const [supplier, setSupplier] = useState(begun.supplier);
  const [specification, setSpecification] = useState(begun.text);
  const [process, setProcess] = useState(() =>
    dish === null ? '' : processLines(dish.current.method, kitchen.units).join('\n'),
  );
  const [foreseen, setForeseen] = useState(() => predicted.join('\n'));
  const [measured, setMeasured] = useState(() => measuredLines(logs).join('\n'));
  const [laboratory, setLaboratory] = useState('');
  const [question, setQuestion] = useState(() => questionText(species, part, dish?.name ?? null));
  const keep = async () => {
    if (question.trim() === '') throw new Error('The question is empty. Write what is asked.');
    const content = {
      versionNumber: dish?.current.number ?? null,
      supplier: supplier.trim(),
      specification: specification.trim(),
      process: within('The process', process, 60),
      predicted: within('Predicted', foreseen, 40),
      measured: within('Measured', measured, 40),
      laboratory: laboratory.trim(),
      question: question.trim(),
    };
    const kept = await call('askAuthority', {
      params: { kitchenId: kitchen.id },
      body: { dishId: dish?.id ?? null, species, part, content },
    });
    await queryClient.invalidateQueries({ queryKey: ['authorityRequests'] });
    say('The question is kept as it is printed.');
    navigate(at.authorityRequest(kitchen.id, kept.id), { replace: true });
  };
  return (
    <form className="stack-wide" onSubmit={(e) => e.preventDefault()}>
      <header className="stack">
        <p className="not-on-paper">
          <Link href={at.law(kitchen.id)}>May I serve it?</Link>
        </p>
        <h2>
          Ask about {part} of {species}
          {dish === null ? '' : `, for ${dish.name}`}
        </h2>
        <Verdict state={words.state} word={words.word}>
          <p>{law.reason}</p>
          <p className="quiet small">{law.citation === 'none' ? 'No citation.' : law.citation}</p>
        </Verdict>
        {law.status === 'prohibited' ? (
          <p>
            <strong>No answer lifts what is prohibited here.</strong> It may be asked, and it stays stopped.
          </p>
        ) : (
          <p className="measure">
            It goes to: {authorityOf(kitchen.place)}. Only their written answer lifts the stop
            {dish === null ? '.' : ', for this dish alone.'}
          </p>
        )}
      </header>
      <div className="fields law-form">
        <TextField
          className="whole"
          label="The question"
          value={question}
          onChange={setQuestion}
          lines={4}
          maxLength={2_000}
        />
        <TextField
          className="whole"
          label="From whom"
          value={supplier}
          onChange={setSupplier}
          maxLength={300}
        />
        <TextField
          className="whole"
          label="Under which specification"
          value={specification}
          onChange={setSpecification}
          lines={4}
          maxLength={2_000}
          hint={
            begun.text === ''
              ? 'None is agreed for this animal: say how it is slaughtered, dressed and cut.'
              : undefined
          }
        />
        <TextField
          className="whole"
          label="The process, a step a line"
          value={process}
          onChange={setProcess}
          lines={Math.min(14, Math.max(4, linesOf(process).length + 1))}
        />
        <TextField
          className="whole"
          label="Predicted by the engine, a line each"
          value={foreseen}
          onChange={setForeseen}
          lines={4}
          hint="A computed temperature is no measurement."
        />
        <TextField
          className="whole"
          label="Measured by probes, a line each"
          value={measured}
          onChange={setMeasured}
          lines={4}
          hint={logs.length === 0 ? 'No probe log is kept for this dish yet.' : undefined}
        />
        <TextField
          className="whole"
          label="Laboratory"
          value={laboratory}
          onChange={setLaboratory}
          lines={3}
          maxLength={2_000}
          hint="Which laboratory, which method, what was found, when. Empty: none."
        />
      </div>
      <div className="row">
        <Button kind="strong" type="submit" onPress={keep} busy="Keeping…">
          Keep and print
        </Button>
        <Link className="button button-quiet" href={at.law(kitchen.id)}>
          Leave it
        </Link>
      </div>
      <Caution place={kitchen.place} />
    </form>
  );
}
