/** What the question to the authority says before anybody has changed it: from the records and the engine. Pure. */
import type { ProbeLog } from '../../../../contract/records.ts';
import type { Specification } from '../../../../contract/specification.ts';
import { specificationLines } from '../../../../contract/specification-lines.ts';
import type { Method, StepOf } from '../../../../contract/steps.ts';
import type { CookVerdict } from '../../../../core/method/verdict.ts';
import { formatQuantity, plainNumber, type UnitSystem } from '../../../../core/units.ts';
import { settingText } from '../../../../documents/steps-in-words.ts';

const clip = (text: string, most: number) => (text.length <= most ? text : `${text.slice(0, most - 1)}…`);

/** A step a line, with its settings. */
export const processLines = (method: Method, units: UnitSystem): string[] =>
  method.map((step, i) => clip(`${i + 1}. ${step.name}: ${settingText(step, units)}`, 500));

/** What the engine foresees for one cook step, and what it cannot answer for. */
export function predictedLine(step: StepOf<'cook'>, verdict: CookVerdict, units: UnitSystem): string {
  const { referenceC, zC, min } = step.target;
  const at = formatQuantity(referenceC, 'temperature', units);
  const got = (s: number) => plainNumber(Math.floor((s / 60) * 100) / 100, 2);
  const doubts =
    verdict.doubts.length === 0
      ? ''
      : ` NOT KNOWN, because: ${verdict.doubts.map((d) => d.what).join('; ')}.`;
  const word =
    verdict.word === 'holds'
      ? 'It is predicted to hold'
      : verdict.word === 'short'
        ? 'It is predicted NOT to hold'
        : 'It is not known whether it holds';
  return clip(
    `${step.name}: ${word} at the coldest point: ${got(verdict.got)} min at ${at} or its equal (z ${plainNumber(zC, 1)} K), ${got(verdict.gotAtLiftOut)} min of it by lifting out; the target is ${plainNumber(min, 2)} min.${doubts} Computed, not measured.`,
    500,
  );
}

const passWords = (passes: boolean | null) =>
  passes === true ? 'holds' : passes === false ? 'does NOT hold' : 'undecided';

/** What probes measured, each log with the word of each rule on it. */
export const measuredLines = (logs: readonly ProbeLog[]): string[] =>
  logs.slice(0, 40).map((log) => {
    const warmest = log.points.reduce((most, p) => Math.max(most, p.C), Number.NEGATIVE_INFINITY);
    const rules = log.judgements.map((j) => `${j.title} ${passWords(j.passes)} (${j.why})`).join('; ');
    return clip(
      `Log ${log.name}, ${log.channel}${log.startedAt === null ? '' : `, begun ${log.startedAt.slice(0, 10)}`}: ${log.points.length} readings${log.points.length === 0 ? '' : `, warmest ${plainNumber(warmest, 1)} °C`}. ${rules === '' ? 'Judged by no rule.' : rules}`,
      500,
    );
  });

/** From whom, and what is agreed in writing, where it is of this animal. */
export function specificationText(
  specifications: readonly Specification[],
  species: string,
  units: UnitSystem,
): { readonly supplier: string; readonly text: string } {
  const fits = specifications.filter(
    (s) => s.endedAt === null && s.species.toLowerCase() === species.toLowerCase(),
  );
  const found = fits.findLast((s) => s.inForce !== null) ?? fits.at(-1);
  if (found === undefined) return { supplier: '', text: '' };
  const version = found.versions.find((v) => v.number === found.inForce);
  if (version === undefined)
    return { supplier: found.supplierName, text: `${found.name}: not agreed in writing yet.` };
  const lines = specificationLines(version.content, units).map(
    (l) => `${l.label}: ${l.text.replace(/[.\s]+$/, '')}`,
  );
  return {
    supplier: found.supplierName,
    text: clip(`${found.name}, version ${version.number}, agreed. ${lines.join('. ')}.`, 2_000),
  };
}

export const questionText = (species: string, part: string, dishName: string | null): string =>
  `May the ${part} of ${species}, from animals passed at inspection and meant for food from the start, be prepared and served here as described${dishName === null ? '' : `, as ${dishName}`}? If so, on which conditions, and until when?`;
