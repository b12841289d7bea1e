import type { Attribute, Dataset, Dimension } from "@wherry/netcdf";
import { textOf } from "./attribute-value.ts";
import { atLeast, atMost, type Edition } from "./edition.ts";
import { type Layout, type Link, readLayout, withFeatures } from "./layout.ts";
import { resolveName, rolesOf } from "./roles.ts";
import { VariableData } from "./variable-data.ts";
import { VariableView } from "./variable-view.ts";
import type { Vocabulary } from "./vocabulary.ts";

export interface ViewContext {
  /** Name or path of the file, for the rule on names. */
  readonly path: string;
  readonly edition: Edition;
  /** The moment of checking, epoch seconds UTC. */
  readonly now: number;
  readonly vocabulary: Vocabulary;
  /** Whether ACDD is to be held against the file: it claims ACDD, or the caller asked for it. Default true. */
  readonly holdsToAcdd?: boolean;
  /** The full data from which this file's layer means were made, where it lies beside it. */
  readonly full?: DatasetView;
}

/** What the rules see of a data set: the header sorted out once, the data read once and when asked for. */
export class DatasetView {
  readonly path: string;
  readonly edition: Edition;
  readonly now: number;
  readonly vocabulary: Vocabulary;
  readonly holdsToAcdd: boolean;
  /** The full data beside a file of layer means; null if it is not given. */
  readonly full: DatasetView | null;
  readonly kind: Dataset["kind"];
  readonly attributes: ReadonlyMap<string, Attribute>;
  readonly dimensions: ReadonlyMap<string, Dimension>;
  readonly variables: ReadonlyMap<string, VariableView>;
  readonly layout: Layout;
  readonly data: VariableData;
  readonly #dataset: Dataset;
  #ancillary: ReadonlySet<VariableView> | undefined;

  constructor(dataset: Dataset, context: ViewContext) {
    this.path = context.path;
    this.edition = context.edition;
    this.now = context.now;
    this.vocabulary = context.vocabulary;
    this.holdsToAcdd = context.holdsToAcdd ?? true;
    this.full = context.full ?? null;
    this.kind = dataset.kind;
    this.attributes = dataset.attributes;
    this.dimensions = dataset.dimensions;
    this.data = new VariableData(dataset);
    this.#dataset = dataset;
    const roles = rolesOf(dataset);
    this.variables = new Map(
      [...dataset.variables].map(([name, variable]) => [
        name,
        new VariableView(variable, roles.get(name) ?? "data"),
      ]),
    );
    this.layout = readLayout(this.text("featureType"), this.all);
  }

  get all(): readonly VariableView[] {
    return [...this.variables.values()];
  }

  since(edition: Edition): boolean {
    return atLeast(this.edition, edition);
  }

  until(edition: Edition): boolean {
    return atMost(this.edition, edition);
  }

  /** Text of a global attribute; undefined if it is absent or no single text. */
  text(attribute: string): string | undefined {
    return textOf(this.attributes.get(attribute));
  }

  /** The variable that a word in an attribute of another one means. */
  named(word: string, from: string): VariableView | null {
    const name = resolveName(this.#dataset, word, from);
    return name === null ? null : (this.variables.get(name) ?? null);
  }

  /** The variables that an attribute lists; words that name nothing are left out. */
  listed(variable: VariableView, attribute: string): VariableView[] {
    return variable.words(attribute).flatMap((word) => this.named(word, variable.name) ?? []);
  }

  /** What locates a variable: the coordinate variables of its dimensions and those in `coordinates`. */
  coordinatesOf(variable: VariableView): VariableView[] {
    const own = variable.dimensions.flatMap((dimension) => {
      const found = this.named(dimension, variable.name);
      return found?.isCoordinate ? [found] : [];
    });
    return [...new Set([...own, ...this.listed(variable, "coordinates")])];
  }

  /** Coordinates of the whole file: coordinate variables and those that any `coordinates` names. */
  get coordinates(): VariableView[] {
    return this.all.filter(({ role }) => role === "coordinate" || role === "auxiliary");
  }

  /** Variables that any other one names in `ancillary_variables`. */
  get ancillary(): ReadonlySet<VariableView> {
    this.#ancillary ??= new Set(this.all.flatMap((variable) => this.listed(variable, "ancillary_variables")));
    return this.#ancillary;
  }

  /** Variables that hold values at the samples or elements: not identity, position or description of a feature. */
  get sampled(): VariableView[] {
    return this.all.filter(
      (variable) => (variable.role === "data" || variable.role === "flag") && this.isSampled(variable),
    );
  }

  /** Whether a variable has a dimension beyond that of the features; with ragged arrays, that of the samples. */
  isSampled(variable: VariableView): boolean {
    const { links, instance, form } = this.layout;
    if (links.length > 0) {
      const features = new Set(links.map(({ to }) => to));
      return variable.dimensions.some((dimension) => !features.has(dimension));
    }
    if (form === "single" || form === "point" || form === "none") return variable.dimensions.length > 0;
    return variable.dimensions.some((dimension) => dimension !== instance);
  }

  /** The dimensions on which a coordinate of this variable may lie. */
  reach(variable: VariableView): ReadonlySet<string> {
    return withFeatures(variable.dimensions, this.layout.links);
  }

  link(from: string): Link | undefined {
    return this.layout.links.find((link) => link.from === from);
  }
}
