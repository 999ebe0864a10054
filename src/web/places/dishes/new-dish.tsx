import { useState } from 'react';
import { useLocation } from 'wouter';
import { methodRibbonScene } from '../../../documents/pictures/method-ribbon.ts';
import { at } from '../../addresses.ts';
import { call, queryClient, useOperation } from '../../api.ts';
import { useKitchen } from '../../kitchen.tsx';
import { Button } from '../../parts/button.tsx';
import { TextField } from '../../parts/field.tsx';
import { SceneView } from '../../pictures/SceneView.tsx';
import { startingMethods } from './bench/new-step.ts';
import { BringIn } from './bring-in.tsx';

const species = ['pig', 'goose', 'duck', 'chicken', 'sheep', 'goat', 'rabbit', 'calf', 'ox'];

/** A dish begins with a part of an animal. */
export function NewDish() {
  const kitchen = useKitchen();
  const [, navigate] = useLocation();
  const parts = useOperation('parts', { params: { kitchenId: kitchen.id } });
  const [name, setName] = useState('');
  const [animal, setAnimal] = useState('');
  const [part, setPart] = useState('');
  const [story, setStory] = useState('');
  const [start, setStart] = useState(startingMethods[1]!.id);
  const [asked, setAsked] = useState(false);
  const missing = (value: string, text: string) => (asked && value.trim() === '' ? text : undefined);

  const begin = async () => {
    setAsked(true);
    if ([name, animal, part].some((v) => v.trim() === '')) return;
    const chosen = startingMethods.find((s) => s.id === start) ?? startingMethods[0]!;
    const method = chosen
      .method(kitchen.place)
      .map((step) => (step.kind === 'trim' ? { ...step, part: part.trim() } : step));
    const dish = await call('addDish', {
      params: { kitchenId: kitchen.id },
      body: { name: name.trim(), species: animal.trim(), part: part.trim(), story, method },
    });
    await queryClient.invalidateQueries({ queryKey: ['dishes'] });
    navigate(at.dish(kitchen.id, dish.id));
  };
  const ofAnimal = (parts.data ?? []).filter((p) => animal === '' || p.species === animal).map((p) => p.name);
  return (
    <div className="page stack-wide">
      <form className="stack-wide" onSubmit={(e) => e.preventDefault()}>
        <h1>Add a dish</h1>
        <section className="stack measure">
          <TextField
            label="Name"
            value={name}
            onChange={setName}
            maxLength={120}
            autoFocus
            error={missing(name, 'Give it a name; it can stand on the menu later.')}
          />
          <div className="fields">
            <TextField
              label="Animal"
              value={animal}
              onChange={setAnimal}
              maxLength={40}
              suggestions={[...new Set([...(parts.data ?? []).map((p) => p.species), ...species])]}
              error={missing(animal, 'Which animal? The law is read by it.')}
            />
            <TextField
              label="Part"
              value={part}
              onChange={setPart}
              maxLength={80}
              suggestions={[...new Set(ofAnimal)]}
              error={missing(part, 'Which part? The law is read by it.')}
              hint="By the name the trade uses."
            />
          </div>
          <TextField label="What it is to be" value={story} onChange={setStory} maxLength={1_000} lines={3} />
        </section>
        <fieldset>
          <legend>
            <h2>Begin from</h2>
          </legend>
          <ul className="starts measure">
            {startingMethods.map((s) => (
              <li key={s.id}>
                <label className="start">
                  <input type="radio" name="start" checked={s.id === start} onChange={() => setStart(s.id)} />
                  <span>
                    <strong>{s.name}.</strong> <span className="quiet">{s.what}</span>
                  </span>
                  {s.id === 'blank' ? null : (
                    <span className="dish-ribbon">
                      <SceneView
                        scene={methodRibbonScene(s.method(kitchen.place), { width: 520, small: true })}
                        table="none"
                      />
                    </span>
                  )}
                </label>
              </li>
            ))}
          </ul>
          <p className="quiet small measure">
            The numbers in them are somewhere to begin, common practice without a source. Change every one.
          </p>
        </fieldset>
        <div className="row">
          <Button kind="strong" type="submit" onPress={begin} busy="Laying out…">
            Put it on the bench
          </Button>
        </div>
      </form>
      <section className="bench-rule stack" aria-labelledby="bring-in">
        <h2 id="bring-in">Bring in a dish</h2>
        <BringIn kitchen={kitchen} />
      </section>
    </div>
  );
}
