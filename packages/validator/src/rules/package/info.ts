import { parseIsoTime } from "@wherry/core";
import { defineBagRule, rfc8493 } from "../../engine/bag-rule.ts";
import { bagExample } from "./bag-example.ts";

export const packageInfo = defineBagRule({
  id: "package/info",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: rfc8493("2.2.2, Bag Metadata"),
  covers: ["BAG-8", "BAG-9"],
  title: "bag-info.txt is made of lines with a label, a colon and a value",
  why: "The archive finds there whom to ask, and when the package was made.",
  remedy: "Correct the line in bag-info.txt.",
  messages: {
    form: "{file}, line {line} is neither a label with its value nor the continuation of one",
    date: "Bagging-Date is {found}, not a date like 2030-01-31",
  },
  passing: [
    bagExample({ "bag-info.txt": "Bagging-Date: 2030-01-31\nExternal-Description: Casts\n  of a pier\n" }),
  ],
  failing: [
    {
      ...bagExample({ "bag-info.txt": "Contact-Name A\n" }),
      where: { file: "bag-info.txt", line: 1 },
      message: "form",
    },
    {
      ...bagExample({ "bag-info.txt": "Bagging-Date: 31.1.2030\n" }),
      where: { file: "bag-info.txt", line: 1 },
      message: "date",
    },
  ],
  check({ bag: { info } }, report) {
    if (info === null) return;
    const file = "bag-info.txt";
    for (const { line } of info.malformed) report({ file, line }, "form");
    for (const { line, label, value } of info.fields) {
      if (label.toLowerCase() !== "bagging-date") continue;
      if (!/^\d{4}-\d\d-\d\d$/.test(value) || !parseIsoTime(value).ok)
        report({ file, line }, "date", { found: value });
    }
  },
});
