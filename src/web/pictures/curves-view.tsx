/** Temperatures and lethality against time on the screen; a log laid over them; the time tied to the scrubber. */
import { type PointerEvent, useEffect, useMemo, useRef } from 'react';
import uPlot from 'uplot';
import 'uplot/dist/uPlot.min.css';
import type { CookResult, Target } from '../../core/heat/types.ts';
import {
  type Curve,
  curvesOf,
  curvesTable,
  type MeasuredCurve,
  spread,
} from '../../documents/pictures/curves.ts';
import { toUnit } from '../../documents/pictures/cut-through.ts';
import type { LengthUnits } from '../../documents/pictures/piece-layout.ts';
import type { Palette } from '../../documents/pictures/svg.ts';
import { SceneTable } from './SceneView.tsx';
import { usePalette } from './use-palette.ts';
import { useWidth } from './use-width.ts';
import './pictures.css';

export interface CurvesViewProps {
  readonly result: CookResult;
  readonly target: Target;
  readonly time: number;
  readonly onTime: (s: number) => void;
  readonly units: LengthUnits;
  readonly measured?: readonly MeasuredCurve[];
}

interface Drawn {
  readonly plot: uPlot;
  readonly cursor: HTMLDivElement;
}

const LABEL_ROOM = 104;
const LEFT = 46;
const font = (size: number) => `${size}px "Source Sans 3 Variable", "Source Sans 3", sans-serif`;

interface EndLabel {
  readonly text: string;
  readonly colour: string;
  readonly value: number;
  readonly scale: string;
}

/** Writes each line's name where it ends, so that no legend has to be looked up. */
function writeLabels(u: uPlot, labels: readonly EndLabel[]): void {
  const { ctx, bbox } = u;
  const ratio = devicePixelRatio || 1;
  const ys = spread(
    labels.map((l) =>
      Math.min(bbox.top + bbox.height, Math.max(bbox.top, u.valToPos(l.value, l.scale, true))),
    ),
    15 * ratio,
    bbox.top + 4 * ratio,
    bbox.top + bbox.height,
  );
  ctx.save();
  ctx.font = font(13 * ratio);
  ctx.textAlign = 'left';
  ctx.textBaseline = 'middle';
  labels.forEach((label, i) => {
    ctx.fillStyle = label.colour;
    ctx.fillText(label.text, bbox.left + bbox.width + 6 * ratio, ys[i]!, (LABEL_ROOM - 10) * ratio);
  });
  ctx.restore();
}

function axes(palette: Palette, y: (v: number) => string, time: boolean): uPlot.Axis[] {
  const usual = { stroke: palette.faded, font: font(12), grid: { stroke: palette.bone, width: 1 } };
  return [
    {
      ...usual,
      show: time,
      size: 30,
      grid: { show: false },
      ticks: { stroke: palette.faded, width: 1, size: 4 },
      incrs: [1, 2, 5, 10, 15, 20, 30, 60, 120, 240, 480, 1440].map((m) => m * 60),
      values: (_, splits) => splits.map((s) => (s === 0 ? '0 min' : String(Math.round(s / 60)))),
    },
    {
      ...usual,
      size: LEFT,
      ticks: { show: false },
      values: (_, splits) => splits.map((v) => (v == null ? '' : y(v))),
    },
  ];
}

function temperaturePlot(props: CurvesViewProps, curves: readonly Curve[], palette: Palette, width: number) {
  const { result, units } = props;
  const measured = props.measured ?? [];
  const colour = (curve: Curve) => palette[curve.ink as keyof Palette];
  const shown = (C: ArrayLike<number>) => Array.from(C, (v) => toUnit(v, units));
  const tables: uPlot.AlignedData[] = [
    [Array.from(result.history.t), ...curves.map((c) => shown(c.C))],
    ...measured.map(
      (m): uPlot.AlignedData => [m.points.map((p) => p.s), m.points.map((p) => toUnit(p.C, units))],
    ),
  ];
  const labels: EndLabel[] = [
    ...curves.map((c) => ({
      text: c.name,
      colour: colour(c),
      value: toUnit(c.C[c.C.length - 1]!, units),
      scale: 'y',
    })),
    ...measured.map((m) => ({
      text: m.name,
      colour: palette.herb,
      value: toUnit(m.points.at(-1)?.C ?? 0, units),
      scale: 'y',
    })),
  ];
  const markDeciding = (u: uPlot) => {
    const ratio = devicePixelRatio || 1;
    for (const log of measured) {
      const point = log.decidingS == null ? undefined : log.points.find((p) => p.s >= log.decidingS! - 1e-6);
      if (point === undefined) continue;
      const x = u.valToPos(point.s, 'x', true);
      const y = u.valToPos(toUnit(point.C, units), 'y', true);
      u.ctx.save();
      u.ctx.beginPath();
      u.ctx.arc(x, y, 5 * ratio, 0, 2 * Math.PI);
      u.ctx.fillStyle = palette.paper;
      u.ctx.fill();
      u.ctx.lineWidth = 2.5 * ratio;
      u.ctx.strokeStyle = palette.herb;
      u.ctx.stroke();
      u.ctx.font = font(13 * ratio);
      u.ctx.fillStyle = palette.herb;
      u.ctx.textAlign = x > u.bbox.left + u.bbox.width * 0.6 ? 'right' : 'left';
      u.ctx.fillText(
        'this reading decides',
        x + (u.ctx.textAlign === 'right' ? -9 : 9) * ratio,
        y + 16 * ratio,
      );
      u.ctx.restore();
    }
  };
  const stages = (u: uPlot) => {
    const ratio = devicePixelRatio || 1;
    u.ctx.save();
    u.ctx.strokeStyle = palette.faded;
    u.ctx.lineWidth = ratio;
    u.ctx.setLineDash([2 * ratio, 4 * ratio]);
    for (const stage of result.stages) {
      const x = Math.round(u.valToPos(stage.end, 'x', true));
      u.ctx.beginPath();
      u.ctx.moveTo(x, u.bbox.top);
      u.ctx.lineTo(x, u.bbox.top + u.bbox.height);
      u.ctx.stroke();
    }
    u.ctx.restore();
  };
  const options: uPlot.Options = {
    width,
    height: 230,
    padding: [10, LABEL_ROOM, 0, 0],
    legend: { show: false },
    cursor: { show: false },
    scales: { x: { time: false } },
    axes: axes(palette, (v) => `${Math.round(v)}°`, false),
    series: [
      {},
      ...curves.map(
        (c): uPlot.Series => ({
          label: c.name,
          stroke: colour(c),
          width: c.width,
          spanGaps: true,
          points: { show: false },
          ...(c.dash === undefined ? {} : { dash: [...c.dash] }),
        }),
      ),
      ...measured.map(
        (m): uPlot.Series => ({
          label: m.name,
          stroke: palette.herb,
          width: 2,
          spanGaps: true,
          points: { show: false },
        }),
      ),
    ],
    hooks: { draw: [stages, markDeciding, (u) => writeLabels(u, labels)] },
  };
  return { options, data: uPlot.join(tables) };
}

function lethalityPlot(props: CurvesViewProps, palette: Palette, width: number) {
  const { result, target } = props;
  const floor = target.s / 60 / 100;
  const minutes = Array.from(result.history.lethality, (s) => Math.max(floor, s / 60));
  const need = target.s / 60;
  const labels: EndLabel[] = [
    { text: `needs ${Number(need.toPrecision(3))} min`, colour: palette.rust, value: need, scale: 'y' },
    { text: 'has had', colour: palette.oxblood, value: minutes.at(-1) ?? floor, scale: 'y' },
  ];
  const options: uPlot.Options = {
    width,
    height: 132,
    padding: [10, LABEL_ROOM, 0, 0],
    legend: { show: false },
    cursor: { show: false },
    scales: {
      x: { time: false },
      y: { distr: 3, range: [floor, 10 ** Math.ceil(Math.log10(Math.max(need * 10, minutes.at(-1) ?? 0)))] },
    },
    axes: axes(palette, (v) => (v >= 1e5 ? v.toExponential(0) : String(Number(v.toPrecision(1)))), true),
    series: [
      {},
      { label: 'has had', stroke: palette.oxblood, width: 2.4, points: { show: false } },
      { label: 'needs', stroke: palette.rust, width: 1.4, dash: [6, 4], points: { show: false } },
    ],
    hooks: { draw: [(u) => writeLabels(u, labels)] },
  };
  const t = Array.from(result.history.t);
  return { options, data: [t, minutes, t.map(() => need)] as uPlot.AlignedData };
}

function useCharts(props: CurvesViewProps, width: number) {
  const upper = useRef<HTMLDivElement>(null);
  const lower = useRef<HTMLDivElement>(null);
  const drawn = useRef<Drawn[]>([]);
  const palette = usePalette();
  const { result, target, units, measured } = props;
  const curves = useMemo(() => curvesOf(result), [result]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the charts are made anew for what they show, not for the time
  useEffect(() => {
    const places = [upper.current, lower.current];
    if (width < 60 || places[0] == null || places[1] == null) return undefined;
    const charts = [temperaturePlot(props, curves, palette, width), lethalityPlot(props, palette, width)];
    drawn.current = charts.map(({ options, data }, i) => {
      const plot = new uPlot(options, data, places[i]!);
      const cursor = document.createElement('div');
      cursor.className = 'curves-cursor';
      plot.over.append(cursor);
      return { plot, cursor };
    });
    return () => {
      for (const { plot } of drawn.current) plot.destroy();
      drawn.current = [];
    };
  }, [result, target, units, measured, curves, palette, width]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: after the charts were made anew the cursor must be set again
  useEffect(() => {
    for (const { plot, cursor } of drawn.current)
      cursor.style.transform = `translateX(${plot.valToPos(props.time, 'x')}px)`;
  }, [props.time, result, target, units, measured, curves, palette, width]);
  const timeAt = (clientX: number): number | null => {
    const plot = drawn.current[0]?.plot;
    if (plot === undefined) return null;
    const s = plot.posToVal(clientX - plot.over.getBoundingClientRect().left, 'x');
    return Number.isFinite(s) ? s : null;
  };
  return { upper, lower, timeAt };
}

export function CurvesView(props: CurvesViewProps) {
  const [box, width] = useWidth<HTMLDivElement>();
  const { upper, lower, timeAt } = useCharts(props, width);
  const end = props.result.stages.at(-1)?.end ?? 0;
  const seek = (event: PointerEvent) => {
    if (event.type === 'pointermove' && event.buttons === 0) return;
    const s = timeAt(event.clientX);
    if (s !== null) props.onTime(Math.min(end, Math.max(0, s)));
  };
  const unit = props.units === 'US' ? '°F' : '°C';
  const reference = toUnit(props.target.reference, props.units).toFixed(0);
  const names = [...curvesOf(props.result).map((c) => c.name), ...(props.measured ?? []).map((m) => m.name)];
  return (
    <div className="curves" ref={box}>
      <p className="small quiet">Temperature, {unit}, against minutes</p>
      <div
        ref={upper}
        role="img"
        aria-label={`Temperatures against time: ${names.join(', ')}. The table below has the figures.`}
        onPointerDown={seek}
        onPointerMove={seek}
      />
      <p className="small quiet">
        What the coldest point has had, min at {reference} {unit}
      </p>
      <div
        ref={lower}
        role="img"
        aria-label="Lethality at the coldest point against time, with the line it has to cross."
        onPointerDown={seek}
        onPointerMove={seek}
      />
      <SceneTable
        table={curvesTable(props.result, props.units)}
        title="Temperatures at the end of each stage"
      />
    </div>
  );
}
