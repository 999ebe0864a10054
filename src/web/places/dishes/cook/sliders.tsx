/** The numbers that matter, one slide each: the picture answers while the hand still moves. */
import { memo, useId, useState } from 'react';
import type { StageInput } from '../../../../contract/body.ts';
import { type MediumName, media } from '../../../../core/properties/media.ts';
import { useUnits } from '../../../kitchen.tsx';
import { showQuantity } from '../../../parts/quantity.ts';
import type { Chill, Cook } from './programme.ts';
import { thickestMm, withThickest } from './shapes.ts';
import type { Edit } from './use-draft.ts';

interface Slide {
  readonly id: string;
  readonly label: string;
  readonly unit: 'min' | '°C' | 'mm';
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly step: number;
  readonly put: (step: Cook | Chill, value: number) => Cook | Chill;
}

const setStage = (stages: readonly StageInput[], index: number, over: Partial<StageInput>): StageInput[] =>
  stages.map((s, i) => (i === index ? { ...s, ...over } : s));

/** A range about a value that a slide can reach: from a third to three times, in whole steps. */
const about = (value: number, step: number, least: number) => ({
  low: Math.max(least, Math.floor(value / 3 / step) * step),
  high: Math.max(least + 10 * step, Math.ceil((value * 3) / step) * step),
});

function stageSlides(step: Cook | Chill): Slide[] {
  return step.stages.slice(0, 4).flatMap((stage, i): Slide[] => {
    const slides: Slide[] = [];
    const put = (s: Cook | Chill, over: Partial<StageInput>) => ({
      ...s,
      stages: setStage(s.stages, i, over),
    });
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
        label: `${stage.name}, temperature`,
        unit: '°C',
        value: stage.mediumC,
        ...temperaturesOf(stage),
        step: 0.5,
        put: (s, mediumC) => put(s, { mediumC }),
      });
    return slides;
  });
}

/** As far as the medium goes, or twenty degrees either way where nobody knows how far that is. */
function temperaturesOf({ medium, mediumC = 0 }: StageInput): { low: number; high: number } {
  if (medium !== undefined && Object.hasOwn(media, medium)) {
    const { coldest, hottest } = media[medium as MediumName];
    return {
      low: Math.max(coldest, Math.round(mediumC) - 40),
      high: Math.min(hottest, Math.round(mediumC) + 40),
    };
  }
  return { low: Math.round(mediumC) - 20, high: Math.round(mediumC) + 20 };
}

function pieceSlides(step: Cook): Slide[] {
  const size = thickestMm(step.body);
  const outer = step.body.layers.length > 1 ? step.body.layers[0] : undefined;
  const put = (change: (s: Cook, value: number) => Cook) => (s: Cook | Chill, value: number) =>
    s.kind === 'cook' ? change(s, value) : s;
  const slides: Slide[] = [
    {
      id: 'size',
      label: 'The piece, at its thickest',
      unit: 'mm',
      value: size,
      ...about(size, 1, 5),
      step: 0.5,
      put: put((s, mm) => ({ ...s, body: withThickest(s.body, mm) })),
    },
  ];
  if (outer?.thicknessMm !== undefined)
    slides.push({
      id: 'skin',
      label: `${outer.name}, how thick`,
      unit: 'mm',
      value: outer.thicknessMm,
      low: 0.5,
      high: Math.max(10, Math.ceil(outer.thicknessMm * 2)),
      step: 0.5,
      put: put((s, thicknessMm) => {
        const layers = s.body.layers.map((l, i) => (i === 0 ? { ...l, thicknessMm } : l));
        return { ...s, body: { ...s.body, layers } };
      }),
    });
  slides.push({
    id: 'start',
    label: 'Into the heat at',
    unit: '°C',
    value: step.startC,
    low: -1,
    high: 40,
    step: 0.5,
    put: put((s, startC) => ({ ...s, startC })),
  });
  return slides;
}

export interface SlidersProps {
  readonly step: Cook | Chill;
  readonly onChange: Edit<Cook | Chill>;
}

export const Sliders = memo(function Sliders({ step, onChange }: SlidersProps) {
  const slides = step.kind === 'cook' ? [...stageSlides(step), ...pieceSlides(step)] : stageSlides(step);
  if (slides.length === 0) return null;
  return (
    <div className="slides">
      {slides.map((slide) => (
        <SlideRow key={slide.id} slide={slide} onValue={(v) => onChange((s) => slide.put(s, v))} />
      ))}
    </div>
  );
});

function SlideRow({ slide, onValue }: { readonly slide: Slide; readonly onValue: (v: number) => void }) {
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
