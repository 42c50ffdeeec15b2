import type * as corpus from "bondmil/corpus";
import { expect, it, vi } from "vitest";
import { runHere } from "./run-here.js";

/** Every answer of the library is taken for another one. */
vi.mock("bondmil/corpus", async (original) => {
  const whole = await original<typeof corpus>();
  const implementationOf: typeof whole.implementationOf = () => () => ({ size: "18 AWG" });
  return { ...whole, implementationOf };
});

it("bondmil corpus ends with 1 where a check is missed, and shows it in full", async () => {
  const { code, output } = await runHere(["corpus", "--role", "intersystem-bonding-conductor"]);
  expect(code).toBe(1);
  expect(output).toMatch(/missed: inspector-termination, 2008/);
  expect(output).toContain("18 AWG");
});
