import { textAttribute } from "@wherry/netcdf";
import { VERTICAL_SENSE } from "../engine/axis.ts";
import { type Mender, remove, setText } from "./edit.ts";

/** The word that the rule expects, where it expects one: "a or b" is a choice. */
export const asExpected: Mender = (finding, dataset) =>
  typeof finding.expected === "string" && !/ or |,/.test(finding.expected)
    ? setText(finding, dataset, finding.expected)
    : [];

/** The same for some messages of a rule. */
export const asExpectedFor =
  (...keys: readonly string[]): Mender =>
  (finding, dataset) =>
    keys.includes(finding.key) ? asExpected(finding, dataset) : [];

/** Kinds of content that no other word fits; a quantity may be measured or only help to understand others. */
const ONE_WORD = ["coordinate", "qualityInformation", "auxiliaryInformation"];

export const contentType: Mender = (finding, dataset) =>
  finding.key !== "other" && ONE_WORD.some((word) => word === finding.expected)
    ? asExpected(finding, dataset)
    : [];

/** The unit of a latitude or longitude, where the values are degrees by all that the file says. */
export const degrees =
  (units: "degrees_north" | "degrees_east"): Mender =>
  (finding, dataset) => {
    const variable = dataset.variables.get(finding.where.variable ?? "");
    const found = variable?.text("units")?.trim().toLowerCase() ?? "";
    const said = /^(?:deg(?:ree)?s?|°|deg\.|(?:decimal|arc)[ _]?degrees?|degrees?[ _.-]?[nsew]?)$/.test(
      found,
    );
    const named = ["latitude", "longitude"].includes(variable?.standardName ?? "");
    const other = units === "degrees_north" ? /[ew]$/ : /[ns]$/;
    // a west or south in the unit may mean that the values count the other way
    const doubt =
      /[_ .-]?[ws]$/.test(found.replace(/degrees?s?$/, "")) ||
      (other.test(found) && !/degrees?$/.test(found));
    return named && said && !doubt ? setText(finding, dataset, units) : [];
  };

/** The sense of a vertical coordinate whose standard name has it. */
export const senseOfName: Mender = (finding, dataset) => {
  const name = dataset.variables.get(finding.where.variable ?? "")?.standardName ?? "";
  const sense = VERTICAL_SENSE.get(name);
  return sense === undefined ? [] : setText(finding, dataset, sense);
};

/** The usual calendar, which CF takes where none is named, and by its present name. */
export const usualCalendar: Mender = (finding, dataset) => setText(finding, dataset, "standard");

/** A fill value of a coordinate that has no missing values. */
export const needlessFill: Mender = async (finding, dataset) => {
  const name = finding.where.variable ?? "";
  const values = await dataset.data.numbers(name);
  return values === null || values.some(Number.isNaN) ? [] : remove(finding);
};

const SPREAD = /\b(?:standard_deviation|variance|range|sum_of_squares)\b/;
const TEMPERATURE = /^(?:sea_water|air|sea_surface|water)_(?:potential_|conservative_)?temperature$/;

/** A temperature is on its scale; a spread or an error of it is a difference. */
export const temperatureKind: Mender = (finding, dataset) => {
  const variable = dataset.variables.get(finding.where.variable ?? "");
  const [name = "", modifier] = variable?.words("standard_name") ?? [];
  if (
    !TEMPERATURE.test(name) ||
    !/^(?:degC|degree_?C|deg_?C|K|kelvin|degF|degree_F)/.test(variable?.text("units") ?? "")
  )
    return [];
  const methods = (variable?.text("cell_methods") ?? "").replace(/\([^)]*\)/g, "");
  if (SPREAD.test(methods) || modifier === "standard_error")
    return setText(finding, dataset, "temperature: difference");
  return modifier === undefined ? setText(finding, dataset, "temperature: on_scale") : [];
};

/** The coordinates that the rule found to be without mention, behind those that are named. */
export const addNames: Mender = (finding, dataset) => {
  const found = Array.isArray(finding.found) ? finding.found : [finding.found];
  const names = found.filter((name): name is string => typeof name === "string");
  const { variable = "", attribute = "" } = finding.where;
  if (names.length === 0 || !names.every((name) => dataset.named(name, variable) !== null)) return [];
  const before = dataset.variables.get(variable)?.words(attribute) ?? [];
  return setText(finding, dataset, [...before, ...names].join(" "));
};

/** The words of the standard name as a name for people. */
export const longName: Mender = ({ where: { variable = "" } }, dataset) => {
  const name = dataset.variables.get(variable)?.standardName;
  if (name === undefined || dataset.vocabulary.find(name) === null) return [];
  return [{ variable, attribute: "long_name", to: textAttribute("long_name", name.replaceAll("_", " ")) }];
};

/** The bare name, which took the place of the modifier, where the data already name the variable. */
export const nameForModifier: Mender = (finding, dataset) => {
  const variable = dataset.variables.get(finding.where.variable ?? "");
  const [name, modifier = ""] = variable?.words("standard_name") ?? [];
  const users = dataset.all.filter(
    (each) => variable !== undefined && dataset.listed(each, "ancillary_variables").includes(variable),
  );
  const theirs = users.length > 0 && users.every((each) => each.standardName === name);
  return theirs && dataset.vocabulary.find(modifier) !== null ? setText(finding, dataset, modifier) : [];
};
