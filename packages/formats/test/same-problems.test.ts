import type * as core from "@wherry/core";
import type * as netcdf from "@wherry/netcdf";
import { expectTypeOf, test } from "vitest";

// The netCDF package imports nothing of ours and so declares these types itself; results pass between the two freely
// only as long as they are the same. The type check (tsconfig.test.json) is what fails here.
test("problems, places and results are the same types in core and netcdf", () => {
  expectTypeOf<netcdf.Place>().toEqualTypeOf<core.Place>();
  expectTypeOf<netcdf.Problem>().toEqualTypeOf<core.Problem>();
  expectTypeOf<netcdf.Result<number>>().toEqualTypeOf<core.Result<number>>();
});
