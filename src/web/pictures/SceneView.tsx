/** A scene drawn on the screen in the look's own colours, with its table for who cannot see it. */
import { memo, useId } from 'react';
import { rampColour } from '../../documents/pictures/ramp.ts';
import type { Ink, Mark, Scene, Stroke } from '../../documents/pictures/scene.ts';
import { pointsText } from '../../documents/pictures/svg.ts';
import './pictures.css';

export const inkOnScreen = (ink: Ink): string =>
  typeof ink === 'string' ? `var(--${ink})` : rampColour(ink.ramp);

const strokeProps = (stroke: Stroke | undefined) =>
  stroke === undefined
    ? {}
    : {
        stroke: inkOnScreen(stroke.ink),
        strokeWidth: stroke.width,
        strokeLinejoin: 'round' as const,
        ...(stroke.dash === undefined ? {} : { strokeDasharray: stroke.dash.join(' ') }),
      };

function MarkView({ mark, hatch }: { readonly mark: Mark; readonly hatch: string }) {
  switch (mark.kind) {
    case 'circle':
      return (
        <circle
          cx={mark.x}
          cy={mark.y}
          r={mark.r}
          fill={mark.fill === undefined ? 'none' : inkOnScreen(mark.fill)}
          {...strokeProps(mark.stroke)}
        />
      );
    case 'text':
      return (
        <text
          x={mark.x}
          y={mark.y}
          fontSize={mark.size}
          fontWeight={mark.weight === 'strong' ? 600 : 400}
          fontFamily={mark.family === 'serif' ? 'var(--serif)' : 'var(--sans)'}
          textAnchor={mark.anchor ?? 'start'}
          fill={inkOnScreen(mark.ink)}
        >
          {mark.text}
        </text>
      );
    default: {
      const Shape = mark.kind;
      const fill =
        mark.hatch === true
          ? `url(#${hatch}-${typeof mark.fill === 'string' ? mark.fill : 'ink'})`
          : mark.fill === undefined
            ? 'none'
            : inkOnScreen(mark.fill);
      return <Shape points={pointsText(mark.points)} fill={fill} {...strokeProps(mark.stroke)} />;
    }
  }
}

/** The marks alone, to stand inside an SVG element that somebody else owns. */
export const Marks = memo(function Marks({ marks }: { readonly marks: readonly Mark[] }) {
  const hatch = useId();
  const hatched = new Set<string>();
  for (const mark of marks)
    if ((mark.kind === 'polygon' || mark.kind === 'polyline') && mark.hatch === true)
      hatched.add(typeof mark.fill === 'string' ? mark.fill : 'ink');
  return (
    <>
      {hatched.size === 0 ? null : (
        <defs>
          {[...hatched].map((ink) => (
            <pattern key={ink} id={`${hatch}-${ink}`} width="6" height="6" patternUnits="userSpaceOnUse">
              <path d="M-1.5 1.5L1.5 -1.5M0 6L6 0M4.5 7.5L7.5 4.5" stroke={`var(--${ink})`} fill="none" />
            </pattern>
          ))}
        </defs>
      )}
      {marks.map((mark, i) => (
        <MarkView key={i} mark={mark} hatch={hatch} />
      ))}
    </>
  );
});

export interface SceneViewProps {
  readonly scene: Scene;
  readonly className?: string;
  /** How the table is offered: folded under the picture, only to who cannot see it, or not here. Default folded. */
  readonly table?: 'folded' | 'unseen' | 'none';
}

export function SceneView({ scene, className, table }: SceneViewProps) {
  return (
    <div className={className === undefined ? 'scene' : `scene ${className}`}>
      <svg
        role="img"
        aria-label={scene.title}
        viewBox={`0 0 ${scene.width} ${scene.height}`}
        width={scene.width}
        height={scene.height}
      >
        <Marks marks={scene.marks} />
      </svg>
      {scene.table === undefined || table === 'none' ? null : (
        <SceneTable table={scene.table} title={scene.title} unseen={table === 'unseen'} />
      )}
    </div>
  );
}

export interface SceneTableProps {
  readonly table: NonNullable<Scene['table']>;
  readonly title: string;
  readonly unseen?: boolean;
}

/** The facts of a picture as a table. */
export function SceneTable({ table, title, unseen }: SceneTableProps) {
  const tableOf = (
    <table className="scene-table">
      <caption className="unseen">{title}</caption>
      <thead>
        <tr>
          {table.head.map((head, i) => (
            <th key={head} scope="col" className={i === 0 ? undefined : 'number'}>
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {table.rows.map((row, r) => (
          <tr key={r}>
            {row.map((cell, i) =>
              i === 0 ? (
                <th key={i} scope="row">
                  {cell}
                </th>
              ) : (
                <td key={i} className="number">
                  {cell}
                </td>
              ),
            )}
          </tr>
        ))}
      </tbody>
    </table>
  );
  if (unseen === true) return <div className="unseen">{tableOf}</div>;
  return (
    <details className="fold">
      <summary>The same as a table</summary>
      {/* biome-ignore lint/a11y/useSemanticElements: it scrolls sideways; it is no part of the page's outline */}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard */}
      <div className="scroll-x" role="region" aria-label={`Table: ${title}`} tabIndex={0}>
        {tableOf}
      </div>
    </details>
  );
}
