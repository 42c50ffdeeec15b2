import {
  ampacityOf,
  areaOf,
  candidatesOf,
  checkOf,
  deviceFor,
  editionYears,
  equipmentGroundingConductor,
  InputError,
  type Installation,
  racewayFill,
  type SupplyCandidate,
  type SupplyCandidatesQuestion,
  scheduleOf,
  size,
  standardSizes,
  supplyCandidates,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";

const kinds = [
  "electrical-metallic-tubing",
  "intermediate-metal",
  "rigid-metal",
  "pvc-schedule-40",
  "pvc-schedule-80",
] as const;

const questions = fc.record({
  code: fc.record({ year: fc.constantFrom(...editionYears) }),
  system: fc.record({
    kind: fc.constantFrom("service" as const, "separately-derived" as const, "feeder" as const),
    ungrounded: fc.constantFrom(2 as const, 3 as const),
    grounded: fc.record({ currentCarrying: fc.boolean() }),
  }),
  load: fc.record({ continuous: fc.integer({ min: 0, max: 300 }), other: fc.integer({ min: 10, max: 900 }) }),
  conductor: fc.record({
    insulation: fc.constantFrom("THWN-2" as const, "XHHW-2" as const, "THW" as const),
    materials: fc.constant(["copper", "aluminum"] as const),
  }),
  place: fc.record({
    location: fc.constantFrom("dry" as const, "wet" as const),
    ambient: fc.record({ celsius: fc.integer({ min: 20, max: 48 }) }),
  }),
  limits: fc.record({
    mostSets: fc.integer({ min: 1, max: 4 }),
    mostSetsInRaceway: fc.integer({ min: 1, max: 2 }),
  }),
  raceways: fc.uniqueArray(fc.constantFrom(...kinds), { minLength: 1, maxLength: 2 }),
  bonding: fc.record({ material: fc.constantFrom("copper" as const, "aluminum" as const) }),
});

/** The candidates; none where the limits reach none, of which the refusal has tests of its own. */
function candidatesFor(question: SupplyCandidatesQuestion) {
  try {
    return supplyCandidates(question);
  } catch (error) {
    if (error instanceof InputError && error.issues[0]?.code === "out-of-range") return null;
    throw error;
  }
}

const few = { numRuns: 40 };

function some(candidates: readonly SupplyCandidate[]): readonly SupplyCandidate[] {
  const step = Math.max(1, Math.floor(candidates.length / 12));
  return candidates.filter((_, at) => at % step === 0);
}

describe("every candidate", () => {
  it("passes when its ampacity, its device and its raceway are asked for the other way round", () => {
    fc.assert(
      fc.property(questions, (question) => {
        const found = candidatesFor(question);
        if (found === null) return;
        const { edition, device, requiredBefore, requiredInPlace } = found;
        for (const one of some(found.candidates)) {
          const { size: named, material, sets, setsInRaceway, ampacity, raceways } = one;
          const perSet = question.system.ungrounded + (question.system.grounded.currentCarrying ? 1 : 0);
          const conductor = { size: named, material, insulation: question.conductor.insulation };
          const place = { ...question.place, currentCarrying: perSet * setsInRaceway };
          const terminations = { circuitAmperes: device };
          const { amperes } = ampacityOf({ edition, conductor, place, terminations });
          expect(ampacity.each).toBe(amperes);
          expect(ampacity.amperes).toBe(amperes * sets);
          const bare = ampacityOf({ edition, conductor, place: { location: place.location }, terminations });
          expect(bare.amperes * sets).toBeGreaterThanOrEqual(requiredBefore);
          expect(amperes * sets).toBeGreaterThanOrEqual(requiredInPlace);
          const answer = deviceFor({
            edition,
            conductors: { size: named, material, sets, amperes },
            serves: "service-or-feeder",
            device: "circuit-breaker",
            rating: device,
          });
          expect(answer.permitted).toBe(true);
          expect(ampacity.nextRating).toBe(device > amperes * sets);
          if (raceways === null) throw new Error("a kind was named");
          const wire = one.conductors.find(
            ({ role }) =>
              role === "equipment-grounding-conductor" ||
              (role === "supply-side-bonding-jumper" && question.system.kind === "separately-derived"),
          );
          const { insulation } = question.conductor;
          const filled = racewayFill({
            edition,
            raceway: raceways.kind,
            conductors: [
              { count: (question.system.ungrounded + 1) * setsInRaceway, size: named, insulation },
              ...(wire?.outcome.kind === "conductor"
                ? [{ count: 1, size: wire.outcome.size, bare: "stranded" as const }]
                : []),
            ],
          });
          expect(filled.tradeSize).toBe(raceways.tradeSize);
        }
      }),
      few,
    );
  });

  it("has the equipment grounding conductor that the role gives it", () => {
    fc.assert(
      fc.property(questions, (drawn) => {
        const question = { ...drawn, system: { ...drawn.system, kind: "feeder" as const } };
        const found = candidatesFor(question);
        if (found === null) return;
        for (const one of some(found.candidates)) {
          const smallest = found.candidates.find(
            (other) =>
              other.smallestSize &&
              other.material === one.material &&
              other.sets === one.sets &&
              other.setsInRaceway === one.setsInRaceway,
          );
          if (smallest === undefined) continue;
          const { outcome } = size(equipmentGroundingConductor, {
            code: question.code,
            conductor: question.bonding,
            circuits: [
              {
                device: { amperes: found.device },
                conductors: one.supply,
                increasedFrom: { conductors: smallest.supply, reason: "other" },
              },
            ],
          });
          expect(
            one.conductors.find(({ role }) => role === "equipment-grounding-conductor")?.outcome,
          ).toEqual(outcome);
        }
      }),
      few,
    );
  });
});

describe("the candidates", () => {
  /** What is lawful, size by size, by the questions that stand alone. */
  const lawful = (
    edition: (typeof editionYears)[number],
    rating: number,
    amperes: number,
    insulation: "THWN-2" | "THW",
  ): readonly string[] =>
    (["copper", "aluminum"] as const).flatMap((material) =>
      [1, 2, 3, 4].flatMap((sets) =>
        standardSizes.flatMap((named) => {
          if (sets > 1 && areaOf(named) < areaOf("1/0 AWG")) return [];
          const each = amperesOf(edition, named, material, insulation, rating);
          if (each === null || each * sets < amperes) return [];
          const { permitted } = deviceFor({
            edition,
            conductors: { size: named, material, sets, amperes: each },
            serves: "service-or-feeder",
            device: "circuit-breaker",
            rating,
          });
          return permitted === true ? [`${sets} x ${named} ${material}`] : [];
        }),
      ),
    );

  function amperesOf(
    edition: (typeof editionYears)[number],
    named: (typeof standardSizes)[number],
    material: "copper" | "aluminum",
    insulation: "THWN-2" | "THW",
    circuitAmperes: number,
  ): number | null {
    try {
      const conductor = { size: named, material, insulation };
      return ampacityOf({ edition, conductor, place: { location: "wet" }, terminations: { circuitAmperes } })
        .amperes;
    } catch (error) {
      if (error instanceof InputError) return null;
      throw error;
    }
  }

  it.each(editionYears)("are all that is lawful in %s, and nothing else", (edition) => {
    for (const insulation of ["THWN-2", "THW"] as const) {
      for (const [amperes, device] of [
        [12, 15],
        [20, 20],
        [28, 30],
        [95, 100],
        [101, 110],
        [250, 250],
        [360, 400],
        [760, 800],
        [800, 1000],
        [1200, 1200],
      ] as const) {
        const found = supplyCandidates({
          code: { year: edition },
          system: { kind: "feeder", ungrounded: 3 },
          load: { continuous: 0, other: amperes },
          device,
          conductor: { insulation, materials: ["copper", "aluminum"] },
          place: { location: "wet" },
          limits: { mostSets: 4 },
          bonding: { material: "copper" },
        });
        const named = found.candidates.map((one) => `${one.sets} x ${one.size} ${one.material}`);
        expect(named).toEqual(lawful(edition, device, amperes, insulation));
      }
    }
  });
});

describe("more load", () => {
  const sizesFor = (question: SupplyCandidatesQuestion): ReadonlyMap<string, number> =>
    new Map(
      (candidatesFor(question)?.candidates ?? [])
        .filter((one) => one.smallestSize)
        .map((one) => [`${one.material} ${one.sets} ${one.setsInRaceway}`, areaOf(one.size)]),
    );

  it("never has smaller conductors, within one column of the terminations", () => {
    fc.assert(
      fc.property(questions, fc.integer({ min: 1, max: 400 }), (drawn, more) => {
        const question = { ...drawn, raceways: undefined as never };
        const before = { ...question, terminations: 75 as const };
        const load = { ...drawn.load, other: drawn.load.other + more };
        const [less, larger] = [sizesFor(before), sizesFor({ ...before, load })];
        for (const [key, area] of larger) expect(area).toBeGreaterThanOrEqual(less.get(key) ?? 0);
      }),
      few,
    );
  });

  it("may have at the step above 100 A, where the column changes, and a caution says so", () => {
    const at = (other: number) =>
      supplyCandidates({
        code: { year: "2023" },
        system: { kind: "feeder", ungrounded: 3 },
        load: { continuous: 0, other },
        conductor: { insulation: "THWN-2", materials: ["copper"] },
        place: { location: "dry" },
        limits: { mostSets: 1 },
        bonding: { material: "copper" },
      });
    const [below, above] = [at(100), at(110)];
    expect([below.candidates[0]?.size, above.candidates[0]?.size]).toEqual(["1 AWG", "2 AWG"]);
    for (const found of [below, above])
      expect(found.cautions.map(({ code }) => code)).toContain("more-load-at-100-amperes");
  });
});

describe("an installation with a candidate in place of a load", () => {
  const barn = (supply: object, raceways: number): Installation =>
    ({
      format: 1,
      title: "Barn",
      code: { year: "2020" },
      materials: {
        bondingJumpers: "copper",
        groundedConductors: "copper",
        electrodeConductors: "copper",
        equipmentGrounding: "copper",
      },
      services: [
        {
          id: "S1",
          grounding: "solidly-grounded",
          connection: "three-phase-wye",
          utility: { id: "pole", outdoorTransformer: true },
          runs: [
            { id: "R1", from: "pole", to: "D1", supply, raceways: { count: raceways, kind: "nonmetallic" } },
          ],
          disconnects: [{ id: "D1", designation: "service-disconnect", amperes: 600 }],
          housing: "separate-enclosures",
          electrodes: [{ id: "E1", kind: "concrete-encased", from: "D1" }],
        },
      ],
    }) as unknown as Installation;
  const toChoose = {
    load: { continuous: 0, other: 500 },
    device: 600,
    conductor: { insulation: "XHHW-2", materials: ["copper", "aluminum"] },
    place: { location: "wet" },
    limits: { mostSets: 3 },
  };
  const [run] = candidatesOf(barn({ toChoose }, 1)).runs;
  const candidates = run?.candidates.candidates ?? [];

  it("has a schedule with the conductors that the candidate names, and no violation", () => {
    expect(candidates.length).toBeGreaterThan(20);
    for (const one of candidates) {
      const chosen = barn(one.supply, one.sets);
      const { conductors, violations } = scheduleOf(chosen);
      expect(violations).toEqual([]);
      for (const { role, outcome } of one.conductors) {
        const scheduled = conductors.find(({ result }) => result.role === role)?.result.outcome;
        if (role === "grounded-conductor" && one.material === "aluminum") continue;
        expect([role, scheduled]).toEqual([role, outcome]);
      }
      expect(checkOf(chosen).schedule.violations).toEqual([]);
    }
  });

  it("has none before one is chosen, and says what to do", () => {
    try {
      scheduleOf(barn({ toChoose }, 1));
      expect.unreachable();
    } catch (error) {
      expect((error as InputError).issues).toMatchObject([
        { code: "missing", path: "services[0].runs[0].supply.sets" },
      ]);
    }
  });
});
