/** A casing's diameter every few centimetres, drawn to scale: drag a point, type it, paste a table. */
import { type KeyboardEvent, type PointerEvent, useId, useMemo, useRef, useState } from 'react';
import { niceStep } from '../../../../documents/pictures/piece-layout.ts';
import { useUnits } from '../../../kitchen.tsx';
import { Button } from '../../../parts/button.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { showQuantity } from '../../../parts/quantity.ts';
import { say } from '../../../parts/toast.tsx';
import { useWidth } from '../../../pictures/use-width.ts';
import { PasteProfile } from './paste-profile.tsx';
import type { ErrorAt } from './programme.ts';
import { addPoint, movePoint, type ProfilePoint, removePoint } from './shapes.ts';

export interface ShapeEditorProps {
  readonly profile: readonly ProfilePoint[];
  /** Depth of the skin and other outer layers together, drawn inside the outline [mm]. */
  readonly depthsMm: readonly number[];
  readonly onChange: (profile: ProfilePoint[]) => void;
  readonly errorAt: ErrorAt;
  readonly readOnly: boolean;
}

interface Extent {
  readonly length: number;
  readonly half: number;
}

const extentOf = (profile: readonly ProfilePoint[]): Extent => ({
  length: Math.max(10, profile.at(-1)?.atMm ?? 10),
  half: Math.max(5, ...profile.map((p) => p.diameterMm / 2)) * 1.25,
});

/** How one picture unit relates to the piece; held still while a point is dragged. */
function frameOf(extent: Extent, width: number) {
  const side = 26;
  const perMm = Math.min((width - 2 * side) / (extent.length * 1.08), 150 / extent.half);
  const height = 2 * extent.half * perMm + 34;
  return {
    width,
    height,
    perMm,
    x: (mm: number) => side + mm * perMm,
    y: (mm: number) => 8 + (extent.half - mm) * perMm,
    at: (px: number) => (px - side) / perMm,
    radius: (py: number) => extent.half - (py - 8) / perMm,
  };
}

type Frame = ReturnType<typeof frameOf>;

export function ShapeEditor(props: ShapeEditorProps) {
  const { profile, onChange, readOnly } = props;
  const [chosen, setChosen] = useState(0);
  const insert = () => {
    const { profile: next, at } = addPoint(profile, chosen);
    onChange(next);
    setChosen(at);
  };
  const remove = (index: number) => {
    const before = [...profile];
    onChange(removePoint(profile, index));
    setChosen(Math.max(0, index - 1));
    say('Point taken out.', () => onChange(before));
  };
  return (
    <div className="shape-editor">
      <ShapeDrawing
        {...props}
        chosen={Math.min(chosen, profile.length - 1)}
        onChoose={setChosen}
        onRemove={remove}
      />
      {readOnly ? null : (
        <div className="row">
          <Button onPress={insert}>Add a point</Button>
          <Button onPress={() => remove(Math.min(chosen, profile.length - 1))} disabled={profile.length <= 2}>
            Take out point {Math.min(chosen, profile.length - 1) + 1}
          </Button>
        </div>
      )}
      <ShapeTable {...props} chosen={chosen} onChoose={setChosen} />
      {readOnly ? null : <PasteProfile onProfile={onChange} />}
    </div>
  );
}

interface DrawingProps extends ShapeEditorProps {
  readonly chosen: number;
  readonly onChoose: (index: number) => void;
  readonly onRemove: (index: number) => void;
}

function ShapeDrawing({ profile, depthsMm, chosen, onChoose, onRemove, onChange, readOnly }: DrawingProps) {
  const [box, width] = useWidth<HTMLElement>();
  const units = useUnits();
  const held = useRef<Frame | null>(null);
  const extent = extentOf(profile);
  const frame = held.current ?? frameOf(extent, Math.max(240, width));
  const outline = [
    ...profile.map((p) => `${frame.x(p.atMm)},${frame.y(p.diameterMm / 2)}`),
    ...[...profile].reverse().map((p) => `${frame.x(p.atMm)},${frame.y(-p.diameterMm / 2)}`),
  ].join(' ');
  const inner = depthsMm.flatMap((depth) =>
    [1, -1].map((side) =>
      profile
        .map((p) => `${frame.x(p.atMm)},${frame.y(side * Math.max(0, p.diameterMm / 2 - depth))}`)
        .join(' '),
    ),
  );
  const drag = (event: PointerEvent<SVGGElement>, index: number) => {
    const svg = event.currentTarget.ownerSVGElement;
    if (held.current === null || svg === null) return;
    const area = svg.getBoundingClientRect();
    const scale = frame.width / Math.max(1, area.width);
    const x = (event.clientX - area.left) * scale;
    const y = (event.clientY - area.top) * scale;
    onChange(
      movePoint(profile, index, {
        atMm: Math.round(frame.at(x)),
        diameterMm: Math.round(4 * Math.abs(frame.radius(y))) / 2,
      }),
    );
  };
  const keys = (event: KeyboardEvent, index: number) => {
    const p = profile[index]!;
    const by = event.shiftKey ? 5 : 1;
    const moves: Record<string, { atMm?: number; diameterMm?: number }> = {
      ArrowUp: { diameterMm: p.diameterMm + by / 2 },
      ArrowDown: { diameterMm: p.diameterMm - by / 2 },
      ArrowRight: { atMm: p.atMm + by },
      ArrowLeft: { atMm: p.atMm - by },
    };
    if ((event.key === 'Delete' || event.key === 'Backspace') && profile.length > 2) {
      event.preventDefault();
      onRemove(index);
      return;
    }
    const move = moves[event.key];
    if (move === undefined) return;
    event.preventDefault();
    onChange(movePoint(profile, index, move));
  };
  return (
    <section className="shape-drawing" ref={box} aria-label="The piece’s outline, to scale">
      <svg viewBox={`0 0 ${frame.width} ${frame.height}`} width={frame.width} height={frame.height}>
        <title>The outline: drag a point, or choose it and use the arrow keys</title>
        <polygon points={outline} className="shape-piece" />
        {inner.map((points, i) => (
          <polyline key={i} points={points} className="shape-layer" />
        ))}
        <line
          x1={frame.x(0) - 12}
          x2={frame.x(extent.length) + 12}
          y1={frame.y(0)}
          y2={frame.y(0)}
          className="shape-axis"
        />
        <EditorRuler frame={frame} length={extent.length} />
        {profile.map((p, i) => {
          const words = `Point ${i + 1}: ${showQuantity(p.diameterMm, 'mm', units)} across, ${showQuantity(p.atMm, 'mm', units)} along`;
          const x = frame.x(p.atMm);
          const y = frame.y(p.diameterMm / 2);
          return (
            <g
              key={i}
              role="slider"
              aria-label={words}
              aria-orientation="vertical"
              aria-valuemin={1}
              aria-valuemax={2000}
              aria-valuenow={p.diameterMm}
              aria-valuetext={words}
              aria-readonly={readOnly || undefined}
              tabIndex={0}
              className={i === chosen ? 'shape-point shape-point-chosen' : 'shape-point'}
              onFocus={() => onChoose(i)}
              onKeyDown={(event) => readOnly || keys(event, i)}
              onPointerDown={(event) => {
                if (readOnly) return;
                event.currentTarget.setPointerCapture(event.pointerId);
                event.currentTarget.focus();
                held.current = frame;
              }}
              onPointerMove={(event) => drag(event, i)}
              onPointerUp={() => {
                held.current = null;
                onChange([...profile]);
              }}
              onPointerCancel={() => {
                held.current = null;
              }}
            >
              <line x1={x} x2={x} y1={y} y2={frame.y(-p.diameterMm / 2)} className="shape-gauge" />
              <circle cx={x} cy={y} r={22} className="shape-target" />
              <circle cx={x} cy={y} r={8} className="shape-handle" />
              <text
                x={x}
                y={y - 13}
                textAnchor={i === 0 ? 'start' : i === profile.length - 1 ? 'end' : 'middle'}
              >
                {showQuantity(p.diameterMm, 'mm', units)}
              </text>
            </g>
          );
        })}
      </svg>
    </section>
  );
}

function EditorRuler({ frame, length }: { readonly frame: Frame; readonly length: number }) {
  const units = useUnits();
  const unit = units === 'US' ? 25.4 : 1;
  const step = niceStep(Math.max(0.5, 44 / frame.perMm / unit));
  const y = frame.height - 20;
  const marks = Array.from({ length: Math.floor(length / unit / step + 1e-6) + 1 }, (_, i) => i * step);
  return (
    <g className="shape-ruler">
      <line x1={frame.x(0)} x2={frame.x(length)} y1={y} y2={y} />
      {marks.map((m, i) => (
        <g key={m}>
          <line x1={frame.x(m * unit)} x2={frame.x(m * unit)} y1={y} y2={y + 5} />
          <text x={frame.x(m * unit)} y={y + 18} textAnchor={i === 0 ? 'start' : 'middle'}>
            {Math.round(m * 100) / 100}
            {i === marks.length - 1 ? (units === 'US' ? ' in' : ' mm') : ''}
          </text>
        </g>
      ))}
    </g>
  );
}

interface TableProps extends ShapeEditorProps {
  readonly chosen: number;
  readonly onChoose: (index: number) => void;
}

function ShapeTable({ profile, onChange, errorAt, readOnly, chosen, onChoose }: TableProps) {
  const caption = useId();
  const rows = useMemo(() => [...profile], [profile]);
  return (
    <div className="scroll-x">
      <table className="shape-table" aria-labelledby={caption}>
        <caption id={caption}>Outer diameter along the piece, from one end to the other</caption>
        <thead>
          <tr>
            <th scope="col">Point</th>
            <th scope="col">Along</th>
            <th scope="col">Diameter</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((p, i) => (
            <tr key={i} className={i === chosen ? 'shape-row-chosen' : undefined} onFocus={() => onChoose(i)}>
              <th scope="row">{i + 1}</th>
              <td>
                <NumberField
                  label={<span className="unseen">Point {i + 1}, along</span>}
                  unit="mm"
                  value={p.atMm}
                  low={i === 0 ? 0 : undefined}
                  high={i === 0 ? 0 : 2_000}
                  readOnly={readOnly || i === 0}
                  error={errorAt(`body.profile[${i}].atMm`)}
                  onChange={(v) => onChange(rows.map((r, k) => (k === i ? { ...r, atMm: v ?? r.atMm } : r)))}
                />
              </td>
              <td>
                <NumberField
                  label={<span className="unseen">Point {i + 1}, diameter</span>}
                  unit="mm"
                  value={p.diameterMm}
                  readOnly={readOnly}
                  error={errorAt(`body.profile[${i}].diameterMm`)}
                  onChange={(v) =>
                    onChange(rows.map((r, k) => (k === i ? { ...r, diameterMm: v ?? r.diameterMm } : r)))
                  }
                />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
