import { axisX, axisY, line, ruleY, text } from "@observablehq/plot";
import {
  type EditionYear,
  groundingElectrodeConductor,
  type Material,
  mainBondingJumper,
  prepare,
} from "bondmil";
import { colors, drawn } from "./drawn.js";
import type { Picture } from "./picture.js";

const year: EditionYear = "2023";
const last = 3_000_000;
const stride = 10_000;

interface Point {
  readonly material: Material;
  readonly conductor: string;
  /** Circular mils of the supply. */
  readonly supply: number;
  /** Circular mils required. */
  readonly required: number;
}

const jumper = "main bonding jumper";
const electrode = "grounding electrode conductor";
const eighth = "12.5 percent of the supply";
const look = {
  [eighth]: { stroke: colors.gray, width: 1.5, dash: "2 3" },
  [jumper]: { stroke: colors.blue, width: 2.5, dash: "none" },
  [electrode]: { stroke: colors.orange, width: 2.5, dash: "7 3" },
} as const;

/** Where the names of the lines stand, clear of the lines. */
const namedAt = {
  [jumper]: { words: jumper, supply: 2_700_000, anchor: "end", dy: -8 },
  [electrode]: { words: "electrode conductor", supply: last, anchor: "end", dy: 26 },
  [eighth]: { words: eighth, supply: 550_000, anchor: "start", dy: 14 },
} as const;

/** What a jumper and an electrode conductor are required to be over the area of the supply. */
export function staircases(): Picture {
  const points = (["copper", "aluminum"] as const).flatMap((material) => pointsOf(material));
  const title = `Required area over the area of the supply, ${year}, supply and conductor of one metal`;
  const description =
    "Two panels, copper and aluminum. The main bonding jumper climbs in the steps of its table and, past the last bounded row (1,100 kcmil of copper, 1,750 kcmil of aluminum), follows the line of 12.5 percent of the supply. The grounding electrode conductor climbs with it and then stays level at 3/0 AWG copper or 250 kcmil aluminum: no fault current returns through it.";
  return {
    name: "required-area-by-supply",
    title,
    description,
    columns: ["material", "conductor", "supply circular mils", "required circular mils"],
    rows: points.map((one) => [one.material, one.conductor, one.supply, one.required]),
    svg: drawn(title, description, {
      height: 430,
      marginBottom: 45,
      marginRight: 20,
      marginTop: 40,
      fx: {
        label: null,
        domain: ["copper", "aluminum"],
        tickFormat: (name: string) => `${name} supply and conductor`,
      },
      x: { domain: [0, last / 1000], label: "ungrounded supply conductors, kcmil" },
      y: { label: "required, kcmil", grid: true },
      marks: [
        ruleY([0]),
        axisX({ ticks: 6, labelOffset: 36 }),
        axisY({ anchor: "left" }),
        ...Object.entries(look).map(([conductor, { stroke, width, dash }]) =>
          line(
            points.filter((one) => one.conductor === conductor),
            {
              fx: "material",
              x: ({ supply }: Point) => supply / 1000,
              y: ({ required }: Point) => required / 1000,
              stroke,
              strokeWidth: width,
              strokeDasharray: dash,
            },
          ),
        ),
        ...([jumper, electrode, eighth] as const).map((conductor) =>
          text(
            points.filter((one) => one.conductor === conductor && one.supply === namedAt[conductor].supply),
            {
              fx: "material",
              x: ({ supply }: Point) => supply / 1000,
              y: ({ required }: Point) => required / 1000,
              text: () => namedAt[conductor].words,
              fill: look[conductor].stroke,
              textAnchor: namedAt[conductor].anchor,
              dy: namedAt[conductor].dy,
              fontWeight: "bold",
            },
          ),
        ),
      ],
    }),
  };
}

function pointsOf(material: Material): readonly Point[] {
  const request = { code: { year }, supplyMaterial: material, conductor: { material } };
  const [bonding, grounding] = [
    prepare(mainBondingJumper, request),
    prepare(groundingElectrodeConductor, request),
  ];
  if (bonding.kind !== "by-area" || grounding.kind !== "by-area") throw new Error("one metal needs one area");
  return Array.from({ length: last / stride }, (_, i) => (i + 1) * stride).flatMap(
    (supply): readonly Point[] => [
      { material, conductor: jumper, supply, required: bonding.requiredArea(supply) },
      { material, conductor: electrode, supply, required: grounding.requiredArea(supply) },
      { material, conductor: eighth, supply, required: supply / 8 },
    ],
  );
}
