/** Clostridium perfringens through the predicted chill, where the piece stays warm longest. */
import { useMemo, useState } from 'react';
import type { Method } from '../../../../contract/steps.ts';
import type { Product } from '../../../../core/properties/product.ts';
import { Tick } from '../../../parts/field.tsx';
import { GrowthPanel } from '../steps/growth-panel.tsx';
import { SaltBeforeWords } from '../steps/salt-before.tsx';
import { useSaltBefore } from '../steps/use-salt-before.ts';
import type { Cooked } from './use-cooking.ts';

/** The published set nearest to the food; cured only where so much nitrite is stated. */
function setFor({ animals, nitritePpm }: Product): string {
  if (nitritePpm !== null && nitritePpm >= 100 && animals.includes('pig')) return 'cured-pork';
  return animals.includes('cattle') || animals.includes('sheep or goat') ? 'braised-beef' : 'roasted-chicken';
}

export interface ChillGrowthProps {
  readonly cooked: Cooked;
  readonly product: Product;
  readonly method: Method;
  readonly stepId: string;
}

export function ChillGrowth({ cooked, product, method, stepId }: ChillGrowthProps) {
  const { result, verdict } = cooked;
  const cured = useSaltBefore(method, stepId);
  const [counted, setCounted] = useState(true);
  const log = useMemo(() => {
    const { t, warmest } = result.history;
    const from = result.stages[verdict.heatingStage]?.end ?? 0;
    const points: { min: number; C: number }[] = [];
    for (let i = 0; i < t.length; i++) {
      const min = (t[i]! - from) / 60;
      if (min >= 0 && min > (points.at(-1)?.min ?? -1)) points.push({ min, C: warmest[i]! });
    }
    return points;
  }, [result, verdict.heatingStage]);
  if (log.length < 2) return null;
  return (
    <GrowthPanel
      heading="What may grow while it chills"
      organisms={['clostridium-perfringens']}
      set={setFor(product)}
      log={log}
      pH={null}
      waterActivity={counted ? (cured?.waterActivity ?? null) : null}
      level={1}
    >
      <p className="small">
        Spores live through a cook. Along the warmest point as predicted, from the end of the heat; it ends
        with the last stage. American plants are held to no more than one log.
      </p>
      <SaltBeforeWords salt={cured} overruled={false} overruleBy="" />
      {cured?.pct == null ? null : (
        <Tick label={`Count the salt of “${cured.from}”`} value={counted} onChange={setCounted} />
      )}
    </GrowthPanel>
  );
}
