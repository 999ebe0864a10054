/** May it be served? As the card says it: by the sources, or by whose word a stop of theirs is lifted, and until when. */
import type { Agreement } from '../contract/agreement.ts';
import type { MethodCardData } from './method-card-data.ts';

interface LawOnCard {
  readonly holds: boolean;
  readonly text: string;
}

const day = (civil: string): string =>
  new Intl.DateTimeFormat('en-GB', {
    timeZone: 'UTC',
    day: 'numeric',
    month: 'short',
    year: 'numeric',
  }).format(new Date(`${civil}T00:00:00Z`));

const byWhom = (a: Agreement): string =>
  `${a.authority}, ${a.saidBy}, ${day(a.dated)}, reference ${a.reference}, ${a.until === null ? 'no end given' : `until ${day(a.until)}`}.${a.conditions === '' ? '' : ` On conditions: ${a.conditions}`}`;

/** What stops any part of the dish and is lifted by nobody comes before what is in order. */
export function lawOnCard({ dish, version }: Pick<MethodCardData, 'dish' | 'version'>): LawOnCard {
  const used = dish.partsUsed ?? [];
  const stopped = used.filter((u) => u.stops && u.agreed === null);
  const { law, agreed } = dish;
  const ended = (version.evidence?.agreements ?? []).filter((a) =>
    stopped.some((u) => u.species === a.species && u.part === a.part),
  );
  const signed = ended.map((a) => ` It was signed by the word of ${byWhom(a)} That word does not stand now.`);
  const others = stopped.filter((u) => u.path !== 'part');
  const own = law.status === 'food' || law.status === 'food on conditions';
  if (!own && (agreed === undefined || agreed === null))
    return { holds: false, text: `${law.status.toUpperCase()}. ${law.reason}${signed.join('')}` };
  if (others.length > 0)
    return {
      holds: false,
      text: `${others.map((u) => `${u.part} of ${u.species} (${u.from}): ${u.law.status.toUpperCase()}. ${u.law.reason}`).join(' ')}${signed.join('')}`,
    };
  const lifted = used.flatMap((u) =>
    u.agreed === null || u.path === 'part'
      ? []
      : [` ${u.part} of ${u.species}: by the word of ${byWhom(u.agreed)}`],
  );
  const said =
    own || agreed === undefined || agreed === null
      ? `${law.status}: ${law.reason}`
      : `by the authority’s word alone. ${byWhom(agreed)} (The sources: ${law.status}.)`;
  return { holds: true, text: `${said}${lifted.join('')}` };
}
