import { areaTypes, regionNames } from "@wherry/core";
import type { DatasetView } from "../../engine/dataset-view.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";
import type { VariableView } from "../../engine/variable-view.ts";

/** Words that a variable uses: its flag meanings, or its texts. */
async function wordsUsed(dataset: DatasetView, variable: VariableView): Promise<string[]> {
  if (variable.has("flag_meanings")) return variable.words("flag_meanings");
  const texts = (await dataset.data.texts(variable.name)) ?? [];
  return [...new Set(texts.filter((text) => text !== ""))];
}

const regions = (meanings: string) =>
  `variables: byte r ; r:standard_name = "region" ; r:flag_values = 1b ; r:flag_meanings = "${meanings}" ;`;

export const listedWords = defineRule({
  id: "cf/listed-words",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("3.3"),
  editions: { since: "1.7" },
  covers: ["CF-3.3-R4"],
  title: "Regions and area types are words of their lists",
  why: "Programs choose data by these words; others are found by nobody.",
  remedy: "Use words of the list of {name}.",
  messages: { unknown: "{variable} is {name} but uses {found}, not of its list" },
  passing: [regions("atlantic_ocean")],
  failing: [{ cdl: regions("our_bay"), where: { variable: "r" }, message: "unknown" }],
  async check(dataset, report) {
    for (const variable of dataset.all) {
      const name = variable.standardName;
      if (name !== "region" && name !== "area_type") continue;
      const list = (name === "region" ? regionNames() : areaTypes()).words;
      const found = (await wordsUsed(dataset, variable)).filter((word) => !list.has(word));
      if (found.length > 0)
        report({ variable: variable.name }, "unknown", { found: found.slice(0, 5), fill: { name } });
    }
  },
});
