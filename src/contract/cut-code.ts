/** The code of a lot that was cut of another: the animal's own code, a stroke, the part's name. Pure. */

/** The longest code a lot may have [characters]. */
const longest = 60;
/** Room for the number of a second one of the same name. */
const number = 4;

/** A name without marks and blanks; a long one ends at a word. */
function shortened(name: string, room: number): string {
  const plain = name
    .normalize('NFD')
    .replace(/[\u0300-\u036f’']/g, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
  if (plain.length <= room) return plain === '' ? 'part' : plain;
  const cut = plain.slice(0, room + 1).replace(/-[^-]*$/, '');
  return cut.length > room ? plain.slice(0, room) : cut;
}

/** A code that is not `taken` yet; the parent's own is kept whole up to 40 characters. */
export function cutCode(parent: string, part: string, taken: ReadonlySet<string>): string {
  const from = parent.slice(0, 40);
  const base = `${from}/${shortened(part, longest - number - from.length - 1)}`;
  for (let n = 1; ; n++) {
    const code = n === 1 ? base : `${base}-${n}`;
    if (!taken.has(code)) return code;
  }
}
