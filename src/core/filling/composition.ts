/** What a filling is made of, as weighed. What is not known stays unknown and is said. */
import { type Composition, normalised } from '../properties/food-components.ts';

export interface WeighedLine {
  /** Weight [kg], 0 or more. */
  readonly mass: number;
  /** Mass fractions, 0–1; undefined where nobody has said. */
  readonly composition?: Composition | undefined;
  /** Salt within the ash, mass fraction of the line; undefined where not known. */
  readonly salt?: number | undefined;
}

export interface Mixture {
  /** Weight of all lines [kg]. */
  readonly mass: number;
  /** Weight of the lines whose composition is known [kg]. */
  readonly known: number;
  /** Of the known lines, mass fractions; null where none is known. It is the mixture's only where `missing` is empty. */
  readonly composition: Composition | null;
  /** Indices of the lines that weigh something and have no composition. */
  readonly missing: readonly number[];
  /** Salt of the lines where it is known [kg]: all of it only where `saltMissing` is empty, else the least there is. */
  readonly salt: number;
  readonly saltMissing: readonly number[];
  /** Salt in the water phase, salt/(salt + water), mass fraction; null unless all lines are known. */
  readonly waterPhaseSalt: number | null;
}

const components = ['water', 'protein', 'fat', 'carbohydrate', 'fibre', 'ash'] as const;

/**
 * Composition of a mixture [mass fractions] from its weighed lines.
 * Equation: x_i = Σ m_j x_ij / Σ m_j over the lines j whose composition is known; salt alike.
 * Parameters: lines, each with mass [kg] ≥ 0, composition summing to 1 ± 0.005 where known, salt 0–1 where known.
 * Assumptions: nothing is lost or taken up in mixing; a line of no weight counts for nothing.
 * Checked: by hand on a mousse of breast, cream, egg white and salt, and by properties (order of lines, splitting a line).
 * @example mixtureOf([{ mass: 1, composition: { water: 1, protein: 0, fat: 0, carbohydrate: 0, fibre: 0, ash: 0 } }]).composition?.water // 1
 * Source: own-computation (conservation of mass).
 */
export function mixtureOf(lines: readonly WeighedLine[]): Mixture {
  const sum = { water: 0, protein: 0, fat: 0, carbohydrate: 0, fibre: 0, ash: 0 };
  let mass = 0;
  let known = 0;
  let salt = 0;
  const missing: number[] = [];
  const saltMissing: number[] = [];
  lines.forEach((line, index) => {
    if (!(line.mass > 0)) return;
    mass += line.mass;
    if (line.salt === undefined) saltMissing.push(index);
    else salt += line.mass * line.salt;
    if (line.composition === undefined) {
      missing.push(index);
      return;
    }
    const food = normalised(line.composition, `lines[${index}].composition`);
    known += line.mass;
    for (const c of components) sum[c] += line.mass * food[c];
  });
  const complete = missing.length === 0 && saltMissing.length === 0 && known > 0;
  return {
    mass,
    known,
    missing,
    salt,
    saltMissing,
    composition: known > 0 ? each((c) => sum[c] / known) : null,
    waterPhaseSalt: complete && salt + sum.water > 0 ? salt / (salt + sum.water) : null,
  };
}

const each = (value: (component: (typeof components)[number]) => number): Composition => ({
  water: value('water'),
  protein: value('protein'),
  fat: value('fat'),
  carbohydrate: value('carbohydrate'),
  fibre: value('fibre'),
  ash: value('ash'),
});

/**
 * What a mixture costs [minor units of money].
 * Equation: C = Σ m_j p_j over the lines j whose price is known.
 * Parameters: lines with mass [kg] ≥ 0 and price [minor units per kg] ≥ 0 or undefined.
 * Assumptions: prices are of what is weighed, trimmed; nothing is lost.
 * Checked: by hand.
 * @example costOf([{ mass: 0.5, pricePerKg: 800 }]).cost // 400
 * Source: own-computation.
 */
export function costOf(
  lines: readonly { readonly mass: number; readonly pricePerKg?: number | undefined }[],
): {
  readonly cost: number;
  /** Indices of the lines that weigh something and have no price: the true cost is higher. */
  readonly missing: readonly number[];
} {
  let cost = 0;
  const missing: number[] = [];
  lines.forEach((line, index) => {
    if (!(line.mass > 0)) return;
    if (line.pricePerKg === undefined) missing.push(index);
    else cost += line.mass * line.pricePerKg;
  });
  return { cost, missing };
}
