/** The specification on one A4 page: what is asked of a supplier, what the law asks of them, what is refused at the door. */
import type { Specification, SpecificationVersion } from '../contract/specification.ts';
import { specificationGroups, specificationLines } from '../contract/specification-lines.ts';
import { animalsOf, lawOf } from '../core/properties/parts-law.ts';
import { supplierDuties } from '../core/properties/supplier-duties.ts';
import { deference, placeName } from './cautions.ts';
import { moment, tied } from './format.ts';
import { pieceOutlineScene } from './pictures/piece-outline.ts';
import { toSvg } from './pictures/svg.ts';
import { type SheetFit, sheetFits, sheetLeftOff } from './specification-sheet-fit.ts';
import { specificationSheetSource } from './specification-sheet-source.ts';
import type { PrintedFor, TypstDocument } from './typst.ts';

export interface SpecificationSheetData extends PrintedFor {
  readonly specification: Pick<Specification, 'name' | 'species' | 'supplierName' | 'inForce' | 'endedAt'>;
  readonly version: SpecificationVersion;
}

const cautions = [
  'Nothing on this page makes a part fit for food: inspection does, and the official veterinarian decides at the slaughterhouse.',
  'A part that was once put aside as a by-product is never food again: settle this page before the day of slaughter.',
  'What the law asks is reported as its sources had it on the day named, and is not the whole of the law. It changes: ask.',
];

/** How a row is known, in one word for print. */
const known: Readonly<Record<string, string>> = {
  read: 'read',
  'partly read, partly from memory': 'partly read, partly from memory: check',
  memory: 'from memory: check',
  interpretation: 'our reading: check',
};

const whole = (what: string) => /^whole\b/i.test(what.trim());

function lawText(data: SpecificationSheetData) {
  const { place } = data.kitchen;
  const { species } = data.specification;
  const { what, ageMonthsAtMost } = data.version.content;
  if (whole(what))
    return {
      holds: animalsOf(species).length > 0,
      text:
        animalsOf(species).length > 0
          ? 'A whole animal: each of its parts has an answer of its own, and not every one may be eaten.'
          : `Not known: ask. Nothing is known here about ${species}.`,
    };
  const law = lawOf(species, what, place, ageMonthsAtMost === null ? {} : { ageMonths: ageMonthsAtMost });
  const holds = law.status === 'food' || law.status === 'food on conditions';
  const day = law.checked === null ? '' : `, checked ${law.checked}`;
  return {
    holds,
    text: `${holds ? law.status : law.status.toUpperCase()}. ${law.reason} (${law.citation}; ${known[law.confidence] ?? law.confidence}${day})`,
  };
}

/** Lines of a group as label and text; those with the same label are one after another under it. */
function groupsOf(data: SpecificationSheetData) {
  const lines = specificationLines(data.version.content, data.kitchen.units);
  return specificationGroups
    .filter((group) => group !== 'refused if')
    .map((group) => ({
      name: group,
      rows: lines
        .filter((l) => l.group === group)
        .map((l, i, all) => [all[i - 1]?.label === l.label ? '' : l.label, tied(l.text)]),
    }))
    .filter((g) => g.rows.length > 0);
}

function pictureOf(data: SpecificationSheetData) {
  const { what, dimensions } = data.version.content;
  if (dimensions.length === 0) return null;
  const scene = pieceOutlineScene(data.specification.species, what, dimensions, {
    width: 330,
    units: data.kitchen.units,
  });
  return { svg: toSvg(scene), alt: scene.title };
}

function standingText(data: SpecificationSheetData): string {
  const { specification: s, version: v } = data;
  if (s.endedAt !== null) return `Ended ${moment(s.endedAt, data.kitchen.zone)}`;
  if (v.status === 'draft') return 'DRAFT — NOT SENT';
  const sent = `Sent ${v.sentAt === null ? '' : moment(v.sentAt, data.kitchen.zone)} by ${v.sentBy ?? 'somebody unknown'}`;
  if (s.inForce === v.number) return `${sent}; in force`;
  return s.inForce === null ? `${sent}; not agreed yet` : `${sent}; version ${s.inForce} is in force`;
}

/** `beside`: what the law asks begins a column of its own. */
export function specificationSheet(
  data: SpecificationSheetData,
  fit: SheetFit = sheetFits[0]!,
  beside = false,
): TypstDocument {
  const { specification: s, version: v, kitchen } = data;
  const picture = pictureOf(data);
  const answers = [...v.answers].reverse();
  const duties = supplierDuties(s.species, v.content.what, kitchen.place);
  const law = lawText(data);
  const body = {
    title: `${s.name}, version ${v.number}`,
    author: kitchen.name,
    name: s.name,
    supplier: s.supplierName,
    what: `${v.content.what}, ${s.species}`,
    version: `Version ${v.number}`,
    reason: v.number === 1 ? '' : v.reason,
    standing: standingText(data),
    stands: v.status === 'sent' && s.endedAt === null && s.inForce === v.number,
    stamp: s.endedAt !== null ? 'ENDED' : v.status === 'draft' ? 'DRAFT — NOT SENT' : '',
    kitchen: kitchen.name,
    place: placeName(kitchen.place),
    size: fit.size,
    beside,
    law,
    groups: groupsOf(data),
    refused: v.content.refusedIf.map(tied),
    picture: fit.picture ? picture : null,
    duties: duties.map((d) => ({
      about: d.about,
      text: tied(d.text),
      cite: `${d.citation} (${known[d.confidence] ?? d.confidence})`,
    })),
    dutiesDay: duties[0]?.checked ?? '',
    answers: answers.slice(0, fit.answers).map((a) => ({
      word: a.answer,
      text: `${a.saidBy}, ${moment(a.at, kitchen.zone)}, written down by ${a.by}${a.note === '' ? '' : `: ${a.note}`}`,
    })),
    cautions,
    deference: deference(kitchen.place),
    demo: kitchen.demo,
    leftOff: sheetLeftOff(fit, { picture: picture !== null, answers: answers.length }),
    printed: `Printed ${moment(data.printedAt, kitchen.zone)}. A newer version may have been sent since.`,
  };
  return {
    name: 'specification',
    source: specificationSheetSource,
    inputs: { data: JSON.stringify(body) },
  };
}
