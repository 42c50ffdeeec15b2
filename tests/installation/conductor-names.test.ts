import { conductorName, endName, InputError, scheduleOf } from "bondmil";
import { describe, expect, it } from "vitest";
import { derived, installation, service, setsOf } from "./installations.js";

describe("the name of a conductor", () => {
  it("says where it starts and its arrangement where these tell it apart", () => {
    const disconnects = ["P1", "P2"].map((id) => ({ id, amperes: 400 }));
    const [run] = derived().runs;
    const runs = disconnects.map(({ id }) => ({ ...run, id: `Y ${id}`, to: id })) as never;
    const electrodes = [{ id: "G1", kind: "structural-metal", from: "P1", ferrousRaceway: true }] as const;
    const { conductors } = scheduleOf(
      installation({ derivedSystems: [derived({ jumperAt: "compare", runs, disconnects, electrodes })] }),
    );
    const found = conductors.find(
      ({ role, place }) => role === "electrode-raceway-bonding-jumper" && place === "P2",
    );
    expect(found && [found.id, conductorName(found), endName(found.from), endName(found.to)]).toEqual([
      "electrode-raceway-bonding-jumper G1 from P2 (jumper-in-each-enclosure)",
      "electrode raceway bonding jumper G1 from P2 (a jumper in each enclosure)",
      "raceway of grounding electrode conductor G1 from P2 (a jumper in each enclosure)",
      "conductor inside",
    ]);
  });

  it("of a tap and of a supply-side jumper is that of the trade", () => {
    const { conductors } = scheduleOf(
      installation({
        services: [
          service({
            boxes: [{ id: "M1", kind: "meter", bondedBy: "jumper" }],
            runs: [
              {
                id: "R0",
                from: "U1",
                to: "M1",
                supply: setsOf(1, "500 kcmil") as never,
                raceways: { count: 1, kind: "nonmetallic" },
              },
              {
                id: "R1",
                from: "M1",
                to: "D1",
                supply: setsOf(1, "500 kcmil") as never,
                raceways: { count: 1, kind: "nonmetallic" },
              },
            ],
            commonElectrodeConductor: { id: "bar" },
            electrodes: [],
          }),
        ],
      }),
    );
    expect(conductors.map((one) => [conductorName(one), endName(one.from), endName(one.to)])).toEqual([
      ["main bonding jumper D1", "neutral bar of D1", "equipment grounding bar of D1"],
      ["main bonding jumper M1", "grounded conductor in M1", "enclosure of M1"],
      ["supply-side bonding jumper M1", "grounded conductor in M1", "enclosure of M1"],
      ["supply-side bonding jumper R0", "raceway fitting of R0", "enclosure of M1"],
      ["supply-side bonding jumper R1", "raceway fitting of R1", "enclosure of D1"],
      ["grounded conductor R0", "neutral terminal of U1", "grounded conductor in M1"],
      ["grounded conductor R1", "grounded conductor in M1", "neutral bar of D1"],
      ["grounding electrode conductor bar", "bar", "electrodes"],
      ["grounding electrode tap D1", "neutral bar of D1", "bar"],
    ]);
  });

  it.each([
    [conductorName, { role: "jumper", subject: "D1" }],
    [conductorName, { role: "main-bonding-jumper", subject: "D1", alternative: "toString" }],
    [endName, { kind: "roof" }],
    [endName, { kind: "place" }],
    [endName, { kind: "toString" }],
  ] as const)("is none for what is no conductor or end", (name, wrong) => {
    expect(() => name(wrong as never)).toThrow(InputError);
  });
});
