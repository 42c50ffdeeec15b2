/** A folder of src with one purpose. */
export interface Room {
  readonly name: string;
  readonly what: string;
  /** Packages that the room may import; none unless told. */
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
  { name: "ampacity", what: "ampacity table" },
  { name: "supply", what: "sets, the two sums, conductors of equal ampacity, conductors for a load" },
  {
    name: "sizing",
    what: "the kernel: row, one eighth, floor, cap, and the one place where an area becomes a size. Never an edition or a role",
  },
  { name: "rules", what: "one file per role: picks the policy and calls the kernel" },
  { name: "arrangement", what: "whole choices side by side" },
  { name: "engineering", what: "beside the code minimum" },
  {
    name: "comparison",
    what: "editions and readings side by side, and sweeps over many inputs; asks a sizing function and compares the steps",
  },
  {
    name: "installation",
    what: "the whole drawing as one document: its definition, its schedule, the check of what is installed",
    packages: ["valibot"],
  },
  { name: "picture", what: "the path of a drawing as shapes with coordinates; a fixed layout in layers" },
  { name: "report", what: "text from results; pure functions that know no rule" },
  {
    name: "command",
    what: "the command `bondmil`: reads, asks the rooms above, writes. The one room that knows Node; no part of the library",
    packages: ["bondmil", "bondmil/corpus"],
    nodeModules: true,
  },
];
