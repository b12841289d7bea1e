import { pressureFromDepthColumn } from "../seawater/depth.ts";
import type { Cast } from "./cast.ts";
import { withColumns, withStep } from "./change.ts";
import { computedColumn, latitudeOf } from "./computed-column.ts";

/**
 * Adds sea pressure to a cast that came with depth alone: every later step works on pressure. The depth stays as
 * it was measured. A series without either takes the pressure of its stated depth below the water surface, which
 * nothing can judge (flag 2). A cast with pressure, or without any depth, is given back as it is.
 *
 * @source TEOS-10 manual (2010), inverse of depth from pressure in the standard ocean. Instruments that print
 *         depth have mostly computed it that way from pressure (common practice, no source)
 */
export function addPressureFromDepth(cast: Cast): Cast {
  const depth = cast.columns.get("depth");
  if (cast.columns.has("pressure") || (depth !== undefined && depth.source === null)) return cast;
  const { fixedDepth } = cast;
  const nominal = depth === undefined;
  // a depth below a chart datum or a deck says nothing about the water above
  if (nominal && (fixedDepth === null || !/surface/i.test(fixedDepth.reference))) return cast;
  const depths = depth?.values ?? new Float64Array(cast.rows).fill(fixedDepth!.depth);
  const latitude = latitudeOf(cast);
  const values = new Float64Array(cast.rows);
  pressureFromDepthColumn(depths, latitude.value, values);
  const equation = `standard ocean, inverse of depth from pressure${nominal ? ", from the stated depth of the series" : ""}${latitude.words}`;
  const pressure = computedColumn({
    name: "pressure",
    standardName: "sea_water_pressure_due_to_sea_water",
    longName: "sea pressure, zero at the water surface",
    units: "dbar",
    values,
    method: {
      from: nominal ? [] : ["depth"],
      equation,
      references: "TEOS-10: IOC Manuals and Guides 56 (2010)",
    },
  });
  return withStep(withColumns(cast, pressure), {
    step: "pressure from depth",
    parameters: { equation },
    counts: {},
    words: `sea pressure computed from the ${nominal ? "stated depth of the series" : "depth of the source"}`,
  });
}
