import { type WaiversDocument, waiversSchema } from "@wherry/contracts";
import { fail, failOr, type Problem, type Result } from "@wherry/core";
import type { CheckedFile } from "./check-file.ts";
import { countLevels, type Finding } from "./finding.ts";

export type Waiver = WaiversDocument["waivers"][number];

/** A finding that a person accepts, with the waiver that says so. */
export interface WaivedFinding {
  readonly finding: Finding;
  readonly waiver: Waiver;
}

/**
 * Reads the document of waivers, parsed from its JSON.
 *
 * @returns  the waivers; or waivers/form for each part that the schema refuses
 */
export async function waiversOf(document: unknown, file: string): Promise<Result<readonly Waiver[]>> {
  const { Ajv2020 } = await import("./json-schema.ts");
  const isDocument = new Ajv2020({ allErrors: true }).compile<WaiversDocument>(waiversSchema);
  if (isDocument(document)) return failOr([], () => document.waivers);
  const [first, ...others] = (isDocument.errors ?? []).map(
    ({ instancePath, message, params }): Problem => ({
      code: "waivers/form",
      message: `${instancePath === "" ? "the document of waivers" : instancePath} ${message ?? "is not as it should be"}${
        "additionalProperty" in params ? `: ${String(params.additionalProperty)}` : ""
      }`,
      where: { file },
      remedy: "Each waiver needs rule, reason and by; file, variable, attribute and until are allowed.",
    }),
  );
  if (first === undefined) throw new TypeError("refused without a reason");
  return fail(first, ...others);
}

const nameOf = (path: string): string => path.split(/[\\/]/).at(-1) ?? path;

const fits = ({ rule, file, variable, attribute }: Waiver, finding: Finding, path: string): boolean =>
  rule === finding.rule &&
  (file === undefined || file === nameOf(path)) &&
  (variable === undefined || variable === finding.where.variable) &&
  (attribute === undefined || attribute === finding.where.attribute);

/** The moment at which a waiver ends, epoch seconds UTC. */
const endOf = ({ until }: Waiver): number =>
  until === undefined ? Number.POSITIVE_INFINITY : Date.parse(`${until}T00:00:00Z`) / 1000 + 86_400;

/** "cf/names at temperature in casts.nc". */
const inWords = ({ rule, file, variable, attribute }: Waiver): string =>
  [
    rule,
    ...(variable === undefined && attribute === undefined
      ? []
      : [`at ${[variable, attribute].filter((part) => part !== undefined).join(":")}`]),
    ...(file === undefined ? [] : [`in ${file}`]),
  ].join(" ");

/** Takes accepted findings out of verdicts, one after the other, and knows in the end which waivers were of use. */
export interface WaiverDesk {
  /** The verdict with `waived`. A file that cannot be read has nothing to accept. */
  judge(checked: CheckedFile): CheckedFile;
  /** A warning for each waiver that has expired or that nothing needed so far. */
  warnings(): Problem[];
}

/**
 * @param now   the moment of checking, epoch seconds UTC
 * @param file  name of the document of waivers
 */
export function waiverDesk(
  waivers: readonly Waiver[],
  { now, file }: { now: number; file: string },
): WaiverDesk {
  const used = new Set<Waiver>();
  return {
    judge(checked) {
      if (checked.format === null) return checked;
      const waived: WaivedFinding[] = [];
      const findings = checked.findings.filter((finding) => {
        const waiver = waivers.find((each) => fits(each, finding, checked.path));
        if (waiver === undefined) return true;
        used.add(waiver);
        if (endOf(waiver) <= now) return true;
        waived.push({ finding, waiver });
        return false;
      });
      return { ...checked, findings, counts: countLevels(findings), waived };
    },
    warnings: () =>
      waivers.flatMap((waiver): Problem[] => {
        const place = { where: { file } };
        if (endOf(waiver) <= now)
          return [
            {
              code: "waivers/expired",
              message: `the waiver of ${inWords(waiver)} ended on ${waiver.until}`,
              ...place,
              remedy: "Mend the cause, or decide again and give it a new date.",
            },
          ];
        return used.has(waiver)
          ? []
          : [
              {
                code: "waivers/unused",
                message: `nothing needs the waiver of ${inWords(waiver)}`,
                ...place,
                remedy: "Remove it.",
              },
            ];
      }),
  };
}
