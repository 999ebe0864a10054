/** Published composition of dairy and eggs; one row a line, columns as in ../rows.ts. Source: usda-sr28. */
export const dairyEggs = `
butter-unsalted | butter, unsalted | 01145 | 17.94 0.85 81.11 50.489 0.06 0.06 0 0.09 11 0 717 | 0 |  | tbsp 14.2, cup 227, stick 113 | milk | sweet butter
butter-salted | butter, salted | 01001 | 15.87 0.85 81.11 51.368 0.06 0.06 0 2.11 643 0 717 | 0 |  | tbsp 14.2, cup 227, stick 113 | milk
clarified-butter | clarified butter | 01003 | 0.24 0.28 99.48 61.924 0 0 0 0 2 0 876 | 0 |  | tbsp 12.8, cup 205 | milk | ghee, butter oil
whipping-cream-36-fat | whipping cream, 36 % fat | 01053 | 57.81 2.84 36.08 23.032 2.74 2.92 0 0.53 27 0 340 | 0 | liquid | tbsp 15, fl oz 29.8 | milk | heavy cream, whipping cream, heavy whipping cream, 36 % cream
whipping-cream-31-fat | whipping cream, 31 % fat | 01052 | 63.5 2.17 30.91 19.337 2.96 2.96 0 0.46 34 0 292 | 0 | liquid | tbsp 15 | milk | light whipping cream
single-cream-19-fat | single cream, 19 % fat | 01050 | 74.51 2.96 19.1 10.176 2.82 3.67 0 0.61 72 0 191 | 0 | liquid | fl oz 30, tbsp 15, cup 240 | milk | light cream, coffee cream, pouring cream
soured-cream | soured cream | 01056 | 73.07 2.44 19.35 10.14 4.63 3.41 0 0.51 31 0 198 | 0 |  | tbsp 12, cup 230 | milk | sour cream
whole-milk | whole milk | 01077 | 88.13 3.15 3.25 1.865 4.8 5.05 0 0.67 43 0 61 | 0 | liquid | cup 244, fl oz 30.5, tbsp 15, quart 976 | milk | milk, full-fat milk, full cream milk
semi-skimmed-milk | semi-skimmed milk | 01079 | 89.21 3.3 1.98 1.257 4.8 5.06 0 0.71 47 0 50 | 0 | liquid | cup 244, fl oz 30.5, quart 976 | milk | reduced fat milk, 2 % milk
buttermilk | buttermilk | 01088 | 90.13 3.31 0.88 0.548 4.79 4.79 0 0.89 190 0 40 | 0 | liquid | cup 245, fl oz 30.6, quart 980 | milk
yoghurt-whole-milk-plain | yoghurt, whole-milk, plain | 01116 | 87.9 3.47 3.25 2.096 4.66 4.66 0 0.72 46 0 61 | 0 |  | cup 245 | milk | yogurt, natural yoghurt
egg-whole-raw | egg, whole, raw | 01123 | 76.15 12.56 9.51 3.126 0.72 0.37 0 1.06 142 0 143 | 12 shell |  | each large 50, each extra large 56, each jumbo 63, cup 243, each medium 44, each small 38 | eggs | eggs, hen’s egg, whole eggs
egg-white-raw | egg white, raw | 01124 | 87.57 10.9 0.17 0 0.73 0.71 0 0.63 166 0 52 | 0 |  | each large 33, cup 243 | eggs | egg whites, whites, albumen
egg-yolk-raw | egg yolk, raw | 01125 | 52.31 15.86 26.54 9.551 3.59 0.56 0 1.71 48 0 322 | 0 |  | each large 17, cup 243 | eggs | egg yolks, yolks
egg-hard-boiled | egg, hard-boiled | 01129 | 74.62 12.58 10.61 3.267 1.12 1.12 0 1.08 124 0 155 | 12 shell |  | cup chopped 136, tbsp 8.5, each large 50 | eggs | boiled egg
duck-egg-raw | duck egg, raw | 01138 | 70.83 12.81 13.77 3.681 1.45 0.93 0 1.14 146 0 185 | 12 shell |  | each 70 | eggs | duck eggs | eggs of all farmed birds count
goose-egg-raw | goose egg, raw | 01139 | 70.43 13.87 13.27 3.595 1.35 0.94 0 1.08 138 0 185 | 13 shell |  | each 144 | eggs | goose eggs | eggs of all farmed birds count
quail-egg-raw | quail egg, raw | 01140 | 74.35 13.05 11.09 3.557 0.41 0.4 0 1.1 141 0 158 | 8 shell |  | each 9 | eggs | quail eggs | eggs of all farmed birds count
parmesan-cheese | parmesan cheese | 01033 | 29.16 35.75 25.83 16.41 3.22 0.8 0 6.04 1376 0 392 | 0 |  |  | milk | parmigiano, grana
gruyere-cheese | gruyère cheese | 01023 | 33.19 29.81 32.34 18.913 0.36 0.36 0 4.3 714 0 413 | 0 |  | cup chopped 132, cup shredded 108 | milk | gruyere, swiss cheese
goats-cheese-soft | goat’s cheese, soft | 01159 | 60.75 18.52 21.08 14.575 0 0 0 1.58 459 0 264 | 0 |  |  | milk | chèvre, goat cheese
`;
