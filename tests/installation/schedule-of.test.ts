import {
  checkOf,
  type EditionYear,
  editionYears,
  endName,
  type Installation,
  mainBondingJumper,
  readInstallation,
  type Schedule,
  type ScheduledConductor,
  scheduleOf,
  size,
  version,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  anyInstallation,
  copper,
  demo,
  demoNames,
  derived,
  installation,
  refused,
  service,
  setsOf,
} from "./installations.js";

/** Id, quantity and size of every conductor, or why none is required. */
/** All lines but those that say of nonmetallic raceways that nothing is to be bonded. */
function shown({ conductors }: Schedule): readonly (readonly [string, number, string])[] {
  const all = conductors.filter(
    ({ result: { outcome } }) => outcome.kind !== "not-required" || outcome.why !== "nonmetallic-raceway",
  );
  return all.map(({ id, quantity, result: { outcome } }) => [
    id,
    quantity,
    outcome.kind === "not-required"
      ? outcome.why
      : outcome.kind === "conductor"
        ? outcome.size
        : `${outcome.requiredArea} cmil`,
  ]);
}

function of(data: Installation): readonly (readonly [string, number, string])[] {
  return shown(scheduleOf(data));
}

function find(schedule: Schedule, id: string): ScheduledConductor {
  const found = schedule.conductors.find((one) => one.id === id);
  if (found === undefined) throw new Error(`${id} is not in the schedule`);
  return found;
}

const cautionsOf = ({ cautions }: Schedule) => cautions.map(({ code, at }) => [code, at]);
const violationsOf = ({ violations }: Schedule) => violations.map(({ code, at }) => [code, ...at]);
const run = (id: string, from: string, to: string, supply: unknown = copper, parts: object = {}) =>
  ({ id, from, to, supply, raceways: { count: 1, kind: "nonmetallic" }, ...parts }) as never;

describe("a service", () => {
  it("has a main jumper, a grounded conductor and an electrode conductor, from and to somewhere", () => {
    const schedule = scheduleOf(installation({ services: [service()] }));
    expect(shown(schedule)).toEqual([
      ["main-bonding-jumper D1", 1, "1/0 AWG"],
      ["grounded-conductor R1", 1, "1/0 AWG"],
      ["grounding-electrode-conductor E1", 1, "4 AWG"],
    ]);
    expect(schedule.conductors.map(({ from, to }) => [endName(from), endName(to)])).toEqual([
      ["neutral bar of D1", "equipment grounding bar of D1"],
      ["raceway fitting of R1", "enclosure of D1"],
      ["neutral terminal of U1", "neutral bar of D1"],
      ["neutral bar of D1", "E1"],
    ]);
    expect(schedule.cautions).toEqual([]);
    expect(schedule.notSized).toEqual([]);
    expect([schedule.format, schedule.title, schedule.edition]).toEqual([1, "Test", "2023"]);
  });

  it("without a grounded conductor bonds the enclosures from which no electrode conductor starts", () => {
    const data = (electrodes: readonly object[], housing = "separate-enclosures") =>
      of(
        installation({
          services: [
            service({
              grounding: "ungrounded",
              connection: "three-phase-delta",
              boxes: [{ id: "W1", kind: "wireway", bondedBy: "jumper" }],
              runs: [
                run("R0", "U1", "W1"),
                run("R1", "W1", "D1", setsOf(1, "2 AWG")),
                run("R2", "W1", "D2", setsOf(1, "3/0 AWG")),
              ],
              disconnects: ["D1", "D2"].map((id) => ({
                id,
                designation: "service-disconnect" as const,
                amperes: 100,
              })),
              housing: housing as "listed-assembly",
              electrodes: electrodes as never,
            }),
          ],
        }),
      ).filter(([id]) => id.startsWith("supply-side-bonding-jumper") && !id.endsWith("W1"));
    const pipe = (id: string, from: string) => ({ id, kind: "metal-water-pipe", from });
    expect(data([pipe("E1", "W1")])).toEqual([
      ["supply-side-bonding-jumper D1", 1, "8 AWG"],
      ["supply-side-bonding-jumper D2", 1, "4 AWG"],
    ]);
    expect(data([pipe("E1", "D1"), pipe("E2", "D2")])).toEqual([]);
    expect(data([pipe("E1", "W1")], "listed-assembly")).toEqual([
      ["supply-side-bonding-jumper S1", 1, "1/0 AWG"],
    ]);
  });

  it("that is ungrounded has no jumper and no grounded conductor, but boxes bonded to the electrode conductor", () => {
    const schedule = scheduleOf(
      installation({
        services: [
          service({
            grounding: "ungrounded",
            connection: "three-phase-delta",
            boxes: [{ id: "W1", kind: "wireway", bondedBy: "jumper" }],
            runs: [run("R1", "U1", "W1"), run("R2", "W1", "D1")],
          }),
        ],
      }),
    );
    expect(shown(schedule)).toEqual([
      ["main-bonding-jumper D1", 0, "ungrounded-system"],
      ["supply-side-bonding-jumper W1", 1, "1/0 AWG"],
      ["grounded-conductor R1", 0, "no-grounded-conductor"],
      ["grounding-electrode-conductor E1", 1, "4 AWG"],
    ]);
    expect(find(schedule, "supply-side-bonding-jumper W1").from).toEqual({
      kind: "grounding-electrode-conductor",
    });
    expect(find(schedule, "grounding-electrode-conductor E1").result.citation.section).toBe("250.24(F)");
  });

  it("with a grounded phase has it as large as the others, one in each set", () => {
    const data = installation({
      services: [
        service({
          grounding: "grounded-phase",
          connection: "three-phase-delta",
          runs: [
            run("R1", "U1", "D1", setsOf(4, "350 kcmil"), { raceways: { count: 2, kind: "nonmetallic" } }),
          ],
        }),
      ],
    });
    expect(of(data).slice(0, 2)).toEqual([
      ["main-bonding-jumper D1", 1, "4/0 AWG"],
      ["grounded-conductor R1", 4, "350 kcmil"],
    ]);
  });

  it.each([
    ["impedance", "1/0 AWG"],
    ["first-disconnect", "8 AWG"],
  ] as const)("with an impedance and its electrode conductor at the %s", (electrodeConductorAt, size) => {
    const data = installation({
      services: [service({ grounding: "impedance", impedance: { amperes: 10, electrodeConductorAt } })],
    });
    expect(of(data)).toEqual([
      ["main-bonding-jumper D1", 0, "impedance-grounded"],
      ["impedance-grounding-conductor S1", 1, "8 AWG"],
      ["impedance-bonding-jumper S1", 1, size],
      ["grounded-conductor R1", 0, "no-grounded-conductor"],
      ["grounding-electrode-conductor E1", 1, "4 AWG"],
    ]);
  });

  it("has metal raceways bonded in common or each, and nonmetallic ones not at all", () => {
    const inRaceways = (parts: object) =>
      of(
        installation({
          services: [
            service({ runs: [run("R1", "U1", "D1", setsOf(4, "500 kcmil"), parts)], electrodes: [] }),
          ],
        }),
      ).slice(1);
    const raceways = { count: 4, kind: "nonflexible-metal" };
    expect(inRaceways({ raceways })).toEqual([
      ["supply-side-bonding-jumper R1", 1, "250 kcmil"],
      ["grounded-conductor R1", 4, "1/0 AWG"],
    ]);
    expect(inRaceways({ raceways, racewayJumpers: "per-raceway" })).toEqual([
      ["supply-side-bonding-jumper R1", 4, "1/0 AWG"],
      ["grounded-conductor R1", 4, "1/0 AWG"],
    ]);
    expect(inRaceways({ raceways, racewayJumpers: "fittings-instead" })).toEqual([
      ["supply-side-bonding-jumper R1", 0, "bonding-fittings-serve"],
      ["grounded-conductor R1", 4, "1/0 AWG"],
    ]);
    expect(inRaceways({ raceways: { count: 4, kind: "nonmetallic" } })).toEqual([
      ["grounded-conductor R1", 4, "1/0 AWG"],
    ]);
  });

  it("says where fittings could stand in for the jumper of a raceway, and that none are in nonmetallic ones", () => {
    const schedule = (kind: string, racewayJumpers?: string) => {
      const parts = { raceways: { count: 1, kind }, ...(racewayJumpers && { racewayJumpers }) };
      return scheduleOf(
        installation({ services: [service({ runs: [run("R1", "U1", "D1", copper, parts)] })] }),
      );
    };
    const said = (...args: Parameters<typeof schedule>) =>
      schedule(...args).conductors.flatMap(({ subject, insteadPermitted }) =>
        insteadPermitted === undefined
          ? []
          : [[subject, insteadPermitted.by, insteadPermitted.citation.section]],
      );
    expect(said("nonflexible-metal")).toEqual([["R1", "bonding-fittings", "250.92(B)"]]);
    expect(said("nonflexible-metal", "fittings-instead")).toEqual([]);
    expect(said("nonmetallic")).toEqual([]);
    expect(() => schedule("nonmetallic", "fittings-instead")).toThrow("services[0].runs[0].racewayJumpers");
  });

  it("adds the load of the grounded conductor, shared by its parallel parts", () => {
    const raceways = { count: 2, kind: "nonmetallic" };
    const load = { amperes: 400, circuitAmperes: 800 };
    const [, grounded] = of(
      installation({
        services: [service({ runs: [run("R1", "U1", "D1", setsOf(2, "500 kcmil"), { raceways, load })] })],
      }),
    );
    expect(grounded).toEqual(["grounded-conductor R1", 2, "3/0 AWG"]);
  });

  it.each([
    ["meter-disconnect", "not-service-equipment"],
    ["emergency-disconnect", "not-service-equipment"],
  ] as const)("has no main jumper in a %s, whose metal is bonded otherwise", (designation, why) => {
    const ahead = (bondedBy: "jumper" | "grounded-conductor") =>
      of(
        installation({
          services: [
            service({
              disconnects: [
                { id: "D0", designation, amperes: 400, bondedBy },
                { id: "D1", designation: "service-disconnect", amperes: 400 },
              ],
              runs: [run("R0", "U1", "D0"), run("R1", "D0", "D1")],
            }),
          ],
        }),
      ).slice(0, 3);
    expect(ahead("jumper")).toEqual([
      ["main-bonding-jumper D0", 0, why],
      ["main-bonding-jumper D1", 1, "1/0 AWG"],
      ["supply-side-bonding-jumper D0", 1, "1/0 AWG"],
    ]);
    expect(ahead("grounded-conductor")[2]).toEqual([
      "supply-side-bonding-jumper D0",
      0,
      "grounded-conductor-serves",
    ]);
  });

  it("treats a supply-side source like a service from 2020", () => {
    const withSource = (year: EditionYear) =>
      of(
        installation(
          {
            services: [
              service({
                disconnects: [
                  { id: "D1", designation: "service-disconnect", amperes: 400 },
                  { id: "V1", designation: "supply-side-source", amperes: 60 },
                ],
                runs: [run("R1", "U1", "D1"), run("R2", "U1", "V1", setsOf(1, "6 AWG"))],
                electrodes: [],
              }),
            ],
          },
          year,
        ),
      ).filter(([id]) => id.endsWith("V1"));
    expect(withSource("2020")).toEqual([["main-bonding-jumper V1", 1, "8 AWG"]]);
    expect(withSource("2017")).toEqual([
      ["main-bonding-jumper V1", 0, "supply-side-source-before-its-rule"],
      ["supply-side-bonding-jumper V1", 1, "8 AWG"],
    ]);
  });

  const six = (count: number, housing: "separate-enclosures" | "listed-assembly") => {
    const ids = Array.from({ length: count }, (_, i) => `D${i + 1}`);
    return service({
      boxes: [{ id: "W1", kind: "wireway", bondedBy: "grounded-conductor" }],
      runs: [
        run("R0", "U1", "W1", setsOf(6, "350 kcmil")),
        ...ids.map((id) => run(`R${id}`, "W1", id, setsOf(1, "2/0 AWG"))),
      ],
      disconnects: ids.map((id) => ({ id, designation: "service-disconnect" as const, amperes: 175 })),
      housing,
      electrodes: [{ id: "E1", kind: "structural-metal", from: "W1" }],
    });
  };

  it("in a listed assembly has one main jumper from all conductors", () => {
    const schedule = scheduleOf(installation({ services: [six(3, "listed-assembly")] }));
    const jumpers = shown(schedule).filter(([id]) => id.startsWith("main"));
    expect(jumpers).toEqual([
      ["main-bonding-jumper S1", 1, "300 kcmil"],
      ["main-bonding-jumper W1", 0, "not-service-equipment"],
    ]);
    expect(cautionsOf(schedule)).toEqual([
      ["assembly-size-inferred", "S1"],
      ["assembly-narrowed", "S1"],
    ]);
    const older = scheduleOf(installation({ services: [six(3, "listed-assembly")] }, "2017"));
    expect(cautionsOf(older)).toEqual([["assembly-size-inferred", "S1"]]);
  });

  it("in a listed assembly that hangs on the utility itself adds the runs to its disconnects", () => {
    const data = service({
      disconnects: ["D1", "D2"].map((id) => ({
        id,
        designation: "service-disconnect" as const,
        amperes: 400,
      })),
      runs: [run("R1", "U1", "D1"), run("R2", "U1", "D2")],
      housing: "listed-assembly",
    });
    expect(of(installation({ services: [data] }))[0]).toEqual(["main-bonding-jumper S1", 1, "2/0 AWG"]);
  });

  it("in a listed assembly has its electrode conductor, and its tap, by all conductors of the assembly", () => {
    const two = (electrodes: Installation["services"], parts: object = {}) =>
      of(
        installation({
          services: [
            service({
              disconnects: ["D1", "D2"].map((id) => ({
                id,
                designation: "service-disconnect" as const,
                amperes: 100,
              })),
              runs: [
                run("R1", "U1", "D1", setsOf(1, "2 AWG")),
                run("R2", "U1", "D2", setsOf(6, "500 kcmil")),
              ],
              housing: "listed-assembly",
              electrodes: electrodes as never,
              ...parts,
            }),
          ],
        }),
      ).filter(([id]) => id.startsWith("grounding"));
    const pipe = (from: string) => [{ id: "E1", kind: "metal-water-pipe", from }] as never;
    expect(two(pipe("D1"))).toEqual([["grounding-electrode-conductor E1", 1, "3/0 AWG"]]);
    expect(two(pipe("C1"), { commonElectrodeConductor: { id: "C1" } })).toEqual([
      ["grounding-electrode-conductor E1", 1, "3/0 AWG"],
      ["grounding-electrode-tap S1", 1, "3/0 AWG"],
    ]);
  });

  it("goes by the conductors of the premises where they are larger than the drop, and says which", () => {
    const drop = setsOf(1, "2 AWG", "aluminum");
    const entrance = setsOf(1, "4/0 AWG", "aluminum");
    const schedule = scheduleOf(
      installation({
        services: [
          service({
            boxes: [{ id: "M1", kind: "meter", bondedBy: "jumper" }],
            runs: [run("R1", "U1", "M1", drop), run("R2", "M1", "D1", entrance)],
            electrodes: [
              { id: "E1", kind: "metal-water-pipe", from: "M1" },
              { id: "E2", kind: "metal-water-pipe", from: "E1" },
            ],
          }),
        ],
        piping: [{ id: "W1", of: "S1", kind: "water" }],
        structuralMetal: [{ id: "F1", of: "S1" }],
      }),
    );
    for (const id of [
      "supply-side-bonding-jumper M1",
      "grounding-electrode-conductor E1",
      "electrode-bonding-jumper E2",
      "water-piping-bonding-jumper W1",
      "structural-metal-bonding-jumper F1",
    ]) {
      const { by, result } = find(schedule, id);
      expect([id, by, result.requiredArea]).toEqual([id, ["R2"], 41_740]);
    }
    expect(find(schedule, "grounded-conductor R1").by).toEqual(["R1"]);
  });

  it("takes the larger of what ends in a place and what goes on behind it, along each branch", () => {
    const [small, large] = [setsOf(1, "2 AWG"), setsOf(1, "500 kcmil")];
    const boxes = ["M1", "M2"].map((id) => ({ id, kind: "meter" as const, bondedBy: "jumper" as const }));
    const schedule = scheduleOf(
      installation({
        services: [
          service({
            boxes,
            runs: [
              run("R1", "U1", "M1", large),
              run("R2", "U1", "M2", small),
              run("R3", "M1", "D1", small),
              run("R4", "M2", "D2", large),
            ],
            disconnects: ["D1", "D2"].map((id) => ({
              id,
              designation: "service-disconnect" as const,
              amperes: 100,
            })),
            electrodes: [
              { id: "E1", kind: "other", from: "D1" },
              { id: "E2", kind: "other", from: "D2" },
            ],
          }),
        ],
        structuralMetal: [{ id: "F1", of: "S1" }],
      }),
    );
    const { by, result } = find(schedule, "structural-metal-bonding-jumper F1");
    expect([by, result.requiredArea]).toEqual([["R1", "R4"], 133_100]);
    expect(find(schedule, "supply-side-bonding-jumper M1").by).toEqual(["R1"]);
    expect(find(schedule, "supply-side-bonding-jumper M2").by).toEqual(["R4"]);
    expect(schedule.violations).toEqual([]);
  });

  it("says where conductors carry clearly less than the disconnect is rated for", () => {
    const said = (size: string, amperes: number, count = 1) =>
      cautionsOf(
        scheduleOf(
          installation({
            services: [
              service({
                runs: [run("R1", "U1", "D1", setsOf(count, size))],
                disconnects: [{ id: "D1", designation: "service-disconnect", amperes }],
              }),
            ],
          }),
        ),
      ).filter(([code]) => code === "conductors-below-rating");
    expect(said("3 AWG", 4000)).toEqual([["conductors-below-rating", "D1"]]);
    // 500 kcmil carries 380 A, and the next standard rating is 400 A.
    expect(said("500 kcmil", 400)).toEqual([]);
    expect(said("500 kcmil", 600)).toEqual([["conductors-below-rating", "D1"]]);
    expect(said("500 kcmil", 1140, 3)).toEqual([]);
    expect(said("500 kcmil", 1200, 3)).toEqual([["conductors-below-rating", "D1"]]);
  });

  it("wants an electrode connection for each of several enclosures, or one ahead of them", () => {
    const data = six(2, "separate-enclosures");
    const missing = (electrodes: readonly object[], parts: object = {}) =>
      scheduleOf(installation({ services: [{ ...data, electrodes: electrodes as never, ...parts }] }))
        .violations;
    expect(missing([{ id: "E1", kind: "other", from: "W1" }])).toEqual([]);
    expect(missing([{ id: "E1", kind: "other", from: "D1" }])).toMatchObject([
      { code: "electrode-conductor-missing", section: "250.64(D)", at: ["D2"] },
    ]);
    expect(missing([{ id: "E1", kind: "other", from: "D1" }], { housing: "listed-assembly" })).toEqual([]);
    expect(
      missing([{ id: "E1", kind: "other", from: "C1" }], { commonElectrodeConductor: { id: "C1" } }),
    ).toEqual([]);
    expect(missing([])).toMatchObject([
      { code: "electrode-conductor-missing", section: "250.24(E)", at: ["S1"], found: { count: 0 } },
    ]);
  });

  it("with seven disconnects is sized as found, and says that they are too many", () => {
    const seven = scheduleOf(installation({ services: [six(7, "separate-enclosures")] }));
    const jumpers = shown(seven).filter(([id, quantity]) => id.startsWith("main") && quantity > 0);
    expect(jumpers.length).toBe(7);
    expect(violationsOf(seven)).toEqual([["more-than-six-disconnects", "S1"]]);
    expect(scheduleOf(installation({ services: [six(6, "separate-enclosures")] })).violations).toEqual([]);
  });

  it("says of a run, not of each conductor, that it is too small to be in parallel", () => {
    const parallel = scheduleOf(
      installation({ services: [service({ runs: [run("R1", "U1", "D1", setsOf(2, "1 AWG"))] })] }),
    );
    expect(parallel.violations).toMatchObject([
      {
        code: "parallel-below-1-0",
        section: "310.10(G)",
        at: ["R1"],
        found: { count: 2, conductors: [{ size: "1 AWG", material: "copper" }] },
      },
    ]);
    const several = service({
      disconnects: ["D1", "D2"].map((id) => ({
        id,
        designation: "service-disconnect" as const,
        amperes: 100,
      })),
      runs: [run("R1", "U1", "D1", setsOf(1, "1 AWG")), run("R2", "U1", "D2", setsOf(1, "1 AWG"))],
      housing: "listed-assembly",
    });
    const codes = JSON.stringify(scheduleOf(installation({ services: [several] })));
    expect(codes).not.toContain("parallel-below-1-0");
  });

  it("sizes the common electrode conductor from all service disconnects and a tap from each", () => {
    const data = service({
      disconnects: [
        { id: "D1", designation: "service-disconnect", amperes: 400 },
        { id: "D2", designation: "service-disconnect", amperes: 200 },
        { id: "M1", designation: "meter-disconnect", amperes: 100, bondedBy: "grounded-conductor" },
      ],
      boxes: [{ id: "W1", kind: "wireway", bondedBy: "grounded-conductor" }],
      runs: [
        run("R0", "U1", "W1", setsOf(2, "500 kcmil")),
        run("R1", "W1", "D1"),
        run("R2", "W1", "D2", setsOf(1, "3/0 AWG")),
        run("R3", "W1", "M1", setsOf(1, "500 kcmil")),
      ],
      commonElectrodeConductor: { id: "B1" },
      electrodes: [
        { id: "E1", kind: "metal-water-pipe", from: "B1" },
        { id: "E2", kind: "rod", from: "B1" },
      ],
    });
    expect(of(installation({ services: [data] })).filter(([id]) => id.startsWith("grounding"))).toEqual([
      // 500 + 167.8 kcmil, the metering not added.
      ["grounding-electrode-conductor E1", 1, "2/0 AWG"],
      ["grounding-electrode-conductor E2", 1, "6 AWG"],
      ["grounding-electrode-tap D1", 1, "1/0 AWG"],
      ["grounding-electrode-tap D2", 1, "4 AWG"],
    ]);
    const bare = of(installation({ services: [{ ...data, electrodes: [] }] })).map(([id]) => id);
    expect(bare.slice(-3)).toEqual([
      "grounding-electrode-conductor B1",
      "grounding-electrode-tap D1",
      "grounding-electrode-tap D2",
    ]);
  });

  it("sizes electrodes that hang on others, and the conductor before them for all of them", () => {
    const tree = (kinds: readonly ["rod" | "concrete-encased", "rod" | "metal-water-pipe"]) =>
      of(
        installation({
          services: [
            service({
              electrodes: [
                { id: "E1", kind: kinds[0], from: "D1" },
                { id: "E2", kind: kinds[1], from: "E1" },
              ],
            }),
          ],
        }),
      ).slice(-2);
    expect(tree(["rod", "rod"])).toEqual([
      ["grounding-electrode-conductor E1", 1, "6 AWG"],
      ["electrode-bonding-jumper E2", 1, "6 AWG"],
    ]);
    expect(tree(["concrete-encased", "metal-water-pipe"])).toEqual([
      ["grounding-electrode-conductor E1", 1, "1/0 AWG"],
      ["electrode-bonding-jumper E2", 1, "1/0 AWG"],
    ]);
  });

  it("bonds both ends of a ferrous raceway by the conductor inside, as installed if that is larger", () => {
    const data = (installed: Installation["installed"]) =>
      installation({
        services: [service({ electrodes: [{ id: "E1", kind: "rod", from: "D1", ferrousRaceway: true }] })],
        ...(installed && { installed }),
      });
    const id = "electrode-raceway-bonding-jumper E1";
    expect(of(data(undefined)).at(-1)).toEqual([id, 2, "6 AWG"]);
    const larger = [
      {
        role: "grounding-electrode-conductor" as const,
        of: "E1",
        size: "2 AWG" as const,
        material: "copper" as const,
      },
    ];
    expect(of(data({ found: larger })).at(-1)).toEqual([id, 2, "2 AWG"]);
  });

  it("asks for a supplement of lone rods and of water pipes, and for one outside at an outdoor transformer", () => {
    const said = (
      kinds: readonly ("rod" | "metal-water-pipe" | "concrete-encased")[],
      outdoorTransformer = false,
    ) => {
      const schedule = scheduleOf(
        installation({
          services: [
            service({
              utility: { id: "U1", outdoorTransformer },
              electrodes: kinds.map((kind, i) => ({ id: `E${i}`, kind, from: "D1" })),
            }),
          ],
        }),
      );
      return [...violationsOf(schedule), ...cautionsOf(schedule)];
    };
    expect(said(["rod"])).toEqual([["electrode-not-supplemented", "E0"]]);
    expect(said(["metal-water-pipe", "metal-water-pipe"])).toEqual([
      ["water-pipe-not-supplemented", "E0", "E1"],
    ]);
    expect(said(["rod", "rod"])).toEqual([]);
    // The water pipe does not supplement the rod (250.53(A)(2), (D)(2)).
    expect(said(["metal-water-pipe", "rod"])).toEqual([["electrode-not-supplemented", "E1"]]);
    expect(said(["concrete-encased"], true)).toEqual([["outdoor-transformer-electrode", "U1"]]);
  });

  it("wants another electrode beside a lone rod of a derived system, but not beside the building's water pipe", () => {
    const cautions = (...kinds: readonly ("rod" | "metal-water-pipe")[]) =>
      cautionsOf(
        scheduleOf(
          installation({
            derivedSystems: [
              derived({ electrodes: kinds.map((kind, i) => ({ id: `E${i}`, kind, from: "T1" })) }),
            ],
          }),
        ),
      );
    expect(cautions("rod")).toEqual([["electrode-to-be-supplemented", "E0"]]);
    expect(cautions("rod", "rod")).toEqual([]);
    expect(cautions("metal-water-pipe")).toEqual([]);
    // A rod of the service has its own list, where its lack is said.
    const shared = installation({
      services: [service({ electrodes: [{ id: "E9", kind: "rod", from: "D1" }] })],
      derivedSystems: [derived({ electrodes: [{ electrode: "E9", from: "T1" }] })],
    });
    expect(cautionsOf(scheduleOf(shared)).filter(([, at]) => at === "E9")).toEqual([]);
    expect(violationsOf(scheduleOf(shared))).toContainEqual(["electrode-not-supplemented", "E9"]);
  });

  it("says that a jumper in a wireway is no main jumper, and that electrodes are missing", () => {
    const schedule = scheduleOf(
      installation({
        services: [
          service({
            boxes: [{ id: "W1", kind: "wireway", bondedBy: "jumper" }],
            runs: [run("R1", "U1", "W1"), run("R2", "W1", "D1")],
            electrodes: [],
          }),
        ],
      }),
    );
    expect(cautionsOf(schedule)).toEqual([["jumper-in-wireway", "W1"]]);
    expect(schedule.notSized).toEqual([{ what: "grounding electrode conductor of S1", see: "250.24(A)(1)" }]);
  });

  it("takes the conductors that a load requires where none are chosen", () => {
    const supply = { forLoad: { amperes: 380, material: "copper", sets: 1 } };
    const schedule = scheduleOf(
      installation({ services: [service({ runs: [run("R1", "U1", "D1", supply)] })] }),
    );
    expect(shown(schedule)).toEqual(of(installation({ services: [service()] })));
    expect(find(schedule, "main-bonding-jumper D1").result.cautions.map(({ code }) => code)).toContain(
      "conductors-required-for-load",
    );
  });

  it("gives the very result of the rule", () => {
    const [jumper] = scheduleOf(installation({ services: [service()] })).conductors;
    const code = { year: "2023" } as const;
    expect(jumper?.result).toEqual(
      size(mainBondingJumper, { code, supply: copper, conductor: { material: "copper" } }),
    );
  });
});

describe("a separately derived system", () => {
  const system = (parts: Parameters<typeof derived>[0] = {}, year: EditionYear = "2023") =>
    scheduleOf(installation({ derivedSystems: [derived(parts)] }, year));

  it("with its jumper at the source asks for no grounded conductor but that of its load", () => {
    expect(shown(system())).toEqual([
      ["system-bonding-jumper T1", 1, "1/0 AWG"],
      ["supply-side-bonding-jumper Y1", 1, "1/0 AWG"],
      ["grounded-conductor Y1", 0, "jumper-at-source"],
      ["grounding-electrode-conductor G1", 1, "1/0 AWG"],
    ]);
    const load = { amperes: 100, circuitAmperes: 400 };
    const loaded = system({ runs: [run("Y1", "T1", "P1", copper, { load })] });
    expect(shown(loaded)[2]).toEqual(["grounded-conductor Y1", 1, "3 AWG"]);
    const parallel = system({
      runs: [
        run("Y1", "T1", "P1", setsOf(2, "500 kcmil"), { load, raceways: { count: 2, kind: "nonmetallic" } }),
      ],
    });
    expect(shown(parallel)[2]).toEqual(["grounded-conductor Y1", 2, "1/0 AWG"]);
  });

  it("runs a supply-side jumper in each nonmetallic raceway, none in a nonflexible metal one", () => {
    const jumper = (kind: string, racewayJumpers?: string) =>
      shown(
        system({
          runs: [
            run("Y1", "T1", "P1", setsOf(2, "500 kcmil"), {
              raceways: { count: 2, kind },
              ...(racewayJumpers && { racewayJumpers }),
            }),
          ],
        }),
      )[1];
    expect(jumper("nonmetallic")).toEqual(["supply-side-bonding-jumper Y1", 2, "1/0 AWG"]);
    expect(jumper("flexible-metal")).toEqual(["supply-side-bonding-jumper Y1", 2, "1/0 AWG"]);
    expect(jumper("nonmetallic", "common")).toEqual(["supply-side-bonding-jumper Y1", 1, "2/0 AWG"]);
    expect(jumper("nonflexible-metal")).toEqual(["supply-side-bonding-jumper Y1", 0, "metal-raceway-serves"]);
  });

  it("has no fittings in place of jumpers", () => {
    const raceways = { count: 1, kind: "flexible-metal" };
    const runs = [run("Y1", "T1", "P1", copper, { raceways, racewayJumpers: "fittings-instead" })];
    expect(() => system({ runs })).toThrow("derivedSystems[0].runs[0].racewayJumpers");
  });

  const two = {
    runs: [run("Y1", "T1", "P1"), run("Y2", "T1", "P2", setsOf(1, "3/0 AWG"))],
    disconnects: ["P1", "P2"].map((id) => ({ id, amperes: 200 })),
  };

  it("with a jumper in each enclosure wants an electrode conductor from each", () => {
    const schedule = system({
      ...two,
      jumperAt: "disconnects",
      electrodes: [{ id: "G1", kind: "structural-metal", from: "P1" }],
    });
    expect(shown(schedule)).toEqual([
      ["system-bonding-jumper P1", 1, "1/0 AWG"],
      ["system-bonding-jumper P2", 1, "4 AWG"],
      ["supply-side-bonding-jumper Y1", 1, "1/0 AWG"],
      ["supply-side-bonding-jumper Y2", 1, "4 AWG"],
      ["grounded-conductor Y1", 1, "1/0 AWG"],
      ["grounded-conductor Y2", 1, "4 AWG"],
      ["grounding-electrode-conductor G1", 1, "2/0 AWG"],
    ]);
    expect(schedule.violations).toMatchObject([
      { code: "electrode-conductor-missing", section: "250.30(A)(5)", at: ["P2"] },
    ]);
    const read = { readings: { "electrode-connection-with-several-jumpers": "at-one-jumper" } } as const;
    const one = installation({
      derivedSystems: [
        derived({
          ...two,
          jumperAt: "disconnects",
          electrodes: [{ id: "G1", kind: "structural-metal", from: "P1" }],
        }),
      ],
    });
    expect(scheduleOf({ ...one, code: { year: "2023", ...read } }).violations).toEqual([]);
  });

  it("with one connection for several enclosures goes by all conductors, with one in each by its own", () => {
    const sizes = (...from: readonly string[]) =>
      system({
        runs: [run("Y1", "T1", "P1", setsOf(1, "2 AWG")), run("Y2", "T1", "P2", setsOf(6, "500 kcmil"))],
        disconnects: ["P1", "P2"].map((id) => ({ id, amperes: 200 })),
        jumperAt: "disconnects",
        electrodes: from.map((place, i) => ({ id: `G${i}`, kind: "structural-metal" as const, from: place })),
      })
        .conductors.filter(({ role }) => role === "grounding-electrode-conductor")
        .map(({ by, result: { outcome } }) => [outcome.kind === "conductor" && outcome.size, ...by]);
    expect(sizes("P1")).toEqual([["3/0 AWG", "Y1", "Y2"]]);
    expect(sizes("P1", "P2")).toEqual([
      ["8 AWG", "Y1"],
      ["3/0 AWG", "Y2"],
    ]);
  });

  it("marks an electrode conductor that starts elsewhere than at the jumper", () => {
    const electrodes = [{ id: "G1", kind: "structural-metal" as const, from: "P1" }];
    expect(system({ electrodes }).violations).toMatchObject([
      { code: "electrode-conductor-not-at-jumper", section: "250.30(A)(5)", at: ["G1"] },
    ]);
    expect(system({ electrodes, jumperAt: "disconnects" }).violations).toEqual([]);
    expect(system({ electrodes, grounding: "ungrounded" }).violations).toEqual([]);
  });

  it("compares the arrangements that are permitted without a condition, each with its grounded conductor", () => {
    const schedule = system({ ...two, jumperAt: "compare" });
    expect(schedule.conductors.map(({ id, alternative }) => [id, alternative])).toEqual([
      ["system-bonding-jumper T1", "jumper-at-source"],
      ["system-bonding-jumper P1", "jumper-in-each-enclosure"],
      ["system-bonding-jumper P2", "jumper-in-each-enclosure"],
      ["supply-side-bonding-jumper Y1", undefined],
      ["supply-side-bonding-jumper Y2", undefined],
      ["grounded-conductor Y1 (jumper-at-source)", "jumper-at-source"],
      ["grounded-conductor Y1 (jumper-in-each-enclosure)", "jumper-in-each-enclosure"],
      ["grounded-conductor Y2 (jumper-at-source)", "jumper-at-source"],
      ["grounded-conductor Y2 (jumper-in-each-enclosure)", "jumper-in-each-enclosure"],
      ["grounding-electrode-conductor G1 (jumper-at-source)", "jumper-at-source"],
      ["grounding-electrode-conductor G1 from P1 (jumper-in-each-enclosure)", "jumper-in-each-enclosure"],
      ["grounding-electrode-conductor G1 from P2 (jumper-in-each-enclosure)", "jumper-in-each-enclosure"],
    ]);
    const source = { id: "T1", kind: "transformer" as const, outdoors: true };
    const outdoors = system({ ...two, jumperAt: "compare", source });
    expect(outdoors.conductors.slice(0, 2).map(({ id, alternative }) => [id, alternative])).toEqual([
      ["system-bonding-jumper T1", undefined],
      ["supply-side-bonding-jumper Y1", undefined],
    ]);
  });

  it.each([
    ["2011", false, ["only-without-parallel-path"], [], 1],
    ["2014", false, [], [["jumper-not-permitted-here", "T1", "P1"]], 1],
    ["2014", true, ["outdoor-source", "only-without-parallel-path"], [], 0],
    ["2023", true, ["outdoor-source", "only-without-parallel-path"], [], 0],
  ] as const)(
    "with jumpers at both ends in %s, outdoors %s",
    (year, outdoors, codes, forbidden, supplySide) => {
      const schedule = system(
        { jumperAt: "both-ends", source: { id: "T1", kind: "transformer", outdoors } },
        year,
      );
      expect(schedule.cautions.map(({ code }) => code)).toEqual(codes);
      expect(violationsOf(schedule)).toEqual(forbidden);
      expect(shown(schedule).filter(([id]) => id.startsWith("system")).length).toBe(2);
      expect(find(schedule, "supply-side-bonding-jumper Y1").quantity).toBe(supplySide);
      expect(find(schedule, "grounded-conductor Y1").quantity).toBe(1);
    },
  );

  it("with jumpers at both ends of a metal raceway has the parallel path that is forbidden", () => {
    const schedule = system({
      jumperAt: "both-ends",
      source: { id: "T1", kind: "transformer", outdoors: true },
      runs: [run("Y1", "T1", "P1", copper, { raceways: { count: 1, kind: "nonflexible-metal" } })],
    });
    expect(violationsOf(schedule)).toEqual([["jumper-not-permitted-here", "T1", "P1"]]);
  });

  it("outdoors keeps its jumper and its electrode conductor at the source from 2011", () => {
    const astray = (year: EditionYear) =>
      violationsOf(
        system(
          {
            source: { id: "T1", kind: "transformer", outdoors: true },
            jumperAt: "disconnects",
            electrodes: [{ id: "G1", kind: "structural-metal", from: "P1" }],
          },
          year,
        ),
      );
    expect(astray("2023")).toEqual([
      ["jumper-not-permitted-here", "P1"],
      ["electrode-conductor-not-at-jumper", "G1"],
    ]);
    expect(astray("2008")).toEqual([]);
  });

  it.each(["ungrounded", "impedance"] as const)("that is %s has no system jumper", (grounding) => {
    const schedule = system({
      grounding,
      ...(grounding === "impedance" && {
        impedance: { amperes: 100, electrodeConductorAt: "first-disconnect" as const },
      }),
    });
    const why = grounding === "impedance" ? "impedance-grounded" : "ungrounded-system";
    expect(shown(schedule)).toEqual([
      ["system-bonding-jumper X1", 0, why],
      ...(grounding === "impedance"
        ? [
            ["impedance-grounding-conductor X1", 1, "1 AWG"],
            ["impedance-bonding-jumper X1", 1, "1 AWG"],
          ]
        : []),
      ["supply-side-bonding-jumper Y1", 1, "1/0 AWG"],
      ["grounded-conductor Y1", 0, "no-grounded-conductor"],
      ["grounding-electrode-conductor G1", 1, "1/0 AWG"],
    ]);
  });

  it("of a control transformer needs no electrode conductor; of another without electrodes says so", () => {
    const source = { id: "T1", kind: "transformer" as const, outdoors: false, controlTransformer: true };
    const control = system({
      source,
      electrodes: [],
      runs: [run("Y1", "T1", "P1", setsOf(1, "10 AWG"))],
      disconnects: [{ id: "P1", amperes: 30 }],
    });
    expect(shown(control).at(-1)).toEqual(["grounding-electrode-conductor X1", 0, "control-transformer"]);
    expect(control.notSized).toEqual([]);
    expect(system({ electrodes: [] }).notSized).toEqual([
      { what: "grounding electrode conductor of X1", see: "250.30(A)(5)" },
    ]);
  });

  it("takes no large source for a control transformer", () => {
    const source = { id: "T1", kind: "transformer" as const, outdoors: false, controlTransformer: true };
    const small = { runs: [run("Y1", "T1", "P1", setsOf(1, "10 AWG"))], source, electrodes: [] };
    const refusal = (parts: object) =>
      refused(installation({ derivedSystems: [derived({ ...small, ...parts })] }));
    expect(refusal({ disconnects: [{ id: "P1", amperes: 100 }] })).toEqual([]);
    expect(refusal({ disconnects: [{ id: "P1", amperes: 1000 }] })).toEqual([
      ["out-of-range", "derivedSystems[0].disconnects[0].amperes"],
    ]);
    expect(
      refusal({
        disconnects: [{ id: "P1", amperes: 20 }],
        runs: [run("Y1", "T1", "P1", setsOf(1, "500 kcmil"))],
      }),
    ).toEqual([["out-of-range", "derivedSystems[0].runs"]]);
  });

  it("taps a common electrode conductor of a fixed size, which stands in the schedule once", () => {
    const common = { commonElectrodeConductor: { id: "riser" } };
    const schedule = scheduleOf(
      installation({
        derivedSystems: [
          derived({
            ...common,
            electrodes: [
              { id: "G1", kind: "structural-metal", from: "riser" },
              { id: "G2", kind: "rod", from: "G1" },
            ],
          }),
          derived({
            ...common,
            id: "X2",
            source: { id: "T2", kind: "transformer", outdoors: false },
            runs: [run("Y2", "T2", "P2", setsOf(1, "2 AWG"))],
            disconnects: [{ id: "P2", amperes: 100 }],
            jumperAt: "disconnects",
            electrodes: [],
          }),
        ],
      }),
    );
    const electrodes = schedule.conductors.filter(({ result }) => result.purpose === "electrode-system");
    expect(shown({ ...schedule, conductors: electrodes })).toEqual([
      ["grounding-electrode-conductor G1", 1, "3/0 AWG"],
      ["electrode-bonding-jumper G2", 1, "6 AWG"],
      ["grounding-electrode-tap T1", 1, "1/0 AWG"],
      ["grounding-electrode-tap P2", 1, "8 AWG"],
    ]);
    expect(electrodes.map(({ from, to }) => [endName(from), endName(to)])).toEqual([
      ["riser", "G1"],
      ["G1", "G2"],
      ["neutral terminal of T1", "riser"],
      ["neutral bar of P2", "riser"],
    ]);
    expect(schedule.notSized).toEqual([]);
    expect(schedule.cautions).toEqual([]);
  });

  it("sizes the common conductor where no electrode is drawn on it", () => {
    const schedule = system({ commonElectrodeConductor: { id: "riser" }, electrodes: [] });
    expect(shown(schedule).slice(-2)).toEqual([
      ["grounding-electrode-conductor riser", 1, "3/0 AWG"],
      ["grounding-electrode-tap T1", 1, "1/0 AWG"],
    ]);
  });
});

describe("what follows a service", () => {
  const circuit = (parts: object) =>
    ({ id: "C1", from: "P", to: "load", device: { amperes: 400 }, wiring: "raceway", ...parts }) as never;
  const existing = [{ id: "P" }];

  it.each([
    [{}, 1, "3 AWG"],
    [{ wiring: "parallel-raceways", raceways: 3 }, 3, "3 AWG"],
    [{ device: { amperes: 15 }, wiring: "tray-single-conductor" }, 1, "4 AWG"],
    [{ device: { motor: { kind: "inverse-time-or-fuse", deviceAmperes: 100 } } }, 1, "8 AWG"],
    [{ device: { motor: { kind: "instantaneous-trip", dualElementFuseAmperes: 100 } } }, 1, "8 AWG"],
    [{ device: { aheadOfFeeder: { amperes: 100 } } }, 1, "8 AWG"],
    [
      {
        conductors: setsOf(1, "750 kcmil"),
        increasedFrom: { conductors: setsOf(1, "500 kcmil"), reason: "voltage-drop" },
      },
      1,
      "1 AWG",
    ],
  ] as const)("a circuit %j has equipment grounding conductors", (parts, quantity, size) => {
    const data = installation({ existing, circuits: [circuit(parts)] });
    expect(of(data)).toEqual([["equipment-grounding-conductor C1", quantity, size]]);
  });

  it("a generator that is not separately derived has a jumper, or is a feeder if its device is integral", () => {
    const generator = (parts: object) =>
      of(
        installation({
          generators: [
            { id: "N1", supply: copper, to: "ATS", integralOvercurrentDevice: false, ...parts } as never,
          ],
        }),
      );
    const none = (id: string, why: string) => [id, 0, why];
    const jumper = none("system-bonding-jumper N1", "jumper-of-other-system-serves");
    const electrode = none("grounding-electrode-conductor N1", "electrode-conductor-of-other-system-serves");
    expect(generator({})).toEqual([jumper, ["supply-side-bonding-jumper N1", 1, "1/0 AWG"], electrode]);
    expect(generator({ integralOvercurrentDevice: true, deviceAmperes: 200 })).toEqual([
      jumper,
      none("supply-side-bonding-jumper N1", "no-conductors-ahead-of-the-device"),
      ["equipment-grounding-conductor N1", 1, "6 AWG"],
      electrode,
    ]);
  });

  it("a building has its electrode conductor by the feeder, none on one branch circuit", () => {
    const building = (parts: object, electrodes: object[] = []) =>
      scheduleOf(
        installation({
          existing,
          circuits: [circuit({ conductors: copper })],
          buildings: [
            { id: "B1", circuit: "C1", onSingleBranchCircuit: false, electrodes, ...parts } as never,
          ],
        }),
      );
    const frame = { id: "E1", kind: "structural-metal", from: "B1" };
    expect(shown(building({}, [frame]))[1]).toEqual(["grounding-electrode-conductor E1", 1, "1/0 AWG"]);
    expect(shown(building({ onSingleBranchCircuit: true }))[1]).toEqual([
      "grounding-electrode-conductor B1",
      0,
      "building-on-one-branch-circuit",
    ]);
    expect(cautionsOf(building({ onSingleBranchCircuit: true }))).toEqual([
      ["larger-than-shared-branch-circuit", "B1"],
    ]);
    expect(building({}).notSized).toEqual([
      { what: "grounding electrode conductor of B1", see: "250.32(E)" },
    ]);
  });

  it.each([
    ["2017", "1/0 AWG"],
    ["2020", "3 AWG"],
  ] as const)("piping of a building goes by conductors or device: %s", (year, size) => {
    const data = installation(
      {
        existing,
        circuits: [circuit({ conductors: copper })],
        buildings: [{ id: "B1", circuit: "C1", onSingleBranchCircuit: false }],
        piping: [{ id: "W1", of: "B1", kind: "water" }],
      },
      year,
    );
    expect(of(data).at(-1)).toEqual(["water-piping-bonding-jumper W1", 1, size]);
  });

  it("metal of services and derived systems, occupancies, other piping and terminations", () => {
    const data = installation({
      services: [service({ runs: [run("R1", "U1", "D1", setsOf(6, "500 kcmil"))] })],
      derivedSystems: [derived()],
      piping: [
        { id: "W1", of: "S1", kind: "water" },
        { id: "W2", of: "X1", kind: "water", isElectrode: true },
        { id: "W3", kind: "water-of-occupancy", deviceAmperes: 60 },
        { id: "W4", kind: "other", deviceAmperes: 20 },
      ],
      structuralMetal: [
        { id: "M1", of: "S1" },
        { id: "M2", of: "X1" },
      ],
      intersystem: [
        { id: "I1", at: "D1", termination: "apart" },
        { id: "I2", at: "D1", termination: "on-enclosure" },
        { id: "I3", at: "S1", termination: "busbar", electrodeConductorOnBusbar: "1/0 AWG" },
        { id: "I4", at: "D1", termination: "apart", communicationsUnlikely: true },
      ],
    });
    expect(of(data).filter(([id]) => /piping|metal|intersystem/.test(id))).toEqual([
      ["water-piping-bonding-jumper W1", 1, "3/0 AWG"],
      ["water-piping-bonding-jumper W2", 0, "part-is-the-electrode"],
      ["water-piping-bonding-jumper W3", 1, "10 AWG"],
      ["other-piping-bonding-jumper W4", 1, "12 AWG"],
      ["structural-metal-bonding-jumper M1", 1, "3/0 AWG"],
      ["structural-metal-bonding-jumper M2", 1, "1/0 AWG"],
      ["intersystem-bonding-conductor I1", 1, "6 AWG"],
      ["intersystem-bonding-conductor I2", 0, "termination-on-enclosure"],
      ["intersystem-bonding-conductor I3", 1, "1/0 AWG"],
      ["intersystem-bonding-conductor I4", 0, "communications-unlikely"],
    ]);
  });

  it("adds the metal of conductors whose length is given, alternatives left out", () => {
    const lengthFeet = 12.5;
    const schedule = scheduleOf(
      installation({
        existing,
        circuits: [circuit({ wiring: "parallel-raceways", raceways: 2, lengthFeet: 100 })],
        derivedSystems: [
          derived({ jumperAt: "compare", runs: [run("Y1", "T1", "P1", copper, { lengthFeet })] }),
        ],
      }),
    );
    expect(schedule.totals).toEqual([
      { size: "3 AWG", material: "copper", feet: 200 },
      { size: "1/0 AWG", material: "copper", feet: 12.5 },
    ]);
  });
});

describe("every schedule", () => {
  const code = { format: 1 as const, title: "Empty", materials: installation({}).materials };

  it("of nothing is empty", () => {
    const schedule = scheduleOf({ ...code, code: { year: "2026" } });
    expect(schedule).toEqual({
      format: 1,
      library: { name: "bondmil", version },
      title: "Empty",
      edition: "2026",
      code: { year: "2026" },
      violations: [],
      conductors: [],
      cautions: [],
      notSized: [],
      totals: [],
      installationFingerprint: schedule.installationFingerprint,
      fingerprint: schedule.fingerprint,
    });
    expect(schedule.fingerprint).toMatch(/^([0-9a-f]{4}-){3}[0-9a-f]{4}$/);
  });

  it.each(demoNames)("of %s is the same from text, from data, and from what was read", (name) => {
    const data = demo(name);
    const schedule = scheduleOf(data);
    expect(scheduleOf(readInstallation(JSON.stringify(data)))).toEqual(schedule);
    expect(scheduleOf(JSON.parse(JSON.stringify(readInstallation(data))))).toEqual(schedule);
    expect(checkOf(data).schedule).toEqual(schedule);
    expect(JSON.parse(JSON.stringify(schedule))).toEqual(schedule);
  });

  it.each(demoNames)("of %s is the same without fingerprints where none is asked", (name) => {
    const { installationFingerprint: _, fingerprint: __, ...rest } = scheduleOf(demo(name));
    expect(JSON.stringify(scheduleOf(demo(name), { fingerprint: false }))).toBe(JSON.stringify(rest));
    expect(scheduleOf(demo(name), { fingerprint: true })).toEqual(scheduleOf(demo(name)));
    expect(() => scheduleOf(demo(name), { fingerprints: false } as never)).toThrow(
      '"fingerprints" is not known here; did you mean "fingerprint"?',
    );
  });

  it("follows its drawing, takes nothing of it along, and names each conductor once", () => {
    fc.assert(
      fc.property(anyInstallation, (data) => {
        const before = structuredClone(data);
        const schedule = scheduleOf(data);
        expect(data).toEqual(before);
        expect(scheduleOf(structuredClone(data))).toEqual(schedule);
        const ids = schedule.conductors.map(({ id }) => id);
        expect(new Set(ids).size).toBe(ids.length);
        expect(JSON.parse(JSON.stringify(schedule))).toEqual(schedule);
      }),
      { numRuns: 100 },
    );
  });

  it("changes its fingerprint with the edition, and with nothing that does not matter", () => {
    const marks = new Set(
      editionYears.map((year) => scheduleOf(installation({ services: [service()] }, year)).fingerprint),
    );
    expect(marks.size).toBe(editionYears.length);
    const { title, ...rest } = installation({ services: [service()] });
    expect(marks).toContain(scheduleOf({ title, ...rest }).fingerprint);
  });

  it("keeps the order of the installation", () => {
    const services = ["S1", "S2"].map((id) =>
      service({
        id,
        utility: { id: `U${id}`, outdoorTransformer: false },
        runs: [run(`R${id}`, `U${id}`, `D${id}`)],
        disconnects: [{ id: `D${id}`, designation: "service-disconnect", amperes: 100 }],
        electrodes: [],
      }),
    );
    const order = (list: readonly ReturnType<typeof service>[]) =>
      of(installation({ services: [...list] })).map(([id]) => id.slice(-2));
    expect(order(services)).toEqual(["S1", "S1", "S2", "S2"]);
    expect(order([...services].reverse())).toEqual(["S2", "S2", "S1", "S1"]);
  });
});
