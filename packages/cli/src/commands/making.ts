// The commands that make products, loaded together: every part that is loaded by itself takes time of its own.
export { convertCommand } from "./convert.ts";
export { judgeCommand } from "./judge.ts";
export { lookCommand } from "./look.ts";
export { packCommand } from "./pack.ts";
export { sheetCommand } from "./sheet.ts";
