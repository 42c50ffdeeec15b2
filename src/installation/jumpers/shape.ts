import * as v from "valibot";
import { listOf, says, text } from "../../input/define.js";
import { feet, id, ownMaterials, reference, yes } from "../define.js";

export const tradeSize = v.pipe(
  v.picklist(["3/8", "1/2", "3/4", "1", "1-1/4", "1-1/2", "2", "2-1/2", "3", "3-1/2", "4"]),
  says("Trade size of a conduit, in inches."),
);

export const flexibleConduit = v.pipe(
  v.strictObject({
    kind: v.pipe(
      v.picklist(["flexible-metal-conduit", "liquidtight-flexible-metal-conduit"]),
      says("What the conduit is."),
    ),
    tradeSize,
    flexesInUse: yes(
      "whether it must flex after it is installed",
      "Whether it must flex after it is installed, as for a machine that moves or vibrates.",
    ),
    lengthFeet: v.pipe(feet, says("Feet of flexible conduit in the whole path of the fault.")),
  }),
  says("Flexible metal conduit, which within limits serves in place of a jumper."),
);

export const loadSideJumper = v.pipe(
  v.strictObject({
    id,
    circuits: v.pipe(
      listOf(reference("a circuit in the raceway or enclosure that it bonds"), 200),
      says("The circuits in what it bonds; the largest device decides."),
    ),
    from: v.pipe(
      text("where it starts"),
      says("Where it starts: an id of the document, or a name of its own."),
    ),
    to: v.pipe(text("where it ends"), says("Where it ends: an id of the document, or a name of its own.")),
    flexibleConduit: v.optional(flexibleConduit),
    placed: v.pipe(
      v.picklist(["inside", "outside"]),
      says("Whether it runs inside the raceway or enclosure, or outside along it."),
    ),
    lengthFeet: v.optional(v.pipe(feet, says("Its length in feet; it must be told of one outside."))),
    atOutdoorPole: v.optional(
      yes(
        "whether it bonds isolated raceway at an outdoor pole",
        "Whether it bonds isolated sections of raceway at an outdoor pole, where it may be longer; it does not by default.",
      ),
    ),
    materials: ownMaterials("bondingJumpers"),
  }),
  says(
    "An equipment bonding jumper on the load side: around flexible conduit, between panelboards or enclosures.",
  ),
);
