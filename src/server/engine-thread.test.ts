import { afterEach, describe, expect, it } from 'vitest';
import { type EngineThread, openEngineThread } from './engine-thread.ts';

const sphere = (min: number, frames = 30) => ({
  body: {
    shape: 'sphere',
    diameterMm: frames,
    layers: [{ name: 'meat', properties: { kWmK: 0.5, rhoKgM3: 1050, cpJkgK: 3500 } }],
  },
  startC: 5,
  stages: [{ name: 'water', mediumC: 90, hWm2K: 500, until: { min } }],
  target: { referenceC: 70, zC: 7.5, min: 2 },
});

describe('openEngineThread', () => {
  let engine: EngineThread;
  afterEach(() => engine.close());

  it('answers as the engine does, refusals with their problems, and goes on after one', async () => {
    engine = openEngineThread();
    const good = (await engine.cook(sphere(30))) as { lethality: { passes: boolean } };
    expect(good.lethality.passes).toBe(true);
    await expect(engine.cook({ ...sphere(30), startC: 'cold' })).rejects.toMatchObject({
      name: 'AppError',
      code: 'invalid',
      problems: [{ path: 'startC', found: '"cold"' }],
    });
    await expect(
      engine.judge({
        log: [
          { min: 0, C: 71 },
          { min: 3, C: 71 },
        ],
        rules: ['gb-70c-2min'],
      }),
    ).resolves.toMatchObject([{ passes: true }]);
  });

  it('keeps the caller’s thread free', async () => {
    engine = openEngineThread();
    await engine.cook(sphere(1));
    let turns = 0;
    let busy = true;
    const spin = () => {
      turns++;
      if (busy) setImmediate(spin);
    };
    spin();
    await Promise.all([engine.cook(sphere(200)), engine.cook(sphere(200))]);
    busy = false;
    expect(turns).toBeGreaterThan(2);
  });

  it('stops what takes too long, says so, and takes the next task in a new thread', async () => {
    engine = openEngineThread({ taskMs: 1, queue: 64 });
    await expect(engine.cook(sphere(2_000, 900))).rejects.toMatchObject({ code: 'unavailable' });
    await engine.close();
    engine = openEngineThread({ taskMs: 60_000, queue: 64 });
    await expect(engine.cook(sphere(1))).resolves.toBeDefined();
  });

  it('turns away what it cannot queue', async () => {
    engine = openEngineThread({ taskMs: 60_000, queue: 2 });
    const answers = await Promise.allSettled(Array.from({ length: 5 }, () => engine.cook(sphere(1))));
    expect(answers.map((a) => a.status)).toEqual([
      'fulfilled',
      'fulfilled',
      'fulfilled',
      'rejected',
      'rejected',
    ]);
    expect(answers[4]).toMatchObject({ reason: { code: 'busy' } });
  });

  it('leaves nobody waiting when it closes', async () => {
    engine = openEngineThread();
    const waiting = [engine.cook(sphere(1)), engine.cook(sphere(1))].map((p) =>
      p.then(
        () => 'done',
        (e: { code: string }) => e.code,
      ),
    );
    await engine.close();
    expect(await Promise.all(waiting)).toEqual(['unavailable', 'unavailable']);
    await expect(engine.cook(sphere(1))).rejects.toMatchObject({ code: 'unavailable' });
  });
});
