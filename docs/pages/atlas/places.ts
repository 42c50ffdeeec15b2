import {
  arrangementsOf,
  bondingAtDesignation,
  type EditionYear,
  type Readings,
  scheduleOf,
  systemBondingJumper,
} from "bondmil";
import { readingFacts } from "../../../src/edition/tables/readings.generated.js";

/** Readings that change no size but where something is connected or whether it must be there. */
export const placeReadings: Readonly<
  Partial<
    Record<
      keyof Readings,
      { readonly words: string; readonly answer: (year: EditionYear, readings: Partial<Readings>) => string }
    >
  >
> = {
  "electrode-connection-with-several-jumpers": {
    words:
      "No size changes. What changes is where the grounding electrode conductor is connected, and so how many connections there are: one for each enclosure with a system bonding jumper, or one in all. Asked about a transformer with two enclosures, each with a jumper.",
    answer: (year, readings) => {
      const { arrangements } = arrangementsOf(systemBondingJumper, {
        code: { year, readings },
        source: { id: "T1", outdoors: false },
        enclosures: ["P1", "P2"].map((id) => ({
          id,
          supply: { sets: [{ count: 1, size: "250 kcmil", material: "copper" }] },
        })),
        conductor: { material: "copper" },
      });
      const inEach = arrangements.find(({ id }) => id === "jumper-in-each-enclosure");
      const connection = inEach?.connections.find(({ kind }) => kind === "grounding-electrode-conductor");
      return `${connection?.note}, places ${connection?.at.join(" and ")}`;
    },
  },
  "common-conductor-of-one-derived-system": {
    words:
      "The common grounding electrode conductor that the system bonding jumpers of one derived system tap. Asked about a transformer with two enclosures, each with a jumper, on 250 kcmil copper each.",
    answer: (year, readings) => {
      const copper = { sets: [{ count: 1, size: "250 kcmil", material: "copper" }] } as const;
      const { conductors } = scheduleOf({
        format: 1,
        title: "two enclosures",
        code: { year, readings },
        materials: {
          bondingJumpers: "copper",
          groundedConductors: "copper",
          electrodeConductors: "copper",
          equipmentGrounding: "copper",
        },
        derivedSystems: [
          {
            id: "system",
            source: { id: "T1", kind: "transformer", outdoors: false },
            grounding: "solidly-grounded",
            connection: "three-phase-wye",
            runs: ["P1", "P2"].map((to) => ({
              id: `to ${to}`,
              from: "T1",
              to,
              supply: copper,
              raceways: { count: 1, kind: "nonmetallic" },
            })),
            disconnects: ["P1", "P2"].map((id) => ({ id, amperes: 225 })),
            jumperAt: "disconnects",
            commonElectrodeConductor: { id: "riser" },
            electrodes: [{ id: "frame", kind: "structural-metal", from: "riser" }],
          },
        ],
      });
      const common = conductors.find(({ subject }) => subject === "frame");
      return common?.result.outcome.kind === "conductor" ? common.result.outcome.size : "no size";
    },
  },
  "electrode-conductor-of-supply-side-source": {
    words:
      "No size changes. What changes is whether the disconnect of the source must have a grounding electrode conductor of its own, or may have that of the service. Asked about a source on a solidly grounded service.",
    answer: (year, readings) => {
      const { electrodeConductor } = bondingAtDesignation({
        code: { year, readings },
        designation: "supply-side-source",
        grounding: "solidly-grounded",
      });
      return `${electrodeConductor.status} by ${electrodeConductor.citation.section}`;
    },
  },
};

/** What each alternative gives: one line for each alternative and each run of editions that are alike. */
export function placeRows(
  reading: keyof Readings,
  answer: (year: EditionYear, readings: Partial<Readings>) => string,
): readonly (readonly string[])[] {
  const { editions, policy } = readingFacts[reading];
  return Object.keys(policy).flatMap((alternative) => {
    const byAnswer = new Map<string, readonly EditionYear[]>();
    for (const year of editions) {
      const found = answer(year, { [reading]: alternative });
      byAnswer.set(found, [...(byAnswer.get(found) ?? []), year]);
    }
    return [...byAnswer].map(([found, years]) => [alternative, years.join(", "), found]);
  });
}
