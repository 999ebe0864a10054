/** How a specification is made to fit its one page: first the type shrinks, then the sketch and the oldest answers go. */

export interface SheetFit {
  /** Type size of what is asked [pt]. */
  readonly size: number;
  readonly picture: boolean;
  /** How many of the answers are printed, the newest first. */
  readonly answers: number;
}

/** Below this it cannot be read at a bench. */
export const smallestSheetType = 6;
const sizes = Array.from({ length: 17 }, (_, i) => 10 - i / 4);

/** Every way to set the sheet, roomiest first. What is asked, what the law asks and the cautions never go. */
export const sheetFits: readonly SheetFit[] = [
  ...sizes.filter((size) => size >= 7.5).map((size) => ({ size, picture: true, answers: 4 })),
  { size: 7.5, picture: true, answers: 1 },
  ...sizes.filter((size) => size <= 7.5).map((size) => ({ size, picture: false, answers: 1 })),
];

/** What the foot says about what is not on the page. */
export function sheetLeftOff(fit: SheetFit, had: { picture: boolean; answers: number }): string {
  const gone = [
    ...(had.picture && !fit.picture ? ['the sketch with its lines (the lengths stand in words)'] : []),
    ...(had.answers > fit.answers ? ['the older answers'] : []),
  ];
  return gone.length === 0
    ? ''
    : `Left off for want of room: ${gone.join('; ')}. All of it stands on screen.`;
}
