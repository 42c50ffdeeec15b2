import { checkOf, compareInstallation, type Installation, scheduleOf } from "bondmil";
import { describe, expect, it } from "vitest";
import { groupsOf } from "../../src/drawing/groups.js";
import { foundAsScheduled } from "../installation/found.js";
import { demo, demoNames, derived, installation } from "../installation/installations.js";
import { renamed } from "../laws/installations/changes/rewrite.js";

/** Names that look like what the library prints: parts without an id, arrangements, places, whole conductors. */
const deceptive: readonly string[] = [
  "electrodes",
  "grounded conductor",
  "equipment grounding conductors",
  "conductor inside",
  "common",
  ...["S1", "T1", "X1", "E1", "P1"].flatMap((id) => [
    `assembly of ${id}`,
    `neutral point of ${id}`,
    `impedance of ${id}`,
    `main-bonding-jumper ${id}`,
    `${id} (jumper-at-source)`,
    `${id} from D1 (jumper-in-each-enclosure)`,
    `raceway of grounding-electrode-conductor ${id}`,
    `grounding-electrode-tap ${id}`,
  ]),
];

function misnamed(one: Installation): Installation {
  const text = JSON.stringify(renamed(one).installation).replace(/\u00ab(\d+)\u00bb/g, (_, n) => {
    const name = deceptive[(Number(n) * 7) % deceptive.length];
    return `${Number(n) < deceptive.length ? "" : `${n} `}${name}`;
  });
  return JSON.parse(text) as Installation;
}

const cases: readonly (readonly [string, Installation])[] = [
  ...demoNames.map((name) => {
    const { installed: _, ...drawn } = demo(name);
    return [name, drawn] as const;
  }),
  [
    "arrangements side by side",
    installation({
      derivedSystems: [
        derived({
          jumperAt: "compare",
          electrodes: [{ id: "G1", kind: "structural-metal", from: "T1", ferrousRaceway: true }],
        }),
      ],
    }),
  ],
  [
    "an impedance",
    installation({
      derivedSystems: [
        derived({ grounding: "impedance", impedance: { amperes: 10, electrodeConductorAt: "impedance" } }),
      ],
    }),
  ],
];

/** Which conductors are drawn together, by their numbers. */
function drawnTogether(one: Installation): unknown {
  const marks = (list: readonly { readonly mark: number }[]) => list.map(({ mark }) => mark);
  return groupsOf(one, scheduleOf(one)).map(({ places, links }) => ({
    inside: places.map(({ inside }) => marks(inside)),
    links: links.map(({ conductors }) => marks(conductors)),
    ends: links.map(({ from, to }) =>
      [from, to].map((key) => places.findIndex((place) => place.key === key)),
    ),
  }));
}

describe("names that look like what the library prints", () => {
  it.each(cases)("put no conductor elsewhere in the picture: %s", (_, one) => {
    expect(drawnTogether(misnamed(one))).toEqual(drawnTogether(one));
  });

  it("keep an electrode apart from the impedance whose name it has", () => {
    const named = (id: string) =>
      drawnTogether(
        installation({
          derivedSystems: [
            derived({
              grounding: "impedance",
              impedance: { amperes: 10, electrodeConductorAt: "impedance" },
              electrodes: [{ id, kind: "structural-metal", from: "T1" }],
            }),
          ],
        }),
      );
    expect(named("impedance of X1")).toEqual(named("G1"));
  });

  it.each(cases)("make no two conductors one in a comparison: %s", (_, one) => {
    const sizes = (drawn: Installation) =>
      compareInstallation({
        over: "editions",
        editions: ["2014", "2023"],
        installation: drawn,
      }).conductors.map(({ entries }) => entries.map(({ conductor }) => conductor?.result.requiredArea));
    expect(sizes(misnamed(one))).toEqual(sizes(one));
  });

  it.each(cases)("change no verdict: %s", (_, one) => {
    const verdicts = (drawn: Installation) => {
      const found = foundAsScheduled(drawn);
      return checkOf({ ...drawn, installed: { found } }).conductors.map(({ verdict }) => verdict);
    };
    expect(verdicts(misnamed(one))).toEqual(verdicts(one));
  });
});
