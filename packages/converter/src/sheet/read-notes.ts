import { answersSchema, type ReadingNotes } from "@wherry/contracts";
import { failOr, nearestNames, type Problem, type Result, succeed } from "@wherry/core";
import type { Answer } from "@wherry/formats";
import type { ValidateFunction } from "ajv";
import { Ajv2020 } from "ajv/dist/2020.js";
import type { ExtraName } from "../understand/extra-names.ts";
import { topicProblem } from "../understand/inquiry.ts";
import { QUANTITIES } from "../understand/vocabulary/quantities.ts";
import { readUnit } from "../understand/vocabulary/unit-spellings.ts";
import { parseYaml } from "./parse-yaml.ts";
import { type Locate, nameOf, schemaProblems } from "./schema-problems.ts";
import type { DocumentForm, SchemaNode } from "./sheet-schema.ts";

/** What a notes file says, ready for understanding. */
export interface Notes {
  readonly answers: readonly Answer[];
  readonly names: readonly ExtraName[];
}

const form: DocumentForm = {
  schema: answersSchema as SchemaNode,
  called: "the notes file",
  area: "notes",
  remedy:
    'It begins with version: 1 and has answers: as the survey sheet has them, such as - { about: timeZone, where: "*", value: "+02:00" }.',
};

let compiled: ValidateFunction<ReadingNotes> | null = null;

/** Compiled on first use: most runs have no notes. */
function notesValidator(): ValidateFunction<ReadingNotes> {
  compiled ??= new Ajv2020({ allErrors: true, verbose: true, strictTypes: false }).compile<ReadingNotes>(
    answersSchema,
  );
  return compiled;
}

/**
 * Reading notes from their text, YAML or JSON. Every problem is reported at once, with line and column.
 *
 * @param file name by which problems and evidence call the notes
 */
export function readNotes(text: string, file: string): Result<Notes> {
  const parsed = parseYaml(text, file, form);
  if (!parsed.ok) return parsed;
  const { content, locate } = parsed.value;
  const isNotes = notesValidator();
  if (!isNotes(content))
    return failOr(schemaProblems(isNotes.errors ?? [], locate, form), () => ({ answers: [], names: [] }));
  const from = `the notes ${file}`;
  const kind = content.files_with === undefined ? {} : { filesWith: content.files_with };
  const problems: Problem[] = (content.answers ?? []).flatMap(({ about }, index) => {
    const problem = topicProblem(about, locate(["answers", index, "about"], "value"));
    return problem ? [problem] : [];
  });
  const names = (content.names ?? []).flatMap((name, index): ExtraName[] => {
    const quantity = quantityOf(name.quantity);
    problems.push(...nameProblems(name, index, quantity, locate));
    return quantity === null ? [] : [{ ...name, quantity, unit: name.unit ?? null, from, ...kind }];
  });
  if (problems.length > 0) return failOr(problems, () => ({ answers: [], names: [] }));
  const answers = (content.answers ?? []).map((answer) => ({ ...answer, from, ...kind }));
  return succeed({ answers, names }, parsed.warnings);
}

const isQuantity = (name: string): name is keyof typeof QUANTITIES => Object.hasOwn(QUANTITIES, name);
const quantityOf = (name: string) => (isQuantity(name) ? name : null);

function nameProblems(
  { quantity, unit }: NonNullable<ReadingNotes["names"]>[number],
  index: number,
  known: keyof typeof QUANTITIES | null,
  locate: Locate,
): Problem[] {
  if (known === null) {
    const all = Object.keys(QUANTITIES);
    const near = nearestNames(quantity, all);
    return [
      {
        code: "notes/quantity",
        message: `${nameOf(["names", index, "quantity"])} is "${quantity}", which is no quantity that is known by name`,
        where: locate(["names", index, "quantity"], "value"),
        remedy: near.length > 0 ? `Did you mean ${near.join(" or ")}?` : `Known are ${all.join(", ")}.`,
      },
    ];
  }
  if (unit === undefined) return [];
  const kinds: readonly string[] = QUANTITIES[known].kinds;
  if (kinds.includes(readUnit(unit)?.kind ?? "")) return [];
  return [
    {
      code: "notes/units",
      message: `${nameOf(["names", index, "unit"])} is "${unit}", which is not a unit of ${QUANTITIES[known].longName}`,
      where: locate(["names", index, "unit"], "value"),
      remedy: "Write it as exports do, such as dbar, degC, mS/cm.",
    },
  ];
}
