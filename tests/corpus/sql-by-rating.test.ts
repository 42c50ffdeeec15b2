import {
  cableTrayAsEquipmentGroundingConductor,
  type EditionYear,
  equipmentBondingJumper,
  equipmentGroundingConductor,
  type Material,
  otherPipingBondingJumper,
  type SizingResult,
  type StandardSize,
  size,
  waterPipingBondingJumper,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { openDatabase, rowsOf } from "../../corpus/tools/sql/database.js";
import type { TrayMetal } from "../../src/edition/index.js";

/** As for the rules by supply: the whole in `npm run proof`, every so manieth cell in `npm test`. */
const everyNth = process.env["WHOLE_GRID"] === "true" ? 1 : 11;
const database = await openDatabase([]);

/** A device with the conductors behind it, and the metal of the conductor to be sized. */
interface Rated {
  readonly code: { readonly year: EditionYear };
  readonly amperes: number;
  readonly material: Material;
  readonly supply: {
    readonly sets: readonly [
      { readonly count: number; readonly size: StandardSize; readonly material: Material },
    ];
  };
}

const circuitsOf = ({ amperes, supply }: Rated) => [{ device: { amperes }, conductors: supply }];

const withConductors: Readonly<
  Record<string, { readonly from: string; readonly ask: (asked: Rated) => SizingResult }>
> = {
  "equipment-grounding-conductor": {
    from: "equipment where policy = 'equipment-grounding-conductor'",
    ask: (asked) =>
      size(equipmentGroundingConductor, {
        code: asked.code,
        circuits: circuitsOf(asked),
        conductor: { material: asked.material },
      }),
  },
  "equipment-bonding-jumper": {
    from: "equipment where policy = 'equipment-bonding-jumper'",
    ask: (asked) =>
      size(equipmentBondingJumper, {
        code: asked.code,
        circuits: circuitsOf(asked),
        conductor: { material: asked.material },
      }),
  },
  "water piping of a building": {
    from: "building_piping",
    ask: ({ code, amperes, material, supply }) =>
      size(waterPipingBondingJumper, {
        code,
        system: "building",
        supply,
        deviceAmperes: amperes,
        conductor: { material },
      }),
  },
};

/** What goes by the device alone. */
const alone: Readonly<Record<string, (asked: Omit<Rated, "supply">) => SizingResult>> = {
  "other piping": ({ code, amperes, material }) =>
    size(otherPipingBondingJumper, { code, deviceAmperes: amperes, conductor: { material } }),
  "water piping of one occupancy": ({ code, amperes, material }) =>
    size(waterPipingBondingJumper, {
      code,
      system: "occupancy",
      deviceAmperes: amperes,
      conductor: { material },
    }),
};

describe("the rules by rating, written again in SQL", () => {
  it.each(Object.entries(withConductors))("agree on %s", (_, { from, ask }) => {
    const wrong: object[] = [];
    let place = 0;
    for (const row of rowsOf(
      database,
      `select edition, amperes, read, metal, size, sets, area from ${from}`,
    )) {
      place += 1;
      if (place % everyNth !== 0) continue;
      const [year, amperes, material, metal, of, count, area] = row as unknown as RatedCell;
      const asked: Rated = {
        code: { year },
        amperes,
        material,
        supply: { sets: [{ count, size: of, material: metal }] },
      };
      const { requiredArea } = ask(asked);
      if (requiredArea !== area)
        wrong.push({ input: JSON.stringify(asked), sql: area, library: requiredArea });
    }
    expect(place).toBeGreaterThan(20_000);
    expect(wrong.slice(0, 5)).toEqual([]);
  });

  it.each(Object.entries(alone))("agree on %s, at every edge of a row", (_, ask) => {
    const rows = [...rowsOf(database, "select edition, amperes, metal, area from device")];
    const wrong = rows.flatMap((row) => {
      const [year, amperes, material, area] = row as unknown as AloneCell;
      const input = { code: { year }, amperes, material };
      const { requiredArea } = ask(input);
      return requiredArea === area ? [] : [{ input, sql: area, library: requiredArea }];
    });
    expect(rows.length).toBeGreaterThan(500);
    expect(wrong.slice(0, 5)).toEqual([]);
  });

  it("agree on cable trays, at every edge of a row", () => {
    const rows = [...rowsOf(database, "select edition, amperes, metal, least from tray")];
    const wrong = rows.flatMap((row) => {
      const [year, amperes, metal, least] = row as unknown as TrayCell;
      const input = { code: { year }, amperes, metal };
      const { outcome } = size(cableTrayAsEquipmentGroundingConductor, input);
      const library = outcome.kind === "permitted" ? outcome.least.squareMillimeters : null;
      return library === least ? [] : [{ input, sql: least, library }];
    });
    expect(rows.filter((row) => row.at(-1) === null).length).toBeGreaterThan(0);
    expect(wrong.slice(0, 5)).toEqual([]);
  });
});

type RatedCell = readonly [EditionYear, number, Material, Material, StandardSize, number, number];
type AloneCell = readonly [EditionYear, number, Material, number];
type TrayCell = readonly [EditionYear, number, TrayMetal, number | null];
