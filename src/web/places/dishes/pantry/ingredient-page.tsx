import { useState } from 'react';
import { v7 as uuid } from 'uuid';
import { Link } from 'wouter';
import type { PantryIngredient } from '../../../../contract/pantry.ts';
import { nutrients } from '../../../../core/filling/food.ts';
import { formatQuantity, plainNumber } from '../../../../core/units.ts';
import { at } from '../../../addresses.ts';
import { call, queryClient, useOperation } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Button } from '../../../parts/button.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { Field, TextField } from '../../../parts/field.tsx';
import { moment } from '../../../parts/moment.ts';
import { money } from '../../../parts/money.ts';
import { NumberField } from '../../../parts/number-field.tsx';
import { Problem } from '../../../parts/problem.tsx';
import { say } from '../../../parts/toast.tsx';
import { allergenWords } from './ingredient-words.ts';

/** One ingredient: what it is made of and by whose word, every price there was, what its label says. */
export function IngredientPage({ ingredientId }: { readonly ingredientId: string }) {
  const kitchen = useKitchen();
  const pantry = useOperation('pantry', { params: { kitchenId: kitchen.id } });
  if (pantry.error !== null && pantry.data === undefined)
    return (
      <div className="page">
        <Problem error={pantry.error} retry={() => pantry.refetch()} />
      </div>
    );
  if (pantry.data === undefined) return <p className="page quiet">Reading the ingredient…</p>;
  const found = pantry.data.ingredients.find((i) => i.id === ingredientId);
  if (found === undefined)
    return (
      <div className="page stack">
        <h1>No such ingredient</h1>
        <p>
          <Link href={at.ingredients(kitchen.id)}>All ingredients</Link>
        </p>
      </div>
    );
  const users = pantry.data.dishes.filter((d) =>
    d.lines.some((l) => l.ingredientId === found.id || (l.of?.kind === 'ingredient' && l.of.id === found.id)),
  );
  return (
    <article className="page stack-wide">
      <header className="stack">
        <p className="not-on-paper">
          <Link href={at.ingredients(kitchen.id)}>All ingredients</Link>
        </p>
        <h1>{found.name}</h1>
        <p className="quiet">
          {found.putAway ? 'Put away: dishes that use it still reckon with it. ' : ''}
          {found.costPerKg === null
            ? 'No price holds today.'
            : `${money(Math.round(found.costPerKg), kitchen.currency)} a kilogram weighed in, today.`}
          {found.trimPct > 0 ? ` ${plainNumber(found.trimPct, 1)} % is cut away before.` : ''}
        </p>
      </header>
      <Prices ingredient={found} today={pantry.data.day} />
      <Allergens ingredient={found} />
      <MadeOf ingredient={found} />
      <section className="stack" aria-labelledby="used-in">
        <h2 id="used-in">Where it is used</h2>
        {users.length === 0 ? (
          <p>In no dish.</p>
        ) : (
          <ul>
            {users.map((d) => (
              <li key={d.id}>
                <Link href={at.dish(kitchen.id, d.id)}>{d.name}</Link>
              </li>
            ))}
          </ul>
        )}
      </section>
      <Caution place={kitchen.place}>
        <p>Allergens come from a table and from what was entered; the label of what was bought decides.</p>
      </Caution>
    </article>
  );
}

const again = () => queryClient.invalidateQueries({ queryKey: ['pantry'] });

function Prices({ ingredient, today }: { readonly ingredient: PantryIngredient; readonly today: string }) {
  const kitchen = useKitchen();
  const [packG, setPackG] = useState<number | null>(ingredient.prices[0]?.packG ?? 1000);
  const [price, setPrice] = useState<number | null>(null);
  const [from, setFrom] = useState(today);
  const [id, setId] = useState(() => uuid());
  const [error, setError] = useState<unknown>(null);
  const keep = async () => {
    setError(null);
    try {
      if (packG === null || price === null) throw new Error('Say what the pack weighs and what it costs.');
      await call('priceIngredient', {
        params: { kitchenId: kitchen.id, ingredientId: ingredient.id },
        body: { id, packG, price: Math.round(price * 100), supplierId: null, from, note: '' },
      });
      await again();
      await queryClient.invalidateQueries({ queryKey: ['dishNumbers'] });
      setId(uuid());
      setPrice(null);
      say('The price is kept; dishes follow it from its first day.');
    } catch (caught) {
      setError(caught);
    }
  };
  return (
    <section className="stack" aria-labelledby="prices">
      <h2 id="prices">Prices</h2>
      {ingredient.prices.length === 0 ? <p>Nobody has entered one.</p> : null}
      <ul>
        {ingredient.prices.map((p) => (
          <li key={p.id}>
            From {p.from}: {money(p.price, kitchen.currency)} for{' '}
            {formatQuantity(p.packG, 'mass', kitchen.units)}
            {p.id === ingredient.priceId ? <strong> (holds today)</strong> : null}{' '}
            <span className="quiet small">
              {p.by}, {moment(p.recordedAt, kitchen.zone)}
              {p.note === '' ? '' : `: ${p.note}`}
            </span>
          </li>
        ))}
      </ul>
      <div className="fields not-on-paper">
        <NumberField
          label="A pack weighs"
          unit="g"
          value={packG}
          low={0.1}
          high={10_000_000}
          optional
          onChange={setPackG}
        />
        <NumberField
          label="A pack costs"
          unit={kitchen.currency}
          value={price}
          low={0}
          high={1_000_000}
          optional
          onChange={setPrice}
        />
        <Field label="First day it holds">
          {(tie) => (
            <input
              {...tie}
              className="control"
              type="date"
              value={from}
              onChange={(e) => setFrom(e.target.value)}
            />
          )}
        </Field>
      </div>
      {error === null ? null : <Problem error={error} />}
      <p className="not-on-paper">
        <Button kind="strong" onPress={keep} busy="Keeping…">
          Keep this price
        </Button>
      </p>
    </section>
  );
}

function Allergens({ ingredient }: { readonly ingredient: PantryIngredient }) {
  const kitchen = useKitchen();
  const { looked } = ingredient;
  const [product, setProduct] = useState('');
  const [says, setSays] = useState('');
  const [named, setNamed] = useState('');
  const [id, setId] = useState(() => uuid());
  const [error, setError] = useState<unknown>(null);
  const keep = async () => {
    setError(null);
    try {
      const marks = named
        .split(/[,;]/)
        .map((w) => w.trim().toLowerCase())
        .filter((w) => w !== '');
      await call('lookAtLabel', {
        params: { kitchenId: kitchen.id, ingredientId: ingredient.id },
        body: {
          id,
          product,
          supplierId: null,
          says,
          marks: marks.map((allergen) => ({ allergen })),
          mayContain: [],
          at: new Date().toISOString(),
        } as never,
      });
      await again();
      setId(uuid());
      setProduct('');
      setSays('');
      setNamed('');
      say('What its label says is kept.');
    } catch (caught) {
      setError(caught);
    }
  };
  return (
    <section className="stack" aria-labelledby="allergens">
      <h2 id="allergens">Allergens</h2>
      <p>{allergenWords(ingredient.allergens)}</p>
      <p className="quiet">
        {looked === null
          ? 'Nobody has looked at a label yet.'
          : `${looked.by} looked at the label of ${looked.product} on ${moment(looked.at, kitchen.zone)}${ingredient.lookCounts ? '' : '; it was another supplier’s than today’s, so it does not count: look again'}.`}
      </p>
      <div className="fields not-on-paper">
        <TextField label="What was looked at" value={product} onChange={setProduct} maxLength={200} />
        <TextField
          label="Its list of ingredients"
          value={says}
          onChange={setSays}
          lines={2}
          maxLength={4000}
        />
        <TextField
          label="Allergens it emphasises"
          value={named}
          onChange={setNamed}
          hint="By their names, with commas: milk, celery. Empty where it emphasises none."
        />
      </div>
      {error === null ? null : <Problem error={error} />}
      <p className="not-on-paper">
        <Button onPress={keep} busy="Keeping…" disabled={product.trim() === ''}>
          I looked at the label
        </Button>
      </p>
    </section>
  );
}

function MadeOf({ ingredient }: { readonly ingredient: PantryIngredient }) {
  return (
    <section className="stack" aria-labelledby="made-of">
      <h2 id="made-of">What it is made of</h2>
      <table>
        <caption className="unseen">Composition of {ingredient.name}</caption>
        <tbody>
          {nutrients.map((n) => (
            <tr key={n}>
              <th scope="row">{n}</th>
              <td className="number">
                {ingredient.nutrients[n] === null
                  ? 'not known'
                  : `${plainNumber((ingredient.nutrients[n] ?? 0) * 100, 2)} %`}
              </td>
              <td className="small quiet">{ingredient.own.includes(n) ? 'the kitchen’s own' : ''}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="small quiet measure">
        {ingredient.source === '' ? 'Nobody has said where this composition is from.' : ingredient.source}
      </p>
    </section>
  );
}
