import type { FeatureType } from "../../engine/layout.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";
import { castsCdl } from "./sampling-example.ts";

const KINDS = { X: "longitude", Y: "latitude", Z: "vertical position", T: "time" } as const;

/** Table 9.1: the kinds of coordinates that each type needs. */
const NEEDED: Readonly<Record<FeatureType, readonly (keyof typeof KINDS)[]>> = {
  point: ["X", "Y", "T"],
  timeseries: ["X", "Y", "T"],
  trajectory: ["X", "Y", "T"],
  profile: ["X", "Y", "T", "Z"],
  timeseriesprofile: ["X", "Y", "T", "Z"],
  trajectoryprofile: ["X", "Y", "T", "Z"],
};

/** Table 9.1: those of which a feature has one value. */
const PER_FEATURE: Readonly<Record<FeatureType, readonly (keyof typeof KINDS)[]>> = {
  point: [],
  timeseries: ["X", "Y"],
  trajectory: [],
  profile: ["X", "Y", "T"],
  timeseriesprofile: ["X", "Y"],
  trajectoryprofile: [],
};

export const featureCoordinates = defineRule({
  id: "cf/feature-coordinates",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("9.1"),
  editions: { since: "1.6" },
  covers: ["CF-9.1-T21"],
  title: "The file has the coordinates that its kind of sampling needs",
  why: "A cast without position, time or depth cannot be used.",
  remedy: "Add a variable for {kind} with its units, and name it in `coordinates` of the data.",
  messages: {
    place:
      "{variable} is {kind} along {found}, but a file of type {type} has one for each feature (along {expected})",
    missing: "a file of type {found} needs {kind}, but no variable is one by its units, name or axis",
  },
  passing: [castsCdl()],
  failing: [
    {
      cdl: castsCdl({ depth: "float depth(obs) ;" }),
      where: { attribute: "featureType" },
      message: "missing",
    },
    {
      cdl: castsCdl()
        .replaceAll("double lat(cast)", "double lat(obs)")
        .replace("lat = 50, 51", "lat = 50, 51, 52"),
      where: { variable: "lat" },
      message: "place",
    },
  ],
  check(dataset, report) {
    const { featureType, claimed, instance } = dataset.layout;
    if (featureType === null || dataset.sampled.length === 0) return;
    // latitudes with a wrong unit still count: the rule on their units speaks of them
    const kinds = new Set(dataset.all.map((variable) => variable.kindOfCoordinate));
    for (const axis of NEEDED[featureType]) {
      const kind = KINDS[axis];
      const own = dataset.coordinates.filter((variable) => variable.kindOfCoordinate === axis);
      // a precise position along the elements may stand beside the nominal one
      const nominal = own.some((variable) =>
        variable.dimensions.every((dimension) => dimension === instance),
      );
      const [precise] = own;
      if (PER_FEATURE[featureType].includes(axis) && precise !== undefined && !nominal && instance !== null)
        report({ variable: precise.name }, "place", {
          found: precise.dimensions,
          expected: instance,
          fill: { kind, type: claimed ?? "" },
        });
      if (!kinds.has(axis))
        report({ attribute: "featureType" }, "missing", { found: claimed ?? "", fill: { kind } });
    }
  },
});
