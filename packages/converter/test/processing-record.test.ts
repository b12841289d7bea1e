import { processingSchema } from "@wherry/contracts";
import { layerMeans } from "@wherry/core";
import { Ajv2020 } from "ajv/dist/2020.js";
import { expect, test } from "vitest";
import { castFingerprint } from "../src/writers/fingerprint.ts";
import { processingRecord, processingText } from "../src/writers/processing-record.ts";
import { referenceCasts } from "./reference-casts.ts";

const casts = await referenceCasts("full");
const validate = new Ajv2020({ allErrors: true, allowUnionTypes: true }).compile(processingSchema);

test("the record is of the form of its schema", () => {
  const stepped = casts.map((cast) => ({
    ...cast,
    steps: [
      { step: "segmentation", parameters: { a: 1, b: [1, 2], c: null }, counts: { rows: 3 }, words: "cut" },
    ],
  }));
  const layers = new Map([
    [casts[0]!.id, layerMeans(casts[0]!, { width: 0.5, coordinate: "depth", direction: "down" })],
  ]);
  const record = processingRecord(
    stepped,
    { preset: "estuary" },
    "wherry 0.1.0",
    [{ id: "x", questions: ["timeZone"] }],
    layers,
  );
  validate(JSON.parse(processingText(record)));
  expect(validate.errors).toBeNull();
  expect(record.casts.map(({ id }) => id)).toEqual(["EE24-01", "EE24-02", "EE24-03"]);
  expect(record.casts[0]!.steps.map(({ step }) => step)).toEqual(["segmentation", "layer means"]);
  expect(record.held).toEqual([{ id: "x", questions: ["timeZone"] }]);
});

test("rows, lines, pressures and flags are those of the cast", () => {
  const [first, second] = processingRecord(casts, {}, "wherry 0.1.0").casts;
  // read off full.cdl: cast EE24-01 has 0.12 dbar subtracted; cast EE24-02 lacks one conductivity
  expect(first?.pressureOffset).toBeCloseTo(0.12, 6);
  expect(second?.flags.conductivity?.["9"]).toBe(1);
  expect(second?.flags.conductivity?.["3"]).toBe(1);
  const pressure = casts[0]!.columns.get("pressure")!.values;
  expect(first?.maxPressure).toBe(Math.max(...pressure));
  expect(first?.deepestRow).toBe(pressure.indexOf(Math.max(...pressure)));
  expect(first?.source.firstLine).toBe(casts[0]!.lines[0]);
});

test("the fingerprint is of the content alone", () => {
  const [cast] = casts;
  const same = {
    ...cast!,
    id: "renamed",
    source: { path: "elsewhere.csv", sha256: "1".repeat(64) },
    notes: ["x"],
  };
  expect(castFingerprint(same)).toBe(castFingerprint(cast!));
  const temperature = cast!.columns.get("temperature")!;
  const flags = Uint8Array.from(temperature.flags);
  flags[0] = flags[0] === 4 ? 3 : 4;
  const judged = { ...cast!, columns: new Map(cast!.columns).set("temperature", { ...temperature, flags }) };
  expect(castFingerprint(judged)).not.toBe(castFingerprint(cast!));
});

test("a cast of no rows and one without pressure have no deepest row", () => {
  const [cast] = casts;
  const columns = new Map([...cast!.columns].filter(([name]) => name !== "pressure"));
  const [record] = processingRecord([{ ...cast!, columns, pressureOffset: Number.NaN }], {}, "w").casts;
  expect([record?.deepestRow, record?.maxPressure, record?.pressureOffset]).toEqual([null, null, null]);
});
