import { type Check, type CheckVerdict, checkInstalled, type Drawing, type EditionYear } from "bondmil";
import { describe, expect, it } from "vitest";
import { copper, demo, derived, drawing, refused, service, setsOf } from "./drawings.js";

type Installed = NonNullable<Drawing["installed"]>;

const jumper = "main-bonding-jumper D1";
const piece = (conductor: string, size: string, parts: object = {}): Installed[number] =>
  ({ conductor, size, material: "copper", ...parts }) as Installed[number];

function check(installed: Installed, year: EditionYear = "2017"): Check {
  return checkInstalled({ ...drawing({ services: [service({ electrodes: [] })] }, year), installed });
}

function verdicts({ conductors }: Check): readonly (readonly [string, CheckVerdict, number | null])[] {
  return conductors.map(({ id, verdict, reserve }) => [id, verdict, reserve]);
}

/** The first verdict, which is on the main bonding jumper of 1/0 AWG. */
function first(
  installed: Installed,
  year?: EditionYear,
): readonly [string, CheckVerdict, number | null] | undefined {
  return verdicts(check(installed, year))[0];
}

describe("a check of what is installed", () => {
  it("finds everything missing where nothing is installed", () => {
    expect(verdicts(checkInstalled(drawing({ services: [service()] })))).toEqual([
      [jumper, "missing", null],
      ["grounded-conductor R1", "missing", null],
      ["grounding-electrode-conductor E1", "missing", null],
    ]);
  });

  it("finds what is sufficient, and sufficient on values that are not confirmed", () => {
    expect(first([piece(jumper, "1/0 AWG")])).toEqual([jumper, "sufficient", 0]);
    expect(first([piece(jumper, "1/0 AWG")], "2026")).toEqual([
      jumper,
      "sufficient-on-unconfirmed-values",
      0,
    ]);
  });

  it("finds what is short and by how much, and what is larger than needed", () => {
    expect(first([piece(jumper, "1 AWG")])).toEqual([jumper, "short", -21_910]);
    expect(first([piece(jumper, "2/0 AWG")])).toEqual([jumper, "larger-than-needed", 27_500]);
    const eighth = {
      ...service({ electrodes: [] }),
      runs: [{ ...service().runs[0], supply: setsOf(3, "600 kcmil") }],
    };
    const installed = [piece(jumper, "250 kcmil")];
    const { conductors } = checkInstalled({ ...drawing({ services: [eighth as never] }, "2017"), installed });
    // The next standard size above an eighth is what is needed, not larger than it.
    expect(conductors[0]).toMatchObject({ verdict: "sufficient", reserve: 25_000, requiredArea: 225_000 });
  });

  it("finds too few, and adds several entries of one conductor", () => {
    const raceways = { count: 3, kind: "nonmetallic" as const };
    const runs = [{ ...service().runs[0], supply: setsOf(3, "500 kcmil"), raceways }];
    const data = (installed: Installed) =>
      verdicts(
        checkInstalled({
          ...drawing({ services: [service({ runs: runs as never, electrodes: [] })] }, "2017"),
          installed: [piece(jumper, "3/0 AWG"), ...installed],
        }),
      ).slice(1);
    const id = "grounded-conductor R1";
    expect(data([piece(id, "1/0 AWG", { quantity: 2 })])).toEqual([[id, "too-few", 0]]);
    expect(data([piece(id, "1/0 AWG", { quantity: 3 })])).toEqual([[id, "sufficient", 0]]);
    expect(data([piece(id, "1/0 AWG", { quantity: 2 }), piece(id, "1 AWG")])).toEqual([
      [id, "sufficient", 0],
      [id, "short", -21_910],
    ]);
  });

  it("does not compare another metal", () => {
    expect(first([piece(jumper, "250 kcmil", { material: "aluminum" })])).toEqual([
      jumper,
      "wrong-material",
      null,
    ]);
    const data = drawing({ services: [service({ electrodes: [] })] }, "2017");
    const aluminum = { ...data, materials: { ...data.materials, bondingJumpers: "aluminum" as const } };
    const installed = [piece(jumper, "3/0 AWG", { material: "copper-clad aluminum" })];
    // Aluminum and copper-clad aluminum share a column.
    expect(verdicts(checkInstalled({ ...aluminum, installed }))[0]).toEqual([jumper, "sufficient", 0]);
  });

  it("finds what is at the wrong place", () => {
    expect(first([piece(jumper, "1/0 AWG", { at: "W1" })])).toEqual([jumper, "wrong-place", 0]);
    expect(first([piece(jumper, "1/0 AWG", { at: "D1" })])).toEqual([jumper, "sufficient", 0]);
    const grounded = [piece("grounded-conductor R1", "1/0 AWG", { at: "U1" })];
    expect(verdicts(check(grounded))[1]).toEqual(["grounded-conductor R1", "sufficient", 0]);
  });

  it("finds what is not in the schedule; a second jumper with the section that forbids it", () => {
    const { conductors } = check([
      piece("main-bonding-jumper panel 2", "6 AWG"),
      piece("system-bonding-jumper T9", "6 AWG"),
      piece("equipment-grounding-conductor C9", "6 AWG"),
    ]);
    expect(conductors.slice(-3).map(({ id, verdict, citation }) => [id, verdict, citation?.section])).toEqual(
      [
        ["main-bonding-jumper panel 2", "not-in-schedule", "250.24(A)(5)"],
        ["system-bonding-jumper T9", "not-in-schedule", "250.30(A)(1)"],
        ["equipment-grounding-conductor C9", "not-in-schedule", undefined],
      ],
    );
  });

  it("finds what is not required, and does not miss it", () => {
    const runs = [
      {
        id: "Y1",
        from: "T1",
        to: "P1",
        supply: { sets: [...copper.sets] },
        raceways: { count: 1, kind: "nonflexible-metal" as const },
      },
    ];
    const data = drawing({ derivedSystems: [derived({ runs })] }, "2017");
    const id = "supply-side-bonding-jumper Y1";
    expect(verdicts(checkInstalled(data)).map(([name]) => name)).not.toContain(id);
    expect(verdicts(checkInstalled({ ...data, installed: [piece(id, "4 AWG")] }))).toContainEqual([
      id,
      "not-required",
      null,
    ]);
  });

  it("takes of compared arrangements the one that was begun, and marks a jumper of the other", () => {
    const data = (installed: Installed) =>
      verdicts(
        checkInstalled({
          ...drawing({ derivedSystems: [derived({ jumperAt: "compare", electrodes: [] })] }, "2017"),
          installed,
        }),
      );
    const [source, enclosure] = ["system-bonding-jumper T1", "system-bonding-jumper P1"];
    expect(data([])).toEqual([["supply-side-bonding-jumper Y1", "missing", null]]);
    expect(data([piece(enclosure, "1/0 AWG")])).toEqual([
      [enclosure, "sufficient", 0],
      ["supply-side-bonding-jumper Y1", "missing", null],
      ["grounded-conductor Y1 (jumper-in-each-enclosure)", "missing", null],
    ]);
    expect(data([piece(source, "1/0 AWG"), piece(enclosure, "1/0 AWG")]).slice(0, 2)).toEqual([
      [source, "sufficient", 0],
      [enclosure, "wrong-place", 0],
    ]);
  });

  it("finds the faults of the demo drawing", () => {
    const { conductors } = checkInstalled(demo("print-works"));
    const faults = conductors.filter(({ verdict }) => !verdict.startsWith("sufficient"));
    expect(faults.map(({ id, verdict }) => [verdict, id])).toEqual([
      ["short", "main-bonding-jumper PV"],
      ["short", "supply-side-bonding-jumper CT cabinet"],
      ["too-few", "grounded-conductor lateral"],
      ["wrong-place", "grounding-electrode-conductor frame"],
      ["missing", "electrode-bonding-jumper water pipe"],
      ["wrong-material", "system-bonding-jumper LP2"],
      ["too-few", "equipment-grounding-conductor F3"],
      ["short", "equipment-grounding-conductor F4"],
      ["larger-than-needed", "equipment-grounding-conductor F5"],
      ["missing", "other-piping-bonding-jumper compressed air"],
      ["not-in-schedule", "system-bonding-jumper T2 case"],
    ]);
  });

  it("refuses what a schedule refuses", () => {
    expect(refused({ ...drawing({}), installed: [{ ...piece(jumper, "4 AWG"), quantity: 0 }] })).toEqual([
      ["not-positive", "installed[0].quantity"],
    ]);
  });
});
