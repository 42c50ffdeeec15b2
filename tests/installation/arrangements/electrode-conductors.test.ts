import {
  type ArrangementsInput,
  arrangementsDocument,
  arrangementsOf,
  type EditionYear,
  editionYears,
  groundingElectrodeConductor,
  InputError,
  mainBondingJumper,
  render,
  type Supply,
} from "bondmil";
import { describe, expect, it } from "vitest";

type Question = ArrangementsInput<"grounding-electrode-conductor">;
type EnclosureQuestion = Extract<Question, { readonly enclosures: unknown }>;
type DerivedQuestion = Extract<Question, { readonly systems: unknown }>;

const copper = (count: number, size: "3/0 AWG" | "350 kcmil" | "500 kcmil" | "600 kcmil"): Supply => ({
  sets: [{ count, size, material: "copper" }],
});
const code = { year: "2020" } as const;
const conductor = { material: "copper" } as const;
const electrodes = [{ kind: "structural-metal" }, { kind: "rod" }] as const;

const service: EnclosureQuestion = {
  code,
  system: "service",
  enclosures: [
    { id: "D1", supply: copper(2, "350 kcmil") },
    { id: "D2", supply: copper(3, "600 kcmil") },
    { id: "D3", supply: copper(1, "3/0 AWG") },
  ],
  conductor,
  electrodes,
};
const systems: DerivedQuestion = {
  code,
  system: "separately-derived",
  systems: [
    { id: "T1", supply: copper(1, "3/0 AWG") },
    { id: "T2", supply: copper(1, "500 kcmil") },
  ],
  conductor,
  electrodes,
};
const sizesIn = (input: EnclosureQuestion | DerivedQuestion) =>
  arrangementsOf(groundingElectrodeConductor, input).arrangements.map(({ id, conductors }) => [
    id,
    ...conductors.map(({ subject, result: { outcome } }) => [
      subject,
      "size" in outcome ? outcome.size : outcome.kind,
    ]),
  ]);

describe("several enclosures of a service", () => {
  it("have a common conductor with taps, individual conductors, or one place", () => {
    expect(sizesIn(service)).toEqual([
      [
        "common-electrode-conductor",
        ["common", "3/0 AWG"],
        ["D1", "2/0 AWG"],
        ["D2", "3/0 AWG"],
        ["D3", "4 AWG"],
      ],
      ["individual-electrode-conductors", ["D1", "2/0 AWG"], ["D2", "3/0 AWG"], ["D3", "4 AWG"]],
      ["electrode-conductor-at-one-place", ["supply side", "3/0 AWG"]],
    ]);
  });

  it("are limited by their electrodes alike", () => {
    const rods = { ...service, electrodes: [{ kind: "rod" }] } as const;
    expect(sizesIn(rods).map(([, ...sized]) => sized.map((one) => one[1]))).toEqual([
      ["6 AWG", "6 AWG", "6 AWG", "6 AWG"],
      ["6 AWG", "6 AWG", "6 AWG"],
      ["6 AWG"],
    ]);
  });

  it.each(editionYears)("cite the paragraph of each way in %s", (year) => {
    const { arrangements } = arrangementsOf(groundingElectrodeConductor, { ...service, code: { year } });
    const numbered = year === "2008" ? ["", "(2)", ""] : ["(1)", "(2)", "(3)"];
    expect(arrangements.map(({ citation }) => citation.section)).toEqual(
      numbered.map((n) => `250.64(D)${n}`),
    );
    expect(arrangements.every(({ status }) => status === "permitted")).toBe(true);
  });

  it("connect where each way says", () => {
    const wireway = { id: "W1", supply: copper(2, "600 kcmil") };
    const { arrangements } = arrangementsOf(groundingElectrodeConductor, { ...service, wireway });
    expect(arrangements.map(({ connections }) => connections.map(({ at, note }) => [at, note]))).toEqual([
      [[["D1", "D2", "D3"], "tap-into-each-enclosure"]],
      [[["D1", "D2", "D3"], "from-each-enclosure"]],
      [[["W1"], "at-one-place-ahead"]],
    ]);
    expect(arrangements[2]?.conductors[0]).toMatchObject({
      id: "grounding-electrode-conductor W1",
      subject: "W1",
      result: { requiredArea: 167800, steps: [{ area: 1200000 }, {}, {}] },
    });
  });

  it("are connected at no named place where no wireway is named", () => {
    const [, , onePlace] = arrangementsOf(groundingElectrodeConductor, service).arrangements;
    expect(onePlace?.connections.map(({ at }) => at)).toEqual([[]]);
  });

  it("count unlike phases by the sum that each way names", () => {
    const big = { size: "500 kcmil", material: "copper" } as const;
    const small = { size: "250 kcmil", material: "copper" } as const;
    const enclosures = [
      { id: "D1", supply: { sets: [{ count: 1, phases: [big, small, small] }] } },
      { id: "D2", supply: { sets: [{ count: 1, phases: [small, big, small] }] } },
    ];
    const areas = (more: Partial<EnclosureQuestion> = {}) =>
      arrangementsOf(groundingElectrodeConductor, { ...service, enclosures, ...more })
        .arrangements.map(({ conductors }) => conductors[0]?.result.steps[0])
        .map((step) => (step?.kind === "sum" ? step.area : null));
    expect(areas()).toEqual([1000000, 500000, 750000]);
    expect(areas({ fromDrop: false })).toEqual([1000000, 500000, 750000]);
    expect(areas({ fromDrop: true })).toEqual([750000, 500000, 750000]);
  });

  it("say in what the ways differ, and how much metal each takes", () => {
    const { differences, arrangements } = arrangementsOf(groundingElectrodeConductor, service);
    expect(differences).toEqual(["sizes", "total-metal", "grounding-electrode-conductor"]);
    const [common, individual, onePlace] = arrangements.map(({ totalArea }) => totalArea);
    expect(individual).toBe(133100 + 167800 + 41740);
    expect(common).toBe((individual ?? 0) + 167800);
    expect(onePlace).toBe(167800);
  });

  it("of a building on a feeder carry a caution where the edition speaks of services", () => {
    const cautioned = (year: EditionYear) =>
      arrangementsOf(groundingElectrodeConductor, {
        ...service,
        system: "building",
        code: { year },
      }).arrangements.map((one) =>
        one.conductors.flatMap(({ result }) => result.cautions.map((caution) => caution.code)),
      );
    expect(cautioned("2011")).toEqual([Array(4).fill("common-conductor-of-services-only"), [], []]);
    expect(cautioned("2017")).toEqual([[], [], []]);
  });

  it("are one way where there is one enclosure", () => {
    const alone = { ...service, enclosures: service.enclosures.slice(0, 1) };
    expect(sizesIn(alone)).toEqual([["individual-electrode-conductors", ["D1", "2/0 AWG"]]]);
  });
});

describe("several separately derived systems", () => {
  it("have a common conductor of a fixed size with taps, or individual conductors", () => {
    expect(sizesIn(systems)).toEqual([
      ["common-electrode-conductor", ["common", "3/0 AWG"], ["T1", "4 AWG"], ["T2", "1/0 AWG"]],
      ["individual-electrode-conductors", ["T1", "4 AWG"], ["T2", "1/0 AWG"]],
    ]);
    const { arrangements } = arrangementsOf(groundingElectrodeConductor, systems);
    expect(arrangements.map(({ citation }) => citation.section)).toEqual(["250.30(A)(6)", "250.30(A)(5)"]);
    expect(arrangements[0]?.connections.map(({ status, at, note }) => [status, at, note])).toEqual([
      ["required", ["T1", "T2"], "at-the-jumper"],
      ["permitted", [], "frame-may-serve-as-common"],
    ]);
    expect(arrangements[1]?.connections.map(({ at, note }) => [at, note])).toEqual([
      [["T1", "T2"], "at-the-jumper"],
    ]);
    expect(arrangements[0]?.conductors.map(({ id }) => id)).toEqual([
      "grounding-electrode-conductor common",
      "grounding-electrode-tap T1",
      "grounding-electrode-tap T2",
    ]);
  });

  it("are limited by their electrodes since 2020", () => {
    const rods = (year: EditionYear) =>
      sizesIn({ ...systems, code: { year }, electrodes: [{ kind: "rod" }] })[0];
    expect(rods("2017")).toEqual([
      "common-electrode-conductor",
      ["common", "3/0 AWG"],
      ["T1", "6 AWG"],
      ["T2", "6 AWG"],
    ]);
    expect(rods("2020")).toEqual([
      "common-electrode-conductor",
      ["common", "6 AWG"],
      ["T1", "6 AWG"],
      ["T2", "6 AWG"],
    ]);
  });

  it("may have unlike phases, for they are never added", () => {
    const one = { size: "3/0 AWG", material: "copper" } as const;
    const two = [
      { id: "T1", supply: { sets: [{ count: 1, phases: [one, one, one] }] } },
      { id: "T2", supply: { sets: [{ count: 1, phases: [one, one] }] } },
    ];
    expect(sizesIn({ ...systems, systems: two })).toHaveLength(2);
    expect(() => sizesIn({ ...service, enclosures: two })).toThrow(/same number of phases/);
  });

  it("are one way where there is one system", () => {
    expect(sizesIn({ ...systems, systems: systems.systems.slice(1) })).toEqual([
      ["individual-electrode-conductors", ["T2", "1/0 AWG"]],
    ]);
  });
});

describe("as text", () => {
  it("names every way and place, and says how it is connected", () => {
    const text = render(arrangementsDocument(arrangementsOf(groundingElectrodeConductor, service)), {
      as: "text",
      width: 400,
    });
    const rowOf = (start: string) =>
      text
        .split("\n")
        .find((line) => line.startsWith(start))
        ?.split(/ {2,}/);
    expect(rowOf("conductor ")).toEqual([
      "conductor",
      "A common electrode conductor with taps",
      "An electrode conductor from each",
      "One electrode conductor on the supply side",
    ]);
    expect(rowOf("section ")).toEqual(["section", "250.64(D)(1)", "250.64(D)(2)", "250.64(D)(3)"]);
    expect(rowOf("grounding electrode tap D3")).toEqual([
      "grounding electrode tap D3",
      "4 AWG Cu",
      "none",
      "none",
    ]);
    expect(text).toContain("a tap runs into every enclosure");
  });
});

describe("bad input", () => {
  it.each([
    [{ ...service, system: "panel" }, ["system: unknown-value"]],
    [{ ...service, enclosures: [] }, ["enclosures: empty-list"]],
    [{ ...service, systems: systems.systems }, ["systems: unknown-key"]],
    [{ ...systems, enclosures: service.enclosures }, ["enclosures: unknown-key"]],
    [{ ...systems, fromDrop: true }, ["fromDrop: unknown-key"]],
    [
      { ...service, electrodes: [], conductor: {} },
      ["conductor.material: missing", "electrodes: empty-list"],
    ],
    [{ ...service, wireway: { id: "D2", supply: copper(1, "3/0 AWG") } }, ["wireway.id: duplicate-id"]],
    [
      { ...systems, systems: [...systems.systems, ...systems.systems] },
      ["systems[2].id: duplicate-id", "systems[3].id: duplicate-id"],
    ],
    [undefined, [": missing"]],
  ])("%#", (input, issues) => {
    let found: unknown;
    try {
      arrangementsOf(groundingElectrodeConductor, input as never);
    } catch (error) {
      if (error instanceof InputError) found = error.issues.map((one) => `${one.path}: ${one.code}`);
    }
    expect(found).toEqual(issues);
  });

  it("refuses conductors from the drop at a building", () => {
    expect(() =>
      arrangementsOf(groundingElectrodeConductor, { ...service, system: "building", fromDrop: true }),
    ).toThrow(InputError);
  });

  it("does not touch its input, and shares nothing with it", () => {
    const before = structuredClone(service);
    const result = arrangementsOf(groundingElectrodeConductor, service);
    expect(service).toEqual(before);
    expect(JSON.parse(JSON.stringify(result))).toEqual(result);
    expect(
      arrangementsOf(mainBondingJumper, { code, enclosures: service.enclosures, conductor }).edition,
    ).toBe(result.edition);
  });
});
