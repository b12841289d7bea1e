import { defineBagRule, rfc8493 } from "../../engine/bag-rule.ts";
import { bagExample } from "./bag-example.ts";

export const packageFetch = defineBagRule({
  id: "package/fetch",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "house",
  citation: rfc8493("2.2.3, Fetch File"),
  covers: ["BAG-11"],
  title: "A deposit brings all its files itself",
  why: "fetch.txt names files that lie elsewhere: nothing is fetched here, and in some years nobody can.",
  remedy: "Put the files into the package and leave fetch.txt out.",
  messages: {
    present: "the package has a fetch.txt, which names files elsewhere: it is refused",
  },
  passing: [bagExample()],
  failing: [
    {
      ...bagExample({ "fetch.txt": "https://example.org/a.txt 3 data/a.txt\n" }),
      where: { file: "fetch.txt" },
      message: "present",
    },
  ],
  check({ bag: { files } }, report) {
    if (files.has("fetch.txt")) report({ file: "fetch.txt" }, "present");
  },
});
