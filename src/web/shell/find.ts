/** What a search finds and in which order; pure, so that it can be tested. */
export interface Findable {
  readonly id: string;
  /** What it is: `dish`, `batch`, `lot`, `place`, `do`. */
  readonly what: string;
  readonly name: string;
  /** Said after the name. */
  readonly detail: string;
}

/** Lower case, without accents. */
export function plain(text: string): string {
  return text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
}

/** Every word must occur; a name that begins with the words comes first, then a word that begins so. */
export function find<F extends Findable>(asked: string, all: readonly F[], most = 12): F[] {
  const words = plain(asked).split(/\s+/).filter(Boolean);
  if (words.length === 0) return all.slice(0, most);
  const scored: { item: F; score: number; order: number }[] = [];
  all.forEach((item, order) => {
    const name = plain(item.name);
    const whole = `${name} ${plain(item.detail)} ${plain(item.what)}`;
    if (!words.every((w) => whole.includes(w))) return;
    const first = words[0] ?? '';
    const score = name.startsWith(first)
      ? 0
      : new RegExp(`(^|[^\\p{L}\\p{N}])${literally(first)}`, 'u').test(name)
        ? 1
        : 2;
    scored.push({ item, score, order });
  });
  return scored
    .sort((a, b) => a.score - b.score || a.order - b.order)
    .slice(0, most)
    .map((s) => s.item);
}

const literally = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
