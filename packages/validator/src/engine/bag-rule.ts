import type { Place, Problem } from "@wherry/core";
import { type Bag, type BagDigests, bagDigests, type Container } from "@wherry/formats";
import { NEWEST } from "./edition.ts";
import type { Finding } from "./finding.ts";
import type { Report, RuleText } from "./rule.ts";
import { gather } from "./run-rules.ts";

/** A deposit package with the checksums of its files. */
export interface BagView {
  readonly bag: Bag;
  readonly digests: BagDigests;
}

/** A package as its files, text by path from its base directory. */
export interface BagExample {
  readonly files: Readonly<Record<string, string>>;
  /** "folder" if not given; the others show what only archives have. */
  readonly form?: Container["form"];
}

/** One requirement on a deposit package, with the examples that are its tests. */
export interface BagRule<Key extends string = string> extends RuleText<Key> {
  readonly passing: readonly BagExample[];
  readonly failing: readonly (BagExample & { readonly where: Place; readonly message: Key })[];
  check(view: BagView, report: Report<Key>): void;
}

/** Keeps the message keys of a rule, its reports and its examples in agreement. */
export const defineBagRule = <const Key extends string>(rule: BagRule<Key>): BagRule =>
  rule as unknown as BagRule;

/** The BagIt format. */
export const rfc8493 = (clause: string) => ({ document: "RFC 8493", edition: "1.0", clause });

export interface BagVerdict {
  readonly findings: readonly Finding[];
  /** Files that could not be read to their end. */
  readonly unread: readonly Problem[];
}

/** Computes the checksums of the bag, reading each file once, and runs the rules. */
export async function runBagRules(rules: readonly BagRule[], bag: Bag): Promise<BagVerdict> {
  const digests = await bagDigests(bag);
  const findings: Finding[] = [];
  for (const rule of rules)
    findings.push(...(await gather(rule, NEWEST, (report) => rule.check({ bag, digests }, report))));
  return { findings, unread: digests.unread };
}
