/** Published composition of pork; one row a line, columns as in ../rows.ts. Source: usda-sr28. */
export const pork = `
pork-carcass-lean-and-fat-raw | pork carcass, lean and fat, raw | 10001 | 49.83 13.91 35.07 12.44 0 0 0 0.72 42 0 376 | 18 bone and skin | pig:M |  |  | side of pork
pork-back-fat-raw | pork back fat, raw | 10004 | 7.69 2.92 88.69 32.21 0 0 0 0.7 11 0 812 | 11 skin | pig:F |  |  | backfat, fatback, lardo fat
pork-belly-raw | pork belly, raw | 10005 | 36.74 9.34 53.01 19.33 0 0 0 0.49 32 0 518 | 7 skin | pig:M |  |  | belly pork, streaky pork
pork-fat-trimmings-raw | pork fat trimmings, raw | 10006 | 24.76 9.25 65.7 21.979 0 0 0 0.51 47 0 632 | 0 | pig:F |  |  | pork fat
pork-leg-lean-and-fat-raw | pork leg, lean and fat, raw | 10008 | 62.47 17.43 18.87 6.54 0 - 0 0.88 47 0 245 | 17 bone and skin | pig:M |  |  | fresh ham, gammon joint
pork-leg-lean-only-raw | pork leg, lean only, raw | 10010 | 72.9 20.48 5.41 1.87 0 0 0 1.05 55 0 136 | 35 bone and skin, fat | pig:M |  |  | lean pork, fresh ham
pork-loin-lean-and-fat-raw | pork loin, lean and fat, raw | 10020 | 66.92 19.74 12.58 4.36 0 0 0 0.96 50 0 198 | 22 bone | pig:M
pork-loin-lean-only-raw | pork loin, lean only, raw | 10024 | 72.23 21.43 5.66 1.95 0 0 0 1.05 52 0 143 | 30 bone, fat | pig:M
pork-fillet-lean-only-raw | pork fillet, lean only, raw | 10060 | 76 20.95 2.17 0.698 0 0 0 1.03 53 0 109 | 5 bone,, connective tissue,, fat | pig:M | each 505 |  | pork tenderloin
pork-shoulder-lean-and-fat-raw | pork shoulder, lean and fat, raw | 10070 | 64.02 17.18 17.99 6.24 0 0 0 0.88 65 0 236 | 25 bone and skin | pig:M |  |  | shoulder of pork
pork-shoulder-lean-only-raw | pork shoulder, lean only, raw | 10072 | 72.63 19.55 7.14 2.47 0 - 0 1.02 76 - 148 | 39 bone and skin, fat | pig:M
pork-hand-lean-and-fat-raw | pork hand, lean and fat, raw | 10074 | 68.34 18.71 12.51 4.14 0 0 0 0.98 84 0 193 | 22 bone, connective tissue | pig:M | each 2745 |  | picnic shoulder, hand of pork
pork-blade-lean-and-fat-raw | pork blade, lean and fat, raw | 10080 | 69.18 17.42 12.36 4.348 0 0 0 0.83 61 0 186 | 24 bone, connective tissue | pig:M |  |  | boston butt, neck end, spare rib joint, pork collar
pork-blade-lean-and-fat-roast | pork blade, lean and fat, roast | 10083 | 57.47 23.11 18.86 6.97 0 0 0 1.23 67 0 269 | 24 bone | pig:M |  |  | pulled pork
pork-blade-lean-only-braised | pork blade, lean only, braised | 10085 | 58 26.57 13.2 5.023 0 0 0 0.85 60 0 233 | 32 bone,, connective tissue,, fat | pig:M | each 249
pork-spare-ribs-raw | pork spare ribs, raw | 10088 | 59.75 15.47 23.4 7.529 0 0 0 0.67 81 0 277 | 30 bone | pig:M |  |  | spareribs
pork-back-ribs-raw | pork back ribs, raw | 10192 | 63.47 19.07 16.33 5.783 0 0 0 1.03 87 0 224 | 37 bone, connective tissue | pig:M |  |  | loin ribs
pork-mince-raw | pork mince, raw | 10219 | 61.06 16.88 21.19 7.87 0 - 0 0.87 56 - 263 | 0 | pig:M |  |  | minced pork, ground pork, sausage meat
pigs-brain-raw | pig’s brain, raw | 10096 | 78.36 10.28 9.21 2.079 0 - 0 1.13 120 - 127 | 2 blood clots and membrane | pig:O |  |  | pork brains | the law stops brain of cattle over 12 months, sheep and goats over 12 months; not of pigs
pork-chitterlings-raw | pork chitterlings, raw | 10098 | 76.11 7.64 16.61 7.619 0 0 0 0.2 24 0 182 | 18 fat | pig:O |  |  | pig intestines, chitlins
pork-chitterlings-simmered | pork chitterlings, simmered | 10099 | 67.87 12.49 20.32 9.52 0 0 0 0.3 18 0 233 | 0 | pig:O |  |  | pig intestines, chitlins
pigs-ear-raw | pig’s ear, raw | 10100 | 61.25 22.45 15.1 5.39 0.6 - 0 0.6 191 0 234 | 5 thaw juice and trim | pig:O | each 113 |  | pork ear, pigs ears
pigs-ear-simmered | pig’s ear, simmered | 10101 | 72.65 15.95 10.8 3.86 0.2 - 0 0.4 167 0 166 | 0 | pig:O |  |  | pork ear, pigs ears
pigs-trotter-raw | pig’s trotter, raw | 10102 | 64.99 23.16 12.59 3.57 0 0 0 0.68 132 0 212 | 29 bone and hard tissue | pig:O |  |  | pork foot, pigs feet, trotters
pigs-trotter-simmered | pig’s trotter, simmered | 10173 | 62.85 21.94 16.05 4.343 0 0 0 0.66 73 0 238 | 60 bone and hard tissue | pig:O |  |  | pork foot, pigs feet, picked trotter
pigs-heart-raw | pig’s heart, raw | 10103 | 76.21 17.27 4.36 1.16 1.33 0 0 0.84 56 0 118 | 0 | pig:O | each 226 |  | pork heart
pigs-heart-braised | pig’s heart, braised | 10104 | 68.08 23.6 5.05 1.34 0.4 - 0 1 35 - 148 | 0 | pig:O | cup 145, each 129 |  | pork heart
pigs-jowl-raw | pig’s jowl, raw | 10105 | 22.19 6.38 69.61 25.26 0 0 0 0.32 25 0 655 | 0 | pig:F |  |  | pork cheek fat, guanciale cut, jowls | mostly fat
pigs-kidney-raw | pig’s kidney, raw | 10106 | 80.06 16.46 3.25 1.04 0 - 0 1.17 121 - 100 | 7 fat, veins, and membranes | pig:O | each 233 |  | pork kidneys
pigs-kidney-braised | pig’s kidney, braised | 10107 | 68.7 25.4 4.7 1.51 0 - 0 1.3 80 - 151 | 0 | pig:O | cup 140 |  | pork kidneys
pork-flare-fat-raw | pork flare fat, raw | 10109 | 4.09 1.76 94.16 45.23 0 - 0 0.1 5 - 857 | 0 | pig:F |  |  | leaf fat, flead, leaf lard
pigs-liver-raw | pig’s liver, raw | 10110 | 71.06 21.39 3.65 1.17 2.47 - 0 1.44 87 0 134 | 0 | pig:O |  |  | pork liver
pigs-liver-braised | pig’s liver, braised | 10111 | 64.32 26.02 4.4 1.41 3.76 - 0 1.5 49 0 165 | 0 | pig:O |  |  | pork liver
pigs-lungs-raw | pig’s lungs, raw | 10112 | 79.52 14.08 2.72 0.96 0 - 0 0.8 153 - 85 | 13 blood clots and membranes | pig:O |  |  | pork lights, lights
pigs-pancreas-raw | pig’s pancreas, raw | 10115 | 67.18 18.56 13.24 4.58 0 - 0 1.12 44 - 199 | 0 | pig:O |  |  | pork gut sweetbread
pigs-spleen-raw | pig’s spleen, raw | 10117 | 78.43 17.86 2.59 0.86 0 - 0 1.53 98 - 100 | 0 | pig:O |  |  | pork melt, milt
pigs-spleen-braised | pig’s spleen, braised | 10118 | 66.7 28.2 3.2 1.06 0 - 0 1.7 107 - 149 | 0 | pig:O |  |  | pork melt, milt
pigs-stomach-raw | pig’s stomach, raw | 10119 | 73.5 16.85 10.14 4.025 0 0 0 0.63 75 0 159 | 0 | pig:O |  |  | pork maw, hog maw
pigs-tongue-raw | pig’s tongue, raw | 10121 | 65.9 16.3 17.2 5.96 0 0 0 0.9 110 0 225 | 16 cartilage and connective tissue | pig:O |  |  | pork tongue
pigs-tongue-braised | pig’s tongue, braised | 10122 | 56.9 24.1 18.6 6.449 0 - 0 0.8 109 - 271 | 24 skin and trimmings | pig:O |  |  | pork tongue
pigs-tail-raw | pig’s tail, raw | 10174 | 46.05 17.75 33.5 11.64 0 - 0 0.5 63 - 378 | 30 bone and hard tissue | pig:O |  |  | pork tail, pigs tails
pigs-tail-simmered | pig’s tail, simmered | 10175 | 46.7 17 35.8 12.45 0 - 0 0.4 25 0 396 | 32 bone and hard tissue | pig:O |  |  | pork tail, pigs tails
mechanically-separated-pork-raw | mechanically separated pork, raw | 10114 | 56.87 15.03 26.54 9.82 0 - 0 1.56 50 - 304 | 0 | pig:X
salt-pork-raw | salt pork, raw | 10165 | 11 5.05 80.5 29.38 0 0 0 3.65 2684 0 748 | 0 | pig:F |  |  | petit salé, salted pork fat
streaky-bacon-cured-raw | streaky bacon, cured, raw | 10123 | 44.24 12.62 39.69 13.296 1.28 1 0 2.17 662 0 417 | 0 | pig:P | slice 28 |  | bacon, lardons, unsmoked bacon
streaky-bacon-cured-fried | streaky bacon, cured, fried | 10862 | 23.65 33.92 35.09 11.964 1.7 0 0 5.64 1684 0 468 | 0 | pig:P | slice 11.5 |  | crisp bacon
pickled-pigs-feet | pickled pig’s feet | 10132 | 75 11.63 10.02 2.945 0.01 0 0 3.35 946 0 140 | 66 bone and hard tissue | pig:P |  | ?sulphites
pork-scratchings | pork scratchings | 19041 | 1.8 61.3 31.3 11.37 0 0 0 5.4 1818 0 544 | 0 | pig:P |  | ?milk, ?gluten | pork rinds fried, crackling
black-pudding-bought | black pudding, bought | 07005 | 47.3 14.6 34.5 13.4 1.29 1.29 0 2.31 680 0 379 | 0 | pig:P |  | ?gluten, ?milk, ?sulphites | blood sausage, boudin noir
brawn-bought | brawn, bought | 07034 | 73.84 13.83 10.9 3.402 0 0 0 2.08 941 0 157 | 0 | pig:P |  | ?gluten, ?celery, ?mustard, ?sulphites | headcheese, fromage de tête
lard | lard | 04002 | 0 0 100 39.2 0 0 0 0 0 0 902 | 0 | pig:F | tbsp 12.8, cup 205 |  | saindoux
`;
