/** The points of a specification that a delivery is checked on, and those that its own weights and temperatures decide. */
import { arrivalLimit, frozenAtMostC, plausibleArrival } from '../core/properties/arrival-limits.ts';
import type { DeliveryCheck, DeliveryInput, DeliveryLine } from './delivery.ts';
import type { Problem } from './problem.ts';
import type { SpecificationContent } from './specification.ts';

export interface DeliveryPoint {
  readonly point: string;
  readonly asked: string;
  /** `measured`: decided by what was weighed and measured; `seen`: somebody looks. */
  readonly by: 'measured' | 'seen';
}

const days = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];
const range = (low: number | null, high: number | null, unit: string) =>
  low === null
    ? `at most ${high} ${unit}`
    : high === null
      ? `at least ${low} ${unit}`
      : `${low} to ${high} ${unit}`;

/** Every point of a specification, in the order in which somebody at the door meets them. */
export function pointsOf(content: SpecificationContent): DeliveryPoint[] {
  const points: DeliveryPoint[] = [];
  const seen = (point: string, asked: string, wanted = true) => {
    if (wanted) points.push({ point, asked, by: 'seen' });
  };
  const measured = (point: string, asked: string, wanted = true) => {
    if (wanted) points.push({ point, asked, by: 'measured' });
  };
  const c = content;
  measured('arrivesAtMostC', `arrives at ${c.arrivesAtMostC} °C or colder`, c.arrivesAtMostC !== null);
  measured('days', `comes on ${c.days.map((d) => days[d]).join(', ')}`, c.days.length > 0);
  measured(
    'clock',
    `between ${c.from ?? '00:00'} and ${c.until ?? '24:00'}`,
    c.from !== null || c.until !== null,
  );
  const { low, high } = c.pieceGrams;
  measured('pieceGrams', `${range(low, high, 'g')} each`, low !== null || high !== null);
  seen('what', `is ${c.what}${c.ageClass === '' ? '' : `, ${c.ageClass}`}`);
  seen('skin', `skin: ${c.skin.join(', ')}`, c.skin.length > 0);
  seen('head', `head ${c.head}`, c.head !== 'not asked');
  seen('feet', `feet ${c.feet}`, c.feet !== 'not asked');
  seen('drawn', c.drawn, c.drawn !== 'not asked');
  seen('cut', c.cut, c.cut !== '');
  for (const [i, d] of c.dimensions.entries())
    seen(`dimensions[${i}]`, `${d.name} ${range(d.lowMm, d.highMm, 'mm')}`);
  seen('blood', `blood ${c.blood}${c.bloodHow === '' ? '' : `: ${c.bloodHow}`}`, c.blood === 'kept for us');
  seen('packed', c.packed, c.packed !== '');
  for (const [i, text] of c.labelled.entries()) seen(`labelled[${i}]`, `labelled: ${text}`);
  for (const [i, text] of c.documents.entries()) seen(`documents[${i}]`, `paper: ${text}`);
  for (const [i, text] of c.refusedIf.entries()) seen(`refusedIf[${i}]`, `not: ${text}`);
  return points;
}

const one = (C: number) => `${Number(C.toFixed(1))} °C`;

/** Day of the week (0 Monday) and the clock in a zone. */
function localOf(instant: string, zone: string): { day: number; clock: string } {
  const parts = new Intl.DateTimeFormat('en-GB', {
    timeZone: zone,
    weekday: 'long',
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  }).formatToParts(new Date(instant));
  const of = (type: string) => parts.find((p) => p.type === type)?.value ?? '';
  return { day: days.indexOf(of('weekday')), clock: `${of('hour')}:${of('minute')}` };
}

/** What the weights, the temperatures and the clock say to the points that they decide. */
export function measuredChecks(
  content: SpecificationContent,
  lines: readonly Pick<DeliveryLine, 'grams' | 'count' | 'arrivalC' | 'kind'>[],
  arrivedAt: string,
  zone: string,
): DeliveryCheck[] {
  const local = localOf(arrivedAt, zone);
  return pointsOf(content)
    .filter((p) => p.by === 'measured')
    .map(({ point, asked }): DeliveryCheck => {
      const say = (met: DeliveryCheck['met'], found: string): DeliveryCheck => ({ point, asked, met, found });
      if (point === 'arrivesAtMostC') {
        const unknown = lines.filter((l) => l.arrivalC === null).length;
        const known = lines.flatMap((l) => (l.arrivalC === null ? [] : [l.arrivalC]));
        const warmest = Math.max(...known);
        if (known.length > 0 && warmest > (content.arrivesAtMostC as number))
          return say('not met', one(warmest));
        return unknown > 0
          ? say('not looked at', `${unknown} of ${lines.length} not measured`)
          : say('met', one(warmest));
      }
      if (point === 'days')
        return say(content.days.includes(local.day) ? 'met' : 'not met', days[local.day] ?? '');
      if (point === 'clock') {
        const early = content.from !== null && local.clock < content.from;
        const late = content.until !== null && local.clock > content.until;
        return say(early || late ? 'not met' : 'met', local.clock);
      }
      const { low, high } = content.pieceGrams;
      const counted = lines.filter((l) => l.kind !== 'other' && l.count !== null);
      if (counted.length === 0) return say('not looked at', 'not counted');
      const each = counted.map((l) => l.grams / (l.count as number));
      const least = Math.min(...each);
      const most = Math.max(...each);
      const ok = (low === null || least >= low) && (high === null || most <= high);
      return say(
        ok ? 'met' : 'not met',
        least === most ? `${Math.round(least)} g each` : `${Math.round(least)} to ${Math.round(most)} g each`,
      );
    });
}

/** Lines that are warmer than the limit for what they are at this place. */
export function tooWarm(
  lines: readonly Pick<DeliveryLine, 'what' | 'class' | 'arrivalC' | 'frozen'>[],
  place: string,
): { line: number; found: string; limit: string; citation: string }[] {
  return lines.flatMap((l, line) => {
    if (l.arrivalC === null) return [];
    if (l.frozen)
      return l.arrivalC <= frozenAtMostC
        ? []
        : [
            {
              line,
              found: `${l.what} frozen, at ${one(l.arrivalC)}`,
              limit: `${frozenAtMostC} °C or colder`,
              citation: 'Reg (EC) 853/2004 Annex III Section V Chapter III, from memory',
            },
          ];
    const limit = l.class === null ? undefined : arrivalLimit(l.class, place);
    if (limit === undefined || l.arrivalC <= limit.atMostC) return [];
    return [
      {
        line,
        found: `${l.what} at ${one(l.arrivalC)}`,
        limit: `${limit.atMostC} °C or colder (${limit.class})`,
        citation: limit.citation,
      },
    ];
  });
}

/** A temperature that no chilled or frozen delivery has: doubted until it is said again. */
export function doubtfulArrivals(lines: DeliveryInput['lines']): Problem[] {
  const { lowC, highC } = plausibleArrival;
  return lines.flatMap((l, i): Problem[] => {
    if (l.arrivalC === null || l.arrivalCMeant || (l.arrivalC >= lowC && l.arrivalC <= highC)) return [];
    const asF = (l.arrivalC - 32) / 1.8;
    const slip = asF >= lowC && asF <= highC ? `; ${l.arrivalC} °F would be ${one(asF)}` : '';
    return [
      {
        path: `lines[${i}].arrivalC`,
        found: one(l.arrivalC),
        allowed: `${lowC} to ${highC} °C, or the same figure said again as meant${slip}`,
      },
    ];
  });
}
