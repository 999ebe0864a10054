/**
 * Quantities at the edge: what a person types, in whatever unit, becomes a number in one base unit for each kind;
 * numbers are shown back in the units of the kitchen. Inside the engine everything is SI; the base units here are
 * those of the contract.
 */

/** Base units: mass g, length mm, temperature °C, time min, share %, money in the major unit, number plain. */
export type QuantityKind = 'mass' | 'length' | 'temperature' | 'time' | 'share' | 'money' | 'number';
export type UnitSystem = 'metric' | 'US';

interface Unit {
  /** As it is shown. */
  readonly name: string;
  readonly kind: QuantityKind;
  /** base = typed · factor + offset */
  readonly factor: number;
  readonly offset?: number;
  /** Other spellings, lower case without spaces or dots. */
  readonly typed: readonly string[];
}

/** Exact by definition: international avoirdupois pound 453.59237 g, inch 25.4 mm. */
const POUND_G = 453.59237;

const units: readonly Unit[] = [
  { name: 'g', kind: 'mass', factor: 1, typed: ['g', 'gr', 'gram', 'grams', 'gramme', 'grammes'] },
  { name: 'kg', kind: 'mass', factor: 1_000, typed: ['kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms'] },
  { name: 'mg', kind: 'mass', factor: 0.001, typed: ['mg'] },
  { name: 'lb', kind: 'mass', factor: POUND_G, typed: ['lb', 'lbs', 'pound', 'pounds'] },
  { name: 'oz', kind: 'mass', factor: POUND_G / 16, typed: ['oz', 'ozs', 'ounce', 'ounces'] },
  { name: 'mm', kind: 'length', factor: 1, typed: ['mm'] },
  { name: 'cm', kind: 'length', factor: 10, typed: ['cm'] },
  { name: 'm', kind: 'length', factor: 1_000, typed: ['m', 'metre', 'metres', 'meter', 'meters'] },
  { name: 'µm', kind: 'length', factor: 0.001, typed: ['µm', 'μm', 'um', 'micron', 'microns'] },
  { name: 'in', kind: 'length', factor: 25.4, typed: ['in', 'ins', 'inch', 'inches', '"', '″'] },
  { name: 'ft', kind: 'length', factor: 304.8, typed: ['ft', 'foot', 'feet', "'"] },
  { name: '°C', kind: 'temperature', factor: 1, typed: ['°c', 'c', 'degc', 'celsius', '°'] },
  {
    name: '°F',
    kind: 'temperature',
    factor: 5 / 9,
    offset: -160 / 9,
    typed: ['°f', 'f', 'degf', 'fahrenheit'],
  },
  { name: 's', kind: 'time', factor: 1 / 60, typed: ['s', 'sec', 'secs', 'second', 'seconds'] },
  { name: 'min', kind: 'time', factor: 1, typed: ['min', 'mins', 'minute', 'minutes', 'm'] },
  { name: 'h', kind: 'time', factor: 60, typed: ['h', 'hr', 'hrs', 'hour', 'hours'] },
  { name: 'd', kind: 'time', factor: 1_440, typed: ['d', 'day', 'days'] },
  { name: '%', kind: 'share', factor: 1, typed: ['%', 'pct', 'percent', 'percent.'] },
];

const find = (kind: QuantityKind, typed: string): Unit | undefined =>
  units.find((u) => u.kind === kind && u.typed.includes(typed.toLowerCase().replaceAll(/[\s.]/g, '')));

const named = (kind: QuantityKind, name: string): Unit => {
  const unit = units.find((u) => u.kind === kind && u.name === name);
  if (unit === undefined) throw new RangeError(`no unit ${JSON.stringify(name)} of ${kind}`);
  return unit;
};

/** The unit in which a field shows a kind of quantity [a unit's name]. */
export function usualUnit(kind: QuantityKind, system: UnitSystem): string {
  if (kind === 'mass') return system === 'US' ? 'oz' : 'g';
  if (kind === 'length') return system === 'US' ? 'in' : 'mm';
  if (kind === 'temperature') return system === 'US' ? '°F' : '°C';
  if (kind === 'time') return 'min';
  return kind === 'share' ? '%' : '';
}

/**
 * A base value in another unit of its kind [that unit].
 * Equation: shown = (value − offset)/factor.
 * @example inUnit(453.59237, 'mass', 'oz') // 16
 */
export function inUnit(value: number, kind: QuantityKind, unit: string): number {
  if (unit === '') return value;
  const { factor, offset } = named(kind, unit);
  return (value - (offset ?? 0)) / factor;
}

/**
 * A value in a unit, in the base unit of its kind [g, mm, °C, min or %].
 * Equation: value = shown·factor + offset.
 * @example toBase(165, 'temperature', '°F') // 73.8889
 */
export function toBase(shown: number, kind: QuantityKind, unit: string): number {
  if (unit === '') return shown;
  const { factor, offset } = named(kind, unit);
  return shown * factor + (offset ?? 0);
}

export type Parsed =
  | {
      readonly ok: true;
      readonly value: number;
      readonly unit: string /** Whether the unit was typed. */;
      readonly stated: boolean;
    }
  | { readonly ok: false; readonly message: string };

const no = (message: string): Parsed => ({ ok: false, message });
const vulgar: Record<string, string> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

interface Term {
  readonly value: number;
  /** null: a bare number. */
  readonly unit: Unit | null;
}

class Wrong extends Error {}

/** Reads one expression by recursive descent: sums of products of numbers, each with or without a unit. */
class Reader {
  private i = 0;
  constructor(
    private readonly text: string,
    private readonly kind: QuantityKind,
  ) {}

  read(): Term {
    const term = this.sum();
    this.space();
    if (this.i < this.text.length) throw new Wrong(`“${this.text.slice(this.i)}” is not understood`);
    return term;
  }

  private space(): void {
    while (/\s/.test(this.text[this.i] ?? '')) this.i += 1;
  }

  private take(pattern: RegExp): RegExpExecArray | null {
    this.space();
    const sticky = new RegExp(pattern.source, 'uy');
    sticky.lastIndex = this.i;
    const match = sticky.exec(this.text);
    if (match !== null) this.i = sticky.lastIndex;
    return match;
  }

  private sum(): Term {
    let left = this.product();
    for (;;) {
      const sign = this.take(/[+\-−]/)?.[0];
      if (sign !== undefined) left = this.add(left, this.product(), sign === '+' ? 1 : -1);
      else if (/[\d.(]/.test(this.peek())) left = this.follow(left, this.product());
      else return left;
    }
  }

  private peek(): string {
    this.space();
    return this.text[this.i] ?? '';
  }

  /** `2 lb 3 oz`, `1 h 30`: units that follow one another from large to small. */
  private follow(left: Term, right: Term): Term {
    if (left.unit === null) throw new Wrong('two numbers stand side by side: put + or * between them');
    if (this.kind === 'temperature') throw new Wrong('a temperature is one number');
    const unit = right.unit ?? (left.unit.name === 'h' ? named('time', 'min') : null);
    if (unit === null || unit.factor >= left.unit.factor)
      throw new Wrong('two quantities side by side: put + between them');
    return this.add(left, { value: right.value, unit }, 1);
  }

  private add(a: Term, b: Term, sign: number): Term {
    if (a.unit === b.unit) return { value: a.value + sign * b.value, unit: a.unit };
    if (this.kind === 'temperature') throw new Wrong('a temperature is one number with one unit');
    if (a.unit === null || b.unit === null)
      throw new Wrong('one number has a unit and the other has none: write both');
    return { value: a.value + (sign * b.value * b.unit.factor) / a.unit.factor, unit: a.unit };
  }

  private product(): Term {
    let left = this.factor();
    for (;;) {
      const sign = this.take(/[*×x/÷]/)?.[0];
      if (sign === undefined) return left;
      const right = this.factor();
      if (left.unit !== null && right.unit !== null)
        throw new Wrong('two quantities cannot be multiplied or divided here');
      if (sign === '/' || sign === '÷') {
        if (right.unit !== null) throw new Wrong('a number cannot be divided by a quantity here');
        if (right.value === 0) throw new Wrong('division by zero');
        left = { value: left.value / right.value, unit: left.unit };
      } else left = { value: left.value * right.value, unit: left.unit ?? right.unit };
    }
  }

  private factor(): Term {
    const sign = this.take(/[+\-−]/)?.[0];
    if (sign !== undefined) {
      const inner = this.factor();
      return sign === '+' ? inner : { value: -inner.value, unit: inner.unit };
    }
    if (this.take(/\(/) !== null) {
      const inner = this.sum();
      if (this.take(/\)/) === null) throw new Wrong('a bracket is not closed');
      return this.withUnit(inner);
    }
    const mixed = this.take(/(\d+)\s+(\d+)\/(\d+)(?![\d.])/);
    if (mixed !== null) {
      if (Number(mixed[3]) === 0) throw new Wrong('division by zero');
      return this.withUnit({ value: Number(mixed[1]) + Number(mixed[2]) / Number(mixed[3]), unit: null });
    }
    const digits = this.take(/\d+(?:[.,]\d+)*|[.,]\d+/)?.[0];
    if (digits === undefined)
      throw new Wrong(
        this.peek() === ''
          ? 'a number is missing at the end'
          : `“${this.text.slice(this.i)}” is not a number`,
      );
    if (/^\d+:\d/.test(`${digits}${this.text.slice(this.i)}`))
      throw new Wrong('write a time as 1 h 30 or 90 min');
    return this.withUnit({ value: numberOf(digits), unit: null });
  }

  private withUnit(term: Term): Term {
    const before = this.i;
    const word = this.take(/°\s*[A-Za-z]?|%|["″']|[\p{L}µμ]+\.?/u)?.[0];
    if (word === undefined) return term;
    if (/^[x×]$/i.test(word)) {
      this.i = before;
      return term;
    }
    const unit = find(this.kind, word);
    if (unit === undefined) throw new Wrong(`“${word}” is not a unit ${forKind[this.kind]}`);
    if (term.unit !== null && term.unit !== unit) throw new Wrong('a quantity has one unit');
    return { value: term.value, unit };
  }
}

const forKind: Record<QuantityKind, string> = {
  mass: 'of weight: use g, kg, oz or lb',
  length: 'of length: use mm, cm or in',
  temperature: 'of temperature: use °C or °F',
  time: 'of time: use s, min, h or d',
  share: 'here: use %',
  money: 'here: write the amount alone',
  number: 'here: write a plain number',
};

/** A number as written; what could be either of two numbers is refused. */
function numberOf(digits: string): number {
  if (/^\d{1,3},\d{3}$/.test(digits) && !digits.startsWith('0')) {
    const [whole, rest] = digits.split(',');
    throw new Wrong(`${digits} could be ${whole}.${rest} or ${whole}${rest}: write it without the comma`);
  }
  if (/^\d{1,3}(,\d{3})+(\.\d+)?$/.test(digits) && !digits.startsWith('0,'))
    return Number(digits.replaceAll(',', ''));
  if (/^\d*[.,]?\d+$/.test(digits)) return Number(digits.replace(',', '.'));
  throw new Wrong(`“${digits}” is not a number`);
}

/**
 * What was typed, in the base unit of its kind [g, mm, °C, min, % or none].
 * Takes arithmetic (`3*420g`), mixed units (`2 lb 3 oz`, `1 h 30`), fractions (`5 1/2 in`), a decimal comma, and any unit of the
 * kind; a bare number is in `assumed`. What could mean two things is refused, with what to write instead.
 * Parameters: text as typed; kind; assumed, a unit's name of that kind ('' for plain numbers).
 * @example parseQuantity('3*420g', 'mass') // { ok: true, value: 1260, unit: 'g', stated: true }
 */
export function parseQuantity(
  text: string,
  kind: QuantityKind,
  assumed: string = usualUnit(kind, 'metric'),
): Parsed {
  const spelled = text
    .trim()
    .replaceAll(/[½¼¾⅓⅔⅛⅜⅝⅞]/g, (c) => ` ${vulgar[c]} `)
    .replaceAll('\u00a0', ' ')
    .trim();
  if (spelled === '') return no('nothing was typed');
  if (spelled.length > 200) return no('too long for a number');
  try {
    const term = new Reader(spelled, kind).read();
    const unit = term.unit?.name ?? assumed;
    const value = toBase(term.value, kind, unit);
    if (!Number.isFinite(value)) return no('the number is too large');
    return { ok: true, value, unit, stated: term.unit !== null };
  } catch (error) {
    if (error instanceof Wrong) return no(error.message);
    throw error;
  }
}

/**
 * A number with no more decimals than asked for and no trailing noughts [-].
 * Parameters: value, finite; decimals, 0 to 20.
 * @example plainNumber(71.3982, 1) // '71.4'
 */
export function plainNumber(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  const trimmed = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return trimmed === '-0' ? '0' : trimmed;
}

const decimalsFor = (value: number): number => {
  const size = Math.abs(value);
  if (size === 0 || size >= 100) return 0;
  return size >= 10 ? 1 : size >= 1 ? 2 : 3;
};

/**
 * A quantity as the kitchen reads it [text with its unit], with a sensible number of figures.
 * @example formatQuantity(1350, 'mass', 'metric') // '1.35 kg'
 */
export function formatQuantity(value: number, kind: QuantityKind, system: UnitSystem): string {
  if (!Number.isFinite(value)) return '—';
  if (kind === 'temperature')
    return `${plainNumber(inUnit(value, kind, usualUnit(kind, system)), 1)} ${usualUnit(kind, system)}`;
  if (kind === 'time') return formatTime(value);
  if (kind === 'share') return `${plainNumber(value, decimalsFor(value))} %`;
  if (kind === 'mass' && system === 'metric')
    return Math.abs(value) >= 1_000
      ? `${plainNumber(value / 1_000, 2)} kg`
      : `${plainNumber(value, decimalsFor(value * 10))} g`;
  if (kind === 'mass') {
    const ounces = inUnit(value, kind, 'oz');
    return Math.abs(ounces) >= 16 ? `${plainNumber(ounces / 16, 2)} lb` : `${plainNumber(ounces, 2)} oz`;
  }
  if (kind === 'length') {
    const unit = usualUnit(kind, system);
    return `${plainNumber(inUnit(value, kind, unit), system === 'US' ? 2 : 1)} ${unit}`;
  }
  return plainNumber(value, decimalsFor(value));
}

function formatTime(minutes: number): string {
  if (minutes < 0) return `−${formatTime(-minutes)}`;
  if (minutes > 0 && minutes < 1) return `${plainNumber(minutes * 60, 0)} s`;
  if (minutes < 10) return `${plainNumber(minutes, 1)} min`;
  const whole = Math.round(minutes);
  if (whole < 120) return `${whole} min`;
  if (whole < 2_880)
    return whole % 60 === 0 ? `${whole / 60} h` : `${Math.floor(whole / 60)} h ${whole % 60} min`;
  return `${plainNumber(whole / 1_440, 1)} days`;
}
