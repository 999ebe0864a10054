/** Published composition of fruit; one row a line, columns as in ../rows.ts. Source: usda-sr28. */
export const fruit = `
apple-with-skin-raw | apple, with skin, raw | 09003 | 85.56 0.26 0.17 0.028 13.81 10.39 2.4 0.19 1 0 52 | 10 core and stem |  | cup chopped 125, cup sliced 109, each large 223, each medium 182, each small 149, each extra small 101
apple-peeled-raw | apple, peeled, raw | 09004 | 86.67 0.27 0.13 0.021 12.76 10.1 1.3 0.17 0 0 48 | 23 core and stem, skin |  | cup sliced 110, each large 216, each medium 161, each small 132 |  | apple, apples, cooking apple, bramley
apple-dried | apple, dried | 09011 | 31.76 0.93 0.32 0.052 65.89 57.19 8.7 1.1 87 0 243 | 0 |  | cup 86 | sulphites | apple rings | sulphured as published
pear-raw | pear, raw | 09252 | 83.96 0.36 0.14 0.022 15.23 9.75 3.1 0.32 1 0 57 | 10 stem, core and seeds |  | cup sliced 140, cup chopped 161, each small 148, each medium 178, each large 230 |  | pears
quince-raw | quince, raw | 09296 | 83.8 0.4 0.1 0.01 15.3 - 1.9 0.4 4 0 57 | 39 core, seeds, and parings |  | each 92
plum-raw | plum, raw | 09279 | 87.23 0.7 0.28 0.017 11.42 9.92 1.4 0.37 0 0 46 | 6 pits |  | cup sliced 165, each 66 |  | plums
prunes | prunes | 09291 | 30.92 2.18 0.38 0.088 63.88 38.13 7.1 2.64 2 0 240 | 13 pits |  | cup 174, each 9.5 | ?sulphites | prune, dried plums, pitted prunes, stoned prunes
apricot-raw | apricot, raw | 09021 | 86.35 1.4 0.39 0.027 11.12 9.24 2 0.75 1 0 48 | 7 pits |  | cup halves 155, cup sliced 165, each 35 |  | apricots
apricots-dried | apricots, dried | 09032 | 30.89 3.39 0.51 0.017 62.64 53.44 7.3 2.57 10 0 241 | 0 |  | cup halves 130 | sulphites |  | sulphured as published
sweet-cherries-raw | sweet cherries, raw | 09070 | 82.25 1.06 0.2 0.038 16.01 12.82 2.1 0.48 0 0 63 | 8 pits and stems |  | cup 154, each 8.2 |  | cherries
sour-cherries-raw | sour cherries, raw | 09063 | 86.13 1 0.3 0.068 12.18 8.49 1.6 0.4 3 0 50 | 10 pits and stems |  | cup 155 |  | morello cherries, tart cherries
sour-cherries-dried-sweetened | sour cherries, dried, sweetened | 09044 | 16.6 1.25 0.73 0.146 80.45 67.15 2.5 0.97 13 0 333 | 0 |  | cup 160 | ?sulphites | dried cherries
redcurrants-raw | redcurrants, raw | 09084 | 83.95 1.4 0.2 0.017 13.8 7.37 4.3 0.66 1 0 56 | 2 stems |  | cup 112 |  | red currants, white currants
blackcurrants-raw | blackcurrants, raw | 09083 | 81.96 1.4 0.41 0.034 15.38 - - 0.86 2 - 63 | 2 stems |  | cup 112 |  | cassis
blackberries-raw | blackberries, raw | 09042 | 88.15 1.39 0.49 0.014 9.61 4.88 5.3 0.37 1 0 43 | 4 caps and spoiled berries |  | cup 144 |  | brambles
raspberries-raw | raspberries, raw | 09302 | 85.75 1.2 0.65 0.019 11.94 4.42 6.5 0.46 1 0 52 | 4 caps, stems, and spoiled berries |  | cup 123, each 1.9
cranberries-raw | cranberries, raw | 09078 | 87.32 0.46 0.13 0.008 11.97 4.27 3.6 0.12 2 0 46 | 2 stems and spoiled berries |  | cup chopped 110, cup whole 100
fig-raw | fig, raw | 09089 | 79.11 0.75 0.3 0.06 19.18 16.26 2.9 0.66 1 0 74 | 1 stems |  | each large 64, each medium 50, each small 40 |  | fresh figs
figs-dried | figs, dried | 09094 | 30.05 3.3 0.93 0.144 63.87 47.92 9.8 1.86 10 0 249 | 4 stems |  | cup 149, each 8.4 | ?sulphites
grapes-raw | grapes, raw | 09132 | 80.54 0.72 0.16 0.054 18.1 15.48 0.9 0.48 2 0 69 | 4 stems |  | cup 151
raisins | raisins | 09298 | 15.43 3.07 0.46 0.058 79.18 59.19 3.7 1.85 11 0 299 | 0 |  | cup packed 165, cup 145 | ?sulphites | sultanas
currants-dried | currants, dried | 09085 | 19.21 4.08 0.27 0.028 74.08 67.28 6.8 2.36 8 0 283 | 0 |  | cup 144 | ?sulphites | zante currants
orange-peeled-raw | orange, peeled, raw | 09200 | 86.75 0.94 0.12 0.015 11.75 9.35 2.4 0.44 0 0 47 | 27 peel and seeds |  | cup 180, each large 184, each small 96, each 131 |  | orange segments, orange
orange-juice | orange juice | 09206 | 88.3 0.7 0.2 0.024 10.4 8.4 0.2 0.4 1 0 45 | 0 | liquid | cup 248, fl oz 31
orange-zest | orange zest | 09216 | 72.5 1.5 0.2 0.024 25 - 10.6 0.8 3 0 97 | 0 |  | tbsp 6, tsp 2 |  | orange peel, orange rind
lemon-peeled-raw | lemon, peeled, raw | 09150 | 88.98 1.1 0.3 0.039 9.32 2.5 2.8 0.3 2 0 29 | 47 peel, seeds |  | cup 212, each 58 |  | lemon segments, lemon
lemon-juice | lemon juice | 09152 | 92.31 0.35 0.24 0.04 6.9 2.52 0.3 0.21 1 0 22 | 0 | liquid | cup 244, fl oz 30.5
lemon-zest | lemon zest | 09156 | 81.6 1.5 0.3 0.039 16 4.17 10.6 0.6 6 0 47 | 0 |  | tbsp 6, tsp 2 |  | lemon peel, lemon rind
pomegranate-seeds | pomegranate seeds | 09286 | 77.93 1.67 1.17 0.12 18.7 13.67 4 0.53 3 0 83 | 44 skin and membrane |  | cup 174, each 282 |  | pomegranate
rhubarb-raw | rhubarb, raw | 09307 | 93.61 0.9 0.2 0.053 4.54 1.1 1.8 0.76 4 0 21 | 25 ends, leaves |  | cup chopped 122, stalk 51
`;
