import { useEffect, useRef, useState } from 'react';
import { Link } from 'wouter';
import type { Method } from '../../../../contract/steps.ts';
import { methodRibbon } from '../../../../documents/pictures/method-ribbon.ts';
import { stepTime, timeText } from '../../../../documents/pictures/step-time.ts';
import { useUnits } from '../../../kitchen.tsx';
import { SceneTable, SceneView } from '../../../pictures/SceneView.tsx';
import { useWidth } from '../../../pictures/use-width.ts';
import './ribbon-nav.css';

export interface RibbonNavProps {
  readonly method: Method;
  readonly selected: string | undefined;
  readonly hrefOf: (stepId: string) => string;
  /** Dragging a step to another place in the order; absent: the order stands. */
  readonly onMove?: ((from: number, to: number) => void) | undefined;
}

/** The method as a ribbon: every step is the way to its panel, and can be dragged to another place. */
export function RibbonNav({ method, selected, hrefOf, onMove }: RibbonNavProps) {
  const units = useUnits();
  const [ref, width] = useWidth<HTMLDivElement>();
  const scroller = useRef<HTMLElement>(null);
  const dragged = useRef<number | null>(null);
  const [over, setOver] = useState<number | null>(null);
  const { scene, boxes } = methodRibbon(method, { width: Math.max(width, 1), narrowest: 84, units });
  const at = boxes.find((b) => b.stepId === selected);
  const middle = at === undefined ? null : at.x + at.width / 2;
  useEffect(() => {
    const strip = scroller.current;
    if (strip !== null && middle !== null && width > 0) strip.scrollLeft = middle - strip.clientWidth / 2;
  }, [middle, width]);
  const drop = (to: number) => {
    const from = dragged.current;
    dragged.current = null;
    setOver(null);
    if (from !== null && from !== to) onMove?.(from, to);
  };
  return (
    <div className="ribbon" ref={ref}>
      {width === 0 ? null : (
        <nav className="scroll-x" ref={scroller} aria-label="Steps of the method">
          <div className="ribbon-strip" style={{ width: scene.width, height: scene.height }}>
            <SceneView scene={scene} table="none" />
            <ol className="ribbon-steps">
              {method.map((step, i) => {
                const box = boxes[i]!;
                return (
                  <li key={step.id} style={{ left: box.x, width: box.width }}>
                    <Link
                      href={hrefOf(step.id)}
                      className={over === i ? 'ribbon-step ribbon-over' : 'ribbon-step'}
                      aria-current={step.id === selected ? 'step' : undefined}
                      aria-label={`Step ${i + 1}, ${step.name}, ${timeText(stepTime(step))}`}
                      draggable={onMove !== undefined}
                      onDragStart={() => {
                        dragged.current = i;
                      }}
                      onDragOver={(e) => {
                        if (dragged.current === null) return;
                        e.preventDefault();
                        setOver(i);
                      }}
                      onDragEnd={() => {
                        dragged.current = null;
                        setOver(null);
                      }}
                      onDrop={(e) => {
                        e.preventDefault();
                        drop(i);
                      }}
                    />
                  </li>
                );
              })}
            </ol>
          </div>
        </nav>
      )}
      {scene.table === undefined ? null : <SceneTable table={scene.table} title={scene.title} />}
    </div>
  );
}
