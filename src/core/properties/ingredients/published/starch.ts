/** Published composition of flour, grain and bread; one row a line, columns as in ../rows.ts. Source: usda-sr28. */
export const starch = `
wheat-flour-white-plain | wheat flour, white, plain | 20481 | 11.92 10.33 0.98 0.155 76.31 0.27 2.7 0.47 2 0 364 | 0 |  | cup 125 | gluten:wheat | plain flour, all-purpose flour, flour
wheat-flour-wholemeal | wheat flour, wholemeal | 20080 | 10.74 13.21 2.5 0.43 71.97 0.41 10.7 1.58 2 0 340 | 0 |  | cup 120 | gluten:wheat | wholemeal flour, whole wheat flour
wheat-flour-white-strong | wheat flour, white, strong | 20083 | 13.36 11.98 1.66 0.244 72.53 0.31 2.4 0.47 2 0 361 | 0 |  | cup 137 | gluten:wheat | bread flour, strong flour
durum-wheat-semolina | durum wheat semolina | 20066 | 12.67 12.68 1.05 0.15 72.83 - 3.9 0.77 1 0 360 | 0 |  | cup 167 | gluten:wheat | semolina
cornflour | cornflour | 20027 | 8.32 0.26 0.05 0.009 91.27 0 0.9 0.09 9 0 381 | 0 |  | cup 128 |  | cornstarch, corn starch, maize starch
rice-flour | rice flour | 20061 | 11.89 5.95 1.42 0.386 80.13 0.12 2.4 0.61 0 0 366 | 0 |  | cup 158
long-grain-rice-raw | long-grain rice, raw | 20044 | 11.62 7.13 0.66 0.18 79.95 0.12 1.3 0.64 5 0 365 | 0 |  | cup 185 |  | white rice, rice
short-grain-rice-raw | short-grain rice, raw | 20052 | 13.29 6.5 0.52 0.14 79.15 - 2.8 0.54 1 - 358 | 0 |  | cup 200 |  | pudding rice, risotto rice, arborio
brown-rice-raw | brown rice, raw | 20036 | 11.8 7.54 3.2 0.591 76.25 0.66 3.6 1.21 5 0 367 | 0 |  | cup 185
maize-meal | maize meal | 20020 | 10.26 8.12 3.59 0.505 76.89 0.64 7.3 1.13 35 0 362 | 0 |  | cup 122 |  | cornmeal, polenta
pearl-barley-raw | pearl barley, raw | 20005 | 10.09 9.91 1.16 0.244 77.72 0.8 15.6 1.11 9 0 352 | 0 |  | cup 200 | gluten:barley | pearled barley, barley | barley is gluten in the EU and Great Britain, no major allergen in the US
couscous-dry | couscous, dry | 20028 | 8.56 12.76 0.64 0.117 77.43 - 5 0.62 10 - 376 | 0 |  | cup 173 | gluten:wheat
rye-flour-light | rye flour, light | 20065 | 11.4 9.82 1.33 0.15 76.68 0.93 8 0.78 2 0 357 | 0 |  | cup 102 | gluten:rye |  | rye is gluten in the EU and Great Britain, no major allergen in the US
spelt-raw | spelt, raw | 20140 | 11.02 14.57 2.43 0.406 70.19 6.82 10.7 1.78 8 - 338 | 0 |  | cup 174 | gluten:spelt | spelt grain
oats-rolled | oats, rolled | 08120 | 10.84 13.15 6.52 1.11 67.7 0.99 10.1 1.77 6 0 379 | 0 |  | cup 81 | gluten:oats, ?gluten:wheat | oatmeal, porridge oats, pinhead oats, rolled oats | oats count as gluten in the EU and Great Britain; the US has only wheat
buckwheat-groats-roasted-dry | buckwheat groats, roasted, dry | 20009 | 8.41 11.73 2.71 0.591 74.95 - 10.3 2.2 11 0 346 | 0 |  | cup 164 |  | kasha
french-bread | french bread | 18029 | 33 10.75 2.42 0.529 51.88 4.62 2.2 1.96 602 0 272 | 0 |  | slice 139 | gluten:wheat, ?soybeans | baguette, sourdough
rye-bread | rye bread | 18060 | 37.3 8.5 3.3 0.626 48.3 3.85 5.8 2.5 603 0 259 | 0 |  | slice 32, slice thin 25 | gluten:rye, gluten:wheat
white-bread | white bread | 18069 | 36.42 8.85 3.33 0.698 49.42 5.67 2.7 1.98 490 0 266 | 0 |  | slice 29, cup crumbs 45, cup chopped 35, slice large 30, slice thin 20 | gluten:wheat, ?milk, ?soybeans | fresh breadcrumbs, white breadcrumbs, bread, panade bread | the label decides about milk and soya
dried-breadcrumbs | dried breadcrumbs | 18079 | 6.51 13.35 5.3 1.203 71.98 6.2 4.5 2.87 732 0 395 | 0 |  | cup 108 | gluten:wheat, ?milk, ?soybeans, ?sesame, ?eggs | breadcrumbs, rusk, panko
puff-pastry-frozen | puff pastry, frozen | 18337 | 8.5 7.3 38.1 9.643 45.1 0.74 1.5 1 249 0 551 | 0 |  |  | gluten:wheat, ?milk
filo-pastry | filo pastry | 18338 | 32.6 7.1 6 1.47 52.6 0.18 1.9 1.6 483 0 299 | 0 |  | sheet 19 | gluten:wheat, ?soybeans | phyllo
`;
