import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import type { Answer, UnderstoodFile } from "@wherry/formats";
import { understandFile } from "../src/understand/understand-file.ts";

/** Understands bytes or text under a name; throws if nothing can be read. */
export function understood(
  content: Uint8Array | string,
  name: string,
  answers: readonly Answer[] = [],
): UnderstoodFile {
  const result = attempt(content, name, answers);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
}

export function attempt(content: Uint8Array | string, name: string, answers: readonly Answer[] = []) {
  const bytes = typeof content === "string" ? new TextEncoder().encode(content) : content;
  const sha256 = createHash("sha256").update(bytes).digest("hex");
  return understandFile(bytes, name, { sha256, answers });
}

export const understoodPath = (path: string, answers: readonly Answer[] = []): UnderstoodFile =>
  understood(readFileSync(path), path.split("/").at(-1) ?? path, answers);

/** What a file's questions are about. */
export const asked = (file: UnderstoodFile): readonly string[] => file.questions.map(({ about }) => about);

/** An ordinary export, for tests that change one thing about it. */
export const plainExport = (
  changes: Partial<Record<"start" | "lat" | "lon" | "head" | "rows", string>> = {},
): string =>
  `${[
    changes.start ?? "start: 2023-06-02T08:30:00Z",
    changes.lat ?? "latitude: 51.20100",
    changes.lon ?? "longitude: -4.30200",
    changes.head ?? "elapsed [s],pressure [dbar],temperature [degC],conductivity [mS/cm]",
    changes.rows ??
      "0,0.10,16.755,20.39\n1,0.51,16.615,20.84\n2,1.02,16.444,21.49\n3,1.51,16.168,22.41\n4,2.02,15.776,23.67",
  ].join("\n")}\n`;
