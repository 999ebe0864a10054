/** What a limit costs, in words. */
import type { LimitCost, MakeGoal } from '../../../../contract/make-it-question.ts';

const parts: Record<Exclude<MakeGoal, 'cheaper' | 'better bound'>, string> = {
  leaner: 'fat',
  'less salty': 'salt',
};
const figure = (v: number) => String(Number(v.toPrecision(2)));

/** "One point less fat would cost about £0.14 a kilogram." Slopes: they hold for a small step. */
export function limitCostWords(cost: LimitCost, goal: MakeGoal, money: (minor: number) => string): string {
  const tenth = cost.name === 'water to protein' || cost.name === 'salt';
  const more = cost.side === 'low' ? 'more' : 'less';
  const step =
    cost.name === 'cost'
      ? `A limit on cost 0.10 ${more}`
      : cost.name === 'water to protein'
        ? `A tenth ${more} of water to protein`
        : cost.name === 'salt'
          ? `A tenth of a point ${more} of salt`
          : `One point ${more} of ${cost.name}`;
  const each = cost.each * (cost.name === 'cost' ? 10 : tenth ? 0.1 : 1);
  const adds =
    goal === 'cheaper'
      ? `would cost about ${each >= 0.5 ? money(each) : 'less than a hundredth of the coin'} a kilogram`
      : goal === 'better bound'
        ? `would cost ${figure(each)}`
        : `would leave about ${figure(each)} points more ${parts[goal]}`;
  return `${step} ${adds}${cost.hard === null ? '' : ` (not for the taking: ${cost.hard})`}.`;
}
