import type { Problem } from "@wherry/core";

const WORDS: Record<string, [string, string]> = {
  ENOENT: ["does not exist", "Check the spelling of the path."],
  EACCES: ["may not be read or written by you", "Check the permissions of the file and its folder."],
  EPERM: ["may not be changed by you", "Check the permissions of the file and its folder."],
  EROFS: ["is on a disk that can only be read", "Choose an output folder on another disk."],
  ENOSPC: ["does not fit: the disk is full", "Make room, then run the same command again."],
  EDQUOT: ["does not fit: your share of the disk is used up", "Make room, then run the same command again."],
  EISDIR: ["is a folder, a file was expected", "Name a file."],
  ENOTDIR: ["lies below something that is not a folder", "Check the spelling of the path."],
  EMFILE: ["cannot be opened: too many files are open", "Close other programs and try again."],
  ENAMETOOLONG: ["has a name that is too long for this disk", "Choose a shorter name."],
};

/** What went wrong with a file or folder, in words for a person; the code is "io/" and the system's own code. */
export function problemFromIo(error: unknown, path: string): Problem {
  const code = error instanceof Error && "code" in error ? String(error.code) : "unknown";
  const [what, remedy] = WORDS[code] ?? [
    `could not be used (${code})`,
    "Try again; if it stays, look at the disk.",
  ];
  return { code: `io/${code.toLowerCase()}`, message: `${path} ${what}`, where: { file: path }, remedy };
}

/** Whether an error comes from the file system rather than from a mistake of ours. */
export const isIoError = (error: unknown): boolean =>
  error instanceof Error && "code" in error && "syscall" in error;
