import { useMemo, useRef, useState } from 'react';
import { v7 as newId } from 'uuid';
import { useLocation, useSearch } from 'wouter';
import type { TreeNode } from '../../../../contract/breakdown.ts';
import type { ShelfLot } from '../../../../contract/shelf.ts';
import { asSaidToday, hasStartingTree, lawful, startingNodes } from '../../../../contract/tree-edit.ts';
import { formatQuantity } from '../../../../core/units.ts';
import { at } from '../../../addresses.ts';
import { call, queryClient, useOperation } from '../../../api.ts';
import { useKitchen } from '../../../kitchen.tsx';
import { Button } from '../../../parts/button.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { EmptyPlace } from '../../../parts/empty-place.tsx';
import { TextField, Tick } from '../../../parts/field.tsx';
import { NumberField, unsettledIn } from '../../../parts/number-field.tsx';
import { Problem } from '../../../parts/problem.tsx';
import { say } from '../../../parts/toast.tsx';
import { usePersonId } from '../../../person.ts';
import { dayText } from '../shelf/civil.ts';
import { TreeLayout } from './tree-layout.tsx';
import './breakdown.css';

const published = 'published';

/** Which animals go on the table, how they are cut, by whom. */
export function StartBreakdown() {
  const kitchen = useKitchen();
  const params = { kitchenId: kitchen.id };
  const [, navigate] = useLocation();
  const asked = new URLSearchParams(useSearch()).get('lot');
  const shelf = useOperation('shelf', { params });
  const parts = useOperation('parts', { params });
  const trees = useOperation('trees', { params });
  const people = useOperation('people', { params });
  const me = usePersonId(kitchen.id);
  /** Null until somebody touches it: the lot of the address is on the table then. */
  const [chosen, setChosen] = useState<ReadonlyMap<string, number> | null>(null);
  const [cutter, setCutter] = useState<string | null>(null);
  const [counted, setCounted] = useState<number | null>(null);
  const [treeId, setTreeId] = useState<string | null>(null);
  const [own, setOwn] = useState<{ readonly of: string; readonly nodes: TreeNode[] } | null>(null);
  const [allLots, setAllLots] = useState(false);
  const [treeName, setTreeName] = useState('');
  const form = useRef<HTMLDivElement>(null);
  // One id for one filled-in form: pressing twice, or again after a lost answer, begins one breakdown.
  // biome-ignore lint/correctness/useExhaustiveDependencies: other contents are another breakdown
  const id = useMemo(() => newId(), [chosen, treeId, own, counted, cutter]);

  const all = shelf.data ?? [];
  const picked = useMemo(() => {
    if (chosen !== null) return chosen;
    const lot = (shelf.data ?? []).find((l) => l.id === asked && l.blocked === null);
    return new Map(lot === undefined ? [] : [[lot.id, lot.leftGrams]]);
  }, [chosen, asked, shelf.data]);
  const lots = all.filter((l) => picked.has(l.id));
  const species = lots[0]?.species ?? '';
  const offered = trees.data?.filter((t) => t.species.toLowerCase() === species.toLowerCase()) ?? [];
  const tree = treeId ?? offered[0]?.id ?? published;
  const ages = lots.map((l) => l.ageMonthsAtMost);
  // Of several lots the oldest; an age that nobody shows counts as over every limit.
  const ageMonths =
    ages.length === 0 || ages.some((a) => a === null) ? null : Math.max(...(ages as number[]));
  const key = `${species} ${tree} ${ageMonths}`;
  const nodes = useMemo(() => {
    if (own !== null && own.of === key) return own.nodes;
    const kept = offered.find((t) => t.id === tree)?.nodes;
    const base =
      kept === undefined
        ? startingNodes(species, parts.data ?? [])
        : asSaidToday(kept, species, parts.data ?? []);
    return lawful(base, species, kitchen.place, { ageMonths });
  }, [own, key, offered, tree, species, parts.data, kitchen.place, ageMonths]);

  if (shelf.data === undefined || trees.data === undefined || parts.data === undefined)
    return shelf.error === null ? (
      <p className="quiet">Reading what is in the house…</p>
    ) : (
      <Problem error={shelf.error} retry={() => shelf.refetch()} />
    );
  const whole = all.filter((l) => l.kind === 'whole');
  const rest = all.filter((l) => l.kind === 'part' && l.species !== null);
  const listed = allLots ? [...whole, ...rest] : whole;
  if (all.length === 0 || (whole.length === 0 && rest.length === 0))
    return (
      <EmptyPlace title="Nothing to cut up">
        <p>A breakdown begins with a lot of whole animals: take in a delivery first.</p>
      </EmptyPlace>
    );
  const guess = lots.reduce((sum, l) => sum + (l.count ?? 0), 0);
  const animals = counted ?? (guess > 0 ? guess : null);
  const toggle = (lot: ShelfLot, on: boolean) => {
    const next = new Map(picked);
    if (on) next.set(lot.id, lot.leftGrams);
    else next.delete(lot.id);
    setChosen(next);
    setCounted(null);
  };
  const begin = async () => {
    const open = unsettledIn(form.current);
    if (open !== null) throw new Error(`${open}: what was typed is not settled yet. See beside the field.`);
    if (lots.length === 0) throw new Error('Choose what goes on the table.');
    if (animals === null) throw new Error('Say how many animals they are.');
    const breakdown = await call('startBreakdown', {
      params,
      body: {
        id,
        species,
        animals,
        nodes: [...nodes],
        lots: lots.map((l) => ({ lotId: l.id, grams: picked.get(l.id) ?? l.leftGrams })),
        cutterId: cutter,
      },
    });
    void queryClient.invalidateQueries({ queryKey: ['breakdowns'] });
    navigate(at.breakdown(kitchen.id, breakdown.id), { replace: true });
  };
  const keepTree = async () => {
    if (treeName.trim() === '') throw new Error('Give it a name, so that you find it again.');
    const kept = await call('addTree', {
      params,
      body: { species, name: treeName.trim(), nodes: [...nodes] },
    });
    await queryClient.invalidateQueries({ queryKey: ['trees'] });
    setTreeId(kept.id);
    setOwn(null);
    setTreeName('');
    say(`${kept.name} is kept: it comes up first for ${species} from now on.`);
  };
  return (
    <div className="stack-wide" ref={form}>
      <section className="stack">
        <h2>What goes on the table</h2>
        <ul className="choose-lots" aria-label="Lots">
          {listed.map((lot) => {
            const on = picked.has(lot.id);
            const other = species !== '' && lot.species?.toLowerCase() !== species.toLowerCase();
            return (
              <li key={lot.id} className={lot.blocked === null ? '' : 'quiet'}>
                {lot.blocked === null && !other ? (
                  <Tick
                    label={`${lot.code}: ${lot.what}, ${formatQuantity(lot.leftGrams, 'mass', kitchen.units)}${lot.useBy === null ? '' : `, until ${dayText(lot.useBy)}`}`}
                    value={on}
                    onChange={(v) => toggle(lot, v)}
                  />
                ) : (
                  <p>
                    {lot.code}: {lot.what}.{' '}
                    <span className="small">{lot.blocked ?? 'Another animal than the one chosen.'}</span>
                  </p>
                )}
                {on ? (
                  <NumberField
                    label={`How much of ${lot.code}`}
                    unit="g"
                    value={picked.get(lot.id) ?? null}
                    low={0.001}
                    high={lot.leftGrams}
                    onChange={(g) => g !== null && setChosen(new Map(picked).set(lot.id, g))}
                  />
                ) : null}
              </li>
            );
          })}
        </ul>
        {rest.length === 0 ? null : (
          <Tick label="Show lots of parts too" value={allLots} onChange={setAllLots} />
        )}
      </section>
      {lots.length === 0 ? null : (
        <>
          <section className="fields">
            <NumberField
              label={`How many animals (${species})`}
              unit="animals"
              whole
              value={animals}
              low={1}
              high={10_000}
              onChange={setCounted}
            />
            <Choice
              label="Who cuts"
              value={cutter ?? me ?? ''}
              options={(people.data ?? [])
                .filter((p) => p.role !== 'auditor')
                .map((p) => ({ value: p.id, label: p.name }))}
              onChange={setCutter}
            />
            <Choice
              label="How it is cut"
              value={tree}
              options={[
                ...offered.map((t) => ({ value: t.id, label: t.name })),
                {
                  value: published,
                  label: hasStartingTree(species)
                    ? 'To begin with: the usual cuts'
                    : 'To begin with: the parts named',
                },
              ]}
              onChange={setTreeId}
            />
          </section>
          <section className="stack">
            <h2>Cut into</h2>
            <TreeLayout
              ageMonths={ageMonths}
              species={species}
              nodes={nodes}
              onChange={(n) => setOwn({ of: key, nodes: n })}
            />
            <div className="row">
              <TextField
                label="Keep this way of cutting as"
                value={treeName}
                onChange={setTreeName}
                maxLength={120}
              />
              <Button onPress={keepTree} busy="Keeping…">
                Keep it
              </Button>
            </div>
          </section>
          <div className="row">
            <Button kind="strong" size="line" onPress={begin} busy="Beginning…">
              To the scale
            </Button>
          </div>
          <Caution place={kitchen.place}>
            <p>
              What the law lets become food is shown as its sources have it; it differs by place and changes.
            </p>
          </Caution>
        </>
      )}
    </div>
  );
}
