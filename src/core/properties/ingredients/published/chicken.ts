/** Published composition of chicken; one row a line, columns as in ../rows.ts. Source: usda-sr28. */
export const chicken = `
chicken-meat-with-skin-raw | chicken, meat with skin, raw | 05006 | 65.99 18.6 15.06 4.31 0 0 0 0.79 70 0 215 | 32 bone | chicken:M | each 920 |  | whole chicken, broiler
chicken-meat-with-skin-roast | chicken, meat with skin, roast | 05009 | 59.45 27.3 13.6 3.79 0 0 0 0.92 82 0 239 | 33 bone | chicken:M | cup chopped 140, each 598 |  | roast chicken
chicken-meat-with-skin-stewed | chicken, meat with skin, stewed | 05010 | 63.93 24.68 12.56 3.5 0 0 0 0.76 67 0 219 | 34 bone | chicken:M | cup chopped 140, each 668 |  | poached chicken
chicken-meat-only-raw | chicken, meat only, raw | 05011 | 75.46 21.39 3.08 0.79 0 0 0 0.96 77 0 119 | 52 bone, skin, fat | chicken:M | each 658 |  | chicken meat
chicken-meat-only-roast | chicken, meat only, roast | 05013 | 63.79 28.93 7.41 2.04 0 0 0 1.02 86 0 190 | 46 bone, skin | chicken:M | cup chopped 140, tbsp 8.7
chicken-meat-only-stewed | chicken, meat only, stewed | 05014 | 66.81 27.29 6.71 1.84 0 0 0 0.85 70 0 177 | 48 bone, skin | chicken:M | cup chopped 140, tbsp 8.7 |  | poached chicken
chicken-skin-raw | chicken skin, raw | 05015 | 54.22 13.33 32.35 9.08 0 0 0 0.41 63 0 349 | 0 | chicken:S
chicken-skin-roast | chicken skin, roast | 05018 | 40.29 20.36 40.68 11.42 0 0 0 0.5 65 0 454 | 0 | chicken:S
chicken-skin-stewed | chicken skin, stewed | 05019 | 53.27 15.22 33.04 9.28 0 - 0 0.43 56 - 363 | 0 | chicken:S
chicken-leg-skin-raw | chicken leg skin, raw | 05674 | 44.91 9.58 44.23 12.102 0.79 0 0 0.49 51 0 440 | 0 | chicken:S |  |  | chicken thigh skin
chicken-leg-skin-braised | chicken leg skin, braised | 05673 | 42.09 14.61 42.76 11.914 0 0 0 0.63 75 0 443 | 0 | chicken:S
chicken-leg-skin-roast | chicken leg skin, roast | 05675 | 39.45 16.57 43.99 12.146 0 0 0 0.72 85 0 462 | 0 | chicken:S
chicken-giblets-raw | chicken giblets, raw | 05020 | 74.87 17.88 4.47 1.36 1.8 - 0 0.99 77 0 124 | 0 | chicken:O
chicken-giblets-simmered | chicken giblets, simmered | 05022 | 67.72 27.15 4.5 1.322 0 0 0 1.12 67 0 157 | 0 | chicken:O | cup chopped 145
chicken-gizzard-raw | chicken gizzard, raw | 05023 | 79.33 17.66 2.06 0.529 0 0 0 0.95 69 0 94 | 0 | chicken:O |  |  | gizzards
chicken-gizzard-simmered | chicken gizzard, simmered | 05024 | 67.93 30.39 2.68 0.67 0 0 0 0.89 56 0 154 | 11 membranes | chicken:O | cup chopped 145
chicken-heart-raw | chicken heart, raw | 05025 | 73.56 15.55 9.33 2.66 0.71 - 0 0.85 74 - 153 | 0 | chicken:O | each 6.1 |  | chicken hearts
chicken-heart-simmered | chicken heart, simmered | 05026 | 64.85 26.41 7.92 2.26 0.1 - 0 0.72 48 - 185 | 0 | chicken:O | cup chopped 145
chicken-liver-raw | chicken liver, raw | 05027 | 76.46 16.92 4.83 1.563 0.73 0 0 1.06 71 0 119 | 0 | chicken:O | each 44 |  | chicken livers
chicken-liver-simmered | chicken liver, simmered | 05028 | 66.81 24.46 6.51 2.06 0.87 0 0 1.36 76 0 167 | 0 | chicken:O | each 44
chicken-liver-pan-fried | chicken liver, pan-fried | 05661 | 65.22 25.78 6.43 2.033 1.11 0 0 1.47 92 0 172 | 0 | chicken:O | each 44
chicken-fat-trimmings-raw | chicken fat trimmings, raw | 05047 | 28.91 3.73 67.95 20.25 0 0 0 0.28 32 0 629 | 0 | chicken:F | tbsp 12.8 |  | separable chicken fat
chicken-fat-rendered | chicken fat, rendered | 04542 | 0.2 0 99.8 29.8 0 0 0 0 0 0 900 | 0 | chicken:F | tbsp 12.8, cup 205 |  | schmaltz
chicken-back-with-skin-raw | chicken back, with skin, raw | 05048 | 58.1 14.05 28.74 8.34 0 0 0 0.64 64 0 319 | 44 bone | chicken:M | each 198 |  | chicken carcass meat
chicken-back-with-skin-stewed | chicken back, with skin, stewed | 05052 | 60.93 22.18 18.14 5.02 0 0 0 0.64 64 0 258 | 48 bone | chicken:M | cup chopped 160
chicken-breast-with-skin-raw | chicken breast, with skin, raw | 05057 | 69.46 20.85 9.25 2.66 0 0 0 1.01 63 0 172 | 20 bone | chicken:M | each 290
chicken-breast-with-skin-roast | chicken breast, with skin, roast | 05060 | 62.44 29.8 7.78 2.19 0 0 0 0.99 71 0 197 | 19 bone | chicken:M | cup chopped 140, each 196
chicken-breast-meat-only-raw | chicken breast, meat only, raw | 05062 | 73.9 22.5 2.62 0.563 0 0 0 1.13 45 0 120 | 0 | chicken:M | each 272 |  | skinless chicken breast, chicken fillet
chicken-breast-meat-only-roast | chicken breast, meat only, roast | 05064 | 65.26 31.02 3.57 1.01 0 0 0 1.06 74 0 165 | 28 bone, skin | chicken:M | cup chopped 140, each 172
chicken-breast-meat-only-braised | chicken breast, meat only, braised | 05746 | 65.32 32.06 3.24 1.01 0 0 0 1.19 47 0 157 | 0 | chicken:M | each 181
chicken-leg-with-skin-raw | chicken leg, with skin, raw | 05075 | 67.3 16.37 15.95 4.366 0.17 0 0 0.81 84 0 214 | 27 bone | chicken:M | each 111
chicken-leg-with-skin-roast | chicken leg, with skin, roast | 05078 | 66.74 24.03 8.99 2.446 0 0 0 1.02 98 0 184 | 29 bone | chicken:M | each 133
chicken-leg-meat-only-raw | chicken leg, meat only, raw | 05080 | 76.41 19.16 4.22 1.05 0 0 0 0.95 96 0 120 | 43 bone, skin, fat | chicken:M |  |  | boned chicken leg
chicken-leg-meat-only-roast | chicken leg, meat only, roast | 05082 | 67.69 24.22 7.8 2.108 0 0 0 1.04 99 0 174 | 41 bone, skin | chicken:M
chicken-leg-meat-only-stewed | chicken leg, meat only, stewed | 05083 | 66.44 26.26 8.06 2.2 0 0 0 0.88 78 0 185 | 43 bone, skin | chicken:M | cup chopped 160, each 101
chicken-neck-with-skin-raw | chicken neck, with skin, raw | 05084 | 59.99 14.07 26.24 7.27 0 - 0 0.55 64 0 297 | 36 bone | chicken:M | each 50 |  | chicken necks
chicken-neck-with-skin-simmered | chicken neck, with skin, simmered | 05087 | 61.73 19.61 18.1 5 0 0 0 0.61 52 0 247 | 32 bone | chicken:M | each 38
chicken-neck-meat-only-raw | chicken neck, meat only, raw | 05088 | 71.17 17.55 8.78 2.25 0 - 0 0.69 81 - 154 | 75 bone, skin and fat | chicken:M | each 20
chicken-neck-meat-only-simmered | chicken neck, meat only, simmered | 05090 | 67.05 24.56 8.18 2.1 0 - 0 0.77 64 0 179 | 67 bone, skin | chicken:M | each 18
chicken-thigh-with-skin-raw | chicken thigh, with skin, raw | 05091 | 66.47 16.52 16.61 4.524 0.25 0 0 0.81 81 0 221 | 0 | chicken:M | each 193
chicken-thigh-with-skin-roast | chicken thigh, with skin, roast | 05094 | 61.96 23.26 14.71 4.111 0 0 0 0.98 102 0 232 | 33 bone, cartilage and connective tissue | chicken:M | each 137
chicken-thigh-meat-only-raw | chicken thigh, meat only, raw | 05096 | 76.22 19.66 4.12 1.097 0 0 0 0.95 95 0 121 | 25 skin and fat | chicken:M | each 149 |  | boneless chicken thigh
chicken-thigh-with-skin-braised | chicken thigh, with skin, braised | 05677 | 61.93 22.57 15.43 4.253 0 0 0 0.91 76 0 229 | 16 bone and cartilage | chicken:M | each 111
chicken-drumstick-with-skin-raw | chicken drumstick, with skin, raw | 05066 | 72.46 18.08 9.2 2.459 0.11 0 0 0.86 106 0 161 | 66 bone, cartilage and connective tissue | chicken:M | each 133
chicken-drumstick-meat-only-raw | chicken drumstick, meat only, raw | 05071 | 76.78 19.41 3.71 0.949 0 0 0 0.92 114 0 116 | 42 bone and cartilage, skin and fat | chicken:M | each 122
chicken-wing-with-skin-raw | chicken wing, with skin, raw | 05100 | 69.19 17.52 12.85 3.535 0 0 0 0.74 84 0 191 | 38 bone and connective tissue | chicken:M | each 107 |  | chicken wings
chicken-wing-with-skin-roast | chicken wing, with skin, roast | 05103 | 59.4 23.79 16.87 4.976 0 0 0 0.88 98 0 254 | 40 bone and connective tissue | chicken:M | each 85
chicken-wing-with-skin-stewed | chicken wing, with skin, stewed | 05104 | 62.18 22.78 16.82 4.71 0 0 0 0.62 67 0 249 | 48 bone | chicken:M | cup chopped 140, each 40
chicken-feet-boiled | chicken feet, boiled | 05335 | 65.8 19.4 14.6 3.92 0.2 0 0 0 67 0 215 | 0 | chicken:O |  |  | chicken’s foot | no ash is published, though there is sodium
chicken-mince-raw | chicken mince, raw | 05332 | 73.24 17.44 8.1 2.301 0.04 0 0 1.17 60 0 143 | 0 | chicken:M |  |  | minced chicken, ground chicken
roasting-chicken-meat-only-raw | roasting chicken, meat only, raw | 05113 | 74.94 20.33 2.7 0.67 0 0 0 1.07 75 0 111 | 49 bone, skin, fat | chicken:M | each 954 |  | large chicken
roasting-chicken-meat-only-roast | roasting chicken, meat only, roast | 05114 | 67.41 25.01 6.63 1.81 0 - 0 0.95 75 - 167 | 43 bone, skin, fat | chicken:M | cup chopped 140
roasting-chicken-giblets-raw | roasting chicken giblets, raw | 05115 | 74.73 18.14 5.04 1.54 1.14 - 0 0.95 77 - 127 | 0 | chicken:O
stewing-hen-meat-with-skin-raw | stewing hen, meat with skin, raw | 05123 | 61.84 17.55 20.33 5.71 0 0 0 1.04 71 0 258 | 30 bone | chicken:M | each 796 |  | spent hen, boiling fowl
stewing-hen-meat-with-skin-stewed | stewing hen, meat with skin, stewed | 05124 | 53.07 26.88 18.87 5.11 0 - 0 1.18 73 0 285 | 32 bone | chicken:M | each 522 |  | spent hen, boiling fowl
stewing-hen-meat-only-raw | stewing hen, meat only, raw | 05125 | 72.54 21.26 6.32 1.57 0 0 0 1.27 79 0 148 | 50 bone, skin, fat | chicken:M | each 568 |  | spent hen, boiling fowl
stewing-hen-meat-only-stewed | stewing hen, meat only, stewed | 05126 | 56.35 30.42 11.89 3.1 0 0 0 1.35 78 0 237 | 48 bone,, skin | chicken:M | cup chopped 140 |  | spent hen, boiling fowl
stewing-hen-giblets-raw | stewing hen giblets, raw | 05127 | 69.8 17.89 9.21 2.63 2.13 - 0 0.97 77 - 168 | 0 | chicken:O |  |  | spent hen giblets
stewing-hen-giblets-simmered | stewing hen giblets, simmered | 05128 | 64 25.73 9.3 2.66 0.11 - 0 0.87 56 - 194 | 0 | chicken:O | cup chopped 145 |  | spent hen giblets
stewing-hen-white-meat-raw | stewing hen white meat, raw | 05129 | 73.24 23.1 4.21 0.97 0 0 0 1.1 53 0 137 | 44 bone, skin, fat | chicken:M | each 260 |  | spent hen breast, hen breast
stewing-hen-white-meat-stewed | stewing hen white meat, stewed | 05130 | 57.79 33.04 7.98 1.98 0 - 0 1.19 58 - 213 | 42 bone, skin | chicken:M | cup chopped 140 |  | spent hen breast
stewing-hen-dark-meat-raw | stewing hen dark meat, raw | 05131 | 71.94 19.7 8.12 2.08 0 0 0 1.41 101 0 157 | 54 bone, skin, fat | chicken:M | each 308 |  | spent hen leg, hen leg
stewing-hen-dark-meat-stewed | stewing hen dark meat, stewed | 05132 | 55.09 28.14 15.28 4.07 0 - 0 1.49 95 - 258 | 51 bone, skin | chicken:M | cup chopped 140 |  | spent hen leg
capon-meat-with-skin-raw | capon, meat with skin, raw | 05135 | 63.24 18.77 17.07 4.95 0 0 0 0.96 45 0 234 | 28 bone | chicken:M | each 1928
capon-giblets-raw | capon giblets, raw | 05137 | 74.12 18.28 5.18 1.64 1.42 - 0 1 77 - 130 | 0 | chicken:O
mechanically-separated-chicken-backs-and-necks-with-skin-raw | mechanically separated chicken, backs and necks with skin, raw | 05301 | 62.66 11.39 24.73 7.45 0 - 0 0.96 40 - 272 | 0 | chicken:X |  |  | mechanically separated poultry
mechanically-separated-chicken-backs-and-necks-without-skin-raw | mechanically separated chicken, backs and necks without skin, raw | 05302 | 69.29 13.79 15.48 4.71 0 - 0 1 51 - 199 | 0 | chicken:X |  |  | mechanically separated poultry
mechanically-separated-hen-raw | mechanically separated hen, raw | 05303 | 62.95 14.72 19.98 4.73 0 - 0 1.15 40 - 243 | 0 | chicken:X |  |  | mechanically separated poultry
poussin-meat-with-skin-raw | poussin, meat with skin, raw | 05307 | 68.18 17.15 14.02 3.89 0 0 0 0.8 61 0 200 | 39 bone | chicken:M | each 336 |  | cornish hen, spring chicken
poussin-meat-only-raw | poussin, meat only, raw | 05309 | 75.84 20.04 3.33 0.85 0 0 0 0.9 68 0 116 | 57 bone, skin, fat | chicken:M | each 240 |  | cornish hen
`;
