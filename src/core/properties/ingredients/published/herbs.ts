/** Published composition of fresh and dried herbs; one row a line, columns as in ../rows.ts. Source: usda-sr28. */
export const herbs = `
parsley-fresh | parsley, fresh | 11297 | 87.71 2.97 0.79 0.132 6.33 0.85 3.3 2.2 56 0 36 | 5 tough stems |  | cup chopped 60, tbsp 3.8, sprig 1 |  | flat-leaf parsley, curly parsley
parsley-dried | parsley, dried | 02029 | 5.89 26.63 5.48 1.378 50.64 7.27 26.7 11.36 452 0 292 | 0 |  | tsp 0.5, tbsp 1.6
chives-fresh | chives, fresh | 11156 | 90.65 3.27 0.73 0.146 4.35 1.85 2.5 1 3 0 30 | 0 |  | tbsp chopped 3, tsp chopped 1
thyme-fresh | thyme, fresh | 02049 | 65.11 5.56 1.68 0.467 24.45 - 14 3.2 9 - 101 | 32 stems |  | tsp 0.8
thyme-dried | thyme, dried | 02042 | 7.79 9.11 7.43 2.73 63.94 1.71 37 11.74 55 0 276 | 0 |  | tsp leaf 1, tbsp leaf 2.7, tsp ground 1.4, tbsp ground 4.3
rosemary-fresh | rosemary, fresh | 02063 | 67.77 3.31 5.86 2.838 20.7 - 14.1 2.35 26 - 131 | 35 stems |  | tsp 0.7, tbsp 1.7
rosemary-dried | rosemary, dried | 02036 | 9.31 4.88 15.22 7.371 64.06 - 42.6 6.53 50 0 331 | 0 |  | tsp 1.2, tbsp 3.3
basil-fresh | basil, fresh | 02044 | 92.06 3.15 0.64 0.041 2.65 0.3 1.6 1.49 4 0 23 | 36 tough stems, flower heads and trimmings |  | leaf 0.5, tbsp chopped 2.65, cup leaves 24
basil-dried | basil, dried | 02003 | 10.35 22.98 4.07 2.157 47.75 1.71 37.7 14.85 76 0 233 | 0 |  | tsp leaf 0.7, tbsp leaf 2.1, tsp ground 1.4, tbsp ground 4.5
coriander-leaf-fresh | coriander leaf, fresh | 11165 | 92.21 2.13 0.52 0.014 3.67 0.87 2.8 1.47 46 0 23 | 15 roots, old and bruised leaves |  | cup 16, sprig 2.222 |  | cilantro, fresh coriander
mint-fresh | mint, fresh | 02065 | 85.55 3.29 0.73 0.191 8.41 - 6.8 2.03 30 - 44 | 59 stems |  | leaf 0.15, tbsp 5.7 |  | spearmint
tarragon-dried | tarragon, dried | 02041 | 7.74 22.77 7.24 1.881 50.22 - 7.4 12.03 62 0 295 | 0 |  | tsp leaf 0.6, tbsp leaf 1.8, tsp ground 1.6, tbsp ground 4.8
sage-dried | sage, dried | 02038 | 7.96 10.63 12.75 7.03 60.73 1.71 40.3 7.95 11 0 315 | 0 |  | tsp 0.7, tbsp 2 |  | rubbed sage, ground sage
chervil-dried | chervil, dried | 02008 | 7.2 23.2 3.9 0.169 49.1 - 11.3 16.6 83 0 237 | 0 |  | tsp 0.6, tbsp 1.9
bay-leaf-dried | bay leaf, dried | 02004 | 5.44 7.61 8.36 2.28 74.97 - 26.3 3.62 23 0 313 | 0 |  | tsp crumbled 0.6, tbsp crumbled 1.8 |  | bay leaves, bay
savory-dried | savory, dried | 02039 | 9 6.73 5.91 3.26 68.73 - 45.7 9.63 24 - 272 | 0 |  | tsp 1.4, tbsp 4.4 |  | summer savory
marjoram-dried | marjoram, dried | 02023 | 7.64 12.66 7.04 0.529 60.56 4.09 40.3 12.1 77 0 271 | 0 |  | tsp 0.6, tbsp 1.7
`;
