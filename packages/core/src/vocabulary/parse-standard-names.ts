import { failOr, type Problem, type Result } from "../problem.ts";
import { scanElements } from "./scan-elements.ts";
import type { StandardName, StandardNameTable } from "./standard-name-table.ts";

/** A row of either form before aliases are resolved. */
interface Row {
  readonly name: string;
  readonly units: string | null;
  readonly targets: readonly string[];
  readonly line: number;
}

interface Reading {
  version: string;
  lastModified: string | null;
  readonly rows: Row[];
  readonly problems: Problem[];
}

// blanks: some old aliases were published with one by mistake
const NAME = /^[A-Za-z][A-Za-z0-9_ ]*$/;

/**
 * Reads a CF standard-name table: the published XML form, or the tab-separated list of its facts (a first line
 * "# CF standard name table version N …", then name, canonical_units, alias_of).
 *
 * @returns the table; or every problem with its line: vocabulary/not-a-table, vocabulary/xml, vocabulary/no-version,
 *          vocabulary/bad-name, vocabulary/twice, vocabulary/alias-without-target, vocabulary/row
 */
export function parseStandardNameTable(text: string): Result<StandardNameTable> {
  const content = text.replace(/^\uFEFF/, "");
  const reading = /^\s*</.test(content) ? readXml(content) : readTsv(content);
  const { rows, problems } = reading;
  const complain = (what: string, line: number, message: string) =>
    problems.push({ code: `vocabulary/${what}`, message, where: { line } });
  if (problems.length === 0) {
    if (rows.length === 0) complain("not-a-table", 1, "no standard names are found in this text");
    if (!/^\d+$/.test(reading.version))
      complain("no-version", 1, "the table does not tell its version number");
  }
  const seen = new Map<string, Row>();
  for (const row of rows) {
    if (!NAME.test(row.name)) complain("bad-name", row.line, `"${row.name}" cannot be a standard name`);
    if (seen.has(row.name)) complain("twice", row.line, `${row.name} stands in the table twice`);
    else seen.set(row.name, row);
  }
  const names = new Map<string, StandardName>();
  for (const { name, units, targets, line } of seen.values()) {
    const [target = null, ...others] = targets;
    for (const missing of targets.filter((each) => !seen.has(each)))
      complain("alias-without-target", line, `${name} is an alias of ${missing}, which is not in the table`);
    const canonicalUnits = target === null ? units : (seen.get(target)?.units ?? null);
    names.set(name, { name, canonicalUnits, aliasOf: target, alsoAliasOf: others });
  }
  return failOr(problems, () => ({
    version: reading.version,
    lastModified: reading.lastModified,
    names,
  }));
}

function readTsv(text: string): Reading {
  const lines = text.split(/\r?\n/);
  const title = /^# CF standard name table version (\d+)(?: \(last_modified ([^)]+)\))?/.exec(lines[0] ?? "");
  const reading: Reading = {
    version: title?.[1] ?? "",
    lastModified: title?.[2] ?? null,
    rows: [],
    problems: [],
  };
  const problem = (code: string, line: number, message: string) =>
    reading.problems.push({ code: `vocabulary/${code}`, message, where: { line } });
  if (lines[1] !== "name\tcanonical_units\talias_of") {
    problem("not-a-table", 2, "this is neither the XML form of the table nor its tab-separated form");
    return reading;
  }
  for (const [i, text] of lines.entries()) {
    if (i < 2 || text === "") continue;
    const cells = text.split("\t");
    if (cells.length !== 3) problem("row", i + 1, `${cells.length} columns where three are expected`);
    else {
      const [name = "", units, targets] = cells;
      reading.rows.push({
        name,
        units: units || null,
        targets: targets ? targets.split(",") : [],
        line: i + 1,
      });
    }
  }
  return reading;
}

/** The elements of the published table: entries with canonical units, and aliases with one or more entry ids. */
function readXml(text: string): Reading {
  const { elements, problems } = scanElements(text);
  const reading: Reading = { version: "", lastModified: null, rows: [], problems: [...problems] };
  const root = elements[0];
  if (root && root.path !== "standard_name_table")
    reading.problems.push({
      code: "vocabulary/not-a-table",
      message: `the document is a ${root.path}, not a standard_name_table`,
      where: { line: root.line },
    });
  let open: { name: string; units: string | null; targets: string[]; line: number } | null = null;
  for (const { path, attributes, content, line } of elements) {
    const [, element, part] = path.split("/");
    if (part === undefined && (element === "entry" || element === "alias")) {
      open = { name: attributes.get("id") ?? "", units: null, targets: [], line };
      reading.rows.push(open);
    } else if (part === "canonical_units" && open) open.units = content || null;
    else if (part === "entry_id" && open) open.targets.push(content);
    else if (part === undefined && element === "version_number") reading.version = content;
    else if (part === undefined && element === "last_modified") reading.lastModified = content;
  }
  return reading;
}
