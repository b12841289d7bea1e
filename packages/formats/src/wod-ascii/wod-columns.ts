import {
  type Column,
  depthFromPressure,
  type Evidence,
  Flag,
  parseUnits,
  temperatureFrom68Column,
} from "@wherry/core";
import { type Asking, oneOfWords } from "../asking.ts";
import { onPracticalScale } from "../practical-scale.ts";
import { headerOfCode, quantityOfCode, WOD, WOD_DEPTH } from "./codes.ts";
import type { WodCell, WodProfile } from "./profile.ts";

type Say = (fact: string, certainty: Evidence["certainty"], because: string, offset?: number) => void;

interface Wanted {
  readonly id: string;
  /** Year of the cast, which decides on the scales of temperature and salinity. */
  readonly year: number;
  /** Degrees north, for gravity; 45 if not known. */
  readonly latitude: number;
  readonly asking: Asking;
  readonly say: Say;
}

/** Columns of a profile: depth, every variable, and the uncertainties that the Q variant gives. */
export function columnsOf(profile: WodProfile, wanted: Wanted): ReadonlyMap<string, Column> {
  const depthCells = profile.levels.map(({ depth }) => depth);
  const depth = columnOf(depthCells, "depth", 0, WOD_DEPTH, {
    name: "depth",
    standardName: "depth",
    longName: "depth below the water surface",
    units: "m",
  });
  wanted.say("column:depth", "stated", "the format gives depth in metres below the surface");
  const columns = new Map([[depth.name, depth]]);
  const put = (column: Column) => columns.set(column.name, column);
  putUncertainty(depthCells, depth, "m", put);
  for (const [index, { code, offset }] of profile.variables.entries()) {
    const cells = profile.levels.map((level) => level.cells[index]!);
    const column = settled(code, cells, index + 1, depth, {
      ...wanted,
      say: (fact, certainty, because) => wanted.say(fact, certainty, because, offset),
    });
    put(column);
    // a difference of temperatures has no zero of its own
    putUncertainty(cells, column, column.units === "degree_C" ? "K" : column.units, put);
  }
  return columns;
}

/** A variable's column, once its scale and unit are known as far as they can be. */
function settled(
  code: number,
  cells: readonly WodCell[],
  index: number,
  depth: Column,
  wanted: Wanted,
): Column {
  const { asking, say } = wanted;
  const header = headerOfCode(code);
  const quantity = quantityOfCode(code);
  const column = columnOf(cells, header, index, WOD, quantity);
  const fact = `column:${header}`;
  say(
    fact,
    quantity.units === null ? "unknown" : "stated",
    `code ${code} is ${quantity.longName}; ${quantity.words}`,
  );
  if (code === 1) return onScale(column, wanted, fact);
  if (code === 2)
    return onPracticalScale(column, wanted, (certainty, because) => say(fact, certainty, because));
  if (code === 25) return pressureOf(column, depth, wanted, fact);
  if (quantity.units === null) {
    const answer = asking.given({
      topic: "units",
      column: header,
      read: (text) => (parseUnits(text).ok ? text : null),
    });
    if (answer) {
      say(fact, "answered", answer.because);
      return { ...column, units: answer.value };
    }
  }
  return column;
}

function onScale(column: Column, { id, year, asking, say }: Wanted, fact: string): Column {
  if (year >= 1990) {
    say(fact, "assumed", "ITS-90: the data are younger than 1990 and nothing says otherwise");
    return column;
  }
  const answer = asking.settle({
    topic: "temperatureScale",
    holds: [id],
    text: `On which scale is the temperature of ${year}? The format does not say, and ITS-90 is of 1990.`,
    candidates: ["IPTS-68", "ITS-90", "unknown"],
    read: oneOfWords("IPTS-68", "ITS-90", "unknown"),
    form: "IPTS-68, ITS-90 or unknown",
  });
  if (answer) say(fact, "answered", answer.because);
  else say(fact, "unknown", "the scale is not told, and the data are older than ITS-90");
  if (answer?.value !== "IPTS-68") return column;
  const values = new Float64Array(column.values.length);
  temperatureFrom68Column(column.values, values);
  return { ...column, values };
}

/** Sea pressure where it agrees with the depth beside it; asked where it does not. */
function pressureOf(
  column: Column,
  depth: Column,
  { id, latitude, asking, say }: Wanted,
  fact: string,
): Column {
  const row = column.values.findIndex((value, i) => !Number.isNaN(value) && !Number.isNaN(depth.values[i]!));
  const [p, z] = [column.values[row] ?? Number.NaN, depth.values[row] ?? Number.NaN];
  // fresh water and the standard ocean differ by 3 %; the atmosphere is about 10 m of water
  if (Math.abs(depthFromPressure(p, latitude) - z) <= Math.min(2 + 0.03 * z, 7)) {
    say(fact, "implied", `sea pressure: ${p} dbar stand beside ${z} m of depth`);
    return column;
  }
  const answer = asking.settle({
    topic: "pressureKind",
    holds: [id],
    text:
      row < 0
        ? "Is the pressure sea pressure (0 at the surface) or absolute pressure (with the air above)?"
        : `Is the pressure sea pressure (0 at the surface) or absolute pressure (with the air above)? ${p} dbar stand beside ${z} m of depth.`,
    candidates: ["sea", "absolute"],
    read: oneOfWords("sea", "absolute"),
    form: "sea or absolute",
  });
  if (answer) say(fact, "answered", answer.because);
  return answer?.value === "absolute"
    ? { ...column, standardName: "sea_water_pressure", longName: "absolute pressure" }
    : column;
}

function columnOf(
  cells: readonly WodCell[],
  header: string,
  index: number,
  scheme: string,
  quantity: Pick<Column, "name" | "standardName" | "longName" | "units">,
): Column {
  const { name, standardName, longName, units } = quantity;
  const values = Float64Array.from(cells, ({ value }) => value?.value ?? Number.NaN);
  const present = cells.flatMap(({ value }) => value ?? []);
  return {
    name,
    standardName,
    longName,
    units,
    values,
    flags: Uint8Array.from(values, (value) => (Number.isNaN(value) ? Flag.missing : Flag.notEvaluated)),
    source: {
      header,
      units: null,
      index,
      decimals: present.reduce((most, { decimals }) => Math.max(most, decimals), 0),
      significantDigits: present.reduce(
        (most, { significantDigits }) => Math.max(most, significantDigits),
        0,
      ),
      first: present[0]?.value ?? Number.NaN,
      last: present.at(-1)?.value ?? Number.NaN,
    },
    sourceFlags: { scheme, header: `${header} flag`, values: cells.map(({ flag }) => flag) },
    tests: new Map(),
    method: null,
  };
}

/** Uncertainties as a column beside their quantity, where there are any. */
function putUncertainty(
  cells: readonly WodCell[],
  { name, longName, source }: Column,
  units: string | null,
  put: (column: Column) => void,
): void {
  if (cells.every(({ uncertainty }) => uncertainty === null)) return;
  const own = cells.map(({ uncertainty }) => ({
    value: uncertainty,
    flag: "",
    originatorFlag: "",
    uncertainty: null,
  }));
  const column = columnOf(own, `${source?.header ?? name} uncertainty`, (source?.index ?? 0) + 100, WOD, {
    name: `${name}_source_uncertainty`,
    standardName: null,
    longName: `uncertainty of ${longName}, as the source gives it`,
    units,
  });
  put({ ...column, sourceFlags: null });
}
