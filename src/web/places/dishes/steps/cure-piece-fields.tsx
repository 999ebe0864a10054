/** The piece as the salt meets it. Nothing is filled in that nobody has said: the hours rest on the thickness. */
import type { CuredPiece } from '../../../../contract/cure-parts.ts';
import type { StepOf } from '../../../../contract/steps.ts';
import { Choice } from '../../../parts/choice.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import type { StepForm } from './step-form.ts';

/** Chicken breast 74 %, pork arm picnic 68 %, chicken skin 54 % (USDA SR28): a middle to begin with, said as such. */
const ASSUMED_WATER_PCT = 70;

type Kind = 'flat, both faces' | 'flat, one face' | 'long and round' | 'a ball';
const kinds: readonly { value: Kind; label: string }[] = [
  { value: 'flat, both faces', label: 'Flat, salt from both faces' },
  { value: 'flat, one face', label: 'Flat, salt from one face' },
  { value: 'long and round', label: 'Long and round' },
  { value: 'a ball', label: 'A ball, or nearly' },
];
const kindOf = ({ shape, faces }: CuredPiece): Kind =>
  shape === 'sphere'
    ? 'a ball'
    : shape === 'cylinder'
      ? 'long and round'
      : faces === 1
        ? 'flat, one face'
        : 'flat, both faces';
const shapes: Readonly<Record<Kind, Pick<CuredPiece, 'shape' | 'faces'>>> = {
  'flat, both faces': { shape: 'slab', faces: 2 },
  'flat, one face': { shape: 'slab', faces: 1 },
  'long and round': { shape: 'cylinder', faces: 2 },
  'a ball': { shape: 'sphere', faces: 2 },
};

export function CurePieceFields({
  step,
  set,
  readOnly,
}: Pick<StepForm<StepOf<'cure'>>, 'step' | 'set' | 'readOnly'>) {
  const { piece } = step;
  const put = (patch: Partial<CuredPiece>, about: string) => {
    const next = {
      shape: 'slab',
      acrossMm: 20,
      faces: 2,
      waterPct: ASSUMED_WATER_PCT,
      ...piece,
      ...patch,
    } as CuredPiece;
    if (next.skinMm === undefined) delete next.skinMm;
    set({ piece: next }, about);
  };
  return (
    <section>
      <h3>The piece the salt goes into</h3>
      <div className="fields">
        <NumberField
          label={piece?.shape === 'slab' || piece === undefined ? 'How thick' : 'How thick, across'}
          unit="mm"
          value={piece?.acrossMm ?? null}
          low={1}
          high={1_000}
          readOnly={readOnly}
          onChange={(acrossMm) => acrossMm !== null && put({ acrossMm }, 'piece across')}
          hint={piece === undefined ? 'At the thickest: the hours rest on it.' : undefined}
        />
        {piece === undefined ? null : (
          <>
            <Choice
              label="Shape"
              value={kindOf(piece)}
              options={kinds}
              readOnly={readOnly}
              onChange={(kind) => put(shapes[kind], 'piece shape')}
            />
            <NumberField
              label="Water in it"
              unit="%"
              value={piece.waterPct}
              low={20}
              high={95}
              readOnly={readOnly}
              onChange={(waterPct) => waterPct !== null && put({ waterPct }, 'piece water')}
              hint="Chicken breast 74, pork arm 68, chicken skin 54 (USDA SR28)."
            />
            <NumberField
              label="Skin with its fat, around it"
              unit="mm"
              value={piece.skinMm ?? null}
              low={0.1}
              high={50}
              optional
              readOnly={readOnly}
              onChange={(mm) => put({ skinMm: mm ?? undefined } as Partial<CuredPiece>, 'piece skin')}
              hint="Slows the salt; empty where there is none."
            />
          </>
        )}
      </div>
    </section>
  );
}
