import { v7 as uuid } from 'uuid';
import { beforeAll, expect, it } from 'vitest';
import { addDish } from '../../src/app/dishes.ts';
import { signVersion } from '../../src/app/sign.ts';
import type { CookStep, Method } from '../../src/contract/steps.ts';
import { appOn, cookStep, openKitchen, type TestKitchen, trimStep } from './kitchen.ts';
import { eachStore } from './stores.ts';

/** A bath at 72 °C for two hours: many times 70 °C for 2 min, and never 165 °F. */
const bath = [{ name: 'bath', mediumC: 72, hWm2K: 500, until: { min: 120 } }];

eachStore('signing by the rules of the place', (making) => {
  let gb: TestKitchen;
  let us: TestKitchen;
  let scotland: TestKitchen;
  beforeAll(async () => {
    const app = appOn(await making.fresh());
    gb = await openKitchen(app, 'GB-ENG');
    us = await openKitchen(app, 'US');
    scotland = await openKitchen(app, 'GB-SCT');
  });
  const trim = { ...trimStep, part: 'gizzard' } as Method[number];
  const sign = async (k: TestKitchen, cook: CookStep, species = 'goose', part = 'gizzard') => {
    const dish = await addDish(k.app, k.actor, {
      name: `Dish ${uuid()}`,
      species,
      part,
      story: '',
      method: [species === 'goose' ? trim : ({ ...trimStep, part: 'heart' } as Method[number]), cook],
    });
    return signVersion(k.app, k.actor, dish.current.id, 0);
  };
  const rulesOf = (method: Method) => method.flatMap((s) => (s.kind === 'cook' ? s.rules : []));

  it('a goose at 72 °C is signed in Britain, and refused in the United States by the code’s 165 °F', async () => {
    const signed = await sign(gb, cookStep(0, { stages: bath, rules: [] }));
    expect(rulesOf(signed.method)).toEqual(['gb-70c-2min']);
    await expect(sign(us, cookStep(0, { stages: bath, rules: [] }))).rejects.toThrow(/165 °F/);
    // Naming the rule of another place does not do instead of it.
    await expect(sign(us, cookStep(0, { stages: bath, rules: ['gb-70c-2min'] }))).rejects.toThrow(/165 °F/);
    const hot = await sign(us, cookStep(50, { rules: [] }));
    expect(rulesOf(hot.method)).toEqual(['us-food-code-165f-stuffed']);
  });

  it('the plants’ table may stand for the code’s row, and that a variance is needed is told', async () => {
    const table = cookStep(0, { stages: bath, rules: ['us-poultry-7log-other-12pct-fat'] });
    const signed = await sign(us, table);
    expect(rulesOf(signed.method)).toEqual(['us-poultry-7log-other-12pct-fat']);
    expect(signed.evidence?.cautions.join('\n')).toMatch(/only with a variance from the regulator/);
    // A table for another bird does not do.
    const wrong = cookStep(0, { stages: bath, rules: ['us-poultry-7log-chicken-12pct-fat'] });
    await expect(sign(us, wrong)).rejects.toThrow(/165 °F/);
  });

  it('stuffed heart of lamb is held to the stricter z, whatever it names', async () => {
    const stuffed = { food: { stuffedOrRolled: true } };
    const signed = await sign(
      scotland,
      cookStep(50, { ...stuffed, rules: ['gb-70c-2min'] }),
      'lamb',
      'heart',
    );
    expect(rulesOf(signed.method)).toEqual(['gb-70c-2min', 'gb-70c-2min-comminuted']);
    // 63 °C for half an hour is worth 2 min at 70 °C by z 7.5 °C and not by z 6 °C.
    const low = {
      ...stuffed,
      body: {
        shape: 'cylinder' as const,
        diameterMm: 10,
        layers: [{ name: 'meat', properties: { kWmK: 0.5, rhoKgM3: 1050, cpJkgK: 3500 } }],
      },
      stages: [{ name: 'bath', mediumC: 63, hWm2K: 1000, until: { min: 24 } }],
    };
    await expect(sign(scotland, cookStep(0, low), 'lamb', 'heart')).rejects.toThrow(/z 6 °C/);
    const plain = { ...low, food: { stuffedOrRolled: false, injectedOrTenderised: false } };
    expect((await sign(scotland, cookStep(0, plain), 'lamb', 'heart')).status).toBe('signed');
  });

  it('says whose guideline it is that a cook warms too slowly', async () => {
    const slow = [
      { name: 'warm', mediumC: 45, hWm2K: 500, until: { min: 420 } },
      { name: 'steam', mediumC: 100, hWm2K: 1000, until: { min: 50 } },
    ];
    await expect(sign(gb, cookStep(0, { stages: slow }))).rejects.toThrow(
      /warms too slowly.*American guideline for plants is used in its stead/,
    );
    await expect(sign(us, cookStep(0, { stages: slow }))).rejects.toThrow(
      /warms too slowly(?!.*in its stead)/,
    );
  });

  it('tells a life longer than the earliest limit', async () => {
    const keep = {
      kind: 'keep' as const,
      id: uuid(),
      name: 'Keep',
      how: '',
      handsMin: 0,
      asks: [],
      maxC: 5,
      days: 21,
      packed: 'vacuum-packed' as const,
    };
    const dish = await addDish(gb.app, gb.actor, {
      name: `Dish ${uuid()}`,
      species: 'goose',
      part: 'gizzard',
      story: '',
      method: [trim, cookStep(50), keep],
    });
    const { evidence } = await signVersion(gb.app, gb.actor, dish.current.id, 0);
    expect(evidence?.cautions.join('\n')).toMatch(
      /vacuum-packed for 21 days; the earliest limit gives it \d: Listeria/,
    );
  });
});
