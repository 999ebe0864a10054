/** Beside a stage: what the published spread of its medium means in minutes. */
import type { StageInput } from '../../../../contract/body.ts';
import { publishedRange } from '../../../../contract/media-range.ts';
import { stageBasis } from '../../../../contract/stage-basis.ts';
import type { RangeMinutes } from '../../../../core/method/media-range.ts';
import { plainNumber } from '../../../../core/units.ts';
import { Basis } from '../../../parts/basis.tsx';
import { rangeWords } from './range-words.ts';
import { namedMedium } from './stage-medium.ts';

/** What the stage's figures rest on; nothing while its pressure is told twice or its medium is not known, which is said beside the field. */
function StageBasis({ stage }: { readonly stage: StageInput }) {
  if (stage.medium !== undefined && namedMedium(stage) === undefined) return null;
  if (stage.altitudeM !== undefined && stage.pressureKPa !== undefined) return null;
  return <Basis title="What this stage rests on" items={stageBasis(stage)} />;
}

export function StageRange({
  stage,
  minutes,
  lostPct,
}: {
  readonly stage: StageInput;
  readonly minutes: RangeMinutes | undefined;
  readonly lostPct: number | undefined;
}) {
  const range = namedMedium(stage) === undefined ? undefined : publishedRange(stage);
  const words = minutes === undefined || range === undefined ? null : rangeWords(minutes, range);
  return (
    <div className="stage-range small">
      {range === undefined ? null : (
        <p>
          {range.dry ? 'The air alone' : 'Its surface coefficient'}: {range.usual} W/(m² K),{' '}
          {range.dry ? 'reckoned' : 'published'} from {range.low} to {range.high}.
        </p>
      )}
      <p aria-live="polite">{words}</p>
      {lostPct === undefined ? null : (
        <p>
          {lostPct < 0.05
            ? 'Nothing dries off.'
            : `Dries off: ${plainNumber(lostPct, 1)} % of the weight, if the surface stays as wet as that.`}
        </p>
      )}
      <StageBasis stage={stage} />
    </div>
  );
}
