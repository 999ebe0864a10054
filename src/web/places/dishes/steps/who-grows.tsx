/** Which of the organisms known here can grow at all where this food is kept: a limit is no rate, and no growth is no death. */
import { useMemo } from 'react';
import { checkGrowthLimits, type FactorLimit } from '../../../../core/microbes/growth-limits.ts';
import { growthOrganisms } from '../../../../core/properties/organisms-growth.ts';
import { useUnits } from '../../../kitchen.tsx';
import { temperatureWords } from '../../../pictures/words.ts';

const words: Record<FactorLimit['factor'], string> = {
  C: 'the cold',
  pH: 'its pH',
  waterActivity: 'its water activity',
  waterPhaseSalt: 'the salt in its water',
};

export interface WhoGrowsProps {
  readonly C: number;
  readonly pH: number | null;
  readonly waterActivity: number | null;
  /** Mass fraction. */
  readonly waterPhaseSalt: number | null;
}

export function WhoGrows({ C, pH, waterActivity, waterPhaseSalt }: WhoGrowsProps) {
  const units = useUnits();
  const rows = useMemo(
    () =>
      growthOrganisms.map(({ id, name }) => {
        const stopped = checkGrowthLimits(id, {
          C,
          ...(pH === null ? {} : { pH }),
          ...(waterActivity === null ? {} : { waterActivity }),
          ...(waterPhaseSalt === null ? {} : { waterPhaseSalt }),
        }).filter((limit) => !limit.growthPossible);
        return { id, name, stopped: stopped.map((limit) => words[limit.factor]) };
      }),
    [C, pH, waterActivity, waterPhaseSalt],
  );
  const can = rows.filter((r) => r.stopped.length === 0);
  const cannot = rows.filter((r) => r.stopped.length > 0);
  return (
    <details className="fold">
      <summary>
        {can.length} of {rows.length} organisms can grow at {temperatureWords(C, units)}
      </summary>
      <ul className="fold-list">
        {can.map((r) => (
          <li key={r.id}>
            <strong>{r.name}</strong> can grow
          </li>
        ))}
        {cannot.map((r) => (
          <li key={r.id} className="quiet">
            {r.name}: growth not expected, by {r.stopped.join(' and ')}
          </li>
        ))}
      </ul>
      <p className="small">
        By the widest limits published, each by itself, of what is known of the food. What does not grow may
        still live and be there in numbers that make ill; toxin made before stays.
      </p>
    </details>
  );
}
