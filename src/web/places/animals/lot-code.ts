/** A code for the next lot of a day: the day, and a letter that is not taken. Pure. */
export function nextLotCode(day: Date, zone: string, taken: readonly string[]): string {
  const date = new Intl.DateTimeFormat('en-CA', {
    timeZone: zone,
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
  })
    .format(day)
    .slice(2)
    .replaceAll('-', '');
  for (let i = 0; i < 26 * 26; i += 1) {
    const letter = (n: number) => String.fromCharCode(65 + n);
    const code = `${date}-${i < 26 ? letter(i) : letter(Math.floor(i / 26) - 1) + letter(i % 26)}`;
    if (!taken.includes(code)) return code;
  }
  return `${date}-${taken.length + 1}`;
}
