import { describe, expect, it } from 'vitest';
import { demoKitchen } from '../../demo/kitchen.ts';
import { layMethod } from '../../test/paper/lay.ts';
import type { Place } from '../contract/records.ts';
import type { Method } from '../contract/steps.ts';
import { methodCautions } from './method-cautions.ts';

const trotter = (): Method => layMethod(demoKitchen.dishes[0]!.versions[1]!.method);
const withCook = (more: object): Method =>
  trotter().map((step) => (step.kind === 'cook' ? ({ ...step, ...more } as Method[number]) : step));

const at = (place: Place) => ({ species: 'pig', part: 'trotter', place });

describe('methodCautions', () => {
  it('has nothing to say of a piece computed as it was filled, cold, by the usual rules', () => {
    const said = methodCautions(trotter(), at('GB-ENG')).join('\n');
    expect(said).not.toMatch(/computed for a piece|right through|no chill|no rule of cooling/);
  });

  it('tells a piece computed slimmer than it is filled', () => {
    const composition = { water: 0.66, protein: 0.15, fat: 0.16, carbohydrate: 0.015, fibre: 0, ash: 0.015 };
    const body = { shape: 'cylinder', diameterMm: 20, layers: [{ name: 'filling', composition }] };
    expect(methodCautions(withCook({ body }), at('GB-ENG')).join()).toMatch(
      /computed for a piece 20 mm thick, and ".*" fills one of \d+ mm: as filled it needs longer/,
    );
  });

  it('tells a start that is warmer than the filling may be', () => {
    expect(methodCautions(withCook({ startC: 60 }), at('GB-ENG')).join()).toMatch(/at 60 °C right through/);
  });

  it('tells a rule of another place, and a chill that answers to none', () => {
    const foreign = withCook({ rules: ['us-poultry-7log-other-12pct-fat'] });
    expect(methodCautions(foreign, at('GB-ENG')).join()).toMatch(/published for United States/);
    expect(methodCautions(foreign, at('US')).join()).not.toMatch(/published for United States/);
    expect(methodCautions(foreign, at('US')).join()).toMatch(/Here: for chicken, .*; this is pig/);
    const bare = trotter().map((s) => (s.kind === 'chill' ? { ...s, rules: [] } : s));
    expect(methodCautions(bare, at('GB-ENG')).join()).toMatch(/held to no rule of cooling/);
    const gone = trotter().filter((s) => s.kind !== 'chill');
    expect(methodCautions(gone, at('GB-ENG')).join()).toMatch(/no chill step stands before it/);
  });
});
