import type { ReactNode } from 'react';
import type { Scene } from '../../documents/pictures/scene.ts';
import { SceneView } from '../pictures/SceneView.tsx';

export interface FigureProps {
  readonly scene: Scene;
  readonly caption?: ReactNode;
  readonly table?: 'folded' | 'unseen' | 'none';
}

/** A picture with its words and its table. */
export function Figure({ scene, caption, table }: FigureProps) {
  return (
    <figure>
      <SceneView scene={scene} table={table ?? 'folded'} />
      {caption === undefined ? null : <figcaption className="quiet small">{caption}</figcaption>}
    </figure>
  );
}
