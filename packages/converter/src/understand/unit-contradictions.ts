import { convertUnits, median, practicalSalinity } from "@wherry/core";
import type { ColumnContext, Note, Settled } from "./column-context.ts";
import { allLines } from "./file-facts.ts";
import { extentOf } from "./number-column.ts";
import { instrumentFacts } from "./other-facts.ts";
import type { RawCast } from "./raw-cast.ts";
import { unitFor, usualUnits } from "./settle-column.ts";
import { readUnit, type UnitSpelling } from "./vocabulary/unit-spellings.ts";

/** A column whose unit the rest of the cast contradicts, and the units that would put it right. */
interface Contradiction {
  readonly of: Settled;
  readonly because: string;
  readonly better: readonly string[];
}

/**
 * Units that other columns or the header contradict become questions: pressure and depth that do not grow together,
 * a salinity that conductivity and temperature do not give, a pressure beyond what the instrument is rated to.
 *
 * @returns the columns with the units that a person answered
 */
export function askContradictions(
  settled: readonly Settled[],
  cast: RawCast,
  { facts, id }: ColumnContext,
  note: Note,
): readonly Settled[] {
  const found = [pressureAndDepth(settled), saltAndConductivity(settled), beyondRating(settled, cast)];
  const answered = new Map<Settled, UnitSpelling>();
  for (const contradiction of found) {
    if (!contradiction || answered.has(contradiction.of)) continue;
    const { of, because, better } = contradiction;
    const { header, unitText } = of.column.head;
    const answer = facts.inquiry.settle({
      topic: "units",
      column: header,
      holds: [id],
      text: `${because} Which unit is "${header}" in? ${unitText === null ? "" : `Answer ${unitText} if it is right as it stands.`}`.trim(),
      ...(cast.headLine === null ? {} : { line: cast.headLine }),
      candidates: [...new Set([...better, ...(of.unit ? [of.unit.units] : []), ...usualUnits(of.quantity)])],
      read: unitFor(of.quantity),
      form: `a unit such as ${usualUnits(of.quantity).join(" or ")}`,
    });
    if (!answer) continue;
    note(of.column, "answered", answer.because);
    answered.set(of, answer.value);
  }
  return settled.map((each) => ({ ...each, unit: answered.get(each) ?? each.unit }));
}

const of = (settled: readonly Settled[], ...quantities: readonly string[]) =>
  settled.find(
    ({ quantity, unit }) => quantities.includes(quantity) && unit !== null && unit.kind !== "none",
  );

const inUnits = ({ numbers, unit }: Settled, units: string): Float64Array => {
  const from = unit!.units;
  return from === units ? numbers.values : numbers.values.map((value) => convertUnits(value, from, units));
};

/** A metre of water adds 0.97 dbar (fresh water) to 1.04 dbar (the deepest sea): hydrostatics. */
const SLOPE = { least: 0.9, most: 1.12 } as const;
const fits = (slope: number) => slope > SLOPE.least && slope < SLOPE.most;

function pressureAndDepth(settled: readonly Settled[]): Contradiction | null {
  const pressure = of(settled, "pressure", "absolute_pressure");
  const depth = of(settled, "depth");
  if (!pressure?.unit || !depth?.unit) return null;
  const [p, z] = [extentOf(inUnits(pressure, "dbar")), extentOf(inUnits(depth, "m"))];
  const [dp, dz] = [p.max - p.min, z.max - z.min];
  if (!(Math.max(dp, dz) > 1) || fits(dp / dz)) return null;
  const because = `"${pressure.column.head.header}" changes by ${round(dp)} dbar while "${depth.column.head.header}" changes by ${round(dz)} m; a metre of water is about 1 dbar.`;
  const betterPressure = ["dbar", "bar", "kPa", "mbar", "MPa", "psi"].filter((unit) =>
    fits(convertUnits(convertUnits(dp, "dbar", pressure.unit!.units), unit, "dbar") / dz),
  );
  const betterDepth = ["m", "cm", "ft", "fathom"].filter((unit) =>
    fits(dp / convertUnits(convertUnits(dz, "m", depth.unit!.units), readUnit(unit)!.units, "m")),
  );
  return betterPressure.length === 0 && betterDepth.length > 0
    ? { of: depth, because, better: betterDepth }
    : { of: pressure, because, better: betterPressure };
}

/** A salinity that neither kind of conductivity gives, where another unit of one of the three would. */
function saltAndConductivity(settled: readonly Settled[]): Contradiction | null {
  const salinity = of(settled, "salinity") ?? settled.find(({ quantity }) => quantity === "salinity");
  const temperature = of(settled, "temperature");
  const conductivity = of(settled, "conductivity", "specific_conductance");
  if (!salinity || !temperature?.unit || !conductivity?.unit) return null;
  const S = salinity.numbers.values;
  const misfit = (conductivityUnit: string, temperatureUnit: string, factor: number): number => {
    const step = Math.max(1, Math.floor(S.length / 50));
    const kinds: number[][] = [[], []];
    for (let row = 0; row < S.length; row += step) {
      const C = convertUnits(conductivity.numbers.values[row]!, conductivityUnit, "mS cm-1");
      const t = convertUnits(temperature.numbers.values[row]!, temperatureUnit, "degree_C");
      if (!(C > 0) || !(t > -4 && t < 60) || Number.isNaN(S[row]!)) continue;
      const inSitu = practicalSalinity(C, t, 0);
      const referred = practicalSalinity(C * (1 + 0.0191 * (t - 25)), t, 0);
      // half a unit, or a twentieth in brackish water, is agreement
      for (const [i, value] of [inSitu, referred].entries())
        kinds[i]!.push(Math.abs(value - S[row]! * factor) / Math.max(0.5, 0.05 * S[row]! * factor));
    }
    if (kinds[0]!.length < 3) return Number.POSITIVE_INFINITY;
    return Math.min(...kinds.map((errors) => median(Float64Array.from(errors))));
  };
  const own = misfit(conductivity.unit.units, temperature.unit.units, 1);
  if (!(own > 4)) return null;
  const says = (unit: string) => `${unit} would.`;
  const start = `Conductivity and temperature as they stand do not give the file's own salinity;`;
  const betterC = ["mS/cm", "S/m", "uS/cm", "mS/m"].filter(
    (unit) => misfit(readUnit(unit)!.units, temperature.unit!.units, 1) < 1,
  );
  if (betterC.length > 0)
    return { of: conductivity, because: `${start} conductivity in ${says(betterC[0]!)}`, better: betterC };
  const betterT = ["degC", "degF", "K"].filter(
    (unit) => misfit(conductivity.unit!.units, readUnit(unit)!.units, 1) < 1,
  );
  if (betterT.length > 0)
    return { of: temperature, because: `${start} a temperature in ${says(betterT[0]!)}`, better: betterT };
  const factor = [1000, 100].find(
    (each) => misfit(conductivity.unit!.units, temperature.unit!.units, each) < 1,
  );
  if (factor === undefined) return null;
  return { of: salinity, because: `${start} ${factor} times that salinity would.`, better: [] };
}

function beyondRating(settled: readonly Settled[], cast: RawCast): Contradiction | null {
  const pressure = of(settled, "pressure");
  const rating = instrumentFacts(allLines(cast)).ratedPressure;
  if (!pressure?.unit || !rating) return null;
  const { max } = extentOf(inUnits(pressure, "dbar"));
  // instruments are lowered somewhat below their rating, not by half of it
  if (!(max > 1.5 * rating.value)) return null;
  return {
    of: pressure,
    because: `"${pressure.column.head.header}" reaches ${round(max)} dbar, and line ${rating.line.number} says "${rating.line.text}".`,
    better: [],
  };
}

const round = (value: number) => Math.round(value * 100) / 100;
