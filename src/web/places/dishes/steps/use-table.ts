import { useEffect, useState } from 'react';
import type { TableFood } from '../../../../contract/pantry-reckon.ts';

let loaded: TableFood | undefined;

/** The published table, a download of its own; null until it is here. */
export function useTable(): TableFood | null {
  const [table, setTable] = useState<TableFood | null>(() => loaded ?? null);
  useEffect(() => {
    if (table !== null) return undefined;
    let here = true;
    void import('../../../../core/properties/ingredients/table.ts').then(({ ingredientById }) => {
      loaded = (id) => {
        const row = ingredientById(id);
        if (row === undefined) return undefined;
        const { name, nutrients, allergens } = row;
        return { kind: 'food', id, name, nutrients, allergens, costPerKg: null };
      };
      if (here) setTable(() => loaded ?? null);
    });
    return () => {
      here = false;
    };
  }, [table]);
  return table;
}
