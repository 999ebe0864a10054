/** Published composition of turkey; one row a line, columns as in ../rows.ts. Source: usda-sr28. */
export const turkey = `
turkey-meat-with-skin-raw | turkey, meat with skin, raw | 05165 | 72.69 21.64 5.64 1.461 0.13 0.07 0 0.98 112 0 143 | 29 bone and connective tissue | turkey:M | each 5002 |  | whole turkey
turkey-meat-with-skin-roast | turkey, meat with skin, roast | 05166 | 63.52 28.55 7.39 2.155 0.06 0 0 1.18 103 0 189 | 31 bone connective tissue | turkey:M | each 3812
turkey-meat-only-raw | turkey, meat only, raw | 05167 | 75.37 22.64 1.93 0.459 0.14 0.07 0 1.04 118 0 112 | 41 bone, skin and fat | turkey:M | each 5002 |  | turkey meat
turkey-meat-only-roast | turkey, meat only, roast | 05168 | 66.7 29.06 3.84 1.132 0 0 0 1.17 101 0 159 | 38 bone, skin and fat | turkey:M | each 3812
turkey-skin-raw | turkey skin, raw | 05169 | 48.38 12.96 38.93 10.43 0.16 0.1 0 0.52 62 0 407 | 0 | turkey:S
turkey-skin-roast | turkey skin, roast | 05170 | 34.91 23.94 39.31 11.356 0.57 0 0 1.27 116 0 459 | 0 | turkey:S
turkey-leg-skin-raw | turkey leg skin, raw | 05714 | 50.08 14.35 35.83 10.216 0 0 0 0.49 78 0 380 | 0 | turkey:S
turkey-giblets-raw | turkey giblets, raw | 05171 | 76.03 18.18 5.09 1.452 0.07 0 0 1.13 136 0 124 | 0 | turkey:O
turkey-giblets-simmered | turkey giblets, simmered | 05172 | 66.65 26.44 6.61 1.725 0 0 0 1.18 117 0 173 | 0 | turkey:O
turkey-gizzard-raw | turkey gizzard, raw | 05173 | 77.47 18.8 3.37 0.929 0 0 0 0.93 147 0 111 | 0 | turkey:O | each 63
turkey-heart-raw | turkey heart, raw | 05175 | 74.47 16.7 7.44 1.923 0.4 0 0 0.99 129 0 140 | 0 | turkey:O | each 24
turkey-liver-raw | turkey liver, raw | 05177 | 75.54 18.26 5.5 1.664 0 0 0 1.32 131 0 128 | 0 | turkey:O | each 78
turkey-neck-meat-only-raw | turkey neck, meat only, raw | 05179 | 75.92 16.51 6.04 1.647 0 0 0 1.12 233 0 125 | 60 bone and connective tissue | turkey:M
turkey-neck-meat-only-simmered | turkey neck, meat only, simmered | 05180 | 69.47 22.48 7.36 2.216 0 0 0 1.12 246 0 162 | 53 bone and connective tissue | turkey:M
turkey-breast-with-skin-raw | turkey breast, with skin, raw | 05191 | 70.05 21.89 7.02 1.91 0 - 0 0.91 59 - 157 | 10 bone | turkey:M | each 2264
turkey-leg-with-skin-raw | turkey leg, with skin, raw | 05193 | 72.69 19.54 6.72 2.06 0 - 0 0.89 74 - 144 | 17 bone | turkey:M | each 816
turkey-wing-with-skin-raw | turkey wing, with skin, raw | 05195 | 66.49 20.22 12.32 3.28 0 - 0 0.81 55 - 197 | 33 bone | turkey:M | each 256
turkey-drumstick-meat-only-raw | turkey drumstick, meat only, raw | 05738 | 74.89 23.66 1.48 0.289 0.14 0.05 0 1.04 113 0 109 | 44 bone, skin and fat | turkey:M | each 337
turkey-thigh-meat-only-raw | turkey thigh, meat only, raw | 05740 | 76.01 21.28 2.5 0.683 0.15 0.1 0 1.03 124 0 108 | 30 bone, skin and fat | turkey:M | each 367
mechanically-separated-turkey-raw | mechanically separated turkey, raw | 05304 | 69.09 13.29 15.96 5.31 0 - 0 1.1 48 - 201 | 0 | turkey:X
turkey-mince-raw | turkey mince, raw | 05305 | 72.36 19.66 7.66 2.024 0 0 0 1 58 0 148 | 0 | turkey:M |  |  | minced turkey, ground turkey
turkey-fat-rendered | turkey fat, rendered | 04575 | 0.2 0 99.8 29.4 0 0 0 0 0 0 900 | 0 | turkey:F | tbsp 12.8, tsp 4.3, cup 205
`;
