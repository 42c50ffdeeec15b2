import { axisX, barX, ruleX } from "@observablehq/plot";
import { capital } from "../../../src/report/words/names.js";
import { inWords } from "../in-words.js";
import { colors, drawn } from "./drawn.js";
import type { Picture } from "./picture.js";

/** How much of its grid an alternative of a reading changes where it changes most. */
export interface Reach {
  readonly reading: string;
  readonly alternative: string;
  readonly total: number;
  readonly smaller: number;
  readonly larger: number;
}

/** The reach of the readings, the farthest first. */
export function reachOfReadings(reaches: readonly Reach[]): Picture {
  const share = (one: Reach): number => (one.smaller + one.larger) / one.total;
  const sorted = [...reaches].sort((a, b) => share(b) - share(a) || a.reading.localeCompare(b.reading, "en"));
  const [first] = sorted;
  const title = "How far each reading of the text reaches";
  const description = `For each of ${reaches.length} readings the share of its grid in which another alternative gives another standard size, where that share is largest: to the left smaller sizes, to the right larger ones. ${first === undefined ? "" : `${capital(readingWords(first.reading))} reaches farthest, ${percent(share(first))} percent.`} ${sorted.filter((one) => share(one) === 0).length} change no size.`;
  const most = Math.max(
    ...reaches.flatMap(({ total, smaller, larger }) => [smaller / total, larger / total]),
  );
  return {
    name: "reach-of-readings",
    title,
    description,
    columns: ["reading", "alternative", "configurations", "smaller", "larger"],
    rows: sorted.map((one) => [one.reading, one.alternative, one.total, one.smaller, one.larger]),
    svg: drawn(title, description, {
      height: 60 + 20 * sorted.length,
      marginLeft: 330,
      marginTop: 40,
      x: {
        domain: [-100 * most, 100 * most],
        label: "\u2190 smaller    percent of configurations    larger \u2192",
        labelAnchor: "center",
      },
      y: { label: null, domain: sorted.map(({ reading }) => reading), tickFormat: readingWords },
      marks: [
        axisX({ anchor: "top", tickFormat: (count: number) => `${Math.abs(count)}`, labelAnchor: "center" }),
        barX(sorted, {
          y: "reading",
          x: ({ smaller, total }: Reach) => (-100 * smaller) / total,
          fill: colors.orange,
        }),
        barX(sorted, {
          y: "reading",
          x: ({ larger, total }: Reach) => (100 * larger) / total,
          fill: colors.blue,
        }),
        ruleX([0]),
      ],
    }),
  };
}

/** The id of a reading in words: cap in 2014. */
function readingWords(id: string): string {
  const [, name = id, edition = ""] = /^(.*?)(?:-in-(\d{4}))?$/.exec(id) ?? [];
  const words = inWords(name).replace(/\b(load|supply) side\b/, "$1-side");
  return edition === "" ? words : `${words} in ${edition}`;
}

function percent(share: number): string {
  return (100 * share).toFixed(0);
}
