/** Published composition of lamb and mutton; one row a line, columns as in ../rows.ts. Source: usda-sr28. */
export const lamb = `
lamb-lean-and-fat-raw | lamb, lean and fat, raw | 17001 | 60.7 16.88 21.59 9.47 0 - 0 0.88 58 0 267 | 23 bone | lamb:M |  |  | lamb meat
lamb-fat-trimmings-raw | lamb fat trimmings, raw | 17005 | 22.54 6.65 70.61 32.24 0 - 0 0.36 31 - 665 | 0 | lamb:F |  |  | lamb fat
lamb-fore-shank-lean-and-fat-raw | lamb fore shank, lean and fat, raw | 17007 | 67.01 18.91 13.38 5.83 0 - 0 0.95 72 - 201 | 52 bone | lamb:M |  |  | lamb shank
lamb-leg-lean-and-fat-raw | lamb leg, lean and fat, raw | 17011 | 64.32 17.91 17.07 7.43 0 - 0 0.94 56 - 230 | 21 bone | lamb:M |  |  | leg of lamb
lamb-loin-lean-and-fat-raw | lamb loin, lean and fat, raw | 17023 | 56.55 16.32 26.63 11.76 0 - 0 0.84 56 - 310 | 21 bone | lamb:M
lamb-rib-lean-and-fat-raw | lamb rib, lean and fat, raw | 17029 | 50.8 14.52 34.39 15.16 0 - 0 0.74 56 - 372 | 27 bone | lamb:M |  |  | rack of lamb, best end
lamb-shoulder-lean-and-fat-raw | lamb shoulder, lean and fat, raw | 17035 | 61.39 16.58 21.45 9.28 0 0 0 0.89 61 0 264 | 21 bone | lamb:M |  |  | shoulder of lamb
lamb-mince-raw | lamb mince, raw | 17224 | 59.47 16.56 23.41 10.19 0 0 0 0.87 59 0 282 | 0 | lamb:M |  |  | minced lamb, ground lamb
lambs-brain-raw | lamb’s brain, raw | 17185 | 79.2 10.4 8.58 2.19 0 - 0 1.33 112 - 122 | 2 blood clots and membranes | lamb:O |  |  | lamb brains | in many places specified risk material over 12 months: ask before it is used
lambs-heart-raw | lamb’s heart, raw | 17191 | 76.71 16.47 5.68 2.25 0.21 - 0 0.93 89 - 122 | 22 fat and valves | lamb:O |  |  | lamb heart
lambs-heart-braised | lamb’s heart, braised | 17192 | 64.2 24.97 7.91 3.14 1.93 - 0 0.99 63 - 185 | 0 | lamb:O |  |  | lamb heart
lambs-kidney-raw | lamb’s kidney, raw | 17195 | 79.23 15.74 2.95 1 0.82 - 0 1.26 156 - 97 | 3 connective tissue, fat, and veins | lamb:O |  |  | lamb kidneys
lambs-kidney-braised | lamb’s kidney, braised | 17196 | 70.45 23.65 3.62 1.23 0.99 - 0 1.29 151 - 137 | 0 | lamb:O |  |  | lamb kidneys
lambs-liver-raw | lamb’s liver, raw | 17199 | 71.37 20.38 5.02 1.94 1.78 - 0 1.44 70 - 139 | 0 | lamb:O |  |  | lamb liver
lambs-liver-braised | lamb’s liver, braised | 17200 | 56.67 30.57 8.81 3.41 2.53 - 0 1.42 56 0 220 | 0 | lamb:O |  |  | lamb liver
lambs-liver-pan-fried | lamb’s liver, pan-fried | 17201 | 56.2 25.53 12.65 4.9 3.78 - 0 1.83 124 0 238 | 0 | lamb:O |  |  | lamb liver
lambs-lungs-raw | lamb’s lungs, raw | 17205 | 79.7 16.7 2.6 0.89 0 - 0 1.1 157 - 95 | 24 blood clots and membranes | lamb:O |  |  | lamb lights, lights
lambs-pancreas-raw | lamb’s pancreas, raw | 17210 | 73.77 14.84 9.82 4.44 0 - 0 1.4 75 - 152 | 0 | lamb:O |  |  | lamb gut sweetbread
lambs-spleen-raw | lamb’s spleen, raw | 17214 | 78.15 17.2 3.1 1.03 0 - 0 1.3 84 - 101 | 0 | lamb:O |  |  | lamb melt
lambs-tongue-raw | lamb’s tongue, raw | 17220 | 66.6 15.7 17.17 6.63 0 - 0 0.92 78 - 222 | 16 connective tissue and cartilage | lamb:O |  |  | lamb tongue
lambs-tongue-braised | lamb’s tongue, braised | 17221 | 57.86 21.57 20.28 7.83 0 - 0 0.73 67 - 275 | 0 | lamb:O |  |  | lamb tongue
mutton-tallow | mutton tallow | 04520 | 0 0 100 47.3 0 0 0 0 0 0 902 | 0 | lamb:F | tbsp 12.8, cup 205 |  | mutton fat, mutton dripping
`;
