import * as v from "valibot";
import { code } from "../../edition/shape.js";
import { flag, listOf, name, says } from "../../input/define.js";
import { bySupply, electrode, systemKind, wantedWire } from "../../rules/shape.js";
import { supply } from "../../supply/shape.js";

const { conductor, temperature } = bySupply;

export const suppliedPlace = v.pipe(
  v.strictObject({
    id: v.pipe(name("this place, as on the drawing"), says("Name on the drawing; unique within a question.")),
    supply: v.pipe(supply, says("The ungrounded conductors to it.")),
  }),
  says(
    "A disconnecting means with its enclosure, a raceway, or a wireway ahead of several, with the ungrounded conductors to it.",
  ),
);

const enclosures = v.pipe(
  listOf(suppliedPlace),
  says("The enclosures of the disconnects, each with the ungrounded conductors to it."),
);

export const mainJumpersInput = v.pipe(
  v.strictObject({
    code,
    enclosures,
    wireway: v.optional(
      v.pipe(
        suppliedPlace,
        says("A wireway, gutter or box ahead of the enclosures, with all the conductors that supply it."),
      ),
    ),
    conductor,
    temperature,
  }),
  says("A service with one enclosure or several, whose main bonding jumpers are to be arranged."),
);

export const derivedSource = v.pipe(
  v.strictObject({
    id: v.pipe(name("the source, as on the drawing"), says("Name on the drawing.")),
    outdoors: v.pipe(
      flag("whether the source stands outdoors"),
      says("Whether the source stands outside the building that it supplies."),
    ),
  }),
  says("The source of a separately derived system."),
);

export const systemJumpersInput = v.pipe(
  v.strictObject({
    code,
    source: v.pipe(derivedSource, says("The source.")),
    enclosures,
    conductor,
    temperature,
  }),
  says(
    "A separately derived system that feeds one enclosure or several, whose system bonding jumpers are to be arranged.",
  ),
);

export const racewayJumpersInput = v.pipe(
  v.strictObject({
    code,
    system: v.optional(v.pipe(systemKind, says("A service by default."))),
    raceways: v.pipe(listOf(suppliedPlace), says("The raceways, each with the ungrounded conductors in it.")),
    conductor,
    temperature,
  }),
  says("Metal raceways that end together, whose supply-side bonding jumpers are to be arranged."),
);

const shared = {
  code,
  conductor: v.pipe(wantedWire, says("Material of every conductor and tap.")),
  electrodes: v.pipe(
    listOf(electrode),
    says("The electrodes of the building, all of them served by every conductor."),
  ),
};

export const enclosureElectrodesInput = v.pipe(
  v.strictObject({
    ...shared,
    system: v.pipe(v.picklist(["service", "building"]), says("What the enclosures belong to.")),
    enclosures,
    wireway: v.optional(
      v.pipe(
        suppliedPlace,
        says(
          "An accessible wireway or enclosure ahead of them, with the conductors there; all those of the enclosures by default.",
        ),
      ),
    ),
    fromDrop: v.optional(
      v.pipe(
        flag("whether the conductors connect directly to the drop or lateral"),
        says(
          "Whether the conductors to the enclosures of a service connect directly to the drop, lateral or service conductors.",
        ),
      ),
    ),
  }),
  says("Electrode conductors of a service, or of a building on a feeder, with one enclosure or several."),
);

export const derivedElectrodesInput = v.pipe(
  v.strictObject({
    ...shared,
    system: v.pipe(v.literal("separately-derived"), says("Several separately derived systems.")),
    systems: v.pipe(listOf(suppliedPlace), says("The systems, each with its derived ungrounded conductors.")),
  }),
  says("Electrode conductors of several separately derived systems."),
);

export const electrodeConductorsInput = v.pipe(
  v.variant("system", [enclosureElectrodesInput, derivedElectrodesInput]),
  says("Several places that are connected to the electrodes."),
);
