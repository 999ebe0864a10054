/** Temperatures and lethality against time on the screen; a log laid over them; the time tied to the scrubber. */
import { type PointerEvent, useEffect, useMemo, useRef } from 'react';
import uPlot from 'uplot';
import 'uplot/dist/uPlot.min.css';
import type { CookResult, Target } from '../../core/heat/types.ts';
import { curvesOf, curvesTable, type MeasuredCurve } from '../../documents/pictures/curves.ts';
import { toUnit } from '../../documents/pictures/cut-through.ts';
import type { LengthUnits } from '../../documents/pictures/piece-layout.ts';
import { lethalityPlot, type Plot, type Shown, temperaturePlot } from './curves-plots.ts';
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
  readonly chart: uPlot;
  readonly plot: Plot;
  readonly cursor: HTMLDivElement;
}

const nothing: readonly MeasuredCurve[] = [];

function setCursor(chart: uPlot, cursor: HTMLElement, time: number): void {
  const x = chart.valToPos(time, 'x');
  if (Number.isFinite(x)) cursor.style.transform = `translateX(${x}px)`;
}

function useCharts(props: CurvesViewProps, width: number) {
  const upper = useRef<HTMLDivElement>(null);
  const lower = useRef<HTMLDivElement>(null);
  const drawn = useRef<readonly Drawn[]>([]);
  const palette = usePalette();
  const { result, target, units } = props;
  const measured = props.measured ?? nothing;
  const shown = useMemo<Shown>(
    () => ({ result, target, units, measured, curves: curvesOf(result) }),
    [result, target, units, measured],
  );
  const latest = useRef(shown);
  latest.current = shown;
  const time = useRef(props.time);
  time.current = props.time;

  // biome-ignore lint/correctness/useExhaustiveDependencies: another number of lines, or other logs, need other charts
  useEffect(() => {
    const places = [upper.current, lower.current];
    if (width < 60 || places[0] == null || places[1] == null) return undefined;
    const now = () => latest.current;
    drawn.current = [temperaturePlot(now, palette, width), lethalityPlot(now, palette, width)].map(
      (plot, i) => {
        const cursor = document.createElement('div');
        cursor.className = 'curves-cursor';
        // A chart knows where a time stands only once it has been drawn.
        const placed = (chart: uPlot) => setCursor(chart, cursor, time.current);
        const hooks = { ...plot.options.hooks, draw: [...(plot.options.hooks?.draw ?? []), placed] };
        const chart = new uPlot({ ...plot.options, hooks }, plot.data(now()), places[i]!);
        chart.over.append(cursor);
        return { chart, plot, cursor };
      },
    );
    return () => {
      for (const { chart } of drawn.current) chart.destroy();
      drawn.current = [];
    };
  }, [measured, palette, width]);
  useEffect(() => {
    for (const { chart, plot } of drawn.current) chart.setData(plot.data(shown));
  }, [shown]);
  useEffect(() => {
    for (const { chart, cursor } of drawn.current) setCursor(chart, cursor, props.time);
  }, [props.time]);

  const timeAt = (clientX: number): number | null => {
    const chart = drawn.current[0]?.chart;
    if (chart === undefined) return null;
    const s = chart.posToVal(clientX - chart.over.getBoundingClientRect().left, 'x');
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
