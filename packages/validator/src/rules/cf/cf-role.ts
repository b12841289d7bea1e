import { plainOf } from "../../engine/attribute-value.ts";
import { CF_ROLES } from "../../engine/layout.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";
import { castsCdl } from "./sampling-example.ts";

const ROLES = ["timeseries_id", "profile_id", "trajectory_id"];
const COMPOUND = ["timeseriesprofile", "trajectoryprofile"];

const withRole = (role: string) => castsCdl().replace('cf_role = "profile_id"', role);

export const cfRole = defineRule({
  id: "cf/cf-role",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("9.5"),
  editions: { since: "1.6" },
  covers: ["CF-9.5-T31", "CF-H.3-T37"],
  title: "One variable identifies the features by cf_role",
  why: "Programs tell the casts or stations apart by this variable.",
  remedy: "Set cf_role of the variable that names the features to {expected}.",
  messages: {
    value: "cf_role of {variable} is {found}",
    several: "cf_role stands on {found}, which is more often than the kind of sampling allows",
    missing: "no variable has cf_role, so nothing identifies the features of this {type} file",
  },
  passing: [castsCdl()],
  failing: [
    {
      cdl: withRole('cf_role = "cast_id"'),
      where: { variable: "cast_id", attribute: "cf_role" },
      message: "value",
    },
    {
      cdl: castsCdl({ more: 'int number(cast) ; number:cf_role = "profile_id" ;' }),
      where: { variable: "number", attribute: "cf_role" },
      message: "several",
    },
    {
      cdl: withRole('comment = "none"'),
      where: {},
      message: "missing",
      level: "warning",
    },
  ],
  check(dataset, report) {
    const { featureType, claimed } = dataset.layout;
    const having = dataset.all.filter((variable) => variable.has("cf_role"));
    const good = having.filter((variable) => ROLES.includes(variable.text("cf_role") ?? ""));
    for (const variable of having)
      if (!good.includes(variable))
        report({ variable: variable.name, attribute: "cf_role" }, "value", {
          found: plainOf(variable.attributes.get("cf_role")),
          expected: ROLES,
        });
    if (featureType === null || featureType === "point") return;
    const most = COMPOUND.includes(featureType) ? 2 : 1;
    const last = good[most];
    const expected = CF_ROLES[featureType];
    if (last !== undefined)
      report({ variable: last.name, attribute: "cf_role" }, "several", {
        found: good.map(({ name }) => name),
        expected,
      });
    if (having.length === 0)
      report({}, "missing", {
        expected,
        level: "warning",
        fill: { type: claimed ?? "" },
      });
  },
});
