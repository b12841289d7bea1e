import { type Cast, type Evidence, fail, type Problem, type Result, succeed } from "@wherry/core";
import type { Dataset, Variable } from "@wherry/netcdf";
import type { Asking } from "../asking.ts";
import type { UnderstoodFile } from "../understood.ts";
import { askMissing } from "./ask-missing.ts";
import { attributeWords, textOf, wordsOf } from "./attributes.ts";
import { buildCasts } from "./build-casts.ts";
import { CastValues } from "./cast-values.ts";
import { readFixedDepths, readPositions, readPressureOffsets, readTimes } from "./coordinates.ts";
import { featureOf, type StatedFeature } from "./feature-type.ts";
import { findLayout, type Layout, MOST_CELLS, tooLarge } from "./layout.ts";
import { noCasts, otherKindOf } from "./no-casts.ts";
import { finishCasts, isOwnProduct } from "./own-product.ts";
import { planRows, readRows } from "./row-columns.ts";
import { cellsOf, missingValues } from "./stored-numbers.ts";
import { levelOf } from "./take.ts";

export interface CfDsgContext {
  /** Name of the file, as evidence and findings call it. */
  readonly path: string;
  /** SHA-256 of the file's bytes, 64 hexadecimal digits. */
  readonly sha256: string;
  /** Settles the times and places that the file does not give; without it they stay unknown. */
  readonly asking?: Asking;
}

/**
 * Reads a CF discrete sampling geometry into casts: profiles of all five layouts, each station of a timeSeries as a
 * cast at a fixed depth, and the profiles of timeSeriesProfile and trajectoryProfile.
 *
 * Columns are told by standard_name and come in house units; values outside a stated valid range count as missing, and
 * that is said. What the file does not tell stays unknown.
 *
 * @returns always a file: where no casts can be made of it, `casts` is empty and a finding says what it holds and why.
 *          Findings stand again in the warnings.
 * @source  CF Conventions 1.13, chapters 2 to 4, 8 and 9, appendix H
 */
export async function readCfDsg(dataset: Dataset, context: CfDsgContext): Promise<Result<UnderstoodFile>> {
  const known = dataset.problems.map((problem) => ({
    ...problem,
    where: { ...problem.where, file: context.path },
  }));
  const file = await understand(dataset, context);
  const findings = [...known, ...file.findings];
  const casts = context.asking ? askMissing(file.casts, context.asking) : file.casts;
  return succeed({ ...file, casts, findings }, findings);
}

async function understand(dataset: Dataset, context: CfDsgContext): Promise<UnderstoodFile> {
  const { path } = context;
  const other = otherKindOf(dataset);
  if (other) return fileOf(context, other.format, [], [noCasts(dataset, other.because, path)]);
  const feature = featureOf(dataset);
  if (!feature) {
    const text = textOf(dataset.attributes, "featureType");
    const because =
      text === null
        ? "nothing in it says that it holds casts (no featureType, no cf_role)"
        : `featureType says ${text}, which CF does not know`;
    return fileOf(context, "netCDF", [], [noCasts(dataset, because, path)]);
  }
  const { type } = feature;
  if (type === "point" || type === "trajectory") {
    const what = type === "point" ? "single points" : "the rows of a moving platform";
    const finding = noCasts(dataset, `${feature.because}; ${what} are no casts`, path);
    return fileOf(context, `CF netCDF, ${type}`, [], [finding]);
  }
  const layout = await findLayout(dataset, type);
  const within = layout.ok ? checkSize(dataset, layout.value) : layout;
  if (!within.ok) {
    const [problem] = within.problems;
    return fileOf(context, `CF netCDF, ${type}`, [], [noCasts(dataset, problem.message, path, problem)]);
  }
  const findings: Problem[] = (layout.ok ? layout.warnings : []).map((problem) => ({
    ...problem,
    where: { ...problem.where, file: path },
  }));
  if (!feature.stated)
    findings.push({
      code: "cf-dsg/feature-type",
      message: feature.because,
      where: { file: path, attribute: "featureType" },
      remedy: `CF asks for featureType = "${type}".`,
    });
  const read = await readCasts(dataset, feature, within.value, context);
  return fileOf(
    context,
    `CF netCDF, ${type}, ${within.value.words}`,
    read.casts,
    [...findings, ...read.findings],
    markersOf(read.variables),
  );
}

/** Holds what would be read against what fits into memory, before any of it is read. */
function checkSize(dataset: Dataset, layout: Layout): Result<Layout> {
  let cells = 0;
  for (const variable of dataset.variables.values())
    if (levelOf(dataset, layout, variable) !== null) cells += cellsOf(variable);
  return cells > MOST_CELLS ? fail(tooLarge(cells)) : succeed(layout);
}

async function readCasts(dataset: Dataset, feature: StatedFeature, layout: Layout, context: CfDsgContext) {
  const { path } = context;
  const { type, stated, because } = feature;
  const from = new CastValues(dataset, layout, path);
  from.say("kind", stated ? "stated" : "implied", `${because}; the arrays are a ${layout.words}`);
  const times = await readTimes(from);
  const positions = await readPositions(from);
  const fixedDepths = type === "timeSeries" ? await readFixedDepths(from) : null;
  const pressureOffsets = await readPressureOffsets(from);
  const ids = await idsOfCasts(dataset, from, type === "timeSeries" ? "timeseries_id" : "profile_id");
  const owners =
    type === "timeSeriesProfile"
      ? await from.ids("timeseries_id")
      : type === "trajectoryProfile"
        ? await from.ids("trajectory_id")
        : null;
  const known = times.times.filter((time) => !Number.isNaN(time));
  const earliest = known.length === 0 ? Number.NaN : known.reduce((low, time) => Math.min(low, time));
  const plan = planRows(dataset, layout, times.taken, earliest, path);
  const rows = await readRows(dataset, layout, plan, path);
  const evidence: readonly Evidence[] = [...from.evidence, ...plan.evidence];
  const casts = buildCasts({
    dataset,
    layout,
    source: { path, sha256: context.sha256 },
    kind: type === "timeSeries" ? "fixed-depth" : "profile",
    times,
    positions,
    fixedDepths,
    pressureOffsets,
    ids,
    owners,
    rows: rows.casts,
    evidence,
    notes: notesOf(dataset),
    averaged: plan.numbers.some(
      ([{ attributes }, { house }]) => house && /\bmean\b/.test(textOf(attributes, "cell_methods") ?? ""),
    ),
    instrument: instrumentOf(
      dataset,
      plan.numbers.map(([variable]) => variable),
    ),
  });
  const variables = plan.numbers.map(([variable]) => variable);
  if (
    type !== "timeSeries" &&
    !plan.numbers.some(([, { house, name }]) => house && /^(?:depth|pressure)$/.test(name))
  )
    from.find(
      "no-vertical",
      "no variable is known as depth or pressure, so it is not known where in the water the rows are",
      "Give the vertical coordinate its standard_name and units.",
    );
  const findings = [...from.findings, ...plan.findings, ...rows.findings, ...casts.findings];
  if (!isOwnProduct(dataset)) return { casts: casts.casts, variables, findings };
  return {
    casts: await finishCasts(casts.casts, casts.places, dataset, from),
    variables,
    // what a product keeps as received stands beside what was computed, by design
    findings: findings.filter(({ code }) => code !== "cf-dsg/several"),
  };
}

/** Ids of profiles or series: where they are mere numbers, a label among the coordinates says more. */
async function idsOfCasts(
  dataset: Dataset,
  from: CastValues,
  role: "profile_id" | "timeseries_id",
): Promise<readonly (string | null)[] | null> {
  const ids = await from.ids(role);
  if (!ids || ids.some((id) => id !== null && !/^\d+$/.test(id))) return ids;
  const named = new Set(
    [...dataset.variables.values()].flatMap(({ attributes }) => wordsOf(attributes, "coordinates")),
  );
  const labels = from
    .at("cast")
    .filter(({ type }) => type === "char" || type === "string")
    .filter(
      ({ name, attributes }) =>
        named.has(name) || /\bidentifier\b/.test(textOf(attributes, "long_name") ?? ""),
    );
  const [label, second] = labels;
  if (!label || second) return ids;
  const texts = await from.texts(label);
  if (!texts || texts.some((text) => text === null)) return ids;
  from.say("id", "implied", `variable ${label.name} labels each cast`, label);
  return texts;
}

const notesOf = (dataset: Dataset): readonly string[] =>
  [...dataset.attributes.values()].map((attribute) => `${attribute.name} = ${attributeWords(attribute)}`);

/** The one instrument that the variables name; nothing if they name several. */
function instrumentOf(dataset: Dataset, variables: readonly Variable[]): Cast["instrument"] {
  const named = new Set(variables.flatMap(({ attributes }) => wordsOf(attributes, "instrument")));
  const found = [...named].flatMap((name) => dataset.variables.get(name) ?? []);
  const [only, second] = found;
  const text = (name: string) => (only && !second ? textOf(only.attributes, name) : null);
  return { model: text("make_model"), serialNumber: text("serial_number"), ratedPressure: null };
}

/** Numbers that the file names as missing. */
function markersOf(variables: readonly Variable[]): readonly string[] {
  const markers = new Set<string>();
  for (const variable of variables)
    if (variable.attributes.has("_FillValue") || variable.attributes.has("missing_value"))
      for (const value of missingValues(variable)) markers.add(String(value));
  return [...markers];
}

const fileOf = (
  { path, sha256 }: CfDsgContext,
  format: string,
  casts: readonly Cast[],
  findings: readonly Problem[],
  missingMarkers: readonly string[] = [],
): UnderstoodFile => ({
  path,
  format,
  sha256,
  encoding: null,
  lineEnding: null,
  delimiter: null,
  decimal: null,
  missingMarkers,
  casts,
  questions: [],
  findings,
});
