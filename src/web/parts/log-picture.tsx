/** A log as a line, with the reading that decides marked. */
import { useMemo } from 'react';
import { type Channel, thin } from '../../contract/probe-log.ts';
import { wordsBelow } from '../../documents/pictures/curves.ts';
import { toUnit } from '../../documents/pictures/cut-through.ts';
import { niceStep } from '../../documents/pictures/piece-layout.ts';
import type { Mark, Scene } from '../../documents/pictures/scene.ts';
import { useUnits } from '../kitchen.tsx';
import { SceneView } from '../pictures/SceneView.tsx';
import { useWidth } from '../pictures/use-width.ts';

export interface LogPictureProps {
  readonly channel: Pick<Channel, 'name' | 'points'>;
  readonly decidingS: number | null;
}

const HEIGHT = 180;
const LEFT = 40;

export function LogPicture({ channel, decidingS }: LogPictureProps) {
  const [box, width] = useWidth<HTMLDivElement>();
  const units = useUnits();
  const scene = useMemo(
    () => (width < 80 ? null : logScene(channel, decidingS, Math.min(width, 900), units)),
    [channel, decidingS, width, units],
  );
  return <div ref={box}>{scene === null ? null : <SceneView scene={scene} table="unseen" />}</div>;
}

function logScene(
  { name, points }: LogPictureProps['channel'],
  decidingS: number | null,
  width: number,
  units: 'metric' | 'US',
): Scene {
  const end = Math.max(1, points.at(-1)?.s ?? 1);
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const p of points) {
    low = Math.min(low, toUnit(p.C, units));
    high = Math.max(high, toUnit(p.C, units));
  }
  const step = niceStep(Math.max(1, (high - low) / 5));
  low = Math.floor(low / step) * step;
  high = Math.max(low + step, Math.ceil(high / step) * step);
  const x = (s: number) => LEFT + ((width - LEFT - 12) * s) / end;
  const y = (v: number) => HEIGHT - 24 - ((HEIGHT - 40) * (v - low)) / (high - low);
  const marks: Mark[] = [];
  for (let v = low; v <= high + 1e-9; v += step) {
    marks.push({
      kind: 'polyline',
      points: [
        [LEFT, y(v)],
        [width - 12, y(v)],
      ],
      stroke: { ink: 'bone', width: 1 },
    });
    marks.push({
      kind: 'text',
      x: LEFT - 5,
      y: y(v) + 4,
      text: `${Math.round(v)}°`,
      size: 12,
      ink: 'faded',
      anchor: 'end',
    });
  }
  const minutes = niceStep(Math.max(1, (end / 60) * (60 / (width - LEFT))));
  for (let m = 0; m <= end / 60 + 1e-9; m += minutes)
    marks.push({
      kind: 'text',
      x: x(m * 60),
      y: HEIGHT - 6,
      text: m === 0 ? '0 min' : String(m),
      size: 12,
      ink: 'faded',
      anchor: 'middle',
    });
  marks.push({
    kind: 'polyline',
    points: thin(points, 600).map((p): [number, number] => [x(p.s), y(toUnit(p.C, units))]),
    stroke: { ink: 'herb', width: 2 },
  });
  const deciding = decidingS === null ? undefined : points.find((p) => p.s >= decidingS - 1e-6);
  if (deciding !== undefined) {
    const px = x(deciding.s);
    const py = y(toUnit(deciding.C, units));
    marks.push({ kind: 'circle', x: px, y: py, r: 5, fill: 'paper', stroke: { ink: 'herb', width: 2 } });
    const late = px > width * 0.6;
    marks.push({
      kind: 'text',
      x: px + (late ? -9 : 9),
      y: py + (wordsBelow(points, deciding.s, late) ? 17 : -9),
      text: 'this reading decides',
      size: 13,
      ink: 'herb',
      anchor: late ? 'end' : 'start',
    });
  }
  const sample = thin(points, 12);
  return {
    width,
    height: HEIGHT,
    title: `Readings of ${name}`,
    marks,
    table: {
      head: ['Minutes', units === 'US' ? '°F' : '°C'],
      rows: sample.map((p) => [(p.s / 60).toFixed(1), toUnit(p.C, units).toFixed(1)]),
    },
  };
}
