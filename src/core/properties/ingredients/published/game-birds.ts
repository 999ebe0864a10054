/** Published composition of game birds and other small birds; one row a line, columns as in ../rows.ts. Source: usda-sr28. */
export const gameBirds = `
guinea-fowl-meat-with-skin-raw | guinea fowl, meat with skin, raw | 05151 | 68.9 23.4 6.45 1.77 0 - 0 1.25 67 0 158 | 17 bone | guinea fowl:M | each 690 |  | guinea hen, pintade
guinea-fowl-meat-only-raw | guinea fowl, meat only, raw | 05152 | 74.44 20.64 2.47 0.64 0 - 0 1.25 69 - 110 | 36 bone, skin and fat | guinea fowl:M | each 528 |  | guinea hen
pheasant-meat-with-skin-raw | pheasant, meat with skin, raw | 05153 | 67.77 22.7 9.29 2.7 0 - 0 1.27 40 0 181 | 14 bone | pheasant:M | each 800
pheasant-meat-only-raw | pheasant, meat only, raw | 05154 | 72.77 23.57 3.64 1.24 0 - 0 1.35 37 - 133 | 24 bone, skin | pheasant:M | each 704
pheasant-breast-meat-only-raw | pheasant breast, meat only, raw | 05155 | 72.4 24.37 3.25 1.1 0 - 0 1.3 33 - 133 | 0 | pheasant:M | each 364
pheasant-leg-meat-only-raw | pheasant leg, meat only, raw | 05156 | 73.4 22.2 4.3 1.46 0 - 0 1.44 45 - 134 | 0 | pheasant:M | each 107
quail-meat-with-skin-raw | quail, meat with skin, raw | 05157 | 69.65 19.63 12.05 3.38 0 - 0 0.9 53 0 192 | 10 bone | quail:M | each 109
quail-meat-only-raw | quail, meat only, raw | 05158 | 70.03 21.76 4.53 1.32 0 - 0 1.32 51 - 134 | 24 bone, skin | quail:M | each 92
quail-breast-meat-only-raw | quail breast, meat only, raw | 05159 | 71.67 22.59 2.99 0.87 0 - 0 1.27 55 - 123 | 0 | quail:M | each 56
pigeon-meat-with-skin-raw | pigeon, meat with skin, raw | 05160 | 56.6 18.47 23.8 8.43 0 - 0 1.4 54 - 294 | 23 bone | pigeon:M | each 199 |  | squab
pigeon-meat-only-raw | pigeon, meat only, raw | 05161 | 72.8 17.5 7.5 1.96 0 - 0 1.17 51 - 142 | 35 bone, skin | pigeon:M | each 168 |  | squab
pigeon-breast-meat-only-raw | pigeon breast, meat only, raw | 05162 | 72.82 21.76 4.52 1.18 0 - 0 1.28 55 - 134 | 0 | pigeon:M | each 101 |  | squab breast
grouse-breast-meat-only-raw | grouse breast, meat only, raw | 05363 | 72.93 25.94 0.88 0.13 0 0 0 1.07 50 0 112 | 0 | grouse:M | each 219 |  |  | of the ruffed grouse
`;
