import { checkOf, type FoundConductor, InputError, type Installation } from "bondmil";
import { expect, it } from "vitest";
import { built } from "../laws/installations/built.js";
import { lawfulChanges, worsenings } from "../laws/installations/changes/installed.js";
import { toBeChanged } from "../laws/installations/laws/installed.js";
import { keptInstallation, keptNames } from "./installations.js";

// What is found where everything is as scheduled but for one change. A change is written down only where something is found that was not found
// before; how the changes read, the laws of installations say.

function told(installation: Installation, found: readonly FoundConductor[]): readonly string[] {
  try {
    return checkOf({ ...installation, installed: { found } }).findings.map(
      ({ id, kind, todo, citation, remedies, shortBy, more }) =>
        JSON.stringify([id, kind, todo, citation, shortBy, more, remedies]),
    );
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return error.issues.map(({ path, message }) => `refused: ${path} ${message}`);
  }
}

/** A finding without what only this installation has: names, sizes, metals. */
function sortOf(line: string): string {
  const metal = /"(copper|aluminum|copper-clad aluminum)"/g;
  return line
    .replace(/\b[A-Z]\d\w*\b/g, "#")
    .replace(/"\d[^"]*"|\d+/g, "#")
    .replace(metal, "#");
}

it("one change of what is installed is found as before", () => {
  const seen = new Set<string>();
  const lines = keptNames.flatMap((name) => {
    const one = built(keptInstallation(name));
    const listed = toBeChanged(one);
    // A fifth of the changes, so that it does not take a minute.
    const changes = [...worsenings(one, listed), ...lawfulChanges(one, listed)].filter((_, i) => i % 5 === 0);
    return changes.flatMap(({ what, installed }) => {
      const found = installed();
      if (found === undefined) return [];
      const all = told(one.installation, found);
      const fresh = all.filter((line) => !seen.has(sortOf(line)) && seen.add(sortOf(line)));
      return fresh.length === 0 ? [] : [`${name} ${what}`, ...fresh.map((line) => `  ${line}`)];
    });
  });
  return expect(`${lines.join("\n")}\n`).toMatchFileSnapshot(
    new URL("./findings.txt", import.meta.url).pathname,
  );
});
