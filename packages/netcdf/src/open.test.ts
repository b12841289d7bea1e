import { expect, test } from "vitest";
import { codesOf } from "../test/content.ts";
import { openDataset } from "./open.ts";

const signature = Uint8Array.of(0x89, 0x48, 0x44, 0x46, 0x0d, 0x0a, 0x1a, 0x0a);

// HDF5 File Format Specification, II.A: at 0, 512, 1024, 2048, … behind a user block
test.each([
  { at: 0, hdf5: true },
  { at: 256, hdf5: false },
  { at: 512, hdf5: true },
  { at: 1024, hdf5: true },
  { at: 1536, hdf5: false },
  { at: 2048, hdf5: true },
])("a signature at byte $at is that of an HDF5 file: $hdf5", async ({ at, hdf5 }) => {
  const bytes = new Uint8Array(at + 100);
  bytes.set(signature, at);
  const opened = await openDataset(bytes);
  expect(opened.ok).toBe(false); // there is nothing behind the signature
  expect(codesOf(opened).includes("netcdf/not-netcdf")).toBe(!hdf5);
});
