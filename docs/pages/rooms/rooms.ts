/** A folder of src with one purpose. */
export interface Room {
  readonly name: string;
  readonly what: string;
  /** Packages that the room may import; none by default. */
  readonly packages?: readonly string[];
  /** Whether the room may import modules of Node; absent means no, so that it works in browsers. */
  readonly nodeModules?: true;
}

/** Top floor first: a room imports only from itself and from rooms before it. */
export const rooms: readonly Room[] = [
  { name: "input", what: "checks of input, and the one error; knows nothing of the trade" },
  { name: "units", what: "areas and exact products" },
  { name: "conductor", what: "size names, materials, areas, parsing" },
  { name: "edition", what: "code, policies, readings, evidence; generated modules in `edition/tables`" },
  { name: "ampacity", what: "ampacity of a conductor in its place, and the device that may protect it" },
  { name: "supply", what: "sets, the two sums, conductors of equal ampacity, conductors for a load" },
  {
    name: "sizing",
    what: "the kernel: row, 12.5 percent, floor, cap, and the one place where an area becomes a size. Never an edition or a role",
  },
  {
    name: "rules",
    what: "what the rules of several roles share: decisions, results, cautions, amendments laid over",
  },
  {
    name: "roles",
    what: "one folder per role, exporting one value: its input, its rule, its plainest question",
  },
  {
    name: "asking",
    what: "what goes over any role: sizing, sizing in a loop, the largest supply and device, reserve",
  },
  { name: "systems", what: "what a source makes, and what a disconnect that is marked so counts as" },
  { name: "engineering", what: "beside the code minimum" },
  {
    name: "candidates",
    what: "lawful ways to supply a load, each with the conductors that it causes",
  },
  {
    name: "comparison",
    what: "editions, readings and amendments side by side, and sweeps over many inputs; asks a role and compares the steps",
  },
  {
    name: "installation",
    what: "the whole installation as one document: its definition, its schedule, the check of what is installed",
  },
  {
    name: "drawing",
    what: "the path of an installation as shapes with coordinates; places in rows, conductors in columns, lanes and rows of their own",
  },
  {
    name: "report",
    what: "what a person reads: results as documents of a few kinds of parts, and one renderer for each format; pure functions that know no rule",
  },
  {
    name: "command",
    what: "the command `bondmil`: reads, asks the rooms above, writes. The one room that knows Node; no part of the library",
    packages: ["bondmil", "bondmil/corpus", "string-width"],
    nodeModules: true,
  },
];
