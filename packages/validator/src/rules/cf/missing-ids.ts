import { cfClause, defineRule } from "../../engine/rule.ts";
import { castsCdl } from "./sampling-example.ts";

export const missingIds = defineRule({
  id: "cf/missing-ids",
  status: "stable",
  since: "0.1.0",
  level: "warning",
  basis: "clause",
  citation: cfClause("9.6"),
  editions: { since: "1.6" },
  covers: ["CF-9.6-T35"],
  title: "A feature without an identifier is empty",
  why: "A missing identifier marks an unused place; a position there belongs to no cast.",
  remedy: "Give the feature its identifier, or set its time and position to missing.",
  messages: { filled: "{variable} has values where {other} has no identifier" },
  passing: [castsCdl()],
  failing: [
    { cdl: castsCdl().replace('"a1", "a2"', '"a1", ""'), where: { variable: "time" }, message: "filled" },
  ].map((example) => ({
    ...example,
    // one coordinate is enough to show it
    cdl: example.cdl.replace("lat = 50, 51", "lat = 50, NaN").replace("lon = 3, 4", "lon = 3, NaN"),
    message: "filled" as const,
  })),
  async check(dataset, report) {
    const identity = dataset.all.find(
      (variable) => variable.has("cf_role") && variable.dimensions.length === 1,
    );
    const [instance] = identity?.dimensions ?? [];
    if (identity === undefined || instance === undefined || !identity.isText) return;
    const ids = (await dataset.data.texts(identity.name)) ?? [];
    const empty = [...ids.keys()].filter((index) => ids[index] === "");
    if (empty.length === 0 || empty.length === ids.length) return;
    for (const variable of dataset.coordinates) {
      if (variable.dimensions.length !== 1 || variable.dimensions[0] !== instance) continue;
      const values = await dataset.data.numbers(variable.name);
      const places = values === null ? [] : empty.filter((index) => !Number.isNaN(values[index]!));
      if (places.length > 0)
        report({ variable: variable.name }, "filled", { places, fill: { other: identity.name } });
    }
  },
});
