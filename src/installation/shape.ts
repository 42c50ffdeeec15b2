import * as v from "valibot";
import { conductorSize, material } from "../conductor/shape.js";
import { code } from "../edition/shape.js";
import { anyOf, byHand, count, listOf, name, says, text } from "../input/define.js";
import { amperes, circuitDevice, increaseReason } from "../rules/shape.js";
import { chosenConductors } from "../supply/shape.js";
import { feet, id, ownMaterials, reference, yes } from "./define.js";
import { electrodes, electrodesNotConnected } from "./electrodes/shape.js";
import { installed } from "./installed/shape.js";
import { loadSideJumper } from "./jumpers/shape.js";
import { loadSideConnection } from "./load-side/shape.js";
import { parallelException } from "./runs/shape.js";
import { generator, groundedConductor, transferSwitch } from "./sources/shape.js";
import { derivedSystem, service } from "./systems/shape.js";
import { removable } from "./water-pipe/shape.js";

const metal = (what: string) => v.pipe(material, says(what));

export const circuit = v.pipe(
  v.strictObject({
    id,
    from: reference(
      "what it starts from: a disconnect, a generator, a transfer switch, a building, another circuit or its end, or what exists",
    ),
    to: v.pipe(
      text("what it supplies"),
      says("What it supplies: an id of the document, or a name of its own."),
    ),
    device: circuitDevice,
    conductors: v.optional(v.pipe(chosenConductors, says("Its ungrounded conductors as installed."))),
    increasedFrom: v.optional(
      v.pipe(
        v.strictObject({
          conductors: v.pipe(chosenConductors, says("The conductors without the increase.")),
          reason: increaseReason,
        }),
        says("What the conductors would be without an increase."),
      ),
    ),
    parallelException: v.optional(parallelException),
    wiring: v.pipe(
      v.picklist(["raceway", "parallel-raceways", "parallel-cables", "tray-single-conductor", "tray-cable"]),
      says("How the equipment grounding conductor runs."),
    ),
    raceways: v.optional(
      v.pipe(
        count("raceways or cables"),
        says("Raceways or cables in parallel; one equipment grounding conductor in each."),
      ),
    ),
    racewayServes: v.optional(
      yes(
        "whether its metal raceway is the equipment grounding conductor",
        "Whether its metal raceway, of a kind that the code names, is the equipment grounding conductor itself, so that no wire is required.",
      ),
    ),
    groundedConductor: v.optional(groundedConductor),
    lengthFeet: v.optional(feet),
    location: v.optional(
      v.pipe(text("the location"), says("Location, for amendments that are limited to one.")),
    ),
    materials: ownMaterials("equipmentGrounding"),
  }),
  says("A feeder or branch circuit."),
);

export const building = v.pipe(
  v.strictObject({
    id,
    circuit: v.optional(reference("the feeder or branch circuit that supplies it")),
    disconnect: v.optional(
      reference(
        "the disconnect of a separately derived system that is in it, where the system supplies it with no circuit between; in place of circuit",
      ),
    ),
    existingGroundedConductor: v.optional(
      v.pipe(
        v.strictObject({
          equipmentGroundingConductor: yes(
            "whether an equipment grounding conductor runs with the supply",
            "Whether an equipment grounding conductor runs with the supply.",
          ),
          continuousMetalPath: yes(
            "whether a continuous metal path is bonded at both buildings",
            "Whether a continuous metal path, as a water pipe, is bonded at both buildings.",
          ),
          groundFaultProtection: yes(
            "whether ground-fault protection of equipment is on the supply side",
            "Whether ground-fault protection of equipment is installed on the supply side.",
          ),
        }),
        says(
          "Of an existing building, built under an earlier edition, whose grounded conductor is to stay the fault path: the three conditions of the exception.",
        ),
      ),
    ),
    onSingleBranchCircuit: yes(
      "whether one branch circuit supplies it",
      "Whether one branch circuit, a multiwire one included, supplies it.",
    ),
    electrodes,
    electrodesNotConnected,
    materials: ownMaterials("electrodeConductors"),
  }),
  says("A building or structure that a feeder or branch circuit supplies."),
);

const ownerId = reference("the service, derived system or building it belongs to");

const owner = v.pipe(
  v.union([ownerId, listOf(ownerId, 300)]),
  says("What it belongs to; several systems in a list, each of which bonds it."),
  byHand({ read: ["readOwners", "installation/read-owners"] }),
);

const isElectrode = v.optional(
  yes(
    "whether it is itself an electrode",
    "Whether it is itself an electrode of what it belongs to; it is of every system that has it among its electrodes.",
  ),
);

const bondedTo = v.optional(
  reference(
    "the metal that is the electrode of a derived system, or the common electrode conductor, to which it is bonded in place of a jumper of that system; of water piping also the metal water pipe among the electrodes that it continues",
  ),
);

export const structuralMetal = v.pipe(
  v.strictObject({ id, of: owner, isElectrode, bondedTo, materials: ownMaterials("bondingJumpers") }),
  says("Exposed structural metal that forms a building frame."),
);

export const piping = v.pipe(
  v.variant("kind", [
    v.strictObject({
      id,
      of: owner,
      isElectrode,
      bondedTo,
      kind: v.pipe(v.literal("water"), says("Metal water piping of the building.")),
      removable,
      materials: ownMaterials("bondingJumpers"),
    }),
    v.strictObject({
      id,
      kind: v.pipe(
        v.literal("water-of-occupancy"),
        says("Metal water piping of one occupancy, isolated from that of the others."),
      ),
      deviceAmperes: amperes("Rating in amperes of the device that supplies the occupancy."),
      materials: ownMaterials("bondingJumpers"),
    }),
    v.strictObject({
      id,
      kind: v.pipe(v.literal("other"), says("Other metal piping that is likely to become energized.")),
      deviceAmperes: amperes("Rating in amperes of the device of the circuit that is likely to energize it."),
      materials: ownMaterials("bondingJumpers"),
    }),
  ]),
  says("Metal piping."),
);

export const intersystemTermination = v.pipe(
  v.strictObject({
    id,
    at: reference("the service, box, disconnect or building where it is"),
    termination: v.pipe(
      v.picklist(["on-enclosure", "apart", "busbar"]),
      says("Mounted on an enclosure or raceway, set apart, or a busbar (from 2017)."),
    ),
    electrodeConductorOnBusbar: v.optional(
      v.pipe(conductorSize, says("Largest grounding electrode conductor on the busbar.")),
    ),
    communicationsUnlikely: v.optional(
      yes(
        "whether communications systems are unlikely",
        "Whether communications systems are unlikely to be used here; they are likely by default.",
      ),
    ),
  }),
  says("An intersystem bonding termination."),
);

export const installation = v.pipe(
  v.strictObject({
    $schema: v.optional(
      v.pipe(text("the address of the schema"), says("Address of this schema, for editors; not looked at.")),
    ),
    format: v.pipe(v.literal(1), says("Version of this format.")),
    title: v.pipe(name("the title"), says("Title of the drawing.")),
    code,
    materials: v.pipe(
      v.strictObject({
        bondingJumpers: metal("Material of the bonding jumpers."),
        groundedConductors: metal("Material of the grounded conductors."),
        electrodeConductors: metal("Material of the grounding electrode conductors."),
        equipmentGrounding: metal("Material of the equipment grounding conductors."),
      }),
      says("Materials of the conductors to be sized."),
    ),
    existing: v.optional(
      v.pipe(
        anyOf(
          v.pipe(v.strictObject({ id }), says("Something that exists beyond the edge of the drawing.")),
          1000,
        ),
        says("Equipment beyond the edge of the drawing, from which circuits may start."),
      ),
    ),
    services: v.optional(v.pipe(anyOf(service, 100), says("The services."))),
    derivedSystems: v.optional(v.pipe(anyOf(derivedSystem, 200), says("The separately derived systems."))),
    generators: v.optional(
      v.pipe(anyOf(generator, 100), says("Generators that are no separately derived systems.")),
    ),
    transferSwitches: v.optional(
      v.pipe(anyOf(transferSwitch, 100), says("Transfer switches between sources.")),
    ),
    circuits: v.optional(v.pipe(anyOf(circuit), says("Feeders and branch circuits."))),
    loadSideJumpers: v.optional(
      v.pipe(anyOf(loadSideJumper, 2000), says("Equipment bonding jumpers on the load side.")),
    ),
    buildings: v.optional(
      v.pipe(
        anyOf(building, 500),
        says("Buildings and structures on a feeder, a branch circuit or a derived system."),
      ),
    ),
    loadSideConnections: v.optional(
      v.pipe(
        anyOf(loadSideConnection, 500),
        says(
          "Connections of the grounded conductor to ground beyond the service disconnects and system bonding jumpers.",
        ),
      ),
    ),
    piping: v.optional(v.pipe(anyOf(piping, 1000), says("Metal piping."))),
    structuralMetal: v.optional(v.pipe(anyOf(structuralMetal, 1000), says("Structural metal."))),
    intersystem: v.optional(
      v.pipe(anyOf(intersystemTermination, 500), says("Intersystem bonding terminations.")),
    ),
    installed: v.optional(installed),
  }),
  says("Services, separately derived systems and what follows them, as one document."),
);
