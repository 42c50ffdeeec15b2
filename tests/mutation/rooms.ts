const all = (folder: string) => `tests/${folder}/**/*.test.ts`;

const ofRules = ["sizing", "supply", "roles", "rules", "asking", "systems", "conductor", "corpus"].map(all);

const laws = (...names: readonly string[]) => names.map((name) => `tests/laws/${name}.test.ts`);

// The other laws go over a whole grid: four fifths of the time, so a change that only they would notice counts as unnoticed.
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
const keptRefusals = "tests/kept/refusals.test.ts";

/** Holds the marks by which a result is known that is handed back. */
const givenResults = "tests/input/given-result.test.ts";

/** What `.ci/run` holds fresh by `npm run pages -- --check`. */
const pages = "tests/mutation/generated-pages.ts";

/** The tests that can notice a change in a room of the library, nearest first: the first failure ends the run of a change. */
export const rooms = {
  input: [all("input"), ...ofRules, ...ofInstallations, keptRefusals],
  units: [all("units"), ...ofRules],
  conductor: [all("conductor"), all("roles"), all("supply"), all("corpus"), ...quickLaws],
  edition: [all("edition"), all("tables"), ...ofRules, ...quickLaws, "tests/installation/amendments.test.ts"],
  ampacity: [all("ampacity"), "tests/corpus/corpus.test.ts", ...laws("ampacity")],
  supply: [...ofRules, ...quickLaws],
  sizing: [...ofRules, ...quickLaws],
  rules: [all("input"), ...ofRules, ...quickLaws],
  roles: [...ofRules, ...quickLaws],
  asking: [all("asking"), ...ofRules, ...quickLaws],
  systems: [all("systems"), givenResults, all("installation"), ...ofRules],
  engineering: [all("engineering"), givenResults, ...laws("voltage-drops"), ...ofRules],
  candidates: [all("candidates"), givenResults, ...laws("candidates"), "tests/corpus/supplies.test.ts"],
  comparison: [all("comparison"), "tests/kept/comparisons.test.ts", ...kept, ...laws("amendments")],
  installation: [...ofInstallations, ...kept, keptRefusals, "tests/kept/findings.test.ts"],
  drawing: [all("drawing"), ...kept, pages],
  report: [all("report"), ...kept, pages],
  command: [all("command"), "tests/command/stream.test.ts", "tests/kept/commands.test.ts", pages],
} satisfies Record<string, readonly string[]>;

/** Whether it is the name of a room. */
export function isRoom(name: string): name is keyof typeof rooms {
  return Object.hasOwn(rooms, name);
}

/** The tests of the room that is measured, which each process of the measurement is told by its environment. */
export function measuredTests(): readonly string[] {
  const name = process.env.MEASURED_ROOM ?? "";
  if (!isRoom(name))
    throw new Error(`MEASURED_ROOM must be one of ${Object.keys(rooms).join(", ")}; it is "${name}"`);
  return rooms[name];
}
