import type { Node, Operation } from "./equation.ts";

/*
 * Writes a graph of arithmetic as a WebAssembly module (core specification 2.0, with its vector instructions):
 * a memory `m` of one page and a function `f(inputs..., out, end)` of byte addresses, which fills `out` up to
 * `end`, two numbers at a time, in the graph's own order of operations.
 */

const vector = (code: number): number[] => [0xfd, ...unsigned(code)];
const opcodes: Readonly<Record<Operation, readonly number[]>> = {
  add: vector(0xf0),
  sub: vector(0xf1),
  mul: vector(0xf2),
  div: vector(0xf3),
  neg: vector(0xed),
  sqrt: vector(0xef),
};

const I32 = 0x7f;
const V128 = 0x7b;
/** Bytes of two numbers. */
const STRIDE = 16;

export function moduleOf(graph: Node, inputs: number): Uint8Array {
  const uses = new Map<Node, number>();
  const count = (node: Node): void => {
    const before = uses.get(node) ?? 0;
    uses.set(node, before + 1);
    if (before === 0 && "of" in node) node.of.forEach(count);
  };
  count(graph);

  const out = inputs;
  const end = inputs + 1;
  const locals = new Map<Node, number>();
  const emit = (node: Node): number[] => {
    if (node.kind === "constant") {
      const bytes = new Uint8Array(Float64Array.of(node.value, node.value).buffer);
      return [...vector(0x0c), ...bytes];
    }
    const known = locals.get(node);
    if (known !== undefined) return [0x20, ...unsigned(known)];
    const code =
      node.kind === "input"
        ? [0x20, ...unsigned(node.index), ...vector(0x00), 0x03, 0x00]
        : [...node.of.flatMap(emit), ...opcodes[node.kind]];
    if (uses.get(node)! < 2) return code;
    const local = end + 1 + locals.size;
    locals.set(node, local);
    return [...code, 0x22, ...unsigned(local)];
  };
  const result = [0x20, ...unsigned(out), ...emit(graph), ...vector(0x0b), 0x03, 0x00];
  const advance = Array.from({ length: inputs + 1 }, (_, pointer) => [
    ...[0x20, ...unsigned(pointer)],
    ...[0x41, STRIDE, 0x6a],
    ...[0x21, ...unsigned(pointer)],
  ]).flat();
  const again = [0x20, ...unsigned(out), 0x20, ...unsigned(end), 0x49, 0x0d, 0x00];
  const loop = [0x03, 0x40, ...result, ...advance, ...again, 0x0b, 0x0b];
  const body = [0x01, ...unsigned(locals.size), V128, ...loop];

  return Uint8Array.from([
    ...[0x00, 0x61, 0x73, 0x6d, 0x01, 0x00, 0x00, 0x00],
    ...section(1, [0x01, 0x60, ...unsigned(inputs + 2), ...new Array<number>(inputs + 2).fill(I32), 0x00]),
    ...section(3, [0x01, 0x00]),
    ...section(5, [0x01, 0x01, 0x01, 0x01]),
    ...section(7, [0x02, ...text("m"), 0x02, 0x00, ...text("f"), 0x00, 0x00]),
    ...section(10, [0x01, ...unsigned(body.length), ...body]),
  ]);
}

const section = (id: number, content: readonly number[]): number[] => [
  id,
  ...unsigned(content.length),
  ...content,
];

const text = (ascii: string): number[] => [ascii.length, ...[...ascii].map((each) => each.charCodeAt(0))];

/** LEB128. */
function unsigned(value: number): number[] {
  return value < 0x80 ? [value] : [(value & 0x7f) | 0x80, ...unsigned(value >>> 7)];
}
