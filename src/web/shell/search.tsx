import { useId, useMemo, useState } from 'react';
import { useLocation } from 'wouter';
import { useAllActions } from '../actions.ts';
import { at, places } from '../addresses.ts';
import { useOperation } from '../api.ts';
import { useKitchen } from '../kitchen.tsx';
import { Dialog } from '../parts/dialog.tsx';
import { type Findable, find } from './find.ts';
import './search.css';

interface Found extends Findable {
  readonly go: () => unknown;
}

/** Everything by name: dishes, batches, lots, places, and what can be done on this screen. */
export function Search({ onClose }: { readonly onClose: () => void }) {
  const kitchen = useKitchen();
  const [, navigate] = useLocation();
  const actions = useAllActions();
  const here = { params: { kitchenId: kitchen.id } };
  const dishes = useOperation('dishes', here);
  const batches = useOperation('batches', here);
  const lots = useOperation('lots', here);
  const [asked, setAsked] = useState('');
  const [index, setIndex] = useState(0);
  const list = useId();

  const all = useMemo<Found[]>(
    () => [
      ...(dishes.data ?? []).map((d) => ({
        id: d.id,
        what: 'dish',
        name: d.name,
        detail: `${d.species}, ${d.part}, ${d.stage}`,
        go: () => navigate(at.dish(kitchen.id, d.id)),
      })),
      ...(batches.data ?? []).map((b) => ({
        id: b.id,
        what: 'batch',
        name: b.code,
        detail: `${b.dishName}, ${b.status}`,
        go: () => navigate(at.batch(kitchen.id, b.id)),
      })),
      ...(lots.data ?? []).map((l) => ({
        id: l.id,
        what: 'lot',
        name: l.code,
        detail: l.what,
        go: () => navigate(at.lot(kitchen.id, l.id)),
      })),
      ...places.map((p) => ({
        id: p.slug,
        what: 'place',
        name: p.name,
        detail: '',
        go: () => navigate(at.place(kitchen.id, p.slug)),
      })),
      ...actions
        .filter((a) => a.hidden !== true && a.enabled !== false && !a.id.startsWith('go '))
        .map((a) => ({
          id: `do ${a.id}`,
          what: 'do',
          name: a.label,
          detail: a.keys?.join(' ') ?? '',
          go: a.run,
        })),
    ],
    [dishes.data, batches.data, lots.data, actions, kitchen.id, navigate],
  );
  const found = find(asked, all);
  const chosen = found[Math.min(index, found.length - 1)];
  const open = (item: Found | undefined) => {
    if (item === undefined) return;
    onClose();
    item.go();
  };
  return (
    <Dialog open title="Search" onClose={onClose}>
      <input
        className="control search-box"
        type="search"
        role="combobox"
        aria-label="Dishes, batches, lots, places"
        aria-expanded="true"
        aria-controls={list}
        aria-activedescendant={chosen === undefined ? undefined : `${list}-${chosen.id}`}
        placeholder="Dish, batch, lot, place"
        autoFocus
        value={asked}
        onChange={(e) => {
          setAsked(e.target.value);
          setIndex(0);
        }}
        onKeyDown={(e) => {
          if (e.key === 'ArrowDown' || e.key === 'ArrowUp') {
            e.preventDefault();
            const by = e.key === 'ArrowDown' ? 1 : -1;
            setIndex((i) =>
              found.length === 0 ? 0 : (Math.min(i, found.length - 1) + by + found.length) % found.length,
            );
          } else if (e.key === 'Enter') {
            e.preventDefault();
            open(chosen);
          }
        }}
      />
      <div className="search-list" id={list} role="listbox" aria-label="Found">
        {found.map((item) => (
          // biome-ignore lint/a11y/useKeyWithClickEvents: the keys are heard by the search box
          // biome-ignore lint/a11y/useFocusableInteractive: the focus stays in the search box
          <div
            key={item.id}
            id={`${list}-${item.id}`}
            className="search-item"
            role="option"
            aria-selected={item === chosen}
            onClick={() => open(item)}
          >
            <span className="search-what">{item.what}</span>
            <span>
              {item.name} {item.detail === '' ? null : <span className="quiet small">{item.detail}</span>}
            </span>
          </div>
        ))}
      </div>
      {found.length === 0 ? <p className="quiet">Nothing here is called “{asked}”.</p> : null}
    </Dialog>
  );
}
