import { isPayload } from "@wherry/formats";
import { defineBagRule, rfc8493 } from "../../engine/bag-rule.ts";
import { bagExample } from "./bag-example.ts";

export const packagePayloadOxum = defineBagRule({
  id: "package/payload-oxum",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: rfc8493("2.2.2, Bag Metadata"),
  covers: ["BAG-10"],
  title: "Payload-Oxum states the bytes and the number of the payload files",
  why: "It is the quickest sign of a package that did not arrive whole.",
  remedy: "Correct Payload-Oxum in bag-info.txt, or look for the files that are missing.",
  messages: {
    form: "Payload-Oxum: {found} is not bytes, a point and a number of files",
    other: "Payload-Oxum says {found}, the package holds {expected} (bytes, then files)",
    twice: "Payload-Oxum is given {found} times",
  },
  passing: [
    bagExample({ "bag-info.txt": "Payload-Oxum: 3.1\n" }),
    bagExample({ "bag-info.txt": "Contact-Name: A\n" }),
  ],
  failing: [
    {
      ...bagExample({ "bag-info.txt": "Payload-Oxum: 3 bytes\n" }),
      where: { file: "bag-info.txt", line: 1 },
      message: "form",
    },
    {
      ...bagExample({ "bag-info.txt": "payload-oxum: 4.1\n" }),
      where: { file: "bag-info.txt", line: 1 },
      message: "other",
    },
    {
      ...bagExample({ "bag-info.txt": "Payload-Oxum: 3.1\nPayload-Oxum: 3.1\n" }),
      where: { file: "bag-info.txt", line: 2 },
      message: "twice",
    },
  ],
  check({ bag: { info, files } }, report) {
    const stated = info?.fields.filter(({ label }) => label.toLowerCase() === "payload-oxum") ?? [];
    const [first, second] = stated;
    if (first === undefined) return;
    const file = "bag-info.txt";
    if (second !== undefined) report({ file, line: second.line }, "twice", { found: stated.length });
    const payload = [...files].filter(([path]) => isPayload(path));
    const bytes = payload.reduce((sum, [, { size }]) => sum + size, 0);
    const expected = `${bytes}.${payload.length}`;
    const { line, value } = first;
    if (!/^\d+\.\d+$/.test(value)) report({ file, line }, "form", { found: value });
    else if (value !== expected) report({ file, line }, "other", { found: value, expected });
  },
});
