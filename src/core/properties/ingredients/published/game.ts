/** Published composition of furred game and rabbit; one row a line, columns as in ../rows.ts. Source: usda-sr28. */
export const game = `
venison-lean-raw | venison, lean, raw | 17164 | 73.57 22.96 2.42 0.95 0 0 0 1.16 51 0 120 | 0 | deer:M |  |  | deer meat
venison-lean-roast | venison, lean, roast | 17165 | 65.23 30.21 3.19 1.25 0 - 0 1.52 54 - 158 | 0 | deer:M |  |  | deer meat
venison-mince-raw | venison mince, raw | 17343 | 71.15 21.78 7.13 3.361 0 0 0 0.88 75 0 157 | 0 | deer:M |  |  | minced venison, ground venison
venison-shoulder-lean-braised | venison shoulder, lean, braised | 17346 | 59.78 36.28 3.95 2.239 0 0 0 1.12 52 0 191 | 0 | deer:M |  |  | venison stew
elk-lean-raw | elk, lean, raw | 17166 | 74.38 22.95 1.45 0.53 0 - 0 1 58 - 111 | 0 | elk:M |  |  | wapiti, red deer | called elk in the US; cervid, not the elk of Europe
wild-boar-lean-raw | wild boar, lean, raw | 17158 | 72.54 21.51 3.33 0.99 0 - 0 0.97 - - 122 | 0 | wild boar:M
rabbit-farmed-raw | rabbit, farmed, raw | 17177 | 72.82 20.05 5.55 1.66 0 - 0 0.72 41 - 136 | 0 | rabbit:M |  |  | tame rabbit
rabbit-farmed-roast | rabbit, farmed, roast | 17178 | 60.61 29.06 8.05 2.4 0 - 0 1.04 47 - 197 | 0 | rabbit:M
rabbit-farmed-stewed | rabbit, farmed, stewed | 17179 | 58.82 30.38 8.41 2.51 0 0 0 1.09 37 0 206 | 0 | rabbit:M
wild-rabbit-raw | wild rabbit, raw | 17180 | 74.51 21.79 2.32 0.69 0 - 0 1.12 50 - 114 | 0 | rabbit:M
wild-rabbit-stewed | wild rabbit, stewed | 17181 | 61.37 33.02 3.51 1.05 0 0 0 1.7 45 0 173 | 0 | rabbit:M
`;
