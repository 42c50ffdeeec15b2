import { axisX, axisY, line, text } from "@observablehq/plot";
import { type EditionYear, equipmentGroundingConductor, shortTimeWithstand, size } from "bondmil";
import { colors, drawn } from "./drawn.js";
import type { Picture } from "./picture.js";
import { ratingsThrough } from "./ratings.js";

const year: EditionYear = "2023";
const ticks = [15, 30, 60, 100, 200, 400, 800, 1600, 4000];
const temperatures = { initial: 75, final: 150 };

interface Point {
  readonly amperes: number;
  readonly size: string;
  readonly seconds: number;
  /** Symmetrical amperes of the largest fault that it withstands so long. */
  readonly fault: number;
}

const look: Readonly<Record<number, { readonly stroke: string; readonly dash: string }>> = {
  0.1: { stroke: colors.blue, dash: "none" },
  0.5: { stroke: colors.orange, dash: "7 3" },
  5: { stroke: colors.gray, dash: "2 3" },
};

/** What the smallest lawful equipment grounding conductor of each device withstands. */
export function withstandOfLeast(): Picture {
  const points = ratingsThrough(year, 4000).flatMap((amperes) => pointsOf(amperes));
  const title = "Largest fault that the smallest copper equipment grounding conductor withstands";
  const description = `Both axes logarithmic: the rating of the device from 15 to 4000 amperes, and symmetrical fault amperes. Three lines in steps, for 0.1, 0.5 and 5 seconds, from ${temperatures.initial} to ${temperatures.final} C; each lies below the one of a shorter time. Against a fault above a line a larger conductor than that of Table 250.122 is necessary. The sizes are of ${year}.`;
  return {
    name: "withstand-of-least-equipment-grounding",
    title,
    description,
    columns: ["device amperes", "size of copper", "seconds", "largest symmetrical amperes"],
    rows: points.map((one) => [one.amperes, one.size, one.seconds, one.fault]),
    svg: drawn(title, description, {
      height: 420,
      marginTop: 30,
      marginLeft: 70,
      marginBottom: 45,
      marginRight: 60,
      x: { type: "log", label: "rating or setting of the device, amperes" },
      y: { type: "log", grid: true, domain: [100, 200_000], label: "fault, symmetrical amperes" },
      marks: [
        // A scale of tens leaves out labels that a format makes, so that they are given as texts.
        axisX(ticks, { text: (amperes: number) => `${amperes}`, labelOffset: 36 }),
        axisY({ anchor: "left", ticks: [300, 1000, 3000, 10000, 30000, 100000], tickFormat: "," }),
        ...Object.entries(look).flatMap(([seconds, { stroke, dash }]) => {
          const own = points.filter((one) => one.seconds === Number(seconds));
          return [
            line(own, {
              x: "amperes",
              y: "fault",
              curve: "step-before",
              stroke,
              strokeWidth: 2.5,
              strokeDasharray: dash,
            }),
            text(own.slice(-1), {
              x: "amperes",
              y: "fault",
              text: () => `${seconds} s`,
              fill: stroke,
              fontWeight: "bold",
              textAnchor: "start",
              dx: 6,
            }),
          ];
        }),
      ],
    }),
  };
}

function pointsOf(amperes: number): readonly Point[] {
  const { outcome } = size(equipmentGroundingConductor, {
    code: { year },
    circuits: [{ device: { amperes } }],
    conductor: { material: "copper" },
  });
  if (outcome.kind !== "conductor" || outcome.size === null) throw new Error(`no conductor for ${amperes} A`);
  const least = outcome.size;
  return Object.keys(look).map((text) => {
    const seconds = Number(text);
    const { capacity } = shortTimeWithstand({
      conductor: { size: least, material: "copper" },
      temperatures,
      fault: { amperes: 1000, seconds },
    });
    return { amperes, size: least, seconds, fault: Math.floor(Math.sqrt(capacity / seconds)) };
  });
}
