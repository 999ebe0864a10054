/** Published composition of beef and veal; one row a line, columns as in ../rows.ts. Source: usda-sr28. */
export const beef = `
beef-brisket-lean-and-fat-raw | beef brisket, lean and fat, raw | 13803 | 61.08 18.42 19.06 7.53 0 0 0 0.88 69 0 251 | 1 connective tissue | beef:M
beef-flank-lean-and-fat-raw | beef flank, lean and fat, raw | 13970 | 70.73 21.22 7.17 2.978 0 0 0 1 54 0 155 | 0 | beef:M | each 188 |  | bavette, flank steak
beef-chuck-diced-raw | beef chuck, diced, raw | 23093 | 72.51 21.75 4.48 1.86 0.16 0 0 1.11 80 0 128 | 0 | beef:M |  |  | stewing beef, braising steak
beef-short-rib-boneless-raw | beef short rib, boneless, raw | 23128 | 63.84 17.48 18.33 7.979 0 0 0 0.84 78 0 235 | 7 connective tissue | beef:M | each 432 |  | jacob’s ladder
beef-skirt-raw | beef skirt, raw | 23217 | 67.25 20.38 11.71 4.626 0 0 0 0.92 64 0 187 | 1 connective tissue | beef:M | each 382 |  | inside skirt, onglet
beef-fillet-lean-and-fat-raw | beef fillet, lean and fat, raw | 13917 | 61.52 19.61 18.16 8.41 0 0 0 0.92 50 0 247 | 2 bone and connective tissue | beef:M | each 164 |  | beef tenderloin
beef-mince-20-fat-raw | beef mince, 20 % fat, raw | 23572 | 61.87 17.17 20 7.581 0 0 0 0.84 66 0 254 | 0 | beef:M |  |  | minced beef, ground beef, beef mince
beef-mince-30-fat-raw | beef mince, 30 % fat, raw | 13498 | 54.3 14.35 30 11.754 0 0 0 0.7 66 0 332 | 0 | beef:M |  |  | ground beef
beef-brain-raw | beef brain, raw | 13318 | 76.29 10.86 10.3 2.3 1.05 0 0 1.51 126 0 143 | 22 blood clots and membranes | beef:O |  |  | ox brain | in many places specified risk material: ask before it is used
ox-heart-raw | ox heart, raw | 13321 | 77.11 17.72 3.94 1.383 0.14 0 0 1.1 98 0 112 | 29 fat, veins and connective tissue | beef:O |  |  | beef heart
ox-heart-simmered | ox heart, simmered | 13322 | 65.67 28.48 4.73 1.404 0.15 0 0 0.97 59 0 165 | 16 fat and valves | beef:O |  |  | beef heart
ox-kidney-raw | ox kidney, raw | 13323 | 77.89 17.4 3.09 0.868 0.29 0 0 1.33 182 0 99 | 16 fat, veins and connective tissue | beef:O |  |  | beef kidney
ox-kidney-simmered | ox kidney, simmered | 13324 | 66.88 27.27 4.65 1.439 0 0 0 1.31 94 0 158 | 0 | beef:O |  |  | beef kidney
ox-liver-raw | ox liver, raw | 13325 | 70.81 20.36 3.63 1.233 3.89 0 0 1.31 69 0 135 | 0 | beef:O |  |  | beef liver
ox-liver-braised | ox liver, braised | 13326 | 58.81 29.08 5.26 2.947 5.13 0 0 1.74 79 0 191 | 0 | beef:O | slice 68 |  | beef liver
ox-liver-pan-fried | ox liver, pan-fried | 13327 | 62.01 26.52 4.68 2.53 5.16 0 0 1.63 77 0 175 | 0 | beef:O | slice 81 |  | beef liver
ox-pancreas-raw | ox pancreas, raw | 13331 | 65.2 15.7 18.6 6.41 0 - 0 1.3 67 - 235 | 0 | beef:O |  |  | beef pancreas
ox-spleen-raw | ox spleen, raw | 13333 | 77.2 18.3 3 1 0 - 0 1.38 85 - 105 | 0 | beef:O |  |  | beef melt
ox-sweetbread-raw | ox sweetbread, raw | 13337 | 67.8 12.18 20.35 7.01 0 - 0 1.38 96 0 236 | 0 | beef:O |  |  | beef thymus
ox-tongue-raw | ox tongue, raw | 13339 | 64.53 14.9 16.09 7 3.68 - 0 0.8 69 0 224 | 16 cartilage and connective tissue | beef:O |  |  | beef tongue
ox-tongue-simmered | ox tongue, simmered | 13340 | 57.87 19.29 22.3 8.125 0 0 0 0.69 65 0 284 | 16 skin and connective tissue,; cartilage and connective tissue | beef:O |  |  | beef tongue
ox-tripe-raw | ox tripe, raw | 13341 | 84.16 12.07 3.69 1.291 0 0 0 0.55 97 0 85 | 0 | beef:O |  |  | beef tripe
ox-tripe-simmered | ox tripe, simmered | 23640 | 81.65 11.71 4.05 1.357 1.99 0 0 0.6 68 0 94 | 0 | beef:O |  |  | beef tripe
beef-suet-raw | beef suet, raw | 13335 | 4 1.5 94 52.3 0 0 0 0.1 7 0 854 | 0 | beef:F |  |  | suet, kidney fat
beef-dripping | beef dripping | 04001 | 0 0 100 49.8 0 0 0 0 0 0 902 | 0 | beef:F | tbsp 12.8, cup 205 |  | beef tallow
veal-breast-lean-and-fat-raw | veal breast, lean and fat, raw | 17271 | 67.67 17.47 14.75 5.896 0 - - 0.9 71 - 208 | 0 | veal:M |  |  | breast of veal
veal-shank-lean-and-fat-raw | veal shank, lean and fat, raw | 17276 | 76.92 19.15 3.48 1.06 0 - - 1.04 84 - 113 | 29 bone | veal:M |  |  | veal shin, osso buco
calfs-heart-raw | calf’s heart, raw | 17193 | 77.69 17.18 3.98 1.07 0.08 - 0 1.07 77 - 110 | 26 fat and valves | veal:O |  |  | veal heart
calfs-kidney-raw | calf’s kidney, raw | 17197 | 79.07 15.76 3.12 0.96 0.85 - 0 1.2 178 0 99 | 12 connective tissue, fat, and veins | veal:O |  |  | veal kidney
calfs-liver-raw | calf’s liver, raw | 17202 | 70.89 19.93 4.85 1.56 2.91 0 0 1.42 77 0 140 | 0 | veal:O |  |  | veal liver
calfs-liver-braised | calf’s liver, braised | 17203 | 59.86 28.42 6.26 1.986 3.77 0 0 1.7 78 0 192 | 0 | veal:O | slice 80 |  | veal liver
calfs-sweetbread-raw | calf’s sweetbread, raw | 17218 | 79.16 17.21 3.07 0.806 0 0 0 2.16 67 0 101 | 0 | veal:O |  |  | veal thymus, sweetbreads, ris de veau
calfs-sweetbread-braised | calf’s sweetbread, braised | 17219 | 73.63 22.67 3.11 0.942 0 0 0 2.88 59 0 125 | 4 membranes | veal:O |  |  | veal thymus, sweetbreads
calfs-tongue-raw | calf’s tongue, raw | 17222 | 74.53 17.18 5.48 2.35 1.91 - 0 0.89 82 - 131 | 16 connective tissue and cartilage | veal:O |  |  | veal tongue
`;
