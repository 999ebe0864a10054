import { coupled, type Load, mostPieces } from '../src/core/method/chill-load.ts';
import { type Chilling, chill, largestScale } from '../src/core/method/chilling.ts';
import { heatOfMelting } from '../src/core/properties/freezing.ts';
import type { CoolingRule } from '../src/core/properties/rule.ts';
import { findRule } from '../src/core/properties/rules.ts';
import type { Example, Row } from './case.ts';

/** Conducts so well that it is at one temperature throughout: then everything is known in closed form. */
const metal = { k: 400, rho: 2000, cp: 3000 };
const radius = 0.02;
const area = 4 * Math.PI * radius ** 2;
const store = (metal.rho * metal.cp * 4 * Math.PI * radius ** 3) / 3;
const ball = {
  shape: 'sphere',
  diameter: 2 * radius,
  layers: [{ name: 'ball', material: { properties: metal } }],
} as const;
const meat = {
  shape: 'cylinder',
  diameter: 0.05,
  layers: [{ name: 'meat', material: { properties: { k: 0.48, rho: 1050, cp: 3500 } } }],
} as const;

const rule = findRule('gb-chill-90min-8c') as CoolingRule;
const [from, to, limit] = [63, 8, 90 * 60];
const of = (body: Chilling['body'], medium: number, h: number): Chilling => ({
  body,
  start: 70,
  stage: { name: 'chill', medium, h },
  rules: [rule],
});
const seconds = (chilled: ReturnType<typeof chill>) => chilled.verdicts[0]?.parts[0]?.value ?? Number.NaN;

export const example: Example = {
  title: 'How large a piece, and how many at once',
  story: `The British benchmark, 63 to 8 °C in 90 minutes. Thin pieces that are at one temperature throughout have closed forms: alone in air, under a
machine's even power, and together with water that they warm. What is looked for beyond them, the largest size and the most pieces, follows from
them: in a poor medium the size goes as the time allowed, in a very good one as its root, and pieces go as the power.`,
  equation:
    'alone: t = m·c/(h·A)·ln[(63 − T)/(8 − T)];  even power: t = n·m·c·55/P;  with water: T = T∞ + (70 − T∞)·e^(−n·h·A(1/C_p + 1/C_w)·t)',
  sources: ['own-computation', 'gb-chilling-guidance'],
  run() {
    const row = (
      quantity: string,
      expected: Row['expected'],
      ours: number,
      tolerance: number,
      unit: string,
      why: string,
    ): Row => ({
      quantity,
      source: 'own-computation',
      confidence: 'computed',
      expected,
      ours,
      tolerance,
      unit,
      why,
    });
    const log = (T: number) => Math.log((from - T) / (to - T));
    const alone = (store / (20 * area)) * log(0);

    const [pieces, W] = [100, 500];
    const powered = coupled({ chilling: of(ball, -30, 60), machine: { kind: 'power', W } }, pieces, 'fine');
    const even = (pieces * store * (from - to)) / W;

    const [many, water, cold, h] = [40, 60, 2, 200];
    const bath = coupled(
      { chilling: of(ball, -1, h), machine: { kind: 'ice', ice: 0, water, waterC: cold } },
      many,
      'fine',
    );
    const [all, C] = [many * store, water * 4190];
    const settled = (all * 70 + C * cold) / (all + C);
    const rate = many * h * area * (1 / all + 1 / C);
    const together = Math.log((from - settled) / (to - settled)) / rate;

    const iced: Load = {
      chilling: of(meat, 0.5, 200),
      machine: { kind: 'ice', ice: 6, water: 6, waterC: 8 },
      pieceMass: 1,
    };
    const melted = coupled(iced, 6, 'fine');
    const heat = 3500 * (70 - (melted.result.stages[0]?.mean ?? Number.NaN));

    const small = largestScale(of(ball, 0, 20)).scale ?? Number.NaN;
    const good = of(meat, 0, 20_000);
    const large = largestScale(good).scale ?? Number.NaN;
    const root = Math.sqrt(limit / seconds(chill(good, 'fine')));
    const load = (power: number): Load => ({
      chilling: of(meat, -2, 40),
      machine: { kind: 'power', W: power },
      pieceMass: 0.5,
    });
    const [single, double] = [mostPieces(load(400)).pieces, mostPieces(load(800)).pieces];
    return [
      row(
        'a thin ball alone in air at 0 °C',
        alone,
        seconds(chill(of(ball, 0, 20), 'fine')),
        0.002 * alone,
        's',
        'the ball’s middle is behind its surface by a thousandth',
      ),
      row(
        `${pieces} of them under ${W} W`,
        even,
        seconds(powered),
        0.01 * even,
        's',
        'the air’s course has a corner every few minutes',
      ),
      row(
        'warmest that their air gets',
        70 - W / (pieces * 60 * area),
        powered.peak,
        0.5,
        '°C',
        'the first corner is the mean of its while',
      ),
      row(
        `${many} of them with 60 kg of water at 2 °C`,
        together,
        seconds(bath),
        0.01 * together,
        's',
        'as above',
      ),
      row(
        'ice that a kilogram of meat melts, 70 °C to done',
        heat / heatOfMelting,
        melted.heat / heatOfMelting,
        0.001 * (heat / heatOfMelting),
        'kg',
        'heat given off through the surface against what is missing inside',
      ),
      row(
        'largest thin ball, times its size',
        { low: 0.99 * (limit / alone), high: limit / alone },
        small,
        0.002,
        '',
        'found to half a per cent, rounded down',
      ),
      row(
        'largest roll in a very good medium',
        { low: 0.99 * root, high: root },
        large,
        0.002,
        '',
        'as above',
      ),
      row('pieces at twice the power, to those at once', 2, double / single, 0.1, '', 'whole pieces'),
    ];
  },
};
