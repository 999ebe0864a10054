import { useState } from 'react';
import { Link } from 'wouter';
import type { PantryIngredient } from '../../../../contract/pantry.ts';
import { at } from '../../../addresses.ts';
import { useOperation } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { EmptyPlace } from '../../../parts/empty-place.tsx';
import { TextField } from '../../../parts/field.tsx';
import { money } from '../../../parts/money.ts';
import { Problem } from '../../../parts/problem.tsx';
import { ScrollAcross } from '../../../parts/scroll-across.tsx';
import { AddIngredient } from './add-ingredient.tsx';
import { allergenWords, notKnownOf } from './ingredient-words.ts';

/** What the kitchen mixes with: what it is made of, what it costs today, what it holds for a guest. */
export function IngredientsPage() {
  const kitchen = useKitchen();
  const pantry = useOperation('pantry', { params: { kitchenId: kitchen.id } });
  const [sought, seek] = useState('');
  if (pantry.error !== null && pantry.data === undefined)
    return (
      <div className="page">
        <Problem error={pantry.error} retry={() => pantry.refetch()} />
      </div>
    );
  if (pantry.data === undefined) return <p className="page quiet">Reading the ingredients…</p>;
  const { ingredients, day } = pantry.data;
  const words = sought.trim().toLowerCase();
  const shown = ingredients
    .filter((i) => words === '' || i.name.toLowerCase().includes(words))
    .sort((a, b) => Number(a.putAway) - Number(b.putAway) || a.name.localeCompare(b.name));
  return (
    <article className="page stack-wide">
      <header className="stack">
        <h1>Ingredients</h1>
        <p className="measure">
          Each rests on a published row or on what the kitchen has measured. Prices are of {day}; dishes
          follow them at once.
        </p>
      </header>
      {ingredients.length === 0 ? (
        <EmptyPlace title="Nothing is in the pantry yet">
          <p>
            Add the first ingredient: choose the row of the published table that it is, and what a pack costs.
          </p>
        </EmptyPlace>
      ) : (
        <>
          <TextField label="Find" value={sought} onChange={seek} autoComplete="off" />
          {shown.length === 0 ? <p>No ingredient is called that.</p> : null}
          <List shown={shown} />
        </>
      )}
      <AddIngredient known={ingredients} />
      <Caution place={kitchen.place}>
        <p>Allergens come from a table and from what was entered; the label of what was bought decides.</p>
      </Caution>
    </article>
  );
}

function List({ shown }: { readonly shown: readonly PantryIngredient[] }) {
  const kitchen = useKitchen();
  if (shown.length === 0) return null;
  return (
    <ScrollAcross label="Ingredients" className="pantry-list">
      <table>
        <caption className="unseen">Ingredients</caption>
        <thead>
          <tr>
            <th scope="col">Ingredient</th>
            <th scope="col" className="number">
              a kilogram
            </th>
            <th scope="col">allergens</th>
            <th scope="col">not known</th>
          </tr>
        </thead>
        <tbody>
          {shown.map((i) => (
            <tr key={i.id}>
              <th scope="row">
                <Link href={at.ingredient(kitchen.id, i.id)}>{i.name}</Link>
                {i.putAway ? <span className="quiet"> (put away)</span> : null}
              </th>
              <td className="number">
                {i.costPerKg === null ? 'no price' : money(Math.round(i.costPerKg), kitchen.currency)}
              </td>
              <td>{allergenWords(i.allergens)}</td>
              <td className="small quiet">{notKnownOf(i.nutrients)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollAcross>
  );
}
