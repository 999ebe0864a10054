/** What the validation report says in its own voice. */

export const preface = `Fifth Quarter predicts how a piece of meat heats, cools, freezes, takes up salt and lets organisms die or grow. This page holds
those predictions against what others have published, one number at a time: what was asked, what the source says, what the
program says, by how much they differ, how much is allowed and why, and how we had the source's number: read in it, read in a copy,
remembered, or worked out again from its equation. A number that is *only remembered* is a weaker check, and is counted apart.

It is written by the program's own test run (\`node scripts/examples.mjs --report\`), which fails when a number moves out of what is allowed
or when this page no longer says what the run found. \`npm run examples\` prints the same on your machine. The scripts that worked out the
numbers marked *equation* are in [examples/independent](../examples/independent); they use none of the program's code.

**What this page cannot show.** A check of arithmetic is not a check of your kitchen. Agreement here means that the program solves the
published equations and reproduces the published figures; whether your steamer, your piece and your probe are what you told it, only a
probe in the coldest place can say. The program advises; your local authority and qualified people decide.`;

/** What nobody has checked, or what could not be. */
export const notValidated: readonly string[] = [
  'No probe log of a real kitchen stands behind any number here. All logs in the program’s demo are invented and are used for no check.',
  'Heating was not held against a measured piece: no published heating curve of meat was found that gives shape, composition, start, medium and coefficient. Cooling of cooked beef was, to within a fifth, with composition and outline guessed.',
  'What a surface really gets in a steamer, a combi or an oven is known only as ranges in the literature. Equations for it were checked as arithmetic, not in an appliance.',
  'Freezing and thawing times were held against published methods and other programs, not against measured pieces.',
  'Salt was held against exact series with a published diffusivity of pork; no measured profile of salt in a cured piece, and no measurement of poultry skin at all.',
  'Growth was held against one set of measured cooling trials, in which it comes out too high in every case; how long an organism waits before it grows is a setting, not a published number.',
  'Loss of juice and colour are published models of beef and chicken; they were checked as arithmetic and beside a few measured yields, not for the dishes of this kitchen.',
  'What the law says of a part is not computed and so not checked here: each entry says where it was read, and the word of the authority decides.',
  'Many of the handbooks’ figures are from memory. They are counted apart above; whoever has the books may read them again.',
];
