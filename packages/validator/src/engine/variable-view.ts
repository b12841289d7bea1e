import type { Attribute, NcType, Variable } from "@wherry/netcdf";
import { isTextType, numbersOf, textOf, wordsOf } from "./attribute-value.ts";
import { type Axis, axisOf } from "./axis.ts";
import { isCoordinateVariable, type Role } from "./roles.ts";

/** A variable's header with what the rules ask of it, worked out once. */
export class VariableView {
  readonly name: string;
  readonly type: NcType;
  readonly role: Role;
  readonly shape: readonly number[];
  readonly attributes: ReadonlyMap<string, Attribute>;
  readonly isText: boolean;
  /** One-dimensional, numeric, named as its dimension. */
  readonly isCoordinate: boolean;
  /** Kind of coordinate; null for what is neither a coordinate variable nor named by `coordinates`. */
  readonly axis: Axis | null;
  /** The same for any variable: what units, positive, standard name and axis say, whoever names it. */
  readonly kindOfCoordinate: Axis | null;
  /** Every dimension, the string length of a char variable included. */
  readonly allDimensions: readonly string[];

  constructor(variable: Variable, role: Role) {
    this.name = variable.name;
    this.type = variable.type;
    this.role = role;
    this.shape = variable.shape;
    this.attributes = variable.attributes;
    this.isText = isTextType(variable.type);
    this.isCoordinate = isCoordinateVariable(variable);
    this.allDimensions = variable.dimensions;
    this.kindOfCoordinate = this.isText ? null : axisOf((attribute) => this.text(attribute));
    this.axis = this.isSpaceTime ? this.kindOfCoordinate : null;
  }

  /** Dimensions without the string length of a char variable. */
  get dimensions(): readonly string[] {
    return this.type === "char" && this.allDimensions.length > 0
      ? this.allDimensions.slice(0, -1)
      : this.allDimensions;
  }

  /** A coordinate variable or a numeric one that `coordinates` names. */
  get isSpaceTime(): boolean {
    return this.role === "coordinate" || this.role === "auxiliary";
  }

  get standardName(): string | undefined {
    return wordsOf(this.text("standard_name"))[0];
  }

  has(attribute: string): boolean {
    return this.attributes.has(attribute);
  }

  /** Text of a text attribute; undefined if it is absent or no single text. */
  text(attribute: string): string | undefined {
    return textOf(this.attributes.get(attribute));
  }

  words(attribute: string): string[] {
    return wordsOf(this.text(attribute));
  }

  numbers(attribute: string): number[] | undefined {
    return numbersOf(this.attributes.get(attribute));
  }
}
