import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { commandPage } from "../../docs/pages/command.js";
import { subcommands } from "../../src/command/subcommands.js";
import { root } from "./run-here.js";

it("the page on the command says what its help says", () => {
  const page = readFileSync(join(root, "docs/command.md"), "utf8");
  expect(page).toBe(commandPage());
  for (const { name, options, examples } of subcommands) {
    expect(page).toContain(`## bondmil ${name}\n`);
    for (const option of options) expect(page).toContain(`  --${option.name}`);
    for (const [line] of examples) expect(page).toContain(`  ${line}\n`);
  }
});
