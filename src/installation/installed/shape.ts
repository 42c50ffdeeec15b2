import * as v from "valibot";
import { conductorSize, material } from "../../conductor/shape.js";
import { editionYear } from "../../edition/shape.js";
import { roleIds } from "../../edition/tables/roles.generated.js";
import { anyOf, byHand, count, name, positive, says } from "../../input/define.js";
import { reference, yes } from "../define.js";

const role = (what: string) =>
  v.pipe(v.picklist(roleIds), says(what), byHand({ type: ["Role", "edition/tables/roles.generated"] }));

const of = v.optional(
  reference(
    "what it belongs to or serves, as far as that tells it apart: a run, a circuit, an electrode, a pipe, a frame, a box, a disconnect, a system",
  ),
);

const at = v.optional(
  reference(
    "the place where one end of it was found, as far as that decides: an enclosure, a box, a source, an electrode",
  ),
);

export const purpose = v.pipe(
  v.strictObject({ role: role("What it serves as besides."), of, at }),
  says("A further conductor of the schedule that a found one stands for."),
);

export const foundConductor = v.pipe(
  v.strictObject({
    role: role("What it is there for."),
    of,
    at,
    name: v.optional(
      v.pipe(name("its name"), says("What it is called where it was found, in your own words.")),
    ),
    size: v.optional(v.pipe(conductorSize, says("Size of one conductor, of a wire."))),
    busArea: v.optional(
      v.pipe(positive("circular mils"), says("Area of its section in circular mils, of a bus.")),
    ),
    instead: v.optional(
      v.pipe(
        v.picklist(["bonding-fittings", "nonflexible-metal-raceway", "grounded-conductor"]),
        says(
          "What was found in place of a conductor: bonding fittings of a service raceway, a nonflexible metal raceway that serves, or the grounded conductor that bonds a box.",
        ),
      ),
    ),
    material: v.optional(v.pipe(material, says("Material of the wire or bus."))),
    quantity: v.optional(v.pipe(count("conductors"), says("How many there are; 1 by default."))),
    connectsGroundedConductor: v.optional(
      yes(
        "whether it connects the grounded conductor to metal",
        "Whether it connects the grounded conductor to metal, an electrode or equipment grounding conductors. Main and system bonding jumpers do.",
      ),
    ),
    servesAlso: v.optional(v.pipe(anyOf(purpose, 20), says("What the same conductor serves as besides."))),
    edition: v.optional(
      v.pipe(
        editionYear,
        says(
          "Edition that it was built under, which then judges it as printed; that of the installation by default.",
        ),
      ),
    ),
  }),
  says("A conductor, or what stands in its place, as it was found."),
);

export const installed = v.pipe(
  v.strictObject({
    found: v.optional(
      v.pipe(anyOf(foundConductor, 5000), says("What was found, one entry for conductors alike.")),
    ),
    asScheduled: v.optional(
      v.pipe(
        anyOf(
          reference(
            "a run, a circuit, a disconnect, a system or other thing whose conductors are all as scheduled, save those in `found`",
          ),
          5000,
        ),
        says("What was found exactly as scheduled, a whole run or system at once."),
      ),
    ),
    rest: v.optional(
      v.pipe(
        v.literal("as-scheduled"),
        says(
          "That everything which is not listed is as scheduled. Without it, what is required and not listed is missing.",
        ),
      ),
    ),
  }),
  says("What is installed or drawn, to be checked."),
);
