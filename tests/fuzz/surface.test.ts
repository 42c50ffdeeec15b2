import {
  amend,
  areaOf,
  assumedConductors,
  columnOf,
  compare,
  compareInstallation,
  compareSizes,
  correspondingSum,
  drawingOf,
  equipmentGroundingConductor,
  explain,
  fingerprintOf,
  formatArea,
  fromSquareInches,
  InputError,
  type Issue,
  intersystemBondingConductor,
  largestDevice,
  largestSupply,
  mainBondingJumper,
  nextSizeUp,
  parseSize,
  prepare,
  readInstallation,
  rectangularBarsFor,
  reportDocument,
  requiredByLoad,
  requireEvidence,
  rowsDocument,
  scheduleDocument,
  scheduleOf,
  shortTimeWithstand,
  size,
  smallestConductorFor,
  standardSizeFor,
  sumOfLargest,
  sweep,
  tableAmpacity,
  toSquareMillimeters,
  transformerCurrent,
  weakestEvidence,
} from "bondmil";
import { corpusCases, judgeCase, runCorpus } from "bondmil/corpus";
import { bondingConductor, inForce, rowsIn } from "bondmil/tables";
import { describe, expect, it } from "vitest";
import { installation, service } from "../installation/installations.js";

/** What is refused in arguments of whatever type: code and path of every issue. */
function refusedBy<A extends readonly unknown[]>(call: (...args: never[]) => unknown, ...args: A): string[] {
  try {
    call(...(args as unknown as never[]));
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return error.issues.map(({ code, path }: Issue) => `${path}: ${code}`);
  }
  return [];
}

const code = { year: "2023" } as const;
const copper = { material: "copper" } as const;
const supply = { sets: [{ count: 1, size: "500 kcmil", material: "copper" }] } as const;
const result = size(mainBondingJumper, { code, supply, conductor: copper });

describe("helpers refuse what they cannot answer", () => {
  it.each([
    [
      "a column as text",
      smallestConductorFor,
      [{ edition: "2023", amperes: 340, material: "aluminum", temperature: "75" }],
      ["temperature: unknown-value"],
    ],
    [
      "a column of no table",
      tableAmpacity,
      [{ edition: "2023", size: "600 kcmil", material: "aluminum", temperature: 80 }],
      ["temperature: unknown-value"],
    ],
    [
      "an edition and a size",
      tableAmpacity,
      [{ edition: 2023, size: "600", material: "lead", temperature: 75 }],
      ["edition: unknown-value", "material: unknown-value", "size: unknown-size"],
    ],
    [
      "a current of no amperes",
      smallestConductorFor,
      [{ edition: "2023", amperes: Number.NaN, material: "copper", temperature: 75 }],
      ["amperes: out-of-range"],
    ],
    ["a material in capitals", columnOf, ["Copper"], [": unknown-value"]],
    [
      "a negative count",
      correspondingSum,
      [{ sets: [{ count: -1, size: "4 AWG", material: "copper" }] }],
      ["sets[0].count: not-positive"],
    ],
    [
      "a negative count",
      sumOfLargest,
      [{ sets: [{ count: -1, size: "4 AWG", material: "copper" }] }],
      ["sets[0].count: not-positive"],
    ],
    [
      "a supply that is none",
      assumedConductors,
      [{ edition: "2023", material: "copper", temperature: 75 }],
      ["supply: missing"],
    ],
    ["no size", areaOf, [undefined], [": missing"]],
    ["a size without its unit", nextSizeUp, ["4/0"], [": unknown-size"]],
    ["a size beside one", compareSizes, ["4 AWG", "x"], [": unknown-size"]],
    ["no number", standardSizeFor, [Number.NaN], [": out-of-range"]],
    ["a negative area", standardSizeFor, [-1], [": not-positive"]],
    ["an area as text", formatArea, ["250000"], ["area: wrong-type"]],
    ["an unknown unit", formatArea, [250_000, "m2"], ["unit: unknown-value"]],
    ["no number", toSquareMillimeters, [Number.NaN], [": out-of-range"]],
    ["an area beyond all bars", fromSquareInches, [1e308], [": out-of-range"]],
    ["an area beyond all bars", rectangularBarsFor, [1e308], [": out-of-range"]],
    [
      "extremes of a nameplate",
      transformerCurrent,
      [{ kva: 1e308, volts: 5e-324, phases: 3 }],
      ["kva: out-of-range", "volts: out-of-range"],
    ],
    [
      "a load beyond all numbers",
      requiredByLoad,
      [{ edition: "2023", of: "feeder", continuous: 2, other: 1.7e308 }],
      ["other: out-of-range"],
    ],
    ["a level that is none", weakestEvidence, [["single", "sure"]], [": unknown-value"]],
    ["no list of levels", weakestEvidence, ["single"], [": wrong-type"]],
    ["rows that are none", rowsDocument, [[{ a: 1 }, 7]], ["[1]: wrong-type"]],
    ["cells that are none", rowsDocument, [[{ a: { b: 1 } }]], ["[0].a: wrong-type"]],
    ["an amendment of nothing", amend, [undefined], [": missing"]],
    [
      "a fault of next to nothing",
      shortTimeWithstand,
      [
        {
          conductor: { size: "4 AWG", material: "copper" },
          temperatures: { initial: 75, final: 150 },
          fault: { letThrough: 5e-324 },
        },
      ],
      ["fault.letThrough: out-of-range"],
    ],
    [
      "inherited keys",
      readInstallation,
      [{ ...installation({}), code: Object.create({ year: "2023", size: "4 AWG" }) as unknown }],
      ["code.year: missing"],
    ],
    ["a long text", parseSize, [" ".repeat(60_000)], [": out-of-range"]],
  ] as const)("%s (%#)", (_, call, args, faults) => {
    expect(refusedBy(call, ...args)).toEqual(faults);
  });

  it("answers as before what is right", () => {
    expect(
      smallestConductorFor({ edition: "2023", amperes: 340, material: "aluminum", temperature: 75 }),
    ).toBe("600 kcmil");
    expect(formatArea(-13_400)).toBe("-13,400 cmil");
    expect(rectangularBarsFor(1e12)).toHaveLength(5);
  });

  it("refuses areas that are no areas in a prepared loop", () => {
    const one = prepare(mainBondingJumper, { code, supplyMaterial: "copper", conductor: copper });
    if (one.kind !== "by-area") throw new Error("one material");
    expect(one.requiredArea(1_800_000)).toBe(225_000);
    for (const area of [Number.NaN, 0, -1, 0.5, 2 ** 53, "1"]) {
      expect(refusedBy(one.requiredArea, area)).toEqual(["supplyArea: out-of-range"]);
    }
    const two = prepare(mainBondingJumper, { code, supplyMaterial: "aluminum", conductor: copper });
    if (two.kind !== "by-assumed-area") throw new Error("two materials");
    expect(refusedBy(two.requiredArea, 1_800_000, Number.NaN, 3)).toEqual(["assumedArea: out-of-range"]);
    expect(refusedBy(two.needsAssumedArea, 1_800_000, 0)).toEqual(["sets: out-of-range"]);
  });
});

describe("functions that take a result", () => {
  it("refuse something else, and a result that was cut or changed", () => {
    expect(refusedBy(requireEvidence, undefined, "single")).toEqual([": missing"]);
    expect(refusedBy(requireEvidence, supply, "single")).toContain("steps: missing");
    expect(refusedBy(explain, { ...result, steps: [null] })).toEqual([": wrong-type"]);
    expect(refusedBy(explain, { ...result, requiredArea: Number.NaN })).toEqual(["requiredArea: wrong-type"]);
    expect(refusedBy(explain, { ...result, steps: new Array(2 ** 32 - 1) })).toEqual(["steps: wrong-type"]);
    expect(refusedBy(scheduleDocument, result)).toContain("conductors: missing");
    expect(explain(JSON.parse(JSON.stringify(result)))).toBe(explain(result));
  });

  it("name the error behind a broken result", () => {
    try {
      explain({ ...result, steps: [null as never] });
      expect.unreachable();
    } catch (error) {
      expect((error as InputError).cause).toBeInstanceOf(TypeError);
    }
  });
});

describe("functions that take a role", () => {
  const wire = { size: "4/0 AWG", material: "copper" } as const;

  it("refuse what is no role", () => {
    for (const [role, code] of [
      [undefined, "missing"],
      [null, "wrong-type"],
      ["main-bonding-jumper", "wrong-type"],
      [{ ...mainBondingJumper, decide: undefined }, "wrong-type"],
    ] as const)
      for (const ask of [size, prepare, largestSupply, largestDevice, compare, sweep])
        expect(refusedBy(ask, role, {})).toEqual([`role: ${code}`]);
  });

  it("refuse a role that goes by something else", () => {
    const device = equipmentGroundingConductor;
    expect(refusedBy(largestSupply, device, { code, conductor: wire, supplyMaterial: "copper" })).toEqual([
      "role: wrong-type",
    ]);
    expect(refusedBy(largestDevice, mainBondingJumper, { code, conductor: wire })).toEqual([
      "role: wrong-type",
    ]);
    const named = intersystemBondingConductor;
    expect(refusedBy(prepare, named, { code, conductor: copper })).toEqual(["role: wrong-type"]);
    expect(refusedBy(sweep, named, { material: "copper" })).toEqual(["role: wrong-type"]);
  });

  it("refuse a comparison of nothing", () => {
    expect(refusedBy(compare, mainBondingJumper, undefined)).toContain(": missing");
    expect(refusedBy(compare, mainBondingJumper, { over: "editions", input: 7 })).toEqual([
      "input: wrong-type",
    ]);
    expect(refusedBy(compare, mainBondingJumper, { over: "years", input: {} })).toEqual([
      "over: unknown-value",
    ]);
  });
});

describe("limits that no building meets", () => {
  const sets = (count: number, entries: number) => ({
    sets: Array.from({ length: entries }, () => ({ count, size: "2000 kcmil", material: "copper" })),
  });

  it("are those of the document for one supply too", () => {
    const asked = (one: object) =>
      refusedBy(size, mainBondingJumper, { code, supply: one, conductor: copper });
    const drawn = (one: object) => {
      const run = {
        id: "R1",
        from: "U1",
        to: "D1",
        supply: one as never,
        raceways: { count: 1, kind: "nonmetallic" as const },
      };
      return refusedBy(scheduleOf, installation({ services: [service({ runs: [run] })] }));
    };
    const at = "services[0].runs[0].supply";
    expect([asked(sets(100, 20)), drawn(sets(100, 20))]).toEqual([[], []]);
    expect([asked(sets(101, 1)), drawn(sets(101, 1))]).toEqual([
      ["supply.sets[0].count: out-of-range"],
      [`${at}.sets[0].count: out-of-range`],
    ]);
    expect([asked(sets(1, 2000)), drawn(sets(1, 2000))]).toEqual([[], []]);
    expect([asked(sets(1, 2001)), drawn(sets(1, 2001))]).toEqual([
      ["supply.sets: out-of-range"],
      [`${at}.sets: out-of-range`],
    ]);
    expect([asked(sets(100, 21)), drawn(sets(100, 21))]).toEqual([
      ["supply.sets: out-of-range"],
      [`${at}.sets: out-of-range`],
    ]);
    // What single runs may have, all runs of a system together may not have more of.
    const runs = (count: number, of: object) =>
      refusedBy(
        scheduleOf,
        installation({
          services: [
            service({
              runs: Array.from({ length: count }, (_, i) => ({
                id: `R${i}`,
                from: "U1",
                to: "D1",
                supply: of as never,
                raceways: { count: 1, kind: "nonmetallic" as const },
              })),
            }),
          ],
        }),
      );
    expect(runs(200, sets(10, 1))).toEqual([]);
    expect(runs(200, sets(11, 1))).toEqual(["services[0].runs: out-of-range"]);
    expect(asked({ sets: new Array(2 ** 32 - 1) })).toEqual(["supply.sets: out-of-range"]);
  });

  it("keep the largest increase within exact whole numbers", () => {
    const circuit = {
      device: { amperes: 6000 },
      conductors: sets(100, 20),
      increasedFrom: {
        conductors: { sets: [{ count: 1, size: "14 AWG", material: "copper" }] },
        reason: "voltage-drop",
      },
    };
    const input = { code, circuits: [circuit], conductor: copper };
    expect(refusedBy(size, equipmentGroundingConductor, input)).toEqual([]);
  });

  it("end a fingerprint of what holds itself, doubles with each level, or is no JSON", () => {
    const circle: Record<string, unknown> = {};
    circle["own"] = circle;
    expect(refusedBy(fingerprintOf, circle)).toEqual([": out-of-range"]);
    let doubling: unknown = "x".repeat(1_000_000);
    for (let level = 0; level < 60; level += 1) doubling = { one: doubling, other: doubling };
    expect(refusedBy(fingerprintOf, doubling)).toEqual([": out-of-range"]);
    expect(refusedBy(fingerprintOf, { a: [1, Number.NaN] })).toEqual(["a[1]: wrong-type"]);
    expect(refusedBy(fingerprintOf, { a: 10n })).toEqual(["a: wrong-type"]);
    expect(refusedBy(fingerprintOf, { a: new Date(0) })).toEqual(["a: wrong-type"]);
    expect(refusedBy(fingerprintOf, undefined)).toEqual([": wrong-type"]);
  });

  it("end a comparison of more arrangements than anybody reads", () => {
    const runs = Array.from({ length: 60 }, (_, i) => ({
      id: `R${i}`,
      from: "U1",
      to: `D${i}`,
      supply: { sets: [{ count: 2, size: "500 kcmil", material: "copper" }] } as never,
      raceways: { count: 2, kind: "nonflexible-metal" } as const,
    }));
    const disconnects = runs.map(
      ({ to }) => ({ id: to, designation: "service-disconnect", amperes: 400 }) as const,
    );
    const one = installation({ services: [service({ runs, disconnects, electrodes: [] })] });
    expect(refusedBy(compareInstallation, { over: "arrangements", installation: one })).toEqual([
      "installation: out-of-range",
    ]);
  });

  it("draw circuits one behind the other on many sheets, and end lists that only say to be long", () => {
    const circuits = Array.from({ length: 2000 }, (_, i) => ({
      id: `C${i}`,
      from: i === 0 ? "P" : `C${i - 1}`,
      to: `x${i}`,
      device: { amperes: 100 },
      wiring: "raceway" as const,
    }));
    const chain = installation({ existing: [{ id: "P" }], circuits });
    expect(scheduleOf(chain).conductors).toHaveLength(2000);
    expect(drawingOf(chain).sheets.length).toBeGreaterThan(100);
    expect(reportDocument(chain).parts.filter(({ kind }) => kind === "drawing").length).toBeGreaterThan(100);
    expect(refusedBy(scheduleOf, { ...chain, generators: new Array(2 ** 32 - 1) })).toEqual([
      ": out-of-range",
    ]);
  });

  it("list a hundred unknown keys of an object at most", () => {
    const many = Object.fromEntries(Array.from({ length: 5000 }, (_, i) => [`key ${i}`, 1]));
    expect(refusedBy(transformerCurrent, { ...many, kva: 75, volts: 208, phases: 3 })).toHaveLength(100);
  });
});

describe("the other entries of the package", () => {
  it("refuse with the one error of bondmil", () => {
    expect(refusedBy(runCorpus, 7)).toEqual(["implementation: wrong-type"]);
    expect(refusedBy(corpusCases, { role: "nothing" })).toEqual(["role: unknown-value"]);
    expect(refusedBy(rowsIn, bondingConductor, "2024")).toEqual(["edition: unknown-value"]);
    expect(refusedBy(rowsIn, {}, "2023")).toContain("columns: missing");
    expect(refusedBy(inForce, [], "2024")).toEqual(["edition: unknown-value"]);
    expect(refusedBy(inForce, {}, "2023")).toEqual(["entries: wrong-type"]);
    expect(refusedBy(inForce, [null], "2023")).not.toEqual([]);
    const [one] = corpusCases({ role: "main-bonding-jumper" });
    expect(refusedBy(judgeCase, one, "4 AWG")).toEqual(["given: wrong-type"]);
    expect(refusedBy(judgeCase, { ...one, check: {} }, { size: "4 AWG" })).toEqual([": wrong-type"]);
  });

  it("takes an answer in other words as none", () => {
    const rows = runCorpus(() => "4 AWG" as never, { role: "intersystem-bonding-conductor" });
    expect(rows.every(({ verdict }) => verdict === "missed")).toBe(true);
  });
});
