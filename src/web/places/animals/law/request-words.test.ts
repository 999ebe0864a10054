import { expect, test } from 'vitest';
import type { AuthorityRequest } from '../../../../contract/authority.ts';
import { requestWords } from './request-words.ts';

const answered = (
  answer: AuthorityRequest['answers'][number]['answer'],
  until: string | null = null,
): AuthorityRequest['answers'] => [
  {
    id: '0199f000-0000-7000-8000-000000000001',
    answer,
    authority: 'a council (invented)',
    saidBy: 'an officer (invented)',
    reference: 'R/1',
    conditions: '',
    dated: '2026-11-19',
    until,
    by: 'a cook',
    recordedAt: '2026-11-19T10:00:00.000Z',
  },
];

test('a question is drawn as holding only where its answer lifts the stop without conditions', () => {
  expect(requestWords({ answers: [], lifts: false }).state).toBe('unknown');
  expect(requestWords({ answers: answered('agreed'), lifts: true }).state).toBe('holds');
  expect(requestWords({ answers: answered('agreed on conditions'), lifts: true }).state).toBe('not yet');
  for (const answer of ['refused', 'asked for more', 'agreed', 'agreed on conditions'] as const)
    expect(requestWords({ answers: answered(answer, '2026-11-20'), lifts: false }).state).not.toBe('holds');
});

test('until when is said with the word', () => {
  expect(requestWords({ answers: answered('agreed', '2027-11-19'), lifts: true }).word).toMatch(
    /19 Nov 2027/,
  );
});
