import { axisY, barY, ruleY, text } from "@observablehq/plot";
import { type ArrangementComparison, arrangementsOf, supplySideBondingJumper } from "bondmil";
import { colors, drawn } from "./drawn.js";
import type { Picture } from "./picture.js";

const mostSets = 10;

interface Bar {
  readonly sets: number;
  readonly arrangement: string;
  /** Circular mils of all jumpers together. */
  readonly total: number;
}

const names: Readonly<Record<string, string>> = {
  "jumper-in-each-raceway": "one in each raceway",
  "one-common-raceway-jumper": "one in common",
};

/** Copper in the supply-side bonding jumpers of parallel raceways, by arrangement, over the number of sets. */
export function racewayMetal(): Picture {
  const bars = Array.from({ length: mostSets - 1 }, (_, i) => i + 2).flatMap((sets) => barsOf(sets));
  const title = "Copper in supply-side bonding jumpers of parallel metal raceways, 2023";
  const description =
    "Pairs of bars for two to ten raceways, each with one set of 500 kcmil copper. A jumper of its own in each raceway takes the same for every further raceway. One in common takes less with few raceways and then grows by 12.5 percent of each further set. Only areas are compared: the lengths are those of the installation.";
  return {
    name: "jumper-copper-by-raceways",
    title,
    description,
    columns: ["raceways", "arrangement", "circular mils of all jumpers"],
    rows: bars.map((one) => [one.sets, one.arrangement, one.total]),
    svg: drawn(title, description, {
      height: 380,
      marginBottom: 45,
      fx: {
        label: "metal raceways, one set of 500 kcmil copper in each (E: a jumper in each; C: one in common)",
      },
      x: { axis: null, domain: Object.values(names) },
      y: { grid: true, label: "all jumpers, kcmil" },
      color: { domain: Object.values(names), range: [colors.blue, colors.orange], legend: false },
      marks: [
        axisY({ anchor: "left" }),
        barY(bars, {
          fx: "sets",
          x: "arrangement",
          y: ({ total }: Bar) => total / 1000,
          fill: "arrangement",
          insetLeft: 1,
        }),
        text(bars, {
          fx: "sets",
          x: "arrangement",
          y: ({ total }: Bar) => total / 1000,
          text: ({ arrangement }: Bar) => (arrangement === names["one-common-raceway-jumper"] ? "C" : "E"),
          dy: -8,
        }),
        ruleY([0]),
      ],
    }),
  };
}

function barsOf(sets: number): readonly Bar[] {
  const { arrangements }: ArrangementComparison = arrangementsOf(supplySideBondingJumper, {
    code: { year: "2023" },
    raceways: Array.from({ length: sets }, (_, i) => ({
      id: `R${i + 1}`,
      supply: { sets: [{ count: 1, size: "500 kcmil", material: "copper" }] },
    })),
    conductor: { material: "copper" },
  });
  return arrangements.map(({ id, totalArea }) => ({ sets, arrangement: names[id] ?? id, total: totalArea }));
}
