/**
 * The limits that the demo's steps ask for, each with its basis said. Figures of law marked "as remembered" were not
 * read again for this program; the local authority has the last word.
 */
import type { DemoAsk } from '../src/app/demo-shape.ts';

export const offalArrival = (label: string): DemoAsk => ({
  kind: 'temperature',
  label,
  high: 3,
  critical: true,
  basis: 'Offal at 3 °C or colder: Regulation (EC) 853/2004, Annex III, section I (figure as remembered).',
});

export const poultryArrival = (label: string): DemoAsk => ({
  kind: 'temperature',
  label,
  high: 4,
  critical: true,
  basis: 'Poultry meat and giblets at 4 °C or colder: Regulation (EC) 853/2004, Annex III, section II.',
});

export const coldMix: DemoAsk = {
  kind: 'temperature',
  label: 'Forcemeat when mixed',
  high: 12,
  basis: 'Below 12 °C so that it binds: common practice, no published source.',
};

export const coreLog: DemoAsk = {
  kind: 'core log',
  label: 'Core at the coldest point, from going in to coming out of the ice',
  critical: true,
  basis: '70 °C for 2 minutes or its equivalent, z 7.5 °C: guidance of the Food Standards Agency.',
};

export const chillLog: DemoAsk = {
  kind: 'core log',
  label: 'Core while chilling, until below 8 °C',
  critical: true,
  basis: 'Below 8 °C within 90 minutes: UK catering guidance, not statute.',
};

export const liftOut: DemoAsk = {
  kind: 'temperature',
  label: 'Core at lifting out, probed at the coldest point',
  low: 70,
  basis: 'A check on the log, not the proof: the time at temperature decides.',
};

export const coldRoom: DemoAsk = {
  kind: 'temperature',
  label: 'Cold room when put away',
  high: 5,
  critical: true,
  basis:
    'The kitchen’s own limit of 5 °C; the law’s is 8 °C: Food Safety and Hygiene (England) Regulations 2013, schedule 4 (as remembered).',
};

export const hotCore: DemoAsk = {
  kind: 'temperature',
  label: 'Core when reheated',
  low: 75,
  critical: true,
  basis: '75 °C at the core when reheating: guidance in England, no statutory figure (as remembered).',
};

export const weighed = (label: string, low?: number, high?: number): DemoAsk => ({
  kind: 'weight',
  label,
  ...(low === undefined ? {} : { low }),
  ...(high === undefined ? {} : { high }),
  ...(low === undefined && high === undefined
    ? {}
    : { basis: 'The kitchen’s own range; outside it the shape changes, and with it the time.' }),
});

export const ticked = (label: string): DemoAsk => ({ kind: 'tick', label });
