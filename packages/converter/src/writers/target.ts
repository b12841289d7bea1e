import {
  ctdRules,
  type ProductAttribute,
  type ProductsForAnArchive,
  type RuleDocument,
  usTemplateRules,
} from "@wherry/contracts";
import { type Attribute, textAttribute } from "@wherry/netcdf";

/** How the casts of a file are arranged (CF section 9.3). */
export type Layout = NonNullable<ProductAttribute["layout"]>;

/** What data sets are meant for, and so how they are written. */
export type Target = ProductsForAnArchive;

/** CF and ACDD alone. */
export const generalTarget: Target = {
  target: "general",
  layouts: { profiles: "ragged", profile: "single", series: "single" },
};

const documents = [ctdRules, usTemplateRules] as unknown as readonly RuleDocument[];

/** What ships, the general one first. */
export const targets: readonly Target[] = [
  generalTarget,
  ...documents.flatMap(({ products }) => products ?? []),
];

export const targetNames: readonly string[] = targets.map(({ target }) => target);

/** @throws RangeError for a name that is none of `targetNames` */
export function targetNamed(name: string): Target {
  const found = targets.find(({ target }) => target === name);
  if (!found) throw new RangeError(`there is no target ${name}; there are ${targetNames.join(", ")}`);
  return found;
}

/** Attributes with a fixed text that the target asks for in a place. */
export const targetAttributes = (
  { attributes = [] }: Target,
  on: ProductAttribute["on"],
  featureType: "profile" | "timeSeries",
  layout: Layout,
): Attribute[] =>
  attributes
    .filter(
      (one) =>
        one.on === on &&
        (one.featureType === undefined || one.featureType === featureType) &&
        (one.layout === undefined || one.layout === layout),
    )
    .map(({ name, value }) => textAttribute(name, value));
