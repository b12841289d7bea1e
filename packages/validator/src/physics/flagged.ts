import type { DatasetView } from "../engine/dataset-view.ts";
import type { VariableView } from "../engine/variable-view.ts";

/** Words of a meaning by which a value is not one to build on. */
const DOUBTED =
  /(?:^|[_\W])(?:bad|fail\w*|missing|suspect\w*|questionable|doubtful|wrong|erroneous|interpolated|excess|below\w*|spike\w*|reject\w*|invalid|no_?data|not_?(?:good|used|reported|sampled))(?:$|[_\W])/i;

/** Codes that stand for a sound or an unjudged value where nothing explains them, in every common scheme. */
const SOUND = new Set([0, 1, 2, 5]);

const digits = (texts: readonly string[]): Float64Array =>
  Float64Array.from(texts, (text) => (/^\d$/.test(text) ? text.charCodeAt(0) - 48 : Number.NaN));

/** Flag variables of a variable: those it names, or one called like it with _QC. */
export function flagVariablesOf(dataset: DatasetView, variable: VariableView): VariableView[] {
  const named = dataset.listed(variable, "ancillary_variables").filter(({ role }) => role === "flag");
  if (named.length > 0) return named;
  const pattern = `${variable.name}_qc`.toLowerCase();
  return dataset.all.filter(({ name }) => name.toLowerCase() === pattern);
}

/** Values of a flag variable as numbers; characters that are digits count as them. Null if they cannot be had. */
export async function flagNumbers(dataset: DatasetView, flag: VariableView): Promise<Float64Array | null> {
  if (flag.type !== "char") return dataset.data.numbers(flag.name);
  const bytes = await dataset.data.bytes(flag.name);
  return bytes === null ? null : digits(Array.from(bytes, (byte) => String.fromCharCode(byte)));
}

/** Whether a code says that the value is not to be built on. */
export function doubtedBy(flag: VariableView): (code: number) => boolean {
  const values = flag.numbers("flag_values");
  const meanings = flag.words("flag_meanings");
  if (flag.has("flag_masks")) return (code) => code !== 0;
  if (values === undefined || values.length !== meanings.length) return (code) => !SOUND.has(code);
  const doubted = new Set(values.filter((_, index) => DOUBTED.test(meanings[index] ?? "")));
  return (code) => doubted.has(code);
}

/** The values with NaN where a flag on the same dimensions doubts them; the same array where none does. */
export async function withoutDoubted(
  dataset: DatasetView,
  variable: VariableView,
  values: Float64Array,
): Promise<Float64Array> {
  let kept = values;
  for (const flag of flagVariablesOf(dataset, variable)) {
    if (flag.allDimensions.join() !== variable.allDimensions.join()) continue;
    const codes = await flagNumbers(dataset, flag);
    if (codes === null) continue;
    kept = dropWhere(kept, codes, doubtedBy(flag));
  }
  return kept;
}

function dropWhere(
  values: Float64Array,
  codes: Float64Array,
  doubted: (code: number) => boolean,
): Float64Array {
  const out = values.slice();
  for (let i = 0; i < out.length; i += 1) if (doubted(codes[i]!)) out[i] = Number.NaN;
  return out;
}
