import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { judgementSchema, sheetSchema } from "@wherry/contracts";

interface Node {
  readonly $ref?: string;
  readonly type?: string | readonly string[];
  readonly description?: string;
  readonly properties?: Readonly<Record<string, Node>>;
  readonly items?: Node;
  readonly required?: readonly string[];
  readonly enum?: readonly unknown[];
  readonly anyOf?: readonly Node[];
}

const definitions = sheetSchema.$defs as unknown as Readonly<Record<string, Node>>;

function resolved(node: Node): Node {
  const name = node.$ref?.replace("#/$defs/", "");
  return name === undefined ? node : { ...definitions[name], ...node };
}

const cell = (text: string): string => text.replaceAll("|", "\\|").replaceAll("\n", " ");

/** Rows of a table for an object's keys; groups within it follow under their own path. */
function* rows(node: Node, path: string): Generator<string> {
  for (const [key, own] of Object.entries(node.properties ?? {})) {
    const target = resolved(own);
    const here = path === "" ? key : `${path}.${key}`;
    const needed = node.required?.includes(key) === true ? " (needed)" : "";
    const choices = target.enum === undefined ? "" : ` One of ${target.enum.join(", ")}.`;
    yield `| \`${here}\`${needed} | ${cell(`${target.description ?? ""}${choices}`)} |`;
    const items = target.items === undefined ? null : resolved(target.items);
    if (target.properties) yield* rows(target, here);
    else if (items?.properties) yield* rows(items, `${here}[]`);
  }
}

const PAGE = join("docs", "reference", "sheet.md");

/** The pages on what a person writes: the sheet and the file of judgements. */
export async function generateSheetReference(root: string): Promise<string[]> {
  const text = `# The survey sheet

Made by \`tools/generate.ts\` from the schemas in \`packages/contracts/schemas\`. \`wherry sheet FILE... --out survey.yaml\`
writes a sheet with what the files tell; \`wherry sheet --check survey.yaml --target T\` says what is still missing. A list
has \`[]\` behind its name; what is not needed may be left out.

A sheet may \`inherit:\` from others (the boat, the instrument): what those tell holds unless the sheet says otherwise.
Entries of \`platforms\` and \`instruments\` with the same id become one. A sheet that others inherit from has no \`casts\` and no
\`created\`, and needs no \`survey.id\`. The copy in the result holds everything and inherits nothing.

| key | what |
| --- | --- |
${[...rows(sheetSchema as unknown as Node, "")].join("\n")}

## judgements.jsonl

One JSON document a line, written by \`wherry judge\` or by hand, beside the sheet. Lines are only added.

| key | what |
| --- | --- |
${[...rows(judgementSchema as unknown as Node, "")].join("\n")}

A line either undoes an earlier one (\`undo\`) or sets a flag (\`cast\`, \`sha256\`, \`quantity\`, \`flag\`, and \`lines\` or
\`pressure\`). Where two meet, the later holds. The flag wins over the automatic tests; a missing value stays 9.
`;
  await writeFile(join(root, PAGE), text);
  return [PAGE];
}
