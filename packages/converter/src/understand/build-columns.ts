import {
  type Column,
  convertUnitsColumn,
  type Evidence,
  Flag,
  type Problem,
  temperatureFrom68Column,
} from "@wherry/core";
import { readHead } from "./column-head.ts";
import { type ColumnMeaning, meaningOf } from "./column-meaning.ts";
import { conductivityKind } from "./conductivity-kind.ts";
import { evidence, type FileFacts } from "./file-facts.ts";
import { suspectMarkers } from "./missing-markers.ts";
import { extentOf, medianOf, type NumberColumn, withoutMarkers } from "./number-column.ts";
import { pressureKind } from "./pressure-kind.ts";
import type { RawCast, RawColumn } from "./raw-cast.ts";
import { salinityScale, temperatureScale } from "./scales.ts";
import { DISSOLVED, QUANTITIES, type Quantity, type QuantityId } from "./vocabulary/quantities.ts";
import { readUnit, type UnitSpelling } from "./vocabulary/unit-spellings.ts";
import { plainWords } from "./words.ts";

export interface BuiltColumns {
  readonly columns: ReadonlyMap<string, Column>;
  readonly texts: ReadonlyMap<string, readonly string[]>;
  readonly evidence: readonly Evidence[];
  readonly findings: readonly Problem[];
  readonly markers: readonly string[];
}

/** A column of a known quantity in a known unit. */
export interface Settled {
  readonly column: RawColumn;
  readonly quantity: QuantityId;
  readonly unit: UnitSpelling | null;
  readonly numbers: NumberColumn;
}

/** What the columns of a cast depend on beside themselves. */
export interface ColumnContext {
  readonly id: string;
  readonly facts: FileFacts;
  /** Epoch seconds of the cast, NaN if not known. */
  readonly time: number;
  readonly timeColumns: ReadonlyMap<string, "absolute" | "elapsed">;
}

/** Turns the columns of a cast into quantities in house units; what is not understood passes through. */
export function buildColumns(cast: RawCast, context: ColumnContext): BuiltColumns {
  const { facts } = context;
  const found: Evidence[] = [];
  const findings: Problem[] = [];
  const texts = new Map<string, readonly string[]>();
  const markers = new Set<string>();
  const settled: Settled[] = [];
  const others: { column: RawColumn; numbers: NumberColumn }[] = [];
  const flagColumns: RawColumn[] = [];
  const place = cast.headLine === null ? { file: facts.path } : { file: facts.path, line: cast.headLine };
  const note = (column: RawColumn, certainty: Evidence["certainty"], because: string) =>
    found.push(evidence(`column:${column.head.header}`, certainty, because, place));
  const cells = (column: RawColumn) => cast.rows.map((row) => row[column.index] ?? "");
  const bad = suspectMarkers(cast, context);

  for (const column of cast.columns) {
    const { meaning, head } = column;
    const timeRole = context.timeColumns.get(head.header);
    if (timeRole) {
      texts.set(head.header, cells(column));
      const fact = timeRole === "absolute" ? "timeColumn" : "elapsedColumn";
      found.push(
        evidence(
          `${fact}:${head.header}`,
          "stated",
          timeRole === "absolute" ? "its cells are dates or times" : "it counts time from the start",
          place,
        ),
      );
      continue;
    }
    if (meaning.kind === "flag") {
      flagColumns.push(column);
      continue;
    }
    if (column.numbers === null) {
      texts.set(head.header, cells(column));
      continue;
    }
    const numbers =
      bad.length > 0
        ? withoutMarkers(
            column.numbers,
            bad.map(({ value }) => value),
            bad.filter(({ text }) => cells(column).includes(text)).map(({ text }) => text),
          )
        : column.numbers;
    for (const marker of numbers.markers) markers.add(marker);
    if (numbers.unread.length > 0) findings.push(unreadFinding(column, numbers, cast, facts.path));
    const answer = answeredQuantity(column, context, note);
    const final = answer ?? meaning;
    const known = settleColumn(column, final, numbers, context, note);
    if (known) settled.push(known);
    else others.push({ column, numbers });
  }

  const columns = new Map<string, Column>();
  const add = (column: Column) => {
    let name = column.name;
    for (let n = 2; columns.has(name); n++) name = `${column.name}_${n}`;
    columns.set(
      name,
      name === column.name
        ? column
        : { ...column, name, longName: `${column.longName} (${name.slice(column.name.length + 1)})` },
    );
  };
  const pressure = pressureKind(settled, context, note);
  const conductivity = conductivityKind(settled, cast, context, note);
  const built: { index: number; column: Column }[] = [];
  for (const each of settled) {
    const quantity = pressure.get(each) ?? conductivity.get(each) ?? each.quantity;
    const scale = quantity === "temperature" ? temperatureScale(each, context, note) : null;
    const salt = quantity === "salinity" ? salinityScale(each, context, note) : quantity;
    built.push({ index: each.column.index, column: quantityColumn({ ...each, quantity: salt }, scale) });
  }
  for (const { column, numbers } of others)
    built.push({ index: column.index, column: otherColumn(column, numbers) });
  built.sort((a, b) => a.index - b.index);
  for (const { column } of built) add(column);
  attachFlags(flagColumns, columns, texts, cast, context);
  return { columns, texts, evidence: found, findings, markers: [...markers] };
}

/** The meaning a person gave a column, whatever its head says. */
function answeredQuantity(column: RawColumn, { facts, id }: ColumnContext, note: Note): ColumnMeaning | null {
  const given = facts.inquiry.given({
    topic: "quantity",
    column: column.head.header,
    cast: id,
    read: readQuantity(column),
  });
  if (!given) return null;
  note(column, "answered", given.because);
  return given.value;
}

export type Note = (column: RawColumn, certainty: Evidence["certainty"], because: string) => void;

/** Reads "depth [m]", "temperature [degC]", "other". */
const readQuantity =
  (column: RawColumn) =>
  (value: string): ColumnMeaning | null => {
    if (/^other$/i.test(value)) return { kind: "other" };
    const meaning = meaningOf(readHead(value, null), [], column.numbers);
    return meaning.kind === "quantity" ? meaning : null;
  };

/** Settles quantity and unit of one column; null where it passes through. */
function settleColumn(
  column: RawColumn,
  meaning: ColumnMeaning,
  numbers: NumberColumn,
  context: ColumnContext,
  note: Note,
): Settled | null {
  const { facts, id } = context;
  const { head } = column;
  const line = column.head.header;
  if (meaning.kind === "letter") {
    const [letter = "temperature"] = meaning.letters;
    const units = usualUnits(letter);
    const answer = facts.inquiry.settle({
      topic: "quantity",
      column: line,
      holds: [id],
      text: `What does the column "${line}" hold, and in which unit? A letter without a unit can mean many things.`,
      candidates: [...units.map((unit) => `${letter} [${unit}]`), "other"],
      read: readQuantity(column),
      form: 'a quantity with its unit, such as "temperature [degC]", or "other"',
    });
    if (answer?.value.kind !== "quantity") return null;
    note(column, "answered", answer.because);
    return settleColumn(column, answer.value, numbers, context, note);
  }
  if (meaning.kind === "contradiction") {
    const { quantity } = meaning;
    const answer = facts.inquiry.settle({
      topic: "units",
      column: line,
      holds: [id],
      text: `"${line}" says ${QUANTITIES[quantity].longName}, but its unit "${head.unitText}" measures something else. What is the unit?`,
      candidates: usualUnits(quantity),
      read: unitFor(quantity),
      form: `a unit such as ${usualUnits(quantity).join(" or ")}`,
    });
    if (!answer) return null;
    note(column, "answered", answer.because);
    return { column, quantity, unit: answer.value, numbers };
  }
  if (meaning.kind !== "quantity") return null;
  const { quantity } = meaning;
  const unit = meaning.unit ?? askUnit(column, quantity, numbers, context, note);
  if (unit === undefined) return null;
  note(column, head.unitText !== null && head.name !== "" ? "stated" : "implied", meaning.because);
  const checked = unit === null ? null : checkMagnitude(column, quantity, unit, numbers, context);
  if (checked === undefined) return null;
  return { column, quantity, unit: checked, numbers };
}

/** A unit for a name that has none: undefined leaves a question, null is a quantity without unit. */
function askUnit(
  column: RawColumn,
  quantity: QuantityId,
  numbers: NumberColumn,
  { facts, id }: ColumnContext,
  note: Note,
): UnitSpelling | null | undefined {
  const { kinds } = QUANTITIES[quantity];
  const { header, unitText } = column.head;
  if (quantity === "salinity" || (kinds as readonly string[]).includes("none")) {
    if (unitText === null || quantity !== "salinity") return null;
  }
  const middle = medianOf(numbers.values);
  // only one unit gives numbers of this size for sea water
  const bySize: Partial<Record<QuantityId, [string, number, number]>> = {
    sound_speed: ["m/s", 1350, 1650],
    density: ["kg/m3", 985, 1080],
  };
  const size = bySize[quantity];
  if (unitText === null && size && middle > size[1] && middle < size[2]) {
    note(column, "implied", `numbers about ${Math.round(middle)} can only be ${size[0]}`);
    return readUnit(size[0]);
  }
  const answer = facts.inquiry.settle({
    topic: "units",
    column: header,
    holds: [id],
    text:
      unitText === null
        ? `In which unit is "${header}"? The file gives none.`
        : `The unit "${unitText}" of "${header}" is not understood. Which unit is it?`,
    candidates: usualUnits(quantity),
    read: unitFor(quantity),
    form: `a unit such as ${usualUnits(quantity).join(" or ")}`,
  });
  if (!answer) return undefined;
  note(column, "answered", answer.because);
  return answer.value;
}

function usualUnits(quantity: QuantityId): readonly string[] {
  switch (QUANTITIES[quantity].kinds[0] as string) {
    case "pressure":
      return ["dbar", "bar", "kPa", "psi"];
    case "length":
      return ["m", "ft", "fathom"];
    case "temperature":
      return ["degC", "degF", "K"];
    case "conductivity":
      return ["mS/cm", "S/m", "uS/cm"];
    case "salinity":
      return ["PSS-78", "g/kg"];
    case "density":
      return ["kg/m3", "g/cm3"];
    case "speed":
      return ["m/s", "ft/s"];
    default:
      return ["mg/l", "umol/kg", "ml/l"];
  }
}

const unitFor = (quantity: QuantityId) => (value: string) => {
  const unit = readUnit(value);
  return unit && (QUANTITIES[quantity].kinds as readonly string[]).includes(unit.kind) ? unit : null;
};

/** What water can show, in house units; wide enough for hot springs and brines. */
const LIMITS: Partial<Record<QuantityId, readonly [number, number]>> = {
  temperature: [-3, 45],
  conductivity: [0, 100],
  specific_conductance: [0, 100],
  salinity: [0, 60],
  sound_speed: [1300, 1700],
  density: [900, 1150],
};

/** Numbers that the stated unit cannot have become a question; undefined then. */
function checkMagnitude(
  column: RawColumn,
  quantity: QuantityId,
  unit: UnitSpelling,
  numbers: NumberColumn,
  { facts, id }: ColumnContext,
): UnitSpelling | undefined {
  const limits = LIMITS[quantity];
  const house = QUANTITIES[quantity].houseUnits;
  if (!limits || house === null || unit.kind === "none" || unit.says === "per mille") return unit;
  const middle = convert(Float64Array.of(medianOf(numbers.values)), unit.units, house)[0]!;
  // seawater of less than 0.1 mS/cm is fresher than rain
  const tooSmall =
    quantity === "conductivity" &&
    unit.units === "uS cm-1" &&
    middle < 0.1 &&
    extentOf(numbers.values).max < 100;
  if (Number.isNaN(middle) || (middle >= limits[0] && middle <= limits[1] && !tooSmall)) return unit;
  const answer = facts.inquiry.settle({
    topic: "units",
    column: column.head.header,
    holds: [id],
    text: `"${column.head.header}" would be about ${Math.round(middle * 100) / 100} ${house}, which sea water does not show. Which unit is it?`,
    candidates: usualUnits(quantity),
    read: unitFor(quantity),
    form: `a unit such as ${usualUnits(quantity).join(" or ")}`,
  });
  return answer?.value;
}

function convert(values: Float64Array, from: string, to: string): Float64Array<ArrayBuffer> {
  const out = new Float64Array(values.length);
  if (from === to) out.set(values);
  else convertUnitsColumn(values, from, to, out);
  return out;
}

const flagsOf = (values: Float64Array) =>
  Uint8Array.from(values, (value) => (Number.isNaN(value) ? Flag.missing : Flag.notEvaluated));

function sourceOf({ head, index }: RawColumn, numbers: NumberColumn): Column["source"] {
  return {
    header: head.header,
    units: head.unitText,
    index,
    decimals: numbers.decimals,
    significantDigits: numbers.significantDigits,
    first: numbers.first,
    last: numbers.last,
  };
}

function quantityColumn(
  { column, quantity: id, unit, numbers }: Settled,
  scale: "ITS-90" | "IPTS-68" | null,
): Column {
  const quantity: Quantity = QUANTITIES[id];
  const dissolved = unit ? DISSOLVED[id]?.[unit.kind] : undefined;
  const units = dissolved?.units ?? quantity.houseUnits ?? (unit && unit.kind !== "none" ? unit.units : null);
  let values = Float64Array.from(numbers.values);
  if (unit && units && unit.kind !== "none" && unit.kind !== "turbidity") {
    // per mille and dimensionless salinities are numbers as they stand
    values =
      unit.kind === "salinity" && id === "salinity" ? values : convert(numbers.values, unit.units, units);
  }
  if (scale === "IPTS-68") {
    const t68 = values;
    values = new Float64Array(t68.length);
    temperatureFrom68Column(t68, values);
  }
  return {
    name: quantity.name,
    standardName: dissolved?.standardName ?? quantity.standardName,
    longName: quantity.longName,
    units,
    values,
    flags: flagsOf(values),
    source: sourceOf(column, numbers),
    sourceFlags: null,
    tests: new Map(),
    method: null,
  };
}

/** A column that means nothing to us: kept under a name made from its head. */
function otherColumn(column: RawColumn, numbers: NumberColumn): Column {
  const { head } = column;
  const name = plainWords(head.name || head.header)
    .replaceAll(" ", "_")
    .replace(/^(?=\d|$)/, "column_");
  const values = Float64Array.from(numbers.values);
  return {
    name: RESERVED.has(name) ? `${name}_as_received` : name,
    standardName: null,
    longName: head.header,
    units: head.unit && head.unit.kind !== "none" ? head.unit.units : null,
    values,
    flags: flagsOf(values),
    source: sourceOf(column, numbers),
    sourceFlags: null,
    tests: new Map(),
    method: null,
  };
}

// names with a meaning in products; a column that was not understood must not take one
const RESERVED = new Set([
  ...Object.values(QUANTITIES).map(({ name }) => name as string),
  "time",
  "latitude",
  "longitude",
  "profile",
  "station",
  "elapsed",
  "crs",
  "platform",
  "instrument",
]);

/** Flag columns go to the column left of them; alone they pass through as text. */
function attachFlags(
  flagColumns: readonly RawColumn[],
  columns: Map<string, Column>,
  texts: Map<string, readonly string[]>,
  cast: RawCast,
  { facts }: ColumnContext,
): void {
  for (const flag of flagColumns) {
    const values = cast.rows.map((row) => row[flag.index] ?? "");
    const left = [...columns].filter(([, { source }]) => source !== null && source.index < flag.index).at(-1);
    if (!left || left[1].source?.index !== flag.index - 1) {
      texts.set(flag.head.header, values);
      continue;
    }
    columns.set(left[0], {
      ...left[1],
      sourceFlags: { scheme: "unknown", header: flag.head.header, values },
    });
    facts.inquiry.settle({
      topic: "flagScheme",
      column: flag.head.header,
      holds: [],
      text: `Which flag scheme do the numbers under "${flag.head.header}" belong to? Until that is known they are kept and not used.`,
      candidates: [],
      example: "unknown",
      read: (value) => value,
      form: "the name of a flag scheme",
    });
  }
}

function unreadFinding(column: RawColumn, numbers: NumberColumn, cast: RawCast, file: string): Problem {
  const [first] = numbers.unread;
  const lines = numbers.unread.slice(0, 5).map(({ row }) => cast.lines[row]);
  const more = numbers.unread.length > 5 ? ` and ${numbers.unread.length - 5} more` : "";
  return {
    code: "understand/not-a-number",
    message: `"${first?.text}" under "${column.head.header}" is not a number; ${numbers.unread.length === 1 ? "it becomes" : "such cells become"} missing (line ${lines.join(", ")}${more})`,
    where: { file, line: cast.lines[first?.row ?? 0] ?? 1, column: column.index + 1 },
    remedy: "If it marks missing values, answer missingMarker with it; else correct the line.",
  };
}
