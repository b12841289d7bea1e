import { suggestUnits } from "@wherry/core";
import { plainOf } from "../../engine/attribute-value.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";
import { splitShift, unitOf } from "../../engine/unit-kinds.ts";

/** Units of vertical coordinates that older conventions allowed. */
const LEGACY = ["level", "layer", "sigma_level"];

export const unitsReadable = defineRule({
  id: "cf/units-readable",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("3.1"),
  covers: ["CF-3.1-R2"],
  title: "units is a text that UDUNITS reads",
  why: "Programs convert by these units; one that cannot be read leaves them with bare numbers.",
  remedy: "Write the unit of {variable} as UDUNITS spells it{instead}.",
  messages: {
    text: "units of {variable} is not one text but {found}",
    unknown: 'units of {variable}, "{found}", is not a unit that UDUNITS knows',
  },
  passing: [
    ...["degC", "S m-1", "dbar", "µS/cm", "kg m**-3", "1", "", "percent", "level"].map(
      (units) => `variables: float x ; x:units = "${units}" ;`,
    ),
    `variables: double t ; t:units = "days since 1950-01-01T00:00:00Z" ;`,
  ],
  failing: [
    {
      cdl: "variables: float x ; x:units = 1 ;",
      where: { variable: "x", attribute: "units" },
      message: "text",
    },
    ...["PSU", "deg C", "meters/sec2x"].map((units) => ({
      cdl: `variables: float x ; x:units = "${units}" ;`,
      where: { variable: "x", attribute: "units" },
      message: "unknown" as const,
    })),
  ],
  check(dataset, report) {
    for (const variable of dataset.all) {
      const attribute = variable.attributes.get("units");
      if (attribute === undefined) continue;
      const where = { variable: variable.name, attribute: "units" };
      const text = variable.text("units");
      if (text === undefined) {
        report(where, "text", { found: plainOf(attribute), fill: { instead: "" } });
        continue;
      }
      // what follows "since" is judged by the rules on time
      const unit = splitShift(text)?.unit ?? text;
      if (LEGACY.includes(unit) || unitOf(unit) !== null) continue;
      const better = suggestUnits(unit);
      const instead = better === null ? "" : `: "${better.units}" (${better.because})`;
      const expected = better === null ? {} : { expected: better.units };
      report(where, "unknown", { found: text, ...expected, fill: { instead } });
    }
  },
});
