/** The salt front with its hours: scrub through cure, rinse and rest. */
import { useEffect, useRef, useState } from 'react';
import type { MethodCure } from '../../../../contract/method-cure.ts';
import type { Foreseen } from '../../../../core/salt/foresee.ts';
import { hoursText, saltFrontScene } from '../../../../documents/pictures/salt-front.ts';
import { useUnits } from '../../../kitchen.tsx';
import { Button } from '../../../parts/button.tsx';
import { Figure } from '../../../parts/figure.tsx';
import { useWidth } from '../../../pictures/use-width.ts';

export interface SaltFrontPanelProps {
  readonly cure: MethodCure;
  readonly foreseen: Foreseen;
  readonly current: boolean;
}

/** The whole programme plays in so many seconds. */
const PLAYS_IN = 10;
const still = () => globalThis.matchMedia?.('(prefers-reduced-motion: reduce)').matches === true;

export function SaltFrontPanel({ cure, foreseen, current }: SaltFrontPanelProps) {
  const [box, width] = useWidth<HTMLDivElement>();
  const units = useUnits();
  const [scrubbed, setScrubbed] = useState<number | null>(null);
  const [playing, setPlaying] = useState(false);
  const { result } = foreseen;
  const end = result.history.at(-1)?.t ?? 0;
  const time = Math.min(scrubbed ?? end, end);
  const latest = useRef(time);
  latest.current = time;

  useEffect(() => {
    if (!playing) return undefined;
    const move = (seconds: number) => {
      const next = Math.min(end, latest.current + (seconds * end) / PLAYS_IN);
      latest.current = next;
      setScrubbed(next);
      if (next >= end) setPlaying(false);
    };
    if (still()) {
      const timer = setInterval(() => move(1), 1_000);
      return () => clearInterval(timer);
    }
    let from = performance.now();
    let frame = requestAnimationFrame(function tick(now) {
      move(Math.min(0.1, (now - from) / 1000));
      from = now;
      frame = requestAnimationFrame(tick);
    });
    return () => cancelAnimationFrame(frame);
  }, [playing, end]);

  const ends = result.stages.map((stage) => stage.end.t);
  const stage = ends.findIndex((t) => time <= t + 1e-6);
  const name = cure.names[stage < 0 ? cure.names.length - 1 : stage] ?? '';
  const { piece } = cure.problem;
  return (
    <div className="salt-front">
      {current ? null : (
        <p className="salt-old">Not the current input: the last one that could be reckoned</p>
      )}
      <div ref={box} className={current ? undefined : 'salt-old-drawn'}>
        {width < 100 ? null : (
          <Figure
            scene={saltFrontScene(result, piece, { width: Math.min(width, 760), height: 280, units, time })}
          />
        )}
      </div>
      <div className="scrubber">
        <div className="scrubber-line">
          <Button
            onPress={() => {
              if (!playing && time >= end - 1) setScrubbed(0);
              setPlaying(!playing);
            }}
            pressed={playing}
          >
            {playing ? 'Pause' : 'Play'}
          </Button>
          <p className="scrubber-clock">
            <strong>{hoursText(time)}</strong> {name}
          </p>
        </div>
        <input
          className="scrubber-range"
          type="range"
          aria-label="Hours of the cure"
          aria-valuetext={`${hoursText(time)}, ${name}`}
          min={0}
          max={end}
          step={Math.max(1, end / 400)}
          value={time}
          onChange={(event) => {
            setPlaying(false);
            setScrubbed(Number(event.target.value));
          }}
        />
        {ends.length < 2 ? null : (
          <p className="row">
            {ends.map((t, i) => (
              <Button key={`${cure.names[i]} ${i}`} kind="quiet" onPress={() => setScrubbed(t)}>
                {cure.names[i]} {hoursText(t - (ends[i - 1] ?? 0))}
              </Button>
            ))}
          </p>
        )}
      </div>
    </div>
  );
}
