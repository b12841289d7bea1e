import { fail, type Result, succeed } from "@wherry/core";
import { type Dataset, type MemoryVariable, memoryDataset, textAttribute } from "@wherry/netcdf";
import type { Recognition } from "../asking.ts";
import { type CfDsgContext, readCfDsg } from "../cf-dsg/read-cf-dsg.ts";
import { readRaw } from "../cf-dsg/stored-numbers.ts";
import { settleTimeRoles } from "../settle-cast.ts";
import type { UnderstoodFile } from "../understood.ts";
import { alignRows, countersOf, levelsOf } from "./align-rows.ts";

const FORMAT = "World Ocean Database netCDF";
const IDENTITY = "wod_unique_cast";

/** A file of many casts of the World Ocean Database, in which every variable has rows of its own. */
export function recogniseWodNetcdf(dataset: Dataset): Recognition | null {
  const counters = countersOf(dataset);
  if (!dataset.variables.has(IDENTITY) || counters.size < 2 || !levelsOf(dataset, counters)) return null;
  return { format: FORMAT, because: `it has ${IDENTITY} and ${counters.size} variables that count rows` };
}

/**
 * Casts of a netCDF file of the World Ocean Database: its variables laid beside its depths, then read by the rules of CF
 * that the file claims. A date without a time of day (GMT_time missing) has no time, which is asked.
 *
 * @source shared format notes on the published files; flags by the flag meanings in the file
 */
export async function readWodNetcdf(
  dataset: Dataset,
  context: CfDsgContext,
): Promise<Result<UnderstoodFile>> {
  const { path, asking } = context;
  const levels = levelsOf(dataset, countersOf(dataset));
  if (!levels) throw new TypeError("the dataset is no file of the World Ocean Database");
  const aligned = await alignRows(dataset, levels);
  if (!aligned.ok) {
    const [first, ...others] = aligned.problems.map((problem) => ({
      ...problem,
      where: { ...problem.where, file: path },
    }));
    return first ? fail(first, ...others) : aligned;
  }
  const read = await readCfDsg(await asCf(aligned.value), context);
  if (!read.ok) return read;
  const warnings = aligned.warnings.map((problem) => ({
    ...problem,
    where: { ...problem.where, file: path },
  }));
  const kept = read.value.findings.filter(({ code }) => code !== "cf-dsg/no-rows");
  const findings = [...warnings, ...kept];
  const casts = read.value.casts.filter(({ rows }) => rows > 0);
  return succeed(
    {
      ...read.value,
      format: FORMAT,
      casts: asking
        ? settleTimeRoles(casts, asking, {
            text: "Is the time of the casts their start, their bottom or their end? The format does not say.",
          })
        : casts,
      findings,
    },
    findings,
  );
}

/** The unique number as the identity of a cast, and no time where only the date is known. */
async function asCf(dataset: Dataset): Promise<Dataset> {
  const clock = dataset.variables.get("GMT_time");
  const hours = clock ? await readRaw(dataset, clock) : null;
  const variables: MemoryVariable[] = [];
  for (const { name, type, dimensions, attributes } of dataset.variables.values()) {
    const read = await dataset.read(name);
    if (!read.ok) continue;
    const own = [...attributes.values()];
    const isTime = name === "time" && hours?.ok;
    variables.push({
      name,
      type,
      dimensions,
      attributes:
        name === IDENTITY && !attributes.has("cf_role")
          ? [...own, textAttribute("cf_role", "profile_id")]
          : own,
      data: isTime
        ? Float64Array.from(read.value as Float64Array, (value, cast) => {
            const hour = hours.value[cast]!;
            return hour >= 0 && hour <= 24 ? value : Number.NaN;
          })
        : read.value,
    });
  }
  return memoryDataset({
    dimensions: [...dataset.dimensions.values()].map(({ name, length }) => ({ name, length })),
    attributes: [...dataset.attributes.values()],
    variables,
  });
}
