import { readFileSync } from "node:fs";
import { testData } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { nearestNames } from "../text/nearest.ts";
import { parseUnits } from "../units/parse.ts";
import { packNames, unpackNames } from "./packed-names.ts";
import { parseStandardNameTable } from "./parse-standard-names.ts";
import { packedStandardNames } from "./standard-names.generated.ts";
import { shippedStandardNames, standardName } from "./standard-names.ts";
import { areaTypes, regionNames } from "./word-lists.ts";

// CF standard-name table, version 83
test.each([
  ["sea_water_practical_salinity", "1", null],
  ["sea_water_temperature", "K", null],
  ["sea_water_pressure", "dbar", null],
  ["sea_water_electrical_conductivity", "S m-1", null],
  ["depth", "m", null],
  ["time", "s", null],
  ["latitude", "degree_north", null],
  ["platform_id", null, null],
  ["y_sea_water_velocity", "m s-1", "sea_water_y_velocity"],
])("%s in %s, alias of %s", (name, canonicalUnits, aliasOf) => {
  expect(standardName(name)).toEqual({ name, canonicalUnits, aliasOf, alsoAliasOf: [] });
});

test.each(["", "salinity", "Depth", "sea_water_temperature "])("%j is no standard name", (name) =>
  expect(standardName(name)).toBeNull(),
);

test("the shipped table is the whole source, packed small", () => {
  const source = readFileSync(testData("standards", "cf-standard-names.tsv"), "utf8");
  const shipped = shippedStandardNames();
  expect(shipped).toMatchObject({ version: "83", lastModified: "2023-10-17T15:09:35Z" });
  const rows = source
    .trimEnd()
    .split("\n")
    .slice(2)
    .map((line) => line.split("\t"));
  expect(rows).toHaveLength(4666 + 564);
  expect(shipped.names.size).toBe(rows.length);
  for (const [name = "", units = "", targets = ""] of rows) {
    const found = shipped.names.get(name);
    expect([found?.canonicalUnits ?? "", [found?.aliasOf ?? "", ...found!.alsoAliasOf].join(",")]).toEqual([
      units,
      targets,
    ]);
  }
  const packed = packNames(shipped);
  expect(packed.names.length + packed.words.length + packed.units.length).toBeLessThan(source.length / 5);
});

// dB stands in the table, but UDUNITS does not know it
test("every canonical unit but dB is a unit", () => {
  const units = [...shippedStandardNames().names.values()].map((each) => each.canonicalUnits ?? "1");
  expect([...new Set(units)].filter((text) => !parseUnits(text).ok)).toEqual(["dB"]);
});

test("misspelt names find their like", () => {
  const names = shippedStandardNames().names.keys();
  expect(nearestNames("sea_water_practical_salinty", names)[0]).toBe("sea_water_practical_salinity");
});

test("word lists of CF", () => {
  expect(areaTypes()).toMatchObject({ version: "13" });
  expect([areaTypes().words.size, areaTypes().words.has("ice_free_sea"), areaTypes().words.has("")]).toEqual([
    62,
    true,
    false,
  ]);
  expect(regionNames()).toMatchObject({ version: "5" });
  expect([regionNames().words.size, regionNames().words.has("arctic_ocean")]).toEqual([74, true]);
});

const xml = (body: string, root = "standard_name_table") => `<?xml version="1.0"?>
<${root} xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
  <version_number>99</version_number>
  <last_modified>2027-01-01T00:00:00Z</last_modified>
${body}
</${root}>
`;

describe("parseStandardNameTable", () => {
  const entry = `  <entry id="sea_ripple">
    <canonical_units>m s-1</canonical_units> <grib/> <amip></amip>
    <description>Less &lt; and &#x3c; more &amp; <!-- a remark --> <![CDATA[<b>]]></description>
  </entry>
  <entry id="sea_mood"><canonical_units></canonical_units></entry>`;

  test("reads the published XML form", () => {
    const result = parseStandardNameTable(
      xml(
        `${entry}\n  <alias id="ripple"><entry_id>sea_ripple</entry_id><entry_id>sea_mood</entry_id></alias>`,
      ),
    );
    if (!result.ok) throw new Error(result.problems[0].message);
    expect(result.value).toMatchObject({ version: "99", lastModified: "2027-01-01T00:00:00Z" });
    expect(standardName("sea_ripple", result.value)?.canonicalUnits).toBe("m s-1");
    expect(standardName("sea_mood", result.value)?.canonicalUnits).toBeNull();
    expect(standardName("ripple", result.value)).toEqual({
      name: "ripple",
      canonicalUnits: "m s-1",
      aliasOf: "sea_ripple",
      alsoAliasOf: ["sea_mood"],
    });
    const unpacked = unpackNames(packNames(result.value));
    expect({ ...unpacked, names: new Map(unpacked.names) }).toEqual(result.value);
  });

  test.each([
    ["a tag that never closes", xml('<entry id="a">'), "xml", 6],
    ["tags that cross", xml('<entry id="a">\n<canonical_units></entry></canonical_units>'), "xml", 6],
    ["an entity of its own", xml('<entry id="a">\n&nbsp;</entry>'), "xml", 5],
    ["an attribute without quotes", xml("<entry id=a></entry>"), "xml", 5],
    ["another document", xml(entry, "table"), "not-a-table", 2],
    ["no entries", xml(""), "not-a-table", 1],
    ["a name twice", xml(`${entry}\n<entry id="sea_mood"/>`), "twice", 10],
    ["an entry without a name", xml("<entry></entry>"), "bad-name", 5],
    [
      "an alias of nothing",
      xml(`${entry}\n<alias id="b"><entry_id>c</entry_id></alias>`),
      "alias-without-target",
      10,
    ],
    ["no version", xml(entry).replace(">99<", "><"), "no-version", 1],
    ["some other text", "hello\nworld", "not-a-table", 2],
    ["a short row", "# CF standard name table version 7\nname\tcanonical_units\talias_of\na\tm\n", "row", 3],
    ["nothing", "", "not-a-table", 2],
  ])("%s is a problem with its line", (_, text, code, line) => {
    expect(parseStandardNameTable(text)).toMatchObject({
      ok: false,
      problems: [{ code: `vocabulary/${code}`, where: { line } }],
    });
  });

  test("every bad row is told", () => {
    const text =
      "# CF standard name table version 7\r\nname\tcanonical_units\talias_of\r\na\tm\r\n?\tm\t\r\n";
    const result = parseStandardNameTable(text);
    expect(!result.ok && result.problems.map((each) => each.where.line)).toEqual([3, 4]);
  });
});

test("a name asked for alone is the same as among all, and one of no group is none", () => {
  const all = [...unpackNames(packedStandardNames).names];
  for (const [name, entry] of all.filter((_, i) => i % 20 === 0))
    expect(unpackNames(packedStandardNames).names.get(name)).toEqual(entry);
  const { names } = unpackNames(packedStandardNames);
  for (const name of [
    "",
    "sea",
    "sea_water",
    "seawater_temperature",
    "no_such_word",
    "sea_water_temperature_",
  ])
    expect(names.get(name)).toBeUndefined();
  // groups that were read one after the other
  for (const [name, entry] of all) if (entry.aliasOf === null) expect(names.get(name)).toEqual(entry);
});
