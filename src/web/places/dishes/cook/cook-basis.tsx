/** What the answer rests on, folded: the physics, the surface coefficients, how well the run closed. */
import { memo } from 'react';
import { stageBasis } from '../../../../contract/stage-basis.ts';
import { Basis, type BasisItem } from '../../../parts/basis.tsx';
import type { Programme } from './programme.ts';
import type { Cooked } from './use-cooking.ts';

function mediaOf(programme: Programme): BasisItem[] {
  if (!programme.ok) return [];
  return [...programme.cook.stages, ...(programme.chill?.stages ?? [])].flatMap(stageBasis);
}

export const CookBasis = memo(function CookBasis({
  cooked,
  programme,
}: {
  readonly cooked: Cooked;
  readonly programme: Programme;
}) {
  const { result } = cooked;
  const invalid = result.basis.filter((b) => /not valid/i.test(b.what));
  return (
    <section className="stack" aria-label="What the answer rests on">
      {invalid.map((b) => (
        <p key={b.what} className="field-error">
          {b.what}
        </p>
      ))}
      <Basis title="What this answer rests on" items={[...result.basis, ...mediaOf(programme)]} />
      <p className="small quiet">
        Heat balance: stored and supplied differ by {result.heatBalancePct.toPrecision(2)} %.{' '}
        {result.mesh.x.length} points of the piece, {result.steps} steps of time
        {cooked.mode === 'coarse' ? ', a first estimate' : ''}.
      </p>
    </section>
  );
});
