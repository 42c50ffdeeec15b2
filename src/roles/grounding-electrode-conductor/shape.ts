import * as v from "valibot";
import { code } from "../../edition/shape.js";
import { flag, listOf, says } from "../../input/define.js";
import { electrode, wantedWire } from "../../rules/shape.js";
import { supply } from "../../supply/shape.js";

export const electrodeConductorOfSupply = v.pipe(
  v.strictObject({
    code,
    system: v.pipe(
      v.picklist(["service", "separately-derived", "building"]),
      says(
        "What it grounds: a service, a separately derived system, or a building or structure on a feeder.",
      ),
    ),
    supply: v.pipe(
      supply,
      says(
        "The ungrounded conductors: to the disconnect or enclosure it serves, or all of them for a common conductor.",
      ),
    ),
    conductor: v.pipe(wantedWire, says("The conductor to be sized.")),
    electrodes: v.pipe(
      listOf(electrode),
      says("Every electrode that this conductor serves, also those beyond the first, in any order."),
    ),
    part: v.optional(
      v.pipe(
        v.picklist(["only", "common", "tap"]),
        says(
          "Which part it is: the only conductor, an individual one of an enclosure or the one from a place ahead of several (only), the common conductor of several enclosures, or the tap of one enclosure or system. The only one by default.",
        ),
      ),
    ),
    fromDrop: v.optional(
      v.pipe(
        flag("whether the conductors connect directly to the drop or lateral"),
        says(
          "For the common conductor of a service: whether the conductors to the enclosures connect directly to the drop, lateral or service conductors. Corresponding conductors are then added instead of each set's largest (Table 250.66 note 1).",
        ),
      ),
    ),
    ungrounded: v.optional(
      v.pipe(
        flag("whether the system has no grounded conductor"),
        says(
          "Whether the system has no grounded conductor. The size is the same; another section requires it.",
        ),
      ),
    ),
    impedance: v.optional(
      v.pipe(
        flag("whether the system is grounded through an impedance"),
        says(
          "Whether the system is grounded through an impedance. The size is the same; another section says where it starts.",
        ),
      ),
    ),
    controlTransformer: v.optional(
      v.pipe(
        flag("whether this is a small control transformer"),
        says(
          "Whether the source is a transformer of at most 1000 VA for Class 1, 2 or 3 circuits whose frame is bonded to its grounded conductor as the exception requires; none is then required. Conductors for more than 100 A belong to no such transformer and are refused, and an ungrounded system has no conductor to bond.",
        ),
      ),
    ),
    onSingleBranchCircuit: v.optional(
      v.pipe(
        flag("whether one branch circuit supplies the building"),
        says(
          "Whether one branch circuit, a multiwire one included, supplies the building and brings an equipment grounding conductor; none is then required. Conductors larger than a circuit of 50 A has get a caution.",
        ),
      ),
    ),
  }),
  says("A grounding electrode conductor that is sized from the ungrounded conductors."),
);

export const commonOfDerivedSystems = v.pipe(
  v.strictObject({
    code,
    system: v.pipe(v.literal("separately-derived"), says("Several separately derived systems.")),
    part: v.pipe(v.literal("common"), says("The common conductor.")),
    conductor: v.pipe(wantedWire, says("The conductor to be sized.")),
    electrodes: v.pipe(
      listOf(electrode),
      says(
        "All electrodes that are present: the exception from 2020 on speaks of those, not only of the ones on this conductor.",
      ),
    ),
  }),
  says(
    "The common conductor of several separately derived systems, whose size is fixed: it names no supply.",
  ),
);

export const groundingElectrodeConductorInput = v.pipe(
  v.union([electrodeConductorOfSupply, commonOfDerivedSystems]),
  says("A grounding electrode conductor to be sized."),
);
