import { type ChangeEvent, useRef, useState } from 'react';
import { v7 as newId } from 'uuid';
import { Button } from '../../../parts/button.tsx';
import { Problem } from '../../../parts/problem.tsx';
import type { useKeptPhotos } from './kept-photos.ts';
import { madeSmall } from './photo.ts';

/** Take a picture: it is made small on the device and kept there until the server has it. */
export function PhotoField({
  kitchenId,
  deliveryId,
  kept,
}: {
  readonly kitchenId: string;
  readonly deliveryId: string;
  readonly kept: ReturnType<typeof useKeptPhotos>;
}) {
  const input = useRef<HTMLInputElement>(null);
  const [error, setError] = useState<unknown>(null);
  const [working, setWorking] = useState(false);
  const take = async (event: ChangeEvent<HTMLInputElement>) => {
    const files = [...(event.target.files ?? [])];
    event.target.value = '';
    setError(null);
    setWorking(true);
    try {
      for (const file of files) {
        const { base64 } = await madeSmall(file);
        await kept.add({ id: newId(), kitchenId, deliveryId, base64, takenAt: new Date().toISOString() });
      }
    } catch (caught) {
      setError(caught);
    } finally {
      setWorking(false);
    }
  };
  return (
    <div className="stack">
      {kept.photos.length === 0 ? null : (
        <ul className="photos" aria-label="Pictures on this device">
          {kept.photos.map((p, i) => (
            <li key={p.id}>
              <img src={`data:image/jpeg;base64,${p.base64}`} alt={`${i + 1} of ${kept.photos.length}`} />
              <Button kind="quiet" label={`Take out picture ${i + 1}`} onPress={() => kept.remove(p.id)}>
                Take out
              </Button>
            </li>
          ))}
        </ul>
      )}
      <input
        ref={input}
        type="file"
        accept="image/*"
        capture="environment"
        className="unseen"
        tabIndex={-1}
        aria-label="Picture"
        onChange={(e) => void take(e)}
      />
      <div>
        <Button size="line" pending={working} busy="Making it small…" onPress={() => input.current?.click()}>
          {kept.photos.length === 0 ? 'Take a picture' : 'Take another'}
        </Button>
      </div>
      {error === null ? null : <Problem error={error} />}
    </div>
  );
}
