/** How far a specification is with its supplier. Only what was agreed is in force; an unanswered one is not fine. Pure. */
import type { Specification } from '../../../../contract/specification.ts';

export interface Standing {
  readonly word:
    | 'in force'
    | 'asked again, the old one in force'
    | 'waits for an answer'
    | 'not sent yet'
    | 'declined'
    | 'ended';
  readonly why: string;
}

export function standingOf(s: Pick<Specification, 'versions' | 'inForce' | 'endedAt'>): Standing {
  if (s.endedAt !== null) return { word: 'ended', why: '' };
  const sent = s.versions.filter((v) => v.status === 'sent');
  const newest = sent.at(-1);
  const draft = s.versions.find((v) => v.status === 'draft');
  const drafted = draft === undefined ? '' : ` Version ${draft.number} is being written.`;
  if (newest === undefined) return { word: 'not sent yet', why: '' };
  const answer = newest.answers.at(-1);
  if (s.inForce === newest.number)
    return {
      word: 'in force',
      why: `Version ${s.inForce}, ${answer?.answer ?? 'agreed'} by ${answer?.saidBy ?? 'somebody'}.${drafted}`,
    };
  const last =
    answer === undefined
      ? `Version ${newest.number} was sent and not answered.`
      : `Version ${newest.number} was declined by ${answer.saidBy}.`;
  if (s.inForce !== null)
    return {
      word: 'asked again, the old one in force',
      why: `${last} Deliveries are checked against version ${s.inForce}.${drafted}`,
    };
  return {
    word: answer === undefined ? 'waits for an answer' : 'declined',
    why: `${last}${drafted}`,
  };
}

/** The versions that a delivery may be checked against: one for each specification that has not ended, agreed or else last sent. */
export function offeredFor(
  specifications: readonly Specification[],
  supplierId: string,
): { readonly specification: Specification; readonly version: Specification['versions'][number] }[] {
  return specifications.flatMap((specification) => {
    if (specification.supplierId !== supplierId || specification.endedAt !== null) return [];
    const sent = specification.versions.filter((v) => v.status === 'sent');
    const wanted = specification.inForce ?? sent.at(-1)?.number;
    const version = sent.find((v) => v.number === wanted);
    return version === undefined ? [] : [{ specification, version }];
  });
}
