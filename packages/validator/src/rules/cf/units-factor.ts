import { cfClause, defineRule } from "../../engine/rule.ts";
import { isTime, splitShift, unitOf } from "../../engine/unit-kinds.ts";

export const unitsFactor = defineRule({
  id: "cf/units-factor",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("3.1.3"),
  editions: { clauses: [{ until: "1.10", clause: "3.1" }] },
  covers: ["CF-3.1.3-T3"],
  title: "A named unit has no numeric factor and no offset",
  why: "UDUNITS allows them, CF does not: programs that read the name alone would miss the factor.",
  remedy:
    "Use a prefix, or store the values in the plain unit; packed values use scale_factor and add_offset.",
  messages: {
    factor: 'units of {variable}, "{found}", has the factor {factor}',
    offset: 'units of {variable}, "{found}", has an offset',
  },
  passing: ["1e-3", "0.001", "m s-1", "kg m^-3", "1/s"].map(
    (units) => `variables: float x ; x:units = "${units}" ;`,
  ),
  failing: [
    {
      cdl: `variables: float x ; x:units = "10 m" ;`,
      where: { variable: "x", attribute: "units" },
      message: "factor",
    },
    {
      cdl: `variables: float x ; x:units = "degC @ 5" ;`,
      where: { variable: "x", attribute: "units" },
      message: "offset",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.all) {
      const found = variable.text("units");
      if (found === undefined) continue;
      const where = { variable: variable.name, attribute: "units" };
      const shift = splitShift(found);
      if (shift !== null && !isTime(shift.unit) && unitOf(found) !== null) report(where, "offset", { found });
      const parts = unitOf(shift?.unit ?? found)?.parts ?? [];
      const factor = parts.find((part) => part.kind === "number" && Number(part.text) !== 1);
      if (factor !== undefined && parts.some(({ kind }) => kind === "name"))
        report(where, "factor", { found, fill: { factor: factor.text } });
    }
  },
});
