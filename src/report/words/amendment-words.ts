import type { Amendment } from "../../edition/index.js";

/** How each kind of amendment is called. */
export const amendmentWords: Readonly<Record<Amendment["kind"], string>> = {
  cell: "value of a table",
  floor: "minimum size",
  basis: "basis of sizing",
  reading: "reading of an open text",
  material: "materials",
  "always-wire": "wire-type conductor always required",
};
