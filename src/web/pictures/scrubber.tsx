/** Time under a picture: the stages as a strip, a slider that fingers and arrow keys move, and play at sixty times. */
import { useEffect, useRef, useState } from 'react';
import type { CookResult } from '../../core/heat/types.ts';
import { Button } from '../parts/button.tsx';
import { stageAt } from './frames.ts';
import { clockWords, timeWords } from './words.ts';
import './pictures.css';

export interface ScrubberProps {
  readonly result: CookResult;
  readonly time: number;
  readonly onTime: (s: number) => void;
}

const SPEED = 60;
const still = () => globalThis.matchMedia?.('(prefers-reduced-motion: reduce)').matches === true;

/** Runs the time on while `playing`; for who asks for no motion in whole minutes, once a second. */
function usePlay(
  playing: boolean,
  end: number,
  time: number,
  onTime: (s: number) => void,
  stop: () => void,
): void {
  const latest = useRef({ time, onTime, stop });
  latest.current = { time, onTime, stop };
  useEffect(() => {
    if (!playing) return undefined;
    let from = performance.now();
    const move = (seconds: number) => {
      const next = Math.min(end, latest.current.time + seconds * SPEED);
      latest.current.onTime(next);
      if (next >= end) latest.current.stop();
    };
    if (still()) {
      const timer = setInterval(() => move(1), 1_000);
      return () => clearInterval(timer);
    }
    let frame = requestAnimationFrame(function tick(now) {
      move(Math.min(0.1, (now - from) / 1000));
      from = now;
      frame = requestAnimationFrame(tick);
    });
    return () => cancelAnimationFrame(frame);
  }, [playing, end]);
}

export function Scrubber({ result, time, onTime }: ScrubberProps) {
  const [playing, setPlaying] = useState(false);
  const end = result.stages.at(-1)?.end ?? 0;
  usePlay(playing, end, time, onTime, () => setPlaying(false));
  const stage = result.stages[stageAt(result, time)];
  const step = end > 7_200 ? 60 : end > 1_800 ? 15 : 5;
  return (
    <div className="scrubber">
      <div className="scrubber-line">
        <Button
          onPress={() => {
            if (!playing && time >= end - 1) onTime(0);
            setPlaying(!playing);
          }}
          pressed={playing}
        >
          {playing ? 'Pause' : 'Play ×60'}
        </Button>
        <p className="scrubber-clock">
          <strong>{clockWords(time)}</strong> {stage?.name}
        </p>
      </div>
      <input
        className="scrubber-range"
        type="range"
        aria-label="Time"
        aria-valuetext={`${timeWords(time)}, ${stage?.name ?? ''}`}
        min={0}
        max={end}
        step={step}
        value={time}
        onChange={(event) => {
          setPlaying(false);
          onTime(Math.min(end, Number(event.target.value)));
        }}
      />
      <ol className="stage-strip" aria-label="Stages">
        {result.stages.map((s, i) => (
          <li key={i} style={{ flexGrow: Math.max(1e-3, (s.end - s.start) / Math.max(1, end)) }}>
            <button
              type="button"
              className="stage-strip-go"
              title={`${s.name}, ${timeWords(s.end - s.start)}`}
              onClick={() => onTime(s.end)}
            >
              <span>{s.name} </span>
              <span className="stage-strip-time">{timeWords(s.end - s.start)}</span>
            </button>
          </li>
        ))}
      </ol>
    </div>
  );
}
