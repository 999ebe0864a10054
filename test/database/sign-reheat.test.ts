/** A finish step with a programme is run by the engine before a version is signed. */
import { v7 as uuid } from 'uuid';
import { expect, it } from 'vitest';
import { addDish } from '../../src/app/dishes.ts';
import { AppError } from '../../src/app/errors.ts';
import { signVersion } from '../../src/app/sign.ts';
import type { FinishStep, Method, Step } from '../../src/contract/steps.ts';
import { appOn, cookStep, openKitchen, type TestKitchen } from './kitchen.ts';
import { eachStore } from './stores.ts';

const keep: Step = {
  kind: 'keep',
  id: uuid(),
  name: 'Hold',
  how: '',
  handsMin: 0,
  asks: [],
  maxC: 3,
  days: 2,
  packed: 'open or covered',
};
const finish = (min: number): FinishStep => ({
  kind: 'finish',
  id: uuid(),
  name: 'Warm through',
  how: '',
  handsMin: 0,
  asks: [],
  by: 'bath',
  mediumC: 85,
  min,
  stages: [{ name: 'bath', mediumC: 85, hWm2K: 500, until: { min } }],
});
const drafted = (k: TestKitchen, method: Method) =>
  addDish(k.app, k.actor, {
    name: `Heart ${uuid().slice(-6)}`,
    species: 'pig',
    part: 'heart',
    story: '',
    method,
  });

eachStore('signing what is warmed through', (making) => {
  it('is refused where the prediction does not hold, and kept with the signature where it does', async () => {
    const k = await openKitchen(appOn(await making.fresh()), 'GB-SCT');
    const short = await drafted(k, [cookStep(50), keep, finish(12)]);
    const refused = await signVersion(k.app, k.actor, short.current.id, 0).then(
      () => null,
      (error: unknown) => error,
    );
    expect(refused).toBeInstanceOf(AppError);
    expect((refused as AppError).code).toBe('unsafe');
    expect((refused as AppError).problems.map((p) => p.path)).toContain('method[2].rules');

    const long = await drafted(k, [cookStep(50), keep, finish(60)]);
    const signed = await signVersion(k.app, k.actor, long.current.id, 0);
    const [warmed] = signed.evidence?.reheats ?? [];
    expect(warmed?.startC).toBe(3);
    expect(warmed?.coldestC).toBeGreaterThan(82);
    expect(warmed?.rules.map((r) => [r.rule, r.passes])).toContainEqual(['scotland-reheat-82c', true]);
    expect(signed.method.find((s) => s.kind === 'finish')?.rules).toContain('scotland-reheat-82c');
  });
});
