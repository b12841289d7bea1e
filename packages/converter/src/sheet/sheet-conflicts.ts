import type { SurveySheet } from "@wherry/contracts";
import { nearestNames, type Problem, sameDimension } from "@wherry/core";
import { readRecipe } from "../recipe/read-recipe.ts";
import { identityConflicts } from "./identity-conflicts.ts";
import { type Locate, nameOf, type SheetPath } from "./schema-problems.ts";

/** What the form of a sheet cannot forbid: ids given twice, names that refer to nothing, units that do not fit. */
export function sheetConflicts(sheet: SurveySheet, locate: Locate): Problem[] {
  return [
    ...repeatedIds(sheet, "casts", locate),
    ...repeatedIds(sheet, "platforms", locate),
    ...repeatedIds(sheet, "instruments", locate),
    ...danglingNames(sheet, "platform", "platforms", locate),
    ...danglingNames(sheet, "instrument", "instruments", locate),
    ...sensorUnits(sheet, locate),
    ...recipeProblems(sheet, locate),
    ...identityConflicts(sheet, locate),
  ];
}

/** What is wrong with the recipe that stands in the sheet, at its place there. */
function recipeProblems(sheet: SurveySheet, locate: Locate): Problem[] {
  const recipe = sheet.processing?.recipe;
  if (recipe === undefined) return [];
  const read = readRecipe({ version: 1, ...recipe }, {});
  if (read.ok) return [];
  return read.problems.map((problem) => {
    const place = (problem.where.variable ?? "")
      .split(".")
      .map((key) => (/^\d+$/.test(key) ? Number.parseInt(key, 10) : key));
    return {
      ...problem,
      message: `processing.recipe: ${problem.message}`,
      where: locate(["processing", "recipe", ...place.filter((key) => key !== "")], "key"),
    };
  });
}

function repeatedIds(
  sheet: SurveySheet,
  list: "casts" | "platforms" | "instruments",
  locate: Locate,
): Problem[] {
  const met = new Map<string, number>();
  return (sheet[list] ?? []).flatMap(({ id }, index): Problem[] => {
    if (id === undefined) return [];
    // file names are made of ids, and some file systems do not tell letter case apart
    const key = id.toLowerCase();
    const before = met.get(key);
    if (before === undefined) {
      met.set(key, index);
      return [];
    }
    return [
      {
        code: "sheet/repeated-id",
        message: `${nameOf([list, index])} has the id "${id}", which ${nameOf([list, before])} has too`,
        where: locate([list, index, "id"], "value"),
        remedy: "Give it an id of its own; letter case alone is no difference.",
      },
    ];
  });
}

function danglingNames(
  sheet: SurveySheet,
  key: "platform" | "instrument",
  list: "platforms" | "instruments",
  locate: Locate,
): Problem[] {
  const known = (sheet[list] ?? []).flatMap(({ id }) => (id === undefined ? [] : [id]));
  return (sheet.casts ?? []).flatMap((cast, index): Problem[] => {
    const name = cast[key];
    if (name === undefined || known.includes(name)) return [];
    const near = nearestNames(name, known);
    return [
      {
        code: "sheet/unknown-name",
        message: `${nameOf(["casts", index, key])} is "${name}", but ${list} has no entry with that id`,
        where: locate(["casts", index, key], "value"),
        remedy:
          near.length > 0
            ? `Did you mean ${near.map((other) => `"${other}"`).join(" or ")}?`
            : `Add an entry with id: ${name} under ${list}.`,
      },
    ];
  });
}

const SENSOR_UNITS = {
  temperature: "degree_C",
  conductivity: "S m-1",
  pressure: "dbar",
  depth: "m",
  salinity: "1",
  sound_speed: "m s-1",
} as const;

function sensorUnits(sheet: SurveySheet, locate: Locate): Problem[] {
  return (sheet.instruments ?? []).flatMap((instrument, index) =>
    Object.entries(SENSOR_UNITS).flatMap(([name, units]): Problem[] => {
      const sensor = instrument.sensors?.[name as keyof typeof SENSOR_UNITS];
      if (sensor === undefined || sameDimension(sensor.units, units)) return [];
      const path: SheetPath = ["instruments", index, "sensors", name, "units"];
      return [
        {
          code: "sheet/units",
          message: `${nameOf(path)} is "${sensor.units}", which is not a unit of ${name.replaceAll("_", " ")}`,
          where: locate(path, "value"),
          remedy: `Give the numbers in ${units} or a unit that converts to it.`,
        },
      ];
    }),
  );
}
