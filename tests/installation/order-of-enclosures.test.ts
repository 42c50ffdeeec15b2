import { scheduleOf } from "bondmil";
import { expect, it } from "vitest";
import { derived, installation, setsOf } from "./installations.js";

const run = (to: string, size: string) => ({
  id: `to ${to}`,
  from: "T1",
  to,
  supply: setsOf(1, size),
  raceways: { count: 1, kind: "nonmetallic" } as const,
});

it.each([["P1", "P2"] as const, ["P2", "P1"] as const])(
  "an electrode at the source moves with the jumpers to the enclosure that requires most: %s before %s",
  (...order) => {
    const { conductors } = scheduleOf(
      installation({
        derivedSystems: [
          derived({
            runs: [run("P1", "1/0 AWG"), run("P2", "1250 kcmil")],
            disconnects: order.map((id) => ({ id, amperes: 150 })),
            jumperAt: "compare",
            electrodes: [
              { id: "E1", kind: "other", from: "T1" },
              { id: "E2", kind: "metal-water-pipe", from: "P1" },
              { id: "E3", kind: "rod", from: "P2" },
            ],
          }),
        ],
      }),
    );
    const moved = conductors.find(
      ({ subject, alternative }) => subject === "E1" && alternative === "jumper-in-each-enclosure",
    );
    // Table 250.66: over 1100 kcmil copper takes 3/0 AWG copper.
    expect(moved?.result.requiredArea).toBe(167_800);
  },
);

it.each([["P1", "P2"] as const, ["P2", "P1"] as const])(
  "an electrode that an enclosure is connected to needs no second conductor where the jumpers are: %s before %s",
  (...order) => {
    const { conductors } = scheduleOf(
      installation({
        derivedSystems: [
          derived({
            runs: [run("P1", "1/0 AWG"), run("P2", "1/0 AWG")],
            disconnects: order.map((id) => ({ id, amperes: 150 })),
            jumperAt: "compare",
            electrodes: [
              { id: "E1", kind: "other", from: "P1" },
              { id: "E2", kind: "rod", from: "P2" },
              { electrode: "E1", from: "T1" },
            ],
          }),
        ],
      }),
    );
    const toE1 = conductors.filter(
      ({ subject, alternative }) => subject === "E1" && alternative === "jumper-in-each-enclosure",
    );
    expect(toE1.map(({ from }) => from)).toEqual([{ kind: "place", id: "P1", on: "neutral-bar" }]);
  },
);

it.each([["P1", "P2", "P3"] as const, ["P2", "P1", "P3"] as const, ["P2", "P3", "P1"] as const])(
  "each of several equal enclosures has one electrode conductor: %s, %s, %s",
  (...order) => {
    const { conductors } = scheduleOf(
      installation({
        derivedSystems: [
          derived({
            runs: order.map((id) => run(id, "1/0 AWG")),
            disconnects: order.map((id) => ({ id, amperes: 150 })),
            jumperAt: "compare",
            electrodes: [
              { id: "E1", kind: "concrete-encased", from: "P1" },
              { id: "E2", kind: "other", from: "T1" },
            ],
          }),
        ],
      }),
    );
    const starts = conductors
      .filter(
        ({ role, alternative }) =>
          role === "grounding-electrode-conductor" && alternative === "jumper-in-each-enclosure",
      )
      .map(({ from }) => (from.kind === "place" ? from.id : from.kind));
    expect(starts.sort()).toEqual(["P1", "P2", "P3"]);
  },
);
