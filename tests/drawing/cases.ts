import { scheduleOf } from "bondmil";
import type { DrawnLine, Point, Sheet } from "../../src/drawing/drawing.js";
import { groupsOf } from "../../src/drawing/groups.js";
import { wholeSheetsOf } from "../../src/drawing/sheets.js";
import { demo, demoNames, derived, installation, service } from "../installation/installations.js";

const hostile = "<script>alert(\"x\")</script> & 'quoted'";
const long =
  "an id of one hundred and more letters that goes on and on, withoutanyspaceatallforaverylongtime W".repeat(
    2,
  );
const rightToLeft = "\u05dc\u05d5\u05d7 \u05e8\u05d0\u05e9\u05d9 ".repeat(12).trim();

/** Names that are long, of letters that are wide or run from right to left, or look like markup. */
export const hostileAndLong = installation({
  services: [
    service({
      id: hostile,
      runs: [
        {
          id: long,
          from: "U1",
          to: "D1",
          supply: { sets: [{ count: 2, size: "500 kcmil", material: "copper" }] },
          raceways: { count: 1, kind: "nonmetallic" },
        },
      ],
      electrodes: [
        { id: `${hostile} rod`, kind: "rod", from: "D1", ferrousRaceway: true },
        { id: "MMMMWWWW@@@@MMMMWWWW", kind: "ring", ringConductor: "2 AWG", from: `${hostile} rod` },
        { id: rightToLeft, kind: "plate", from: "D1" },
      ],
    }),
  ],
});

/** Installations of several kinds. */
export const installations = {
  ...Object.fromEntries(demoNames.map((name) => [name, demo(name)])),
  "hostile and long names": hostileAndLong,
  "boxes without supply conductors": installation({
    services: [
      service({
        boxesWithoutSupply: [
          { id: "CT meter", kind: "meter", beside: "D1", bondedBy: "equipment-grounding-conductor" },
          { id: "CT gutter", kind: "gutter", beside: "D1", bondedBy: "metal-raceway" },
        ],
      }),
    ],
  }),
  impedance: installation({
    derivedSystems: [
      derived({ grounding: "impedance", impedance: { amperes: 10, electrodeConductorAt: "impedance" } }),
    ],
  }),
};

export const cases = Object.entries(installations);

/** The sheets of an installation before any of them is divided. */
export function whole(one: (typeof cases)[number][1]): readonly Sheet[] {
  return groupsOf(one, scheduleOf(one)).flatMap((group) => wholeSheetsOf(group));
}

export function lineOf(sheet: Sheet | undefined, id: string): DrawnLine {
  const found = sheet?.lines.find(({ conductor }) => conductor === id);
  if (found === undefined) throw new Error(`there is no line of ${id}`);
  return found;
}

export function ends({ points }: DrawnLine): readonly [Point, Point] {
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) throw new Error("a line without points");
  return [first, last];
}

export const [shop] = whole(demo("shop"));
