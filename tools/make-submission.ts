/**
 * Writes docs/how-to/submission/tarn-loch-2024.nc: the file of an invented colleague from an invented survey, with what
 * goes wrong in such files. Salinity is computed from an invented temperature and conductivity; a few rows of it slipped.
 *
 *   npx tsx --conditions=wherry-source tools/make-submission.ts
 */
import { readFileSync, writeFileSync } from "node:fs";
import { practicalSalinity } from "@wherry/core";
import { parseCdl, writeClassic } from "@wherry/netcdf";

const folder = new URL("../docs/how-to/submission/", import.meta.url);
const depths = Array.from({ length: 12 }, (_, i) => 0.5 + i);
const casts = [0, 1, 2];
const t = casts.flatMap((cast) =>
  depths.map((p) => Math.round((14.2 - 0.35 * p - 0.2 * cast) * 1000) / 1000),
);
const c = casts.flatMap((cast) =>
  depths.map((p) => Math.round((2.95 + 0.06 * p + 0.03 * cast) * 10_000) / 10_000),
);
const p = casts.flatMap(() => depths);
const salinity = p.map((pressure, i) => {
  // rows 15 to 17 were typed again by hand, and slipped
  const slip = i >= 15 && i <= 17 ? 1 : 0;
  return Math.round((practicalSalinity(c[i]! * 10, t[i]!, pressure) + slip) * 1000) / 1000;
});
const list = (values: readonly number[]) => values.join(", ");
const cdl = readFileSync(new URL("tarn-loch-2024.cdl", folder), "utf8")
  .replace("@pressure", list(p))
  .replace("@temperature", list(t))
  .replace("@conductivity", list(c))
  .replace("@salinity", list(salinity));
const dataset = parseCdl(cdl);
if (!dataset.ok) throw new Error(dataset.problems[0].message);
const chunks: Uint8Array[] = [];
const written = await writeClassic(dataset.value, { version: 1 }, (chunk) => void chunks.push(chunk.slice()));
if (!written.ok) throw new Error(written.problems[0].message);
writeFileSync(new URL("tarn-loch-2024.nc", folder), Buffer.concat(chunks));
