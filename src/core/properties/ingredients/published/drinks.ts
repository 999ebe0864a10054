/** Published composition of water, stock, wine and spirits; one row a line, columns as in ../rows.ts. Source: usda-sr28. */
export const drinks = `
water | water | 14429 | 99.9 0 0 0 0 0 0 0.1 3 0 0 | 0 | liquid | fl oz 29.6, litre 1000 |  | tap water, ice, iced water, crushed ice
beef-stock | beef stock | 06170 | 95.89 1.97 0.09 0.035 1.2 0.54 0 0.7 198 0 13 | 0 | liquid | cup 240 | ?celery | brown stock | made at home in the US, recipe not published: your own stock has its own
chicken-stock | chicken stock | 06172 | 92.15 2.52 1.2 0.321 3.53 1.58 0 0.63 143 0 36 | 0 | liquid | cup 240 | ?celery | stock, white stock | made at home in the US, recipe not published: your own stock has its own
fish-stock | fish stock | 06174 | 96.6 2.26 0.81 0.203 0 0 0 0.74 156 0 16 | 0 | liquid | cup 233 | fish, ?celery | fumet | made at home in the US, recipe not published: your own stock has its own
chicken-broth-bought | chicken broth, bought | 06194 | 97.81 0.64 0.21 0.013 0.44 0.43 0 0.9 371 0 6 | 0 | liquid | cup 249 | ?celery, ?gluten, ?milk, ?soybeans
beef-broth-bought | beef broth, bought | 06008 | 97.55 1.14 0.22 0.11 0.04 0 0 1.05 372 0 7 | 0 | liquid | cup 240 | ?celery, ?gluten, ?soybeans | bouillon
red-wine | red wine | 14096 | 86.49 0.07 0 0 2.61 0.62 0 0.28 4 10.6 85 | 0 | liquid | fl oz 29.4 | ?sulphites |  | fining with egg or milk is declared where any of it is left
white-wine | white wine | 14106 | 86.86 0.07 0 0 2.6 0.96 0 0.2 5 10.3 82 | 0 | liquid | fl oz 29.4 | ?sulphites |  | fining with egg or milk is declared where any of it is left
sweet-dessert-wine | sweet dessert wine | 14057 | 70.51 0.2 0 0 13.69 7.78 0 0.3 9 15.3 160 | 0 | liquid | fl oz 29.5 | ?sulphites
dry-dessert-wine | dry dessert wine | 14536 | 72.53 0.2 0 0 11.67 1.09 0 0.3 9 15.3 152 | 0 | liquid | fl oz 29.5 | ?sulphites | fortified wine
cooking-wine-salted | cooking wine, salted | 43154 | 88.9 0.5 0 0 6.3 1.55 0 1 626 3.3 50 | 0 | liquid | tsp 4.9, fl oz 29 | ?sulphites
spirits-40-vol | spirits, 40 % vol | 14037 | 66.6 0 0 0 0 0 0 0.01 1 33.4 231 | 0 | liquid | fl oz 27.8 |  | gin, vodka, rum, whisky, whiskey, 80 proof spirit | distilled: cereals that spirits are made of are exempt from declaring
spirits-43-vol | spirits, 43 % vol | 14550 | 63.9 0 0 0 0.1 0 0 0.01 1 36 250 | 0 | liquid | fl oz 27.8 |  | 86 proof spirit | distilled: cereals that spirits are made of are exempt from declaring; grape spirit may hold sulphites
beer | beer | 14003 | 91.96 0.46 0 0 3.55 0 0 0.16 4 3.9 43 | 0 | liquid | fl oz 29.7 | gluten:barley, ?gluten:wheat, ?sulphites | lager, ale
cider | cider | 14250 | 89 0 0 0 5.92 5.92 0 1.35 4 4 56 | 0 | liquid | fl oz 29.58 | ?sulphites | hard cider | totals 100.3 g as published
`;
