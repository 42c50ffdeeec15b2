import * as v from "valibot";
import { anyOf, listOf, says } from "../../input/define.js";
import { amperes } from "../../rules/shape.js";
import { grounding } from "../../systems/shape.js";
import { boxesWithoutSupply } from "../boxes/shape.js";
import { buses, formOf, onBus } from "../buses/shape.js";
import { id, ownMaterials, reference, yes } from "../define.js";
import { electrodes, electrodesNotConnected } from "../electrodes/shape.js";
import { sharedRaceways } from "../raceways/shape.js";
import { run } from "../runs/shape.js";

const bondedBy = v.pipe(
  v.picklist(["jumper", "grounded-conductor", "locknuts"]),
  says(
    "What bonds its metal on the supply side; locknuts are what was found where nothing but ordinary locknuts does.",
  ),
);

export const factoryJumper = v.pipe(
  v.picklist(["in-place", "removed"]),
  says(
    "The jumper that the factory fits between grounded conductor and frame; left out where there is none.",
  ),
);

const runs = v.pipe(listOf(run, 200), says("The runs of conductors from the source to the disconnects."));

const connection = v.pipe(
  v.picklist(["three-phase-wye", "single-phase-three-wire", "three-phase-delta", "high-leg-delta"]),
  says("How the windings are connected."),
);

const impedance = v.pipe(
  v.strictObject({
    id: v.optional(v.pipe(id, says("Name of the impedance, from which electrode conductors may start."))),
    amperes: amperes("Largest current that the impedance lets through, in amperes."),
    electrodeConductorAt: v.pipe(
      v.picklist(["impedance", "first-disconnect"]),
      says("Where the grounding electrode conductor is connected."),
    ),
  }),
  says("Present if and only if the system is grounded through an impedance."),
);

export const box = v.pipe(
  v.strictObject({
    id,
    kind: v.pipe(
      v.picklist(["meter", "transformer-cabinet", "gutter", "wireway", "pull-box"]),
      says("What it is; transformer-cabinet is a current-transformer cabinet."),
    ),
    bondedBy,
    jumperForm: formOf("its supply-side bonding jumper"),
    materials: ownMaterials("bondingJumpers"),
  }),
  says("A box ahead of the disconnects of a service."),
);

export const serviceDisconnect = v.pipe(
  v.strictObject({
    id,
    designation: v.pipe(
      v.picklist(["service-disconnect", "emergency-disconnect", "meter-disconnect", "supply-side-source"]),
      says(
        "What it is marked as. An emergency or meter disconnect here is one that is not service equipment.",
      ),
    ),
    amperes: amperes("Rating in amperes."),
    bus: onBus,
    jumperForm: formOf("its main bonding jumper, or of the jumper that bonds it"),
    bondedBy: v.optional(
      v.pipe(
        bondedBy,
        says(
          "What bonds an emergency or meter disconnect, or a supply-side source under an edition without a rule for it.",
        ),
      ),
    ),
    materials: ownMaterials("bondingJumpers", "electrodeConductors"),
  }),
  says("A disconnect of a service."),
);

export const service = v.pipe(
  v.strictObject({
    id,
    grounding,
    connection,
    impedance: v.optional(impedance),
    utility: v.pipe(
      v.strictObject({
        id,
        outdoorTransformer: yes(
          "whether the utility's transformer stands outdoors",
          "Whether the utility's transformer stands outdoors.",
        ),
      }),
      says("The utility's source."),
    ),
    boxes: v.optional(v.pipe(anyOf(box, 100), says("Boxes ahead of the disconnects."))),
    boxesWithoutSupply,
    buses,
    runs,
    sharedRaceways,
    disconnects: v.pipe(listOf(serviceDisconnect, 100), says("The disconnects.")),
    housing: v.pipe(
      v.picklist(["separate-enclosures", "listed-assembly"]),
      says(
        "Whether each disconnect has an enclosure of its own or all are one assembly listed as service equipment.",
      ),
    ),
    assembly: v.optional(
      v.pipe(
        v.strictObject({
          compartments: v.pipe(
            v.picklist(["one-for-each", "shared"]),
            says("Whether each disconnect has a section or compartment of its own, or several share one."),
          ),
          existing: v.optional(
            yes(
              "whether the assembly exists",
              "Whether it is existing service equipment, built under an earlier edition.",
            ),
          ),
        }),
        says("The inside of a listed assembly."),
      ),
    ),
    commonElectrodeConductor: v.optional(
      v.pipe(
        v.strictObject({ id, materials: ownMaterials("electrodeConductors") }),
        says("A common electrode conductor with a tap from every service disconnect."),
      ),
    ),
    electrodes,
    electrodesNotConnected,
    materials: ownMaterials("bondingJumpers", "groundedConductors", "electrodeConductors"),
  }),
  says("A service, from the utility to its disconnects."),
);

export const derivedSystem = v.pipe(
  v.strictObject({
    id,
    source: v.pipe(
      v.strictObject({
        id,
        kind: v.pipe(v.picklist(["transformer", "generator", "other"]), says("What makes the system.")),
        outdoors: yes("whether the source stands outdoors", "Whether the source stands outdoors."),
        controlTransformer: v.optional(
          yes(
            "whether the source is a small control transformer",
            "Whether it is a transformer of at most 1000 VA for Class 1, 2 or 3 circuits; it is not by default.",
          ),
        ),
        deviceAmperes: v.optional(
          amperes(
            "Rating of an overcurrent device in the enclosure of the source, as the breaker on a generator set: the runs are then feeders from that device.",
          ),
        ),
        factoryJumper: v.optional(factoryJumper),
      }),
      says("The source."),
    ),
    grounding,
    connection,
    impedance: v.optional(impedance),
    runs,
    sharedRaceways,
    disconnects: v.pipe(
      listOf(
        v.pipe(
          v.strictObject({
            id,
            amperes: amperes("Rating in amperes."),
            materials: ownMaterials("bondingJumpers", "electrodeConductors"),
          }),
          says("A disconnect of the derived system."),
        ),
        100,
      ),
      says("The disconnects."),
    ),
    jumperForm: formOf("its system bonding jumpers"),
    jumperAt: v.pipe(
      v.picklist(["source", "disconnects", "both-ends", "compare"]),
      says(
        "Where the system bonding jumper is; compare lists the arrangements that are permitted without a condition.",
      ),
    ),
    transferSwitch: v.optional(
      reference("the transfer switch that it feeds, which must not carry the grounded conductor through"),
    ),
    commonElectrodeConductor: v.optional(
      v.pipe(
        v.strictObject({
          id: reference(
            "a common electrode conductor, alike in all systems that tap it; or of the metal water piping or structural metal that serves as one",
          ),
          materials: ownMaterials("electrodeConductors"),
        }),
        says("The common electrode conductor of several derived systems that this one taps."),
      ),
    ),
    electrodes,
    materials: ownMaterials("bondingJumpers", "groundedConductors", "electrodeConductors"),
  }),
  says("A separately derived system, from its source to its disconnects."),
);
