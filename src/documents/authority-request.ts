/** The question to the competent authority on paper: what, from whom, by what process, what was measured, and room for the answer. */
import type { AuthorityRequest } from '../contract/authority.ts';
import { lawNotes } from '../core/properties/parts-law-notes.ts';
import { authorityRequestSource } from './authority-request-source.ts';
import { authorityOf, deference, placeName } from './cautions.ts';
import { moment, tied } from './format.ts';
import type { PrintedFor, TypstDocument } from './typst.ts';

export interface AuthorityRequestData extends PrintedFor {
  readonly request: AuthorityRequest;
}

const cautions = [
  'Until there is an answer in writing, the part stays out of every dish.',
  'What the law row says is reported from its sources, with how it is known; it is no reading of the law by anybody qualified.',
  'What is foreseen comes from a model; only what was measured, with a checked probe, is evidence.',
];

export function authorityRequest(data: AuthorityRequestData): TypstDocument {
  const { kitchen, request: r } = data;
  const { content: c } = r;
  const { law } = c;
  const section = (name: string, lines: readonly string[], none: string) => ({
    name,
    lines: lines.filter((l) => l.trim() !== '').map(tied),
    none,
  });
  const body = {
    title: `Question about ${r.part} of ${r.species}`,
    author: c.kitchenName,
    what: `${r.part}, ${r.species}`,
    to: authorityOf(kitchen.place),
    kitchen: c.kitchenName,
    place: placeName(kitchen.place),
    asked: `Asked ${moment(r.askedAt, kitchen.zone)} by ${r.askedBy}`,
    dish:
      c.dishName === null
        ? 'No dish is named.'
        : `${c.dishName}${c.versionNumber === null ? '' : `, version ${c.versionNumber}`}`,
    supplier: c.supplier.trim() === '' ? 'Not named.' : c.supplier,
    specification: c.specification.trim() === '' ? 'None is named.' : tied(c.specification),
    law: {
      status: law.status,
      holds: law.status === 'food' || law.status === 'food on conditions',
      reason: law.reason,
      cite: `${law.citation}. How it is known: ${law.confidence}${law.checked === undefined || law.checked === null ? '' : `; checked ${law.checked}`}.`,
    },
    // The words of today, on a question of then: marked with the day they were checked.
    notes: lawNotes(r.species, r.part, kitchen.place).map(
      (n) => `${n.text} (${n.citation}; ${n.confidence}; checked ${n.checked})`,
    ),
    question: tied(c.question),
    sections: [
      section('What is done with it', c.process, 'No process is given.'),
      section('What the model foresees', c.predicted, 'Nothing is foreseen: the model was not run.'),
      section('What was measured', c.measured, 'Nothing was measured yet.'),
      section('Laboratory', [c.laboratory], 'No laboratory results.'),
    ],
    answers: r.answers.map((a) => ({
      word: a.answer,
      text: `${a.authority}, ${a.saidBy}, dated ${a.dated}, reference ${a.reference}${a.until === null ? '' : `, until ${a.until}`}; written down by ${a.by}, ${moment(a.recordedAt, kitchen.zone)}`,
      conditions: a.conditions,
    })),
    cautions,
    deference: deference(kitchen.place),
    demo: kitchen.demo,
    printed: `Printed ${moment(data.printedAt, kitchen.zone)}. Question ${r.id}.`,
  };
  return {
    name: 'authority-request',
    source: authorityRequestSource,
    inputs: { data: JSON.stringify(body) },
  };
}
