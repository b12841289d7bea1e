import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { sharedPath, testData, testWithShared } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { unwrap } from "../../test/content.ts";
import { comparable, type LibraryContents, plainContents } from "../../test/netcdf-library.ts";
import type { Dataset } from "../dataset.ts";
import { openDataset } from "../open.ts";

// Expected: raw values as the netCDF library 4.9.0 reads them, by way of Python's netCDF4 1.6.2
// (tools/make_netcdf4_fixtures.py).

const open = async (name: string): Promise<Dataset> =>
  unwrap(await openDataset(readFileSync(testData("netcdf4", name))));

const expected = JSON.parse(readFileSync(testData("netcdf4", "expected.json"), "utf8")) as {
  files: Readonly<Record<string, LibraryContents>>;
};

/** The NULs that end a stored text are not part of an attribute of ours. */
function withoutEnds(contents: LibraryContents): LibraryContents {
  const cut = (list: LibraryContents["attributes"]) =>
    list.map((one) =>
      one.type === "char" ? { ...one, value: String(one.value).replace(/(?:00)+$/, "") } : one,
    );
  return {
    ...contents,
    attributes: cut(contents.attributes),
    variables: contents.variables.map((one) => ({ ...one, attributes: cut(one.attributes) })),
  };
}

describe("files of the netCDF library, as it reads them", () => {
  test.each(Object.keys(expected.files))("%s", async (name) => {
    const dataset = await open(name);
    expect(withoutEnds(await plainContents(dataset))).toEqual(withoutEnds(comparable(expected.files[name]!)));
    dataset.close?.();
  });
});
