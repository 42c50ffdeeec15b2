import { drawingOf, type EditionYear, type Installation, scheduleOf } from "bondmil";
import { describe, expect, it } from "vitest";
import { checkRest, findings, piece } from "./found.js";
import { derived, installation, refused, service, setsOf } from "./installations.js";

type Circuit = NonNullable<Installation["circuits"]>[number];
type Building = NonNullable<Installation["buildings"]>[number];
type Jumper = NonNullable<Installation["loadSideJumpers"]>[number];

const feeder = (parts: Partial<Circuit> = {}): Circuit => ({
  id: "F1",
  from: "D1",
  to: "barn panel",
  device: { amperes: 200 },
  conductors: setsOf(1, "3/0 AWG"),
  wiring: "raceway",
  groundedConductor: {},
  ...parts,
});
const building = (parts: Partial<Building> = {}): Building => ({
  id: "B1",
  circuit: "F1",
  onSingleBranchCircuit: false,
  electrodes: [{ id: "BE", kind: "structural-metal", from: "B1" }],
  ...parts,
});
const kept = { equipmentGroundingConductor: false, continuousMetalPath: false, groundFaultProtection: false };
const barn = (circuit: Partial<Circuit>, parts: Partial<Building> = {}, year: EditionYear = "2020") =>
  installation({ services: [service()], circuits: [feeder(circuit)], buildings: [building(parts)] }, year);

function line(drawn: Installation, id: string) {
  const one = scheduleOf(drawn).conductors.find((conductor) => conductor.id === id);
  if (one === undefined) return undefined;
  const { outcome, citation } = one.result;
  const what = outcome.kind === "conductor" ? `${one.quantity} x ${outcome.size}` : outcome.kind;
  return [outcome.kind === "not-required" ? outcome.why : what, citation.section];
}

describe("the grounded conductor of a feeder", () => {
  it("is at least its equipment grounding conductor, and carries its load (215.2(A))", () => {
    expect(line(barn({}), "grounded-conductor F1")).toEqual(["1 x 6 AWG", "215.2(A)(2)"]);
    expect(line(barn({}, {}, "2008"), "grounded-conductor F1")).toEqual(["1 x 6 AWG", "215.2(A)(1)"]);
    const load = { amperes: 150, circuitAmperes: 200 };
    expect(line(barn({ groundedConductor: { load } }), "grounded-conductor F1")?.[0]).toBe("1 x 1/0 AWG");
    const { groundedConductor: _, ...without } = feeder();
    const none = installation({ services: [service()], circuits: [without] });
    expect(line(none, "grounded-conductor F1")).toBeUndefined();
  });

  it("has the minimum for parallel conductors in each of several raceways", () => {
    const parallel = { wiring: "parallel-raceways", raceways: 2, conductors: setsOf(2, "3/0 AWG") } as const;
    expect(line(barn({ ...parallel, device: { amperes: 400 } }), "grounded-conductor F1")?.[0]).toBe(
      "2 x 1/0 AWG",
    );
    expect(refused(barn({ ...parallel, conductors: setsOf(3, "3/0 AWG") }))).toEqual([
      ["unlike-raceways", "circuits[0].raceways"],
    ]);
  });

  it("of a corner-grounded system carries as much as the others", () => {
    const services = [service({ grounding: "grounded-phase", connection: "three-phase-delta" })];
    const drawn = installation({ services, circuits: [feeder()] });
    expect(line(drawn, "grounded-conductor F1")).toEqual(["1 x 3/0 AWG", "215.2(B)"]);
  });

  it("is refused without conductors, and where the system has none", () => {
    const { conductors: _, ...bare } = feeder();
    expect(refused(installation({ services: [service()], circuits: [bare] }))).toEqual([
      ["missing", "circuits[0].conductors"],
    ]);
    const services = [service({ grounding: "ungrounded", connection: "three-phase-delta" })];
    expect(refused(installation({ services, circuits: [feeder()] }))).toEqual([
      ["unknown-key", "circuits[0].groundedConductor"],
    ]);
  });

  it("says that an increase is not counted", () => {
    const increasedFrom = { conductors: setsOf(1, "1/0 AWG"), reason: "voltage-drop" } as const;
    const codes = (parts: Partial<Circuit>) => scheduleOf(barn(parts)).cautions.map(({ code }) => code);
    expect(codes({ increasedFrom })).toContain("feeder-increase-not-counted");
    expect(codes({})).not.toContain("feeder-increase-not-counted");
  });
});

describe("a building on a feeder", () => {
  it("keeps the grounded conductor apart (250.32(B))", () => {
    expect(line(barn({}), "main-bonding-jumper B1")).toEqual([
      "grounded-conductor-kept-apart",
      "250.32(B)(1)",
    ]);
  });

  it("that exists may keep it as the fault path, on three conditions", () => {
    const drawn = barn({}, { existingGroundedConductor: kept });
    expect(line(drawn, "equipment-grounding-conductor F1")).toEqual([
      "grounded-conductor-is-fault-path",
      "250.32(B)(1) Exception No. 1",
    ]);
    expect(line(drawn, "grounded-conductor F1")).toEqual(["1 x 6 AWG", "250.32(B)(1) Exception No. 1"]);
    expect(line(drawn, "main-bonding-jumper B1")).toBeUndefined();
    expect(scheduleOf(drawn).violations).toEqual([]);
    for (const condition of Object.keys(kept)) {
      const broken = barn({}, { existingGroundedConductor: { ...kept, [condition]: true } });
      expect(scheduleOf(broken).violations).toMatchObject([
        { code: "grounded-conductor-rebonded", at: ["B1"] },
      ]);
      expect(line(broken, "equipment-grounding-conductor F1")?.[0]).toBe("1 x 6 AWG");
    }
  });

  it("contradicts itself in one issue each", () => {
    const { circuit: _, ...nothing } = building();
    const alone = installation({ services: [service()], circuits: [feeder()], buildings: [nothing] });
    expect(refused(alone)).toEqual([["missing", "buildings[0].circuit"]]);
    const both = installation({
      services: [service()],
      derivedSystems: [derived()],
      circuits: [feeder()],
      buildings: [building({ disconnect: "P1" })],
    });
    expect(refused(both)).toEqual([["unknown-key", "buildings[0].disconnect"]]);
    const { groundedConductor: __, ...without } = feeder();
    const lacking = installation({
      services: [service()],
      circuits: [without],
      buildings: [building({ existingGroundedConductor: kept })],
    });
    expect(refused(lacking)).toEqual([["missing", "buildings[0].existingGroundedConductor"]]);
    expect(refused(barn({}, { existingGroundedConductor: kept, onSingleBranchCircuit: true }))).toEqual([
      ["unknown-value", "buildings[0].onSingleBranchCircuit"],
    ]);
  });
});

describe("a building on a derived system", () => {
  const { circuit: _, ...own } = building({ disconnect: "P1" });
  const on = (parts: object = {}, year: EditionYear = "2020") =>
    installation(
      {
        derivedSystems: [derived(parts)],
        buildings: [own],
        piping: [{ id: "W1", of: "B1", kind: "water" }],
      },
      year,
    );

  it("has a supply-side jumper in place of an equipment grounding conductor, and its own electrodes", () => {
    expect(line(on(), "equipment-grounding-conductor B1")).toEqual([
      "supply-side-jumper-instead",
      "250.32(B)(2)",
    ]);
    expect(line(on(), "supply-side-bonding-jumper Y1")?.[0]).toBe("1 x 1/0 AWG");
    expect(line(on(), "grounding-electrode-conductor BE")?.[0]).toBe("1 x 1/0 AWG");
    expect(line(on(), "water-piping-bonding-jumper W1")?.[0]).toBe("1 x 1/0 AWG");
    expect(
      drawingOf(on())
        .sheets.map(({ description }) => description)
        .join(" "),
    ).toContain("to B1");
  });

  it("has an equipment grounding conductor where a device stands at the source", () => {
    const source = { id: "T1", kind: "generator", outdoors: true, deviceAmperes: 400 };
    expect(line(on({ source }), "equipment-grounding-conductor B1")).toBeUndefined();
    expect(line(on({ source }), "equipment-grounding-conductor Y1")?.[0]).toBe("1 x 3 AWG");
  });

  it("says what an ungrounded system requires there", () => {
    const codes = (parts: object) => scheduleOf(on(parts)).cautions.map(({ code }) => code);
    const ungrounded = { grounding: "ungrounded", connection: "three-phase-delta" };
    expect(codes(ungrounded)).toContain("building-on-ungrounded-system");
    expect(codes({})).not.toContain("building-on-ungrounded-system");
  });

  it("names a disconnect that is there", () => {
    const astray = installation({
      derivedSystems: [derived()],
      buildings: [{ ...own, disconnect: "P9" }],
    });
    expect(refused(astray)).toEqual([["dangling-reference", "buildings[0].disconnect"]]);
  });
});

describe("a bonding jumper on the load side", () => {
  const conduit = {
    kind: "flexible-metal-conduit",
    tradeSize: "1/2",
    flexesInUse: false,
    lengthFeet: 6,
  } as const;
  const drawn = (parts: Partial<Jumper>, amperes: readonly number[] = [60], year: EditionYear = "2020") =>
    installation(
      {
        existing: [{ id: "D1" }],
        circuits: amperes.map((rating, i) =>
          feeder({ id: `C${i}`, to: `load ${i}`, device: { amperes: rating } }),
        ),
        loadSideJumpers: [
          {
            id: "J1",
            circuits: amperes.map((_rating, i) => `C${i}`),
            from: "box",
            to: "motor",
            placed: "inside",
            ...parts,
          },
        ],
      } as Partial<Installation>,
      year,
    );

  it("goes by the largest device of its circuits (250.102(D))", () => {
    expect(line(drawn({}), "equipment-bonding-jumper J1")).toEqual(["1 x 10 AWG", "250.102(D)"]);
    expect(line(drawn({}, [60, 400, 100]), "equipment-bonding-jumper J1")?.[0]).toBe("1 x 3 AWG");
  });

  it("is not required around flexible conduit that serves itself (250.118)", () => {
    const serves = (parts: Partial<Jumper["flexibleConduit"]>, amperes = 20) =>
      line(
        drawn({ flexibleConduit: { ...conduit, ...parts } as never }, [amperes]),
        "equipment-bonding-jumper J1",
      )?.[0] === "flexible-conduit-serves";
    expect(serves({})).toBe(true);
    expect(serves({}, 30)).toBe(false);
    expect(serves({ lengthFeet: 6.1 })).toBe(false);
    expect(serves({ flexesInUse: true })).toBe(false);
    expect(serves({ tradeSize: "1-1/4" })).toBe(true);
    expect(serves({ tradeSize: "1-1/2" })).toBe(false);
    const liquidtight = { kind: "liquidtight-flexible-metal-conduit" } as const;
    expect(serves({ ...liquidtight, tradeSize: "3/4" }, 60)).toBe(true);
    expect(serves({ ...liquidtight, tradeSize: "1/2" }, 60)).toBe(false);
    expect(serves({ ...liquidtight, tradeSize: "3/4" }, 70)).toBe(false);
  });

  it("outside is at most 6 ft long, save at an outdoor pole (250.102(E))", () => {
    const codes = (parts: Partial<Jumper>) => scheduleOf(drawn(parts)).violations.map(({ code }) => code);
    expect(codes({ placed: "outside", lengthFeet: 6 })).toEqual([]);
    expect(codes({ placed: "outside", lengthFeet: 7 })).toEqual(["jumper-outside-too-long"]);
    expect(codes({ placed: "outside", lengthFeet: 7, atOutdoorPole: true })).toEqual([]);
    expect(codes({ placed: "inside", lengthFeet: 7 })).toEqual([]);
    expect(refused(drawn({ placed: "outside" }))).toEqual([["missing", "loadSideJumpers[0].lengthFeet"]]);
    expect(refused(drawn({ circuits: ["C9"] }))).toEqual([
      ["dangling-reference", "loadSideJumpers[0].circuits[0]"],
    ]);
  });

  it("is checked as any other conductor", () => {
    const check = checkRest(drawn({}), [piece("equipment-bonding-jumper J1", "12 AWG")]);
    expect(findings(check).map(([id, kind]) => [id, kind])).toEqual([
      ["equipment-bonding-jumper J1", "short"],
    ]);
  });
});
