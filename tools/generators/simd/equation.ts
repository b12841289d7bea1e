/*
 * Reads the text of our plain equations into a graph of arithmetic. Only what those few functions need is
 * understood: constants, `const` lines, elements of an array that is filled, calls of each other, + - * / and
 * Math.sqrt. Anything else is an error, so that a twin never means something else than its source.
 */

export type Operation = "add" | "sub" | "mul" | "div" | "neg" | "sqrt";

export type Node =
  | { readonly kind: "constant"; readonly value: number }
  | { readonly kind: "input"; readonly index: number }
  | { readonly kind: Operation; readonly of: readonly Node[] };

interface Definition {
  readonly parameters: readonly string[];
  readonly statements: readonly string[];
}

type Value = Node | Map<number, Node>;

const infix: Readonly<Record<string, readonly [Operation, number]>> = {
  "+": ["add", 1],
  "-": ["sub", 1],
  "*": ["mul", 2],
  "/": ["div", 2],
};

/** The graph of one function, whose parameters become the inputs 0, 1, 2 ... in their order. */
export function graphOf(name: string, sources: readonly string[]): Node {
  const text = sources.map((source) => source.replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, "")).join("\n");
  const definitions = definitionsIn(text);
  const shared = new Map<string, Node>();
  const node = (made: Node): Node => {
    const key = keyOf(made, numbers);
    const known = shared.get(key) ?? made;
    shared.set(key, known);
    if (!numbers.has(known)) numbers.set(known, numbers.size);
    return known;
  };
  const numbers = new Map<Node, number>();
  const constants = new Map<string, Node>();
  for (const [, constant, digits] of text.matchAll(/^(?:export )?const (\w+) = ([\d._e+-]+);$/gm)) {
    constants.set(constant!, node({ kind: "constant", value: Number(digits!.replaceAll("_", "")) }));
  }

  const call = (called: string, given: readonly Value[]): Value | undefined => {
    const definition = definitions.get(called);
    if (definition === undefined) throw new Error(`${name}: no function ${called} in the sources`);
    const scope = new Map<string, Value>(definition.parameters.map((each, i) => [each, given[i]!]));
    for (const statement of definition.statements) {
      const [, element, index, local, rest] =
        /^(?:(\w+)\[(\d+)\] =|const (\w+) =|return\b)?([\s\S]*)$/.exec(statement) ?? [];
      const value = expression(rest!, scope);
      if (element !== undefined) (scope.get(element) as Map<number, Node>).set(Number(index), value as Node);
      else if (local !== undefined) scope.set(local, value!);
      else if (statement.startsWith("return")) return value;
    }
    return undefined;
  };

  const expression = (source: string, scope: Map<string, Value>): Value | undefined => {
    const tokens =
      source.match(/(?:\d[\d_]*(?:\.\d+)?|\.\d+)(?:e[+-]?\d+)?|Math\.sqrt|\w+|[-+*/()[\],!]|\S/g) ?? [];
    let at = 0;
    const take = (wanted: string) => {
      if (tokens[at++] !== wanted) throw new Error(`${name}: expected ${wanted} in ${source}`);
    };
    const list = (): Value[] => {
      const values: Value[] = [];
      take("(");
      while (tokens[at] !== ")") {
        values.push(sum(0));
        if (tokens[at] === ",") at++;
      }
      take(")");
      return values;
    };
    const atom = (): Value => {
      const token = tokens[at++] ?? "";
      if (token === "-") return node({ kind: "neg", of: [atom() as Node] });
      if (token === "(") {
        const inner = sum(0);
        take(")");
        return inner;
      }
      if (/^[\d.]/.test(token)) return node({ kind: "constant", value: Number(token.replaceAll("_", "")) });
      if (token === "Math.sqrt") return node({ kind: "sqrt", of: list() as Node[] });
      if (tokens[at] === "(") return call(token, list()) ?? new Map();
      if (tokens[at] === "[") {
        take("[");
        const array = scope.get(token) ?? arrays.get(token);
        const element = array instanceof Map ? array.get(Number(tokens[at])) : undefined;
        at++;
        take("]");
        take("!");
        if (element === undefined) throw new Error(`${name}: an element of ${token} was not filled`);
        return element;
      }
      if (!/^[A-Za-z]\w*$/.test(token)) throw new Error(`${name}: cannot read ${token} in ${source}`);
      const value = scope.get(token) ?? constants.get(token) ?? arrays.get(token) ?? new Map<number, Node>();
      // a name from outside that is no number is the array that a call fills
      if (value instanceof Map) arrays.set(token, value);
      return value;
    };
    const sum = (above: number): Value => {
      let left = atom();
      for (let found = infix[tokens[at] ?? ""]; found && found[1] > above; found = infix[tokens[at] ?? ""]) {
        at++;
        left = node(folded(found[0], left as Node, sum(found[1]) as Node));
      }
      return left;
    };
    const value = sum(0);
    if (at !== tokens.length) throw new Error(`${name}: cannot read ${tokens[at]} in ${source}`);
    return value;
  };
  const arrays = new Map<string, Map<number, Node>>();

  const inputs = definitions.get(name)?.parameters.map((_, index) => node({ kind: "input", index }));
  return call(name, inputs ?? []) as Node;
}

/** Functions with a body and arrow functions of one expression, by name. */
function definitionsIn(text: string): Map<string, Definition> {
  const found = new Map<string, Definition>();
  const names = (list: string) => list.split(",").map((each) => each.split(":")[0]!.trim());
  for (const [, name, list, body] of text.matchAll(
    /^(?:export )?function (\w+)\(([^)]*)\)[^{]*\{\n([\s\S]*?)^\}/gm,
  )) {
    const statements = body!.split(";").map((each) => each.trim());
    found.set(name!, { parameters: names(list!), statements: statements.filter((each) => each !== "") });
  }
  for (const [, name, list, body] of text.matchAll(
    /^(?:export )?const (\w+) = \(([^)]*)\): number =>([^;{]*);/gm,
  )) {
    found.set(name!, { parameters: names(list!), statements: [`return ${body}`] });
  }
  return found;
}

/** Arithmetic of two constants is done now, as the compiler of the plain code does it. */
function folded(kind: Operation, left: Node, right: Node): Node {
  if (left.kind !== "constant" || right.kind !== "constant") return { kind, of: [left, right] };
  const [a, b] = [left.value, right.value];
  const value = kind === "add" ? a + b : kind === "sub" ? a - b : kind === "mul" ? a * b : a / b;
  return { kind: "constant", value };
}

function keyOf(made: Node, numbers: ReadonlyMap<Node, number>): string {
  if (made.kind === "constant") return `${Object.is(made.value, -0) ? "-0" : made.value}`;
  if (made.kind === "input") return `input ${made.index}`;
  return `${made.kind} ${made.of.map((each) => numbers.get(each)).join(" ")}`;
}
