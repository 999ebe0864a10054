/** Names that several files of the demo's Animals share. */
export const farm = 'Sallow Bank Farm (invented)';
export const geese = 'Marsh Cote Geese (invented)';
export const lambs = 'High Fold Lambs (invented)';
export const estate = 'Withy Estate (invented)';
export const store = 'Dry store and dairy (invented)';

export const wren = 'Wren Aldous';
export const ines = 'Ines Tarrow';
export const tobin = 'Tobin Rusk';
export const maud = 'Maud Pellow';

/** What comes weekly came yesterday, whatever day the demo is laid on. */
export const lastCame = 1;
