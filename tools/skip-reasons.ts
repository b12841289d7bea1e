import type { Reporter, TestCase } from "vitest/node";

/** Prints each test that was skipped with the reason it gave: a skip that nobody sees is a test that nobody has. */
export default class SkipReasons implements Reporter {
  onTestCaseResult(test: TestCase): void {
    const result = test.result();
    if (result.state !== "skipped") return;
    const reason = result.note ?? "without a reason";
    console.log(` ↓ ${test.fullName}\n     ${reason}`);
  }
}
