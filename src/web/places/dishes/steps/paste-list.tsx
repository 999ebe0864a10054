/** A list as a chef writes it, read into lines: every guess is shown, with what else it may be, before anything is taken. */
import { useEffect, useMemo, useState } from 'react';
import type { KnownFood, ReadIngredient } from '../../../../contract/ingredient-text.ts';
import type { LineOf } from '../../../../contract/pantry.ts';
import type { Pantry } from '../../../../contract/pantry-answer.ts';
import type { MixLine } from '../../../../contract/steps.ts';
import { plainNumber, type UnitSystem } from '../../../../core/units.ts';
import { Button } from '../../../parts/button.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { Dialog } from '../../../parts/dialog.tsx';
import { TextField } from '../../../parts/field.tsx';

type Read = typeof import('../../../../contract/ingredient-text.ts').readIngredients;

/** What the kitchen has by name: its ingredients, parts and dishes. */
export function knownFoods(pantry: Pantry | undefined, dishId: string): KnownFood[] {
  if (pantry === undefined) return [];
  return [
    ...pantry.ingredients
      .filter((i) => !i.putAway)
      .map(
        (i): KnownFood => ({
          of: { kind: 'ingredient', id: i.id },
          name: i.name,
          tableId: i.tableId,
          pieceG: i.pieceG,
          densityKgM3: i.densityKgM3,
        }),
      ),
    ...pantry.parts.map(
      (p): KnownFood => ({
        of: { kind: 'part', id: p.id },
        name: `${p.species} ${p.name}`,
        tableId: p.tableId,
      }),
    ),
    ...pantry.dishes
      .filter((d) => d.id !== dishId)
      .map((d): KnownFood => ({ of: { kind: 'dish', id: d.id }, name: d.name })),
  ];
}

/** What is taken over: a line for each that has a weight, in the order of the list. */
export function linesTaken(items: readonly ReadIngredient[], chosen: readonly (string | null)[]): MixLine[] {
  return items.flatMap((item, i): MixLine[] => {
    if (item.g === null && item.pctOfMeat === null) return [];
    const key = chosen[i] ?? null;
    const of = [item.guess, ...item.alternatives].find((g) => g !== null && keyOf(g.of) === key);
    return [
      {
        ingredient: (of?.name ?? item.name).slice(0, 200) || item.text.slice(0, 200),
        g: Number((item.g ?? 0).toFixed(3)),
        ...(of === undefined || of === null ? {} : { of: of.of }),
        ...(item.pctOfMeat === null
          ? {}
          : { amount: { by: 'pct of the meat' as const, pct: item.pctOfMeat } }),
      },
    ];
  });
}

export const keyOf = (of: LineOf): string => `${of.kind}:${of.id}`;
const nothing = 'nothing that is known';

export interface PasteListProps {
  readonly start: string;
  readonly units: UnitSystem;
  readonly pantry: Pantry | undefined;
  readonly dishId: string;
  readonly onTake: (lines: readonly MixLine[], left: readonly string[]) => void;
  readonly onClose: () => void;
}

export function PasteList({ start, units, pantry, dishId, onTake, onClose }: PasteListProps) {
  const [text, setText] = useState(start);
  const [read, setRead] = useState<Read | null>(null);
  const [picked, pick] = useState<Readonly<Record<string, string>>>({});
  useEffect(() => {
    let here = true;
    void import('../../../../contract/ingredient-text.ts').then((m) => {
      if (here) setRead(() => m.readIngredients);
    });
    return () => {
      here = false;
    };
  }, []);
  const items = useMemo(
    () =>
      read === null || text.trim() === ''
        ? []
        : read(text, { system: units, known: knownFoods(pantry, dishId) }),
    [read, text, units, pantry, dishId],
  );
  const keys = items.map((item, i) => {
    const own = picked[`${i} ${item.text}`];
    if (own !== undefined) return own === nothing ? null : own;
    return item.guess === null ? null : keyOf(item.guess.of);
  });
  const left = items.filter((i) => i.g === null && i.pctOfMeat === null).map((i) => i.text);
  const lines = linesTaken(items, keys);
  return (
    <Dialog open title="A list of ingredients" onClose={onClose}>
      <TextField
        label="As you would write it"
        value={text}
        onChange={setText}
        lines={6}
        maxLength={20_000}
        hint="400 g goose meat, 3 egg whites, pinch of mace; one to a line, or with commas."
        autoFocus
      />
      {text.trim() !== '' && read === null ? <p className="quiet">Reading…</p> : null}
      <ul className="paste-items">
        {items.map((item, i) => {
          const options = [item.guess, ...item.alternatives].flatMap((g) =>
            g === null
              ? []
              : [{ value: keyOf(g.of), label: `${g.name}${g.of.kind === 'table' ? '' : ' (here)'}` }],
          );
          const unweighed = item.g === null && item.pctOfMeat === null;
          return (
            <li key={`${i} ${item.text}`} className="stack">
              <p>
                <strong>{item.text}</strong>
                {unweighed
                  ? ''
                  : `: ${item.pctOfMeat === null ? `${plainNumber(item.g ?? 0, 1)} g` : `${plainNumber(item.pctOfMeat, 2)} % of the meat`}`}
                {item.how === '' ? '' : ` (${item.how})`}
              </p>
              {unweighed ? null : (
                <Choice
                  label={item.sure === 'sure' ? 'It is' : 'Taken for; look'}
                  value={keys[i] ?? nothing}
                  options={[...options, { value: nothing, label: 'nothing that is known: only its name' }]}
                  onChange={(v) => pick((p) => ({ ...p, [`${i} ${item.text}`]: v }))}
                />
              )}
              {item.why === '' ? null : <p className="small quiet">{item.why}</p>}
            </li>
          );
        })}
      </ul>
      {left.length === 0 ? null : (
        <p>
          <strong>No weight, so not taken:</strong> {left.join(' · ')}
        </p>
      )}
      <Button kind="strong" onPress={() => onTake(lines, left)} disabled={lines.length === 0}>
        Take {lines.length === 1 ? 'this line' : `these ${lines.length} lines`}
      </Button>
    </Dialog>
  );
}
