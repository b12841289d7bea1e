import type { Attribute, NcType } from "../dataset.ts";
import { type Constant, constantOf } from "./constant.ts";
import { attributeOf, isComplaint } from "./constant-value.ts";
import { type Draft, finish } from "./draft.ts";
import type { Axis } from "./lay-out.ts";
import { type Token, tokens } from "./token.ts";
import { isSpecialAttribute, sectionWords, typeOfWord } from "./words.ts";

export type Complain = (
  at: number,
  code: "syntax" | "value" | "name" | "unsupported",
  message: string,
  more?: { variable?: string; attribute?: string; dimension?: string; remedy?: string },
) => undefined;

const DEEPEST_NESTING = 64;
type Name = Extract<Token, { kind: "name" }>;

/**
 * Reads the statements of a CDL text into a draft. A statement that is wrong is reported and passed over, so
 * that all problems of a text are heard of at once.
 */
export class CdlReader {
  readonly draft: Draft = { dimensions: new Map(), variables: new Map(), attributes: new Map() };
  private readonly source: Generator<Token, undefined>;
  private readonly ahead: Token[] = [];
  private readonly end: Token;
  private complain: Complain = () => undefined;
  private section = "";
  /** Groups around the statement at hand, each with its closing slash. */
  private readonly groups: string[] = [];

  constructor(text: string) {
    this.source = tokens(text);
    this.end = { kind: "end", at: text.length };
  }

  read(complain: Complain): void {
    this.complain = complain;
    const framed = this.frame();
    for (;;) {
      if (this.isMark(0, "}") && this.groups.length > 0) this.closeGroup();
      else if (this.isMark(0, "}") || this.peek(0).kind === "end") break;
      else this.statement();
    }
    this.close(framed);
    finish(this.draft, ({ at, message }, variable) => complain(at, "value", message, { variable }));
  }

  private frame(): boolean {
    if (!this.isWord(0, "netcdf")) return false;
    let at = 1;
    while (this.peek(at).kind !== "end" && !this.isMark(at, "{") && !this.isMark(at, ";")) at++;
    if (this.isMark(at, "{")) this.skip(at + 1);
    else this.syntax(this.peek(at), "a { after netcdf and the name of the dataset");
    return true;
  }

  private close(framed: boolean): void {
    const last = this.peek(0);
    if (framed !== this.isMark(0, "}") || this.groups.length > 0)
      this.syntax(
        last,
        framed || this.groups.length > 0 ? "a } that closes what was opened" : "no }, since there was no {",
      );
    else if (framed && this.peek(1).kind !== "end") this.syntax(this.peek(1), "nothing after the closing }");
  }

  private closeGroup(): void {
    this.skip(1);
    this.groups.pop();
    this.section = "";
  }

  private statement(): undefined {
    const first = this.peek(0);
    if (this.isMark(0, ";")) return this.skip(1);
    if (this.isMark(0, ":")) return this.attribute(null, null);
    if (first.kind !== "name") return this.syntax(first, "a declaration, an attribute or values");
    if (this.opensSection(first)) return this.openSection(first);
    if (this.isWord(0, "group") && this.isMark(1, ":") && this.isMark(3, "{")) return this.openGroup();
    const type = first.plain ? typeOfWord(first.text) : null;
    if (type !== null && !this.isMark(1, "=")) return this.typed(type);
    if (this.isMark(1, ":")) return this.attribute(null, this.take() as Name);
    if (this.isMark(1, "=")) {
      const dimension =
        this.section === "dimensions" || (this.section !== "data" && !this.hasVariable(first));
      return dimension ? this.dimensions() : this.values();
    }
    if (this.peek(1).kind === "name") {
      this.complain(first.at, "unsupported", `${first.text} is not a type that is known here`, {
        remedy:
          "Use one of char, byte, short, int, float, double, ubyte, ushort, uint, int64, uint64, string.",
      });
      return this.recover();
    }
    this.syntax(this.peek(1), `: or = after ${first.text}`);
  }

  /** `data:` opens a section; for a variable called data `data:units = …` is its attribute. */
  private opensSection(first: Name): boolean {
    const colon = this.peek(1);
    if (!first.plain || !sectionWords.has(first.text) || !this.isMark(1, ":")) return false;
    if (colon.at !== first.at + first.text.length) return false;
    const next = this.peek(2);
    return !(
      this.hasVariable(first) &&
      next.kind === "name" &&
      this.isMark(3, "=") &&
      !this.hasVariable(next)
    );
  }

  private openSection(first: Name): undefined {
    this.skip(2);
    this.section = first.text;
    if (first.text !== "types") return;
    this.complain(
      first.at,
      "unsupported",
      "types of one's own (compound, enum, opaque, variable length) are not read",
    );
    for (let token = this.peek(0); token.kind !== "end"; token = this.peek(0)) {
      if (token.kind === "name" && this.opensSection(token)) return;
      this.skip(1);
    }
  }

  private openGroup(): undefined {
    const name = this.peek(2);
    if (name.kind !== "name") return this.syntax(name, "the name of a group");
    if (this.groups.length >= DEEPEST_NESTING)
      return this.syntax(name, `at most ${DEEPEST_NESTING} groups in each other`);
    this.skip(4);
    this.groups.push(`${name.text}/`);
    this.section = "";
  }

  /** After a type: an attribute with that type, or variables. */
  private typed(type: NcType): undefined {
    this.skip(1);
    const name = this.peek(0);
    if (this.isMark(0, ":")) return this.attribute(type, null);
    if (name.kind === "name" && this.isMark(1, ":")) {
      this.skip(1);
      return this.attribute(type, name);
    }
    this.variables(type);
  }

  private variables(type: NcType): undefined {
    do {
      const name = this.peek(0);
      if (name.kind !== "name") return this.syntax(name, "the name of a variable");
      this.skip(1);
      const axes = this.shape();
      if (!axes) return;
      const full = this.full(name.text);
      if (this.draft.variables.has(full))
        this.complain(name.at, "name", `variable ${full} is declared twice`, { variable: full });
      else
        this.draft.variables.set(full, {
          name: full,
          type,
          axes,
          attributes: new Map(),
          at: name.at,
          items: [],
          data: null,
        });
    } while (this.accept(","));
    // in a fragment values may follow without a word before them
    this.section = "variables";
    this.semicolon();
  }

  private shape(): Axis[] | null {
    const axes: Axis[] = [];
    if (!this.accept("(")) return axes;
    if (this.accept(")")) return axes;
    do {
      const name = this.peek(0);
      if (name.kind !== "name") {
        this.syntax(name, "the name of a dimension");
        return null;
      }
      this.skip(1);
      const axis = this.findDimension(name.text);
      if (axis) axes.push(axis);
      else
        this.complain(name.at, "name", `there is no dimension ${name.text}`, {
          dimension: name.text,
          remedy: "Declare it before the variable.",
        });
    } while (this.accept(","));
    if (this.accept(")")) return axes;
    this.syntax(this.peek(0), "a ) after the dimensions");
    return null;
  }

  private dimensions(): undefined {
    do {
      const name = this.peek(0);
      const value = this.peek(2);
      if (name.kind !== "name" || !this.isMark(1, "="))
        return this.syntax(name, "a dimension and its length");
      const unlimited = value.kind === "name" && value.plain && /^(UNLIMITED|unlimited)$/.test(value.text);
      const length = unlimited ? 0 : this.length(value);
      if (length === null)
        return this.syntax(value, "a whole number or UNLIMITED as the length of a dimension");
      this.skip(3);
      const full = this.full(name.text);
      if (this.draft.dimensions.has(full))
        this.complain(name.at, "name", `dimension ${full} is declared twice`, { dimension: full });
      else this.draft.dimensions.set(full, { name: full, length, unlimited });
    } while (this.accept(","));
    this.semicolon();
  }

  private length(token: Token): number | null {
    const constant = token.kind === "number" ? constantOf(token) : null;
    if (constant === null || typeof constant === "string" || constant.kind !== "number") return null;
    const length = Number(constant.value);
    return Number.isSafeInteger(length) && length >= 0 ? length : null;
  }

  /** From the colon on. */
  private attribute(type: NcType | null, owner: Name | null): undefined {
    const colon = this.take();
    const name = this.peek(0);
    if (name.kind !== "name" || !this.isMark(1, "="))
      return this.syntax(name, "the name of an attribute and =");
    this.skip(2);
    const items = this.list(0);
    if (!items || !this.semicolon()) return;
    const full = owner === null ? null : this.full(owner.text);
    const variable = full === null ? null : this.draft.variables.get(full);
    if (variable === undefined)
      return this.complain(owner?.at ?? colon.at, "name", `there is no variable ${full}`, {
        attribute: name.text,
        remedy: "Declare the variable before its attributes.",
      });
    if (isSpecialAttribute(name.text, variable !== null)) return;
    const known = type ?? (name.text === "_FillValue" && variable && items.length > 0 ? variable.type : null);
    const key = variable === null ? this.full(name.text) : name.text;
    const attribute = attributeOf(key, known, items);
    if (!isComplaint(attribute)) return this.setAttribute(variable?.attributes, attribute);
    const where = { attribute: key, ...(variable ? { variable: variable.name } : {}) };
    this.complain(attribute.at, "value", attribute.message, where);
  }

  /** A later value replaces an earlier one. */
  private setAttribute(owned: Map<string, Attribute> | undefined, attribute: Attribute): undefined {
    (owned ?? this.draft.attributes).set(attribute.name, attribute);
  }

  private values(): undefined {
    const name = this.take() as Name;
    this.skip(1);
    const items = this.list(0);
    if (!items || !this.semicolon()) return;
    const full = this.full(name.text);
    const variable = this.draft.variables.get(full);
    if (!variable)
      return this.complain(name.at, "name", `there is no variable ${full}`, {
        variable: full,
        remedy: "Declare it in the variables section.",
      });
    variable.items = items;
    variable.at = name.at;
  }

  /** Constants up to the semicolon or the closing brace, which is left. */
  private list(depth: number): Constant[] | null {
    const items: Constant[] = [];
    if (this.isMark(0, ";") || this.isMark(0, "}")) return items;
    do {
      const token = this.peek(0);
      if (this.isMark(0, "{") && depth < DEEPEST_NESTING) {
        this.skip(1);
        const inner = this.list(depth + 1);
        if (!inner) return null;
        items.push({ kind: "list", at: token.at, items: inner });
        if (this.accept("}")) continue;
        this.syntax(this.peek(0), "a , or a }");
        return null;
      }
      const constant = constantOf(token);
      if (constant === null || typeof constant === "string") {
        this.syntax(token, "a value", constant);
        return null;
      }
      this.skip(1);
      items.push(constant);
    } while (this.accept(","));
    return items;
  }

  private semicolon(): boolean {
    if (this.accept(";")) return true;
    this.syntax(this.peek(0), "a ; at the end of the statement");
    return false;
  }

  /** Says what stands where something else was expected, and goes on behind the statement. */
  private syntax(token: Token, expected: string, wrong: string | null = null): undefined {
    const found =
      token.kind === "end"
        ? "the end of the text"
        : "text" in token
          ? token.text
          : "a text in quotation marks";
    const message =
      wrong ?? (token.kind === "wrong" ? token.message : `expected ${expected}, found ${found}`);
    this.complain(token.at, wrong === null ? "syntax" : "value", message);
    this.recover();
  }

  private recover(): undefined {
    while (this.peek(0).kind !== "end") {
      if (this.isMark(0, "}")) {
        // the brace that ends a group or the text is left for the caller; any other is passed over
        if (this.groups.length > 0 || this.peek(1).kind === "end") return;
      }
      const done = this.isMark(0, ";");
      this.skip(1);
      if (done) return;
    }
  }

  private full(name: string): string {
    return name.startsWith("/") ? name.slice(1) : this.groups.join("") + name;
  }

  private hasVariable(name: Name): boolean {
    return this.draft.variables.has(this.full(name.text));
  }

  /** A dimension of this group or of the nearest one around it, or the one that a path names. */
  private findDimension(name: string): Axis | undefined {
    if (name.startsWith("/")) return this.draft.dimensions.get(name.slice(1));
    for (let depth = this.groups.length; depth >= 0; depth--) {
      const found = this.draft.dimensions.get(this.groups.slice(0, depth).join("") + name);
      if (found) return found;
    }
    return undefined;
  }

  private peek(ahead: number): Token {
    while (this.ahead.length <= ahead) this.ahead.push(this.source.next().value ?? this.end);
    return this.ahead[ahead] ?? this.end;
  }

  private take(): Token {
    const token = this.peek(0);
    this.skip(1);
    return token;
  }

  private skip(many: number): undefined {
    this.peek(many - 1);
    this.ahead.splice(0, many);
  }

  private accept(mark: string): boolean {
    const here = this.isMark(0, mark);
    if (here) this.skip(1);
    return here;
  }

  private isMark(ahead: number, mark: string): boolean {
    const token = this.peek(ahead);
    return token.kind === "mark" && token.text === mark;
  }

  private isWord(ahead: number, word: string): boolean {
    const token = this.peek(ahead);
    return token.kind === "name" && token.plain && token.text === word;
  }
}
