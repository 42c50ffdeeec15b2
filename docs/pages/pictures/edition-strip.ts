import { barX, text } from "@observablehq/plot";
import {
  conductorName,
  type EditionYear,
  editionYears,
  formatArea,
  type Installation,
  type SizingResult,
  scheduleOf,
} from "bondmil";
import { drawn } from "./drawn.js";
import type { Picture } from "./picture.js";

/** A run of editions in which a conductor has one size. */
interface Stretch {
  readonly conductor: string;
  readonly from: EditionYear;
  readonly through: EditionYear;
  readonly size: string;
}

/** The sizes of an installation through the editions: a bar ends where a size changes. */
export function editionStrip(name: string, installation: Installation): Picture {
  const stretches = stretchesOf(installation);
  const conductors = [...new Set(stretches.map(({ conductor }) => conductor))];
  const changing = conductors.filter(
    (id) => stretches.filter(({ conductor }) => conductor === id).length > 1,
  );
  const title = `${installation.title ?? name} through the editions`;
  const description = `A row for each of ${changing.length} conductors whose size changes; ${conductors.length - changing.length} others keep one size from ${editionYears[0]} through ${editionYears.at(-1)} and are not drawn. Each bar is a run of editions with one size, which stands in it: ${changing
    .map(
      (id) =>
        `${id}: ${stretches
          .filter(({ conductor }) => conductor === id)
          .map(({ from, size }) => `${size} from ${from}`)
          .join(", ")}`,
    )
    .join("; ")}. The installation is invented.`;
  const shown = stretches.filter(({ conductor }) => changing.includes(conductor));
  const place = (year: EditionYear): number => editionYears.indexOf(year);
  return {
    name: `${name}-through-editions`,
    title,
    description,
    columns: ["conductor", "from edition", "through edition", "size"],
    rows: stretches.map((one) => [one.conductor, one.from, one.through, one.size]),
    svg: drawn(title, description, {
      height: 50 + 30 * changing.length,
      marginLeft: 330,
      marginTop: 30,
      x: {
        axis: "top",
        label: null,
        domain: [0, editionYears.length],
        ticks: editionYears.map((_, i) => i + 0.5),
        tickFormat: (at: number) => editionYears[Math.floor(at)] ?? "",
        tickSize: 0,
      },
      y: { label: null, domain: changing, padding: 0.2 },
      marks: [
        ...[false, true].map((isRequired) =>
          barX(
            shown.filter(({ size }) => (size === none) !== isRequired),
            {
              y: "conductor",
              x1: ({ from }: Stretch) => place(from),
              x2: ({ through }: Stretch) => place(through) + 1,
              fill: isRequired ? "#d6e6f2" : "white",
              stroke: "#0b3c5d",
              strokeDasharray: isRequired ? "none" : "3 3",
              insetLeft: 1,
              insetRight: 1,
              rx: 4,
            },
          ),
        ),
        text(shown, {
          y: "conductor",
          x: ({ from, through }: Stretch) => (place(from) + place(through) + 1) / 2,
          text: "size",
        }),
      ],
    }),
  };
}

const none = "none";

function sizeOf({ outcome }: SizingResult): string {
  switch (outcome.kind) {
    case "conductor":
      return outcome.quantity === 1 ? outcome.size : `${outcome.quantity} x ${outcome.size}`;
    case "area-only":
      return formatArea(outcome.requiredArea);
    case "not-required":
      return none;
  }
}

function stretchesOf(installation: Installation): readonly Stretch[] {
  const years = editionYears.map((year) => ({
    year,
    sizes: new Map(
      scheduleOf({ ...installation, code: { year } }).conductors.map((one) => [
        conductorName(one),
        sizeOf(one.result),
      ]),
    ),
  }));
  const names = [...new Set(years.flatMap(({ sizes }) => [...sizes.keys()]))];
  return names.flatMap((conductor) => {
    const found: Stretch[] = [];
    for (const { year, sizes } of years) {
      const size = sizes.get(conductor) ?? none;
      const before = found.at(-1);
      if (before?.size === size) found[found.length - 1] = { ...before, through: year };
      else found.push({ conductor, from: year, through: year, size });
    }
    return found;
  });
}
