import { cfClause, defineRule } from "../../engine/rule.ts";

/** Version that the file names: the first number after "v", "version" or "table"; null if none can be read. */
export function namedTable(text: string | undefined): number | null {
  const number = /\b(?:v|version|table)\s*\.?\s*(\d{1,4})\b/i.exec(text ?? "")?.[1];
  return number === undefined ? null : Number.parseInt(number, 10);
}

export const standardNameKnown = defineRule({
  id: "cf/standard-name-known",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("3.3"),
  covers: ["CF-3.3-R2"],
  title: "The standard name stands in the table of standard names, letter for letter",
  why: "The name is how programs and archives know what a variable is; a name that is not in the table says nothing.",
  remedy: "Use a name of the table{near}.",
  messages: {
    unknown: 'standard_name of {variable}, "{found}", is not in version {table} of the table',
    newer:
      'standard_name of {variable}, "{found}", is not in version {table} of the table; the file names version {named}, which may have it',
  },
  passing: [
    `variables: float t ; t:standard_name = "sea_water_temperature" ;`,
    `variables: byte q ; q:standard_name = "sea_water_temperature status_flag" ;`,
  ],
  failing: [
    {
      cdl: `variables: float t ; t:standard_name = "Sea_Water_Temperature" ;`,
      where: { variable: "t", attribute: "standard_name" },
      message: "unknown",
    },
    {
      cdl: `:standard_name_vocabulary = "CF Standard Name Table v9999" ; variables: float t ; t:standard_name = "new_name" ;`,
      where: { variable: "t", attribute: "standard_name" },
      message: "newer",
      level: "warning",
    },
  ],
  check(dataset, report) {
    const { version } = dataset.vocabulary;
    const named = namedTable(dataset.text("standard_name_vocabulary"));
    for (const variable of dataset.all) {
      const name = variable.standardName;
      if (name === undefined || dataset.vocabulary.find(name) !== null) continue;
      // names of more words are the business of the rule on the form
      if (variable.words("standard_name").length > 2) continue;
      const near = dataset.vocabulary.near(name);
      const newer = named !== null && named > version;
      report({ variable: variable.name, attribute: "standard_name" }, newer ? "newer" : "unknown", {
        found: name,
        ...(near.length > 0 ? { expected: near } : {}),
        ...(newer ? { level: "warning" as const } : {}),
        fill: {
          table: version,
          named: named ?? "",
          near: near.length > 0 ? `; spelt nearly so: ${near.join(", ")}` : "",
        },
      });
    }
  },
});
