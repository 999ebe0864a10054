import { v7 as uuid } from 'uuid';
import { beforeAll, expect, it } from 'vitest';
import { addLot, addPart, listLots, listParts } from '../../src/app/animals.ts';
import { addDish, getDish, getVersion, listDishes, newVersion, saveVersion } from '../../src/app/dishes.ts';
import { addPerson, createKitchen, listKitchens, listPeople } from '../../src/app/kitchens.ts';
import { signVersion } from '../../src/app/sign.ts';
import { addSupplier, listSuppliers } from '../../src/app/suppliers.ts';
import { addTrial, closeTrial, listTrials } from '../../src/app/trials.ts';
import type { CuringSalt } from '../../src/contract/cure-parts.ts';
import { Dish, DishSummary, Kitchen, Trial, Version } from '../../src/contract/records.ts';
import type { CookStep, Method, Step } from '../../src/contract/steps.ts';
import {
  appOn,
  cookStep,
  goodMethod,
  muscle,
  openKitchen,
  signedDish,
  type TestKitchen,
  trimStep,
} from './kitchen.ts';
import { eachStore } from './stores.ts';

const refused = (code: string) => expect.objectContaining({ name: 'AppError', code });

eachStore('a kitchen and its dishes', (making) => {
  let k: TestKitchen;
  let other: TestKitchen;
  beforeAll(async () => {
    const app = appOn(await making.fresh());
    k = await openKitchen(app);
    other = await openKitchen(app, 'US');
  });
  const idea = (method: Method, part = 'heart', species = 'pig') =>
    addDish(k.app, k.actor, { name: `Dish ${uuid()}`, species, part, story: 'A story.', method });

  it('keeps kitchens and people as they were given', async () => {
    expect((await listKitchens(k.app)).map((x) => Kitchen.parse(x).id)).toEqual([
      k.kitchen.id,
      other.kitchen.id,
    ]);
    const cook = await addPerson(k.app, k.actor, { name: 'Ossian Invented', role: 'cook' });
    expect(await listPeople(k.app, k.kitchen.id)).toEqual([k.person, cook]);
    await expect(
      createKitchen(k.app, {
        name: 'X',
        place: 'EU',
        zone: 'Middle/Earth',
        currency: 'EUR',
        units: 'metric',
        person: 'Y',
      }),
    ).rejects.toEqual(refused('invalid'));
  });

  it('lets nobody write who is not of the kitchen, nor an auditor', async () => {
    const stranger = { kitchenId: k.kitchen.id, personId: other.person.id };
    await expect(addSupplier(k.app, stranger, { name: 'S', note: '' })).rejects.toEqual(refused('unsigned'));
    await expect(
      addSupplier(k.app, { ...k.actor, personId: uuid() }, { name: 'S', note: '' }),
    ).rejects.toEqual(refused('unsigned'));
    const auditor = await addPerson(k.app, k.actor, { name: 'Ada Invented', role: 'auditor' });
    await expect(
      addSupplier(k.app, { ...k.actor, personId: auditor.id }, { name: 'S', note: '' }),
    ).rejects.toEqual(refused('forbidden'));
    await expect(
      addSupplier(k.app, { ...k.actor, kitchenId: uuid() }, { name: 'S', note: '' }),
    ).rejects.toEqual(refused('not_found'));
    expect(await listSuppliers(k.app, k.kitchen.id)).toEqual([]);
  });

  it('keeps what comes in, and refuses a second lot of one code, or a lot of somebody else’s supplier', async () => {
    const supplier = await addSupplier(k.app, k.actor, { name: 'Supplier', note: 'Fridays.' });
    const part = await addPart(k.app, k.actor, { species: 'pig', name: 'heart', sharePct: 0.4, use: 'menu' });
    const lot = {
      code: 'L1',
      supplierId: supplier.id,
      partId: part.id,
      what: 'Hearts',
      grams: 1234.5,
      arrivedAt: '2026-11-19T09:00:00.000Z',
      arrivalC: 2.5,
      note: '',
    };
    const kept = await addLot(k.app, k.actor, lot);
    expect(await listSuppliers(k.app, k.kitchen.id)).toEqual([supplier]);
    expect(await listParts(k.app, k.kitchen.id)).toEqual([part]);
    expect(await listLots(k.app, k.kitchen.id)).toEqual([{ id: kept.id, ...lot }]);
    await expect(addLot(k.app, k.actor, lot)).rejects.toEqual(refused('conflict'));
    await expect(
      addPart(k.app, k.actor, { species: 'pig', name: 'heart', sharePct: null, use: 'kitchen' }),
    ).rejects.toEqual(refused('conflict'));
    const theirs = await addSupplier(other.app, other.actor, { name: 'Theirs', note: '' });
    await expect(addLot(k.app, k.actor, { ...lot, code: 'L2', supplierId: theirs.id })).rejects.toEqual(
      refused('invalid'),
    );
    expect(await listLots(other.app, other.kitchen.id)).toEqual([]);
  });

  it('begins a dish as an idea with one draft, and shows it as the contract says', async () => {
    const dish = await idea(goodMethod());
    expect(Dish.parse(dish)).toEqual(dish);
    expect(dish).toMatchObject({
      stage: 'idea',
      versionCount: 1,
      signedVersion: null,
      current: { number: 1, rev: 0, status: 'draft' },
    });
    expect(dish.current.method).toEqual(goodMethod());
    const listed = (await listDishes(k.app, k.kitchen.id)).find((d) => d.id === dish.id);
    expect(DishSummary.parse(listed)).toMatchObject({ stepKinds: ['trim', 'cook'], law: { status: 'food' } });
    await expect(getDish(other.app, other.kitchen.id, dish.id)).rejects.toEqual(refused('not_found'));
    const twice = goodMethod();
    await expect(idea([twice[0]!, twice[0]!])).rejects.toEqual(refused('invalid'));
  });

  it('saves a draft from the count the edit started from, and tells who was faster', async () => {
    const { current } = await idea(goodMethod());
    const next = [trimStep, cookStep(60)];
    const saved = await saveVersion(k.app, k.actor, current.id, { rev: 0, method: next });
    expect(saved).toMatchObject({ rev: 1, method: next });
    const late = saveVersion(k.app, k.actor, current.id, { rev: 0, method: [] });
    await expect(late).rejects.toEqual(refused('conflict'));
    await expect(late).rejects.toThrow(/Petra Invented saved this draft at 2026-11-2/);
    expect((await getVersion(k.app, k.kitchen.id, current.id)).method).toEqual(next);
    const saves = await k.app.store.session((s) =>
      s.query('SELECT rev FROM version_save WHERE version_id = $1 ORDER BY rev', [current.id]),
    );
    expect(saves).toEqual([{ rev: 0 }, { rev: 1 }]);
  });

  it('lets one of two simultaneous saves win', async () => {
    const { current } = await idea(goodMethod());
    const both = await Promise.allSettled(
      [10, 20].map((min) =>
        saveVersion(k.app, k.actor, current.id, { rev: 0, method: [trimStep, cookStep(min)] }),
      ),
    );
    expect(both.map((r) => r.status).sort()).toEqual(['fulfilled', 'rejected']);
    expect(both.find((r) => r.status === 'rejected')).toMatchObject({ reason: { code: 'conflict' } });
  });

  it('signs with the engine’s evidence, and freezes', async () => {
    const { dish, version } = await signedDish(k);
    expect(Version.parse(version)).toMatchObject({ status: 'signed', signedBy: 'Petra Invented' });
    expect(version.evidence?.verdicts).toHaveLength(1);
    const [verdict] = version.evidence!.verdicts;
    expect(verdict).toMatchObject({ stepName: 'Steam', passes: true, neededMin: 2, referenceC: 70, zC: 7.5 });
    expect(verdict!.lethalityMin).toBeGreaterThan(2);
    expect(verdict!.warmestC).toBeGreaterThan(90);
    expect(await getDish(k.app, k.kitchen.id, dish.id)).toMatchObject({ stage: 'signed', signedVersion: 1 });
    await expect(saveVersion(k.app, k.actor, version.id, { rev: 0, method: [] })).rejects.toEqual(
      refused('frozen'),
    );
    await expect(signVersion(k.app, k.actor, version.id, 0)).rejects.toEqual(refused('frozen'));
    await expect(
      k.app.store.session((s) => s.query("UPDATE version SET method = '[]' WHERE id = $1", [version.id])),
    ).rejects.toThrow(/frozen/);
    const second = await newVersion(k.app, k.actor, dish.id, { reason: 'Shorter.' });
    expect(second).toMatchObject({ number: 2, status: 'draft', method: version.method, reason: 'Shorter.' });
    await expect(newVersion(k.app, k.actor, dish.id, { reason: 'Again.' })).rejects.toEqual(
      refused('conflict'),
    );
    expect((await getDish(k.app, k.kitchen.id, dish.id)).signedVersion).toBe(1);
  });

  it('brings an older version back as a new one, and overwrites nothing', async () => {
    const { dish, version } = await signedDish(k);
    const second = await newVersion(k.app, k.actor, dish.id, { reason: 'Longer.' });
    const longer = [trimStep, cookStep(55)];
    await saveVersion(k.app, k.actor, second.id, { rev: 0, method: longer });
    await signVersion(k.app, k.actor, second.id, 1);
    const third = await newVersion(k.app, k.actor, dish.id, { reason: 'It was better.', from: version.id });
    expect(third).toMatchObject({ number: 3, status: 'draft', method: version.method });
    expect((await getVersion(k.app, k.kitchen.id, second.id)).method).toEqual(longer);
    const other = await signedDish(k);
    await expect(
      newVersion(k.app, k.actor, other.dish.id, { reason: 'Of another.', from: version.id }),
    ).rejects.toEqual(refused('conflict'));
  });

  it('refuses to sign a draft that was saved in between', async () => {
    const { current } = await idea(goodMethod());
    await saveVersion(k.app, k.actor, current.id, { rev: 0, method: goodMethod() });
    await expect(signVersion(k.app, k.actor, current.id, 0)).rejects.toEqual(refused('conflict'));
  });

  it('refuses to sign what is not safe at the coldest point', async () => {
    const short = await idea([trimStep, cookStep(20)]);
    const tooShort = signVersion(k.app, k.actor, short.current.id, 0);
    await expect(tooShort).rejects.toEqual(refused('unsafe'));
    await expect(tooShort).rejects.toThrow(/"Steam": 0\.\d\d min at 70 °C/);
    expect((await getVersion(k.app, k.kitchen.id, short.current.id)).status).toBe('draft');
    // A target that asks for nothing does not make it safe: the rule it names does not hold either.
    const lax = await idea([trimStep, cookStep(20, { target: { referenceC: 70, zC: 7.5, min: 0.000001 } })]);
    await expect(signVersion(k.app, k.actor, lax.current.id, 0)).rejects.toEqual(refused('unsafe'));
    // Nor does naming no rule at all.
    const none = await idea([
      trimStep,
      cookStep(20, { target: { referenceC: 70, zC: 7.5, min: 0.000001 }, rules: [] }),
    ]);
    await expect(signVersion(k.app, k.actor, none.current.id, 0)).rejects.toEqual(refused('unsafe'));
    // Nor a rule that speaks of something else than cooking.
    for (const rule of ['gb-chill-90min-8c', 'us-trichinella-heating', 'gb-cold-hold-8c']) {
      const beside = cookStep(20, { target: { referenceC: 70, zC: 7.5, min: 0.000001 }, rules: [rule] });
      const { current } = await idea([trimStep, beside]);
      await expect(signVersion(k.app, k.actor, current.id, 0), rule).rejects.toThrow(/70 °C for 2 minutes/);
    }
    const stages = [{ name: 'fry', mediumC: 90, hWm2K: 500, until: { coldestC: 92, atMostMin: 120 } }];
    const never = await idea([trimStep, cookStep(50, { stages })]);
    await expect(signVersion(k.app, k.actor, never.current.id, 0)).rejects.toThrow(/"fry" is not reached/);
  });

  it('refuses what only looks cooked: by a lax target, from frozen, warmed too slowly', async () => {
    const tried = async (more: Partial<CookStep>, min = 50) => {
      const { current } = await idea([trimStep, cookStep(min, more)]);
      return signVersion(k.app, k.actor, current.id, 0).then(
        () => 'signed',
        (e: { code: string; message: string }) => `${e.code}: ${e.message}`,
      );
    };
    // Warm at the start, cooled, seared: by z 50 °C the well-cooked surface is the point that got least.
    const seared = {
      body: {
        shape: 'cylinder' as const,
        diameterMm: 150,
        layers: [{ name: 'meat', composition: muscle }],
      },
      startC: 60,
      stages: [
        { name: 'cool', mediumC: 5, hWm2K: 20, until: { min: 120 } },
        { name: 'sear', mediumC: 180, hWm2K: 300, until: { min: 12 } },
      ],
      target: { referenceC: 50, zC: 50, min: 1 },
    };
    expect(await tried(seared)).toMatch(/^unsafe: .*70 °C for 2 minutes/);
    const constant = {
      shape: 'cylinder' as const,
      diameterMm: 40,
      layers: [{ name: 'meat', properties: { kWmK: 0.48, rhoKgM3: 1050, cpJkgK: 3500 } }],
    };
    expect(await tried({ startC: -2, body: constant })).toMatch(
      /^unsafe: .*not known .*constant properties know no ice/,
    );
    const slow = [
      { name: 'warm', mediumC: 45, hWm2K: 500, until: { min: 420 } },
      { name: 'steam', mediumC: 100, hWm2K: 1000, until: { min: 50 } },
    ];
    expect(await tried({ stages: slow })).toMatch(/^unsafe: .*warms too slowly/);
    expect(await tried({ asks: [] })).toMatch(/^unfinished: .*no measurement of the core/);
    const low = { id: uuid(), kind: 'temperature' as const, label: 'Core', low: 40, critical: true };
    expect(await tried({ asks: [low] })).toMatch(/^unfinished: .*no measurement of the core/);
    expect(await tried({ asks: [{ ...low, low: 75 }] })).toBe('signed');
  });

  it('says with the signature what the kitchen set for itself and what the method leaves open', async () => {
    const chill = {
      kind: 'chill' as const,
      id: uuid(),
      name: 'Chill',
      how: '',
      handsMin: 0,
      asks: [],
      stages: [{ name: 'ice', mediumC: 1, hWm2K: 400, until: { warmestC: 5 } }],
      rules: [],
    };
    const keep = {
      kind: 'keep' as const,
      id: uuid(),
      name: 'Keep',
      how: '',
      handsMin: 0,
      asks: [],
      maxC: 12,
      days: 21,
      packed: 'vacuum-packed' as const,
    };
    const signed = async (method: Method) =>
      (await signVersion(k.app, k.actor, (await idea(method)).current.id, 0)).evidence?.cautions.join('\n');
    const own = { target: { referenceC: 50, zC: 50, min: 1 }, rules: ['us-food-code-145f-whole'] };
    const laxly = await signed([trimStep, cookStep(50, own), keep]);
    expect(laxly).toMatch(
      /target of the kitchen’s own, 1 min at 50 °C \(z 50 °C\), which is less than 70 °C/,
    );
    expect(laxly).toMatch(/145 °F .*published for United States.*not poultry, not stuffed, not minced/);
    expect(laxly).toMatch(/no chill step stands before it/);
    expect(laxly).toMatch(/"Keep" allows 12 °C; Kept cold at 8 °C or below/);
    expect(laxly).toMatch(/vacuum-packed for 21 days/);
    const plainly = await signed([trimStep, cookStep(50), chill, { ...keep, maxC: 3, days: 3 }]);
    expect(plainly).toMatch(/"Chill" is held to no rule of cooling/);
    expect(plainly).not.toMatch(/kitchen’s own|no chill step|published for|vacuum/);
  });

  it('refuses to sign what is not finished, and says what is missing', async () => {
    const code = async (method: Method) => {
      const { current } = await idea(method);
      return signVersion(k.app, k.actor, current.id, 0).then(
        () => 'signed',
        (e: { code: string; message: string }) => `${e.code}: ${e.message}`,
      );
    };
    expect(await code([])).toMatch(/^unfinished: .*no steps/);
    expect(await code([trimStep])).toMatch(/^unsafe: The heart of pig is never cooked/);
    expect(await code([trimStep, cookStep(50, { stages: [] })])).toMatch(/^unfinished: .*no stages/);
    const logged = { ...trimStep, asks: [{ id: uuid(), kind: 'core log' as const, label: 'Core' }] };
    expect(await code([logged, cookStep(50)])).toMatch(/^unfinished: .*names no rule/);
    expect(await code([trimStep, cookStep(50, { rules: [] })])).toBe('signed');
    expect(await code([trimStep, cookStep(50, { rules: ['no-such-rule'] })])).toMatch(
      /^unfinished: .*no-such-rule/,
    );
    // A shape that contradicts itself reaches the engine, which says where.
    const skins = [
      { name: 'skin', thicknessMm: 40, composition: muscle },
      { name: 'meat', composition: muscle },
    ];
    expect(
      await code([trimStep, cookStep(50, { body: { shape: 'cylinder', diameterMm: 50, layers: skins } })]),
    ).toMatch(/^unsafe: /);
  });

  it('refuses to sign what the law stops or does not know', async () => {
    const code = async (species: string, part: string, kitchen = k) => {
      const { current } = await addDish(kitchen.app, kitchen.actor, {
        name: 'D',
        species,
        part,
        story: '',
        method: goodMethod(),
      });
      return signVersion(kitchen.app, kitchen.actor, current.id, 0).then(
        () => 'signed',
        (e: { code: string }) => e.code,
      );
    };
    expect(await code('goose', 'head')).toBe('unlawful');
    expect(await code('swan', 'neck')).toBe('unlawful');
    expect(await code('pig', 'heart and lungs', other)).toBe('unlawful');
    expect(await code('pig', 'heart')).toBe('signed');
    const trimmed = { ...trimStep, part: 'eyes' } as typeof trimStep;
    const { current } = await idea([trimmed, cookStep(50)], 'head');
    await expect(signVersion(k.app, k.actor, current.id, 0)).rejects.toEqual(refused('unlawful'));
  });

  it('refuses to sign more nitrite than the law lets in, or nitrite of which no limit is known', async () => {
    const sign = async (gPerKg: number, product: CuringSalt['product']) => {
      const cure: Step = {
        kind: 'cure',
        id: uuid(),
        name: 'Cure',
        how: '',
        handsMin: 5,
        asks: [],
        by: 'dry cure',
        saltPct: 3,
        h: 24,
        mediumC: 3,
        curingSalt: { gPerKg, nitritePct: 0.6, product },
      };
      const { current } = await idea([trimStep, cure, cookStep(50)]);
      return signVersion(k.app, k.actor, current.id, 0).then(
        () => 'signed',
        (e: { code: string }) => e.code,
      );
    };
    expect(await sign(20, 'meat product')).toBe('signed');
    expect(await sign(30, 'meat product')).toBe('unlawful');
    expect(await sign(5, 'traditional cured product')).toBe('unlawful');
  });

  it('begins and closes a trial once', async () => {
    const dish = await idea(goodMethod());
    const elsewhere = await idea(goodMethod());
    await expect(
      addTrial(k.app, k.actor, dish.id, { versionId: elsewhere.current.id, name: 'T', expect: '' }),
    ).rejects.toEqual(refused('invalid'));
    const trial = await addTrial(k.app, k.actor, dish.id, {
      versionId: dish.current.id,
      name: 'First',
      expect: 'Tender.',
    });
    expect(Trial.parse(trial)).toMatchObject({ versionNumber: 1, conclusion: null, closedAt: null });
    expect((await getDish(k.app, k.kitchen.id, dish.id)).stage).toBe('in trial');
    const closed = await closeTrial(k.app, k.actor, trial.id, { conclusion: 'Dry.' });
    expect(await listTrials(k.app, k.kitchen.id, dish.id)).toEqual([closed]);
    await expect(closeTrial(k.app, k.actor, trial.id, { conclusion: 'Not dry.' })).rejects.toEqual(
      refused('frozen'),
    );
  });
});
