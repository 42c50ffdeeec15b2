import { expect, it } from "vitest";
import { bundledPackages } from "../../docs/pages/third-party.js";

it("finds what is imported for its values, from entry to entry, and no types", () => {
  const tree = new Map([
    [
      "src/index.ts",
      'import type { A } from "types"; import { type B } from "more-types"; export * from "./a.js"; import "node:fs"; import "bondmil";',
    ],
    ["src/a.ts", 'import { type C, d } from "@scope/package/part"; export type { E } from "exported-types";'],
    ["src/shape.ts", 'import * as v from "not-reached";'],
    ["src/command/main.ts", 'import f from "of-the-command"; export { g } from "again";'],
  ]);
  expect(bundledPackages(tree)).toEqual(["@scope/package", "again", "of-the-command"]);
});
