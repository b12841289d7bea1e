import { momentOfCell } from "./clock.ts";
import type { ColumnHead } from "./column-head.ts";
import { SERIAL_DAYS, type Since, sinceIn } from "./counted-time.ts";
import type { NumberColumn } from "./number-column.ts";
import { QUANTITIES, type QuantityId } from "./vocabulary/quantities.ts";
import { LETTER_ROLES, type NamedRole, roleOfName } from "./vocabulary/quantity-words.ts";
import type { UnitSpelling } from "./vocabulary/unit-spellings.ts";
import { plainWords } from "./words.ts";

/** What a column holds, before values and the rest of the file have been asked. */
export type ColumnMeaning =
  | {
      readonly kind: "quantity";
      readonly quantity: QuantityId;
      readonly unit: UnitSpelling | null;
      readonly because: string;
      /** A bare word for conductivity that may mean the one referred to 25 °C. */
      readonly bareConductivity: boolean;
      /** Whether a person's answer or notes say so. */
      readonly byPerson?: true;
    }
  | { readonly kind: "letter"; readonly letters: readonly QuantityId[] }
  /** The unit measures something else than the name says. */
  | { readonly kind: "contradiction"; readonly quantity: QuantityId; readonly unit: UnitSpelling }
  | { readonly kind: "time"; readonly form: "datetime" | "date" | "clock" }
  | { readonly kind: "elapsed"; readonly unit: "s" | "min" | "h" | "ms" | "day" | null }
  /** Seconds since 1970: in UTC where a word says so, else on the file's own clock. */
  | { readonly kind: "epoch"; readonly unit: "s" | "ms"; readonly utc: boolean }
  | { readonly kind: "since"; readonly since: Since }
  | { readonly kind: "serial" | "dayOfYear" }
  | { readonly kind: "cast" | "station" | "latitude" | "longitude" | "satellites" | "flag" | "other" };

const ELAPSED_UNITS: Readonly<Record<string, "s" | "min" | "h" | "ms" | "day">> = {
  s: "s",
  min: "min",
  h: "h",
  ms: "ms",
  day: "day",
};

/** What a column means by its head and, for times, by how its cells look. */
export function meaningOf(
  head: ColumnHead,
  cells: readonly string[],
  numbers: NumberColumn | null,
): ColumnMeaning {
  const role = roleOfName(head.name);
  const form = timeForm(cells);
  if (form && (numbers === null || role?.role === "date" || role?.role === "datetime")) {
    if (role?.role !== "elapsed" || form !== "clock") return { kind: "time", form };
    // "00:12" could be hours and minutes or minutes and seconds
    return { kind: "elapsed", unit: cells.some((cell) => /^\d+:\d\d:\d\d/.test(cell)) ? "s" : null };
  }
  if (numbers === null) {
    if (role?.role === "cast" || role?.role === "station" || role?.role === "flag")
      return { kind: role.role };
    return role?.role === "latitude" || role?.role === "longitude" ? { kind: role.role } : { kind: "other" };
  }
  const since = sinceIn(head.header);
  if (since) return { kind: "since", since };
  const counted = countedTime(head, role, numbers);
  if (counted) return counted;
  if (role === null || head.name === "") return meaningByUnit(head);
  return meaningByRole(role, head);
}

const DAY_OF_YEAR =
  /^(?:day of (?:the )?year|doy|year ?day|julian ?day|jday|ordinal day|jour de l annee|jour julien|tag des jahres|dia del ano|dia juliano|dia do ano|giorno dell anno|dag van het jaar|dag i aret|arsdag|dag pa aret|vuodenpaiva)$/;
const SERIAL =
  /^(?:serial (?:date|day|time)|date (?:number|serial)|spreadsheet date|day number|serielle zeit)$/;

/** Numbers that can only be a count of days or seconds on the calendar, by name and size. */
function countedTime(
  head: ColumnHead,
  role: NamedRole | null,
  { first, values }: NumberColumn,
): ColumnMeaning | null {
  const words = plainWords(head.name || head.header);
  const clockRole = role !== null && ["date", "datetime", "time", "elapsed"].includes(role.role);
  const said =
    /\b(?:unix|epoch|posix)\b/.test(words.replaceAll("_", " ")) ||
    /\b(?:unix|epoch|posix)\b/i.test(head.header);
  const timed = clockRole || said || (words === "t" && head.unit?.kind === "time");
  if (timed) {
    // as an elapsed time these would be decades
    const unit = head.unit?.kind === "time" ? head.unit.units : null;
    if (first > (said ? 1e8 : 6.3e8) && first < 5e9 && (unit === null || unit === "s"))
      return { kind: "epoch", unit: "s", utc: said };
    if (first > (said ? 1e11 : 6.3e11) && first < 5e12 && (unit === null || unit === "ms"))
      return { kind: "epoch", unit: "ms", utc: said };
  }
  if (words === "t" && head.unit?.kind === "time")
    return { kind: "elapsed", unit: ELAPSED_UNITS[head.unit.units] ?? null };
  if (DAY_OF_YEAR.test(words) && values.every((value) => !(value < 0 || value >= 367)))
    return { kind: "dayOfYear" };
  const isDate = role?.role === "date" || role?.role === "datetime" || SERIAL.test(words);
  const inDays = head.unit === null || head.unit.units === "day";
  if (isDate && inDays && first > SERIAL_DAYS.least && first < SERIAL_DAYS.most) return { kind: "serial" };
  return null;
}

function meaningByRole({ role, words }: NamedRole, head: ColumnHead): ColumnMeaning {
  switch (role) {
    case "cast":
    case "station":
    case "latitude":
    case "longitude":
    case "satellites":
    case "flag":
      return { kind: role };
    case "air":
    case "sounding":
      return { kind: "other" };
    case "datetime":
    case "date":
      return head.unit?.kind === "time"
        ? { kind: "elapsed", unit: ELAPSED_UNITS[head.unit.units] ?? null }
        : { kind: "other" };
    case "time":
      return { kind: "elapsed", unit: ELAPSED_UNITS[head.unit?.units ?? ""] ?? null };
    case "elapsed":
      return { kind: "elapsed", unit: ELAPSED_UNITS[head.unit?.units ?? ""] ?? unitInWords(words) };
    case "ec":
      return quantity(
        "conductivity",
        head,
        `"${head.header}" is a word for conductivity`,
        head.unit?.says !== "25 degC",
      );
    case "conductivity_ratio":
      return quantity(
        "conductivity",
        { ...head, unit: RATIO },
        `"${head.header}" is a ratio to the conductivity of standard sea water at 15 °C, 42.914 mS/cm`,
        false,
      );
    default:
      return quantity(role, head, `"${head.header}" says ${words}`, false);
  }
}

function quantity(id: QuantityId, head: ColumnHead, because: string, bare: boolean): ColumnMeaning {
  const { unit } = head;
  const kinds: readonly string[] = QUANTITIES[id].kinds;
  if (unit && unit.kind !== "none" && !kinds.includes(unit.kind))
    return { kind: "contradiction", quantity: id, unit };
  const settled = settle(id, unit, head.header);
  return {
    kind: "quantity",
    quantity: settled,
    unit,
    because,
    bareConductivity: (bare || COMPENSATED.test(head.header)) && settled === "conductivity",
  };
}

/**
 * Conductivity ratios are those to C(35, 15, 0).
 *
 * @source Fofonoff and Millard (1983), UNESCO Technical Papers in Marine Science 44: C(35, 15, 0) = 42.914 mS/cm
 */
const RATIO: UnitSpelling = { kind: "conductivity", units: "42.914 mS cm-1" };

/** Words that conductivities referred to 25 °C have beside them. */
const COMPENSATED =
  /comp(?:ens|\.)|kompens|normali[sz]|referred|bezogen|ramen[eé]e|referid|riferit|corrected/i;

/** The unit or a further word can narrow a quantity: pressure to absolute, conductivity to that at 25 °C. */
function settle(id: QuantityId, unit: UnitSpelling | null, header: string): QuantityId {
  if (id === "conductivity" && unit?.says === "25 degC") return "specific_conductance";
  if (id === "pressure" && unit?.says === "absolute") return "absolute_pressure";
  if (id === "density" && /sigma/i.test(header)) return "sigma_t";
  return id;
}

function unitInWords(words: string): "s" | "min" | null {
  if (
    /\b(?:s|sec|secs|second|seconds|seconde|secondes|sekunden?|segundos|secondi|seconden|sekunder)\b/.test(
      words,
    )
  )
    return "s";
  return /\bminut/.test(words) ? "min" : null;
}

/** Names that are unknown, of one letter, or absent. */
function meaningByUnit(head: ColumnHead): ColumnMeaning {
  const plain = plainWords(head.name);
  const letters = LETTER_ROLES[plain];
  if (letters && plain.length === 1) {
    const fits = letters.find((id) => head.unit !== null && unitSays(id, head.unit));
    if (!fits)
      return head.unit === null || head.unit.kind === "none"
        ? { kind: "letter", letters }
        : { kind: "other" };
    return {
      kind: "quantity",
      quantity: settle(fits, head.unit, head.header),
      unit: head.unit,
      because: `"${head.name}" with the unit "${head.unitText}" is ${QUANTITIES[fits].longName}`,
      bareConductivity: false,
    };
  }
  if (head.name !== "" || !head.unit) return { kind: "other" };
  if (head.unit.kind === "time") return { kind: "elapsed", unit: ELAPSED_UNITS[head.unit.units] ?? null };
  const byUnit: Partial<Record<string, QuantityId>> = {
    pressure: "pressure",
    temperature: "temperature",
    conductivity: "conductivity",
    salinity: "salinity",
  };
  const id = byUnit[head.unit.kind];
  if (!id) return { kind: "other" };
  return quantity(id, head, `the unit "${head.unitText}" measures ${QUANTITIES[id].longName}`, false);
}

const unitSays = (id: QuantityId, unit: UnitSpelling) =>
  (QUANTITIES[id].kinds as readonly string[]).includes(unit.kind) ||
  (id === "salinity" && unit.kind === "none");

/** How times are written in a column, judged from its first cells that are not empty. */
function timeForm(cells: readonly string[]): "datetime" | "date" | "clock" | null {
  const sample = cells.filter((cell) => cell !== "" && /\d/.test(cell)).slice(0, 5);
  if (sample.length === 0) return null;
  const forms = sample.map((cell) => {
    const moment = momentOfCell(cell);
    if (!moment) return null;
    if (moment.dates.length === 0) return "clock";
    return moment.secondOfDay === null ? "date" : "datetime";
  });
  const [first = null] = forms;
  return forms.every((form) => form === first)
    ? first
    : forms.every((form) => form !== null)
      ? "datetime"
      : null;
}
