/** Which parts a dish is made of, as far as its own name and its steps say so. Pure. */
import {
  type LawAnswer,
  type LawPlace,
  lawOf,
  lawSpeciesOf,
  type Origin,
  partsNamed,
} from '../core/properties/parts-law.ts';
import type { Method } from './steps.ts';

export interface NamedPart {
  readonly species: string;
  readonly part: string;
  readonly from: string;
  readonly path: string;
  readonly law: LawAnswer;
  /** While nobody of the authority has agreed: an unknown stops only where it is the dish's own part. */
  readonly stops: boolean;
}

const forbidden = new Set(['prohibited', 'by-product by default: ask']);

/** "Pig’s lungs" in a dish of goose is of a pig: the animal that is named, else the dish's own. */
export function animalNamed(text: string, otherwise: string): { animal: string; named: boolean } {
  const words = text.trim().split(/\s+/);
  for (const count of [2, 1]) {
    if (words.length <= count) continue;
    const name = words
      .slice(0, count)
      .join(' ')
      .replace(/[’'‘`]s?$/, '');
    if (lawSpeciesOf(name) !== null) return { animal: name.toLowerCase(), named: true };
  }
  return { animal: otherwise, named: false };
}

/** Where the table has a row for every part of an animal, a name alone (salt, onion) says nothing. */
const everyPart = (species: string, place: LawPlace) =>
  lawOf(species, 'of no such name', place).status !== 'not known: ask';

export function partsNamedBy(
  dish: { readonly species: string; readonly part: string },
  method: Method,
  place: LawPlace,
): NamedPart[] {
  const law = lawOf(dish.species, dish.part, place);
  const found: NamedPart[] = [
    {
      ...{ species: dish.species, part: dish.part, law, from: 'the dish itself', path: 'part' },
      stops: forbidden.has(law.status) || law.status === 'not known: ask',
    },
  ];
  const take = (text: string, from: string, path: string, whole: boolean) => {
    for (const part of partsNamed(text)) {
      const { animal, named } = animalNamed(part, dish.species);
      const answer = lawOf(animal, part, place);
      // Free text names much that is no part of an animal; what is not known of it says nothing.
      if (!whole && (answer.status === 'not known: ask' || (!named && everyPart(animal, place)))) continue;
      found.push({ species: animal, part, law: answer, from, path, stops: forbidden.has(answer.status) });
    }
  };
  for (const [i, step] of method.entries()) {
    const from = `step ${i + 1}, ${step.name}`;
    if (step.kind === 'trim') take(step.part, from, `method[${i}].part`, true);
    if (step.kind === 'fill') take(step.casing, from, `method[${i}].casing`, false);
    if (step.kind === 'mix')
      for (const [j, line] of step.lines.entries())
        take(line.ingredient, from, `method[${i}].lines[${j}].ingredient`, false);
  }
  return found;
}

/** One part that a lot is of; an age of null is one that nobody has shown, an origin not said is none proven. */
export function partOfLot(
  species: string,
  part: string,
  from: string,
  place: LawPlace,
  origin: Origin = {},
): NamedPart {
  const law = lawOf(species, part, place, origin);
  return { species, part, law, from, path: 'lots', stops: forbidden.has(law.status) };
}
