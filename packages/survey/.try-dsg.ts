import { readFileSync } from "node:fs";
import { lookText } from "@wherry/converter";
import { readCfDsg } from "@wherry/formats";
import { openDataset, parseCdl } from "@wherry/netcdf";

for (const p of process.argv.slice(3)) {
  const b = readFileSync(p);
  const d = p.endsWith(".cdl") ? parseCdl(b.toString()) : await openDataset(b);
  if (!d.ok) {
    console.log(p, "NOT OPEN", d.problems[0].message);
    continue;
  }
  const r = await readCfDsg(d.value, { path: p, sha256: "0".repeat(64) });
  if (!r.ok) throw new Error("x");
  const f = r.value;
  if (process.argv[2] === "long") console.log(lookText([f], { explain: true }));
  else {
    console.log("==", p, "|", f.format, "|", f.missingMarkers.join(" "));
    for (const c of f.casts)
      console.log(
        "  ",
        c.id,
        c.kind,
        c.rows,
        c.time,
        c.timeRole,
        c.endTime,
        JSON.stringify(c.start),
        JSON.stringify(c.end),
        JSON.stringify(c.fixedDepth),
        c.pressureOffset,
        c.segments.length,
        [...c.columns.values()].map((x) => `${x.name}[${x.units}]${x.values[0]}`).join(" "),
        [...c.texts.keys()].join(),
        c.elapsed?.length,
        c.state.processing,
      );
    for (const x of f.findings) console.log("   !", x.code, x.message);
  }
}
