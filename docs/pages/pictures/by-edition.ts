import { axisX, axisY, line, ruleY, text } from "@observablehq/plot";
import {
  type EditionYear,
  editionYears,
  mainBondingJumper,
  type Prepared,
  prepare,
  waterPipingBondingJumper,
} from "bondmil";
import { colors, drawn } from "./drawn.js";
import type { Picture } from "./picture.js";

const last = 3_000_000;
const stride = 10_000;
/** Below it the limit at the supply conductors differs too, which would not be seen. */
const first = 20_000;
const supplies = Array.from({ length: (last - first) / stride + 1 }, (_, i) => first + i * stride);

/** Editions that require the same everywhere. */
interface Line {
  readonly conductor: string;
  readonly editions: readonly EditionYear[];
  /** Circular mils required at each of the supplies. */
  readonly required: readonly number[];
}

interface Point {
  readonly conductor: string;
  readonly supply: number;
  readonly required: number;
}

const looks = [
  { stroke: colors.gray, strokeDasharray: "2 3" },
  { stroke: colors.orange, strokeDasharray: "7 3" },
  { stroke: colors.blue, strokeDasharray: "none" },
] as const;

const metal = "copper";

/** What conductors are required to be over the area of the supply, where editions differ. */
export function byEdition(): Picture {
  const code = (year: EditionYear) =>
    ({ code: { year }, supplyMaterial: metal, conductor: { material: metal } }) as const;
  const panels = {
    "main bonding jumper": linesOf("main bonding jumper", (year) => prepare(mainBondingJumper, code(year))),
    "water piping bonding jumper": linesOf("water piping bonding jumper", (year) =>
      prepare(waterPipingBondingJumper, code(year)),
    ),
  };
  const lines = Object.values(panels).flat();
  const title =
    "Required area over the area of the supply where editions differ, copper supply and conductor";
  const description = `Two panels. ${Object.entries(panels)
    .map(
      ([name, own]) =>
        `The ${name} has ${own.length} lines: ${own.map(({ editions }) => runsOf(editions)).join("; ")}.`,
    )
    .join(
      " ",
    )} Through 2011 the main bonding jumper stays at 3/0 AWG past the last bounded row until 12.5 percent of the supply is more; from 2014 it follows 12.5 percent at once. Supplies begin at ${first.toLocaleString("en-US")} circular mils; below, 2014 and the later editions differ by the limit at the supply conductors too. The jumper of water piping stops at 3/0 AWG in every edition but 2017, when it goes on with 12.5 percent; through 2014 it reaches that size at the last bounded row, from 2020 by 12.5 percent.`;
  return {
    name: "required-area-by-edition",
    title,
    description,
    columns: ["conductor", "editions", "supply circular mils", "required circular mils"],
    rows: lines.flatMap(({ conductor, editions, required }) =>
      supplies.map((supply, i) => [conductor, runsOf(editions), supply, required[i] ?? 0]),
    ),
    svg: drawn(title, description, {
      height: 400,
      marginBottom: 45,
      marginRight: 20,
      marginTop: 40,
      fx: { label: null, domain: Object.keys(panels) },
      x: { domain: [0, last / 1000], label: "ungrounded supply conductors, kcmil" },
      y: { domain: [0, 400], label: "required, kcmil", grid: true },
      marks: [
        ruleY([0]),
        axisX({ ticks: 6, labelOffset: 36 }),
        axisY({ anchor: "left" }),
        ...Object.values(panels).flatMap((own) =>
          own.flatMap((one, i) => marksOf(one, looks.length - own.length + i, i)),
        ),
      ],
    }),
  };
}

/** A line, and above all lines its editions behind a piece of it. */
function marksOf({ conductor, editions, required }: Line, look: number, place: number) {
  const { stroke, strokeDasharray } = looks[look] ?? looks[0];
  const points = required.map((area, i): Point => ({ conductor, supply: supplies[i] ?? 0, required: area }));
  const height = (380 - 24 * place) * 1000;
  const key = [100, 400].map((supply): Point => ({ conductor, supply: supply * 1000, required: height }));
  const channels = {
    fx: "conductor",
    x: ({ supply }: Point) => supply / 1000,
    y: ({ required: area }: Point) => area / 1000,
  };
  return [
    line(points, { ...channels, stroke, strokeWidth: 2.5, strokeDasharray }),
    line(key, { ...channels, stroke, strokeWidth: 2.5, strokeDasharray }),
    text(key.slice(-1), {
      ...channels,
      text: () => runsOf(editions),
      fill: stroke,
      fontWeight: "bold",
      textAnchor: "start",
      dx: 8,
    }),
  ];
}

function linesOf(conductor: string, of: (year: EditionYear) => Prepared): readonly Line[] {
  const found = new Map<string, Line>();
  for (const year of editionYears) {
    const prepared = of(year);
    if (prepared.kind !== "by-area") throw new Error("one metal needs one area");
    const required = supplies.map((supply) => prepared.requiredArea(supply));
    const key = required.join();
    found.set(key, { conductor, editions: [...(found.get(key)?.editions ?? []), year], required });
  }
  return [...found.values()];
}

/** Editions with runs of neighbors as one: 2008 to 2014, 2020 to 2026. */
function runsOf(editions: readonly EditionYear[]): string {
  const runs: EditionYear[][] = [];
  for (const year of editions) {
    const before = runs.at(-1);
    const isNext =
      before !== undefined && editionYears.indexOf(before.at(-1) ?? year) === editionYears.indexOf(year) - 1;
    if (isNext) before.push(year);
    else runs.push([year]);
  }
  return runs.map((run) => (run.length === 1 ? run[0] : `${run[0]} to ${run.at(-1)}`)).join(", ");
}
