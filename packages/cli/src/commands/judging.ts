// The commands that judge files, loaded together: every part that is loaded by itself takes time of its own.
export { checkCommand } from "./check.ts";
export { explainCommand } from "./explain.ts";
export { mendCommand } from "./mend.ts";
export { vocabularyCommand } from "./vocabulary.ts";
