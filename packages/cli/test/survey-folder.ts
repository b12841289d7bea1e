import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";

// A small invented survey, written into a temporary folder by the tests of the program.

export const SHEET = `version: 1
created: 2025-06-02T08:00:00Z
survey:
  id: quay
  title: Casts at an invented quay
`;

export interface ExportFacts {
  readonly name?: string;
  /** The word for the clock's zone; null leaves it out, which makes the time ambiguous. */
  readonly zone?: string | null;
  readonly rows?: number;
}

/**
 * A cast from air through a soak down to 5 dbar and back, at 2 rows a second. Casts of different names differ in
 * temperature, so that none is taken for a copy of another.
 */
export function exportText({ name = "Q1", zone = "UTC", rows = 140 }: ExportFacts = {}): string {
  const warmth = 15 + [...name].reduce((sum, letter) => (31 * sum + letter.codePointAt(0)!) % 199, 0) / 100;
  const lines = [
    `Name of this record: ${name}`,
    `Start: 2025-05-13 09:00:00${zone === null ? "" : ` ${zone}`}`,
    "Latitude: 46.2900",
    "Longitude: -4.0800",
    "Remark: invented",
    "",
    "elapsed time (s),pressure (dbar),temperature (degC),conductivity (mS/cm)",
  ];
  for (let k = 0; k < rows; k++) {
    const wet = k >= 12 && k < 128;
    const p =
      k < 12 || k >= 128
        ? 0
        : k < 60
          ? 0.6
          : k < 90
            ? 0.6 + (k - 60) * 0.15
            : k < 100
              ? 5.1
              : 5.1 - (k - 100) * 0.16;
    const c = wet ? 30 + p : 0.002;
    lines.push(`${(k / 2).toFixed(1)},${p.toFixed(2)},${(warmth - 0.4 * p).toFixed(3)},${c.toFixed(3)}`);
  }
  return `${lines.join("\n")}\n`;
}

/** Writes files into a folder, making subfolders. */
export function lay(folder: string, files: Readonly<Record<string, string | Uint8Array>>): void {
  for (const [name, content] of Object.entries(files)) {
    mkdirSync(join(folder, name, ".."), { recursive: true });
    writeFileSync(join(folder, name), content);
  }
}
