/** Text that has to fit a width, without a ruler: letters of the sans are about half as wide as they are high. */
export const LETTER = 0.5;

/** Width of a text [same unit as size], a little generous. */
export const textWidth = (text: string, size: number): number => [...text].length * size * LETTER;

/** Breaks a text into at most `lines` lines of `width`; what does not fit ends in an ellipsis. */
export function fitText(text: string, width: number, size: number, lines: number): string[] {
  const most = Math.max(1, Math.floor(width / (size * LETTER)));
  const words = text.trim().split(/\s+/).filter(Boolean);
  const out: string[] = [];
  let line = '';
  for (const word of words) {
    const longer = line === '' ? word : `${line} ${word}`;
    if ([...longer].length <= most || line === '') line = longer;
    else {
      out.push(line);
      line = word;
    }
  }
  if (line !== '') out.push(line);
  const kept = out.slice(0, lines);
  const cut = out.length > lines;
  return kept.map((l, i) => {
    const letters = [...l];
    if (letters.length > most) return `${letters.slice(0, Math.max(1, most - 1)).join('')}…`;
    if (!cut || i < kept.length - 1) return l;
    return letters.length + 1 <= most ? `${l}…` : `${letters.slice(0, Math.max(1, most - 1)).join('')}…`;
  });
}
