import { Link } from 'wouter';
import type { Dish, Version } from '../../../contract/records.ts';
import { at } from '../../addresses.ts';
import { useOperation } from '../../api.ts';
import { useKitchen } from '../../kitchen.tsx';
import { Problem } from '../../parts/problem.tsx';
import { BenchView } from './bench/bench-view.tsx';
import { LawFold } from './law-fold.tsx';
import { stageWords } from './stage-words.ts';
import './dishes.css';

export interface DishPageProps {
  readonly dishId: string;
  /** An older version; the newest where none is named. */
  readonly versionId?: string;
  readonly stepId?: string;
}

/** A dish: what it is, whether it may be served, and one of its versions on the bench. */
export function DishPage({ dishId, versionId, stepId }: DishPageProps) {
  const kitchen = useKitchen();
  const dish = useOperation('dish', { params: { kitchenId: kitchen.id, dishId } });
  const older = versionId !== undefined && versionId !== dish.data?.current.id;
  const version = useOperation(
    'version',
    older && versionId !== undefined ? { params: { kitchenId: kitchen.id, versionId } } : null,
  );
  if (dish.error !== null && dish.data === undefined)
    return (
      <div className="page">
        <Problem error={dish.error} retry={() => dish.refetch()} />
      </div>
    );
  if (dish.data === undefined) return <p className="page quiet">Fetching the dish…</p>;
  const shown: Version | undefined = older ? version.data : dish.data.current;
  return (
    <article className="page bench">
      <Head dish={dish.data} />
      {version.error === null ? null : <Problem error={version.error} retry={() => version.refetch()} />}
      {shown === undefined ? (
        <p className="quiet">Fetching the version…</p>
      ) : (
        <BenchView
          key={`${shown.id} ${shown.status}`}
          kitchen={kitchen}
          dish={dish.data}
          version={shown}
          stepId={stepId}
        />
      )}
    </article>
  );
}

function Head({ dish }: { readonly dish: Dish }) {
  const kitchen = useKitchen();
  return (
    <header className="stack">
      <p className="not-on-paper">
        <Link href={at.place(kitchen.id, 'dishes')}>All dishes</Link>
      </p>
      <h1>{dish.name}</h1>
      <p className="quiet">
        {dish.species}, {dish.part} · {stageWords[dish.stage]}
      </p>
      {dish.story === '' ? null : <p className="measure lead">{dish.story}</p>}
      <LawFold dish={dish} place={kitchen.place} />
    </header>
  );
}
