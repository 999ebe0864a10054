/** The piece: what shape it is and how big, and what it is made of from the skin inwards. */
import { memo } from 'react';
import type { BodyInput } from '../../../../contract/body.ts';
import type { Method } from '../../../../contract/steps.ts';
import { Choice } from '../../../parts/choice.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { LayersEditor } from './layers-editor.tsx';
import type { ErrorAt } from './programme.ts';
import { ShapeEditor } from './shape-editor.tsx';
import { asShape, type Shape, shapeNames, withProfile } from './shapes.ts';

export interface PieceEditorProps {
  readonly body: BodyInput;
  readonly method: Method;
  readonly stepId: string;
  readonly onChange: (body: BodyInput) => void;
  readonly errorAt: ErrorAt;
  readonly readOnly: boolean;
}

export const PieceEditor = memo(function PieceEditor(props: PieceEditorProps) {
  const { body, onChange, errorAt, readOnly } = props;
  const outer = body.layers.slice(0, -1).map((layer) => layer.thicknessMm ?? 0);
  const depthsMm = outer.map((_, i) => outer.slice(0, i + 1).reduce((sum, t) => sum + t, 0));
  const fill = props.method
    .slice(
      0,
      Math.max(
        0,
        props.method.findIndex((s) => s.id === props.stepId),
      ),
    )
    .findLast((s) => s.kind === 'fill');
  return (
    <section className="stack" aria-labelledby="piece-heading">
      <h3 id="piece-heading">The piece</h3>
      <Choice
        label="Shape"
        value={body.shape}
        options={shapeNames}
        readOnly={readOnly}
        onChange={(shape: Shape) => onChange(asShape(body, shape))}
      />
      {body.shape === 'revolved' ? (
        <>
          {errorAt('body.profile') === undefined ? null : (
            <p className="field-error" role="alert">
              {errorAt('body.profile')}
            </p>
          )}
          <ShapeEditor
            profile={body.profile}
            depthsMm={depthsMm}
            errorAt={errorAt}
            readOnly={readOnly}
            onChange={(profile) => onChange(withProfile(body, profile))}
          />
          {fill === undefined || readOnly ? null : (
            <p>
              <button
                type="button"
                className="button button-plain"
                onClick={() => onChange(withProfile(body, fill.profile))}
              >
                Take the shape from “{fill.name}”
              </button>
            </p>
          )}
        </>
      ) : (
        <Sizes {...props} body={body} />
      )}
      <LayersEditor {...props} />
    </section>
  );
});

type Plain = Exclude<BodyInput, { shape: 'revolved' }>;

function Sizes({ body, onChange, errorAt, readOnly }: PieceEditorProps & { readonly body: Plain }) {
  const field = (label: string, path: string, value: number, put: (mm: number) => BodyInput) => (
    <NumberField
      key={path}
      label={label}
      unit="mm"
      value={value}
      readOnly={readOnly}
      error={errorAt(`body.${path}`)}
      onChange={(v) => v !== null && onChange(put(v))}
    />
  );
  const fields =
    body.shape === 'slab'
      ? [field('Thickness', 'thicknessMm', body.thicknessMm, (thicknessMm) => ({ ...body, thicknessMm }))]
      : body.shape === 'block'
        ? [
            field('Width', 'widthMm', body.widthMm, (widthMm) => ({ ...body, widthMm })),
            field('Height', 'heightMm', body.heightMm, (heightMm) => ({ ...body, heightMm })),
          ]
        : [field('Diameter', 'diameterMm', body.diameterMm, (diameterMm) => ({ ...body, diameterMm }))];
  return <div className="fields">{fields}</div>;
}
