/** Published composition of spices; one row a line, columns as in ../rows.ts. Source: usda-sr28. */
export const spices = `
black-pepper-ground | black pepper, ground | 02030 | 12.46 10.39 3.26 1.392 63.95 0.64 25.3 4.49 20 0 251 | 0 |  | tsp ground 2.3, tbsp ground 6.9, tsp whole 2.9, dash 0.1 |  | pepper, peppercorns
white-pepper-ground | white pepper, ground | 02032 | 11.42 10.4 2.12 0.626 68.61 - 26.2 1.59 5 0 296 | 0 |  | tsp ground 2.4, tbsp ground 7.1
cayenne-pepper-ground | cayenne pepper, ground | 02031 | 8.05 12.01 17.27 3.26 56.63 10.34 27.2 6.04 30 0 318 | 0 |  | tsp 1.8, tbsp 5.3 |  | red pepper powder, chilli powder, cayenne
paprika | paprika | 02028 | 11.24 14.14 12.89 2.14 53.99 10.34 34.9 7.74 68 0 282 | 0 |  | tsp 2.3, tbsp 6.8 |  | pimentón
allspice-ground | allspice, ground | 02001 | 8.46 6.09 8.69 2.55 72.12 - 21.6 4.65 77 0 263 | 0 |  | tsp 1.9, tbsp 6 |  | pimento, jamaica pepper
mace-ground | mace, ground | 02022 | 8.17 6.71 32.38 9.51 50.5 - 20.2 2.23 80 0 475 | 0 |  | tsp 1.7, tbsp 5.3
nutmeg-ground | nutmeg, ground | 02025 | 6.23 5.84 36.31 25.94 49.29 2.99 20.8 2.34 16 0 525 | 0 |  | tsp 2.2, tbsp 7 |  | grated nutmeg
cloves-ground | cloves, ground | 02011 | 9.87 5.97 13 3.952 65.53 2.38 33.9 5.63 277 0 274 | 0 |  | tsp 2.1, tbsp 6.5 |  | clove
cinnamon-ground | cinnamon, ground | 02010 | 10.58 3.99 1.24 0.345 80.59 2.17 53.1 3.6 10 0 247 | 0 |  | tsp 2.6, tbsp 7.8
ginger-ground | ginger, ground | 02021 | 9.94 8.98 4.24 2.599 71.62 3.39 14.1 5.22 27 0 335 | 0 |  | tsp 1.8, tbsp 5.2 |  | dried ginger
ginger-fresh | ginger, fresh | 11216 | 78.89 1.82 0.75 0.203 17.77 1.7 2 0.77 13 0 80 | 7 scrapings |  | tsp 2, cup sliced 96 |  | root ginger, ginger root
coriander-seed | coriander seed | 02013 | 8.86 12.37 17.77 0.99 54.99 - 41.9 6.02 35 - 298 | 0 |  | tsp 1.8, tbsp 5 |  | ground coriander
cumin-seed | cumin seed | 02014 | 8.06 17.81 22.27 1.535 44.24 2.25 10.5 7.62 168 0 375 | 0 |  | tsp whole 2.1, tbsp whole 6 |  | ground cumin, cumin
fennel-seed | fennel seed | 02018 | 8.81 15.8 14.87 0.48 52.29 - 39.8 8.22 88 - 345 | 0 |  | tsp whole 2, tbsp whole 5.8
caraway-seed | caraway seed | 02005 | 9.87 19.77 14.59 0.62 49.9 0.64 38 5.87 17 0 333 | 0 |  | tsp 2.1, tbsp 6.7 |  | caraway
aniseed | aniseed | 02002 | 9.54 17.6 15.9 0.586 50.02 - 14.6 6.95 16 0 337 | 0 |  | tsp whole 2.1, tbsp whole 6.7 |  | anise seed, anise
dill-seed | dill seed | 02016 | 7.7 15.98 14.54 0.73 55.17 - 21.1 6.62 20 0 305 | 0 |  | tsp 2.1, tbsp 6.6
cardamom-ground | cardamom, ground | 02006 | 8.28 10.76 6.7 0.68 68.47 - 28 5.78 18 - 311 | 0 |  | tsp ground 2, tbsp ground 5.8
celery-seed | celery seed | 02007 | 6.04 18.07 25.27 2.19 41.35 0.67 11.8 9.27 160 0 392 | 0 |  | tsp 2, tbsp 6.5 | celery |  | seed of celery: counts as celery
mustard-powder | mustard powder | 02024 | 5.27 26.08 36.24 1.989 28.09 6.79 12.2 4.33 13 0 508 | 0 |  | tsp 2, tbsp 6.3 | mustard | ground mustard seed, mustard seed, mustard flour
saffron | saffron | 02037 | 11.9 11.43 5.85 1.586 65.37 - 3.9 5.45 148 0 310 | 0 |  | tsp 0.7, tbsp 2.1
curry-powder | curry powder | 02015 | 8.8 14.29 14.01 1.648 55.83 2.76 53.2 7.07 52 0 325 | 0 |  | tsp 2, tbsp 6.3 | ?mustard, ?celery, ?gluten
garlic-powder | garlic powder | 02020 | 6.45 16.55 0.73 0.249 72.73 2.43 9 3.54 60 0 331 | 0 |  | tsp 3.1, tbsp 9.7 |  | dried garlic
`;
