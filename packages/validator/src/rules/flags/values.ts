import { defineRule } from "../../engine/rule.ts";
import { flagged } from "./flag-example.ts";

/** What the netCDF library leaves in bytes that were never written. */
const UNWRITTEN: Readonly<Record<string, number>> = { byte: -127, ubyte: 255 };

export const values = defineRule({
  id: "flags/values",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "reading",
  citation: { document: "CF Conventions", edition: "1.13", clause: "3.5" },
  covers: [],
  title: "A flag variable holds only flags that it explains",
  why: "A flag without a meaning is read as good by one program and as bad by another.",
  remedy: "Add {found} to flag_values with its meaning, or correct the flags of {variable}.",
  messages: {
    unknown: "{variable} holds {found}, which is not among its flag_values",
    bits: "{variable} has bits set that no flag_masks explains, such as in {found}",
  },
  passing: [
    flagged({ v: "1, 2, 3", q: "1, 2, 9" }),
    flagged({ v: "1, 2, 3", q: "0, 1, 3" }, 'q:flag_masks = 1b, 2b ; q:flag_meanings = "spike stuck" ;'),
  ],
  failing: [
    { cdl: flagged({ v: "1, 2, 3", q: "1, 5, 5" }), where: { variable: "q" }, message: "unknown" },
    {
      cdl: flagged(
        { v: "1, 2, 3", q: "0, 4, 1" },
        'q:flag_masks = 1b, 2b ; q:flag_meanings = "spike stuck" ;',
      ),
      where: { variable: "q" },
      message: "bits",
    },
  ],
  async check(dataset, report) {
    for (const variable of dataset.all) {
      if (variable.role !== "flag" || variable.isText) continue;
      const known = new Set(variable.numbers("flag_values"));
      const masks = variable.numbers("flag_masks");
      if (known.size === 0 && masks === undefined) continue;
      const held = await dataset.data.numbers(variable.name);
      if (held === null) continue;
      const all = (masks ?? []).reduce((bits, mask) => bits | mask, 0);
      const places: number[] = [];
      for (let i = 0; i < held.length; i += 1) {
        const value = held[i]!;
        if (Number.isNaN(value) || value === UNWRITTEN[variable.type]) continue;
        if (masks === undefined ? !known.has(value) : (value & ~all) !== 0) places.push(i);
      }
      if (places.length === 0) continue;
      const found = [...new Set(places.map((i) => held[i]!))].slice(0, 5);
      report({ variable: variable.name }, masks === undefined ? "unknown" : "bits", { found, places });
    }
  },
});
