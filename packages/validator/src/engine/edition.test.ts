import { expect, test } from "vitest";
import { chooseEdition, claimedEdition, conventionNames } from "./edition.ts";

test.each([
  ["CF-1.8", ["CF-1.8"]],
  ["CF-1.8 ACDD-1.3", ["CF-1.8", "ACDD-1.3"]],
  // any comma makes it a list with commas, in which names may hold blanks (CF 2.6.1)
  ["CF-1.6, Own Convention v1.0", ["CF-1.6", "Own Convention v1.0"]],
  ["", []],
])("%j names %j", (text, names) => expect(conventionNames(text)).toEqual(names));

test.each([
  ["ACDD-1.3, CF-1.11", "1.11"],
  ["Own-3.1 CF-1.6", "1.6"],
  ["CF-1.8 ACDD-1.3, Own", null],
  ["CF1.8", null],
  ["cf-1.8", null],
])("%j claims %s", (text, claimed) => expect(claimedEdition(text)).toBe(claimed));

test.each([
  ["CF-1.8", undefined, { edition: "1.8", claimed: "1.8", because: "claimed" }],
  ["CF-1.8", "1.13", { edition: "1.13", claimed: "1.8", because: "option" }],
  ["CF-1.14", undefined, { edition: "1.13", claimed: "1.14", because: "newest" }],
  [undefined, undefined, { edition: "1.13", claimed: null, because: "newest" }],
] as const)("%j with option %s", (text, option, choice) =>
  expect(chooseEdition(text, option)).toEqual(choice),
);
