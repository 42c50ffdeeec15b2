/** The tests that can notice a change in a room of the library, nearest first: the first failure ends the run of a change. */
export interface MeasuredRoom {
  readonly tests: readonly string[];
}

const all = (folder: string) => `tests/${folder}/**/*.test.ts`;

const ofRules = ["sizing", "supply", "roles", "rules", "asking", "systems", "conductor", "corpus"].map(all);

// The other laws go over a whole grid: four fifths of the time, so a change that only they would notice counts as unnoticed.
const laws = (...names: readonly string[]) => names.map((name) => `tests/laws/${name}.test.ts`);
const quickLaws = [
  ...laws("amendments", "evidence", "impedance-grounding", "limits", "materials", "metal-parts", "order"),
  ...laws("plain-data", "prepared", "sizes", "source", "voltage-drops"),
];

const ofInstallations = [
  all("installation"),
  all("systems"),
  "tests/corpus/installations.test.ts",
  "tests/corpus/installation-violations.test.ts",
  ...laws("violations", "raceways", "arrangements", "installations/found-where-drawn"),
];

/** Slow as some are, they notice most. */
const kept = ["tests/kept/installations.test.ts", "tests/kept/documents.test.ts"];

/** What `.ci/run` holds fresh by `npm run pages -- --check`. */
const pages = "tests/mutation/generated-pages.ts";

const beside = [all("corpus"), ...quickLaws];

export const rooms = {
  input: { tests: [...ofRules, ...ofInstallations] },
  units: { tests: [all("units"), ...ofRules] },
  conductor: { tests: [all("conductor"), all("roles"), all("supply"), ...beside] },
  edition: { tests: [all("tables"), ...ofRules, ...quickLaws] },
  ampacity: { tests: [all("ampacity"), "tests/corpus/corpus.test.ts", ...laws("ampacity")] },
  supply: { tests: [...ofRules, ...quickLaws] },
  sizing: { tests: [...ofRules, ...quickLaws] },
  rules: { tests: [...ofRules, ...quickLaws] },
  roles: { tests: [...ofRules, ...quickLaws] },
  asking: { tests: [all("asking"), ...ofRules, ...quickLaws] },
  systems: { tests: [all("systems"), all("installation"), ...ofRules] },
  engineering: { tests: [all("engineering"), ...laws("voltage-drops"), ...ofRules] },
  candidates: { tests: [all("candidates"), ...laws("candidates"), "tests/corpus/supplies.test.ts"] },
  comparison: {
    tests: [all("comparison"), "tests/kept/comparisons.test.ts", ...kept, ...laws("amendments")],
  },
  installation: { tests: [...ofInstallations, ...kept] },
  drawing: { tests: [all("drawing"), ...kept, pages] },
  report: { tests: [all("report"), ...kept, pages] },
  command: { tests: [all("command"), "tests/command/stream.test.ts", "tests/kept/commands.test.ts", pages] },
} as const satisfies Record<string, MeasuredRoom>;

export type Room = keyof typeof rooms;

/** The room that the tests are made and run for, which a process of the measurement is told by its environment. */
export function measuredRoom(): MeasuredRoom {
  const name = process.env.MEASURED_ROOM ?? "";
  if (!Object.hasOwn(rooms, name))
    throw new Error(`MEASURED_ROOM must be one of ${Object.keys(rooms).join(", ")}; it is "${name}"`);
  return rooms[name as Room];
}
