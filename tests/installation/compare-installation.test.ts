import {
  areaOf,
  compareInstallation,
  editionYears,
  InputError,
  type Installation,
  type InstallationComparison,
  type Issue,
  scheduleOf,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { InstallationComparisonRequest } from "../../src/installation/questions/shape.generated.js";
import { anyInstallation, demo, demoNames, derived, installation, service, setsOf } from "./installations.js";

function issuesOf(request: unknown): readonly Issue[] {
  try {
    compareInstallation(request as InstallationComparisonRequest);
  } catch (error) {
    if (error instanceof InputError) return error.issues;
    throw error;
  }
  return [];
}

const column = (comparison: InstallationComparison, key: string) => {
  const place = comparison.variants.findIndex((one) => one.key === key);
  return {
    variant: comparison.variants[place],
    conductors: comparison.conductors.flatMap(({ entries }) => entries[place]?.conductor ?? []),
    effects: comparison.conductors.flatMap(({ id, entries }) => {
      const effect = entries[place]?.effect;
      return effect === undefined || effect === "same" || effect === "first" ? [] : [`${id}: ${effect}`];
    }),
  };
};

const twoDisconnects = service({
  runs: [
    {
      id: "R1",
      from: "U1",
      to: "D1",
      supply: setsOf(1, "500 kcmil"),
      raceways: { count: 1, kind: "nonmetallic" },
    },
    {
      id: "R2",
      from: "U1",
      to: "D2",
      supply: setsOf(1, "3/0 AWG"),
      raceways: { count: 1, kind: "nonmetallic" },
    },
  ],
  disconnects: [
    { id: "D1", designation: "service-disconnect", amperes: 400 },
    { id: "D2", designation: "service-disconnect", amperes: 200 },
  ],
});

describe("an installation over editions", () => {
  it.each(demoNames)("gives %s the schedule of each edition, oldest first", (name) => {
    const source = demo(name);
    const comparison = compareInstallation({ over: "editions", installation: source });
    expect(comparison.variants.map(({ key }) => key)).toEqual(editionYears);
    for (const year of editionYears) {
      const inEdition = { ...source, code: { ...source.code, year } };
      const { variant, conductors } = column(comparison, year);
      if (variant?.refused !== undefined) {
        expect(() => scheduleOf(inEdition)).toThrow(variant.refused[0]?.message);
        continue;
      }
      const alone = scheduleOf(inEdition);
      expect(variant).toMatchObject({ edition: year, fingerprint: alone.fingerprint });
      expect(conductors.map(({ id }) => id).sort()).toEqual(alone.conductors.map(({ id }) => id).sort());
      expect(conductors).toEqual(expect.arrayContaining([...alone.conductors]));
    }
    const refused = comparison.variants.flatMap((one) => (one.refused === undefined ? [] : one.key));
    expect(refused).toEqual(name === "cold-store" ? ["2008", "2011", "2014"] : []);
  });

  it("holds each against the one before that was not refused", () => {
    const busway = installation({
      services: [service()],
      circuits: [{ id: "C1", from: "D1", to: "P1", device: { amperes: 400 }, wiring: "tray-cable" }],
    });
    const years = ["2020", "2008"] as const;
    const { variants, against, conductors } = compareInstallation({
      over: "editions",
      installation: busway,
      editions: years,
    });
    expect([against, variants.map(({ key }) => key)]).toEqual(["before", years]);
    for (const { entries } of conductors) {
      expect(entries[0]).toMatchObject({ effect: "first", changes: [] });
      const [first, second] = entries.map(({ conductor }) => conductor?.result.requiredArea ?? 0);
      const effect = first === second ? "same" : Number(second) > Number(first) ? "larger" : "smaller";
      expect(entries[1]?.effect).toBe(effect);
    }
  });

  it("keeps the column of an edition that refuses the installation, and holds the next one against none", () => {
    const comparison = compareInstallation({
      over: "editions",
      installation: demo("cold-store"),
      editions: ["2014", "2017"],
    });
    expect(comparison.variants[0]).toMatchObject({
      key: "2014",
      refused: [{ path: "intersystem[0].termination" }],
    });
    expect(column(comparison, "2011").conductors).toEqual([]);
    for (const { entries } of comparison.conductors) expect(entries[1]?.effect).toBe("first");
    expect(comparison.conductors.filter(({ differs }) => differs)).toEqual([]);
  });

  it("says which reading is behind a change", () => {
    const small = installation({
      services: [
        service({
          runs: [
            {
              id: "R1",
              from: "U1",
              to: "D1",
              supply: setsOf(4, "600 kcmil", "aluminum"),
              raceways: { count: 1, kind: "nonmetallic" },
            },
          ],
        }),
      ],
    });
    const { conductors } = compareInstallation({ over: "editions", installation: small });
    const changes = conductors.flatMap(({ entries }) => entries.flatMap((one) => one.changes));
    const behind = changes.flatMap(({ because }) => because ?? []);
    expect(behind.length).toBeGreaterThan(0);
    for (const { edition, chosen, alternative } of behind) {
      expect(editionYears).toContain(edition);
      expect(alternative).not.toBe(chosen);
    }
  });
});

describe("an installation as printed and as amended", () => {
  const amendments = [
    {
      kind: "floor",
      role: "grounding-electrode-conductor",
      copper: "3 AWG",
      citation: { jurisdiction: "Example County", section: "Sec. 12-3" },
    },
  ] as const;

  it("shows what they move, named beside the installation or in it", () => {
    const plain = installation({ services: [service()] });
    const inside: Installation = { ...plain, code: { ...plain.code, amendments } } as unknown as Installation;
    const beside = compareInstallation({ over: "amendments", installation: plain, amendments });
    expect(compareInstallation({ over: "amendments", installation: inside })).toEqual(beside);
    expect(beside.variants.map(({ key, change }) => [key, change.kind])).toEqual([
      ["A", "as-printed"],
      ["B", "as-amended"],
    ]);
    expect(column(beside, "B").effects).toEqual(["grounding-electrode-conductor E1: larger"]);
  });

  it("wants at least one, and checks them", () => {
    const plain = installation({ services: [service()] });
    expect(issuesOf({ over: "amendments", installation: plain })).toMatchObject([
      { path: "code.amendments" },
    ]);
    expect(
      issuesOf({ over: "amendments", installation: plain, amendments: [{ kind: "wish" }] }),
    ).toMatchObject([{ code: "unknown-value" }, { code: "missing" }]);
  });
});

describe("an installation under each other reading", () => {
  it("has a column for each alternative that the schedule names, and sizes it so", () => {
    const source = demo("cold-store");
    const named = scheduleOf(source).conductors.flatMap(({ result }) =>
      result.readings.flatMap(({ id, otherwise }) => otherwise.map((one) => `${id} ${one.alternative}`)),
    );
    const { variants, conductors } = compareInstallation({ over: "readings", installation: source });
    const columns = variants.flatMap(({ change }) =>
      change.kind === "reading" ? [`${change.reading} ${change.alternative}`] : [],
    );
    expect(columns).toEqual([...new Set(named)]);
    for (const { entries } of conductors) {
      for (const { id, otherwise } of entries[0]?.conductor?.result.readings ?? []) {
        for (const { alternative, requiredArea } of otherwise) {
          const entry = entries[1 + columns.indexOf(`${id} ${alternative}`)];
          expect(entry?.conductor?.result.requiredArea).toBe(requiredArea);
        }
      }
    }
  });
});

describe("an installation with each other arrangement", () => {
  const arranged = (source: Installation) =>
    compareInstallation({ over: "arrangements", installation: source });
  const changes = (source: Installation) => arranged(source).variants.map(({ change }) => change);

  it("puts several service disconnects into one assembly and back", () => {
    const comparison = arranged(installation({ services: [twoDisconnects] }));
    expect(comparison.variants.map(({ change }) => change)).toEqual([
      { kind: "as-drawn", takenAtSource: [] },
      { kind: "housing", of: "S1", as: "listed-assembly" },
    ]);
    const jumpers = (key: string) =>
      column(comparison, key)
        .conductors.filter(({ role }) => role === "main-bonding-jumper")
        .reduce((sum, { quantity }) => sum + quantity, 0);
    expect([jumpers("A"), jumpers("B")]).toEqual([2, 1]);
    expect(changes(installation({ services: [service()] }))).toHaveLength(1);
  });

  it("moves the jumper of a derived system", () => {
    const at = (jumperAt: "source" | "compare") =>
      changes(installation({ derivedSystems: [derived({ jumperAt })] }));
    expect(at("source").slice(1)).toMatchObject([{ at: "disconnects" }, { at: "both-ends" }]);
    expect(at("compare")).toMatchObject([
      { takenAtSource: ["X1"] },
      { at: "disconnects" },
      { at: "both-ends" },
    ]);
    const bare = derived({ grounding: "ungrounded" });
    expect(changes(installation({ derivedSystems: [bare] }))).toHaveLength(1);
  });

  it("bonds the raceways of a run otherwise", () => {
    const ways = (kind: "flexible-metal" | "nonflexible-metal" | "nonmetallic", count: number) => {
      const raceways = { kind, count };
      const supply = setsOf(2, "500 kcmil");
      const runs = [{ id: "R1", from: "U1", to: "D1", supply, raceways }];
      const otherRuns = [{ id: "Y1", from: "T1", to: "P1", supply, raceways }];
      const of = (source: Installation) =>
        changes(source).flatMap((change) => (change.kind === "raceway-jumpers" ? [change.as] : []));
      return [
        of(installation({ services: [service({ runs })] })),
        of(installation({ derivedSystems: [derived({ runs: otherRuns })] })),
      ];
    };
    expect(ways("flexible-metal", 2)).toEqual([["per-raceway", "fittings-instead"], ["common"]]);
    expect(ways("nonflexible-metal", 2)).toEqual([["per-raceway", "fittings-instead"], []]);
    expect(ways("nonmetallic", 2)).toEqual([[], ["common"]]);
    expect(ways("flexible-metal", 1)).toEqual([["fittings-instead"], []]);
  });
});

describe("any comparison of an installation", () => {
  const kinds = ["editions", "readings", "arrangements"] as const;

  it("has an entry for every conductor in every column, plain and as large as its conductors", () => {
    fc.assert(
      fc.property(anyInstallation, fc.constantFrom(...kinds), (source, over) => {
        const years = ["2011", "2023"] as const;
        const comparison = compareInstallation({
          over,
          installation: source,
          ...(over === "editions" && { editions: years }),
        });
        expect(JSON.parse(JSON.stringify(comparison))).toEqual(comparison);
        const keys = comparison.variants.map(({ key }) => key);
        expect(new Set(keys).size).toBe(keys.length);
        for (const { entries } of comparison.conductors) expect(entries).toHaveLength(keys.length);
        for (const key of keys) {
          const { variant, conductors } = column(comparison, key);
          if (variant === undefined || variant.refused !== undefined) {
            expect(conductors).toEqual([]);
            continue;
          }
          const area = conductors
            .filter(({ alternative }) => alternative === undefined)
            .reduce((sum, { quantity, result: { outcome, requiredArea } }) => {
              return sum + quantity * (outcome.kind === "conductor" ? areaOf(outcome.size) : requiredArea);
            }, 0);
          expect(variant.totalArea).toBe(area);
        }
      }),
      { numRuns: 6 },
    );
  });

  it("names everything wrong in the request", () => {
    const source = installation({ services: [service()] });
    expect(issuesOf({ over: "color", installation: source })).toMatchObject([
      { code: "unknown-value", path: "over" },
    ]);
    expect(issuesOf({ over: "readings", installation: source, editions: ["2020"] })).toMatchObject([
      { path: "editions" },
    ]);
    expect(issuesOf({ over: "editions", installation: source, editions: ["1999"] })).toMatchObject([
      { path: "editions[0]" },
    ]);
    expect(issuesOf({ over: "editions", installation: { format: 1 } }).map(({ path }) => path)).toContain(
      "title",
    );
  });
});
