import { plainOf } from "../../engine/attribute-value.ts";
import { FEATURE_TYPES } from "../../engine/layout.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";
import { castsCdl } from "./sampling-example.ts";

const TYPES = ["point", "timeSeries", "trajectory", "profile", "timeSeriesProfile", "trajectoryProfile"];

export const featureType = defineRule({
  id: "cf/feature-type",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("9.4"),
  editions: { since: "1.6" },
  covers: ["CF-9.4-T29", "CF-9.1-T20"],
  title: "featureType says which kind of sampling the file holds",
  why: "Programs choose by it how to take casts, series and tracks apart.",
  remedy: `Set the global attribute featureType to one of ${TYPES.join(", ")}.`,
  messages: {
    unknown: "featureType is {found}",
    ragged: "the file holds a ragged array ({other}) but has no featureType",
    role: "the file holds identified features ({other}) but has no featureType",
  },
  passing: [`:featureType = "timeSeriesProfile" ;`, `:featureType = "Profile" ;`, "variables: float t ;"],
  failing: [
    { cdl: `:featureType = "cast" ;`, where: { attribute: "featureType" }, message: "unknown" },
    {
      cdl: castsCdl().replace(":featureType", ":comment"),
      where: { attribute: "featureType" },
      message: "ragged",
    },
    {
      cdl: `dimensions: cast = 2 ; variables: int cast(cast) ; cast:cf_role = "profile_id" ;`,
      where: { attribute: "featureType" },
      message: "role",
      level: "warning",
    },
  ],
  check(dataset, report) {
    const attribute = dataset.attributes.get("featureType");
    const where = { attribute: "featureType" };
    if (attribute !== undefined) {
      const found = dataset.text("featureType")?.trim().toLowerCase();
      if (!FEATURE_TYPES.some((type) => type === found))
        report(where, "unknown", { found: plainOf(attribute), expected: TYPES });
      return;
    }
    const [link] = dataset.layout.links;
    const identity = dataset.all.find((variable) => variable.has("cf_role"));
    if (link !== undefined) report(where, "ragged", { expected: TYPES, fill: { other: link.variable } });
    // only highly recommended for the orthogonal form, which this may be
    else if (identity !== undefined)
      report(where, "role", { expected: TYPES, level: "warning", fill: { other: identity.name } });
  },
});
