import {
  type Amendment,
  effects,
  InputError,
  type Installation,
  readInstallation,
  render,
  reportDocument,
  scheduleOf,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { anyInstallation, demo, demoNames, derived, installation, service, setsOf } from "./installations.js";

const citation = { jurisdiction: "Example County", section: "Sec. 12-3" };
const floor: Amendment = { kind: "floor", role: "grounding-electrode-conductor", copper: "3 AWG", citation };
const shortRuns: Amendment = {
  kind: "basis",
  role: "equipment-grounding-conductor",
  use: "no-increase",
  when: { lengthBelowFeet: 100 },
  citation,
};
const wireOnRoofs: Amendment = {
  kind: "always-wire",
  role: "equipment-grounding-conductor",
  when: { location: "roof" },
  citation,
};

function amended(
  amendments: readonly unknown[],
  parts: Partial<Installation>,
  circumstances?: object,
): Installation {
  const { code, ...rest } = installation(parts);
  const known = circumstances === undefined ? {} : { circumstances };
  return { ...rest, code: { ...code, amendments, ...known } } as Installation;
}

const long = (parts: object) => ({
  id: "F1",
  from: "D1",
  to: "P1",
  device: { amperes: 50 },
  wiring: "raceway" as const,
  conductors: setsOf(1, "4 AWG"),
  increasedFrom: { conductors: setsOf(1, "8 AWG"), reason: "voltage-drop" as const },
  ...parts,
});

const amendmentCodes = (cautions: readonly { readonly code: string }[]) =>
  cautions.map(({ code }) => code).filter((code) => /amend|always/.test(code));

function conductorsOf(data: Installation) {
  return scheduleOf(data).conductors;
}

describe("an installation with amendments", () => {
  it("sizes by them and cites them", () => {
    const electrode = conductorsOf(amended([floor], { services: [service()] })).find(
      ({ role }) => role === "grounding-electrode-conductor",
    );
    expect(electrode?.result).toMatchObject({ outcome: { size: "3 AWG" }, governs: "floor" });
    expect(electrode?.result.steps.map((step) => step.citation.section)).toContain(
      "Example County, Sec. 12-3",
    );
  });

  it("takes length and location from the circuit", () => {
    const circuits = [
      long({ id: "short", lengthFeet: 60 }),
      long({ id: "long", lengthFeet: 160 }),
      long({ id: "unknown" }),
      long({ id: "roof", lengthFeet: 60, location: "roof" }),
    ] as unknown as NonNullable<Installation["circuits"]>;
    const all = conductorsOf(amended([shortRuns, wireOnRoofs], { services: [service()], circuits })).filter(
      ({ role }) => role === "equipment-grounding-conductor",
    );
    expect(all.map(({ result }) => [result.requiredArea, amendmentCodes(result.cautions)])).toMatchObject([
      [10_380, ["amended", "amendment-condition-unknown"]],
      [26_243, ["amendment-condition-not-met", "amendment-condition-unknown"]],
      [26_243, ["amendment-condition-unknown", "amendment-condition-unknown"]],
      [10_380, ["amended", "always-wire"]],
    ]);
  });

  it("says once that a reading is chosen in vain, also where it only places a conductor", () => {
    const reading = "electrode-connection-with-several-jumpers";
    const enforced = { kind: "reading", reading, alternative: "at-one-jumper", citation };
    const data = amended([enforced], { services: [service()] });
    const chosen = (alternative: "at-each-jumper" | "at-one-jumper") =>
      scheduleOf({
        ...data,
        code: { ...data.code, readings: { [reading]: alternative } },
      }).cautions.filter(({ code }) => code === "enforced-reading-overrules-chosen");
    expect(chosen("at-each-jumper")).toEqual([
      {
        code: "enforced-reading-overrules-chosen",
        section: "Example County, Sec. 12-3",
        at: `code.readings.${reading}`,
      },
    ]);
    expect(chosen("at-one-jumper")).toEqual([]);
    const named = { ...data, code: { ...data.code, readings: { [reading]: "at-each-jumper" } } };
    expect(render(reportDocument(named as Installation), { as: "markdown" })).toContain(
      'read as "at each of them" (overruled by Example County, Sec. 12-3: "at one of them")',
    );
  });

  it("leaves neither jumpers at both ends nor a small transformer without a wire where one is always required", () => {
    const source = { id: "T1", kind: "transformer", outdoors: true } as const;
    const bothEnds = derived({ source, jumperAt: "both-ends" });
    const control = derived({
      source: { ...source, outdoors: false, controlTransformer: true },
      runs: [
        {
          id: "Y1",
          from: "T1",
          to: "P1",
          supply: setsOf(1, "14 AWG"),
          raceways: { count: 1, kind: "nonmetallic" },
        },
      ],
      disconnects: [{ id: "P1", amperes: 15 }],
    });
    const kindOf = (system: typeof bothEnds, role: string, amendments: readonly unknown[]) =>
      conductorsOf(amended(amendments, { derivedSystems: [system] })).find((one) => one.role === role)?.result
        .outcome.kind;
    for (const [system, role] of [
      [bothEnds, "supply-side-bonding-jumper"],
      [control, "grounding-electrode-conductor"],
    ] as const) {
      expect(kindOf(system, role, [])).toBe("not-required");
      expect(kindOf(system, role, [{ kind: "always-wire", role, citation }])).toBe("conductor");
    }
  });

  it("leaves fittings no say where a wire is always required", () => {
    const wires = { kind: "always-wire", role: "supply-side-bonding-jumper", citation };
    const raceways = { count: 1, kind: "nonflexible-metal" } as const;
    const runs = service().runs.map((run) => ({ ...run, raceways }));
    const mayServe = (amendments: readonly unknown[]) =>
      scheduleOf(amended(amendments, { services: [service({ runs })] })).conductors.some(
        ({ insteadPermitted }) => insteadPermitted?.by === "bonding-fittings",
      );
    expect([mayServe([]), mayServe([wires])]).toEqual([true, false]);
  });

  it.each([
    [[{ ...floor, copper: "3 AGW" }], "code.amendments[0].copper"],
    [
      [
        floor,
        {
          kind: "cell",
          table: "electrode-conductor",
          row: "2 AWG",
          column: "copper",
          size: "1 AWG",
          citation,
        },
      ],
      "code.amendments[1].size",
    ],
    [
      [{ kind: "cell", table: "equipment-grounding", row: 401, column: "copper", size: "1 AWG", citation }],
      "code.amendments[0].row",
    ],
  ])("refuses %j at %s", (amendments, path) => {
    let paths: readonly string[] = [];
    try {
      scheduleOf(amended(amendments, { services: [service()] }));
    } catch (error) {
      if (error instanceof InputError) paths = error.issues.map((issue) => issue.path);
    }
    expect(paths).toEqual([path]);
  });

  it("has the conductors that it has without them", () => {
    fc.assert(
      fc.property(anyInstallation, (one) => {
        const ids = (data: Installation) =>
          conductorsOf(data).map(({ id, alternative }) => [id, alternative]);
        const amendments = [floor, shortRuns, wireOnRoofs] as unknown as Installation["code"]["amendments"];
        expect(ids({ ...one, code: { ...one.code, amendments } } as Installation)).toEqual(ids(one));
      }),
    );
  });
});

describe("a proposal", () => {
  const installations = demoNames.map(demo);
  const effectsOf = (...amendments: readonly Amendment[]) =>
    effects({ code: { year: "2023", amendments }, installations: installations });

  it("changes nothing when it is empty or as printed", () => {
    const asPrinted = { ...floor, copper: "14 AWG" } as const;
    for (const { grid, installations } of [effectsOf(), effectsOf(asPrinted)]) {
      expect(
        grid.map(({ larger, smaller, cautioned, metal }) => [larger, smaller, cautioned, metal]),
      ).toEqual(grid.map(() => [0, 0, 0, 0]));
      expect(installations.map(({ changed }) => changed)).toEqual(installations.map(() => []));
    }
  });

  it("shows what a floor makes larger, with the metal, and no other role", () => {
    const { grid } = effectsOf(floor);
    const concerned = grid.filter(({ larger, smaller }) => larger + smaller > 0);
    expect(concerned).toMatchObject([{ role: "grounding-electrode-conductor", smaller: 0, cautioned: 0 }]);
    expect(concerned[0]?.example).toEqual({
      id: "1 x 12 AWG copper, copper",
      before: 16_510,
      after: 52_620,
      metal: 36_110,
      cautions: [],
    });
  });

  it("adds up the metal of an installation by quantity", () => {
    const { installations } = effectsOf(floor);
    for (const { changed } of installations) {
      for (const { before, after, metal } of changed) {
        expect(after).toBeGreaterThan(before);
        expect(metal).toBeGreaterThan(0);
      }
    }
    expect(installations.map(({ title, changed }) => [title, changed.length])).toMatchInlineSnapshot(`
      [
        [
          "Corner shop",
          3,
        ],
        [
          "Cold store",
          4,
        ],
        [
          "Print works",
          4,
        ],
      ]
    `);
  });

  it("shows where a material is forbidden though no size changes", () => {
    const { grid } = effectsOf({
      kind: "material",
      role: "grounding-electrode-conductor",
      material: "aluminum",
      citation,
    });
    expect(grid.filter(({ cautioned }) => cautioned > 0)).toMatchObject([
      {
        role: "grounding-electrode-conductor",
        configurations: 2160,
        cautioned: 1080,
        example: { cautions: ["material-forbidden"] },
      },
    ]);
  });

  it.each([
    [{ code: { year: "2022", amendments: [] } }, "year"],
    [{ code: { year: "2023" }, drawings: [] }, "drawings"],
    [{ code: { year: "2023", amendments: [{ kind: "ban", citation }] } }, "code.amendments[0].kind"],
  ])("refuses %j at %s", (input, path) => {
    expect(() => effects(input as never)).toThrow(path);
  });

  it("leaves an installation that can be read as it is", () => {
    const one = demo("shop");
    const before = structuredClone(one);
    effects({ code: { year: "2020", amendments: [floor] }, installations: [one] });
    expect(one).toEqual(before);
    expect(readInstallation(one)).toBeDefined();
  });
});
