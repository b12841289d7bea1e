import { convertUnits, median } from "@wherry/core";
import type { ColumnContext, Note, Settled } from "./column-context.ts";
import { readHead } from "./column-head.ts";
import { type ColumnMeaning, meaningOf } from "./column-meaning.ts";
import { extentOf, type NumberColumn } from "./number-column.ts";
import type { RawColumn } from "./raw-cast.ts";
import { QUANTITIES, type QuantityId } from "./vocabulary/quantities.ts";
import { readUnit, type UnitSpelling } from "./vocabulary/unit-spellings.ts";

/** Reads "depth [m]", "temperature [degC]", "other". */
export const readQuantity =
  (column: RawColumn) =>
  (value: string): ColumnMeaning | null => {
    if (/^other$/i.test(value)) return { kind: "other" };
    const meaning = meaningOf(readHead(value, null), [], column.numbers);
    return meaning.kind === "quantity" ? meaning : null;
  };

/** Settles quantity and unit of one column; null where it passes through. */
export function settleColumn(
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
  const isStated = head.unitText !== null && head.name !== "";
  note(column, meaning.byPerson ? "answered" : isStated ? "stated" : "implied", meaning.because);
  const checked = checkMagnitude(column, quantity, unit, numbers, context);
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
  const middle = median(numbers.values);
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

export function usualUnits(quantity: QuantityId): readonly string[] {
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
    case "none":
      return ["1"];
    case "voltage":
      return ["V", "mV"];
    default:
      return ["mg/l", "umol/kg", "ml/l"];
  }
}

export const unitFor = (quantity: QuantityId) => (value: string) => {
  const unit = readUnit(value);
  return unit && (QUANTITIES[quantity].kinds as readonly string[]).includes(unit.kind) ? unit : null;
};

/** What water can show, in house units; wide enough for hot springs and brines. */
const LIMITS: Partial<Record<QuantityId, readonly [number, number]>> = {
  pressure: [-15, 11_500],
  absolute_pressure: [-15, 11_500],
  depth: [-11_500, 11_500],
  temperature: [-3, 45],
  conductivity: [0, 100],
  specific_conductance: [0, 100],
  salinity: [0, 60],
  sound_speed: [1300, 1700],
  density: [900, 1150],
  sigma_t: [-10, 60],
  ph: [0, 14],
};

/** The same for what is dissolved or suspended, by the kind of its unit: limits in that unit. */
const LIMITS_BY_KIND: Partial<
  Record<QuantityId, Partial<Record<UnitSpelling["kind"], readonly [string, number, number]>>>
> = {
  // pure oxygen at 0 degC dissolves to about 70 mg/l; water shows a third of it
  oxygen: {
    "mass-concentration": ["mg L-1", -1, 30],
    "volume-ratio": ["mL L-1", -1, 21],
    "molar-per-mass": ["umol kg-1", -20, 950],
    "molar-per-volume": ["umol L-1", -20, 950],
    percent: ["percent", -5, 300],
  },
  chlorophyll: { "mass-concentration": ["ug L-1", -10, 1000] },
  battery: { voltage: ["V", 0, 60] },
};

/** Numbers that the stated unit cannot have become a question; undefined then. */
function checkMagnitude(
  column: RawColumn,
  quantity: QuantityId,
  unit: UnitSpelling | null,
  numbers: NumberColumn,
  { facts, id }: ColumnContext,
): UnitSpelling | null | undefined {
  const byKind = unit ? LIMITS_BY_KIND[quantity]?.[unit.kind] : undefined;
  const limits = byKind ? ([byKind[1], byKind[2]] as const) : LIMITS[quantity];
  const plain =
    unit === null || unit.kind === "none" || unit.says === "per mille" || unit.kind === "salinity";
  const house = byKind?.[0] ?? (plain ? "1" : QUANTITIES[quantity].houseUnits);
  if (!limits || house === null) return unit;
  const convert = (value: number) => (plain ? value : convertUnits(value, unit.units, house));
  const { min, max } = extentOf(numbers.values);
  const mayBeSmall = quantity === "conductivity" && unit?.units === "uS cm-1" && max < 100;
  // the median of values that are all possible is possible
  if (!mayBeSmall && [min, max].map(convert).every((value) => value >= limits[0] && value <= limits[1]))
    return unit;
  const middle = convert(median(numbers.values));
  // seawater of less than 0.1 mS/cm is fresher than rain
  const tooSmall = mayBeSmall && middle < 0.1;
  if (Number.isNaN(middle) || (middle >= limits[0] && middle <= limits[1] && !tooSmall)) return unit;
  const rounded = Math.round(middle * 100) / 100;
  const answer = facts.inquiry.settle({
    topic: "units",
    column: column.head.header,
    holds: [id],
    text: `"${column.head.header}" would be about ${rounded}${house === "1" ? "" : ` ${house}`}, which water does not show. Which unit is it? If it holds something else, answer quantity:${column.head.header} with other.`,
    candidates: usualUnits(quantity),
    read: unitFor(quantity),
    form: `a unit such as ${usualUnits(quantity).join(" or ")}`,
  });
  return answer?.value;
}
