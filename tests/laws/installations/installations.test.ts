import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { anyInstallation } from "./drawn/installation.js";
import { breachesOf, smallestBreaking } from "./trials.js";

const seed = fc.noShrink(fc.integer({ min: 0, max: 0xffff_ffff }));

describe("whole installations", () => {
  it("keep the laws, each as it is and with one random change", () => {
    fc.assert(
      fc.property(anyInstallation, seed, (installation, dice) => {
        const [first] = breachesOf(installation, dice, 1);
        if (first === undefined) return;
        const example = JSON.stringify(smallestBreaking(installation, dice, first));
        expect.fail(`${first.law}: ${first.words}\nsmallest installation that breaks this law: ${example}`);
      }),
      { numRuns: 300, endOnFailure: true },
    );
  });
});
