import {
  checkDocument,
  checkOf,
  compareInstallation,
  comparisonDocument,
  type Document,
  drawingOf,
  render,
  reportDocument,
} from "bondmil";
import { describe, expect, it } from "vitest";
import type { Sheet } from "../../src/drawing/drawing.js";
import { fileOf, keptInstallation, keptNames } from "./installations.js";
import { unversioned } from "./unversioned.js";

// The first twenty are of those drawn at random, chosen so that few of them go through much of the code; the others hold what the dice do not draw. What they gave is kept beside them, so that a change shows all that it moves; whether it is right, other tests say. After a change on purpose:
// npx vitest run --config tests/vitest.slow.config.ts tests/kept -u, and then read the difference that git shows.

const kept = (name: string, file: string) => fileOf(name, file).pathname;

/** A shape a line, so that a difference shows which one moved. */
function shapesOf(sheet: Sheet): readonly string[] {
  return Object.entries(sheet).flatMap(([what, value]) =>
    Array.isArray(value)
      ? value.map((one) => `${what}: ${JSON.stringify(one)}`)
      : [`${what}: ${JSON.stringify(value)}`],
  );
}

const textOf = (document: Document) => unversioned(render(document, { as: "text", width: 100 }));

describe.each(keptNames)("installation %s", (name) => {
  const installation = keptInstallation(name);

  it("is drawn as before", async () => {
    const drawing = drawingOf(installation).sheets.flatMap(shapesOf).join("\n");
    await expect(`${drawing}\n`).toMatchFileSnapshot(kept(name, "drawing.txt"));
  });

  it("is reported as before", async () => {
    const report = textOf(
      reportDocument(installation, { place: "Yard 4", preparedBy: "J. Doe", date: "31 January 2026" }),
    );
    await expect(report).toMatchFileSnapshot(kept(name, "report.txt"));
  });

  it("is checked as before", async () => {
    await expect(textOf(checkDocument(checkOf(installation)))).toMatchFileSnapshot(kept(name, "check.txt"));
  });

  it.each(["editions", "readings", "arrangements"] as const)(
    "is compared over %s as before",
    async (over) => {
      const compared = textOf(comparisonDocument(compareInstallation({ over, installation })));
      await expect(compared).toMatchFileSnapshot(kept(name, `${over}.txt`));
    },
  );
});
