import { ampacityIn } from "../ampacity/index.js";
import { areaOf, type Material, standardSizes } from "../conductor/index.js";
import type { Code } from "../edition/index.js";
import type { AnyRole, PlainQuestion } from "../roles/definition.js";
import { ratingTable } from "../rules/rating-table.js";

/** A plain question with a name that a person reads. */
export interface GridQuestion {
  readonly name: string;
  readonly question: Pick<PlainQuestion, "code" | "material"> & Partial<PlainQuestion>;
}

const metals: readonly Material[] = ["copper", "aluminum"];
const sizes = /* @__PURE__ */ standardSizes.filter((size) => areaOf(size) >= areaOf("12 AWG"));
const mostSets = 20;

/**
 * The grid of a role: the plain questions that show all that decides its size. By supply every standard size from 12 AWG, 1 to 20 sets, in
 * both metals; by rating the end of every row of the table; by a current every ampacity of the 60 C column; by a conductor every size.
 */
export function gridOf({ by }: AnyRole, code: Code): readonly GridQuestion[] {
  return metals.flatMap((material) => questionsIn(by, code, material));
}

function questionsIn(by: AnyRole["by"], code: Code, material: Material): readonly GridQuestion[] {
  const named = (what: string, question: Partial<PlainQuestion>): GridQuestion => ({
    name: what === "" ? material : `${what}, ${material}`,
    question: { code, material, ...question },
  });
  switch (by) {
    case "supply":
      return supplies().map(({ name, supply }) => named(name, { supply }));
    case "rating":
      return ratingTable({ year: code.year }).rows.map(({ through }) =>
        named(`${through} A`, { amperes: through }),
      );
    case "current":
      return currentsOf(code, material).map((amperes) => named(`${amperes} A`, { amperes }));
    case "conductor":
      return sizes.map((size) => named(size, { size }));
    case "named-size":
      return material === "copper" ? [named("", {})] : [];
  }
}

function supplies(): readonly { readonly name: string; readonly supply: PlainQuestion["supply"] }[] {
  return metals.flatMap((material) =>
    sizes.flatMap((size) =>
      Array.from({ length: mostSets }, (_, i) => ({
        name: `${i + 1} x ${size} ${material}`,
        supply: { sets: [{ count: i + 1, size, material }] },
      })),
    ),
  );
}

function currentsOf({ year }: Code, material: Material): readonly number[] {
  return sizes.flatMap((size) => ampacityIn(year, size, material, 60).amperes ?? []);
}
