import { type MemoryContent, type MemoryVariable, textAttribute } from "@wherry/netcdf";
import { attributes } from "./storage.ts";

const WORDS = {
  profile: { text: "profile_id", label: "cast_id", longName: "number of the cast in time order" },
  timeSeries: { text: "station_id", label: "station_name", longName: "number of the series" },
} as const;

/**
 * The variables with a number as identity of each cast or series, a coordinate variable of its own dimension; the
 * text that was the identity becomes a label beside it. Row counts are left out.
 *
 * @param dimension `profile` or `timeSeries`, one of the content's dimensions
 */
export function identityVariables(
  { dimensions = [], variables = [] }: MemoryContent,
  dimension: keyof typeof WORDS,
): MemoryVariable[] {
  const { text, label, longName } = WORDS[dimension];
  const count = dimensions.find(({ name }) => name === dimension)?.length ?? 1;
  const identity: MemoryVariable = {
    name: dimension,
    type: "int",
    dimensions: [dimension],
    data: Int32Array.from({ length: count }, (_, index) => index + 1),
    attributes: attributes(
      ["long_name", longName],
      ["cf_role", dimension === "profile" ? "profile_id" : "timeseries_id"],
      ["coverage_content_type", "referenceInformation"],
    ),
  };
  const others = variables
    .filter(({ name }) => name !== "row_size")
    .map((variable): MemoryVariable => {
      const named = withLabel(variable, text, label);
      return variable.name === text ? { ...withoutAttributes(named, ["cf_role"]), name: label } : named;
    });
  return [identity, ...others];
}

/** `coordinates` name the label in place of the former identity. */
function withLabel(variable: MemoryVariable, text: string, label: string): MemoryVariable {
  const list = variable.attributes ?? [];
  if (!list.some(({ name }) => name === "coordinates")) return variable;
  return {
    ...variable,
    attributes: list.map((attribute) =>
      attribute.name === "coordinates"
        ? textAttribute(
            "coordinates",
            String(attribute.value)
              .split(" ")
              .map((name) => (name === text ? label : name))
              .join(" "),
          )
        : attribute,
    ),
  };
}

export const withoutAttributes = (variable: MemoryVariable, names: readonly string[]): MemoryVariable => ({
  ...variable,
  attributes: (variable.attributes ?? []).filter(({ name }) => !names.includes(name)),
});
