import * as v from "valibot";
import { count, says } from "../../input/define.js";
import { amperes } from "../../rules/shape.js";
import { chosenConductors } from "../../supply/shape.js";
import { feet, id, ownMaterials, reference, yes } from "../define.js";
import { load, requiredForLoad } from "../runs/shape.js";
import { factoryJumper } from "../systems/shape.js";

export const groundedConductor = v.pipe(
  v.strictObject({ load: v.optional(load) }),
  says("The grounded conductor that runs with them, with its load where that is known."),
);

export const generator = v.pipe(
  v.strictObject({
    id,
    supply: v.pipe(v.union([chosenConductors, requiredForLoad]), says("Its ungrounded conductors.")),
    to: reference("the first disconnect or transfer switch, or a name of its own"),
    integralOvercurrentDevice: yes(
      "whether it has an overcurrent device of its own",
      "Whether it has an overcurrent device of its own.",
    ),
    deviceAmperes: v.optional(amperes("Rating of the integral device; present if and only if there is one.")),
    groundedConductor: v.optional(groundedConductor),
    raceways: v.optional(
      v.pipe(count("raceways or cables"), says("Raceways or cables in parallel that its conductors run in.")),
    ),
    factoryJumper: v.optional(factoryJumper),
    lengthFeet: v.optional(feet),
    materials: ownMaterials("bondingJumpers", "groundedConductors", "equipmentGrounding"),
  }),
  says("A generator that is not a separately derived system: its grounded conductor is not switched."),
);

export const transferSwitch = v.pipe(
  v.strictObject({
    id,
    groundedConductor: v.pipe(
      v.picklist(["switched", "carried-through", "none"]),
      says(
        "Whether it switches the grounded conductor, carries it through solidly, or has none at all. Carried through, the source behind it is not separately derived.",
      ),
    ),
  }),
  says("A transfer switch between a normal and an alternate source."),
);
