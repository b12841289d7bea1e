/*
 * Runs a vector twin (simd-twins.generated.ts) over three columns, in pieces that fit its page of memory. It does
 * the operations of the plain equation in the same order, so that both give the same bits; where WebAssembly with
 * vector instructions is not to be had, the caller takes the plain loop.
 */

/** The part of WebAssembly that is used; the library's types come from the host. */
interface Host {
  readonly WebAssembly?: {
    readonly Module: new (bytes: Uint8Array) => object;
    readonly Instance: new (module: object) => { readonly exports: object };
  };
  atob?(base64: string): string;
}

interface Exports {
  readonly m: { readonly buffer: ArrayBuffer };
  f(first: number, second: number, third: number, out: number, end: number): void;
}

/** Fills `out` from three columns of its length; false if that has to be done by the plain equation. */
export type ColumnKernel = (
  first: Float64Array,
  second: Float64Array,
  third: Float64Array,
  out: Float64Array,
) => boolean;

/** Below it the plain loop is done before the twin is loaded. */
const FEWEST_ROWS = 64;
/** Rows of a piece: four columns of 8 bytes a number in 64 KiB. */
const PIECE = 2048;
const BYTES = 8;

/** What a row gets whose result is below `least`, or not a number: the result of `otherwise` for its inputs. */
export interface Exception {
  readonly least: number;
  readonly otherwise: (first: number, second: number, third: number) => number;
}

/** A kernel that loads the module, in base64, when it is first needed. */
export function columnKernel(base64: string, exception?: Exception): ColumnKernel {
  let loaded: { readonly run: Exports["f"]; readonly columns: readonly Float64Array[] } | null | undefined;
  return (first, second, third, out) => {
    if (out.length < FEWEST_ROWS) return false;
    if (loaded === undefined) loaded = load(base64);
    if (loaded === null) return false;
    const { run, columns } = loaded;
    const [a, b, c, result] = columns as [Float64Array, Float64Array, Float64Array, Float64Array];
    for (let start = 0; start < out.length; start += PIECE) {
      const rows = Math.min(PIECE, out.length - start);
      a.set(first.subarray(start, start + rows));
      b.set(second.subarray(start, start + rows));
      c.set(third.subarray(start, start + rows));
      // two numbers at a time: after an odd last row one result too many is made and not read
      run(0, PIECE * BYTES, 2 * PIECE * BYTES, 3 * PIECE * BYTES, (3 * PIECE + rows) * BYTES);
      if (exception !== undefined) mend(a, b, c, result, rows, exception);
      out.set(result.subarray(0, rows), start);
    }
    return true;
  };
}

function mend(
  a: Float64Array,
  b: Float64Array,
  c: Float64Array,
  result: Float64Array,
  rows: number,
  { least, otherwise }: Exception,
): void {
  for (let i = 0; i < rows; i++) if (!(result[i]! >= least)) result[i] = otherwise(a[i]!, b[i]!, c[i]!);
}

function load(base64: string) {
  const { WebAssembly, atob } = globalThis as Host;
  if (WebAssembly === undefined || atob === undefined) return null;
  try {
    const bytes = Uint8Array.from(atob(base64), (character) => character.charCodeAt(0));
    const { m, f } = new WebAssembly.Instance(new WebAssembly.Module(bytes)).exports as Exports;
    return { run: f, columns: [0, 1, 2, 3].map((k) => new Float64Array(m.buffer, k * PIECE * BYTES, PIECE)) };
  } catch {
    // no vector instructions here, or a policy of the page forbids to compile
    return null;
  }
}
