/** Problems of freezing that the narrated cases and the engine's own tests share, so that each stands once. */

/** Lean chicken of known composition; its conductivity was measured, W/(m K), frozen from −75 to −10 °C. */
export const breast = {
  water: 0.7426,
  protein: 0.22054,
  fat: 0.02568,
  carbohydrate: 0,
  fibre: 0,
  ash: 0.01117,
};
export const measuredFrozenChicken = (C: number) => 1.07 - 0.0149 * C - 1.04e-4 * C * C;

/** The handbook's specific heats below freezing [kJ/(kg K)], from memory. */
export const printedFrozenHeats = {
  'pork shoulder, lean': 2.2,
  'lamb, lean': 2.14,
  'beef carcass': 2.24,
  'beef liver': 2.16,
  cod: 2.14,
} as const;

/** A sphere of 70 mm, 0.72 h in a textbook (from memory). */
export const plankSphere = {
  shape: 'sphere',
  half: 0.035,
  h: 50,
  k: 1.2,
  density: 1000,
  latent: 250e3,
  freezing: -1.25,
  medium: -40,
} as const;

export const phamCylinder = {
  shape: 'cylinder',
  half: 0.02,
  h: 30,
  k: 1.4,
  unfrozenDensity: 1050,
  unfrozenHeat: 3500,
  frozenDensity: 980,
  frozenHeat: 2000,
  latent: 220e3,
  start: 5,
  end: -18,
  medium: -35,
} as const;
