import { Flag } from "@wherry/core";
import { type MemoryVariable, numberAttribute } from "@wherry/netcdf";
import type { ColumnGroup, RowPlaces } from "./column-groups.ts";
import { attributes, BYTE_FILL, charData } from "./storage.ts";

/** Where the flag scheme stands. */
export const FLAG_SCHEME = "IOC Manuals and Guides 54, volume 3 (2013)";

const VALUES = [1, 2, 3, 4, 9] as const;
const MEANINGS = "good not_evaluated questionable bad missing";

/** A variable name as words: `sound_speed` is `sound speed`. */
export const asWords = (name: string): string => name.replaceAll("_", " ");

/** A variable of IODE primary flags. */
export function flagVariable(
  name: string,
  of: string,
  dimensions: readonly string[],
  flags: ArrayLike<number>,
  coordinates: string | null,
  standardName = "aggregate_quality_flag",
): MemoryVariable {
  return {
    name,
    type: "byte",
    dimensions,
    data: Int8Array.from(flags),
    attributes: attributes(
      ["long_name", `quality flag of ${of}, IODE primary level`],
      ["standard_name", standardName],
      numberAttribute("_FillValue", "byte", BYTE_FILL),
      numberAttribute("flag_values", "byte", VALUES),
      ["flag_meanings", MEANINGS],
      ["references", FLAG_SCHEME],
      ["coverage_content_type", "qualityInformation"],
      ["coordinates", coordinates],
    ),
  };
}

/** Standard names of single tests; the others have none of their own. */
const TEST_NAMES: Readonly<Record<string, string>> = {
  attenuated_signal: "attenuated_signal_test_quality_flag",
  climatology: "climatology_test_quality_flag",
  regional_range: "climatology_test_quality_flag",
  flat_line: "flat_line_test_quality_flag",
  gross_range: "gross_range_test_quality_flag",
  multivariate: "multi_variate_test_quality_flag",
  neighbour: "neighbor_test_quality_flag",
  rate_of_change: "rate_of_change_test_quality_flag",
  spike: "spike_test_quality_flag",
  spike_return: "spike_test_quality_flag",
  spike_vertical: "spike_test_quality_flag",
  end_spike: "spike_test_quality_flag",
};

/** Result of every test that judged a quantity, one variable each: which of them decided a flag can be seen. */
export function testFlagVariables(
  group: ColumnGroup,
  places: RowPlaces,
  dimension: string,
  coordinates: string,
): MemoryVariable[] {
  const tests = new Set(group.columns.flatMap((column) => [...(column?.tests.keys() ?? [])]));
  return [...tests].map((test) =>
    flagVariable(
      `${group.name}_${test}_qc`,
      `${asWords(group.name)} by ${test === "inputs" ? "what it was computed from" : `the test ${asWords(test)}`}`,
      [dimension],
      joinedFlags(places, (cast) => {
        const column = group.columns[cast];
        if (!column) return null;
        return column.tests.get(test) ?? Uint8Array.from(column.values, notRun);
      }),
      coordinates,
      TEST_NAMES[test] ?? "quality_flag",
    ),
  );
}

const notRun = (value: number): number => (Number.isNaN(value) ? Flag.missing : Flag.notEvaluated);

/** Flags of a group over all rows; rows of casts without the column are missing. */
export function joinedFlags(places: RowPlaces, flags: (cast: number) => Uint8Array | null): Uint8Array {
  const all = new Uint8Array(places.total).fill(Flag.missing);
  for (const [cast, offset] of places.offsets.entries()) {
    const own = flags(cast);
    if (own !== null) all.set(own, offset);
  }
  return all;
}

/** Meanings of the codes of flag schemes, as their tables give them. */
const SCHEMES: Readonly<
  Record<string, { readonly reference: string; readonly codes: Record<string, string> }>
> = {
  "WOCE CTD": {
    reference: "WOCE CTD quality codes",
    codes: {
      0: "no_flag",
      1: "not_calibrated",
      2: "acceptable",
      3: "questionable",
      4: "bad",
      5: "not_reported",
      6: "interpolated",
      7: "despiked",
      8: "not_assigned",
      9: "not_sampled",
    },
  },
  "IODE primary level": {
    reference: FLAG_SCHEME,
    codes: { 1: "good", 2: "not_evaluated", 3: "questionable", 4: "bad", 9: "missing" },
  },
  Argo: {
    reference: "Argo user's manual (doi 10.13155/29825), reference table 2",
    codes: {
      0: "no_quality_control",
      1: "good",
      2: "probably_good",
      3: "probably_bad",
      4: "bad",
      5: "changed",
      8: "interpolated",
      9: "missing",
    },
  },
  WOD: {
    reference: "World Ocean Database, flags of values at observed levels",
    codes: {
      0: "accepted",
      1: "range_outlier",
      2: "failed_inversion_check",
      3: "failed_gradient_check",
      4: "bullseye_or_zero_gradient",
      5: "failed_gradient_and_inversion_checks",
      6: "failed_range_and_inversion_checks",
      7: "failed_range_and_gradient_checks",
      8: "failed_range_check_and_questionable",
      9: "failed_range_gradient_and_inversion_checks",
    },
  },
};

/**
 * The source's own flags of a group, unchanged: whole numbers as they are, single letters as ASCII codes,
 * anything longer as text, and so are the codes of several schemes. Null if no source brought flags.
 */
export function sourceFlagVariable(
  group: ColumnGroup,
  places: RowPlaces,
  dimension: string,
  coordinates: string | null,
): { readonly variable: MemoryVariable; readonly length: { name: string; length: number } | null } | null {
  const sets = group.columns.map((column) => column?.sourceFlags ?? null);
  const found = sets.filter((set) => set !== null);
  if (found.length === 0) return null;
  const schemes = [...new Set(found.map((set) => set.scheme))];
  const texts = new Array<string>(places.total).fill("");
  for (const [cast, offset] of places.offsets.entries())
    for (const [row, value] of (sets[cast]?.values ?? []).entries()) {
      const code = value.trim();
      // one digit has other meanings in another scheme: where several meet, each code carries its scheme
      texts[offset + row] = schemes.length > 1 && code !== "" ? `${sets[cast]!.scheme}: ${code}` : code;
    }
  const codes = [...new Set(texts)].filter((text) => text !== "").sort();
  const known = schemes.length === 1 ? SCHEMES[schemes[0]!] : undefined;
  const headers = [...new Set(found.map((set) => set.header))].join(", ");
  const common = {
    name: `${group.name}_source_flag`,
    longName: `flag of ${asWords(group.name)} as received from the source`,
    references: known?.reference,
    comment: `scheme: ${schemes.map((scheme) => (scheme === "unknown" ? "not told by the source" : scheme)).join(", ")}; column ${headers} of the source`,
  };
  const numeric = codes.every((code) => /^-?\d{1,2}$/.test(code));
  const asCode = (text: string) => (numeric ? Number.parseInt(text, 10) : text.charCodeAt(0));
  if (numeric || codes.every((code) => /^[!-~]$/.test(code))) {
    const values = codes.map(asCode);
    const order = values.map((_, index) => index).sort((a, b) => values[a]! - values[b]!);
    return {
      length: null,
      variable: {
        name: common.name,
        type: "byte",
        dimensions: [dimension],
        data: Int8Array.from(texts, (text) => (text === "" ? BYTE_FILL : asCode(text))),
        attributes: attributes(
          ["long_name", common.longName],
          ["standard_name", "quality_flag"],
          numberAttribute("_FillValue", "byte", BYTE_FILL),
          ...(codes.length === 0
            ? []
            : [
                numberAttribute(
                  "flag_values",
                  "byte",
                  order.map((index) => values[index]!),
                ),
                ["flag_meanings", order.map((index) => meaning(codes[index]!, known)).join(" ")] as const,
              ]),
          ["references", common.references],
          ["comment", common.comment],
          ["coverage_content_type", "qualityInformation"],
          ["coordinates", coordinates],
        ),
      },
    };
  }
  const { data, length } = charData(texts);
  const lengthName = `${common.name}_length`;
  return {
    length: { name: lengthName, length },
    variable: {
      name: common.name,
      type: "char",
      dimensions: [dimension, lengthName],
      data,
      attributes: attributes(
        ["long_name", common.longName],
        ["comment", common.comment],
        ["coverage_content_type", "qualityInformation"],
        ["coordinates", coordinates],
      ),
    },
  };
}

const meaning = (code: string, scheme: { readonly codes: Record<string, string> } | undefined): string =>
  scheme?.codes[code] ??
  `code_${code.replace(/^-/, "minus_").replaceAll(/[^A-Za-z0-9_.+-]/g, (sign) => `x${sign.charCodeAt(0).toString(16)}`)}`;
