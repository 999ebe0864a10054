import { type ReactNode, useCallback, useEffect, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { useActions } from '../actions.ts';
import { at, places } from '../addresses.ts';
import { useLive, useOperation } from '../api.ts';
import { useKitchen } from '../kitchen.tsx';
import { usePersonId } from '../person.ts';
import './frame.css';
import { Search } from './search.tsx';
import { WhoDialog } from './who-dialog.tsx';

/** The kitchen's name, the five places, and what stands on every page. */
export function Frame({ children }: { readonly children: ReactNode }) {
  const kitchen = useKitchen();
  const [location, navigate] = useLocation();
  const [searching, setSearching] = useState(false);
  const personId = usePersonId(kitchen.id);
  const people = useOperation('people', { params: { kitchenId: kitchen.id } });
  const person = people.data?.find((p) => p.id === personId);
  useLive(kitchen.id);
  const here = places.find((p) => location.startsWith(at.place(kitchen.id, p.slug)));

  useActions([
    { id: 'search', label: 'Search', keys: ['/'], run: () => setSearching(true), hidden: true },
    ...places.map((p) => ({
      id: `go ${p.slug}`,
      label: `Go to ${p.name}`,
      run: () => navigate(at.place(kitchen.id, p.slug)),
    })),
    { id: 'settings', label: 'Settings of this kitchen', run: () => navigate(at.settings(kitchen.id)) },
  ]);

  useEffect(() => {
    document.title = here === undefined ? kitchen.name : `${here.name} · ${kitchen.name}`;
  }, [here, kitchen.name]);

  const closeSearch = useCallback(() => setSearching(false), []);
  return (
    <div className="frame">
      <a className="skip" href="#main">
        Skip to the page
      </a>
      <header className="frame-head">
        <div className="frame-top">
          <Link
            href={at.settings(kitchen.id)}
            className="frame-kitchen"
            aria-label={`${kitchen.name}: settings`}
          >
            {kitchen.name}
          </Link>
          <div className="frame-right not-on-paper">
            <button
              type="button"
              className="frame-search"
              onClick={() => setSearching(true)}
              aria-keyshortcuts="/"
            >
              Search <kbd>/</kbd>
            </button>
            <Link href={at.settings(kitchen.id)} className="frame-who">
              {person === undefined ? 'Who are you?' : person.name}
            </Link>
          </div>
        </div>
        <nav className="frame-places" aria-label="Places">
          {places.map((p) => (
            <Link
              key={p.slug}
              href={at.place(kitchen.id, p.slug)}
              className="frame-place"
              aria-current={p === here ? 'page' : undefined}
            >
              {p.name}
            </Link>
          ))}
        </nav>
        {kitchen.demo ? (
          <p className="frame-demo">
            Demo kitchen: <strong>invented data</strong>, nothing measured.
          </p>
        ) : null}
      </header>
      <main id="main" tabIndex={-1}>
        {children}
      </main>
      <footer className="frame-foot">
        <p>
          {kitchen.demo ? 'Demo kitchen: invented data. ' : ''}Fifth Quarter advises; it does not license. The
          word of your local authority and of qualified people stands above anything shown here.
        </p>
      </footer>
      {searching ? <Search onClose={closeSearch} /> : null}
      <WhoDialog />
    </div>
  );
}
