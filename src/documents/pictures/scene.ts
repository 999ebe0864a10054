/**
 * A picture is data → scene: a list of vector marks in one coordinate system (x to the right, y down), drawn by the
 * screen (React) and by paper (an SVG string) alike. Colours are the names of the palette, never values, so that
 * the day, the night and the printed page each bring their own.
 */

export type Ink =
  | 'paper'
  | 'bone'
  | 'ink'
  | 'faded'
  | 'oxblood'
  | 'herb'
  | 'ember'
  | 'rust'
  | 'slate'
  /** A value on the temperature ramp, 0 (cold end) … 1 (hot end). */
  | { readonly ramp: number };

export interface Stroke {
  readonly ink: Ink;
  readonly width: number;
  readonly dash?: readonly number[];
}

export type Mark =
  | {
      readonly kind: 'polygon' | 'polyline';
      readonly points: readonly (readonly [number, number])[];
      readonly fill?: Ink;
      readonly stroke?: Stroke;
      readonly hatch?: boolean;
    }
  | {
      readonly kind: 'circle';
      readonly x: number;
      readonly y: number;
      readonly r: number;
      readonly fill?: Ink;
      readonly stroke?: Stroke;
    }
  | {
      readonly kind: 'text';
      readonly x: number;
      readonly y: number;
      readonly text: string;
      readonly size: number;
      readonly ink: Ink;
      readonly anchor?: 'start' | 'middle' | 'end';
      readonly weight?: 'regular' | 'strong';
      readonly family?: 'serif' | 'sans';
    };

export interface Scene {
  readonly width: number;
  readonly height: number;
  /** Read out in place of the picture. */
  readonly title: string;
  readonly marks: readonly Mark[];
  /** The same facts as a table, for who cannot see the picture. */
  readonly table?: { readonly head: readonly string[]; readonly rows: readonly (readonly string[])[] };
}
