/** Published composition of salt, vinegar, mustard and sauces; one row a line, columns as in ../rows.ts. Source: usda-sr28. */
export const seasonings = `
salt | salt | 02047 | 0.2 0 0 0 0 0 0 99.8 38758 0 0 | 0 |  | tsp 6, tbsp 18, cup 292, dash 0.4 |  | fine salt, table salt, cooking salt, sea salt, kosher salt
cider-vinegar | cider vinegar | 02048 | 93.81 0 0 0 0.93 0.4 0 0.17 5 0 21 | 0 | liquid | tbsp 14.9, cup 239, tsp 5 | ?sulphites | apple cider vinegar
distilled-vinegar | distilled vinegar | 02053 | 94.78 0 0 0 0.04 0.04 0 0.02 2 0 18 | 0 | liquid | tbsp 14.9, cup 238, tsp 5 |  | spirit vinegar, white vinegar, vinegar | malt vinegar is another row: it holds barley
red-wine-vinegar | red wine vinegar | 02068 | 94.47 0.04 0 0 0.27 0 0 0.17 8 - 19 | 0 | liquid | tbsp 14.9, cup 239, tsp 5 | ?sulphites | wine vinegar
balsamic-vinegar | balsamic vinegar | 02069 | 76.45 0.49 0 0 17.03 14.95 - 0.37 23 - 88 | 0 | liquid no-fibre | tbsp 16, cup 255, tsp 5.3 | ?sulphites
yellow-mustard-prepared | yellow mustard, prepared | 02046 | 83.72 3.74 3.34 0.214 5.83 0.92 4 3.37 1104 0 60 | 0 |  | cup 249 | mustard, ?sulphites | american mustard, mustard, made mustard
capers-drained | capers, drained | 02054 | 83.85 2.36 0.86 0.233 4.89 0.41 3.2 8.04 2348 0 23 | 0 |  | tbsp 8.6 | ?sulphites
horseradish-prepared | horseradish, prepared | 02055 | 85.08 1.18 0.69 0.09 11.29 7.99 3.3 1.76 420 0 48 | 0 |  | tsp 5, tbsp 15 | ?sulphites, ?milk | creamed horseradish
worcestershire-sauce | worcestershire sauce | 06971 | 78.54 0 0 0 19.46 10.03 0 2 980 0 78 | 0 | liquid | tbsp 17, cup 275 | fish, ?gluten:barley | worcester sauce
fish-sauce | fish sauce | 06179 | 71.07 5.06 0.01 0.003 3.64 3.64 0 20.22 7851 0 35 | 0 | liquid | tbsp 18 | fish | nam pla, nuoc mam
green-olives-in-brine | green olives, in brine | 09195 | 75.28 1.03 15.32 2.029 3.84 0.54 3.3 4.53 1556 0 145 | 0 |  | each 2.7 | ?sulphites | olives
`;
