import { beforeEach, describe, expect, it, vi } from 'vitest';
import { Autosave, type Kept, type Outcome, REST_MS, type Where } from './autosave.ts';

type M = { readonly text: string };

/** A device and a server, each doing only what it is told. */
function setting(check: (m: M) => readonly Where[] = () => []) {
  const timers: { ms: number; run: () => void }[] = [];
  const answers: Outcome<M>[] = [];
  const sent: Kept<M>[] = [];
  const device: { kept: Kept<M> | null } = { kept: null };
  let hold: (() => void) | null = null;
  const waiting = { held: false };
  const saver = new Autosave<M>(
    {
      save: async (kept) => {
        sent.push(kept);
        if (waiting.held) await new Promise<void>((go) => (hold = go));
        return answers.shift() ?? { kind: 'saved', rev: kept.rev + 1 };
      },
      keep: (kept) => (device.kept = kept),
      drop: () => (device.kept = null),
      check,
      after: (ms, run) => {
        const timer = { ms, run };
        timers.push(timer);
        return () => void timers.splice(timers.indexOf(timer), timers.includes(timer) ? 1 : 0);
      },
    },
    { rev: 3, method: { text: '' } },
  );
  const tick = async () => {
    const due = timers.splice(0);
    for (const t of due) t.run();
    await vi
      .waitFor(() => expect(saver.snapshot().status).not.toBe('saving'), { interval: 1 })
      .catch(() => undefined);
  };
  return { saver, timers, answers, sent, device, tick, waiting, release: () => hold?.() };
}

describe('Autosave', () => {
  let s: ReturnType<typeof setting>;
  beforeEach(() => {
    s = setting();
  });

  it('keeps every change on the device at once, and sends once after a rest', async () => {
    s.saver.change({ text: 'a' });
    s.saver.change({ text: 'ab' });
    expect(s.device.kept).toEqual({ rev: 3, method: { text: 'ab' } });
    expect(s.saver.snapshot().status).toBe('waiting');
    expect(s.timers.map((t) => t.ms)).toEqual([REST_MS]);
    await s.tick();
    expect(s.sent).toEqual([{ rev: 3, method: { text: 'ab' } }]);
    expect(s.saver.snapshot().status).toBe('saved');
    expect(s.saver.currentRev).toBe(4);
    expect(s.device.kept).toBeNull();
  });

  it('sends what was typed while a save was on its way, from the new count, and keeps it till then', async () => {
    s.waiting.held = true;
    s.saver.change({ text: 'a' });
    const first = s.saver.flush();
    s.saver.change({ text: 'ab' });
    s.waiting.held = false;
    s.release();
    await first;
    expect(s.saver.snapshot().status).toBe('waiting');
    expect(s.device.kept).toEqual({ rev: 4, method: { text: 'ab' } });
    await s.tick();
    expect(s.sent.map((k) => k.rev)).toEqual([3, 4]);
    expect(s.device.kept).toBeNull();
  });

  it('loses nothing when there is no answer, and tries again more and more slowly', async () => {
    s.answers.push({ kind: 'unreachable', message: 'no' }, { kind: 'unreachable', message: 'no' });
    s.saver.change({ text: 'a' });
    await s.tick();
    expect(s.saver.snapshot()).toMatchObject({ status: 'stopped', kind: 'unreachable' });
    expect(s.device.kept?.method.text).toBe('a');
    expect(s.timers[0]?.ms).toBe(2_000);
    await s.tick();
    expect(s.timers[0]?.ms).toBe(5_000);
    await s.tick();
    expect(s.saver.snapshot().status).toBe('saved');
    expect(s.device.kept).toBeNull();
  });

  it('knows its own save again when the answer was lost on the way', async () => {
    s.answers.push({ kind: 'conflict', message: 'x', theirs: { rev: 4, method: { text: 'a' } } });
    s.saver.change({ text: 'a' });
    await s.tick();
    expect(s.saver.snapshot().status).toBe('saved');
    expect(s.saver.currentRev).toBe(4);
  });

  it('goes on by itself when somebody saved in between without changing anything', async () => {
    s.answers.push({ kind: 'conflict', message: 'x', theirs: { rev: 7, method: { text: '' } } });
    s.saver.change({ text: 'a' });
    await s.tick();
    expect(s.saver.snapshot().status).toBe('waiting');
    await s.tick();
    expect(s.sent.at(-1)).toEqual({ rev: 7, method: { text: 'a' } });
    expect(s.saver.snapshot().status).toBe('saved');
  });

  it('never writes kept work over what others saved since', async () => {
    s.saver.startFrom(1);
    s.answers.push({ kind: 'conflict', message: 'x', theirs: { rev: 3, method: { text: '' } } });
    s.saver.change({ text: 'kept from before' });
    await s.tick();
    expect(s.saver.snapshot()).toMatchObject({ status: 'stopped', kind: 'conflict' });
  });

  it('stops at a conflict, keeps what is typed after it, and goes on with mine over theirs', async () => {
    s.answers.push({ kind: 'conflict', message: 'x', theirs: { rev: 9, method: { text: 'theirs' } } });
    s.saver.change({ text: 'a' });
    await s.tick();
    s.saver.change({ text: 'ab' });
    expect(s.timers).toEqual([]);
    expect(s.device.kept?.method.text).toBe('ab');
    await s.saver.keepMine();
    expect(s.sent.at(-1)).toEqual({ rev: 9, method: { text: 'ab' } });
    expect(s.saver.snapshot().status).toBe('saved');
  });

  it('takes theirs when told so, and goes on from there', async () => {
    s.answers.push({ kind: 'conflict', message: 'x', theirs: { rev: 9, method: { text: 'theirs' } } });
    s.saver.change({ text: 'a' });
    await s.tick();
    expect(s.saver.takeTheirs()).toEqual({ text: 'theirs' });
    s.saver.change({ text: 'theirs, and mine' });
    await s.tick();
    expect(s.sent.at(-1)).toEqual({ rev: 9, method: { text: 'theirs, and mine' } });
  });

  it('does not send what cannot be right, and sends it once mended', async () => {
    s = setting((m) => (m.text === '' ? [{ path: 'text', found: 'nothing', allowed: 'something' }] : []));
    s.saver.change({ text: 'a' });
    s.saver.change({ text: '' });
    await s.tick();
    expect(s.sent).toEqual([]);
    expect(s.saver.snapshot().status).toBe('invalid');
    expect(s.device.kept?.method.text).toBe('');
    s.saver.change({ text: 'b' });
    await s.tick();
    expect(s.saver.snapshot().status).toBe('saved');
  });

  it('never goes on writing to a version that was signed in between', async () => {
    s.answers.push({ kind: 'frozen', message: 'signed' });
    s.saver.change({ text: 'a' });
    await s.tick();
    s.saver.change({ text: 'ab' });
    await s.saver.flush();
    expect(s.sent).toHaveLength(1);
    expect(s.device.kept?.method.text).toBe('ab');
  });
});
