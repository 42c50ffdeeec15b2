import * as v from "valibot";
import { surroundings, temperatureColumn } from "../ampacity/shape.js";
import { conductorSize } from "../conductor/shape.js";
import { code } from "../edition/shape.js";
import { insulation, racewayKind } from "../engineering/raceway-fill/shape.js";
import { byHand, count, flag, listOf, notNegative, positive, says } from "../input/define.js";
import { electrode } from "../rules/shape.js";

const metal = v.pipe(
  v.picklist(["copper", "aluminum"]),
  says(
    "Copper or aluminum; no density of copper-clad aluminum is held, so that its metal cannot be weighed.",
  ),
  byHand({ type: ["ConductorColumn", "conductor/index"] }),
);

export const candidateLoad = v.pipe(
  v.strictObject({
    continuous: v.pipe(
      notNegative("amperes"),
      says("Continuous load in amperes, which counts at 125 percent."),
    ),
    other: v.pipe(notNegative("amperes"), says("All other load in amperes.")),
    listedForAll: v.optional(
      v.pipe(
        flag("whether the assembly with its devices is listed for 100 percent"),
        says(
          "Whether the assembly with its overcurrent devices is listed to run at 100 percent of its rating, so that continuous load counts as it is; not by default.",
        ),
      ),
    ),
  }),
  says("The load that is supplied."),
);

export const groundedInSets = v.pipe(
  v.strictObject({
    currentCarrying: v.pipe(
      flag("whether it counts as current-carrying"),
      says(
        "Whether it counts among the current-carrying conductors, as where most of the load is nonlinear.",
      ),
    ),
    loadAmperes: v.optional(
      v.pipe(
        notNegative("amperes"),
        says(
          "Its load in amperes, by which and by the table of the fault path it is then sized; zero if it carries none. Without it it is as large as the ungrounded conductors.",
        ),
      ),
    ),
  }),
  says("A grounded conductor that runs with the ungrounded ones."),
);

export const candidateSystem = v.pipe(
  v.strictObject({
    kind: v.pipe(
      v.picklist(["service", "separately-derived", "feeder"]),
      says(
        "A service or a separately derived system has a jumper, jumpers on the supply side and an electrode conductor; a feeder has equipment grounding conductors.",
      ),
    ),
    ungrounded: v.pipe(v.picklist([2, 3]), says("Ungrounded conductors of a set, 2 or 3.")),
    grounded: v.optional(groundedInSets),
    jumperAt: v.optional(
      v.pipe(
        v.picklist(["source", "enclosure"]),
        says(
          "Where the system bonding jumper of a separately derived system is; at the enclosure by default.",
        ),
      ),
    ),
    electrodes: v.optional(
      v.pipe(
        listOf(electrode),
        says("The electrodes that the electrode conductor serves; without them none limits its size."),
      ),
    ),
  }),
  says("What is supplied: the kind of system, and the conductors of a set."),
);

export const candidateConductor = v.pipe(
  v.strictObject({
    insulation: v.pipe(
      insulation,
      says("Type of insulation of all conductors but those that bond and ground."),
    ),
    materials: v.pipe(
      listOf(metal, 2),
      says("Materials to be tried, in the order in which they are listed."),
    ),
    smallest: v.optional(v.pipe(conductorSize, says("Smallest size to be tried."))),
    largest: v.optional(v.pipe(conductorSize, says("Largest size to be tried."))),
  }),
  says("The ungrounded conductors that are tried."),
);

export const candidatePlace = v.pipe(
  v.strictObject({
    ...surroundings,
    racewayInches: v.optional(
      v.pipe(
        positive("inches"),
        says(
          "Length of the raceways in inches; longer than 24 in. by default. Shorter ones may be filled as nipples, and their conductors are not adjusted for their number.",
        ),
      ),
    ),
  }),
  says("Where the conductors lie. The current-carrying ones in a raceway are counted from its sets."),
);

export const candidateLimits = v.pipe(
  v.strictObject({
    mostSets: v.pipe(count("sets"), says("Most sets in parallel.")),
    mostSetsInRaceway: v.optional(v.pipe(count("sets"), says("Most sets in one raceway; 1 by default."))),
  }),
  says("How far the search goes."),
);

export const candidateBonding = v.pipe(
  v.strictObject({
    material: v.pipe(metal, says("Material of the conductors that bond and ground: copper or aluminum.")),
    insulation: v.optional(
      v.pipe(
        insulation,
        says(
          "Type of insulation of those that run in the raceway; bare and stranded by default, as the section on each lets them be.",
        ),
      ),
    ),
    metalRaceway: v.optional(
      v.pipe(
        v.picklist(["serves", "beside-wire"]),
        says(
          "Whether a metal raceway serves in place of the wire that would run in it, where the code lets it; beside the wire by default.",
        ),
      ),
    ),
  }),
  says("The conductors that bond and ground."),
);

export const protection = v.optional(
  v.pipe(
    v.picklist(["at-supply", "at-end"]),
    says(
      "Where the conductors have their protection; at their supply by default. Taps and secondary conductors have it at their end, and never above their ampacity.",
    ),
  ),
);

export const leastAmpacity = v.optional(
  v.pipe(
    positive("amperes"),
    says(
      "Ampacity that all sets together must have besides, as a rule of taps or secondary conductors asks it.",
    ),
  ),
);

export const candidateTerminations = v.optional(
  v.pipe(
    temperatureColumn,
    says(
      "Temperature in degrees Celsius for which the equipment at both ends is listed and marked, the lower of the two; by default 60 C for a device through 100 A and 75 C above, as 110.14(C)(1) has it.",
    ),
  ),
);

export const racewayKinds = v.optional(
  v.pipe(
    listOf(racewayKind, 5),
    says("Kinds of raceway to be tried; without them none is chosen and none is filled."),
  ),
);

export const supplyCandidatesQuestion = v.pipe(
  v.strictObject({
    code,
    system: candidateSystem,
    load: candidateLoad,
    device: v.optional(
      v.pipe(
        positive("amperes"),
        says(
          "Rating of the overcurrent device; the smallest standard rating that the load allows by default.",
        ),
      ),
    ),
    protection,
    feederDevice: v.optional(
      v.pipe(
        positive("amperes"),
        says(
          "Of a tap, the rating of the device ahead of the feeder, by which its equipment grounding conductors go.",
        ),
      ),
    ),
    leastAmpacity,
    conductor: candidateConductor,
    place: candidatePlace,
    terminations: candidateTerminations,
    limits: candidateLimits,
    raceways: racewayKinds,
    bonding: candidateBonding,
  }),
  says("A load for which conductors are to be found."),
);
