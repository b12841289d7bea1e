import { type Bag, type Container, contentOf, openBag } from "@wherry/formats";
import type { Source } from "@wherry/netcdf";
import { packageRules } from "../rules/package/index.ts";
import { runBagRules } from "./bag-rule.ts";
import { findingOf } from "./check-dataset.ts";
import { type CheckedFile, checkedFile, checkFile, type FileContext, fullNameOf } from "./check-file.ts";
import type { Finding } from "./finding.ts";

const FORMS: Readonly<Record<Container["form"], string>> = {
  folder: "deposit package, folder",
  zip: "deposit package, zip archive",
  tar: "deposit package, tar archive",
};

/** Where CSV on the Web looks for the description of a table, without other word. */
const metadataOf = (path: string): string => `${path}-metadata.json`;

/**
 * Judges a deposit package: the bag itself (RFC 8493), then every data file in it: netCDF, and CSV that has metadata
 * beside it.
 *
 * @param context  as for a file; `path` is not looked at, the container has one
 * @returns        the verdict on the package, then those on its data files; a container without a bag has `format` null.
 *                 Errors that a source throws are passed on.
 */
export async function checkPackage(
  container: Container,
  context: Omit<FileContext, "path" | "metadata">,
): Promise<CheckedFile[]> {
  const { path, form } = container;
  const opened = await openBag(container);
  if (!opened.ok)
    return [
      checkedFile(
        path,
        null,
        [...container.refused, ...opened.problems].map((problem) => findingOf(problem, path)),
      ),
    ];
  const bag = opened.value;
  const wanted = context.ruleSets?.includes("package") !== false;
  // asked for the rules of packages alone, the data files are not opened
  const others = context.ruleSets?.filter((set) => set !== "package");
  const forFiles = others === undefined ? context : { ...context, ruleSets: others };
  const findings = wanted ? await bagFindings(bag) : [];
  const checked = [checkedFile(path, FORMS[form], findings, wanted ? ["package"] : [])];
  for (const [name, file] of others?.length === 0 ? [] : bag.files) {
    const described = /\.csv$/i.test(name) ? bag.files.get(metadataOf(name)) : undefined;
    if (!/\.(?:nc|nc4|cdf)$/i.test(name) && described === undefined) continue;
    const own: FileContext = { ...forFiles, path: `${path}/${file.path}` };
    const metadata = described === undefined ? null : await contentOf(described);
    const judge = (source: Source, more: Partial<FileContext> = {}) =>
      checkFile(source, { ...own, ...(metadata?.ok ? { metadata: metadata.value } : {}), ...more });
    const full = bag.files.get(fullNameOf(name) ?? "");
    const verdict = await file.use(async (source) => {
      const compared = await full?.use((beside) =>
        judge(source, { full: { path: full.path, source: beside } }),
      );
      return compared?.ok ? compared.value : judge(source);
    });
    checked.push(
      verdict.ok
        ? verdict.value
        : checkedFile(
            own.path,
            null,
            verdict.problems.map((problem) => findingOf(problem, own.path)),
          ),
    );
  }
  return checked;
}

async function bagFindings(bag: Bag): Promise<Finding[]> {
  const { container, base } = bag;
  const { findings, unread } = await runBagRules(packageRules, bag);
  return [
    ...[...bag.unread, ...unread].map((problem) => findingOf(problem, container.path)),
    ...findings.map((finding) => {
      const { file } = finding.where;
      const path = file === undefined ? container.path : `${container.path}/${base}${file}`;
      return { ...finding, where: { ...finding.where, file: path } };
    }),
  ];
}
