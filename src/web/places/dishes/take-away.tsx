import { call } from '../../api.ts';
import { Button } from '../../parts/button.tsx';

/** Hands the browser a file to keep. */
function keepFile(name: string, value: unknown): void {
  const blob = new Blob([`${JSON.stringify(value, null, 2)}\n`], { type: 'application/json' });
  const address = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

const fileName = (name: string, end: string) =>
  `${
    name
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, '-')
      .slice(0, 60) || 'dish'
  }${end}`;

export interface TakeAwayProps {
  readonly kitchenId: string;
  readonly dish: { readonly id: string; readonly name: string };
  readonly version: { readonly id: string; readonly number: number };
}

/** The dish as a file for another kitchen, or as a recipe that other programs read. */
export function TakeAway({ kitchenId, dish, version }: TakeAwayProps) {
  const params = { kitchenId, dishId: dish.id };
  return (
    <details className="fold not-on-paper">
      <summary>Take it away as a file</summary>
      <div className="stack">
        <div className="row">
          <Button
            onPress={async () =>
              keepFile(fileName(dish.name, '.dish.json'), await call('exportDish', { params, query: {} }))
            }
            busy="Writing…"
          >
            All versions, for another kitchen
          </Button>
          <Button
            onPress={async () =>
              keepFile(
                fileName(dish.name, `-${version.number}.dish.json`),
                await call('exportDish', { params, query: { version: version.id } }),
              )
            }
            busy="Writing…"
          >
            Version {version.number} alone
          </Button>
          <Button
            onPress={async () =>
              keepFile(
                fileName(dish.name, `-${version.number}.jsonld`),
                await call('exportRecipe', { params, query: { version: version.id } }),
              )
            }
            busy="Writing…"
          >
            Version {version.number} as a recipe (JSON-LD)
          </Button>
        </div>
        <p className="quiet small measure">
          The file holds what is saved, with its foods and their allergens, and no prices. A recipe holds
          words and weights only: no limits, and nothing that shows it is safe.
        </p>
      </div>
    </details>
  );
}
