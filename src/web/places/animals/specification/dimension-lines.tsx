import type { SpecificationContent } from '../../../../contract/specification.ts';
import { Button } from '../../../parts/button.tsx';
import { TextField } from '../../../parts/field.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { DimensionPicture } from './dimension-picture.tsx';

type Dimension = SpecificationContent['dimensions'][number];

export interface DimensionLinesProps {
  readonly species: string;
  readonly what: string;
  readonly dimensions: readonly Dimension[];
  readonly onChange: (dimensions: Dimension[]) => void;
}

/** Lengths that are asked, drawn on the piece as they are typed. */
export function DimensionLines({ species, what, dimensions, onChange }: DimensionLinesProps) {
  const put = (i: number, part: Partial<Dimension>) =>
    onChange(dimensions.map((d, j) => (j === i ? { ...d, ...part } : d)));
  return (
    <div className="stack">
      <DimensionPicture species={species} what={what} dimensions={dimensions} />
      <ol className="dimension-lines">
        {dimensions.map((d, i) => (
          <li key={i}>
            <TextField
              className="dimension-name"
              label={`Length ${i + 1}, from where to where`}
              value={d.name}
              maxLength={60}
              onChange={(name) => put(i, { name })}
            />
            <NumberField
              label="At least"
              unit="mm"
              optional
              low={1}
              high={3_000}
              value={d.lowMm}
              error={
                d.lowMm === null && d.highMm === null
                  ? 'Say the least, the most, or both.'
                  : d.lowMm !== null && d.highMm !== null && d.lowMm > d.highMm
                    ? 'More than “at most”.'
                    : undefined
              }
              onChange={(lowMm) => put(i, { lowMm })}
            />
            <NumberField
              label="At most"
              unit="mm"
              optional
              low={1}
              high={3_000}
              value={d.highMm}
              onChange={(highMm) => put(i, { highMm })}
            />
            <Button
              kind="quiet"
              label={`Take out ${d.name}`}
              onPress={() => onChange(dimensions.filter((_, j) => j !== i))}
            >
              Take out
            </Button>
          </li>
        ))}
      </ol>
      {dimensions.length >= 12 ? null : (
        <div>
          <Button onPress={() => onChange([...dimensions, { name: '', lowMm: null, highMm: null }])}>
            Add a length
          </Button>
        </div>
      )}
    </div>
  );
}
