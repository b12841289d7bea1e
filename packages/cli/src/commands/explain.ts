import { chooseRules, explainRule } from "@wherry/survey";
import { Command } from "commander";
import type { Context } from "../command.ts";
import { Exit } from "../exit.ts";

export function explainCommand({ terminal, finish }: Context): Command {
  return new Command("explain")
    .summary("explain a rule in plain words")
    .description("Explains a rule: what it asks, why, which clause says so, and an example of each kind.")
    .argument("<rule>", "id of the rule, as findings name it")
    .option("--rules <file...>", "files of rules beside those that ship")
    .addHelpText("after", "\nExample:\n  $ wherry explain cf/latitude-units")
    .action(async (id: string, { rules }: { rules?: readonly string[] }) => {
      const chosen = await chooseRules(rules);
      const result = chosen.ok ? explainRule(id, chosen.value.more) : chosen;
      if (!result.ok) {
        result.problems.forEach(terminal.problem);
        return finish(Exit.usage);
      }
      terminal.out(result.value);
      finish(Exit.clean);
    });
}
