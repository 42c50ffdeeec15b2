/** A folder of tools beside the data that they make or use; no part of the library. */
export interface ToolRoom {
  readonly name: string;
  readonly what: string;
  /** What it may import of src, as beginnings of paths below it; an empty one is all. */
  readonly src: readonly string[];
}

/**
 * Top floor first: a room imports only from itself, from rooms before it, and of src what it names. What writes the generated modules
 * imports none of them, so that it runs when they are stale or broken.
 */
export const toolRooms: readonly ToolRoom[] = [
  {
    name: "tables/tools/generator",
    what: "reads and checks the tables; what the generated modules, the CSV and the list of debts say",
    src: ["edition/edition-year.ts", "edition/evidence.ts"],
  },
  {
    name: "tables/tools/scaffold",
    what: "stubs of a new edition or role",
    src: ["edition/edition-year.ts"],
  },
  {
    name: "tables/tools/witness",
    what: "sheets for readers of an edition, and their answers",
    src: ["edition/edition-year.ts"],
  },
  {
    name: "tables/tools/shapes",
    what: "what the generated types, checks and schemas of inputs say",
    src: ["input/define.ts", "input/limits.ts"],
  },
  {
    name: "tables/tools",
    what: "the entry `bondmil/tables`, and the commands",
    src: ["index.ts", "input/", "edition/edition-year.ts", "edition/evidence.ts"],
  },
  {
    name: "corpus/tools",
    what: "the entry `bondmil/corpus`, runner, references, SQL, verifier, and the commands",
    src: ["index.ts", "input/"],
  },
  {
    name: "corpus/tools/mutation",
    what: "changes of single cells in the running library",
    src: ["index.ts", "edition/tables/", "edition/kept-code.ts"],
  },
  {
    name: "corpus/tools/wrong-programs",
    what: "the library with one named mistake in it, and which of them the checks notice",
    src: ["index.ts", "edition/", "asking/grid.ts"],
  },
  { name: "docs/pages", what: "builders of the generated pages", src: [""] },
  {
    name: "docs/website",
    what: "the site: guides, pages of the roles and reference as HTML, and its check",
    src: [],
  },
  { name: "docs/demos", what: "demonstrations", src: ["index.ts"] },
  {
    name: "release",
    what: "what is checked before a release, and its results reproduced",
    src: ["index.ts", "asking/"],
  },
  {
    name: "docs/try",
    what: "the page to try: its state as pure functions in `state`, its view in `view`",
    src: ["index.ts"],
  },
];

/** The room of a file by its path in the repository; nothing for one that is in none. */
export function toolRoomOf(file: string): ToolRoom | undefined {
  return toolRooms
    .filter(({ name }) => file.startsWith(`${name}/`))
    .reduce<ToolRoom | undefined>(
      (longest, room) => (longest && longest.name.length > room.name.length ? longest : room),
      undefined,
    );
}
