/** A path of the contract as the field is called on screen. Pure. */
const names: Readonly<Record<string, string>> = {
  what: 'What',
  ageClass: 'Age or class',
  ageMonthsAtMost: 'Not older than',
  breedOrSystem: 'Breed, how it is kept',
  pieceGrams: 'Weight each',
  stunning: 'Stunning',
  bleeding: 'Bleeding',
  skin: 'Skin',
  head: 'Head',
  feet: 'Feet',
  drawn: 'Drawn or not',
  cut: 'Where it is cut, in words',
  dimensions: 'Length',
  blood: 'Blood',
  bloodHow: 'How the blood is kept',
  chilledToC: 'Chilled to',
  chilledWithinHours: 'Within',
  packed: 'Packed',
  labelled: 'On the label',
  documents: 'Papers',
  days: 'Days',
  from: 'From',
  until: 'Until',
  arrivesAtMostC: 'Arrives at',
  refusedIf: 'Refused if',
  note: 'Note',
};

export function fieldAt(path: string): string {
  const [, head, index] = /^(?:body\.)?(?:content\.)?(\w+)(?:\[(\d+)\])?/.exec(path) ?? [];
  const name = head === undefined ? undefined : names[head];
  if (name === undefined) return path;
  return index === undefined ? name : `${name}, line ${Number(index) + 1}`;
}
