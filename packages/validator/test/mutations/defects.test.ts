import { numberAttribute } from "@wherry/netcdf";
import { describe, expect, test } from "vitest";
import { runBagRules } from "../../src/engine/bag-rule.ts";
import { bagOf } from "../../src/engine/bag-rule-tester.ts";
import { bagExample, SHA256_ABC } from "../../src/rules/package/bag-example.ts";
import { packageRules } from "../../src/rules/package/index.ts";
import { MISSPELT, REMOVED, WRONG_TYPE, WRONG_VALUE } from "./attribute-defects.ts";
import { COORDINATES, DATA, DIMENSION, FLAGS } from "./content-defects.ts";
import { findingsOn, mutated } from "./products.ts";

const KINDS = {
  "attribute removed": REMOVED,
  "attribute or word misspelt": MISSPELT,
  "attribute of a wrong type": WRONG_TYPE,
  "attribute of a wrong value": WRONG_VALUE,
  "dimension or shape": DIMENSION,
  coordinates: COORDINATES,
  data: DATA,
  flags: FLAGS,
};

describe.each(Object.entries(KINDS))("planted: %s", (_, defects) => {
  test.each(defects)("%s: %s as %j is told by %s", async (product, from, to, rule) => {
    const findings = await findingsOn(mutated(product, [[from, to]]));
    expect(findings.map((finding) => finding.rule)).toContain(rule);
  });
});

// the text form of netCDF writes fill values in the type of their variable, whatever is written
test.each(["double", "short", "byte"] as const)(
  "planted: a fill value of type %s on a float",
  async (type) => {
    const dataset = mutated("full", []);
    const temperature = dataset.variables.get("temperature");
    if (temperature === undefined) throw new Error("no temperature");
    const fill = numberAttribute("_FillValue", type, [-99]);
    const changed = {
      ...temperature,
      attributes: new Map([...temperature.attributes, ["_FillValue", fill]]),
    };
    const variables = new Map([...dataset.variables, ["temperature", changed]]);
    const findings = await findingsOn({ ...dataset, variables });
    expect(findings.map(({ rule, where }) => [rule, where.variable])).toContainEqual([
      "cf/fill-value-type",
      "temperature",
    ]);
  },
);

const LINE = `${SHA256_ABC}  data/a.txt\n`;

/** Changes to a bag without fault: files by path, null where one is taken away. */
const PACKAGE: readonly (readonly [string, Record<string, string | null>, string])[] = [
  ["the payload changed", { "data/a.txt": "abd" }, "package/checksums"],
  ["the payload cut", { "data/a.txt": "ab" }, "package/checksums"],
  ["a file added", { "data/b.txt": "b" }, "package/complete"],
  ["a file lost", { "data/a.txt": null, "data/b.txt": "abc" }, "package/complete"],
  ["no declaration", { "bagit.txt": null }, "package/declaration"],
  ["an empty declaration", { "bagit.txt": "" }, "package/declaration"],
  ["no manifest", { "manifest-sha256.txt": null }, "package/manifests"],
  [
    "a manifest by a forgeable sum",
    { "manifest-sha256.txt": null, "manifest-md5.txt": LINE },
    "package/manifests",
  ],
  ["a checksum cut", { "manifest-sha256.txt": LINE.slice(1) }, "package/manifest-lines"],
  ["a line without path", { "manifest-sha256.txt": `${LINE}${SHA256_ABC}\n` }, "package/manifest-lines"],
  [
    "a path out of the package",
    { "manifest-sha256.txt": `${LINE}${SHA256_ABC}  ../a.txt\n` },
    "package/manifest-lines",
  ],
  ["a fetch file", { "fetch.txt": "https://example.org/a 1 data/a.txt\n" }, "package/fetch"],
  ["a wrong number of bytes", { "bag-info.txt": "Payload-Oxum: 2.1\n" }, "package/payload-oxum"],
  ["a date in words", { "bag-info.txt": "Bagging-Date: May\n" }, "package/info"],
  ["names alike", { "data/A.TXT": "abc" }, "package/paths"],
  ["a tag manifest that lists nothing", { "tagmanifest-sha256.txt": "" }, "package/tag-manifests"],
];

test.each(PACKAGE)("planted in a package: %s", async (_, change, rule) => {
  const { findings } = await runBagRules(packageRules, await bagOf(bagExample(change)));
  expect(findings.map((finding) => finding.rule)).toContain(rule);
});

test("there are more than 100 of them, and no two alike", () => {
  const all = Object.values(KINDS).flat();
  expect(all.length + PACKAGE.length).toBeGreaterThan(100);
  const seen = all.map(([product, from, to]) => `${product} ${String(from)} ${to}`);
  expect(new Set(seen).size).toBe(seen.length);
});
