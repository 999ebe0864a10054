/** The little of WebAssembly that the engine asks of whatever it runs in: its own modules, compiled where they stand. */
declare const WebAssembly: {
  readonly Memory: new (size: { initial: number; maximum: number }) => { readonly buffer: ArrayBuffer };
  readonly Module: new (bytes: Uint8Array) => object;
  readonly Instance: new (module: object, imports: object) => { readonly exports: object };
};

const page = 2 ** 16;
/** Bytes in a double. */
export const double = 8;

/** Memory that never grows, so that what looks at it never loses sight of it; pages that are not touched cost nothing. */
export function memoryOf(bytes: number): { readonly buffer: ArrayBuffer } {
  const pages = Math.ceil(bytes / page);
  return new WebAssembly.Memory({ initial: pages, maximum: pages });
}

/** What a module exports, from its bytes in hexadecimal; it works in a memory that it is handed. */
export function exportsOf<T>(hex: string, memory: object): T {
  const bytes = Uint8Array.from({ length: hex.length / 2 }, (_, i) =>
    Number.parseInt(hex.slice(2 * i, 2 * i + 2), 16),
  );
  return new WebAssembly.Instance(new WebAssembly.Module(bytes), { numerics: { memory } }).exports as T;
}
