import * as v from "valibot";
import { amendmentKinds, editionYears } from "../edition/index.js";
import { mostItems } from "../input/limits.js";
import { parts, reference } from "./document-parts.js";

function makeDrawingSchema() {
  const {
    amperes,
    bondedBy,
    conductors,
    connection,
    count,
    electrodes,
    feet,
    grounding,
    id,
    impedance,
    material,
    runs,
    size,
    supply,
  } = parts;

  const box = v.strictObject({
    id,
    kind: v.picklist(["meter", "transformer-cabinet", "gutter", "wireway", "pull-box"]),
    bondedBy,
  });

  const disconnect = v.strictObject({
    id,
    designation: v.pipe(
      v.picklist(["service-disconnect", "emergency-disconnect", "meter-disconnect", "supply-side-source"]),
      v.description("An emergency or meter disconnect here is one that is not service equipment."),
    ),
    amperes,
    bondedBy: v.optional(
      v.pipe(
        bondedBy,
        v.description(
          "What bonds an emergency or meter disconnect, or a supply-side source under an edition without a rule for it.",
        ),
      ),
    ),
  });

  const service = v.strictObject({
    id,
    grounding,
    connection,
    impedance: v.optional(impedance),
    utility: v.pipe(
      v.strictObject({ id, outdoorTransformer: v.boolean() }),
      v.description("The utility's source."),
    ),
    boxes: v.optional(v.pipe(v.array(box), v.maxLength(100))),
    runs,
    disconnects: v.pipe(v.array(disconnect), v.minLength(1), v.maxLength(100)),
    housing: v.pipe(
      v.picklist(["separate-enclosures", "listed-assembly"]),
      v.description(
        "Whether each disconnect has an enclosure of its own or all are one assembly listed as service equipment.",
      ),
    ),
    commonElectrodeConductor: v.optional(
      v.pipe(
        v.strictObject({ id }),
        v.description("A common electrode conductor with a tap from every service disconnect."),
      ),
    ),
    electrodes,
  });

  const derivedSystem = v.strictObject({
    id,
    source: v.strictObject({
      id,
      kind: v.picklist(["transformer", "generator", "other"]),
      outdoors: v.boolean(),
      controlTransformer: v.optional(v.boolean()),
    }),
    grounding,
    connection,
    impedance: v.optional(impedance),
    runs,
    disconnects: v.pipe(v.array(v.strictObject({ id, amperes })), v.minLength(1), v.maxLength(100)),
    jumperAt: v.pipe(
      v.picklist(["source", "disconnects", "both-ends", "compare"]),
      v.description(
        "Where the system bonding jumper is; compare lists the arrangements that are permitted without a condition.",
      ),
    ),
    commonElectrodeConductor: v.optional(
      v.pipe(
        v.strictObject({ id: reference("a common electrode conductor, alike in all systems that tap it") }),
        v.description("The common electrode conductor of several derived systems that this one taps."),
      ),
    ),
    electrodes,
  });

  const generator = v.pipe(
    v.strictObject({
      id,
      supply,
      to: reference("the first disconnect or transfer switch, or a name of its own"),
      integralOvercurrentDevice: v.boolean(),
      deviceAmperes: v.optional(
        v.pipe(amperes, v.description("Rating of the integral device; present if and only if there is one.")),
      ),
      lengthFeet: v.optional(feet),
    }),
    v.description(
      "A generator that is not a separately derived system: its grounded conductor is not switched.",
    ),
  );

  const device = v.union([
    v.strictObject({ amperes }),
    v.strictObject({
      motor: v.union([
        v.strictObject({ kind: v.literal("inverse-time-or-fuse"), amperes }),
        v.strictObject({ kind: v.literal("instantaneous-trip"), dualElementFuseAmperes: amperes }),
      ]),
    }),
    v.strictObject({ aheadOfFeeder: v.strictObject({ amperes }) }),
  ]);

  const circuit = v.strictObject({
    id,
    from: reference(
      "what it starts from: a disconnect, a building, another circuit or its end, or what exists",
    ),
    to: v.pipe(v.string(), v.description("What it supplies: an id of the document, or a name of its own.")),
    device,
    conductors: v.optional(conductors),
    increasedFrom: v.optional(
      v.strictObject({
        conductors,
        reason: v.picklist(["voltage-drop", "temperature-or-number", "other"]),
      }),
    ),
    wiring: v.pipe(
      v.picklist(["raceway", "parallel-raceways", "parallel-cables", "tray-single-conductor", "tray-cable"]),
      v.description("How the equipment grounding conductor runs."),
    ),
    raceways: v.optional(
      v.pipe(
        count,
        v.description("Raceways or cables in parallel; one equipment grounding conductor in each."),
      ),
    ),
    lengthFeet: v.optional(feet),
    location: v.optional(
      v.pipe(v.string(), v.description("Location, for amendments that are limited to one.")),
    ),
  });

  const building = v.strictObject({
    id,
    circuit: reference("the feeder or branch circuit that supplies it"),
    onSingleBranchCircuit: v.boolean(),
    electrodes,
  });

  const owner = reference("the service, derived system or building it belongs to");
  const isElectrode = v.optional(
    v.pipe(v.boolean(), v.description("Whether it is itself the electrode of a derived system.")),
  );
  const structuralMetal = v.strictObject({ id, of: owner, isElectrode });
  const piping = v.union([
    v.strictObject({ id, of: owner, isElectrode, kind: v.literal("water") }),
    v.strictObject({ id, kind: v.literal("water-of-occupancy"), deviceAmperes: amperes }),
    v.strictObject({ id, kind: v.literal("other"), deviceAmperes: amperes }),
  ]);

  const intersystem = v.strictObject({
    id,
    at: reference("the service, box, disconnect or building where it is"),
    termination: v.picklist(["on-enclosure", "apart", "busbar"]),
    electrodeConductorOnBusbar: v.optional(size),
    communicationsUnlikely: v.optional(v.boolean()),
  });

  const installed = v.strictObject({
    conductor: v.pipe(v.string(), v.description("Id of a conductor of the schedule.")),
    size,
    material,
    quantity: v.optional(count),
    at: v.optional(
      v.pipe(v.string(), v.description("Where it was found, if not where the schedule puts it.")),
    ),
  });

  return v.strictObject({
    $schema: v.optional(
      v.pipe(v.string(), v.description("Address of this schema, for editors; not looked at.")),
    ),
    format: v.pipe(v.literal(1), v.description("Version of this format.")),
    title: v.pipe(v.string(), v.minLength(1)),
    code: v.strictObject({
      year: v.pipe(
        v.picklist(editionYears),
        v.description("Edition of NFPA 70 that the jurisdiction enforces."),
      ),
      readings: v.optional(
        v.pipe(v.record(v.string(), v.string()), v.description("Readings that differ from the defaults.")),
      ),
      amendments: v.optional(
        v.pipe(
          v.array(v.looseObject({ kind: v.picklist(amendmentKinds), citation: v.looseObject({}) })),
          v.maxLength(100),
          v.description(
            "Local amendments or proposals, as the function amend takes them; checked as it does.",
          ),
        ),
      ),
      circumstances: v.optional(
        v.pipe(
          v.strictObject({
            lengthFeet: v.optional(feet),
            location: v.optional(v.string()),
            serviceAmperes: v.optional(amperes),
          }),
          v.description(
            "What is known of the place, for amendments under a condition; a circuit adds its own.",
          ),
        ),
      ),
    }),
    materials: v.pipe(
      v.strictObject({
        bondingJumpers: material,
        groundedConductors: material,
        electrodeConductors: material,
        equipmentGrounding: material,
      }),
      v.description("Materials of the conductors to be sized."),
    ),
    existing: v.optional(
      v.pipe(
        v.array(v.strictObject({ id })),
        v.maxLength(1000),
        v.description("Equipment beyond the edge of the drawing, from which circuits may start."),
      ),
    ),
    services: v.optional(v.pipe(v.array(service), v.maxLength(100))),
    derivedSystems: v.optional(v.pipe(v.array(derivedSystem), v.maxLength(200))),
    generators: v.optional(v.pipe(v.array(generator), v.maxLength(100))),
    circuits: v.optional(v.pipe(v.array(circuit), v.maxLength(mostItems))),
    buildings: v.optional(v.pipe(v.array(building), v.maxLength(500))),
    piping: v.optional(v.pipe(v.array(piping), v.maxLength(1000))),
    structuralMetal: v.optional(v.pipe(v.array(structuralMetal), v.maxLength(1000))),
    intersystem: v.optional(v.pipe(v.array(intersystem), v.maxLength(500))),
    installed: v.optional(v.pipe(v.array(installed), v.maxLength(5000))),
  });
}

/**
 * The definition of a drawing as a valibot schema, from which its type, its JSON Schema and the first half of its validation come.
 * What it cannot say (ids, references, cycles, contradictions, the ends of the tables) is checked by {@link readDrawing} and by
 * {@link drawingStandardSchema}.
 *
 * @example
 * ```ts
 * import { drawingSchema } from "bondmil";
 * Object.keys(drawingSchema.entries).slice(0, 4); // => ["$schema", "format", "title", "code"]
 * ```
 */
export const drawingSchema = /* @__PURE__ */ makeDrawingSchema();

/** A drawing of services, derived systems and what follows them, as one document. */
export type Drawing = v.InferOutput<typeof drawingSchema>;
