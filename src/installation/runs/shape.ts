import * as v from "valibot";
import {
  candidateConductor,
  candidateLimits,
  candidateLoad,
  candidatePlace,
  candidateTerminations,
  leastAmpacity,
  protection,
  racewayKinds,
} from "../../candidates/shape.js";
import { conductorSize, material } from "../../conductor/shape.js";
import { count, notNegative, says } from "../../input/define.js";
import { amperes } from "../../rules/shape.js";
import { chosenConductors } from "../../supply/shape.js";
import { formOf } from "../buses/shape.js";
import { feet, id, ownMaterials, reference, yes } from "../define.js";
import { raceways } from "../raceways/shape.js";

export const parallelException = v.pipe(
  v.picklist(["control-power", "high-frequency", "elevator"]),
  says(
    "Why its conductors may be in parallel though smaller than 1/0 AWG: they supply control power, or run at 360 Hz or more, or to an elevator (2008).",
  ),
);

const groundedConductors = v.pipe(
  v.strictObject({
    size: v.pipe(conductorSize, says("Size of each of them.")),
    existingUnderSupervision: v.optional(
      yes(
        "whether they exist and stand under engineering supervision",
        "Whether they are existing neutrals under engineering supervision, which may be 2 or 1 AWG in parallel.",
      ),
    ),
  }),
  says("Its grounded conductors as drawn, one in each raceway; what is required is sized all the same."),
);

export const load = v.pipe(
  v.strictObject({
    amperes: v.pipe(
      notNegative("amperes"),
      says(
        "Amperes of the grounded conductor, of all its parallel parts together; zero if it carries no load.",
      ),
    ),
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
        circuitAmperes: v.optional(
          amperes(
            "Amperes of the circuit, the rating of its device, which decide the temperature column and the smallest conductor; those of the load by default.",
          ),
        ),
        material,
        sets: v.pipe(count("sets"), says("Sets in parallel.")),
      }),
      says("No conductors are chosen yet: those that this load requires, in so many sets."),
    ),
  }),
  says("Conductors that are yet to be chosen for a load."),
);

export const supplyToChoose = v.pipe(
  v.strictObject({
    toChoose: v.pipe(
      v.strictObject({
        load: candidateLoad,
        device: v.optional(
          amperes(
            "Rating of the overcurrent device; the smallest standard rating that the load allows by default.",
          ),
        ),
        protection,
        leastAmpacity,
        groundedConductorCarriesCurrent: v.optional(
          yes(
            "whether the grounded conductor counts as current-carrying",
            "Whether the grounded conductor counts among the current-carrying ones; not by default.",
          ),
        ),
        conductor: candidateConductor,
        place: candidatePlace,
        terminations: candidateTerminations,
        limits: candidateLimits,
        raceways: racewayKinds,
      }),
      says(
        "A load for which the conductors are yet to be chosen: candidatesOf gives every lawful way to supply it; a schedule waits until one is chosen.",
      ),
    ),
  }),
  says("A load and its conditions, in place of conductors."),
);

export const run = v.pipe(
  v.strictObject({
    id,
    from: reference(
      "the place where it starts: the source, a box, or at a service a disconnect that is not service equipment",
    ),
    to: reference("the place where it ends: a box or a disconnect"),
    supply: v.pipe(
      v.union([chosenConductors, requiredForLoad, supplyToChoose]),
      says("Its ungrounded conductors."),
    ),
    raceways: v.optional(raceways),
    in: v.optional(reference("the raceway that it shares with other runs, in place of raceways of its own")),
    racewayJumpers: v.optional(
      v.pipe(
        v.picklist(["per-raceway", "common", "fittings-instead", "locknuts"]),
        says(
          "Whether metal raceways get a jumper each or one in common, or, at a service, are bonded by fittings instead; common by default. Locknuts are what was found where nothing but ordinary locknuts bonds them.",
        ),
      ),
    ),
    parallelException: v.optional(parallelException),
    groundedConductors: v.optional(groundedConductors),
    jumperForm: formOf("its supply-side bonding jumpers"),
    groundedConductorForm: formOf("its grounded conductor"),
    load: v.optional(load),
    lengthFeet: v.optional(feet),
    materials: ownMaterials("bondingJumpers", "groundedConductors"),
  }),
  says("Ungrounded conductors that run from one place to another."),
);
