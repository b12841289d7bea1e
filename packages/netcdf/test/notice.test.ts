import { readFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "@wherry/testkit";
import { expect, test } from "vitest";

const packageFolder = join(root, "packages", "netcdf");
const read = (...path: string[]) => readFileSync(join(packageFolder, ...path), "utf8");

test("the licence of h5wasm is shipped whole, as it asks", () => {
  const licence = read("node_modules", "h5wasm", "LICENSE.txt");
  expect(licence).toContain("keep intact this entire notice");
  expect(read("NOTICE")).toContain(licence);
  expect((JSON.parse(read("package.json")) as { files: string[] }).files).toContain("NOTICE");
});
