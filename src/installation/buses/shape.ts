import * as v from "valibot";
import { anyOf, says } from "../../input/define.js";
import { id, ownMaterials, reference } from "../define.js";

/** Form of one conductor, which a place or run of the document names. */
export const formOf = (what: string) =>
  v.optional(
    v.pipe(
      v.picklist(["wire", "bus"]),
      says(`Form of ${what}: a wire by default; a bus gets an area instead of a size.`),
    ),
  );

export const switchboardBus = v.pipe(
  v.strictObject({
    id,
    jumperForm: formOf("its main bonding jumper"),
    materials: ownMaterials("bondingJumpers", "electrodeConductors"),
  }),
  says(
    "The bus of a switchboard, on which several sections stand. Runs end at it; the sets that feed it count once, and it has one main bonding jumper.",
  ),
);

export const buses = v.optional(
  v.pipe(anyOf(switchboardBus, 50), says("Buses of switchboards, with the disconnects that stand on them.")),
);

export const onBus = v.optional(
  reference("the bus of the switchboard that it is a section of; no run of its own then leads to it"),
);
