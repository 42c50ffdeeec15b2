import * as v from "valibot";
import { conductorSize, material } from "../../conductor/shape.js";
import { anyOf, count, listOf, says } from "../../input/define.js";
import { amperes } from "../../rules/shape.js";
import { chosenConductors } from "../../supply/shape.js";
import { grounding } from "../../systems/shape.js";
import { feet, id, reference, yes } from "../define.js";

const bondedBy = v.pipe(
  v.picklist(["jumper", "grounded-conductor"]),
  says("What bonds its metal on the supply side."),
);

export const load = v.pipe(
  v.strictObject({
    amperes: amperes("Amperes of the grounded conductor, of all its parallel parts together."),
    circuitAmperes: amperes("Rating of the circuit, which decides the temperature of its terminations."),
    listedFor75: v.optional(
      yes(
        "whether the terminations are listed for 75 C",
        "Whether the terminations of a circuit of 100 A or less are listed for 75 C; they are not by default.",
      ),
    ),
  }),
  says("Load of the grounded conductor, whose requirement stands beside the table's."),
);

export const requiredForLoad = v.pipe(
  v.strictObject({
    forLoad: v.pipe(
      v.strictObject({
        amperes: amperes("Amperes that the conductors are to carry."),
        material,
        sets: v.pipe(count("sets"), says("Sets in parallel.")),
      }),
      says("No conductors are chosen yet: those that this load requires, in so many sets."),
    ),
  }),
  says("Conductors that are yet to be chosen for a load."),
);

export const raceways = v.pipe(
  v.strictObject({
    count: v.pipe(
      count("raceways or cables"),
      says("Raceways or cables that the sets are divided over evenly."),
    ),
    kind: v.pipe(
      v.picklist(["nonflexible-metal", "flexible-metal", "nonmetallic"]),
      says("What they are made of."),
    ),
  }),
  says("How the sets run; one nonmetallic raceway by default."),
);

export const run = v.pipe(
  v.strictObject({
    id,
    from: reference(
      "the place where it starts: the source, a box, or at a service a disconnect that is not service equipment",
    ),
    to: reference("the place where it ends: a box or a disconnect"),
    supply: v.pipe(v.union([chosenConductors, requiredForLoad]), says("Its ungrounded conductors.")),
    raceways: v.optional(raceways),
    racewayJumpers: v.optional(
      v.pipe(
        v.picklist(["per-raceway", "common", "fittings-instead"]),
        says(
          "Whether metal raceways get a jumper each or one in common, or, at a service, are bonded by fittings instead; common by default.",
        ),
      ),
    ),
    load: v.optional(load),
    lengthFeet: v.optional(feet),
  }),
  says("Ungrounded conductors that run from one place to another."),
);

const runs = v.pipe(listOf(run, 200), says("The runs of conductors from the source to the disconnects."));

const connection = v.pipe(
  v.picklist(["three-phase-wye", "single-phase-three-wire", "three-phase-delta", "high-leg-delta"]),
  says("How the windings are connected."),
);

const impedance = v.pipe(
  v.strictObject({
    amperes: amperes("Largest current that the impedance lets through, in amperes."),
    electrodeConductorAt: v.pipe(
      v.picklist(["impedance", "first-disconnect"]),
      says("Where the grounding electrode conductor is connected."),
    ),
  }),
  says("Present if and only if the system is grounded through an impedance."),
);

export const installedElectrode = v.pipe(
  v.strictObject({
    id,
    kind: v.pipe(
      v.picklist([
        "rod",
        "pipe",
        "plate",
        "concrete-encased",
        "ring",
        "metal-water-pipe",
        "structural-metal",
        "other",
      ]),
      says("Kind of electrode (250.52)."),
    ),
    ringConductor: v.optional(v.pipe(conductorSize, says("Size of the bare copper conductor of a ring."))),
    from: reference(
      "what its conductor comes from: a disconnect, box, source or building, the common electrode conductor, or another electrode",
    ),
    ferrousRaceway: v.optional(
      yes(
        "whether its conductor runs in a ferrous metal raceway",
        "Whether its conductor runs in a ferrous metal raceway, whose ends are bonded to it.",
      ),
    ),
  }),
  says("An electrode; one connected from another electrode is tied by a bonding jumper; no cycles."),
);

export const electrodes = v.optional(
  v.pipe(anyOf(installedElectrode, 50), says("The grounding electrodes.")),
);

export const box = v.pipe(
  v.strictObject({
    id,
    kind: v.pipe(
      v.picklist(["meter", "transformer-cabinet", "gutter", "wireway", "pull-box"]),
      says("What it is; transformer-cabinet is a current-transformer cabinet."),
    ),
    bondedBy,
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
    bondedBy: v.optional(
      v.pipe(
        bondedBy,
        says(
          "What bonds an emergency or meter disconnect, or a supply-side source under an edition without a rule for it.",
        ),
      ),
    ),
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
    runs,
    disconnects: v.pipe(listOf(serviceDisconnect, 100), says("The disconnects.")),
    housing: v.pipe(
      v.picklist(["separate-enclosures", "listed-assembly"]),
      says(
        "Whether each disconnect has an enclosure of its own or all are one assembly listed as service equipment.",
      ),
    ),
    commonElectrodeConductor: v.optional(
      v.pipe(
        v.strictObject({ id }),
        says("A common electrode conductor with a tap from every service disconnect."),
      ),
    ),
    electrodes,
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
      }),
      says("The source."),
    ),
    grounding,
    connection,
    impedance: v.optional(impedance),
    runs,
    disconnects: v.pipe(
      listOf(
        v.pipe(
          v.strictObject({ id, amperes: amperes("Rating in amperes.") }),
          says("A disconnect of the derived system."),
        ),
        100,
      ),
      says("The disconnects."),
    ),
    jumperAt: v.pipe(
      v.picklist(["source", "disconnects", "both-ends", "compare"]),
      says(
        "Where the system bonding jumper is; compare lists the arrangements that are permitted without a condition.",
      ),
    ),
    commonElectrodeConductor: v.optional(
      v.pipe(
        v.strictObject({ id: reference("a common electrode conductor, alike in all systems that tap it") }),
        says("The common electrode conductor of several derived systems that this one taps."),
      ),
    ),
    electrodes,
  }),
  says("A separately derived system, from its source to its disconnects."),
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
    lengthFeet: v.optional(feet),
  }),
  says("A generator that is not a separately derived system: its grounded conductor is not switched."),
);
