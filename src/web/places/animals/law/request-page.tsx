import { useState } from 'react';
import { Link } from 'wouter';
import type { AuthorityRequest } from '../../../../contract/authority.ts';
import { documents } from '../../../../contract/document-paths.ts';
import { at } from '../../../addresses.ts';
import { useOperation } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Button } from '../../../parts/button.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { moment } from '../../../parts/moment.ts';
import { Problem } from '../../../parts/problem.tsx';
import { Verdict } from '../../../parts/verdict.tsx';
import { placeNames } from '../../../shell/place-names.ts';
import { lawWords } from '../../dishes/stage-words.ts';
import { dayText } from '../shelf/civil.ts';
import { AnswerDialog } from './answer-dialog.tsx';
import { requestWords } from './request-words.ts';

/** One question as it was printed, and every answer to it. */
export function RequestPage({ requestId }: { readonly requestId: string }) {
  const kitchen = useKitchen();
  const request = useOperation('authorityRequest', { params: { kitchenId: kitchen.id, requestId } });
  if (request.data === undefined)
    return request.error === null ? (
      <p className="quiet">Reading the question…</p>
    ) : (
      <Problem error={request.error} retry={() => request.refetch()} />
    );
  return <Whole request={request.data} />;
}

function Whole({ request }: { readonly request: AuthorityRequest }) {
  const kitchen = useKitchen();
  const [answering, setAnswering] = useState(false);
  const words = requestWords(request);
  const { content } = request;
  return (
    <article className="stack-wide">
      <header className="stack">
        <p className="not-on-paper">
          <Link href={at.law(kitchen.id)}>May I serve it?</Link>
        </p>
        <h2>
          Asked about {request.part} of {request.species}
        </h2>
        <p className="quiet">
          {moment(request.askedAt, kitchen.zone)}, by {request.askedBy}
          {request.dishId === null ? null : (
            <>
              , for <Link href={at.dish(kitchen.id, request.dishId)}>{content.dishName ?? 'a dish'}</Link>
              {content.versionNumber === null ? '' : `, version ${content.versionNumber}`}
            </>
          )}
        </p>
        <Verdict state={words.state} word={words.word} size="large">
          {request.content.law.status === 'prohibited' ? (
            <p>What is prohibited is lifted by no answer here.</p>
          ) : null}
        </Verdict>
        <div className="row not-on-paper">
          <a className="button button-strong" href={documents.authorityRequest(kitchen.id, request.id)}>
            The letter (PDF)
          </a>
          <Button onPress={() => setAnswering(true)}>Write down the answer</Button>
        </div>
      </header>
      {answering ? <AnswerDialog request={request} onClose={() => setAnswering(false)} /> : null}
      <Answers request={request} />
      <section className="stack">
        <h3>As it was asked</h3>
        <p className="lead measure">{content.question}</p>
        <Verdict
          state={lawWords(content.law).state}
          word={`${placeNames[kitchen.place]}, when it was asked: ${content.law.status}`}
        >
          <p>{content.law.reason}</p>
          <p className="quiet small">{content.law.citation}</p>
        </Verdict>
        <Told title="From whom" lines={[content.supplier]} />
        <Told title="Specification" lines={[content.specification]} />
        <Told title="Process" lines={content.process} />
        <Told title="Predicted, not measured" lines={content.predicted} />
        <Told title="Measured" lines={content.measured} />
        <Told title="Laboratory" lines={[content.laboratory]} />
      </section>
      <Caution place={kitchen.place} />
    </article>
  );
}

function Told({ title, lines }: { readonly title: string; readonly lines: readonly string[] }) {
  const said = lines.filter((l) => l !== '');
  return (
    <div>
      <h4>{title}</h4>
      {said.length === 0 ? (
        <p className="quiet">Nothing said.</p>
      ) : (
        said.map((line) => (
          <p key={line} className="measure">
            {line}
          </p>
        ))
      )}
    </div>
  );
}

function Answers({ request }: { readonly request: AuthorityRequest }) {
  const kitchen = useKitchen();
  if (request.answers.length === 0)
    return <p>No answer is written down. The letter is printed, sent, and its answer kept here.</p>;
  return (
    <section className="stack">
      <h3>Answers</h3>
      <ol className="law-requests">
        {[...request.answers].reverse().map((a) => (
          <li key={a.id}>
            <strong>
              {a.authority}: {a.answer}
            </strong>
            <span>
              {a.saidBy}, {dayText(a.dated)}, reference {a.reference}
              {a.until === null ? ', no end given' : `, until ${dayText(a.until)}`}
            </span>
            {a.conditions === '' ? null : <span>Conditions: {a.conditions}</span>}
            <span className="quiet small">
              written down by {a.by}, {moment(a.recordedAt, kitchen.zone)}
            </span>
          </li>
        ))}
      </ol>
    </section>
  );
}
