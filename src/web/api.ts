/** The HTTP API as the screens call it: typed from the contract, errors by meaning, live changes. */
import { QueryClient, useQuery, useQueryClient } from '@tanstack/react-query';
import { useEffect } from 'react';
import type {
  ApiError,
  BodyOf,
  Change,
  OperationName,
  Operations,
  QueryOf,
  ResultOf,
} from '../contract/operations.ts';
import { fillPath, type ParamsOf, type QueryValues } from './api-path.ts';
import { currentPerson, setPerson, whoSigns } from './person.ts';
import { routes } from './routes.ts';

/** The server said no: `code` by meaning, `problems` naming each offending value. */
export class Refusal extends Error {
  override readonly name = 'Refusal';
  constructor(
    readonly status: number,
    readonly code: string,
    message: string,
    readonly problems: readonly { path: string; found: string; allowed: string }[] = [],
  ) {
    super(message);
  }
}

/** No answer: no signal, or the server is down. Nothing is known to have been written. */
export class Unreachable extends Error {
  override readonly name = 'Unreachable';
  constructor(override readonly cause?: unknown) {
    super('No answer from the kitchen’s server. Nothing is lost here; try again when it is back.');
  }
}

type PathOf<N extends OperationName> = Operations[N]['path'];
type Given<K extends string, V> = [V] extends [undefined]
  ? { readonly [P in K]?: undefined }
  : { readonly [P in K]: V };
type GivenParams<N extends OperationName> = keyof ParamsOf<PathOf<N>> extends never
  ? { readonly params?: Record<string, never> }
  : { readonly params: ParamsOf<PathOf<N>> };

/** What a call of an operation takes, from its schema. */
export type Call<N extends OperationName> = GivenParams<N> &
  Given<'body', BodyOf<N>> &
  ([QueryOf<N>] extends [undefined] ? { readonly query?: undefined } : { readonly query: QueryOf<N> });

interface LooseCall {
  readonly params?: Readonly<Record<string, string>>;
  readonly query?: QueryValues;
  readonly body?: unknown;
  readonly signal?: AbortSignal;
  /** Signs this one write with another person than the one at this device. */
  readonly as?: string;
}

async function refusalOf(response: Response): Promise<Refusal> {
  const told = (await response.json().catch(() => null)) as Partial<ApiError> | null;
  return new Refusal(
    response.status,
    told?.code ?? `http ${response.status}`,
    told?.message ?? `The server answered ${response.status} without saying why.`,
    told?.problems,
  );
}

async function send(name: OperationName, input: LooseCall): Promise<unknown> {
  const route = routes[name];
  const headers: Record<string, string> = { accept: 'application/json' };
  const kitchenId = input.params?.kitchenId;
  if (input.body !== undefined || route.method !== 'GET') headers['content-type'] = 'application/json';
  if (kitchenId !== undefined) {
    const person = input.as ?? ('signed' in route ? await whoSigns(kitchenId) : currentPerson(kitchenId));
    if (person !== null) headers['x-person'] = person;
  }
  const request: RequestInit = { method: route.method, headers };
  if (route.method !== 'GET') request.body = JSON.stringify(input.body ?? {});
  if (input.signal !== undefined) request.signal = input.signal;
  let response: Response;
  try {
    response = await fetch(fillPath(route.path, input.params, input.query), request);
  } catch (cause) {
    if (cause instanceof DOMException && cause.name === 'AbortError') throw cause;
    throw new Unreachable(cause);
  }
  if (response.status === 502 || response.status === 503 || response.status === 504)
    throw new Unreachable(response);
  if (!response.ok) {
    const refusal = await refusalOf(response);
    // Somebody this kitchen does not know (a demo laid anew): ask again next time.
    if (refusal.status === 401 && kitchenId !== undefined && input.as === undefined)
      setPerson(kitchenId, null);
    throw refusal;
  }
  return response.json();
}

/** Calls one operation of the contract. Throws `Refusal`, `Unreachable` or `NobodyChosen`. */
export function call<N extends OperationName>(
  name: N,
  input: Call<N> & { readonly signal?: AbortSignal; readonly as?: string },
): Promise<ResultOf<N>> {
  return send(name, input as LooseCall) as Promise<ResultOf<N>>;
}

export const keyOf = (name: OperationName, input?: object) => [name, input ?? {}] as const;

export const queryClient = new QueryClient({
  defaultOptions: {
    queries: {
      staleTime: 20_000,
      retry: (count, error) => error instanceof Unreachable && count < 3,
      refetchOnWindowFocus: true,
    },
  },
});

/** Reads an operation and keeps it fresh. `input` null: not yet. */
export function useOperation<N extends OperationName>(name: N, input: Call<N> | null) {
  return useQuery<ResultOf<N>>({
    queryKey: keyOf(name, input ?? undefined),
    queryFn: ({ signal }) => send(name, { ...(input as LooseCall), signal }) as Promise<ResultOf<N>>,
    enabled: input !== null,
  });
}

/**
 * Hears what others change in a kitchen and reads again what is on screen. Only while the page is seen: a browser allows
 * few lasting connections to one server, and pages left open in the background would use them up.
 */
export function useLive(kitchenId: string, onChange?: (change: Change) => void): void {
  const client = useQueryClient();
  useEffect(() => {
    let source: EventSource | null = null;
    let waiting: ReturnType<typeof setTimeout> | undefined;
    const hear = (event: MessageEvent<string>) => {
      try {
        onChange?.(JSON.parse(event.data) as Change);
      } catch {
        return; // a heartbeat, not a change
      }
      clearTimeout(waiting);
      waiting = setTimeout(() => void client.invalidateQueries(), 150);
    };
    const listen = () => {
      source = new EventSource(`/api/kitchens/${encodeURIComponent(kitchenId)}/live`);
      source.addEventListener('message', hear);
      source.addEventListener('change', hear);
    };
    const seen = () => {
      if (document.visibilityState === 'hidden') {
        source?.close();
        source = null;
      } else if (source === null) {
        listen();
        void client.invalidateQueries();
      }
    };
    if (document.visibilityState !== 'hidden') listen();
    document.addEventListener('visibilitychange', seen);
    return () => {
      clearTimeout(waiting);
      document.removeEventListener('visibilitychange', seen);
      source?.close();
    };
  }, [kitchenId, client, onChange]);
}
