import * as v from "valibot";
import { conductorSize } from "../../conductor/shape.js";
import { electrodeKinds } from "../../edition/electrode-kinds.js";
import { anyOf, listOf, positive, says } from "../../input/define.js";
import { id, ownMaterials, reference, yes } from "../define.js";
import { removable } from "../water-pipe/shape.js";

export const route = v.pipe(
  v.strictObject({
    cover: v.optional(
      v.pipe(
        v.picklist(["bare", "covered", "insulated"]),
        says("Its cover; covered is without an extruded covering."),
      ),
    ),
    against: v.optional(
      v.pipe(
        listOf(v.picklist(["masonry", "concrete", "earth", "corrosive-surroundings"]), 4),
        says("What it lies directly against, or what surrounds it."),
      ),
    ),
    outdoorEnd: v.optional(
      v.pipe(
        v.strictObject({
          inchesAboveEarth: v.pipe(positive("inches"), says("Inches from its end to the earth.")),
          inListedEnclosure: v.optional(
            yes(
              "whether it ends in a listed enclosure",
              "Whether it ends in an outdoor enclosure that is listed and identified for the place.",
            ),
          ),
        }),
        says("Where it ends outdoors."),
      ),
    ),
    protection: v.optional(
      v.pipe(
        v.picklist([
          "rigid-metal",
          "intermediate-metal",
          "electrical-metallic-tubing",
          "pvc-schedule-80",
          "pvc-schedule-40",
          "reinforced-thermosetting",
          "cable-armor",
          "none",
        ]),
        says("The raceway or armor that protects it; none if it runs open."),
      ),
    ),
    exposedToDamage: v.optional(
      yes("whether it is exposed to physical damage", "Whether it is exposed to physical damage."),
    ),
  }),
  says("How the conductor or jumper to an electrode runs and ends."),
);

export const electrodesNotConnected = v.optional(
  v.pipe(
    anyOf(
      v.pipe(
        v.strictObject({
          id,
          kind: v.pipe(
            v.picklist(electrodeKinds.filter((kind) => kind !== "other")),
            says("Kind of electrode (250.52)."),
          ),
          steelNotAccessible: v.optional(
            yes(
              "whether its steel cannot be reached",
              "Whether the building exists and the steel of a concrete-encased electrode cannot be reached without disturbing the concrete.",
            ),
          ),
        }),
        says("An electrode that is present and not connected."),
      ),
      50,
    ),
    says("Electrodes that are present at the building and not connected to the others."),
  ),
);

const ferrousRaceway = v.optional(
  yes(
    "whether its conductor runs in a ferrous metal raceway",
    "Whether its conductor runs in a ferrous metal raceway, whose ends are bonded to it.",
  ),
);

const electrodeStart = reference(
  "what its conductor comes from: a disconnect, box, run, source or building, the common electrode conductor, or another electrode",
);

export const installedElectrode = v.pipe(
  v.strictObject({
    id,
    kind: v.pipe(v.picklist(electrodeKinds), says("Kind of electrode (250.52).")),
    ringConductor: v.optional(v.pipe(conductorSize, says("Size of the bare copper conductor of a ring."))),
    from: electrodeStart,
    ferrousRaceway,
    ohms: v.optional(
      v.pipe(positive("ohms"), says("Resistance to ground on record, in ohms, of a rod, pipe or plate.")),
    ),
    route: v.optional(route),
    removable,
    materials: ownMaterials("electrodeConductors", "bondingJumpers"),
  }),
  says("An electrode; one connected from another electrode is tied by a bonding jumper; no cycles."),
);

export const electrodeConnection = v.pipe(
  v.strictObject({
    electrode: reference(
      "an electrode that is named elsewhere in the document, or metal water piping or structural metal that is one",
    ),
    from: electrodeStart,
    ferrousRaceway,
    route: v.optional(route),
    materials: ownMaterials("electrodeConductors", "bondingJumpers"),
  }),
  says(
    "A further conductor to an electrode that stands in the document once, such as that of another system.",
  ),
);

export const electrodes = v.optional(
  v.pipe(
    anyOf(v.union([installedElectrode, electrodeConnection]), 50),
    says("The grounding electrodes, and conductors to those named elsewhere."),
  ),
);
