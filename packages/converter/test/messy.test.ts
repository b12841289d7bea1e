import { readdirSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { lookDocument } from "../src/understand/report/look-document.ts";
import { exports, judgeSample, messy } from "./judge-messy.ts";
import { asked, understoodPath } from "./understand-samples.ts";

describe.each([messy, exports])("the exports in $folder", (set) => {
  const { folder, truth } = set;
  test("the truth covers every file of the folder", () => {
    const files = readdirSync(folder).filter((name) => name !== "truth.json");
    expect(Object.keys(truth).sort()).toEqual(files.sort());
  });

  test.each(Object.keys(truth))("%s: no fact is silently wrong, what is not right was asked", (name) => {
    const judged = judgeSample(set, name);
    expect(judged.filter(({ verdict }) => verdict === "wrong" || verdict === "unknown")).toEqual([]);
  });
});

const { folder, truth } = messy;

test.each(["exp_01.csv", "exp_02.csv", "exp_04.txt", "exp_07.txt"])("%s: every fact is right", (name) => {
  const want = truth[name]!;
  // what a file does not hold is null and asked for
  const absent = want.asks?.filter(({ must }) => must).flatMap(({ facts }) => facts) ?? [];
  const judged = judgeSample(messy, name);
  expect(
    judged.filter(({ fact, verdict }) => verdict !== (absent.includes(fact) ? "asked" : "right")),
  ).toEqual([]);
});

describe("answers settle what was asked", () => {
  const answered = (name: string, about: string, value: string | number) =>
    understoodPath(`${folder}/${name}`, [{ about, where: name, value }]);

  test("vertical reference of a fixed sensor", () => {
    const file = answered("exp_05.csv", "verticalReference", "surface");
    expect(asked(file)).toEqual([]);
    expect(file.casts[0]?.fixedDepth).toEqual({ depth: 1.2, reference: "sea surface" });
  });

  test.each([
    ["in situ", "sea_water_electrical_conductivity", "conductivity"],
    ["25 degC", null, "specific_conductance"],
  ])("conductivity kind: %s", (value, standardName, column) => {
    const file = answered("exp_06.txt", "conductivityKind", value);
    expect(asked(file)).toEqual([]);
    expect(file.casts[0]?.columns.get(column)?.standardName).toBe(standardName);
  });

  test("position", () => {
    const file = answered("exp_07.txt", "position", "51.2, -4.3");
    expect(asked(file)).toEqual([]);
    expect(file.casts[0]?.start).toMatchObject({ latitude: 51.2, longitude: -4.3 });
  });

  // the candidates of the truth file
  test.each([
    ["month-day-year", "2024-07-01T20:15:00Z"],
    ["day-month-year", "2024-01-07T20:15:00Z"],
    ["year-month-day", "2007-01-24T20:15:00Z"],
  ])("date order: %s", (value, start) => {
    const file = answered("exp_09.csv", "dateOrder", value);
    expect(asked(file)).toEqual([]);
    expect(lookDocument([file]).files[0]?.casts[0]?.start).toBe(start);
  });
});
