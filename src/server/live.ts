/** Changes as they are committed, to every browser that has the kitchen open. */
import type { Hono } from 'hono';
import { streamSSE } from 'hono/streaming';
import { type App, kitchenOf, look } from '../app/app.ts';
import type { Changes } from '../app/changes.ts';
import { AppError } from '../app/errors.ts';
import { Id } from '../contract/quantities.ts';

/** So that a proxy or a sleeping tablet does not take silence for the end. */
const heartbeat = 20_000;

export interface Live {
  /** Ends every stream, so that the server can stop. */
  close(): void;
}

export function liveRoute(http: Hono, app: App, changes: Changes): Live {
  const ends = new Set<() => void>();
  http.get('/api/kitchens/:kitchenId/live', async (c) => {
    const id = Id.safeParse(c.req.param('kitchenId'));
    if (!id.success) throw new AppError('not_found', 'There is no kitchen of that id on this server.');
    await look(app, (db) => kitchenOf(db, id.data));
    return streamSSE(c, async (stream) => {
      await new Promise<void>((resolve) => {
        const stop = changes.follow(id.data, (change) => {
          void stream
            .writeSSE({ event: 'change', id: String(change.seq), data: JSON.stringify(change) })
            .catch(end);
        });
        const beat = setInterval(
          () => void stream.writeSSE({ event: 'beat', data: '' }).catch(end),
          heartbeat,
        );
        beat.unref();
        function end() {
          clearInterval(beat);
          stop();
          ends.delete(end);
          resolve();
        }
        ends.add(end);
        stream.onAbort(end);
        void stream.writeSSE({ event: 'open', data: '' }).catch(end);
      });
    });
  });
  return {
    close: () => {
      for (const end of [...ends]) end();
    },
  };
}
