import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { root } from "./shared.ts";

export interface Run {
  /** Exit status; null if a signal ended the program. */
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

export interface RunSetting {
  readonly cwd?: string;
  /** Runs as this user; only root can ask for it. */
  readonly uid?: number;
  readonly env?: Readonly<Record<string, string>>;
  /** Sends the signal once, as soon as the condition holds; asked every few milliseconds. */
  readonly interrupt?: { readonly signal: NodeJS.Signals; readonly when: () => boolean };
}

/** The bundled program, as a user has it. */
export const wherryProgram = join(root, "packages", "cli", "dist", "wherry.js");

/** Runs the real program and waits for its end. */
export function runWherry(args: readonly string[], setting: RunSetting = {}): Promise<Run> {
  const { cwd, uid, env, interrupt } = setting;
  const child = spawn(process.execPath, [wherryProgram, ...args], {
    stdio: ["ignore", "pipe", "pipe"],
    env: { ...process.env, NO_COLOR: "", ...env },
    ...(cwd === undefined ? {} : { cwd }),
    ...(uid === undefined ? {} : { uid, gid: uid }),
  });
  const text = { stdout: "", stderr: "" };
  child.stdout.setEncoding("utf8").on("data", (chunk: string) => {
    text.stdout += chunk;
  });
  child.stderr.setEncoding("utf8").on("data", (chunk: string) => {
    text.stderr += chunk;
  });
  const watch =
    interrupt === undefined
      ? undefined
      : setInterval(() => {
          if (!interrupt.when()) return;
          clearInterval(watch);
          child.kill(interrupt.signal);
        }, 2);
  return new Promise((resolve, reject) => {
    child.on("error", reject);
    child.on("close", (status) => {
      clearInterval(watch);
      resolve({ status, ...text });
    });
  });
}

/** Runs with a new empty folder and removes it afterwards. */
export async function inTemporaryFolder<T>(run: (folder: string) => T | Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), "wherry-test-"));
  try {
    return await run(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
