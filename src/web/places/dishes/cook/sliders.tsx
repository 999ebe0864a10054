/** The numbers that matter, one slide each: the picture answers while the hand still moves. */
import { useId, useState } from 'react';
import type { BodyInput, StageInput } from '../../../../contract/body.ts';
import { useUnits } from '../../../kitchen.tsx';
import { showQuantity } from '../../../parts/quantity.ts';
import type { Chill, Cook } from './programme.ts';
import { thickestMm, withThickest } from './shapes.ts';

interface Slide<S> {
  readonly id: string;
  readonly label: string;
  readonly unit: 'min' | '°C' | 'mm';
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly step: number;
  readonly put: (step: S, value: number) => S;
}

const setStage = (stages: readonly StageInput[], index: number, over: Partial<StageInput>): StageInput[] =>
  stages.map((s, i) => (i === index ? { ...s, ...over } : s));

/** A range about a value that a slide can reach: from a third to three times, in whole steps. */
const about = (value: number, step: number, least: number) => ({
  low: Math.max(least, Math.floor(value / 3 / step) * step),
  high: Math.max(least + 10 * step, Math.ceil((value * 3) / step) * step),
});

function stageSlides<S extends Cook | Chill>(step: S): Slide<S>[] {
  return step.stages.slice(0, 4).flatMap((stage, i): Slide<S>[] => {
    const slides: Slide<S>[] = [];
    const put = (s: S, over: Partial<StageInput>): S => ({ ...s, stages: setStage(s.stages, i, over) });
    if ('min' in stage.until)
      slides.push({
        id: `min-${i}`,
        label: `${stage.name}, how long`,
        unit: 'min',
        value: stage.until.min,
        ...about(Math.max(4, stage.until.min), 1, 0),
        step: 1,
        put: (s, min) => put(s, { until: { min } }),
      });
    if (stage.mediumC !== undefined && stage.mediumLog === undefined)
      slides.push({
        id: `C-${i}`,
        label: `${stage.name}, how hot`,
        unit: '°C',
        value: stage.mediumC,
        low: Math.round(stage.mediumC) - 20,
        high: Math.round(stage.mediumC) + 20,
        step: 0.5,
        put: (s, mediumC) => put(s, { mediumC }),
      });
    return slides;
  });
}

function pieceSlides(step: Cook): Slide<Cook>[] {
  const size = thickestMm(step.body);
  const outer = step.body.layers.length > 1 ? step.body.layers[0] : undefined;
  const body = (s: Cook, next: BodyInput): Cook => ({ ...s, body: next });
  return [
    {
      id: 'size',
      label: 'The piece, at its thickest',
      unit: 'mm',
      value: size,
      ...about(size, 1, 5),
      step: 0.5,
      put: (s, mm) => body(s, withThickest(s.body, mm)),
    },
    ...(outer?.thicknessMm === undefined
      ? []
      : [
          {
            id: 'skin',
            label: `${outer.name}, how thick`,
            unit: 'mm' as const,
            value: outer.thicknessMm,
            low: 0.5,
            high: Math.max(10, Math.ceil(outer.thicknessMm * 2)),
            step: 0.5,
            put: (s: Cook, thicknessMm: number) =>
              body(s, {
                ...s.body,
                layers: s.body.layers.map((l, i) => (i === 0 ? { ...l, thicknessMm } : l)),
              }),
          },
        ]),
    {
      id: 'start',
      label: 'Into the heat at',
      unit: '°C',
      value: step.startC,
      low: -1,
      high: 40,
      step: 0.5,
      put: (s, startC) => ({ ...s, startC }),
    },
  ];
}

export interface SlidersProps<S extends Cook | Chill> {
  readonly step: S;
  readonly onChange: (step: S) => void;
}

export function CookSliders({ step, onChange }: SlidersProps<Cook>) {
  return <Slides slides={[...stageSlides(step), ...pieceSlides(step)]} step={step} onChange={onChange} />;
}

export function ChillSliders({ step, onChange }: SlidersProps<Chill>) {
  return <Slides slides={stageSlides(step)} step={step} onChange={onChange} />;
}

function Slides<S extends Cook | Chill>(props: SlidersProps<S> & { readonly slides: readonly Slide<S>[] }) {
  const { slides, step, onChange } = props;
  if (slides.length === 0) return null;
  return (
    <div className="slides">
      {slides.map((slide) => (
        <SlideRow key={slide.id} slide={slide} onValue={(v) => onChange(slide.put(step, v))} />
      ))}
    </div>
  );
}

function SlideRow<S>({
  slide,
  onValue,
}: {
  readonly slide: Slide<S>;
  readonly onValue: (v: number) => void;
}) {
  const id = useId();
  const units = useUnits();
  // The ends stay put while the hand moves, and follow when it lets go.
  const [held, setHeld] = useState<{ low: number; high: number } | null>(null);
  const { low, high } = held ?? slide;
  const shown = showQuantity(slide.value, slide.unit, units);
  const hold = () => setHeld((before) => before ?? { low: slide.low, high: slide.high });
  const release = () => setHeld(null);
  return (
    <div className="slide">
      <label htmlFor={id}>{slide.label}</label>
      <output htmlFor={id}>{shown}</output>
      <input
        id={id}
        type="range"
        min={Math.min(low, slide.value)}
        max={Math.max(high, slide.value)}
        step={slide.step}
        value={slide.value}
        aria-valuetext={shown}
        onPointerDown={hold}
        onPointerUp={release}
        onPointerCancel={release}
        onKeyDown={hold}
        onBlur={release}
        onChange={(event) => onValue(Number(event.target.value))}
      />
    </div>
  );
}
