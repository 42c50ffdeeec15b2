import * as v from "valibot";
import { conductorSize, material } from "../conductor/shape.js";
import { code } from "../edition/shape.js";
import { roleIds } from "../edition/tables/roles.generated.js";
import { anyOf, byHand, count, name, says, text } from "../input/define.js";
import { amperes, circuitDevice, increaseReason } from "../rules/shape.js";
import { chosenConductors } from "../supply/shape.js";
import { feet, id, reference, yes } from "./define.js";
import { derivedSystem, electrodes, generator, service } from "./systems/shape.js";

const metal = (what: string) => v.pipe(material, says(what));

export const circuit = v.pipe(
  v.strictObject({
    id,
    from: reference(
      "what it starts from: a disconnect, a building, another circuit or its end, or what exists",
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
    lengthFeet: v.optional(feet),
    location: v.optional(
      v.pipe(text("the location"), says("Location, for amendments that are limited to one.")),
    ),
  }),
  says("A feeder or branch circuit."),
);

export const building = v.pipe(
  v.strictObject({
    id,
    circuit: reference("the feeder or branch circuit that supplies it"),
    onSingleBranchCircuit: yes(
      "whether one branch circuit supplies it",
      "Whether one branch circuit, a multiwire one included, supplies it.",
    ),
    electrodes,
  }),
  says("A building or structure that a feeder or branch circuit supplies."),
);

const owner = reference("the service, derived system or building it belongs to");

const isElectrode = v.optional(
  yes(
    "whether it is itself the electrode of a derived system",
    "Whether it is itself the electrode of a derived system.",
  ),
);

export const structuralMetal = v.pipe(
  v.strictObject({ id, of: owner, isElectrode }),
  says("Exposed structural metal that forms a building frame."),
);

export const piping = v.pipe(
  v.variant("kind", [
    v.strictObject({
      id,
      of: owner,
      isElectrode,
      kind: v.pipe(v.literal("water"), says("Metal water piping of the building.")),
    }),
    v.strictObject({
      id,
      kind: v.pipe(
        v.literal("water-of-occupancy"),
        says("Metal water piping of one occupancy, isolated from that of the others."),
      ),
      deviceAmperes: amperes("Rating in amperes of the device that supplies the occupancy."),
    }),
    v.strictObject({
      id,
      kind: v.pipe(v.literal("other"), says("Other metal piping that is likely to become energized.")),
      deviceAmperes: amperes("Rating in amperes of the device of the circuit that is likely to energize it."),
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

export const foundConductor = v.pipe(
  v.strictObject({
    conductor: v.pipe(
      text("the conductor"),
      says("Id of a conductor of the schedule, or a name for something else that was found."),
    ),
    role: v.optional(
      v.pipe(
        v.picklist(roleIds),
        says(
          "What it is, of something that the schedule does not hold, such as a second main bonding jumper.",
        ),
        byHand({ type: ["Role", "edition/tables/roles.generated"] }),
      ),
    ),
    size: conductorSize,
    material,
    quantity: v.optional(
      v.pipe(count("conductors"), says("How many there are; as many as required by default.")),
    ),
    at: v.optional(v.pipe(text("the place"), says("Where it was found, if not where the schedule puts it."))),
  }),
  says("A conductor as it was found."),
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
    circuits: v.optional(v.pipe(anyOf(circuit), says("Feeders and branch circuits."))),
    buildings: v.optional(
      v.pipe(anyOf(building, 500), says("Buildings and structures on a feeder or branch circuit.")),
    ),
    piping: v.optional(v.pipe(anyOf(piping, 1000), says("Metal piping."))),
    structuralMetal: v.optional(v.pipe(anyOf(structuralMetal, 1000), says("Structural metal."))),
    intersystem: v.optional(
      v.pipe(anyOf(intersystemTermination, 500), says("Intersystem bonding terminations.")),
    ),
    installed: v.optional(
      v.pipe(anyOf(foundConductor, 5000), says("What is installed or drawn, to be checked.")),
    ),
  }),
  says("Services, separately derived systems and what follows them, as one document."),
);
