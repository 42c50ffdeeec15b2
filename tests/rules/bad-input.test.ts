import {
  type Input,
  InputError,
  type Issue,
  mainBondingJumper,
  size,
  supplySideBondingJumper,
  systemBondingJumper,
} from "bondmil";
import { describe, expect, it } from "vitest";
import type { JumperRole } from "../roles/jumper/facts.js";

const jumpers: readonly JumperRole[] = [mainBondingJumper, systemBondingJumper, supplySideBondingJumper];

const conductor = { size: "500 kcmil", material: "copper" };
const good = {
  code: { year: "2023" },
  supply: { sets: [{ count: 1, ...conductor }] },
  conductor: { material: "copper" },
};

const withSet = (set: unknown) => ({ ...good, supply: { sets: [set] } });
const withSets = (sets: unknown) => ({ ...good, supply: { sets } });
const withCount = (count: unknown) => withSet({ count, ...conductor });
const withSize = (size: unknown) => withSet({ count: 1, size, material: "copper" });
const withPhases = (phases: unknown) => withSet({ count: 1, phases });
const without = (key: keyof typeof good) =>
  Object.fromEntries(Object.entries(good).filter(([k]) => k !== key));

const circular: Record<string, unknown> = {};
circular["self"] = circular;

/** What the input is, the input, and the issues that it must raise as "path: code". */
const faults: readonly (readonly [string, unknown, readonly string[]])[] = [
  ["nothing", undefined, [": missing"]],
  ["null", null, [": wrong-type"]],
  ["a list", [], [": wrong-type"]],
  ["a list of a good input", [good], [": wrong-type"]],
  ["a text", JSON.stringify(good), [": wrong-type"]],
  ["a number", 4, [": wrong-type"]],
  ["an empty object", {}, ["code: missing", "supply: missing", "conductor: missing"]],
  ["a key too many", { ...good, edition: "2023" }, ["edition: unknown-key"]],

  ["no code", without("code"), ["code: missing"]],
  ["a code that is a year", { ...good, code: "2023" }, ["code: wrong-type"]],
  ["a code that is null", { ...good, code: null }, ["code: wrong-type"]],
  ["a code in a list", { ...good, code: [{ year: "2023" }] }, ["code: wrong-type"]],
  ["a code without a year", { ...good, code: {} }, ["code.year: missing"]],
  ["an edition that does not exist", { ...good, code: { year: "1999" } }, ["code.year: unknown-value"]],
  ["an edition to come", { ...good, code: { year: "2029" } }, ["code.year: unknown-value"]],
  ["a year as a number", { ...good, code: { year: 2023 } }, ["code.year: unknown-value"]],
  [
    "a key too many in the code",
    { ...good, code: { year: "2023", state: "WA" } },
    ["code.state: unknown-key"],
  ],
  [
    "an unknown reading",
    { ...good, code: { year: "2023", readings: { "no-such-reading": "yes" } } },
    ["code.readings.no-such-reading: unknown-key"],
  ],
  [
    "a reading named like a member of every object",
    { ...good, code: { year: "2023", readings: { constructor: "yes" } } },
    ["code.readings.constructor: unknown-key"],
  ],
  [
    "an unknown alternative",
    { ...good, code: { year: "2023", readings: { "cap-on-small-supplies": "sometimes" } } },
    ["code.readings.cap-on-small-supplies: unknown-value"],
  ],
  [
    "an alternative of another reading",
    { ...good, code: { year: "2023", readings: { "cap-on-small-supplies": "parallel-only" } } },
    ["code.readings.cap-on-small-supplies: unknown-value"],
  ],
  [
    "an alternative named like a member of every object",
    { ...good, code: { year: "2023", readings: { "cap-on-small-supplies": "toString" } } },
    ["code.readings.cap-on-small-supplies: unknown-value"],
  ],
  ["readings as a list", { ...good, code: { year: "2023", readings: [] } }, ["code.readings: wrong-type"]],
  [
    "readings that are null",
    { ...good, code: { year: "2023", readings: null } },
    ["code.readings: wrong-type"],
  ],

  ["no supply", without("supply"), ["supply: missing"]],
  ["a supply that is its sets", { ...good, supply: good.supply.sets }, ["supply: wrong-type"]],
  ["a supply without sets", { ...good, supply: {} }, ["supply.sets: missing"]],
  ["no sets at all", withSets([]), ["supply.sets: empty-list"]],
  ["sets as one object", withSets(good.supply.sets[0]), ["supply.sets: wrong-type"]],
  ["sets that are null", withSets(null), ["supply.sets: wrong-type"]],
  ["a set that is null", withSet(null), ["supply.sets[0]: wrong-type"]],
  ["a set that is nothing", withSet(undefined), ["supply.sets[0]: missing"]],
  ["a hole in the list of sets", withSets(new Array(1)), ["supply.sets[0]: missing"]],
  ["a set in a list", withSet([conductor]), ["supply.sets[0]: wrong-type"]],
  ["a set as a text", withSet("500 kcmil"), ["supply.sets[0]: wrong-type"]],
  [
    "an empty set",
    withSet({}),
    ["supply.sets[0].count: missing", "supply.sets[0].size: missing", "supply.sets[0].material: missing"],
  ],
  [
    "a key too many in a set",
    withSet({ count: 1, ...conductor, length: 3 }),
    ["supply.sets[0].length: unknown-key"],
  ],
  [
    "a key too many in the supply",
    { ...good, supply: { ...good.supply, raceways: 2 } },
    ["supply.raceways: unknown-key"],
  ],
  [
    "a load of nothing",
    { ...good, supply: { ...good.supply, requiredForAmperes: 0 } },
    ["supply.requiredForAmperes: not-positive"],
  ],
  [
    "a load as a text",
    { ...good, supply: { ...good.supply, requiredForAmperes: "400" } },
    ["supply.requiredForAmperes: wrong-type"],
  ],
  [
    "a load without end",
    { ...good, supply: { ...good.supply, requiredForAmperes: Number.POSITIVE_INFINITY } },
    ["supply.requiredForAmperes: out-of-range"],
  ],

  ["no count", withCount(undefined), ["supply.sets[0].count: missing"]],
  ["zero sets", withCount(0), ["supply.sets[0].count: not-positive"]],
  ["less than zero sets", withCount(-2), ["supply.sets[0].count: not-positive"]],
  ["half a set", withCount(0.5), ["supply.sets[0].count: not-a-whole-number"]],
  ["two and a half sets", withCount(2.5), ["supply.sets[0].count: not-a-whole-number"]],
  ["a count that is no number", withCount(Number.NaN), ["supply.sets[0].count: not-a-whole-number"]],
  ["sets without end", withCount(Number.POSITIVE_INFINITY), ["supply.sets[0].count: not-a-whole-number"]],
  ["more sets than there can be", withCount(1001), ["supply.sets[0].count: out-of-range"]],
  ["a count as a text", withCount("3"), ["supply.sets[0].count: wrong-type"]],
  ["a count that is null", withCount(null), ["supply.sets[0].count: wrong-type"]],
  ["a count as a large integer", withCount(3n), ["supply.sets[0].count: wrong-type"]],
  ["a count as a list", withCount([3]), ["supply.sets[0].count: wrong-type"]],
  ["a count as a flag", withCount(true), ["supply.sets[0].count: wrong-type"]],

  ["no size", withSize(undefined), ["supply.sets[0].size: missing"]],
  ["a size that does not exist", withSize("550 kcmil"), ["supply.sets[0].size: unknown-size"]],
  ["a size that could be two", withSize("4"), ["supply.sets[0].size: unknown-size"]],
  ["a size as people write it", withSize("4/0"), ["supply.sets[0].size: unknown-size"]],
  ["a size in other letters", withSize("500 KCMIL"), ["supply.sets[0].size: unknown-size"]],
  ["a size in square millimeters", withSize("240 mm2"), ["supply.sets[0].size: unknown-size"]],
  ["an empty size", withSize(""), ["supply.sets[0].size: unknown-size"]],
  ["a size as a number", withSize(500), ["supply.sets[0].size: wrong-type"]],
  ["a size that is null", withSize(null), ["supply.sets[0].size: wrong-type"]],
  ["a size that contains itself", withSize(circular), ["supply.sets[0].size: wrong-type"]],
  ["a size around a large integer", withSize({ kcmil: 500n }), ["supply.sets[0].size: wrong-type"]],

  ["no material", withSet({ count: 1, size: "500 kcmil" }), ["supply.sets[0].material: missing"]],
  [
    "an unknown material",
    withSet({ count: 1, size: "500 kcmil", material: "steel" }),
    ["supply.sets[0].material: unknown-value"],
  ],
  [
    "a material in other letters",
    withSet({ count: 1, size: "500 kcmil", material: "Copper" }),
    ["supply.sets[0].material: unknown-value"],
  ],
  [
    "a material that is null",
    withSet({ count: 1, size: "500 kcmil", material: null }),
    ["supply.sets[0].material: unknown-value"],
  ],

  ["no phases", withPhases([]), ["supply.sets[0].phases: empty-list"]],
  ["phases left out altogether", withPhases([null, null, null]), ["supply.sets[0].phases: empty-list"]],
  ["phases that are null", withPhases(null), ["supply.sets[0].phases: wrong-type"]],
  ["phases as an object", withPhases({ a: conductor }), ["supply.sets[0].phases: wrong-type"]],
  ["a phase that is nothing", withPhases([conductor, undefined]), ["supply.sets[0].phases[1]: missing"]],
  ["a phase as a text", withPhases([conductor, "500 kcmil"]), ["supply.sets[0].phases[1]: wrong-type"]],
  [
    "a phase with a count of its own",
    withPhases([conductor, { count: 2, ...conductor }]),
    ["supply.sets[0].phases[1].count: unknown-key"],
  ],
  [
    "an unknown size in a phase",
    withPhases([conductor, { ...conductor, size: "1" }, conductor]),
    ["supply.sets[0].phases[1].size: unknown-size"],
  ],
  [
    "an unknown material in a phase",
    withPhases([null, { ...conductor, material: "gold" }]),
    ["supply.sets[0].phases[1].material: unknown-value"],
  ],
  [
    "phases and a size",
    withSet({ count: 1, phases: [conductor], ...conductor }),
    ["supply.sets[0].size: unknown-key", "supply.sets[0].material: unknown-key"],
  ],
  [
    "sets of unlike phases",
    withSets([
      { count: 1, phases: [conductor, conductor] },
      { count: 1, phases: [conductor, conductor, conductor] },
    ]),
    ["supply.sets: unlike-phases"],
  ],

  ["no conductor", without("conductor"), ["conductor: missing"]],
  ["a conductor that is its material", { ...good, conductor: "copper" }, ["conductor: wrong-type"]],
  ["a conductor in a list", { ...good, conductor: [{ material: "copper" }] }, ["conductor: wrong-type"]],
  ["a conductor without a material", { ...good, conductor: {} }, ["conductor.material: missing"]],
  [
    "a conductor of an unknown material",
    { ...good, conductor: { material: "steel" } },
    ["conductor.material: unknown-value"],
  ],
  [
    "an unknown form",
    { ...good, conductor: { material: "copper", form: "strap" } },
    ["conductor.form: unknown-value"],
  ],
  [
    "a key too many in the conductor",
    { ...good, conductor: { material: "copper", size: "2 AWG" } },
    ["conductor.size: unknown-key"],
  ],

  ["a column that the table does not have", { ...good, temperature: 80 }, ["temperature: unknown-value"]],
  ["a column as a text", { ...good, temperature: "75" }, ["temperature: unknown-value"]],
  ["a column that is null", { ...good, temperature: null }, ["temperature: unknown-value"]],

  [
    "five faults at once",
    {
      code: { year: "2021", readings: { "cap-on-small-supplies": "never" } },
      supply: { sets: [{ count: 2.5, size: "4", material: "copper" }] },
      conductor: { material: "steel" },
    },
    [
      "code.year: unknown-value",
      "code.readings.cap-on-small-supplies: unknown-value",
      "supply.sets[0].count: not-a-whole-number",
      "supply.sets[0].size: unknown-size",
      "conductor.material: unknown-value",
    ],
  ],
  [
    "faults in several sets",
    withSets([
      { count: 0, ...conductor },
      { count: 1, ...conductor },
      { count: 1, size: "2/0", material: "iron" },
      { count: 1, phases: [null, { size: "500", material: "copper" }] },
    ]),
    [
      "supply.sets[0].count: not-positive",
      "supply.sets[2].size: unknown-size",
      "supply.sets[2].material: unknown-value",
      "supply.sets[3].phases[1].size: unknown-size",
    ],
  ],
];

function issuesOf(action: () => unknown): readonly Issue[] {
  try {
    action();
  } catch (error) {
    if (error instanceof InputError) return error.issues;
    throw error;
  }
  throw new Error("nothing was refused");
}

const briefly = (issues: readonly Issue[]) => issues.map(({ path, code }) => `${path}: ${code}`);

describe.each(jumpers)("$id", (role) => {
  it("takes the input from which the bad ones are made", () => {
    expect(size(role, good as Input<typeof mainBondingJumper>).outcome.kind).toBe("conductor");
  });

  it.each(faults)("refuses %s", (_what, input, expected) => {
    expect(briefly(issuesOf(() => size(role, input as Input<typeof mainBondingJumper>)))).toEqual(expected);
  });
});

describe("an issue", () => {
  const issueOf = (input: unknown) =>
    issuesOf(() => size(mainBondingJumper, input as Input<typeof mainBondingJumper>))[0];

  it("says what was expected, what was found and what to do", () => {
    expect(issueOf(withSize("4"))).toEqual({
      code: "unknown-size",
      path: "supply.sets[0].size",
      keys: ["supply", "sets", 0, "size"],
      expected: '"4 AWG" or "4/0 AWG"',
      alternatives: ["4 AWG", "4/0 AWG"],
      received: '"4"',
      message: expect.stringMatching(/^expected "4 AWG" or "4\/0 AWG", received "4"; ./),
    });
  });

  it("names all sizes that begin alike", () => {
    expect(issueOf(withSize("1"))?.expected).toBe('"1 AWG" or "1/0 AWG"');
    expect(issueOf(withSize("2/0"))?.expected).toBe('"2 AWG" or "2/0 AWG"');
    expect(issueOf(withSize("500MCM"))?.expected).toBe('"500 kcmil"');
    expect(issueOf(withSize("550 kcmil"))?.expected).toBe('a size such as "4/0 AWG" or "500 kcmil"');
  });

  it("prints what was found in short", () => {
    expect(issueOf(withCount(undefined))?.received).toBe("nothing");
    expect(issueOf(withCount(Number.NaN))?.received).toBe("NaN");
    expect(issueOf(withCount(3n))?.received).toBe("3");
    expect(issueOf(withCount(() => 3))?.received).toBe("a function");
    expect(issueOf(withSize("x".repeat(200)))?.received).toHaveLength(60);
  });

  it("stands in the message of the error with its path", () => {
    const input = { ...withCount(0), temperature: 80 };
    let message = "";
    try {
      size(mainBondingJumper, input as Input<typeof mainBondingJumper>);
    } catch (error) {
      message = (error as Error).message;
      expect((error as Error).name).toBe("InputError");
    }
    const lines = message.split("\n");
    expect(lines).toHaveLength(2);
    expect(lines[0]).toMatch(/^supply\.sets\[0\]\.count: expected .*, received 0; ./);
    expect(lines[1]).toMatch(/^temperature: expected 60, 75 or 90, received 80; ./);
  });
});
