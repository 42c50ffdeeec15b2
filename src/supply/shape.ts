import * as v from "valibot";
import { conductorSize, material } from "../conductor/shape.js";
import { byHand, count, listOf, positive, says } from "../input/define.js";
import { mostPhases, mostSetEntries } from "../input/limits.js";

export const conductor = v.pipe(v.strictObject({ size: conductorSize, material }), says("One conductor."));

const sets = v.pipe(
  count("sets"),
  says("How many such sets there are; sets in parallel are counted, not the conductors in them."),
);

export const uniformSet = v.pipe(
  v.strictObject({ count: sets, size: conductorSize, material }),
  says("Sets of ungrounded conductors in which every phase is alike."),
);

export const phasedSet = v.pipe(
  v.strictObject({
    count: sets,
    phases: v.pipe(
      listOf(v.nullable(conductor), mostPhases),
      says("One conductor per phase, always in the same order; null where a set leaves a phase out."),
    ),
  }),
  says("Sets of ungrounded conductors whose phases differ."),
);

export const supplySet = v.pipe(
  v.union([uniformSet, phasedSet]),
  says("Ungrounded conductors that run together, one per phase, once or several times."),
);

const listedSets = v.pipe(listOf(supplySet, mostSetEntries), says("The sets."));

export const supply = v.pipe(
  v.strictObject({
    sets: listedSets,
    requiredForAmperes: v.optional(
      v.pipe(
        positive("amperes"),
        says(
          "Present when no conductors are chosen yet and these are the ones that a load of so many amperes requires.",
        ),
      ),
    ),
  }),
  says(
    "The ungrounded conductors that one thing is supplied by: a disconnect, an enclosure, a wireway, a raceway. For an enclosure they are the conductors to it; for a wireway ahead of several enclosures, all of them.",
  ),
  byHand({ read: ["readSupply", "supply/read"] }),
);

export const chosenConductors = v.pipe(
  v.strictObject({ sets: listedSets }),
  says("Ungrounded conductors that are chosen."),
  byHand({ read: ["readChosenConductors", "supply/read"] }),
);
