/** Filling a path of the contract: `:name` parts from `params`, the rest of the question from `query`. */

type Parameter<P extends string> = P extends `${string}:${infer Rest}`
  ? Rest extends `${infer Name}/${infer After}`
    ? Name | Parameter<After>
    : Rest
  : never;

/** The `:name` parts that a path needs. */
export type ParamsOf<P extends string> = { readonly [N in Parameter<P>]: string };

export type QueryValues = Readonly<Record<string, string | number | undefined>>;

/**
 * The address of a path of the contract.
 * Throws when a part is missing or empty: a request that would go to another address is never sent.
 */
export function fillPath(
  path: string,
  params: Readonly<Record<string, string>> = {},
  query: QueryValues = {},
): string {
  const filled = path.replace(/:([A-Za-z]\w*)/g, (_, name: string) => {
    const value = params[name];
    if (value === undefined || value === '') throw new TypeError(`${path}: no ${name} given`);
    return encodeURIComponent(value);
  });
  const asked = new URLSearchParams();
  for (const [name, value] of Object.entries(query)) if (value !== undefined) asked.set(name, String(value));
  const tail = asked.toString();
  return tail === '' ? filled : `${filled}?${tail}`;
}
