import { axisX, axisY, line, ruleY, text } from "@observablehq/plot";
import {
  type ConductorSize,
  type EditionYear,
  equipmentGroundingConductor,
  nextSizeUp,
  size,
  smallestConductorFor,
} from "bondmil";
import { colors, drawn } from "./drawn.js";
import type { Picture } from "./picture.js";
import { ratingsThrough } from "./ratings.js";

const year: EditionYear = "2023";
const code = { year };
const largest = 1200;
/** What 600 kcmil copper carries in the 75 C column, above which the example takes parallel sets. */
const amperesOfASet = 420;

interface Point {
  readonly amperes: number;
  readonly conductor: string;
  readonly required: number;
}

const copper = "copper";
const aluminum = "aluminum";
const increased = "copper, circuit two sizes larger";
const look = {
  [increased]: { stroke: colors.orange, dash: "7 3" },
  [aluminum]: { stroke: colors.gray, dash: "2 3" },
  [copper]: { stroke: colors.blue, dash: "none" },
} as const;

/** Equipment grounding conductors over the device, as the table has them and with a circuit that was made larger. */
export function deviceSteps(): Picture {
  const points = ratingsThrough(year, largest).flatMap((amperes) => pointsOf(amperes));
  const title = `Equipment grounding conductor over the rating of the device, ${year}`;
  const description =
    "Three lines over standard ratings from 15 to 1200 amperes. Copper and aluminum follow the steps of Table 250.122; aluminum lies above copper. The third line is copper for circuit conductors that are two standard sizes larger than what suffices: it lies above the tabled copper everywhere, and falls in places, where two sizes are a smaller share of a larger conductor.";
  return {
    name: "equipment-grounding-by-device",
    title,
    description,
    columns: ["device amperes", "conductor", "required circular mils"],
    rows: points.map((one) => [one.amperes, one.conductor, one.required]),
    svg: drawn(title, description, {
      height: 400,
      marginBottom: 45,
      marginRight: 150,
      x: { domain: [0, largest], label: "rating or setting of the device, amperes" },
      y: { label: "required, kcmil", grid: true },
      marks: [
        ruleY([0]),
        axisX({ labelOffset: 36 }),
        axisY({ anchor: "left" }),
        ...Object.entries(look).flatMap(([conductor, { stroke, dash }]) => {
          const own = points.filter((one) => one.conductor === conductor);
          return [
            line(own, {
              x: "amperes",
              y: ({ required }: Point) => required / 1000,
              curve: "step-before",
              stroke,
              strokeWidth: 2.5,
              strokeDasharray: dash,
            }),
            text(own.slice(-1), {
              x: "amperes",
              y: ({ required }: Point) => required / 1000,
              text: () => conductor.replace("circuit ", "circuit\n"),
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
  const device = { amperes };
  const required = (material: "copper" | "aluminum", circuit: object): number =>
    size(equipmentGroundingConductor, { code, circuits: [{ device, ...circuit }], conductor: { material } })
      .requiredArea ?? 0;
  return [
    { amperes, conductor: copper, required: required("copper", {}) },
    { amperes, conductor: aluminum, required: required("aluminum", {}) },
    { amperes, conductor: increased, required: required("copper", enlarged(amperes)) },
  ];
}

/** Circuit conductors two standard sizes above what suffices, in as few sets as the table allows; the increase is invented. */
function enlarged(amperes: number): object {
  const count = Math.ceil(amperes / amperesOfASet);
  const enough = smallestConductorFor({
    edition: year,
    amperes: amperes / count,
    material: "copper",
    temperature: 75,
  });
  const next = enough && nextSizeUp(enough);
  const larger = next && nextSizeUp(next);
  if (enough === null || larger === null) throw new Error(`no conductors for ${amperes} A`);
  const setsOf = (of: ConductorSize): object => ({ sets: [{ count, size: of, material: "copper" }] });
  return {
    conductors: setsOf(larger),
    increasedFrom: { conductors: setsOf(enough), reason: "voltage-drop" },
  };
}
