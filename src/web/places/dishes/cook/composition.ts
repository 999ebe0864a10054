/** A layer's composition as it is typed: shares in per cent, and what their sum says. */
import type { Composition } from '../../../../contract/quantities.ts';
import type { Method } from '../../../../contract/steps.ts';
import { mixtureOf } from '../../../../core/filling/composition.ts';

export const components: readonly { key: keyof Composition; label: string }[] = [
  { key: 'water', label: 'Water' },
  { key: 'protein', label: 'Protein' },
  { key: 'fat', label: 'Fat' },
  { key: 'carbohydrate', label: 'Carbohydrate' },
  { key: 'fibre', label: 'Fibre' },
  { key: 'ash', label: 'Ash and salt' },
];

export interface Sum {
  readonly pct: number;
  readonly ok: boolean;
  readonly words: string;
}

/** Do the shares come to a whole? As the engine asks it: 100 % ± 0.5. */
export function sumOf(composition: Composition): Sum {
  const pct = components.reduce((sum, { key }) => sum + composition[key], 0) * 100;
  const ok = Math.abs(pct - 100) <= 0.5 + 1e-9;
  const off = pct - 100;
  const shown = `${Math.round(pct * 100) / 100} %`;
  if (ok) return { pct, ok, words: `Together ${shown}.` };
  const amount = Math.round(Math.abs(off) * 100) / 100;
  return {
    pct,
    ok,
    words: `Together ${shown}: ${off > 0 ? `${amount} % too much` : `${amount} % is missing`}. The shares must come to 100 %, give or take 0.5.`,
  };
}

export type FromMix =
  | { readonly state: 'none' }
  | { readonly state: 'incomplete'; readonly name: string; readonly missing: readonly string[] }
  | { readonly state: 'known'; readonly name: string; readonly composition: Composition };

/** The composition of the mix step that comes last before a step; nothing is made up for lines that do not say theirs. */
export function fromMixBefore(method: Method, stepId: string): FromMix {
  const at = method.findIndex((s) => s.id === stepId);
  const mix = method.slice(0, Math.max(0, at)).findLast((s) => s.kind === 'mix');
  if (mix === undefined || mix.lines.length === 0) return { state: 'none' };
  const mixture = mixtureOf(
    mix.lines.map((line) => ({ mass: line.g / 1000, composition: line.composition, salt: line.salt })),
  );
  if (mixture.composition === null || mixture.missing.length > 0)
    return {
      state: 'incomplete',
      name: mix.name,
      missing: mixture.missing.map((i) => mix.lines[i]?.ingredient ?? ''),
    };
  const round = (x: number) => Math.round(x * 1e5) / 1e5;
  const c = mixture.composition;
  return {
    state: 'known',
    name: mix.name,
    composition: {
      water: round(c.water),
      protein: round(c.protein),
      fat: round(c.fat),
      carbohydrate: round(c.carbohydrate),
      fibre: round(c.fibre),
      ash: round(c.ash),
    },
  };
}
