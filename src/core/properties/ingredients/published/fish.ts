/** Published composition of fish and shellfish; one row a line, columns as in ../rows.ts. Source: usda-sr28. */
export const fish = `
freshwater-bass-raw | freshwater bass, raw | 15003 | 75.66 18.86 3.69 0.78 0 - 0 1.52 70 - 114 | 0 |  | each 79 | fish | bass
cod-raw | cod, raw | 15015 | 81.22 17.81 0.67 0.131 0 0 0 1.16 54 0 82 | 0 |  | each 231 | fish | codling
flatfish-raw | flatfish, raw | 15028 | 84.63 12.41 1.93 0.441 0 0 0 1.22 296 0 70 | 0 |  | each 163 | fish | sole, flounder, plaice
halibut-raw | halibut, raw | 15036 | 80.34 18.56 1.33 0.292 0 0 0 1.29 68 0 91 | 0 |  | each 408 | fish
herring-raw | herring, raw | 15039 | 72.05 17.96 9.04 2.04 0 0 0 1.46 90 0 158 | 0 |  | each 184 | fish
mackerel-raw | mackerel, raw | 15046 | 63.55 18.6 13.89 3.257 0 0 0 1.35 90 0 205 | 0 |  | each 112 | fish
monkfish-raw | monkfish, raw | 15054 | 83.24 14.48 1.52 0.34 0 - 0 1.21 18 - 76 | 0 |  |  | fish | angler
fish-roe-raw | fish roe, raw | 15072 | 67.73 22.32 6.42 1.456 1.5 0 0 1.37 91 0 143 | 0 |  | tbsp 14 | fish | hard roe
wild-salmon-raw | wild salmon, raw | 15076 | 68.5 19.84 6.34 0.981 0 - 0 2.54 44 - 142 | 0 |  | each 396 | fish | salmon
farmed-salmon-raw | farmed salmon, raw | 15236 | 64.89 20.42 13.42 3.05 0 0 0 1.13 59 0 208 | - |  | each 396 | fish | salmon
rainbow-trout-raw | rainbow trout, raw | 15115 | 71.87 20.48 3.46 0.722 0 - 0 1.31 31 0 119 | 0 |  | each 159 | fish | trout
turbot-raw | turbot, raw | 15129 | 76.95 16.05 2.95 0.75 0 - 0 2.1 150 - 95 | 0 |  | each 408 | fish
anchovy-fresh-raw | anchovy, fresh, raw | 15001 | 73.37 20.35 4.84 1.282 0 0 0 1.44 104 0 131 | 0 |  |  | fish | anchovies
eel-raw | eel, raw | 15025 | 68.26 18.44 11.66 2.358 0 0 0 1.41 51 0 184 | 0 |  | each 204 | fish
mussels-raw-shelled | mussels, raw, shelled | 15164 | 80.58 11.9 2.24 0.425 3.69 0 0 1.59 286 0 86 | 0 |  | cup 150, each large 20, each medium 16, each small 10 | molluscs | moules | molluscs are no major allergen in the US
scallops-raw-shelled | scallops, raw, shelled | 15172 | 82.53 12.06 0.49 0.128 3.18 0 0 1.74 392 0 69 | 0 |  |  | molluscs | coquilles | molluscs are no major allergen in the US
prawns-raw-shelled | prawns, raw, shelled | 15149 | 83.01 13.61 1.01 0.261 0.91 0 0 1.86 566 0 71 | 0 |  | each medium 6, each small 5, each large 7 | crustaceans, ?sulphites | shrimp, gambas
`;
