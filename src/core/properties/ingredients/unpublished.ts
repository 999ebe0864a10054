/**
 * What a kitchen uses and the published table does not have: rows that stand in, pure substances, and foods whose
 * composition is not known here. Columns as in rows.ts. Weights of pieces in this file are common practice, no source.
 */

export const standIns = `
goose-neck-skin-raw | goose neck skin, raw | goose-skin-with-its-fat-raw | goose:S |  |  | neck skin of goose, stuffed neck skin | skin of the whole bird, by difference
duck-neck-skin-raw | duck neck skin, raw | duck-skin-with-its-fat-raw | duck:S |  |  | neck skin of duck | skin of the whole bird, by difference
goose-neck-meat-raw | goose neck, meat only, raw | turkey-neck-meat-only-raw | goose:M |  |  | goose necks | of another bird
duck-neck-meat-raw | duck neck, meat only, raw | turkey-neck-meat-only-raw | duck:M |  |  | duck necks | of another bird
goose-gizzard-raw | goose gizzard, raw | turkey-gizzard-raw | goose:O |  |  | goose gizzards | of another bird
duck-gizzard-raw | duck gizzard, raw | turkey-gizzard-raw | duck:O |  |  | duck gizzards | of another bird
goose-heart-raw | goose heart, raw | turkey-heart-raw | goose:O |  |  | goose hearts | of another bird
duck-heart-raw | duck heart, raw | turkey-heart-raw | duck:O |  |  | duck hearts | of another bird
duck-breast-with-skin-raw | duck breast, with skin, raw | duck-meat-with-skin-raw | duck:M |  |  | raw magret | the whole bird, fatter than most breasts
duck-leg-with-skin-raw | duck leg, with skin, raw | duck-meat-with-skin-raw | duck:M |  |  | duck legs | the whole bird
goose-breast-with-skin-raw | goose breast, with skin, raw | goose-meat-with-skin-raw | goose:M |  |  |  | the whole bird
goose-leg-with-skin-raw | goose leg, with skin, raw | goose-meat-with-skin-raw | goose:M |  |  | goose legs | the whole bird
rabbit-liver-raw | rabbit liver, raw | chicken-liver-raw | rabbit:O |  |  | rabbit livers | of another animal
pigs-trotter-skin-softened | pig’s trotter skin, softened | pigs-trotter-simmered | pig:S |  |  | trotter skin, zampone skin | the simmered foot without its bones
pork-hock-raw | pork hock, raw | pork-hand-lean-and-fat-raw | pig:M |  |  | ham hock, pork knuckle, shank of pork, hock meat | the hand above it
pigs-cheek-raw | pig’s cheek, raw | pork-shoulder-lean-only-raw | pig:M |  |  | pork cheeks | the chewing muscle is meat to the law
pigs-head-meat-raw | pig’s head meat, raw | pork-hand-lean-and-fat-raw | pig:O |  |  | head meat, half a head | the lean of the hand; muscles of the head other than the cheek are not meat to the law
pork-hock-simmered-picked | pork hock, simmered, picked | pork-blade-lean-only-braised | pig:M |  |  | ham hock meat, picked hock | another braised cut
ox-cheek-raw | ox cheek, raw | beef-chuck-diced-raw | beef:M |  |  | beef cheeks | the chewing muscle is meat to the law
beef-shin-raw | beef shin, raw | beef-chuck-diced-raw | beef:M |  |  | shin of beef, leg of beef | another hard-working muscle
lamb-neck-raw | lamb neck, lean and fat, raw | lamb-shoulder-lean-and-fat-raw | lamb:M |  |  | scrag, middle neck | the cut beside it
lamb-breast-raw | lamb breast, lean and fat, raw | lamb-rib-lean-and-fat-raw | lamb:M |  |  | breast of lamb | the cut above it
mutton-raw | mutton, lean and fat, raw | lamb-lean-and-fat-raw | mutton:M |  |  | mutton shoulder, hogget | a younger animal
hare-raw | hare, raw | wild-rabbit-raw | hare:M |  |  | jugged hare | another animal
partridge-raw | partridge, meat with skin, raw | pheasant-meat-with-skin-raw | partridge:M |  |  | partridges | another bird
gelatine-leaf | gelatine, leaf | gelatine-powder | animal | each 2, leaf 2, sheet 2 | = | leaf gelatine, gelatin sheet | the same, pressed into sheets; their weight differs by grade
creme-fraiche | crème fraîche | whipping-cream-31-fat | = | tbsp 15, cup 240 | milk | creme fraiche | cream before it is soured
mascarpone | mascarpone | whipping-cream-36-fat |  |  | milk |  | leaner than most mascarpone
goats-milk | goat’s milk | whole-milk | liquid | = | milk | goat milk | of the cow
madeira | Madeira | sweet-dessert-wine | liquid | = | ?sulphites | madeira wine, malmsey, bual | another fortified wine
port | port | sweet-dessert-wine | liquid | = | ?sulphites | port wine, ruby port, tawny port | another fortified wine
sherry-sweet | sherry, sweet | sweet-dessert-wine | liquid | = | ?sulphites | cream sherry, pedro ximénez | another fortified wine
sherry-dry | sherry, dry | dry-dessert-wine | liquid | = | ?sulphites | fino, manzanilla, oloroso, sherry | another fortified wine
marsala | Marsala, dry | dry-dessert-wine | liquid | = | ?sulphites | marsala wine | another fortified wine
vermouth-dry | vermouth, dry | dry-dessert-wine | liquid | = | ?sulphites | white vermouth | another fortified wine
sparkling-white-wine | sparkling white wine | white-wine | liquid | = | ?sulphites | champagne, cava, crémant, prosecco | still wine
brandy | brandy | spirits-43-vol | liquid | = | ?sulphites | cognac, armagnac, grape brandy, eau de vie | a spirit of 43 % by volume: most brandy is sold at 40
apple-brandy | apple brandy | spirits-40-vol | liquid | = |  | calvados, applejack | a spirit of the same strength
kirsch | kirsch | spirits-40-vol | liquid | = |  | cherry spirit | a spirit of the same strength
sherry-vinegar | sherry vinegar | red-wine-vinegar | liquid | = | ?sulphites |  | another wine vinegar
white-wine-vinegar | white wine vinegar | red-wine-vinegar | liquid | = | ?sulphites |  | another wine vinegar
malt-vinegar | malt vinegar | cider-vinegar | liquid | = | gluten:barley |  | another vinegar; made of barley
dijon-mustard | Dijon mustard | yellow-mustard-prepared |  | = | mustard, ?sulphites | french mustard, english mustard | a milder one, with less mustard
wholegrain-mustard | wholegrain mustard | yellow-mustard-prepared |  | = | mustard, ?sulphites | grain mustard, coarse mustard | ground and milder
duck-stock | duck stock | chicken-stock | liquid | = | ?celery | goose stock, game stock | another bird, a recipe that is not yours
pork-stock | pork stock | beef-stock | liquid | = | ?celery | trotter stock, veal stock, lamb stock | another animal, a recipe that is not yours
lardo | lardo | salt-pork-raw | pig:P |  |  | cured back fat | another cured fat
pancetta | pancetta | streaky-bacon-cured-raw | pig:P |  |  | ventrèche | another cured belly
guanciale | guanciale | salt-pork-raw | pig:P |  |  | cured jowl | another cured fat
smoked-bacon | smoked bacon | streaky-bacon-cured-raw | pig:P | = |  | smoked lardons | cured and smoked belly
smoked-paprika | smoked paprika | paprika |  | = |  | pimentón de la vera | the same, smoked
sage-fresh | sage, fresh | rosemary-fresh |  | leaf 0.5 |  | sage leaves | another woody herb
tarragon-fresh | tarragon, fresh | parsley-fresh |  | sprig 1 |  |  | another leaf
chervil-fresh | chervil, fresh | parsley-fresh |  | sprig 1 |  |  | another leaf
dill-fresh | dill, fresh | parsley-fresh |  | sprig 1 |  | dill weed | another leaf
marjoram-fresh | marjoram, fresh | thyme-fresh |  | sprig 1 |  | oregano, fresh oregano | another small-leaved herb
damson-raw | damson, raw | plum-raw |  |  |  | damsons | another plum
cep-raw | cep, raw | button-mushrooms-raw |  |  |  | porcini, penny bun, boletus | another mushroom
cep-dried | cep, dried | shiitake-dried |  |  | ?sulphites | dried porcini, dried ceps | another dried mushroom
potato-starch | potato starch | cornflour |  | = |  | potato flour, fecula | another pure starch
tapioca-starch | tapioca starch | cornflour |  | = |  | cassava starch, arrowroot | another pure starch
bulgur | bulgur wheat, dry | couscous-dry |  |  | gluten:wheat | cracked wheat | another wheat product
pinhead-oatmeal | pinhead oatmeal | oats-rolled |  |  | gluten:oats, ?gluten:wheat | pinhead oats, steel-cut oats | the same grain, cut
rusk | rusk | dried-breadcrumbs |  |  | gluten:wheat, ?milk, ?soybeans | yeastless rusk, butcher’s rusk | baked crumb
`;

export const defined = `
curing-salt-06 | curing salt, 0.6 % nitrite | 0 0 0 0 0 0 0 100 39300 0 0 |  |  |  | nitrite salt, pökelsalz, sel nitrité | 99.4 % common salt, 0.6 % sodium nitrite: weigh it, never measure it by spoon
curing-salt-625 | curing salt no. 1, 6.25 % nitrite | 0 0 0 0 0 0 0 100 38960 0 0 |  |  |  | pink salt, cure no 1 | 93.75 % common salt, 6.25 % sodium nitrite: ten times as strong as the other; weigh it, never measure it by spoon
salt-pure | salt, pure, dry | 0 0 0 0 0 0 0 100 39340 0 0 |  |  |  | pdv salt, vacuum salt | sodium chloride and nothing else
potassium-nitrate | saltpetre | 0 0 0 0 0 0 0 100 0 0 0 |  |  |  | potassium nitrate, saltpeter | pure potassium nitrate: weigh it, never measure it by spoon
sodium-tripolyphosphate | sodium tripolyphosphate | 0 0 0 0 0 0 0 100 31250 0 0 |  |  |  | stpp, phosphate, E451 | pure; its sodium counts as salt on a label
sodium-citrate | trisodium citrate | 12.25 0 0 0 64.31 0 0 23.44 23440 0 - |  |  |  | sodium citrate, E331 | dihydrate; by its formula sodium 23.44 %, water 12.25 %, the rest put with carbohydrate as an organic acid
dextrose | dextrose | 9.09 0 0 0 90.91 90.91 0 0 0 0 - |  |  |  | glucose powder, glucose monohydrate, grape sugar | monohydrate: a molecule of water for each of sugar
lactose | lactose | 5 0 0 0 95 95 0 0 0 0 - |  |  | milk | milk sugar | monohydrate: a molecule of water for each of sugar
ethanol | pure alcohol | 0 0 0 0 0 0 0 0 0 100 - | liquid |  |  | ethanol, neutral spirit | ethanol and nothing else
`;

export const unknowns = `
pigs-blood | pig’s blood | animal liquid |  |  | pork blood, fresh blood | no published composition here; what keeps it liquid (citrate) counts as an ingredient
goose-blood | goose blood | animal liquid |  |  | blood of goose | no published composition here
duck-blood | duck blood | animal liquid |  |  | blood of duck | no published composition here
ox-blood | ox blood | animal liquid |  |  | beef blood | no published composition here
dried-blood | dried blood | animal |  |  | blood powder | no published composition here
caul-fat | caul fat, pig’s | pig:F |  |  | crépine, crepine, lace fat, veil fat | no published composition here; flare fat lies beside it
pork-rind-raw | pork rind, raw | pig:S |  |  | pork skin, pig skin | no published composition here; the ear has most skin of the published parts
oxtail-raw | oxtail, raw | beef:O |  |  | ox tail | no published composition here
calfs-foot-raw | calf’s foot, raw | veal:O |  |  | calves feet, cow heel, ox foot | no published composition here
calfs-head-raw | calf’s head, raw | veal:O |  |  | tête de veau | no published composition here; brain and more of it may be specified risk material: ask
lambs-sweetbread-raw | lamb’s sweetbread, raw | lamb:O |  |  | lamb thymus | no published composition here
lambs-fries-raw | lamb’s fries, raw | lamb:O |  |  | testicles, lamb fries, rognons blancs | no published composition here
lambs-tail-raw | lamb’s tail, raw | lamb:O |  |  | sheep tail, fat tail | no published composition here
lamb-caul | caul fat, lamb’s | lamb:F |  |  | lamb crépine | no published composition here
pigs-bladder | pig’s bladder | pig:O |  |  | vessie | no published composition here
cocks-comb-raw | cock’s combs, raw | chicken:O |  |  | cockscomb, crêtes de coq | no published composition here
goose-feet-raw | goose feet, raw | goose:O |  |  | webbed feet | no published composition here
duck-feet-raw | duck feet, raw | duck:O |  |  | webbed feet | no published composition here
duck-tongue-raw | duck tongue, raw | duck:O |  |  | duck tongues | no published composition here
foie-gras-duck-raw | duck foie gras, raw | duck:O |  |  | fat duck liver, foie gras | the published row of duck liver is of a lean one: do not put it here
foie-gras-goose-raw | goose foie gras, raw | goose:O |  |  | fat goose liver | the published row of goose liver is of a lean one: do not put it here
hog-casing | hog casing, salted | pig:O |  |  | natural casing, pork casing, chorizo casing | no published composition here; rinsed of its salt before it is filled
sheep-casing | sheep casing, salted | lamb:O |  |  | lamb casing, chipolata casing | no published composition here; rinsed of its salt before it is filled
ox-runner | ox runner, salted | beef:O |  |  | beef casing, beef middle, ox bung | no published composition here; rinsed of its salt before it is filled
collagen-casing | collagen casing, edible | animal |  |  | edible collagen | no published composition here; of cattle or pig: the label says which
fibrous-casing | fibrous casing, not eaten | not-eaten |  |  | cellulose casing, plastic casing, cook-in bag | taken off before it is served
transglutaminase | transglutaminase, on a carrier | animal |  | ?milk | meat glue, binding enzyme | the carrier may be caseinate: the label decides
sodium-caseinate | sodium caseinate | animal |  | milk | caseinate | no published composition here
skimmed-milk-powder | skimmed milk powder | animal |  | milk | nonfat dry milk, milk powder | no published composition here
whey-powder | whey powder | animal |  | milk |  | no published composition here
egg-white-powder | egg white powder | animal |  | eggs | dried albumen | no published composition here
fish-gelatine | fish gelatine | animal |  | fish | fish gelatin | no published composition here
isinglass | isinglass | animal |  | fish |  | no published composition here
soya-protein | soya protein |  |  | soybeans | soy protein isolate, textured soya | no published composition here
vital-gluten | vital wheat gluten |  |  | gluten:wheat | wheat gluten, seitan powder | no published composition here
agar | agar |  |  |  | agar-agar, E406 | no published composition here
carrageenan | carrageenan |  |  |  | E407 | no published composition here
xanthan | xanthan |  |  |  | xanthan gum, E415 | no published composition here
sodium-ascorbate | sodium ascorbate |  |  |  | vitamin c salt, erythorbate, E301 | no published composition here
monosodium-glutamate | monosodium glutamate |  |  |  | msg, E621 | no published composition here
starter-culture | starter culture |  |  | ?milk | meat culture | what carries it may be milk: the label decides
liquid-smoke | smoke flavouring | liquid |  |  | liquid smoke | no published composition here
smoked-salt | smoked salt |  |  |  |  | no published composition here; mostly salt: count it as salt where salt is weighed
juniper-berries | juniper berries |  | each 0.1, tsp 2 |  | juniper | no published composition here
star-anise | star anise |  | each 1 |  |  | no published composition here
sichuan-pepper | Sichuan pepper |  |  |  | szechuan pepper | no published composition here
pink-peppercorns | pink peppercorns |  |  |  | baies roses | no published composition here; no nut to the law, though kin of the cashew
long-pepper | long pepper |  |  |  |  | no published composition here
quatre-epices | quatre-épices |  | tsp 2 | ?mustard, ?celery | four spices, mixed spice, pâté spice | a blend: the label decides
five-spice | five-spice powder |  | tsp 2 | ?mustard, ?celery, ?gluten | chinese five spice | a blend: the label decides
mustard-seed-whole | mustard seed, whole |  |  | mustard | yellow mustard seed, brown mustard seed | no published composition here; the published row is of ground seed
lovage | lovage, fresh |  |  |  |  | no published composition here; no celery to the law, though kin of it
sorrel | sorrel, fresh |  |  |  |  | no published composition here
lemon-preserved | preserved lemon |  |  | ?sulphites | salted lemon | no published composition here
aubergine-raw | aubergine, raw |  |  |  | eggplant, aubergines | no published composition here
courgette-raw | courgette, raw |  |  |  | zucchini, courgettes | no published composition here
cucumber-raw | cucumber, raw |  |  |  | cucumbers | no published composition here
chilli-fresh | chilli, fresh |  | each 10 |  | fresh chilli, red chilli, green chilli, jalapeño | no published composition here
cauliflower-raw | cauliflower, raw |  |  |  |  | no published composition here
broccoli-raw | broccoli, raw |  |  |  |  | no published composition here
lime-juice | lime juice | liquid |  |  | lime | no published composition here
gooseberries-raw | gooseberries, raw |  |  |  | gooseberry | no published composition here
elderberries-raw | elderberries, raw |  |  |  | elderberry | no published composition here
soya-milk | soya drink | liquid |  | soybeans | soy milk, soya milk | no published composition here
coconut-milk | coconut milk | liquid |  | ?sulphites |  | no published composition here; none of the fourteen, and no US nut by the FDA’s guidance of 2025 (from memory)
vanilla | vanilla |  | each 3 |  | vanilla pod, vanilla extract | no published composition here
turmeric | turmeric, ground |  | tsp 3 |  |  | no published composition here
fenugreek | fenugreek |  |  |  |  | no published composition here
ramsons | wild garlic, fresh |  |  |  | ramsons, wood garlic | no published composition here
cashews | cashew nuts |  |  | nuts:cashews | cashews | no published composition here
brazil-nuts | Brazil nuts |  |  | nuts:Brazil nuts |  | no published composition here
macadamia-nuts | macadamia nuts |  |  | nuts:macadamia nuts | Queensland nuts | no published composition here
khorasan-wheat | Khorasan wheat |  |  | gluten:Khorasan wheat | khorasan | no published composition here
truffle | truffle, black |  |  |  | truffles, périgord truffle, summer truffle | no published composition here
brioche | brioche |  |  | gluten:wheat, milk, eggs |  | no published composition here
shortcrust | shortcrust pastry |  |  | gluten:wheat, ?milk, ?eggs | hot-water crust, pie pastry | no published composition here: your own recipe has its own
praline-paste | praline paste |  |  | nuts:hazelnuts, ?nuts:almonds | noisette paste | no published composition here
stock-cube | stock cube |  | each 10 | ?celery, ?gluten, ?milk, ?soybeans, ?mustard | bouillon cube, stock powder | a compound ingredient: the label decides
anchovy-in-oil | anchovy fillets, in oil |  | each 4 | fish | anchovies in oil, salted anchovy | no published composition here
oysters-raw | oysters, raw, shelled |  |  | molluscs | oyster | no published composition here
lupin-flour | lupin flour |  |  | lupin |  | no published composition here
malt-extract | malt extract |  |  | gluten:barley | barley malt | no published composition here
cornichons-in-vinegar | cornichons, in vinegar |  |  | ?mustard, ?sulphites | small gherkins | no published composition here
quince-paste | quince paste |  |  |  | membrillo | no published composition here
cocoa-powder | cocoa powder |  |  |  | cocoa | no published composition here
`;
