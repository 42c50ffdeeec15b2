import { metalMass } from "bondmil";
import { describe, expect, it } from "vitest";
import { type SupplyCandidatesQuestion, supplyCandidates } from "../../src/candidates/supply-candidates.js";
import { InputError } from "../../src/input/input-error.js";

const service: SupplyCandidatesQuestion = {
  code: { year: "2023" },
  system: { kind: "service", ungrounded: 3, grounded: { currentCarrying: false } },
  load: { continuous: 0, other: 250 },
  conductor: { insulation: "THWN-2", materials: ["copper"] },
  place: { location: "dry" },
  limits: { mostSets: 2 },
  bonding: { material: "copper" },
};

const feeder: SupplyCandidatesQuestion = {
  ...service,
  system: { kind: "feeder", ungrounded: 3, grounded: { currentCarrying: false } },
  load: { continuous: 0, other: 800 },
  limits: { mostSets: 4 },
  raceways: ["electrical-metallic-tubing", "pvc-schedule-40"],
};

function smallest(question: SupplyCandidatesQuestion): readonly string[] {
  const { candidates } = supplyCandidates(question);
  return candidates.filter((one) => one.smallestSize).map((one) => `${one.sets} x ${one.size}`);
}

function issuesOf(question: unknown): readonly string[] {
  try {
    supplyCandidates(question as SupplyCandidatesQuestion);
  } catch (error) {
    if (error instanceof InputError) return error.issues.map(({ code, path }) => `${code} ${path}`);
    throw error;
  }
  return [];
}

describe("the candidates for a supply", () => {
  it("have parallel sets start at 1/0 AWG, and keep them where a smaller share would do", () => {
    expect(smallest(service)).toEqual(["1 x 250 kcmil", "2 x 1/0 AWG"]);
  });

  it("take the next standard rating through 800 A and not above, nor for taps and secondary conductors", () => {
    // 2 x 500 kcmil carry 760 A: a device of 800 A may protect them (240.4(B)); 3 x 400 kcmil carry 1005 A.
    expect(smallest(feeder)).not.toContain("2 x 500 kcmil");
    const behindItsDevice = { ...feeder, load: { continuous: 0, other: 760 }, device: 800 };
    expect(smallest(behindItsDevice)).toContain("2 x 500 kcmil");
    expect(smallest({ ...behindItsDevice, protection: "at-end", feederDevice: 2000 })).not.toContain(
      "2 x 500 kcmil",
    );
    const above = { ...feeder, load: { continuous: 0, other: 1000 }, device: 1200, limits: { mostSets: 3 } };
    expect(smallest(above)).toContain("3 x 600 kcmil");
    expect(smallest(above)).not.toContain("3 x 500 kcmil");
  });

  it("keep to what may protect a small conductor", () => {
    const of = (other: number) =>
      smallest({
        ...service,
        system: { kind: "feeder", ungrounded: 2 },
        load: { continuous: 0, other },
        limits: { mostSets: 1 },
      });
    expect([15, 16, 20, 21, 30, 31].map((amperes) => of(amperes)[0])).toEqual([
      "1 x 14 AWG",
      "1 x 12 AWG",
      "1 x 12 AWG",
      "1 x 10 AWG",
      "1 x 10 AWG",
      "1 x 8 AWG",
    ]);
  });

  it("count continuous load at 125 percent before correction, and as it is in its place", () => {
    const { requiredBefore, requiredInPlace, device } = supplyCandidates({
      ...service,
      load: { continuous: 200, other: 0 },
    });
    expect({ requiredBefore, requiredInPlace, device }).toEqual({
      requiredBefore: 250,
      requiredInPlace: 200,
      device: 250,
    });
  });

  it("are adjusted for the sets that share a raceway", () => {
    const { candidates } = supplyCandidates({
      ...feeder,
      limits: { mostSets: 4, mostSetsInRaceway: 2 },
      load: { continuous: 0, other: 700 },
    });
    const pairs = candidates.filter((one) => one.sets === 4 && one.setsInRaceway === 2 && one.smallestSize);
    // Six current-carrying conductors: 80 percent of the 90 C column; 3/0 AWG has 225 A, so 180 A each, below its 200 A at 75 C.
    expect(pairs[0]).toMatchObject({
      size: "3/0 AWG",
      raceways: { count: 2 },
      ampacity: { each: 180, limitedBy: "insulation", terminations: 75, nextRating: false },
    });
  });

  it("cause an equipment grounding conductor that grows with conductors beyond the smallest", () => {
    const { candidates } = supplyCandidates({ ...feeder, raceways: ["pvc-schedule-40"] });
    const threes = candidates.filter((one) => one.sets === 3);
    const areas = threes.map(
      ({ conductors }) =>
        conductors.find(({ role }) => role === "equipment-grounding-conductor")?.requiredArea,
    );
    // 3 x 300 kcmil are the smallest for 800 A; 1/0 AWG is the row of 800 A, in proportion above (250.122(B)).
    expect(threes.map(({ size }) => size).slice(0, 2)).toEqual(["300 kcmil", "350 kcmil"]);
    expect(areas.slice(0, 2)).toEqual([105_600, 123_200]);
  });

  it("fill the smallest trade size with all that runs in it", () => {
    const { candidates } = supplyCandidates({ ...feeder, raceways: ["pvc-schedule-40"] });
    const [first] = candidates.filter((one) => one.sets === 3);
    // Four 300 kcmil THWN-2 of 0.4608 in2 and a bare stranded 1/0 AWG of 0.109 in2: 1.9522 in2, above the 1.7 or so of trade size 2-1/2.
    expect(first?.raceways).toEqual({ kind: "pvc-schedule-40", count: 3, tradeSize: "3" });
    expect(first?.terminations).toBe(2 * 3 * 5);
  });

  it("weigh what runs in all raceways, each metal apart", () => {
    const pounds = (conductors: Parameters<typeof metalMass>[0]["conductors"]) =>
      metalMass({ conductors, feet: 1000 });
    const plastic = { ...feeder, raceways: ["pvc-schedule-40"] } as const;
    const ofThree = (question: SupplyCandidatesQuestion) =>
      supplyCandidates(question).candidates.find((one) => one.sets === 3 && one.smallestSize);
    const wires = { count: 12, size: "300 kcmil", material: "copper" } as const;
    const grounding = { count: 3, size: "1/0 AWG", material: "copper" } as const;
    const found = ofThree(plastic);
    expect(found?.grounded).toEqual({ size: "300 kcmil", count: 3 });
    expect(found?.mass.copper).toBeCloseTo(pounds([wires, grounding]).copper, 6);
    expect(found?.mass.aluminum).toBe(0);
    // 800 A require 3/0 AWG aluminum.
    const other = ofThree({ ...plastic, bonding: { material: "aluminum" } });
    expect(other?.mass.copper).toBeCloseTo(pounds([wires]).copper, 6);
    const aluminum = { count: 3, size: "3/0 AWG", material: "aluminum" } as const;
    expect(other?.mass.aluminum).toBeCloseTo(pounds([aluminum]).aluminum, 6);
  });

  it("cause the jumpers of their system", () => {
    const rolesOf = (kind: "service" | "separately-derived", grounded: boolean) =>
      supplyCandidates({
        ...service,
        system: { kind, ungrounded: 3, ...(grounded && { grounded: { currentCarrying: false } }) },
      }).candidates[0]?.conductors.map(({ role }) => role);
    expect(rolesOf("service", true)).toEqual([
      "main-bonding-jumper",
      "grounding-electrode-conductor",
      "grounded-conductor",
    ]);
    expect(rolesOf("service", false)).toEqual(["grounding-electrode-conductor"]);
    expect(rolesOf("separately-derived", true)).toEqual([
      "system-bonding-jumper",
      "grounding-electrode-conductor",
      "grounded-conductor",
      "supply-side-bonding-jumper",
    ]);
  });

  it("have at least the ampacity that is asked", () => {
    // 250 kcmil carries 255 A at 75 C.
    const within = { ...service, limits: { mostSets: 1 } };
    expect(smallest({ ...within, leastAmpacity: 255 })).toEqual(["1 x 250 kcmil"]);
    expect(smallest({ ...within, leastAmpacity: 256 })).toEqual(["1 x 300 kcmil"]);
  });

  it("have grounded conductors of at least 1/0 AWG where these are in parallel raceways", () => {
    // Table 250.102(C)(1) has 6 AWG for 1/0 AWG, and 50 A require less.
    const system = { ...service.system, grounded: { currentCarrying: false, loadAmperes: 50 } };
    const { candidates } = supplyCandidates({ ...service, system });
    expect(candidates.find((one) => one.sets === 2)).toMatchObject({
      size: "1/0 AWG",
      grounded: { size: "1/0 AWG", count: 2 },
    });
  });

  it("name the reading on jumpers of several raceways, where there are several", () => {
    const readingsOf = (mostSets: number) =>
      supplyCandidates({
        ...service,
        code: { year: "2011" },
        system: { kind: "separately-derived", ungrounded: 3 },
        load: { continuous: 0, other: 250 },
        raceways: ["pvc-schedule-40"],
        limits: { mostSets },
      }).readings;
    expect(readingsOf(1)).toEqual([]);
    expect(readingsOf(2)).toEqual(["jumper-per-raceway-in-2011"]);
  });

  it("share raceways only where each holds as many sets", () => {
    const { candidates } = supplyCandidates({ ...feeder, limits: { mostSets: 4, mostSetsInRaceway: 3 } });
    const pairs = new Set(
      candidates.map(({ sets, setsInRaceway }) => `${sets} sets, ${setsInRaceway} in each`),
    );
    for (const [sets, share] of [
      [3, 2],
      [4, 3],
    ])
      expect(pairs).not.toContain(`${sets} sets, ${share} in each`);
    for (const [sets, share] of [
      [3, 1],
      [3, 3],
      [4, 2],
    ])
      expect(pairs).toContain(`${sets} sets, ${share} in each`);
  });

  it("say whether the device was given, and take a load of which half is continuous", () => {
    expect(supplyCandidates({ ...service, device: 300 })).toMatchObject({ device: 300, deviceGiven: true });
    // 125 percent of 100 A and 100 A.
    const half = { ...service, load: { continuous: 100, other: 100 } };
    expect(supplyCandidates(half)).toMatchObject({ device: 225, deviceGiven: false });
    expect(issuesOf({ ...half, device: 200 })).toEqual(["out-of-range device"]);
    const refused = (listedForAll: boolean) => () =>
      supplyCandidates({ ...half, load: { ...half.load, listedForAll }, device: 175 });
    expect(refused(false)).toThrow("at least 225 A: continuous load at 125 percent and all other");
    expect(refused(true)).toThrow("at least 200 A: continuous load and all other");
  });

  it("in fewer raceways beat the same conductors in more", () => {
    const { candidates } = supplyCandidates({
      ...feeder,
      system: { kind: "feeder", ungrounded: 3 },
      load: { continuous: 0, other: 700 },
      raceways: ["electrical-metallic-tubing"],
      bonding: { material: "copper", metalRaceway: "serves" },
      conductor: { ...feeder.conductor, smallest: "600 kcmil", largest: "600 kcmil" },
      limits: { mostSets: 2, mostSetsInRaceway: 2 },
    });
    const [one, two] = candidates;
    expect(candidates.map(({ raceways, unbeaten }) => [raceways?.count, unbeaten]).sort()).toEqual([
      [1, true],
      [2, false],
    ]);
    expect(one?.mass).toEqual(two?.mass);
    expect(one?.terminations).toBe(two?.terminations);
  });

  it("mark the ones that no other beats, and no other", () => {
    const conductor = { insulation: "XHHW-2", materials: ["copper", "aluminum"] } as const;
    const { candidates } = supplyCandidates({ ...feeder, conductor, bonding: { material: "aluminum" } });
    const cost = (one: (typeof candidates)[number]) => [
      one.mass.copper,
      one.mass.aluminum,
      one.terminations,
      one.raceways?.count ?? 0,
    ];
    for (const one of candidates) {
      const beaten = candidates.some((other) => {
        const [mine, theirs] = [cost(one), cost(other)];
        return (
          theirs.every((value, at) => value <= (mine[at] ?? 0)) &&
          theirs.some((value, at) => value < (mine[at] ?? 0))
        );
      });
      expect(one.unbeaten).toBe(!beaten);
    }
    expect(candidates.some((one) => one.unbeaten)).toBe(true);
    expect(candidates.every((one) => one.unbeaten)).toBe(false);
  });

  it("pass amendments and readings to the roles", () => {
    const citation = { jurisdiction: "Example County", section: "1" };
    const code = {
      year: "2023" as const,
      amendments: [
        {
          kind: "floor" as const,
          role: "main-bonding-jumper" as const,
          copper: "3/0 AWG" as const,
          citation,
        },
      ],
    };
    const [plain, amended] = [service, { ...service, code }].map(
      (question) => supplyCandidates(question).candidates[0]?.conductors[0],
    );
    expect(plain).toMatchObject({ role: "main-bonding-jumper", outcome: { size: "2 AWG" } });
    expect(amended).toMatchObject({ role: "main-bonding-jumper", outcome: { size: "3/0 AWG" } });
  });

  it("name the standard ratings next to a device that has none", () => {
    const { neighbors, cautions } = supplyCandidates({ ...service, device: 260 });
    expect(neighbors).toEqual([250, 300]);
    expect(cautions.map(({ code }) => code)).toContain("rating-not-standard");
    expect(supplyCandidates({ ...service, device: 300 }).neighbors).toEqual([]);
  });

  it("leave out sizes of which the tables have no area, and say so", () => {
    const thwn = supplyCandidates({ ...feeder, limits: { mostSets: 2 } });
    expect(thwn.cautions.map(({ code }) => code)).toContain("sizes-without-area");
    expect(thwn.candidates.map(({ size }) => size)).not.toContain("1250 kcmil");
    const listed = { ...feeder, conductor: { ...feeder.conductor, largest: "1000 kcmil" as const } };
    expect(supplyCandidates(listed).cautions.map(({ code }) => code)).not.toContain("sizes-without-area");
    const bare = supplyCandidates({ ...feeder, raceways: undefined as never });
    expect(bare.candidates.map(({ size }) => size)).toContain("1250 kcmil");
  });

  it("have no wire where a metal raceway serves, and one in plastic", () => {
    const { candidates } = supplyCandidates({
      ...feeder,
      bonding: { material: "copper", metalRaceway: "serves" },
    });
    const roles = (kind: string) =>
      candidates.find(({ raceways }) => raceways?.kind === kind)?.conductors.map(({ role }) => role);
    expect(roles("electrical-metallic-tubing")).toEqual(["grounded-conductor"]);
    expect(roles("pvc-schedule-40")).toEqual(["grounded-conductor", "equipment-grounding-conductor"]);
  });

  it("have no supply-side jumper where a metal raceway serves behind a transformer", () => {
    const { candidates } = supplyCandidates({
      ...feeder,
      system: { kind: "separately-derived", ungrounded: 3, grounded: { currentCarrying: false } },
      bonding: { material: "copper", metalRaceway: "serves" },
    });
    const jumper = (kind: string) =>
      candidates
        .find(({ raceways }) => raceways?.kind === kind)
        ?.conductors.find(({ role }) => role === "supply-side-bonding-jumper")?.outcome.kind;
    expect([jumper("electrical-metallic-tubing"), jumper("pvc-schedule-40")]).toEqual([
      "not-required",
      "conductor",
    ]);
  });

  it("stop at 10,000 and say how many there are", () => {
    const many = supplyCandidates({
      ...service,
      load: { continuous: 0, other: 100 },
      conductor: { insulation: "XHHW-2", materials: ["copper", "aluminum"] },
      limits: { mostSets: 40, mostSetsInRaceway: 4 },
      raceways: [
        "electrical-metallic-tubing",
        "rigid-metal",
        "intermediate-metal",
        "pvc-schedule-40",
        "pvc-schedule-80",
      ],
    });
    expect(many.candidates).toHaveLength(10_000);
    expect(many.more).toBe(many.total - 10_000);
    expect(many.more).toBeGreaterThan(0);
  });
});

describe("a question that cannot be answered", () => {
  it("is refused with the place", () => {
    expect(issuesOf({ ...service, load: { continuous: 0, other: 0 } })).toEqual(["not-positive load"]);
    expect(issuesOf({ ...service, load: { continuous: -1, other: 5 } })).toEqual([
      "not-positive load.continuous",
    ]);
    expect(issuesOf({ ...service, device: 200 })).toEqual(["out-of-range device"]);
    expect(issuesOf({ ...service, limits: { mostSets: 0 } })).toEqual(["not-positive limits.mostSets"]);
    expect(issuesOf({ ...service, load: { continuous: 0, other: 5000 } })).toEqual([
      "out-of-range limits.mostSets",
    ]);
    expect(issuesOf({ ...service, load: { continuous: 0, other: 7000 } })).toEqual(["out-of-range load"]);
    expect(
      issuesOf({
        ...service,
        place: { location: "wet" },
        conductor: { ...service.conductor, insulation: "THHN" },
      }),
    ).toEqual(["unknown-value conductor.insulation"]);
    expect(issuesOf({ ...service, place: { location: "dry", ambient: { celsius: 95 } } })).toEqual([
      "out-of-range place.ambient",
    ]);
    expect(issuesOf({ ...feeder, protection: "at-end" })).toEqual(["missing feederDevice"]);
    const turned = { ...service.conductor, smallest: "500 kcmil", largest: "250 kcmil" };
    expect(issuesOf({ ...service, conductor: turned })).toEqual(["out-of-range conductor.largest"]);
    expect(
      issuesOf({
        ...feeder,
        load: { continuous: 0, other: 4000 },
        limits: { mostSets: 12, mostSetsInRaceway: 12 },
        conductor: { insulation: "RHH", materials: ["copper"], smallest: "2000 kcmil" },
      }),
    ).toEqual(["out-of-range raceways"]);
  });

  it("names what the limits reach", () => {
    const much = { ...service, load: { continuous: 0, other: 5000 } };
    expect(() => supplyCandidates(much)).toThrow("2 sets of up to 2000 kcmil reach 1330 A");
    const conductor = {
      insulation: "THWN-2",
      materials: ["copper", "aluminum"],
      largest: "500 kcmil",
    } as const;
    expect(() => supplyCandidates({ ...much, conductor })).toThrow("2 sets of up to 500 kcmil reach 760 A");
  });
});
