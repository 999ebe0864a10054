/** A list of lines after one of them was typed or pasted into: a pasted list becomes lines of its own. Pure. */
export function linesAfter(values: readonly string[], index: number, text: string, most: number): string[] {
  const pieces = /[\r\n]/.test(text)
    ? text
        .split(/\r?\n|\r/)
        .map((p) => p.replace(/^\s*(?:[-•*]|\d+[.)])\s+/, '').trim())
        .filter((p) => p !== '')
    : [text];
  return [...values.slice(0, index), ...pieces, ...values.slice(index + 1)].slice(0, most);
}
