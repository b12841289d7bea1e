import { type Cast, isTimeReference, parseUnits, sameDimension } from "@wherry/core";
import type { Variable } from "@wherry/netcdf";
import { textOf } from "./attributes.ts";
import type { CastValues } from "./cast-values.ts";
import { isNumeric } from "./stored-numbers.ts";
import { cellsOfCast } from "./take.ts";

/** Times of casts and, where the file has them, of rows. */
export interface CastTimes {
  /** Epoch seconds; NaN if not known. */
  readonly times: Float64Array;
  readonly roles: readonly Cast["timeRole"][];
  readonly endTimes: Float64Array;
  /** Seconds since the first row of each cast. */
  readonly elapsed: readonly (Float64Array | null)[];
  /** Variables that have found their place. */
  readonly taken: ReadonlySet<string>;
}

const says = ({ name, attributes }: Variable) =>
  `${name.replaceAll("_", " ")} ${textOf(attributes, "long_name") ?? ""}`.toLowerCase();

/** Of an end, and not of a time "between start and end". */
const isOfEnd = (variable: Variable) =>
  /\bend\b|\blast row\b/.test(says(variable)) && !/\bstart\b|\bfirst\b/.test(says(variable));

const isTime = ({ attributes }: Variable): boolean => {
  const parsed = parseUnits(textOf(attributes, "units") ?? "");
  return parsed.ok && isTimeReference(parsed.value);
};

/** The one coordinate of its kind: the one with the axis, else the one with the standard name. */
function coordinate(variables: readonly Variable[], name: string, axis: string): Variable | undefined {
  const numbers = variables.filter(isNumeric);
  const named = numbers.filter(({ attributes }) => textOf(attributes, "standard_name") === name);
  const hasAxis = ({ attributes }: Variable) => textOf(attributes, "axis")?.toUpperCase() === axis;
  return named.find(hasAxis) ?? named.find((variable) => !isOfEnd(variable)) ?? numbers.find(hasAxis);
}

/** Times from the coordinate of casts, or from the rows' own. */
export async function readTimes(from: CastValues): Promise<CastTimes> {
  const { layout } = from;
  const casts = from.at("cast");
  const rows = from.at("row");
  const nothing = () => new Float64Array(layout.places.length).fill(Number.NaN);
  const taken = new Set<string>();
  const ofRows = coordinate(rows, "time", "T");
  const ofCasts = coordinate(casts, "time", "T");
  let elapsed: (Float64Array | null)[] = layout.places.map(() => null);
  let times = nothing();
  let endTimes = nothing();
  let roles: Cast["timeRole"][] = layout.places.map(() => "unknown");
  if (ofCasts) {
    const moments = await from.moments(ofCasts);
    if (moments) {
      times = Float64Array.from(from.ofCast(ofCasts, moments), (value) => value ?? Number.NaN);
      const role = roleOf(ofCasts);
      roles = layout.places.map(() => role);
      sayTime(from, ofCasts);
      if (role !== "unknown")
        from.say(
          "timeRole",
          "stated",
          `long_name of ${ofCasts.name} says ${textOf(ofCasts.attributes, "long_name")}`,
          ofCasts,
          "long_name",
        );
    }
  }
  if (ofRows) {
    const moments = await from.moments(ofRows);
    if (moments) {
      taken.add(ofRows.name);
      if (!ofCasts) sayTime(from, ofRows);
      from.say("elapsed", "stated", `variable ${ofRows.name} gives the time of each row`, ofRows);
      for (const [cast, place] of layout.places.entries()) {
        const own = Float64Array.from(cellsOfCast(ofRows, layout, place), (cell) => moments[cell]!);
        const known = own.filter((moment) => !Number.isNaN(moment));
        if (known.length === 0) continue;
        const [first] = own;
        elapsed[cast] = own.map((moment) => moment - (Number.isNaN(first!) ? known[0]! : first!));
        endTimes[cast] = known.at(-1)!;
        if (!Number.isNaN(times[cast]!)) continue;
        times[cast] = known[0]!;
        roles[cast] = "start";
      }
    }
  }
  const counted = ofRows ? undefined : rows.find(isElapsed);
  if (counted) {
    taken.add(counted.name);
    const stated = await rowsInSeconds(from, counted);
    if (stated) {
      elapsed = stated;
      from.say(
        "elapsed",
        "stated",
        `variable ${counted.name}: long_name says ${textOf(counted.attributes, "long_name")}`,
        counted,
        "long_name",
      );
    }
  }
  const end = casts.find(
    (variable) => variable !== ofCasts && isNumeric(variable) && isTime(variable) && isOfEnd(variable),
  );
  const moments = end ? await from.moments(end) : null;
  if (end && moments) {
    endTimes = Float64Array.from(from.ofCast(end, moments), (value, i) =>
      value === undefined || Number.isNaN(value) ? endTimes[i]! : value,
    );
    from.say("endTime", "stated", `variable ${end.name}: ${wordsFor(end)}`, end, "long_name");
  }
  return { times, roles, endTimes, elapsed, taken };
}

/** Seconds since the first row, by its own words. */
const isElapsed = (variable: Variable): boolean =>
  isNumeric(variable) &&
  sameDimension(textOf(variable.attributes, "units") ?? "", "s") &&
  /\btime since the (?:first row|start)\b/.test(says(variable));

async function rowsInSeconds(from: CastValues, variable: Variable): Promise<Float64Array[] | null> {
  const cells = await from.cells(variable, "s");
  if (!cells) return null;
  return from.layout.places.map((place) =>
    Float64Array.from(cellsOfCast(variable, from.layout, place), (cell) => cells[cell]!),
  );
}

function sayTime(from: CastValues, variable: Variable) {
  const calendar = textOf(variable.attributes, "calendar");
  const units = textOf(variable.attributes, "units");
  from.say(
    "time",
    "stated",
    `variable ${variable.name}: units says ${units}${calendar ? `, calendar says ${calendar}` : ""}`,
    variable,
    "units",
  );
  from.say(
    "timeZone",
    "stated",
    "times in CF units are in UTC unless the units name another zone",
    variable,
    "units",
  );
}

function roleOf(variable: Variable): Cast["timeRole"] {
  const text = (textOf(variable.attributes, "long_name") ?? "").toLowerCase();
  const roles = [
    ["start", /\bstart\b|\bbeginning\b|\bfirst row\b/],
    ["bottom", /\bbottom\b|\bdeepest\b/],
    ["end", /\bend\b|\blast row\b/],
  ] as const;
  const found = roles.filter(([, words]) => words.test(text));
  return found.length === 1 ? found[0]![0] : "unknown";
}

const wordsFor = ({ attributes }: Variable) => {
  const longName = textOf(attributes, "long_name");
  return longName === null ? "by its name" : `long_name says ${longName}`;
};

/** Start and end positions of each cast. */
export async function readPositions(
  from: CastValues,
): Promise<{ readonly starts: readonly Cast["start"][]; readonly ends: readonly Cast["end"][] }> {
  const casts = from.at("cast").filter(isNumeric);
  const latitude = coordinate(casts, "latitude", "Y");
  const longitude = coordinate(casts, "longitude", "X");
  const none = from.layout.places.map(() => null);
  const starts = latitude && longitude ? await positions(from, latitude, longitude, "start") : none;
  if (latitude && longitude && starts.some((start) => start !== null))
    for (const [fact, variable] of [["latitude", latitude] as const, ["longitude", longitude] as const])
      from.say(
        fact,
        textOf(variable.attributes, "standard_name") === fact ? "stated" : "implied",
        `variable ${variable.name}: ${textOf(variable.attributes, "standard_name") === fact ? `standard_name says ${fact}` : "by its axis"}, units says ${textOf(variable.attributes, "units")}`,
        variable,
        "standard_name",
      );
  const ofEnd = (units: string, word: RegExp) =>
    casts.find(
      (variable) =>
        variable !== latitude &&
        variable !== longitude &&
        isOfEnd(variable) &&
        word.test(says(variable)) &&
        sameDimension(textOf(variable.attributes, "units") ?? "", units),
    );
  const endLatitude = ofEnd("degrees_north", /\blatitude\b/);
  const endLongitude = ofEnd("degrees_east", /\blongitude\b/);
  if (!endLatitude || !endLongitude) return { starts, ends: none };
  const ends = await positions(from, endLatitude, endLongitude, "end");
  if (ends.some((end) => end !== null))
    from.say(
      "endPosition",
      "stated",
      `variables ${endLatitude.name} and ${endLongitude.name}`,
      endLatitude,
      "long_name",
    );
  return { starts, ends };
}

async function positions(
  from: CastValues,
  latitude: Variable,
  longitude: Variable,
  which: "start" | "end",
): Promise<readonly Cast["start"][]> {
  const latitudes = await from.numbers(latitude, "degrees_north");
  const longitudes = await from.numbers(longitude, "degrees_east");
  const counted = from
    .at("cast")
    .find(
      (variable) =>
        isNumeric(variable) && /\bsatellites\b/.test(says(variable)) && says(variable).includes(which),
    );
  const satellites = counted ? await from.numbers(counted, null) : null;
  for (const variable of [latitude, longitude])
    if (textOf(variable.attributes, "units") === null)
      from.find(
        "position-units",
        `${variable.name} has no units; degrees are assumed`,
        "Give it units.",
        variable,
      );
  return from.layout.places.map((_, cast) => {
    const [north, east] = [latitudes[cast]!, longitudes[cast]!];
    if (Number.isNaN(north) || Number.isNaN(east)) return null;
    if (Math.abs(north) > 90 || east < -180 || east > 360) {
      from.find(
        "position",
        `latitude ${north}, longitude ${east} is no place on Earth; the ${which} position is left out`,
        `Correct ${latitude.name} and ${longitude.name}.`,
        latitude,
        cast,
      );
      return null;
    }
    const seen = satellites?.[cast] ?? Number.NaN;
    return {
      latitude: north,
      longitude: east > 180 ? east - 360 : east,
      satellites: Number.isNaN(seen) ? null : seen,
      quality: null,
    };
  });
}

/** Depth at which each series was held, where the file states one for the whole series. */
export async function readFixedDepths(from: CastValues): Promise<readonly Cast["fixedDepth"][]> {
  const vertical = from
    .at("cast")
    .filter(isNumeric)
    .filter(({ attributes }) => textOf(attributes, "standard_name") === "depth");
  const variable = vertical.find(({ attributes }) => textOf(attributes, "axis") === "Z") ?? vertical[0];
  if (!variable || textOf(variable.attributes, "positive")?.toLowerCase() === "up") {
    if (variable)
      from.find(
        "depth-direction",
        `depth counts downwards, positive of ${variable.name} says up; the fixed depth is left out`,
        "Correct positive, or use height.",
        variable,
      );
    else from.say("fixedDepth", "unknown", "no variable gives one depth for the whole series");
    return from.layout.places.map(() => null);
  }
  const depths = await from.numbers(variable, "m");
  from.say(
    "fixedDepth",
    "stated",
    `variable ${variable.name}: standard_name says depth, which counts from the sea surface`,
    variable,
    "standard_name",
  );
  return Array.from(depths, (depth) => (Number.isNaN(depth) ? null : { depth, reference: "sea surface" }));
}

/** What was subtracted from the pressure of each cast, dbar. */
export async function readPressureOffsets(from: CastValues): Promise<Float64Array> {
  const variable = from
    .at("cast")
    .find(
      (each) =>
        isNumeric(each) &&
        /\boffset subtracted from the pressure\b/.test(says(each)) &&
        sameDimension(textOf(each.attributes, "units") ?? "", "dbar"),
    );
  if (!variable) return new Float64Array(from.layout.places.length).fill(Number.NaN);
  from.say(
    "pressureOffset",
    "stated",
    `variable ${variable.name}: ${wordsFor(variable)}`,
    variable,
    "long_name",
  );
  return from.numbers(variable, "dbar");
}
