import {
  type ArrangementComparison,
  type ArrangementsInput,
  arrangementsOf,
  endName,
  groundingElectrodeConductor,
  type Installation,
  mainBondingJumper,
  type Role,
  type Schedule,
  type ScheduledConductor,
  type Supply,
  scheduleOf,
  supplySideBondingJumper,
  systemBondingJumper,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { material, ofColumn, supplyOf, year } from "./arbitraries.js";

type Service = NonNullable<Installation["services"]>[number];
type Derived = NonNullable<Installation["derivedSystems"]>[number];
type One = ArrangementComparison["arrangements"][number];
type Run = Service["runs"][number];

/** Supplies that can be added, of few sets, so that an installation holds them all. */
const supplies = (most: number): fc.Arbitrary<readonly Supply[]> =>
  fc.array(
    fc
      .constantFrom(ofColumn("copper"), ofColumn("aluminum"), undefined)
      .chain((from) => supplyOf({ phases: 3, ...(from && { materials: from }) })),
    { minLength: 1, maxLength: most },
  );
const isModest = (all: readonly Supply[]): boolean =>
  all.flatMap(({ sets }) => sets).reduce((sum, { count }) => sum + count, 0) <= 100;
const places = (most: number, name: string) =>
  supplies(most)
    .filter(isModest)
    .map((list) => list.map((supply, i) => ({ id: `${name}${i + 1}`, supply })));

const code = fc.record({
  year,
  readings: fc.record(
    { "electrode-connection-with-several-jumpers": fc.constantFrom("at-each-jumper", "at-one-jumper") },
    { requiredKeys: [] },
  ),
});

function document(
  { year: edition, readings }: { readonly year: Installation["code"]["year"]; readonly readings: object },
  of: typeof material extends fc.Arbitrary<infer M> ? M : never,
  parts: Partial<Installation>,
): Installation {
  return {
    format: 1,
    title: "Law",
    code: { year: edition, readings },
    materials: {
      bondingJumpers: of,
      groundedConductors: "copper",
      electrodeConductors: of,
      equipmentGrounding: "copper",
    },
    ...parts,
  };
}

const run = (from: string, to: string, supply: Supply, more: Partial<Run> = {}): Run => ({
  id: `to ${to}`,
  from,
  to,
  supply: { sets: supply.sets },
  raceways: { count: 1, kind: "nonmetallic" },
  ...more,
});

/** What runs are called in the document is called like the place where they end in the question. */
const place = (id: string): string => id.replace(/^to /, "");

function told({ id, part, from, to, quantity, result, by }: ScheduledConductor) {
  return { id, part, from: endName(from), to: endName(to), quantity, result, by: by.map(place) };
}

/** Those of the schedule that a question is about. */
function inSchedule({ conductors }: Schedule, ...roles: readonly Role[]) {
  return conductors
    .filter(({ role, subject }) => roles.includes(role) && place(subject) === subject)
    .map(told);
}

const codesAt = (
  list: readonly { readonly code: string; readonly section: string | null; readonly at: unknown }[],
) =>
  list
    .filter((one) => one.code !== "conductors-below-rating")
    .map(
      ({ code: what, section, at }) =>
        `${what} ${section} ${[at]
          .flat()
          .map((id) => place(`${id}`))
          .join()}`,
    )
    .sort();

/** The same conductors, cautions and violations, with the same places and sections. */
function expectAlike(one: One | undefined, schedule: Schedule, ...roles: readonly Role[]): void {
  // That a box has no main bonding jumper is said of a drawing only: a question asks for the jumpers that are there.
  const asked = {
    ...schedule,
    conductors: schedule.conductors.filter(
      ({ role, subject, quantity }) =>
        role !== "main-bonding-jumper" || quantity > 0 || !subject.startsWith("W"),
    ),
  };
  expect(one?.conductors.map(told)).toEqual(inSchedule(asked, ...roles));
  expect(codesAt(one?.cautions ?? [])).toEqual(codesAt(schedule.cautions));
  // That a system has no electrode is said of a drawing only: a question about jumpers names none.
  const hasElectrodes = schedule.conductors.some(({ role }) => role === "grounding-electrode-conductor");
  const said = schedule.violations.filter(
    ({ code }) => hasElectrodes || code !== "electrode-conductor-missing",
  );
  expect(codesAt(one?.violations ?? [])).toEqual(codesAt(said));
}

const byId = ({ arrangements }: ArrangementComparison, id: One["id"]): One | undefined =>
  arrangements.find((one) => one.id === id);

/** A service that is called as the question calls it. */
function service(
  enclosures: readonly { readonly id: string; readonly supply: Supply }[],
  box: { readonly id: string; readonly supply: Supply } | undefined,
  more: Partial<Service> = {},
): Service {
  const start = box?.id ?? "utility";
  return {
    id: "service",
    grounding: "solidly-grounded",
    connection: "three-phase-wye",
    utility: { id: "utility", outdoorTransformer: false },
    boxes: box === undefined ? [] : [{ id: box.id, kind: "wireway", bondedBy: "jumper" }],
    runs: [
      ...(box === undefined ? [] : [run("utility", box.id, box.supply)]),
      ...enclosures.map(({ id, supply }) => run(start, id, supply)),
    ],
    disconnects: enclosures.map(({ id }) => ({ id, designation: "service-disconnect", amperes: 100 })),
    housing: "separate-enclosures",
    ...more,
  };
}

describe("a question without a document has the answer of the whole installation", () => {
  const services = fc.record({
    code,
    of: material,
    enclosures: places(8, "D"),
    wireway: fc.option(
      places(1, "W").map(([one]) => one),
      { nil: undefined },
    ),
  });

  it("about main bonding jumpers", () => {
    fc.assert(
      fc.property(services, ({ code: chosen, of, enclosures, wireway }) => {
        fc.pre(isModest([...enclosures, ...(wireway ? [wireway] : [])].map(({ supply }) => supply)));
        const found = arrangementsOf(mainBondingJumper, {
          code: chosen,
          enclosures,
          ...(wireway && { wireway }),
          conductor: { material: of },
        });
        const whole = (housing: Service["housing"]) =>
          scheduleOf(document(chosen, of, { services: [service(enclosures, wireway, { housing })] }));
        const roles = ["main-bonding-jumper", "supply-side-bonding-jumper"] as const;
        expectAlike(byId(found, "jumper-in-each-enclosure"), whole("separate-enclosures"), ...roles);
        if (enclosures.length > 1)
          expectAlike(byId(found, "one-jumper-in-listed-assembly"), whole("listed-assembly"), ...roles);
      }),
      { numRuns: 300 },
    );
  });

  it("about system bonding jumpers", () => {
    const systems = fc.record({ code, of: material, enclosures: places(4, "P"), outdoors: fc.boolean() });
    const ways = {
      disconnects: "jumper-in-each-enclosure",
      source: "jumper-at-source",
      "both-ends": "jumpers-at-source-and-disconnect",
    } as const;
    fc.assert(
      fc.property(systems, ({ code: chosen, of, enclosures, outdoors }) => {
        const found = arrangementsOf(systemBondingJumper, {
          code: chosen,
          source: { id: "T1", outdoors },
          enclosures,
          conductor: { material: of },
        });
        for (const jumperAt of ["disconnects", "source", "both-ends"] as const) {
          if (jumperAt === "both-ends" && enclosures.length > 1) continue;
          const system: Derived = {
            id: "system",
            source: { id: "T1", kind: "transformer", outdoors },
            grounding: "solidly-grounded",
            connection: "three-phase-wye",
            runs: enclosures.map(({ id, supply }) => run("T1", id, supply)),
            disconnects: enclosures.map(({ id }) => ({ id, amperes: 100 })),
            jumperAt,
          };
          const schedule = scheduleOf(document(chosen, of, { derivedSystems: [system] }));
          const one = byId(found, ways[jumperAt]);
          expectAlike(one, schedule, "system-bonding-jumper");
          // What is connected is what the schedule has, or says that it needs not have.
          const isThere = schedule.conductors.some(
            ({ role, quantity }) => role === "supply-side-bonding-jumper" && quantity > 0,
          );
          const jumper = one?.connections.find(({ kind }) => kind === "supply-side-bonding-jumper");
          expect(jumper?.status === "required").toBe(isThere);
          const isForbidden = schedule.violations.some(({ code }) => code === "jumper-not-permitted-here");
          expect(one?.status === "not-permitted").toBe(isForbidden);
        }
      }),
      { numRuns: 300 },
    );
  });

  it("about the jumpers of raceways that share a run evenly", () => {
    const raceways = fc.record({
      code,
      of: material,
      supply: supplyOf({ phases: 3 }).filter((one) => isModest([one, one, one, one])),
      count: fc.integer({ min: 1, max: 4 }),
      system: fc.constantFrom("service" as const, "separately-derived" as const),
    });
    fc.assert(
      fc.property(raceways, ({ code: chosen, of, supply, count, system }) => {
        const ids = Array.from({ length: count }, (_, i) => `raceway ${i + 1}`);
        const found = arrangementsOf(supplySideBondingJumper, {
          code: chosen,
          system,
          raceways: ids.map((id) => ({ id, supply })),
          conductor: { material: of },
        });
        const together = { sets: supply.sets.map((set) => ({ ...set, count: set.count * count })) };
        const kind = system === "service" ? "nonflexible-metal" : "nonmetallic";
        const sizes = (racewayJumpers: "per-raceway" | "common") => {
          const drawn = (from: string) =>
            run(from, "D1", together, { raceways: { count, kind }, racewayJumpers });
          const schedule = scheduleOf(
            document(
              chosen,
              of,
              system === "service"
                ? { services: [service([{ id: "D1", supply }], undefined, { runs: [drawn("utility")] })] }
                : {
                    derivedSystems: [
                      {
                        id: "system",
                        source: { id: "T1", kind: "transformer", outdoors: false },
                        grounding: "solidly-grounded",
                        connection: "three-phase-wye",
                        runs: [drawn("T1")],
                        disconnects: [{ id: "D1", amperes: 100 }],
                        jumperAt: "source",
                      },
                    ],
                  },
            ),
          );
          return schedule.conductors
            .filter(({ role }) => role === "supply-side-bonding-jumper")
            .map(({ quantity, result }) => [quantity, result.outcome, result.requiredArea, result.citation]);
        };
        const asked = (one: One | undefined) =>
          one?.conductors.map(({ result }) => [result.outcome, result.requiredArea, result.citation]);
        const [each] = sizes("per-raceway");
        const times = count === 1 ? 1 : (each?.[0] as number);
        expect(times === 0 || times % count === 0).toBe(true);
        expect(asked(byId(found, "jumper-in-each-raceway"))).toEqual(ids.map(() => each?.slice(1)));
        if (count > 1) {
          expect(asked(byId(found, "one-common-raceway-jumper"))).toEqual(
            sizes("common").map((one) => one.slice(1)),
          );
        }
      }),
      { numRuns: 300 },
    );
  });

  it("about electrode conductors of several enclosures", () => {
    const kinds = fc.constantFrom(
      "rod" as const,
      "metal-water-pipe" as const,
      "concrete-encased" as const,
      "structural-metal" as const,
    );
    const asked = fc.record({
      code,
      of: material,
      enclosures: places(5, "D"),
      kind: kinds,
      fromDrop: fc.boolean(),
    });
    fc.assert(
      fc.property(asked, ({ code: chosen, of, enclosures, kind, fromDrop }) => {
        fc.pre(enclosures.length > 1);
        const sets = enclosures.flatMap(({ supply }) => supply.sets);
        const box = { id: "W1", supply: { sets } };
        fc.pre(isModest([box.supply, box.supply]));
        const input: ArrangementsInput<"grounding-electrode-conductor"> = {
          code: chosen,
          system: "service",
          enclosures,
          fromDrop,
          conductor: { material: of },
          electrodes: [{ kind }],
        };
        const found = arrangementsOf(groundingElectrodeConductor, input);
        const whole = (more: Partial<Service>, ahead: typeof box | undefined) =>
          scheduleOf(document(chosen, of, { services: [service(enclosures, ahead, more)] }))
            .conductors.filter(({ role }) => role === "grounding-electrode-conductor")
            .map(({ part, from, result }) => [part, endName(from), result]);
        const ofQuestion = (id: One["id"]) =>
          byId(found, id)?.conductors.map(({ part, from, result }) => [part, endName(from), result]);
        expect(ofQuestion("common-electrode-conductor")).toEqual(
          whole(
            { commonElectrodeConductor: { id: "common" }, electrodes: [{ id: "E1", kind, from: "common" }] },
            fromDrop ? undefined : box,
          ),
        );
        expect(ofQuestion("individual-electrode-conductors")).toEqual(
          whole(
            { electrodes: enclosures.map(({ id }) => ({ id: `E ${id}`, kind, from: id })) },
            fromDrop ? undefined : box,
          ),
        );
        expect(ofQuestion("electrode-conductor-at-one-place")?.map(([, , result]) => result)).toEqual(
          whole({ electrodes: [{ id: "E1", kind, from: "W1" }] }, box).map(([, , result]) => result),
        );
      }),
      { numRuns: 300 },
    );
  });

  it("about electrode conductors of several derived systems", () => {
    const asked = fc.record({ code, of: material, systems: places(4, "T") });
    fc.assert(
      fc.property(asked, ({ code: chosen, of, systems }) => {
        fc.pre(systems.length > 1);
        const found = arrangementsOf(groundingElectrodeConductor, {
          code: chosen,
          system: "separately-derived",
          systems,
          conductor: { material: of },
          electrodes: [{ kind: "structural-metal" }],
        });
        const whole = (isCommon: boolean) =>
          scheduleOf(
            document(chosen, of, {
              derivedSystems: systems.map(({ id, supply }, i): Derived => {
                const from = isCommon ? "common" : id;
                const electrode = { id: `E ${id}`, kind: "structural-metal", from } as const;
                return {
                  id: `system ${id}`,
                  source: { id, kind: "transformer", outdoors: false },
                  grounding: "solidly-grounded",
                  connection: "three-phase-wye",
                  runs: [run(id, `P ${id}`, supply)],
                  disconnects: [{ id: `P ${id}`, amperes: 100 }],
                  jumperAt: "source",
                  electrodes: isCommon && i > 0 ? [] : [electrode],
                  ...(isCommon && { commonElectrodeConductor: { id: "common" } }),
                };
              }),
            }),
          )
            .conductors.filter(({ role }) => role === "grounding-electrode-conductor")
            .map(({ part, from, result }) => [part, endName(from), result]);
        const ofQuestion = (id: One["id"]) =>
          byId(found, id)?.conductors.map(({ part, from, result }) => [part, endName(from), result]);
        expect(ofQuestion("common-electrode-conductor")).toEqual(whole(true));
        expect(ofQuestion("individual-electrode-conductors")).toEqual(whole(false));
      }),
      { numRuns: 300 },
    );
  });
});
