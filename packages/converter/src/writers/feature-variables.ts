import type { ListedCast } from "@wherry/contracts";
import { type Cast, type Position, positionFlags, presets, printedResolution, timeFlag } from "@wherry/core";
import { type MemoryDimension, type MemoryVariable, numberAttribute } from "@wherry/netcdf";
import { agreedNames } from "../sheet/identity-conflicts.ts";
import { lineOfCast } from "../sheet/line-of-cast.ts";
import type { Equipment } from "./equipment.ts";
import { flagVariable } from "./flag-variables.ts";
import { attributes, BYTE_FILL, charData, fillAttribute, fitsFloat, store, wholeNumbers } from "./storage.ts";
import { madeAt, type WritingContext } from "./writing-context.ts";

export const TIME_UNITS = "seconds since 1970-01-01 00:00:00Z";

/** Variables with one value per cast, and the dimensions of their texts. */
export interface FeatureVariables {
  readonly dimensions: readonly MemoryDimension[];
  /** Identity of the cast. */
  readonly identity: MemoryVariable;
  /** Nominal time and position: coordinates. */
  readonly coordinates: readonly MemoryVariable[];
  /** What else is told of each cast. */
  readonly facts: readonly MemoryVariable[];
}

/**
 * What products say once per cast.
 *
 * @param dimensions `["profile"]` for several casts, `[]` for the single cast of a series
 */
export function featureVariables(
  casts: readonly Cast[],
  dimensions: readonly string[],
  equipment: Equipment,
  context: WritingContext,
): FeatureVariables {
  const isSeries = dimensions.length === 0;
  const ids = charData(casts.map(({ id }) => id));
  const lengths: MemoryDimension[] = [{ name: "id_length", length: ids.length }];
  const text = (name: string, dimension: string, longName: string, texts: readonly string[]) => {
    const { data, length } = charData(texts);
    lengths.push({ name: dimension, length });
    return charVariable(name, [...dimensions, dimension], data, longName, "auxiliaryInformation");
  };
  const listed = casts.map(({ id }) => lineOfCast(context.sheet, id));
  const facts = [
    ...endVariables(casts, dimensions),
    ...satelliteVariables(casts, dimensions),
    ...offsetVariable(casts, dimensions),
    text(
      "source_file",
      "name_length",
      "name of the source file",
      casts.map(({ source, finished }) => finished?.sourceFile ?? baseName(source.path)),
    ),
    flagVariable(
      "position_qc",
      "the position of the cast",
      dimensions,
      positionFlags(casts, presets[context.sheet.processing?.preset ?? "estuary"]).map(
        (flag, index) => casts[index]!.finished?.positionFlag ?? flag,
      ),
      null,
    ),
    // rows of a series have times, and so flags of time, of their own
    ...(isSeries
      ? []
      : [
          flagVariable(
            "time_qc",
            "the time of the cast",
            dimensions,
            casts.map((cast) => cast.finished?.timeFlag ?? timeFlag(cast, madeAt(context))),
            null,
          ),
        ]),
  ];
  const agreed = agreedNames(context.sheet);
  const mayName = (name: string | undefined) =>
    name !== undefined && agreed.has(name.toLowerCase()) ? name : "";
  facts.push(...soundingVariable(listed, dimensions));
  for (const [name, longName, texts] of [
    ["wind", "wind as the field log has it", listed.map((entry) => entry?.wind ?? "")],
    ["sea", "state of the sea as the field log has it", listed.map((entry) => entry?.sea ?? "")],
    ["observer", "who lowered the instrument", listed.map((entry) => mayName(entry?.observer))],
  ] as const)
    if (texts.some((each) => each !== "")) facts.push(text(name, `${name}_length`, longName, texts));
  if (listed.some((entry) => entry?.station !== undefined))
    facts.push(
      text(
        "station",
        "station_length",
        "name of the station",
        listed.map((entry) => entry?.station ?? ""),
      ),
    );
  if (listed.some((entry) => entry?.notes !== undefined))
    facts.push(
      text(
        "remarks",
        "remarks_length",
        "remarks of the field log",
        listed.map((entry) => entry?.notes ?? ""),
      ),
    );
  facts.push(...equipmentVariables(equipment, dimensions));
  return {
    dimensions: lengths,
    identity: charVariable(
      isSeries ? "station_id" : "profile_id",
      [...dimensions, "id_length"],
      ids.data,
      isSeries ? "station identifier" : "cast identifier",
      "referenceInformation",
      isSeries ? "timeseries_id" : "profile_id",
    ),
    coordinates: [
      ...(isSeries ? [] : [timeVariable(casts, dimensions)]),
      positionVariable(casts, dimensions, "latitude", isSeries),
      positionVariable(casts, dimensions, "longitude", isSeries),
    ],
    facts,
  };
}

export const baseName = (path: string): string => path.split(/[/\\]/).at(-1) || path;

function charVariable(
  name: string,
  dimensions: readonly string[],
  data: Uint8Array,
  longName: string,
  content: string,
  role?: string,
): MemoryVariable {
  return {
    name,
    type: "char",
    dimensions,
    data,
    attributes: attributes(["long_name", longName], ["cf_role", role], ["coverage_content_type", content]),
  };
}

const ROLE_WORDS = {
  start: "time of the first row of the cast record",
  bottom: "time at the bottom of the cast",
  end: "time of the end of the cast",
  unknown: "time of the cast, which moment of it is not known",
} as const;

function timeVariable(casts: readonly Cast[], dimensions: readonly string[]): MemoryVariable {
  const roles = [...new Set(casts.map(({ timeRole }) => timeRole))];
  const values = store(
    casts.map(({ time }) => time),
    "double",
  );
  return {
    name: "time",
    type: "double",
    dimensions,
    data: values.data,
    attributes: attributes(
      ["long_name", roles.length === 1 ? ROLE_WORDS[roles[0]!] : "time of the cast"],
      ["standard_name", "time"],
      ["units", TIME_UNITS],
      ["calendar", "standard"],
      ["axis", "T"],
      values.missing > 0 ? fillAttribute(values) : null,
      ["ancillary_variables", "time_qc"],
      [
        "comment",
        roles.length === 1
          ? null
          : roles
              .map((role) => `${ROLE_WORDS[role]}: ${idsWhere(casts, (cast) => cast.timeRole === role)}`)
              .join("; "),
      ],
      ["coverage_content_type", "coordinate"],
    ),
  };
}

const idsWhere = (casts: readonly Cast[], is: (cast: Cast) => boolean): string =>
  casts
    .filter(is)
    .map(({ id }) => id)
    .join(", ");

function positionVariable(
  casts: readonly Cast[],
  dimensions: readonly string[],
  name: "latitude" | "longitude",
  isSeries: boolean,
): MemoryVariable {
  const values = store(
    casts.map(({ start }) => start?.[name] ?? Number.NaN),
    "double",
  );
  return {
    name,
    type: "double",
    dimensions,
    data: values.data,
    attributes: attributes(
      [
        "long_name",
        isSeries ? `${name} of the fixed position` : `${name} of the fix at the start of the cast`,
      ],
      ["standard_name", name],
      ["units", name === "latitude" ? "degrees_north" : "degrees_east"],
      ["axis", name === "latitude" ? "Y" : "X"],
      values.missing > 0 ? fillAttribute(values) : null,
      ["ancillary_variables", "position_qc"],
      ["coverage_content_type", "coordinate"],
    ),
  };
}

/** End of the record and the fix there; left out where no cast has them. */
function endVariables(casts: readonly Cast[], dimensions: readonly string[]): MemoryVariable[] {
  const variable = (
    name: string,
    values: readonly number[],
    longName: string,
    units: string,
    comment?: string,
  ) => {
    const stored = store(values, "double");
    if (stored.range === null) return [];
    return [
      {
        name,
        type: "double" as const,
        dimensions,
        data: stored.data,
        attributes: attributes(
          ["long_name", longName],
          ["units", units],
          fillAttribute(stored),
          ["comment", comment],
          ["coverage_content_type", "auxiliaryInformation"],
        ),
      },
    ];
  };
  const end = (name: keyof Position & ("latitude" | "longitude")) =>
    casts.map(({ end }) => end?.[name] ?? Number.NaN);
  const system = "same reference system as latitude and longitude";
  return [
    ...variable(
      "end_time",
      casts.map(({ endTime }) => endTime),
      "time of the last row of the cast record",
      TIME_UNITS,
    ),
    ...variable(
      "end_latitude",
      end("latitude"),
      "latitude of the fix at the end of the cast",
      "degrees_north",
      system,
    ),
    ...variable(
      "end_longitude",
      end("longitude"),
      "longitude of the fix at the end of the cast",
      "degrees_east",
      system,
    ),
  ];
}

/** Depth of the bottom by sounding, where the sheet or the field log has it. */
function soundingVariable(
  listed: readonly (ListedCast | undefined)[],
  dimensions: readonly string[],
): MemoryVariable[] {
  const stored = store(
    listed.map((entry) => entry?.sounding ?? Number.NaN),
    "double",
  );
  if (stored.range === null) return [];
  return [
    {
      name: "sounding",
      type: "double",
      dimensions,
      data: stored.data,
      attributes: attributes(
        ["long_name", "depth of the bottom below the water surface by sounding at the cast"],
        ["standard_name", "sea_floor_depth_below_sea_surface"],
        ["units", "m"],
        fillAttribute(stored),
        ["comment", "as written down in the field; not for navigation"],
        ["coverage_content_type", "auxiliaryInformation"],
      ),
    },
  ];
}

function satelliteVariables(casts: readonly Cast[], dimensions: readonly string[]): MemoryVariable[] {
  return (["start", "end"] as const).flatMap((which) => {
    const counts = casts.map((cast) => cast[which]?.satellites ?? Number.NaN);
    if (counts.every((count) => Number.isNaN(count))) return [];
    return wholeNumbers(`${which}_satellites`, "byte", dimensions, counts, {
      longName: `number of satellites used in the ${which} fix`,
      content: "auxiliaryInformation",
    });
  });
}

function offsetVariable(casts: readonly Cast[], dimensions: readonly string[]): MemoryVariable[] {
  const offsets = Float64Array.from(casts, ({ pressureOffset }) => pressureOffset);
  // the printed pressure is the stored one and the offset together
  const steps = Float64Array.from(casts, ({ columns, pressureOffset, finished }) => {
    const pressure = columns.get("pressure");
    // what a product had in single precision is whole in it
    const isSingle = finished && Math.fround(pressureOffset) === pressureOffset;
    return pressure?.source && !isSingle ? printedResolution(pressure) : Number.NaN;
  });
  const stored = store(offsets, fitsFloat(offsets, steps) ? "float" : "double");
  if (stored.range === null) return [];
  return [
    {
      name: "pressure_offset",
      type: stored.type,
      dimensions,
      data: stored.data,
      attributes: attributes(
        ["long_name", "atmospheric offset subtracted from the pressure of the source"],
        ["units", "dbar"],
        fillAttribute(stored),
        ["coverage_content_type", "auxiliaryInformation"],
      ),
    },
  ];
}

/** Which of several instruments or platforms each cast used. */
function equipmentVariables(
  { instruments, instrumentOf, platforms, platformOf }: Equipment,
  dimensions: readonly string[],
): MemoryVariable[] {
  const variable = (kind: "instrument" | "platform", count: number, indices: readonly number[]) => {
    if (count < 2) return [];
    const numbers = Array.from({ length: count }, (_, index) => index + 1);
    return [
      {
        name: `cast_${kind}`,
        type: "byte" as const,
        dimensions,
        data: Int8Array.from(indices, (index) => index + 1),
        attributes: attributes(
          ["long_name", `${kind} of the cast, by the name of its variable`],
          numberAttribute("_FillValue", "byte", BYTE_FILL),
          numberAttribute("flag_values", "byte", numbers),
          ["flag_meanings", numbers.map((number) => `${kind}${number}`).join(" ")],
          ["coverage_content_type", "referenceInformation"],
        ),
      },
    ];
  };
  return [
    ...variable("instrument", instruments.length, instrumentOf),
    ...variable("platform", platforms.length, platformOf),
  ];
}
