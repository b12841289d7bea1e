import { convertUnits, parseIsoDuration, parseNumber } from "@wherry/core";
import { numbersOf, textOf } from "../../engine/attribute-value.ts";
import type { DatasetView } from "../../engine/dataset-view.ts";
import { featureRuns } from "../../engine/feature-runs.ts";
import { defineRule } from "../../engine/rule.ts";
import { unitOf } from "../../engine/unit-kinds.ts";
import type { VariableView } from "../../engine/variable-view.ts";
import { epochSeconds, timeVariables } from "../cf/time-variable.ts";
import { acddTier } from "./attribute-rule.ts";
import { coordinatesOfKind } from "./coverage.ts";

/** A typical spacing is told in round numbers: only beyond this factor it is another one. */
const FACTOR = 1.5;

const median = (values: number[]): number =>
  values.sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

const differs = (stated: number, found: number): boolean =>
  stated > 0 && found > 0 && (stated / found > FACTOR || found / stated > FACTOR);

/** Differences of neighbours within each feature. */
async function steps(dataset: DatasetView, variable: VariableView, values: Float64Array): Promise<number[]> {
  const found: number[] = [];
  for (const run of await featureRuns(dataset, variable))
    for (let k = 1; k < run.length; k += 1) {
      const step = Math.abs(values[run[k]!]! - values[run[k - 1]!]!);
      if (step > 0) found.push(step);
    }
  return found;
}

/** "0.5 m", or a number in the unit of the vertical limits, in metres; NaN if it cannot be read. */
function statedThickness(dataset: DatasetView): number {
  const attribute = dataset.attributes.get("geospatial_vertical_resolution");
  const [number] = numbersOf(attribute) ?? [];
  const [, value = "", unit = ""] = /^\s*(\S+)\s*(.*)$/.exec(textOf(attribute) ?? "") ?? [];
  const size = number ?? parseNumber(value);
  const units = unit.trim() || (dataset.text("geospatial_vertical_units") ?? "m");
  return unitOf(units) === null ? Number.NaN : convertUnits(size, units, "m");
}

const series = (
  resolution: string,
) => `:time_coverage_resolution = "${resolution}" ; :featureType = "timeSeries" ;
  dimensions: time = 4 ; variables: double time(time) ; time:standard_name = "time" ;
  time:units = "seconds since 2000-01-01" ; float v(time) ; data: time = 0, 10, 20, 31 ;`;
const layers = (resolution: string) => `:geospatial_vertical_resolution = ${resolution} ; dimensions: z = 3 ;
  variables: double z(z) ; z:standard_name = "depth" ; z:units = "m" ; z:positive = "down" ; float t(z) ; data: z = 1, 1.5, 2 ;`;

export const resolutions = defineRule({
  id: "acdd/resolutions",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "reading",
  citation: acddTier("recommended"),
  covers: ["ACDD time_coverage_resolution", "ACDD geospatial_vertical_resolution"],
  title: "The resolutions stated are the spacings of the data",
  why: "Who looks for layers of half a metre, or for values every second, chooses by these.",
  remedy: "Set {attribute} to the usual spacing of the data, or leave it out where there is none.",
  messages: {
    time: "time_coverage_resolution is {found}, the times usually lie {expected} s apart",
    vertical: "geospatial_vertical_resolution is {found}, the levels usually lie {expected} m apart",
    grid: "{attribute} tells the spacing of a grid; casts have none",
  },
  passing: [series("PT10S"), layers('"0.5 m"'), layers("0.5")],
  failing: [
    { cdl: series("PT1M"), where: { attribute: "time_coverage_resolution" }, message: "time" },
    { cdl: layers('"50 m"'), where: { attribute: "geospatial_vertical_resolution" }, message: "vertical" },
    {
      cdl: ':featureType = "profile" ; :geospatial_lat_resolution = 0.1 ;',
      where: { attribute: "geospatial_lat_resolution" },
      message: "grid",
      level: "advice",
    },
  ],
  async check(dataset, report) {
    const duration = parseIsoDuration(dataset.text("time_coverage_resolution")?.trim() ?? "");
    const [time] = timeVariables(dataset).filter(({ isCoordinate }) => isCoordinate);
    // casts follow each other at no fixed interval: their spacing is anybody's choice
    if (duration.ok && time !== undefined && dataset.layout.featureType?.startsWith("timeseries")) {
      const seconds = await epochSeconds(dataset, time);
      const usual = seconds === null ? Number.NaN : median(await steps(dataset, time.variable, seconds));
      if (differs(duration.value, usual))
        report({ attribute: "time_coverage_resolution" }, "time", {
          found: dataset.text("time_coverage_resolution") ?? "",
          expected: usual,
        });
    }
    const stated = statedThickness(dataset);
    const [vertical] = coordinatesOfKind(dataset, "Z").filter(({ shape }) => shape.length > 0);
    const values = vertical === undefined ? null : await dataset.data.numbers(vertical.name);
    if (vertical !== undefined && values !== null && !Number.isNaN(stated)) {
      const metres = convertUnits(1, vertical.text("units") ?? "", "m");
      const usual = median(await steps(dataset, vertical, values)) * metres;
      if (differs(stated, usual))
        report({ attribute: "geospatial_vertical_resolution" }, "vertical", {
          found: textOf(dataset.attributes.get("geospatial_vertical_resolution")) ?? stated,
          expected: usual,
        });
    }
    if (dataset.layout.featureType === null) return;
    for (const attribute of ["geospatial_lat_resolution", "geospatial_lon_resolution"])
      if (dataset.attributes.has(attribute)) report({ attribute }, "grid", { level: "advice" });
  },
});
