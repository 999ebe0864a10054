import type { StageInput } from '../../../contract/body.ts';
import { brineFor } from '../../../contract/method-cure.ts';
import type { Step } from '../../../contract/steps.ts';
import { surroundingsInWords } from '../../../documents/surroundings-in-words.ts';
import { say, sayNaturally, type Units } from './measures.ts';

const heat = (C: number, units: Units) => sayNaturally('temperature', units, C);

function stageWords(stage: StageInput, units: Units): string {
  const { until } = stage;
  const medium =
    stage.mediumLog !== undefined
      ? 'as its log says'
      : stage.mediumC === undefined
        ? ''
        : `at ${heat(stage.mediumC, units)}`;
  const most =
    'atMostMin' in until && until.atMostMin !== undefined ? `, ${say(until.atMostMin, 'min')} at most` : '';
  const end =
    'min' in until
      ? `${say(until.min, 'min')}`
      : 'coldestC' in until
        ? `until the coldest point is at ${heat(until.coldestC, units)}${most}`
        : 'warmestC' in until
          ? `until the warmest point is at ${heat(until.warmestC, units)}${most}`
          : `until the coldest point has had ${say(until.lethalityMin, 'min')}${most}`;
  const beside = surroundingsInWords(stage, (C) => heat(C, units));
  return [medium, ...beside, end].filter((w) => w !== '').join(', ');
}

/** What is to be done, in the figures of the signed method. */
export function Programme({ step, units }: { readonly step: Step; readonly units: Units }) {
  const figures = figuresOf(step, units);
  const stages = step.kind === 'cook' || step.kind === 'chill' ? step.stages : [];
  if (figures.length === 0 && stages.length === 0) return null;
  return (
    <dl className="programme">
      {stages.map((s, i) => (
        <div key={`${s.name} ${i}`}>
          <dt>{s.name}</dt>
          <dd>{stageWords(s, units)}</dd>
        </div>
      ))}
      {figures.map(([name, words]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{words}</dd>
        </div>
      ))}
    </dl>
  );
}

function figuresOf(step: Step, units: Units): [string, string][] {
  const grams = (g: number) => sayNaturally('weight', units, g);
  const time = (min: number) => sayNaturally('duration', units, min);
  switch (step.kind) {
    case 'trim':
      return [
        ['Part', step.part],
        ['Before trimming', grams(step.weightG)],
      ];
    case 'cure': {
      const of = {
        'dry cure': 'of the meat’s weight',
        brine: 'of the brine',
        equilibrium: 'of meat and water together',
      }[step.by];
      const { saltKg, waterKg } = brineFor(step);
      const { rest, curingSalt } = step;
      return [
        ['Salt', `${step.saltPct} % ${of}`],
        [
          'To a kilogram of meat',
          `${waterKg > 0 ? `${grams(waterKg * 1000)} water, ` : ''}${grams(saltKg * 1000)} salt`,
        ],
        ...(curingSalt === undefined
          ? []
          : [
              ['Curing salt in it', `${curingSalt.gPerKg} g/kg, ${curingSalt.nitritePct} % nitrite`] as [
                string,
                string,
              ],
            ]),
        ['For', `${step.h} h at ${heat(step.mediumC, units)}`],
        ...(rest === undefined
          ? []
          : [['Then, salt off', `${rest.h} h at ${heat(rest.mediumC, units)}`] as [string, string]]),
      ];
    }
    case 'rinse and dry':
      return [
        ['Rinse', time(step.rinseMin)],
        ['Dry', time(step.dryMin)],
      ];
    case 'mix':
      return [
        ...step.lines.map((l): [string, string] => [l.ingredient, grams(l.g)]),
        ['Keep below', heat(step.maxC, units)],
      ];
    case 'fill':
      return [
        ['Casing', step.casing],
        ['In each piece', grams(step.gramsPerPiece)],
      ];
    case 'wrap':
      return [['Wrap', `${step.material}, ${step.layers} ${step.layers === 1 ? 'layer' : 'layers'}`]];
    case 'cook':
      return [
        ['Going in at', heat(step.startC, units)],
        [
          'The coldest point must get',
          `${say(step.target.min, 'min')} at ${heat(step.target.referenceC, units)}, or as much at another heat`,
        ],
      ];
    case 'keep':
      return [
        ['Keep at most at', heat(step.maxC, units)],
        ['For at most', `${step.days} ${step.days === 1 ? 'day' : 'days'}, ${step.packed}`],
      ];
    case 'finish':
      return [
        [step.by, `${heat(step.mediumC, units)}, ${time(step.min)}`],
        ...(step.coreC === undefined ? [] : [['Core', heat(step.coreC, units)] as [string, string]]),
      ];
    case 'plate':
      return [['A portion', grams(step.portionG)]];
    default:
      return [];
  }
}
