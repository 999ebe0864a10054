/** One to four layers from the outside in, each by its composition or by constant properties. */
import type { Composition } from '../../../../contract/quantities.ts';
import { firstIce, firstIceRange } from '../../../../core/properties/freezing-food.ts';
import { freezingFoods } from '../../../../core/properties/freezing-points.ts';
import { useUnits } from '../../../kitchen.tsx';
import { Button } from '../../../parts/button.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { TextField } from '../../../parts/field.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { showQuantity } from '../../../parts/quantity.ts';
import { say } from '../../../parts/toast.tsx';
import { components, fromMixBefore, sumOf } from './composition.ts';
import type { PieceEditorProps } from './piece-editor.tsx';
import type { Layer } from './shapes.ts';

export function LayersEditor({ body, method, stepId, onChange, errorAt, readOnly }: PieceEditorProps) {
  const { layers } = body;
  const put = (next: readonly Layer[]) => onChange({ ...body, layers: [...next] });
  const change = (index: number, layer: Layer) => put(layers.map((l, i) => (i === index ? layer : l)));
  const add = () => {
    const first = layers[0];
    const skin: Layer = {
      name: layers.length === 1 ? 'skin' : `layer ${layers.length}`,
      thicknessMm: 3,
      ...(first?.composition === undefined
        ? { composition: { water: 0.6, protein: 0.15, fat: 0.24, carbohydrate: 0, fibre: 0, ash: 0.01 } }
        : { composition: first.composition }),
    };
    put([skin, ...layers]);
  };
  const remove = (index: number) => {
    const before = layers;
    const left = layers.filter((_, i) => i !== index);
    // What is innermost fills the rest and has no thickness.
    put(left.map((l, i) => (i === left.length - 1 ? withoutThickness(l) : l)));
    say(`Layer “${layers[index]?.name ?? ''}” taken out.`, () => put(before));
  };
  const mix = fromMixBefore(method, stepId);
  return (
    <div className="stack">
      <h4>Layers, from the outside in</h4>
      {errorAt('body.layers') === undefined ? null : (
        <p className="field-error" role="alert">
          {errorAt('body.layers')}
        </p>
      )}
      <ol className="layers">
        {layers.map((layer, i) => (
          <li key={i} className="layer">
            <div className="fields layer-head">
              <TextField
                label={`Layer ${i + 1}`}
                value={layer.name}
                maxLength={80}
                readOnly={readOnly}
                error={errorAt(`body.layers[${i}].name`)}
                onChange={(name) => change(i, { ...layer, name })}
              />
              {i < layers.length - 1 ? (
                <NumberField
                  label="Thickness"
                  unit="mm"
                  value={layer.thicknessMm ?? null}
                  readOnly={readOnly}
                  error={errorAt(`body.layers[${i}].thicknessMm`)}
                  onChange={(v) => v !== null && change(i, { ...layer, thicknessMm: v })}
                />
              ) : (
                <p className="layer-rest">fills the rest</p>
              )}
            </div>
            <Substance
              layer={layer}
              path={`body.layers[${i}]`}
              onChange={(next) => change(i, next)}
              errorAt={errorAt}
              readOnly={readOnly}
            />
            {readOnly ? null : (
              <div className="row">
                {mix.state === 'known' ? (
                  <Button onPress={() => change(i, composed(layer, mix.composition))}>
                    Take composition from “{mix.name}”
                  </Button>
                ) : null}
                {layers.length > 1 ? <Button onPress={() => remove(i)}>Take out this layer</Button> : null}
              </div>
            )}
          </li>
        ))}
      </ol>
      {mix.state === 'incomplete' ? (
        <p className="quiet">
          “{mix.name}” cannot give its composition yet: {mix.missing.join(', ')} do not say what they are made
          of.
        </p>
      ) : null}
      {readOnly || layers.length >= 4 ? null : <Button onPress={add}>Add an outer layer</Button>}
    </div>
  );
}

function withoutThickness(layer: Layer): Layer {
  const { thicknessMm: _, ...rest } = layer;
  return rest;
}

function composed(layer: Layer, composition: Composition): Layer {
  const { properties: _, ...rest } = layer;
  return { ...rest, composition };
}

interface IfItFreezesProps {
  readonly layer: Layer;
  readonly composition: Composition;
  readonly error: string | undefined;
  readonly onChange: (layer: Layer) => void;
  readonly readOnly: boolean;
}

/** Where ice begins: only of use to whoever freezes or starts from frozen, so it is folded away. */
function IfItFreezes({ layer, composition, error, onChange, readOnly }: IfItFreezesProps) {
  const units = useUnits();
  const own = composition.water > 0 ? firstIce(composition) : undefined;
  const { freezingPointC, freezesAs, ...rest } = layer;
  return (
    <details
      className="fold"
      open={freezingPointC !== undefined || freezesAs !== undefined || error !== undefined}
    >
      <summary>If it freezes</summary>
      <div className="fields fields-small">
        <NumberField
          label="First ice at"
          unit="°C"
          value={freezingPointC ?? null}
          low={firstIceRange.low}
          high={firstIceRange.high}
          optional
          readOnly={readOnly}
          error={error}
          hint={
            own === undefined || own < firstIceRange.low
              ? 'Measured, where you know it.'
              : `Empty: ${showQuantity(own, '°C', units)}, from the composition.`
          }
          onChange={(v) => onChange(v === null ? rest : { ...rest, freezingPointC: v })}
        />
        <Choice
          label="or like"
          value={freezesAs ?? 'own'}
          options={[
            { value: 'own', label: 'what it is made of' },
            ...Object.entries(freezingFoods).map(([name, food]) => ({
              value: name,
              label: `${name}, ${showQuantity(food.freezing, '°C', units)}`,
            })),
          ]}
          readOnly={readOnly}
          onChange={(v) => onChange(v === 'own' ? rest : { ...rest, freezesAs: v })}
        />
      </div>
    </details>
  );
}

interface SubstanceProps {
  readonly layer: Layer;
  readonly path: string;
  readonly onChange: (layer: Layer) => void;
  readonly errorAt: PieceEditorProps['errorAt'];
  readonly readOnly: boolean;
}

function Substance({ layer, path, onChange, errorAt, readOnly }: SubstanceProps) {
  const { composition, properties } = layer;
  if (composition !== undefined) {
    const sum = sumOf(composition);
    return (
      <fieldset className="shares">
        <legend className="unseen">Composition of {layer.name}</legend>
        <div className="fields fields-small">
          {components.map(({ key, label }) => (
            <NumberField
              key={key}
              label={label}
              unit="%"
              value={composition[key] * 100}
              low={0}
              high={100}
              readOnly={readOnly}
              error={errorAt(`${path}.composition.${key}`)}
              onChange={(v) =>
                v !== null && onChange({ ...layer, composition: { ...composition, [key]: v / 100 } })
              }
            />
          ))}
        </div>
        <p className={sum.ok ? 'quiet' : 'field-error'} aria-live="polite">
          {sum.words}
        </p>
        {sum.ok && errorAt(`${path}.composition`) !== undefined ? (
          <p className="field-error">{errorAt(`${path}.composition`)}</p>
        ) : null}
        <IfItFreezes
          layer={layer}
          composition={composition}
          error={errorAt(`${path}.freezingPointC`)}
          onChange={onChange}
          readOnly={readOnly}
        />
      </fieldset>
    );
  }
  if (properties === undefined) return null;
  const rows = [
    ['kWmK', 'Conductivity', 'W/(m K)'],
    ['rhoKgM3', 'Density', 'kg/m³'],
    ['cpJkgK', 'Specific heat', 'J/(kg K)'],
  ] as const;
  return (
    <div className="fields fields-small">
      {rows.map(([key, label, unit]) => (
        <NumberField
          key={key}
          label={label}
          unit={unit}
          value={properties[key]}
          readOnly={readOnly}
          error={errorAt(`${path}.properties.${key}`)}
          onChange={(v) => v !== null && onChange({ ...layer, properties: { ...properties, [key]: v } })}
        />
      ))}
    </div>
  );
}
