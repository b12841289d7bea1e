import { describe, expect, test } from "vitest";
import { standAloneText } from "./inherit-sheet.ts";
import { readBaseSheet, readSheet } from "./read-sheet.ts";

const BOAT = `version: 1
people:
  creator: { name: Boat crew, type: group, institution: Station }
platforms:
  - { id: boat, name: open boat }
instruments:
  - id: probe
    name: probe
    serial_number: "7"
    sensors: { pressure: { accuracy: 0.1, units: dbar } }
  - { id: spare, name: spare probe }
`;
const OWN = `# my survey
version: 1
inherit: boat.yaml
survey: { id: quay }
people:
  creator: { name: Shore party }
instruments:
  - id: probe
    calibration_date: 2025-02-11
    name: probe
`;

const base = (text: string, file = "boat.yaml") => {
  const read = readBaseSheet(text, file, "0".repeat(64));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
};
const sheetOf = (text: string, ...bases: ReturnType<typeof base>[]) => {
  const read = readSheet(text, "survey.yaml", bases);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
};

describe("a sheet that inherits", () => {
  test("tells what its base tells unless it says otherwise; entries of one id become one", () => {
    const sheet = sheetOf(OWN, base(BOAT));
    expect(sheet.people?.creator).toEqual({ name: "Shore party", type: "group", institution: "Station" });
    expect(sheet.platforms).toEqual([{ id: "boat", name: "open boat" }]);
    expect(sheet.instruments).toEqual([
      {
        id: "probe",
        calibration_date: "2025-02-11",
        name: "probe",
        serial_number: "7",
        sensors: { pressure: { accuracy: 0.1, units: "dbar" } },
      },
      { id: "spare", name: "spare probe" },
    ]);
    expect(sheet).not.toHaveProperty("inherit");
  });

  test("of two bases the first goes before the second", () => {
    const other = base("version: 1\nsurvey: { project: Second, program: Second }\n", "other.yaml");
    const first = base("version: 1\nsurvey: { project: First }\n", "first.yaml");
    expect(sheetOf(OWN, first, other).survey).toEqual({ id: "quay", project: "First", program: "Second" });
  });

  test("stands alone as text, with its own comments and the same content", () => {
    const text = standAloneText(OWN, [base(BOAT)]);
    expect(text).toContain("# my survey");
    expect(text).toContain("boat.yaml");
    expect(sheetOf(text)).toEqual(sheetOf(OWN, base(BOAT)));
  });

  test("stands alone also where an anchor of it was replaced", () => {
    const text = `version: 1
inherit: boat.yaml
survey: { id: quay, title: &name Casts }
people: { creator: { name: &who Crew }, publisher: { name: *who } }
`;
    expect(sheetOf(standAloneText(text, [base(BOAT)]))).toEqual(sheetOf(text, base(BOAT)));
  });

  test("is refused without its base", () => {
    const read = readSheet(OWN, "survey.yaml");
    expect(!read.ok && read.problems[0].code).toBe("sheet/inherit");
  });
});

test.each([
  ["casts: []", "sheet/inherit"],
  ["created: 2025-06-02T08:00:00Z", "sheet/inherit"],
  ["platform: []", "sheet/unknown-key"],
])("a base with %s is refused at its place", (line, code) => {
  const read = readBaseSheet(`version: 1\n${line}\n`, "boat.yaml", "0".repeat(64));
  expect(read.ok).toBe(false);
  if (read.ok) return;
  expect(read.problems[0].code).toBe(code);
  expect(read.problems[0].where).toMatchObject({ file: "boat.yaml", line: 2 });
});
