/** Published composition of vegetables and mushrooms; one row a line, columns as in ../rows.ts. Source: usda-sr28. */
export const vegetables = `
button-mushrooms-raw | button mushrooms, raw | 11260 | 92.45 3.09 0.34 0.05 3.26 1.98 1 0.85 5 0 22 | 3 trimmings |  | cup sliced 70, cup whole 96, each large 23, each medium 18, slice 6, each small 10, cup chopped 70 |  | mushrooms, champignons, white mushrooms
chestnut-mushrooms-raw | chestnut mushrooms, raw | 11266 | 92.12 2.5 0.1 0.014 4.3 1.72 0.6 0.98 6 - 22 | 3 trimmings |  | cup whole 87, cup sliced 72, each 20 |  | brown mushrooms, cremini
morels-raw | morels, raw | 11240 | 89.61 3.12 0.57 0.065 5.1 0.6 2.8 1.58 21 - 31 | 0 |  | cup 66, each 12.9 |  | morel
chanterelles-raw | chanterelles, raw | 11239 | 89.85 1.49 0.53 - 6.86 1.16 3.8 1.26 9 - 38 | 0 |  | cup 54, each 5.4 |  | girolles
shiitake-raw | shiitake, raw | 11238 | 89.74 2.24 0.49 - 6.79 2.38 2.5 0.73 9 - 34 | 0 |  | each 19
shiitake-dried | shiitake, dried | 11268 | 9.5 9.58 0.99 0.225 75.37 2.21 11.5 4.56 13 0 296 | 0 |  | each 3.6 | ?sulphites | dried mushrooms
oyster-mushrooms-raw | oyster mushrooms, raw | 11987 | 89.18 3.31 0.41 0.062 6.09 1.11 2.3 1.01 18 0 33 | 11 stems |  | each large 148, each small 15, cup sliced 86 |  | pleurotus
garlic-raw | garlic, raw | 11215 | 58.58 6.36 0.5 0.089 33.06 1 2.1 1.5 17 0 149 | 13 knob and skin |  | cup 136, tsp 2.8, clove 3 |  | garlic cloves
shallot-raw | shallot, raw | 11677 | 79.8 2.5 0.1 0.017 16.8 7.87 3.2 0.8 12 0 72 | 12 skins |  | tbsp chopped 10 |  | shallots, échalote
onion-raw | onion, raw | 11282 | 89.11 1.1 0.1 0.042 9.34 4.24 1.7 0.35 4 0 40 | 10 stem ends, sprouts and defects |  | cup chopped 160, cup sliced 115, tbsp chopped 10, each large 150, slice large 38, each medium 110, slice medium 14, each small 70, slice thin 9 |  | onions, brown onion, yellow onion
sweet-onion-raw | sweet onion, raw | 11294 | 91.24 0.8 0.08 - 7.55 5.02 0.9 0.34 8 0 32 | 16 stem, root, and two outermost layers |  | each 331
spring-onion-raw | spring onion, raw | 11291 | 89.83 1.83 0.19 0.032 7.34 2.33 2.6 0.81 16 0 32 | 4 rootlets |  | cup chopped 100, tbsp chopped 6, each large 25, each medium 15, each small 5 |  | scallions, green onions, salad onions
leek-raw | leek, raw | 11246 | 83 1.5 0.3 0.04 14.15 3.9 1.8 1.05 20 0 61 | 56 tops, root end and skin |  | cup 89, each 89, slice 6 |  | leeks
carrot-raw | carrot, raw | 11124 | 88.29 0.93 0.24 0.037 9.58 4.74 2.8 0.97 69 0 41 | 11 crown, tops and scrapings |  | cup chopped 128, cup grated 110, cup sliced 122, each large 72, each medium 61, each small 50, slice 3 |  | carrots
celery-raw | celery, raw | 11143 | 95.43 0.69 0.17 0.042 2.97 1.34 1.6 0.75 80 0 16 | 11 roots and trimmings |  | cup chopped 101, tbsp 7.5, stalk large 64, stalk medium 40, stalk small 17 | celery | celery stick, celery stalk, branch celery | as stalk; leaf and seed count as celery too
celeriac-raw | celeriac, raw | 11141 | 88 1.5 0.3 0.079 9.2 1.6 1.8 1 100 0 42 | 14 parings |  | cup 156 | celery | celery root
parsnip-raw | parsnip, raw | 11298 | 79.53 1.2 0.3 0.05 17.99 4.8 4.9 0.98 10 - 75 | 15 parings |  | cup sliced 133 |  | parsnips
turnip-raw | turnip, raw | 11564 | 91.87 0.9 0.1 0.011 6.43 3.8 1.8 0.7 67 0 28 | 19 parings |  | cup chopped 130, each large 183, each medium 122, slice 15, each small 61 |  | turnips, navet
swede-raw | swede, raw | 11435 | 89.43 1.08 0.16 0.027 8.62 4.46 2.3 0.71 12 0 37 | 15 parings |  | cup chopped 140, each large 772, each medium 386, each small 192 |  | rutabaga, neep
potato-raw | potato, raw | 11352 | 79.25 2.05 0.09 0.025 17.49 0.82 2.1 1.11 6 0 77 | 25 parings and trimmings |  | cup chopped 150, each large 369, each medium 213, each small 170 |  | potatoes
beetroot-raw | beetroot, raw | 11080 | 87.58 1.61 0.17 0.027 9.56 6.76 2.8 1.08 78 0 43 | 33 parings and part tops |  | cup 136, each 82 |  | beets, beet
white-cabbage-raw | white cabbage, raw | 11109 | 92.18 1.28 0.1 0.034 5.8 3.2 2.5 0.64 18 0 25 | 20 outer leaves and core |  | cup chopped 89, cup shredded 70, head large 1248, leaf large 33, head medium 908, leaf medium 23, head small 714, leaf 15 |  | cabbage, green cabbage
red-cabbage-raw | red cabbage, raw | 11112 | 90.39 1.43 0.16 0.021 7.37 3.83 2.1 0.64 27 0 31 | 20 outer leaves and core |  | cup chopped 89, cup shredded 70, head large 1134, leaf 23, head medium 839, head small 567
savoy-cabbage-raw | savoy cabbage, raw | 11114 | 91 2 0.1 0.013 6.1 2.27 3.1 0.8 28 0 27 | 20 outer leaves and core |  | cup shredded 70
kale-raw | kale, raw | 11233 | 84.04 4.28 0.93 0.091 8.75 2.26 3.6 2.01 38 0 49 | 28 stem ends, tough stems and tough midrib parts |  | cup chopped 16 |  | cavolo nero, curly kale
spinach-raw | spinach, raw | 11457 | 91.4 2.86 0.39 0.063 3.63 0.42 2.2 1.72 79 0 23 | 28 large stems and roots |  | cup 30, bunch 340, leaf 10
watercress-raw | watercress, raw | 11591 | 95.11 2.3 0.1 0.027 1.29 0.2 0.5 1.2 41 0 11 | 8 tough stems and ends |  | cup chopped 34, sprig 2.5
chicory-raw | chicory, raw | 11151 | 94.52 0.9 0.1 0.024 4 - 3.1 0.47 2 - 17 | 11 root base and core |  | head 53, cup 90 |  | witloof, belgian endive
endive-raw | endive, raw | 11213 | 93.79 1.25 0.2 0.048 3.35 0.25 3.1 1.41 22 0 17 | 14 outer leaves and core |  | cup chopped 50, head 513 |  | frisée, curly endive, escarole
butterhead-lettuce-raw | butterhead lettuce, raw | 11250 | 95.63 1.35 0.22 0.029 2.23 0.94 1.1 0.57 5 0 13 | 26 outer leaves and core |  | cup chopped 55, head 163, leaf large 15, leaf medium 7.5, leaf 5 |  | lettuce, round lettuce
green-leaf-lettuce-raw | green leaf lettuce, raw | 11253 | 94.98 1.36 0.15 0.02 2.87 0.78 1.3 0.62 28 0 15 | 36 outer leaves, core and trimmings |  | cup shredded 36, head 360 |  | loose-leaf lettuce
rocket-raw | rocket, raw | 11959 | 91.71 2.58 0.66 0.086 3.65 2.05 1.6 1.4 27 0 25 | 40 roots, stems and yellowed leaves |  | leaf 2, cup 20 |  | arugula, roquette
fennel-bulb-raw | fennel bulb, raw | 11957 | 90.21 1.24 0.2 0.09 7.3 3.93 3.1 1.05 52 0 31 | 28 stalk, leaves and core |  | cup sliced 87 |  | fennel, florence fennel
tomato-raw | tomato, raw | 11529 | 94.52 0.88 0.2 0.028 3.89 2.63 1.2 0.5 5 0 18 | 9 core and stem ends |  | cup chopped 180, each large 182, each medium 123, slice medium 20, each small 91, slice large 27, slice small 15 |  | tomatoes
tomato-puree | tomato purée | 11546 | 73.5 4.32 0.47 0.1 18.91 12.18 4.1 2.8 59 0 82 | 0 |  | cup 264, tbsp 16 |  | tomato paste, tomato puree
peas-raw | peas, raw | 11304 | 78.86 5.42 0.4 0.071 14.45 5.67 5.7 0.87 5 0 81 | 62 pods and inedible peas |  | cup 145 |  | garden peas
green-beans-raw | green beans, raw | 11052 | 90.32 1.83 0.22 0.05 6.97 3.26 2.7 0.66 6 0 31 | 12 ends, strings, trimmings |  | cup chopped 100 |  | french beans, haricots verts, snap beans
red-pepper-sweet-raw | red pepper, sweet, raw | 11821 | 92.21 0.99 0.3 0.027 6.03 4.2 2.1 0.47 4 0 31 | 18 stem ends, seed and core |  | cup chopped 149, cup sliced 92, tbsp 9.3, each large 164, each medium 119, each small 74 |  | bell pepper, capsicum
butternut-squash-raw | butternut squash, raw | 11485 | 86.41 1 0.1 0.021 11.69 2.2 2 0.8 4 0 45 | 16 seeds, rind and trimmings |  | cup chopped 140 |  | pumpkin, squash
jerusalem-artichoke-raw | jerusalem artichoke, raw | 11226 | 78.01 2 0.01 0 17.44 9.6 1.6 2.54 4 0 73 | 31 parings |  | cup sliced 150 |  | sunchoke, topinambour
sauerkraut | sauerkraut | 11439 | 92.52 0.91 0.14 0.034 4.28 1.78 2.9 2.15 661 0 19 | 0 |  | cup 142 | ?sulphites | choucroute
pickled-cucumber-dill | pickled cucumber, dill | 11937 | 94.34 0.5 0.3 0.079 2.41 1.07 1 2.45 809 0 12 | 0 |  | slice 7, each large 135, cup chopped 143, cup 155 | ?mustard, ?sulphites | gherkin, dill pickle, cornichons
`;
