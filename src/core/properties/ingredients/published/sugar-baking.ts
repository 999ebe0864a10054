/** Published composition of sugar, setting and raising; one row a line, columns as in ../rows.ts. Source: usda-sr28. */
export const sugarBaking = `
white-sugar | white sugar | 19335 | 0.02 0 0 0 99.98 99.8 0 0.01 1 0 387 | 0 |  | tsp 4.2, cup 200 |  | sugar, caster sugar, granulated sugar, superfine sugar
brown-sugar | brown sugar | 19334 | 1.34 0.12 0 0 98.09 97.02 0 0.45 28 0 380 | 0 |  | tsp loose 3, cup packed 220, cup loose 145, tsp packed 4.6 |  | soft brown sugar, muscovado
icing-sugar | icing sugar | 19336 | 0.23 0 0 0 99.77 97.81 0 0.01 2 0 389 | 0 |  | cup 120, cup sifted 100, tbsp 8, tsp 2.5 |  | powdered sugar, confectioners’ sugar
demerara-sugar | demerara sugar | 19908 | 0.03 0 0 - 99.8 99.19 - 0.17 3 - 399 | 0 | no-fibre | tsp 4.6, cup 202 |  | turbinado, raw sugar
honey | honey | 19296 | 17.1 0.3 0 0 82.4 82.12 0.2 0.2 4 0 304 | 0 | liquid | cup 339, tbsp 21
maple-syrup | maple syrup | 19353 | 32.39 0.04 0.06 0.007 67.04 60.46 0 0.47 12 0 260 | 0 | liquid | tbsp 20, cup 315
molasses | molasses | 19304 | 21.87 0 0.1 0.018 74.73 74.72 0 3.3 37 0 290 | 0 | liquid | cup 337 | ?sulphites | black treacle, treacle
jam | jam | 19297 | 30.47 0.37 0.07 0.01 68.86 48.5 1.1 0.23 32 0 278 | 0 |  | tbsp 20 | ?sulphites | preserves, conserve
fruit-jelly-sweet | fruit jelly, sweet | 19300 | 29.77 0.15 0.02 0.005 69.95 51.22 1 0.12 30 0 266 | 0 |  |  | ?sulphites | redcurrant jelly, jelly preserve
gelatine-powder | gelatine, powder | 19177 | 13 85.6 0.1 0.07 0 0 0 1.3 196 0 335 | 0 | animal |  | ?fish | gelatin, powdered gelatine | of pig or cattle; of fish, where the label says so
dried-yeast | dried yeast | 18375 | 5.08 40.44 7.61 1.001 41.22 0 26.9 5.65 51 0 325 | 0 |  | tsp 4, tbsp 12 |  | active dry yeast
fresh-yeast | fresh yeast | 18374 | 69 8.4 1.9 0.243 18.1 0 8.1 1.8 30 0 105 | 0 |  |  |  | compressed yeast, baker’s yeast
baking-powder | baking powder | 18369 | 5 0 0 0 27.7 0 0.2 67.3 10600 0 53 | 0 |  | tsp 4.6 | ?gluten:wheat |  | its sodium as salt is more than a third of its weight, though it is not common salt
bicarbonate-of-soda | bicarbonate of soda | 18372 | 0.2 0 0 0 0 0 0 36.9 27360 0 0 | 0 |  | tsp 4.6 |  | baking soda, sodium bicarbonate | its sodium as salt is more than its ash: it loses weight when it is burnt to ash
`;
