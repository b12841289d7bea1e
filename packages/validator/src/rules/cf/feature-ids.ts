import { cfClause, defineRule } from "../../engine/rule.ts";
import { castsCdl } from "./sampling-example.ts";

export const featureIds = defineRule({
  id: "cf/feature-ids",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("9.5"),
  editions: { since: "1.6" },
  covers: ["CF-9.5-T31"],
  title: "Each feature has an identifier of its own",
  why: "Two casts with one name cannot be told apart or referred to.",
  remedy: "Give each feature in {variable} another identifier.",
  messages: { twice: '{variable} has the identifier "{found}" more than once' },
  passing: [castsCdl()],
  failing: [
    { cdl: castsCdl().replace('"a1", "a2"', '"a1", "a1"'), where: { variable: "cast_id" }, message: "twice" },
  ],
  async check(dataset, report) {
    const compound =
      dataset.layout.featureType?.endsWith("profile") && dataset.layout.featureType !== "profile";
    for (const variable of dataset.all) {
      const role = variable.text("cf_role");
      if (role === undefined) continue;
      // a profile of a station or track need be unique within that only; where it lies on one dimension it is judged
      if (compound && role === "profile_id" && variable.dimensions.length !== 1) continue;
      if (compound && role === "profile_id") continue;
      const { name } = variable;
      const ids = variable.isText ? await dataset.data.texts(name) : await dataset.data.numbers(name);
      const seen = new Set<string | number>();
      const places: number[] = [];
      let found: string | number = "";
      for (const [index, id] of [...(ids ?? [])].entries()) {
        if (id === "" || Number.isNaN(id)) continue;
        if (seen.has(id)) {
          if (places.length === 0) found = id;
          places.push(index);
        }
        seen.add(id);
      }
      if (places.length > 0) report({ variable: name }, "twice", { found, places });
    }
  },
});
