import type * as corpus from "bondmil/corpus";
import { afterAll, beforeAll, expect, it, vi } from "vitest";

/** Every answer of the library is taken for another one; the files of tests share their modules, so what was loaded before is forgotten, and this again after. */
beforeAll(() => {
  vi.resetModules();
  vi.doMock("bondmil/corpus", async (original) => {
    const whole = await original<typeof corpus>();
    const implementationOf: typeof whole.implementationOf = () => () => ({ size: "18 AWG" });
    return { ...whole, implementationOf };
  });
});

afterAll(() => {
  vi.doUnmock("bondmil/corpus");
  vi.resetModules();
});

it("bondmil corpus ends with 1 where a check is missed, and shows it in full", async () => {
  const { runHere } = await import("./run-here.js");
  const { code, output } = await runHere(["corpus", "--role", "intersystem-bonding-conductor"]);
  expect(code).toBe(1);
  expect(output).toMatch(/missed: inspector-termination, 2008/);
  expect(output).toContain("18 AWG");
});
