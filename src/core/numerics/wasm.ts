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

/** Value of a hexadecimal digit by its code. */
const digit = (code: number) => (code < 58 ? code - 48 : code - 87);

/** What a module exports, from its bytes in lower-case hexadecimal; it works in a memory that it is handed. */
export function exportsOf<T>(hex: string, memory: object): T {
  const bytes = new Uint8Array(hex.length / 2);
  for (let i = 0; i < bytes.length; i++)
    bytes[i] = 16 * digit(hex.charCodeAt(2 * i)) + digit(hex.charCodeAt(2 * i + 1));
  return new WebAssembly.Instance(new WebAssembly.Module(bytes), { numerics: { memory } }).exports as T;
}
