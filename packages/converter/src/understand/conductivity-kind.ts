import { convertUnits, median, practicalSalinity } from "@wherry/core";
import type { ColumnContext, Note, Settled } from "./column-context.ts";
import { oneOf } from "./inquiry.ts";
import type { RawCast } from "./raw-cast.ts";
import type { QuantityId } from "./vocabulary/quantities.ts";

type Kind = "conductivity" | "specific_conductance";

/**
 * Conductivity in situ or referred to 25 °C. A bare word such as "EC" is settled by the file's own salinity if
 * that fits only one of them, else asked; a clear word that the salinity contradicts is asked about as well.
 */
export function conductivityKind(
  settled: readonly Settled[],
  cast: RawCast,
  { facts, id }: ColumnContext,
  note: Note,
): ReadonlyMap<Settled, QuantityId> {
  const kinds = new Map<Settled, QuantityId>();
  for (const each of settled) {
    if (each.quantity !== "conductivity") continue;
    const { meaning, head } = each.column;
    const bare = meaning.kind === "quantity" && meaning.bareConductivity;
    const byLine = [...cast.own, ...cast.shared].find(({ text }) =>
      /specific conduct|conductivity.{0,20}25|(?:referred|compensated|corrected|normalised|normalized) to 25|@ ?25|bezogen auf 25|ramen[eé]e? [aà] 25/i.test(
        text,
      ),
    );
    const bySalt = kindBySalinity(each, settled);
    const says: Kind | null = bare ? null : "conductivity";
    if (byLine === undefined && !bare && (bySalt === null || bySalt === says)) continue;
    if (byLine === undefined && bare && bySalt !== null) {
      kinds.set(each, bySalt);
      note(
        each.column,
        "implied",
        `the file's own salinity fits ${bySalt === "conductivity" ? "conductivity in situ" : "conductivity referred to 25 °C"} and not the other kind`,
      );
      continue;
    }
    const because = byLine
      ? `Line ${byLine.number} says "${byLine.text}".`
      : bare
        ? "The head does not say, and no salinity decides it."
        : "The file's own salinity fits the latter.";
    const answer = facts.inquiry.settle({
      topic: "conductivityKind",
      holds: [id],
      text: `Is "${head.header}" conductivity in situ, or specific conductance referred to 25 degC? ${because}`,
      candidates: ["in situ", "25 degC"],
      read: oneOf("in situ", "25 degC"),
      form: '"in situ" or "25 degC"',
    });
    if (!answer) kinds.set(each, "unsettled_conductivity");
    else {
      if (answer.value === "25 degC") kinds.set(each, "specific_conductance");
      note(each.column, "answered", answer.because);
    }
  }
  return kinds;
}

/** The kind that reproduces the salinity of the file; null if there is none, or both or neither do. */
function kindBySalinity(conductivity: Settled, settled: readonly Settled[]): Kind | null {
  const salinity = settled.find(({ quantity }) => quantity === "salinity");
  const temperature = settled.find(({ quantity }) => quantity === "temperature");
  if (!salinity || !temperature?.unit || !conductivity.unit) return null;
  const rows = salinity.numbers.values.length;
  const step = Math.max(1, Math.floor(rows / 50));
  const inSitu: number[] = [];
  const referred: number[] = [];
  for (let row = 0; row < rows; row += step) {
    const C = convertUnits(conductivity.numbers.values[row]!, conductivity.unit.units, "mS cm-1");
    const t = convertUnits(temperature.numbers.values[row]!, temperature.unit.units, "degree_C");
    const SP = salinity.numbers.values[row]!;
    if (!(C > 0) || Number.isNaN(t) || Number.isNaN(SP)) continue;
    inSitu.push(Math.abs(practicalSalinity(C, t, 0) - SP));
    // common practice, no source: loggers refer conductivity to 25 °C by 1.91 % a degree
    referred.push(Math.abs(practicalSalinity(C * (1 + 0.0191 * (t - 25)), t, 0) - SP));
  }
  if (inSitu.length < 3) return null;
  const [a, b] = [median(Float64Array.from(inSitu)), median(Float64Array.from(referred))];
  if (a < 0.5 && b > 1 && b > 4 * a) return "conductivity";
  return b < 0.5 && a > 1 && a > 4 * b ? "specific_conductance" : null;
}
