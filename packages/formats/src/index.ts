export * from "./understood.ts";
