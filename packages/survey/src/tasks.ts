import { type ExtraName, processCast, type RecipeSettings, understandFile } from "@wherry/converter";
import { type Cast, fail, type ManualFlag, type Result } from "@wherry/core";
import type { Answer, UnderstoodFile } from "@wherry/formats";
import { sha256Of, withBytes } from "./byte-source.ts";
import { isIoError, problemFromIo } from "./problem-from-io.ts";

// The work that can be done beside other work: what goes in and out is plain data.

export interface ToUnderstand {
  readonly path: string;
  /** What its casts call their source. */
  readonly name: string;
  readonly answers: readonly Answer[];
  readonly names: readonly ExtraName[];
}

export interface ToProcess {
  readonly cast: Cast;
  readonly settings: RecipeSettings;
  /** What persons judged of the cast. */
  readonly manual: readonly ManualFlag[];
}

export const tasks = {
  async understand({ path, name, answers, names }: ToUnderstand): Promise<Result<UnderstoodFile>> {
    try {
      return withBytes(path, (source) =>
        understandFile(source, name, { sha256: sha256Of(source), answers, names }),
      );
    } catch (error) {
      if (isIoError(error)) return fail(problemFromIo(error, path));
      throw error;
    }
  },
  async process({ cast, settings, manual }: ToProcess): Promise<Cast> {
    return processCast(cast, settings, manual);
  },
};

export type Task = {
  [K in keyof typeof tasks]: { task: K; input: Parameters<(typeof tasks)[K]>[0] };
}[keyof typeof tasks];
