/** Published composition of oils; one row a line, columns as in ../rows.ts. Source: usda-sr28. */
export const oils = `
olive-oil | olive oil | 04053 | 0 0 100 13.808 0 0 0 0 2 0 884 | 0 | liquid | tbsp 13.5, cup 216, tsp 4.5 |  | extra virgin olive oil
rapeseed-oil | rapeseed oil | 04582 | 0 0 100 7.365 0 0 0 0 0 0 884 | 0 | liquid | tbsp 14, cup 218, tsp 4.5 |  | canola oil, vegetable oil
soybean-oil | soybean oil | 04044 | 0 0 100 15.65 0 0 0 0 0 0 884 | 0 | liquid | tbsp 13.6, cup 218, tsp 4.5 | soybeans | soya oil | fully refined, it is exempt in the EU, Great Britain and the US: counted as there until the supplier says so
groundnut-oil | groundnut oil | 04042 | 0 0 100 16.9 0 0 0 0 0 0 884 | 0 | liquid | tbsp 13.5, cup 216, tsp 4.5 | peanuts | peanut oil, arachide oil | declared in the EU and Great Britain also when refined; highly refined it is exempt in the US
sunflower-oil | sunflower oil | 04060 | 0 0 100 10.1 0 0 0 0 0 0 884 | 0 | liquid | tbsp 13.6, cup 218, tsp 4.5
grapeseed-oil | grapeseed oil | 04517 | 0 0 100 9.6 0 0 0 0 0 0 884 | 0 | liquid | tbsp 13.6, cup 218, tsp 4.5
walnut-oil | walnut oil | 04528 | 0 0 100 9.1 0 0 0 0 0 0 884 | 0 | liquid | tbsp 13.6, cup 218, tsp 4.5 | nuts:walnuts
hazelnut-oil | hazelnut oil | 04532 | 0 0 100 7.4 0 0 0 0 0 0 884 | 0 | liquid | tbsp 13.6, cup 218, tsp 4.5 | nuts:hazelnuts
sesame-oil | sesame oil | 04058 | 0 0 100 14.2 0 0 0 0 0 0 884 | 0 | liquid | tbsp 13.6, cup 218, tsp 4.5 | sesame
`;
