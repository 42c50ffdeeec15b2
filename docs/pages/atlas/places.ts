import {
  arrangementsOf,
  bondingAtDesignation,
  type EditionYear,
  type Readings,
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
