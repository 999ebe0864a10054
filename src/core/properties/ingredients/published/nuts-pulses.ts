/** Published composition of nuts, seeds and pulses; one row a line, columns as in ../rows.ts. Source: usda-sr28. */
export const nutsPulses = `
almonds-whole | almonds, whole | 12061 | 4.41 21.15 49.93 3.802 21.55 4.35 12.5 2.97 1 0 579 | 60 shells |  | cup whole 143, cup sliced 92, cup slivered 108, cup ground 95, each 1.2 | nuts:almonds | almond
almonds-blanched | almonds, blanched | 12062 | 4.51 21.4 52.52 3.953 18.67 4.63 9.9 2.91 19 0 590 | 0 |  | cup whole 145, tbsp 9.1 | nuts:almonds | flaked almonds, ground almonds
chestnuts-peeled-raw | chestnuts, peeled, raw | 12098 | 52 1.63 1.25 0.235 44.17 - - 0.96 2 - 196 | 0 |  |  |  | marrons | chestnut is none of the fourteen, and none of the US nuts by the FDA’s guidance of 2025 (from memory)
chestnuts-peeled-boiled | chestnuts, peeled, boiled | 12101 | 68.15 2 1.38 0.26 27.76 - - 0.71 27 - 131 | 0 |  |  |  | marrons, steamed chestnuts, vacuum-packed chestnuts | chestnut is none of the fourteen, and none of the US nuts by the FDA’s guidance of 2025 (from memory)
hazelnuts | hazelnuts | 12120 | 5.31 14.95 60.75 4.464 16.7 4.34 9.7 2.29 0 0 628 | 59 shells |  | cup chopped 115, cup ground 75, cup whole 135 | nuts:hazelnuts | filberts, cobnuts
pecans | pecans | 12142 | 3.52 9.17 71.97 6.18 13.86 3.97 9.6 1.49 0 0 691 | 47 shells |  | cup chopped 109, cup halves 99 | nuts:pecan nuts | pecan nuts
pine-nuts | pine nuts | 12147 | 2.28 13.69 68.37 4.899 13.08 3.59 3.7 2.59 2 0 673 | 23 shells |  | cup 135 | us+tree nuts | pignoli, pine kernels | none of the fourteen; a tree nut in the US
pistachios-raw | pistachios, raw | 12151 | 4.37 20.16 45.32 5.907 27.17 7.66 10.6 2.99 1 0 560 | 47 shells |  | cup 123 | nuts:pistachio nuts | pistachio nuts
walnuts | walnuts | 12155 | 4.07 15.23 65.21 6.126 13.71 2.61 6.7 1.78 2 0 654 | 55 shells |  | cup chopped 117, cup ground 80, cup 100 | nuts:walnuts
sesame-seeds | sesame seeds | 12023 | 4.69 17.73 49.67 6.957 23.45 0.3 11.8 4.45 11 0 573 | 0 |  | cup 144, tbsp 9 | sesame
peanuts-raw | peanuts, raw | 16087 | 6.5 25.8 49.24 6.279 16.13 4.72 8.5 2.33 18 0 567 | 0 |  | cup 146 | peanuts | groundnuts
lentils-dry | lentils, dry | 16069 | 8.26 24.63 1.06 0.154 63.35 2.03 10.7 2.71 6 0 352 | 0 |  | cup 192, tbsp 12
white-beans-dry | white beans, dry | 16024 | 10.7 21.86 1.14 0.356 62.37 2.26 20.2 3.93 14 0 339 | 0 |  | cup 183 |  | haricot beans, great northern beans, cannellini
chickpeas-dry | chickpeas, dry | 16056 | 7.68 20.47 6.04 0.603 62.95 10.7 12.2 2.85 24 0 378 | 0 |  | cup 200, tbsp 12.5 |  | garbanzo beans
soy-sauce | soy sauce | 16123 | 71.15 8.14 0.57 0.073 4.93 0.4 0.8 15.21 5493 0 53 | 0 | liquid | tbsp 16, tsp 5.3, cup 255 | soybeans, gluten:wheat | shoyu, soya sauce
tamari | tamari | 16124 | 66 10.51 0.1 0.011 5.57 1.7 0.8 17.82 5586 0 60 | 0 | liquid | tbsp 18, tsp 6 | soybeans, ?gluten:wheat
miso | miso | 16112 | 43.02 12.79 6.01 1.025 25.37 6.2 5.4 12.81 3728 0 198 | 0 |  | tbsp 17, cup 275 | soybeans, ?gluten:barley
`;
