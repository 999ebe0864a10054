/** The cut-through on the screen: cells painted on a canvas, marks drawn over them, and a probe to put anywhere. */
import { type KeyboardEvent, type PointerEvent, useEffect, useMemo, useRef, useState } from 'react';
import type { CookResult, Place } from '../../core/heat/types.ts';
import { worth } from '../../documents/format.ts';
import { cutThroughLayout, cutThroughScene, type Ramp } from '../../documents/pictures/cut-through.ts';
import { locate, valueAt } from '../../documents/pictures/cut-through-field.ts';
import type { LengthUnits } from '../../documents/pictures/piece-layout.ts';
import { type Point, placeOfPoint, pointsOfPlace } from '../../documents/pictures/piece-section.ts';
import { frameAt } from './frames.ts';
import { paint, rasterOf } from './raster.ts';
import { Marks, SceneTable } from './SceneView.tsx';
import { placeWords, temperatureWords } from './words.ts';
import './pictures.css';

export interface CutThroughViewProps {
  readonly result: CookResult;
  /** Time shown [s]. */
  readonly time: number;
  readonly width: number;
  readonly maxHeight?: number;
  readonly ramp: Ramp;
  readonly units: LengthUnits;
  /** Lethality that the target asks [s]. */
  readonly needed: number;
  /** What the lethality refers to, in words: "70 °C". */
  readonly reference: string;
}

/** Pixels of the quadrant at most; more would not be seen and would cost time. */
const MOST_PIXELS = 90_000;

export function CutThroughView(props: CutThroughViewProps) {
  const { result, time, width, ramp, units, needed } = props;
  const { mesh } = result;
  const canvas = useRef<HTMLCanvasElement>(null);
  const [probe, setProbe] = useState<Place | null>(null);
  const maxHeight = props.maxHeight ?? 300;

  const { section, layout } = useMemo(
    () => cutThroughLayout(mesh, { width, maxHeight }),
    [mesh, width, maxHeight],
  );
  const raster = useMemo(() => {
    const span = section.x1 - section.x0;
    const fits = Math.sqrt(MOST_PIXELS / Math.max(1, span * section.half));
    const sharp = layout.perMm * Math.min(2, globalThis.devicePixelRatio || 1);
    return rasterOf(mesh, section.x0, section.x1, section.half, Math.min(sharp, fits));
  }, [mesh, section, layout]);
  const frame = useMemo(() => frameAt(result, time), [result, time]);
  const image = useMemo(() => new ImageData(raster.width, raster.height), [raster]);

  useEffect(() => {
    const context = canvas.current?.getContext('2d');
    if (context == null || frame === null) return;
    paint(raster, frame.C, ramp.low, ramp.high, new Uint32Array(image.data.buffer));
    context.putImageData(image, 0, 0);
  }, [raster, frame, ramp, image]);

  const scene = useMemo(
    () =>
      frame === null
        ? null
        : cutThroughScene(result, frame, { width, maxHeight, units, ramp, needed, cells: false }),
    [result, frame, width, maxHeight, units, ramp, needed],
  );
  if (scene === null || frame === null) return null;

  const put = (point: Point) => {
    const place = placeOfPoint(mesh.shape, point);
    if (locate(mesh, place) !== null) setProbe(place);
  };
  const follow = (event: PointerEvent<HTMLElement>) => {
    if (event.pointerType === 'touch' && event.buttons === 0) return;
    const box = event.currentTarget.getBoundingClientRect();
    const scale = (layout.right - layout.left) / Math.max(1, box.width);
    put(
      layout.back(
        layout.left + (event.clientX - box.left) * scale,
        layout.y(section.half) + (event.clientY - box.top) * scale,
      ),
    );
  };
  const step = (event: KeyboardEvent) => {
    const by = event.shiftKey ? 5 : 1;
    const moves: Record<string, Point> = {
      ArrowLeft: [-by, 0],
      ArrowRight: [by, 0],
      ArrowUp: [0, by],
      ArrowDown: [0, -by],
    };
    if (event.key === 'Escape') setProbe(null);
    const move = moves[event.key];
    if (move === undefined) return;
    event.preventDefault();
    const from = pointsOfPlace(mesh.shape, probe ?? result.coldSpot)[0] ?? [0, 0];
    put(probe === null ? from : [from[0] + move[0], from[1] + move[1]]);
  };

  const found = probe === null ? null : locate(mesh, probe);
  const reading =
    probe === null || found === null
      ? null
      : {
          points: pointsOfPlace(mesh.shape, probe).slice(0, 1).map(layout.point),
          words: `Probe ${placeWords(mesh, probe, units)}: ${temperatureWords(valueAt(frame.C, found), units)}, has had ${worth(valueAt(frame.lethality, found) / 60, needed / 60)} at ${props.reference}.`,
        };

  return (
    <div className="cut-through">
      <div className="cut-through-picture" style={{ width: scene.width, height: scene.height }}>
        <canvas
          ref={canvas}
          width={raster.width}
          height={raster.height}
          style={{
            left: layout.left,
            top: layout.y(section.half),
            width: layout.right - layout.left,
            height: 2 * section.half * layout.perMm,
          }}
        />
        <svg
          role="img"
          aria-label={scene.title}
          viewBox={`0 0 ${scene.width} ${scene.height}`}
          width={scene.width}
          height={scene.height}
        >
          <Marks marks={scene.marks} />
          {reading?.points.map(([x, y]) => (
            <g key="probe">
              <path d={`M${x - 10} ${y}H${x + 10}M${x} ${y - 10}V${y + 10}`} className="probe-halo" />
              <path d={`M${x - 10} ${y}H${x + 10}M${x} ${y - 10}V${y + 10}`} className="probe-line" />
            </g>
          ))}
        </svg>
        <div
          className="probe-field"
          role="slider"
          aria-label="Probe: arrow keys move it through the piece"
          aria-valuemin={Math.round(section.x0)}
          aria-valuemax={Math.round(section.x1)}
          aria-valuenow={Math.round((pointsOfPlace(mesh.shape, probe ?? result.coldSpot)[0] ?? [0])[0])}
          aria-valuetext={reading?.words ?? 'not put in yet'}
          tabIndex={0}
          style={{
            left: layout.left,
            top: layout.y(section.half),
            width: layout.right - layout.left,
            height: 2 * section.half * layout.perMm,
          }}
          onPointerDown={follow}
          onPointerMove={follow}
          onKeyDown={step}
        />
      </div>
      <p className="probe-words" aria-live="polite">
        {reading?.words ?? 'Point at the piece, or use the arrow keys on it, to read it with a probe.'}
      </p>
      {scene.table === undefined ? null : <SceneTable table={scene.table} title={scene.title} />}
    </div>
  );
}
