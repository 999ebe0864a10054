/** The method card: one A4 page for the wall, from which whoever is on shift gets the same result. */
import { cureProblemOf } from '../contract/method-cure.ts';
import { standing } from '../contract/standing.ts';
import { rulesOfStep } from '../contract/step-rules.ts';
import type { Ask, Step } from '../contract/steps.ts';
import type { Place } from '../core/heat/types.ts';
import { foreseenCooking, lessThanUsual } from '../core/method/foreseen-rules.ts';
import { type RestsOn, verdictOf } from '../core/method/verdict.ts';
import { findRule } from '../core/properties/rules.ts';
import { cite } from '../core/sources.ts';
import { cookingCautions, deference, placeName } from './cautions.ts';
import { type CuredStep, cureOnCard } from './cure-on-card.ts';
import { duration, length, moment, number, temperature, tied, type Units, weight, worth } from './format.ts';
import { lawOnCard } from './law-on-card.ts';
import type { CookedStep, MethodCardData } from './method-card-data.ts';
import { cut, type Fit, fits, leftOffText } from './method-card-fit.ts';
import { methodCardSource } from './method-card-source.ts';
import { curvesScene } from './pictures/curves.ts';
import { cutThroughScene } from './pictures/cut-through.ts';
import { methodRibbonScene } from './pictures/method-ribbon.ts';
import { saltFrontScene } from './pictures/salt-front.ts';
import type { Scene } from './pictures/scene.ts';
import { toSvg } from './pictures/svg.ts';
import { limitText, settingText } from './steps-in-words.ts';
import type { TypstDocument } from './typst.ts';
import { warmedOnCard } from './warmed-on-card.ts';

const picture = (scene: Scene) => ({ svg: toSvg(scene), alt: scene.title });

const isCooked = (cook: MethodCardData['cooks'][number]): cook is CookedStep => 'result' in cook;

/** Where the coldest point is, in words. */
function placeText(place: Place, units: Units): string {
  const radius =
    place.radius === undefined
      ? ''
      : place.radius < 0.0005
        ? 'on the axis'
        : `${length(place.radius * 1000, units)} off the axis`;
  if (place.at !== undefined)
    return `${length(place.at * 1000, units)} from the left end of the drawing, ${radius}`;
  if (place.radius !== undefined)
    return place.radius < 0.0005
      ? 'in the very middle'
      : `${length(place.radius * 1000, units)} from the middle`;
  const off = Math.hypot(place.x ?? 0, place.y ?? 0);
  return off < 0.0005 ? 'in the very middle' : `${length(off * 1000, units)} from the middle`;
}

interface VerdictText {
  readonly word: string;
  readonly colour: 'herb' | 'ember' | 'rust';
  readonly text: string;
}

const reckoned: Readonly<Record<RestsOn, Omit<VerdictText, 'text'>>> = {
  'lift-out': { word: 'Reckoned to hold', colour: 'herb' },
  barely: { word: '▲ Reckoned only just to hold', colour: 'ember' },
  after: { word: '▲ Reckoned to hold only with what comes after lifting out', colour: 'ember' },
};

function verdictText(step: Step, cooked: CookedStep, units: Units): VerdictText {
  const verdict = verdictOf(cooked.problem, cooked.result, cooked.cookStages);
  const rules = rulesOfStep(step).flatMap((id) => findRule(id) ?? []);
  const unmet = foreseenCooking(cooked.result, rules).filter((rule) => rule.passes !== true);
  const own = lessThanUsual(cooked.problem.target)
    ? ' The target is the kitchen’s own, and less than 70\u00a0°C for 2\u00a0min.'
    : '';
  const reference = temperature(cooked.problem.target.reference, units);
  const minutes = (s: number) => worth(s / 60, verdict.needed / 60);
  const had = `The coldest point, ${placeText(verdict.coldSpot, units)}, gets ${minutes(verdict.got)} at ${reference} or its equal (z ${number(cooked.problem.target.z, 1)}\u00a0°C); it needs ${number(verdict.needed / 60, 1)}\u00a0min.`;
  const out = `At lifting out, after ${duration(verdict.liftOut / 60)}, it is at ${temperature(Math.floor(verdict.coreAtLiftOut * 10) / 10, units)} and has had ${minutes(verdict.gotAtLiftOut)}.`;
  if (verdict.word === 'holds' && unmet.length > 0)
    return {
      word: 'Does not meet its rule',
      colour: 'rust',
      text: `${unmet.map((rule) => `${rule.rule.title}: ${rule.why.replaceAll('into the log', 'into the cook')}`).join(' ')}${own} Not to be served as it stands.`,
    };
  if (verdict.word === 'holds') return { ...reckoned[verdict.restsOn], text: `${had} ${out}${own}` };
  if (verdict.word === 'short')
    return { word: 'Does not hold', colour: 'rust', text: `${had} ${out} Not to be served as it stands.` };
  return {
    word: 'Unknown',
    colour: 'rust',
    text: `${verdict.doubts.map((d) => d.what).join('; ')}. Not to be served as it stands.`,
  };
}

interface Limit {
  readonly text: string;
  /** Number of the note that says what it rests on; 0 where there is none. */
  readonly note: number;
}

/** Limits in the order they are printed, each with the number of the note that says what it rests on. */
class Notes {
  readonly texts: string[] = [];
  numberOf(text: string): number {
    const at = this.texts.indexOf(text);
    return at >= 0 ? at + 1 : this.texts.push(text);
  }
}

/** The rules a core log of this step is judged by, as one limit each. */
function ruleLimits(step: Step, notes: Notes): Limit[] {
  return rulesOfStep(step).map((id) => {
    const rule = findRule(id);
    if (rule === undefined) return { text: `rule ${id} is not in the book, so unknown: ask`, note: 0 };
    return {
      text: `${rule.title} (${rule.place}, ${rule.type})`,
      note: notes.numberOf(cite(rule.source)),
    };
  });
}

function asksOf(step: Step, units: Units, notes: Notes): { limits: Limit[]; checks: string[] } {
  const words = (ask: Ask) => {
    const limit = limitText(ask, units);
    return limit === '' ? ask.label : `${ask.label}: ${limit}`;
  };
  const rules = ruleLimits(step, notes);
  const logs = step.asks.filter((ask) => ask.kind === 'core log');
  const limits = step.asks
    .filter((ask) => ask.critical === true && ask.kind !== 'core log')
    .map((ask) => ({ text: words(ask), note: ask.basis === undefined ? 0 : notes.numberOf(ask.basis) }));
  const log = logs.map((ask) => ask.label).join('; ');
  if (rules.length > 0)
    limits.push(...rules.map((r, i) => (i === 0 && log !== '' ? { ...r, text: `${log}: ${r.text}` } : r)));
  else if (log !== '') limits.push({ text: `${log}: no rule named, so it proves nothing yet`, note: 0 });
  return {
    limits,
    checks: step.asks.filter((ask) => ask.critical !== true && ask.kind !== 'core log').map(words),
  };
}

/** Minutes the engine found for the stages of a cook step or of the chill that follows it. */
function reckonedOf(step: Step, data: MethodCardData): number[] {
  const minutes = (cooked: CookedStep) => cooked.result.stages.map((s) => (s.end - s.start) / 60);
  const own = data.cooks.filter(isCooked);
  if (step.kind === 'cook') {
    const cooked = own.find((c) => c.stepId === step.id);
    return cooked === undefined ? [] : minutes(cooked).slice(0, cooked.cookStages);
  }
  const warmed = data.warmed?.find((w) => w.stepId === step.id);
  if (warmed !== undefined && 'seen' in warmed) return [...warmed.minutes];
  if (step.kind !== 'chill') return [];
  const before = data.version.method
    .slice(0, data.version.method.indexOf(step))
    .findLast((s) => s.kind === 'cook');
  const cooked = own.find((c) => c.stepId === before?.id);
  return cooked === undefined ? [] : minutes(cooked).slice(cooked.cookStages);
}

/** The salt across the piece at the end of the cure, to be laid under its step. */
function saltPicture(step: Step, data: MethodCardData, cured: CuredStep | undefined) {
  if (step.kind !== 'cure' || cured === undefined || !('foreseen' in cured)) return null;
  const cure = cureProblemOf(data.version.method, step);
  const { result } = cured.foreseen;
  const end = result.history.at(-1);
  if (cure === null || end === undefined) return null;
  const { units } = data.kitchen;
  return picture(saltFrontScene(result, cure.problem.piece, { width: 420, height: 170, units, time: end.t }));
}

/** What the engine says of a finish with a programme; nothing of one without. */
function warmedText(step: Step, data: MethodCardData): VerdictText | null {
  if (step.kind !== 'finish' || (step.stages ?? []).length === 0) return null;
  const warmed = data.warmed?.find((w) => w.stepId === step.id);
  const rust = (word: string, text: string): VerdictText => ({ word, colour: 'rust', text });
  if (warmed === undefined) return rust('Unknown', 'The engine has not been run on this step.');
  if ('why' in warmed) return rust('Unknown', warmed.why);
  return warmedOnCard(warmed, data.kitchen.units);
}

function stepOf(step: Step, i: number, data: MethodCardData, fit: Fit, notes: Notes) {
  const { units } = data.kitchen;
  const { limits, checks } = asksOf(step, units, notes);
  const cook = data.cooks.find((c) => c.stepId === step.id);
  const cured = data.cures?.find((c) => c.stepId === step.id);
  const verdict =
    step.kind === 'cure'
      ? cureOnCard(step, cured, data.kitchen.place)
      : step.kind !== 'cook'
        ? warmedText(step, data)
        : cook === undefined
          ? {
              word: 'Unknown',
              colour: 'rust',
              text: 'The engine has not been run on this step. Not to be served as it stands.',
            }
          : isCooked(cook)
            ? verdictText(step, cook, units)
            : { word: 'Unknown', colour: 'rust', text: `${cook.why} Not to be served as it stands.` };
  return {
    n: String(i + 1),
    name: step.name,
    setting: settingText(step, units, reckonedOf(step, data)),
    hands: step.handsMin > 0 ? `hands ${duration(step.handsMin)}` : '',
    how: tied(cut(step.how, fit.howMost)),
    weights: step.kind === 'mix' ? step.lines.map((line) => [weight(line.g, units), line.ingredient]) : [],
    total:
      step.kind === 'mix'
        ? weight(
            step.lines.reduce((sum, line) => sum + line.g, 0),
            units,
          )
        : '',
    limits: limits.map((l) => ({ text: l.text, note: fit.without.has('bases') ? 0 : l.note })),
    checks: fit.without.has('checks') ? [] : checks,
    verdict,
    salted: cured !== undefined && 'foreseen' in cured,
    picture: fit.without.has('salt') ? null : saltPicture(step, data, cured),
  };
}

function picturesOf(data: MethodCardData, fit: Fit) {
  const { units } = data.kitchen;
  const cooks = data.cooks.filter(isCooked);
  /** Two cooks share the room of one. */
  const room = cooks.length > 1 ? 0.62 : 1;
  return cooks.map((cooked) => {
    const { liftOut } = verdictOf(cooked.problem, cooked.result, cooked.cookStages);
    const frame = [...cooked.result.frames].sort(
      (a, b) => Math.abs(a.t - liftOut) - Math.abs(b.t - liftOut),
    )[0];
    const name = data.version.method.find((s) => s.id === cooked.stepId)?.name ?? '';
    return {
      title: name,
      lifted: duration(liftOut / 60),
      section:
        frame === undefined || fit.without.has('sections')
          ? null
          : picture(
              cutThroughScene(cooked.result, frame, {
                width: 430,
                maxHeight: 122 * room,
                units,
                needed: cooked.problem.target.s,
              }),
            ),
      curves: fit.without.has('curves')
        ? null
        : picture(
            curvesScene(cooked.result, {
              width: 430,
              height: 240 * Math.sqrt(room),
              units,
              target: cooked.problem.target,
            }),
          ),
    };
  });
}

function sourcesOf(data: MethodCardData): string[] {
  const keys = new Set(data.cooks.filter(isCooked).flatMap((c) => c.result.basis.map((b) => b.source)));
  return [...keys].map((key) => cite(key));
}

function signature(data: MethodCardData): string {
  const { version, kitchen } = data;
  return version.status === 'signed' && version.signedAt !== null && version.signedBy !== null
    ? `Signed by ${version.signedBy}, ${moment(version.signedAt, kitchen.zone)}`
    : 'DRAFT — NOT SIGNED';
}

/** The card set in one of the ways of `fits`; the caller takes the first that comes to one page. */
export function methodCard(data: MethodCardData, fit: Fit = fits[0]!): TypstDocument {
  const { dish, kitchen, version } = data;
  const notes = new Notes();
  const steps = version.method.map((step, i) => stepOf(step, i, data, fit, notes));
  const body = {
    title: `${dish.name}, version ${version.number}`,
    author: kitchen.name,
    dish: dish.name,
    what: `${dish.part}, ${dish.species}`,
    version: `Version ${version.number}`,
    kitchen: kitchen.name,
    place: placeName(kitchen.place),
    signed: version.status === 'signed',
    signature: signature(data),
    story: fit.without.has('story') ? '' : dish.story,
    law: lawOnCard(data),
    size: fit.size,
    ribbon:
      fit.without.has('ribbon') || version.method.length === 0
        ? null
        : picture(methodRibbonScene(version.method, { width: 960, units: kitchen.units })),
    steps,
    pictures: picturesOf(data, fit),
    notes: fit.without.has('bases') ? [] : notes.texts,
    sources: fit.without.has('citations') ? [] : sourcesOf(data),
    // What was told with this signature stands on its card too; what is told with every one, the card says in its own words.
    told: (version.evidence?.cautions ?? []).filter((c) => !standing.includes(c)),
    cautions: cookingCautions,
    deference: deference(kitchen.place),
    demo: kitchen.demo,
    leftOff: leftOffText(fit, steps.some((s) => s.salted) ? undefined : new Set(['salt'])),
    printed: `Printed ${moment(data.printedAt, kitchen.zone)}. A newer version may have been signed since.`,
  };
  return { name: 'method-card', source: methodCardSource, inputs: { data: JSON.stringify(body) } };
}
