import { cfClause, defineRule } from "../../engine/rule.ts";

export const samplingEdition = defineRule({
  id: "cf/sampling-edition",
  status: "stable",
  since: "0.1.0",
  level: "advice",
  basis: "clause",
  citation: cfClause("9"),
  editions: { until: "1.5" },
  covers: ["CF-9.1-T20"],
  title: "Casts, series and tracks are described by chapter 9, which exists since CF 1.6",
  why: "In older editions featureType has no meaning, so what it says about the layout cannot be checked.",
  remedy: "Claim CF-1.6 or newer in Conventions.",
  messages: { old: "featureType is given, but the edition claimed does not know it" },
  passing: [{ cdl: `:featureType = "profile" ;`, edition: "1.6" }],
  failing: [
    {
      cdl: `:featureType = "profile" ;`,
      edition: "1.4",
      where: { attribute: "featureType" },
      message: "old",
    },
  ],
  check(dataset, report) {
    if (dataset.attributes.has("featureType")) report({ attribute: "featureType" }, "old");
  },
});
