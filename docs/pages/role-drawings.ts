import { readFileSync } from "node:fs";
import { drawingAsSvg, drawingOf, type Installation, type Role, readInstallation, scheduleOf } from "bondmil";
import { roleIds } from "../../src/edition/tables/roles.generated.js";

/** The installation whose drawing shows a role; the data of all of them are invented. */
const shownIn: Readonly<Record<Role, string>> = {
  "main-bonding-jumper": "shop",
  "system-bonding-jumper": "pump-station",
  "supply-side-bonding-jumper": "shop",
  "grounded-conductor": "shop",
  "equipment-grounding-conductor": "shop",
  "equipment-bonding-jumper": "pump-station",
  "grounding-electrode-conductor": "shop",
  "electrode-bonding-jumper": "shop",
  "electrode-raceway-bonding-jumper": "shop",
  "impedance-grounding-conductor": "pump-station",
  "impedance-bonding-jumper": "pump-station",
  "water-piping-bonding-jumper": "shop",
  "other-piping-bonding-jumper": "shop",
  "structural-metal-bonding-jumper": "pump-station",
  "intersystem-bonding-conductor": "shop",
};

/** For each role a drawing in which its first conductor stands out, for the page of the role. */
export function roleDrawings(): Readonly<Record<string, string>> {
  return Object.fromEntries(
    roleIds.map((role) => {
      const installation = read(shownIn[role]);
      const found = scheduleOf(installation).conductors.find(
        (one) => one.role === role && one.part === undefined && one.quantity > 0,
      );
      if (found === undefined) throw new Error(`${shownIn[role]} has no ${role}`);
      const svg = drawingAsSvg(drawingOf(installation), { highlight: found.id });
      return [`docs/samples/roles/${role}.svg`, svg] as const;
    }),
  );
}

function read(name: string): Installation {
  return readInstallation(readFileSync(new URL(`../installations/${name}.json`, import.meta.url), "utf8"));
}
