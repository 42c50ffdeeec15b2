import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { builders } from "../../docs/pages/builders.js";

// `.ci/run` holds them fresh (npm run pages -- --check), so that a change of the drawing or of a report is noticed there.
describe.each(["report", "role-drawings", "home", "command", "violations"])("the pages of %s", (name) => {
  it("are what is written", () => {
    const written = builders[name]?.() ?? {};
    expect(Object.keys(written).length).toBeGreaterThan(0);
    for (const [path, text] of Object.entries(written))
      expect(readFileSync(new URL(`../../${path}`, import.meta.url), "utf8") === text, path).toBe(true);
  });
});
