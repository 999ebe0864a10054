/** Published composition of duck and goose; one row a line, columns as in ../rows.ts. Source: usda-sr28. */
export const waterfowl = `
duck-meat-with-skin-raw | duck, meat with skin, raw | 05139 | 48.5 11.49 39.34 13.22 0 0 0 0.68 63 0 404 | 28 bone | duck:M | each 1268 |  | whole duck, duckling
duck-meat-with-skin-roast | duck, meat with skin, roast | 05140 | 51.84 18.99 28.35 9.67 0 0 0 0.82 59 0 337 | 35 bone | duck:M | cup chopped 140, each 764 |  | roast duck
duck-meat-only-raw | duck, meat only, raw | 05141 | 73.77 18.28 5.95 2.32 0.94 0 0 1.06 74 0 135 | 66 bone, skin and fat | duck:M | each 606 |  | duck meat, skinless duck | cooked-out skin and fat are not in it
duck-meat-only-roast | duck, meat only, roast | 05142 | 64.22 23.48 11.2 3.951 0 0 0 1.11 65 0 201 | 62 bone, skin and fat | duck:M | cup chopped 140, each 442
duck-liver-raw | duck liver, raw | 05143 | 71.78 18.74 4.64 1.44 3.53 - 0 1.32 140 - 136 | 0 | duck:O | each 44 |  | duck livers
wild-duck-meat-with-skin-raw | wild duck, meat with skin, raw | 05144 | 66.52 17.42 15.2 5.04 0 - 0 1.16 56 0 211 | 40 bone, handling loss | duck:M | each 540 |  | mallard | skin in it; as sold in the US
wild-duck-breast-meat-only-raw | wild duck breast, meat only, raw | 05145 | 75.51 19.85 4.25 1.32 0 - 0 1.33 57 - 123 | 46 bone, skin and fat | duck:M | each 166 |  | mallard breast
duck-breast-with-skin-roast | duck breast, with skin, roast | 05315 | 63.25 24.5 10.85 2.922 0 - - 1.15 84 - 202 | 0 | duck:M | each 240 |  | magret
duck-breast-meat-only-grilled | duck breast, meat only, grilled | 05316 | 68.25 27.6 2.5 0.578 0 - - 1.4 105 - 140 | 0 | duck:M | each 190, cup chopped 174 |  | broiled duck breast
duck-leg-with-skin-roast | duck leg, with skin, roast | 05317 | 60.9 26.75 11.4 2.975 0 - - 1 110 - 217 | 31 bone | duck:M |  |  | roast duck legs
duck-leg-meat-only-braised | duck leg, meat only, braised | 05318 | 64.6 29.1 5.96 1.339 0 - - 1.1 108 - 178 | 34 bone | duck:M | cup chopped or diced cooked 174, each 75 |  | braised duck legs
duck-fat-rendered | duck fat, rendered | 04574 | 0.2 0 99.8 33.2 0 0 0 0 0 0 882 | 0 | duck:F | tbsp 12.8, cup 205 |  | duck dripping
goose-meat-with-skin-raw | goose, meat with skin, raw | 05146 | 49.66 15.86 33.62 9.78 0 - 0 0.87 73 0 371 | 19 bone | goose:M | each 2638 |  | whole goose
goose-meat-with-skin-roast | goose, meat with skin, roast | 05147 | 51.95 25.16 21.92 6.87 0 0 0 0.97 70 0 305 | 28 bone | goose:M | cup chopped 140, each 1548 |  | roast goose
goose-meat-only-raw | goose, meat only, raw | 05148 | 68.3 22.75 7.13 2.79 0 - 0 1.1 87 - 161 | 53 bone, skin and fat | goose:M | each 1532 |  | goose meat
goose-meat-only-roast | goose, meat only, roast | 05149 | 57.23 28.97 12.67 4.56 0 - 0 1.14 76 - 238 | 45 bone, skin and fat | goose:M | each 1182
goose-liver-raw | goose liver, raw | 05150 | 71.78 16.37 4.28 1.59 6.32 - 0 1.25 140 - 133 | 0 | goose:O | each 94 |  | goose livers
wild-goose-breast-meat-only-raw | wild goose breast, meat only, raw | 05111 | 70.78 24.31 4.02 0.609 0 0 0 1.41 50 0 133 | 0 | goose:M | each 635 |  | goose breast | of the Canada goose
goose-fat-rendered | goose fat, rendered | 04576 | 0.2 0 99.8 27.7 0 - 0 0 0 - 900 | 0 | goose:F | tbsp 12.8, cup 205 |  | goose dripping
`;
