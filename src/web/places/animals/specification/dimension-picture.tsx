import { type AskedLength, pieceOutlineScene } from '../../../../documents/pictures/piece-outline.ts';
import { useUnits } from '../../../kitchen.tsx';
import { Figure } from '../../../parts/figure.tsx';
import { useWidth } from '../../../pictures/use-width.ts';

export interface DimensionPictureProps {
  readonly species: string;
  readonly what: string;
  readonly dimensions: readonly AskedLength[];
}

/** The piece with the lengths that are asked drawn on it. */
export function DimensionPicture({ species, what, dimensions }: DimensionPictureProps) {
  const units = useUnits();
  const [ref, width] = useWidth<HTMLDivElement>();
  return (
    <div ref={ref} className="piece-picture">
      {width === 0 ? null : (
        <Figure scene={pieceOutlineScene(species, what, dimensions, { width, units })} table="unseen" />
      )}
    </div>
  );
}
