import * as v from "valibot";
import { conductorSizes, materials } from "../conductor/index.js";
import { mostOfACount, mostPhases, mostSetEntries } from "../input/limits.js";

/** The id of something else in the document. */
export const reference = (what: string) => v.pipe(v.string(), v.description(`Id of ${what}.`));

function makeParts() {
  const id = v.pipe(
    v.string(),
    v.regex(/^\S(.*\S)?$/),
    v.description("Name on the drawing. Every id is unique in the document."),
  );

  const amperes = v.pipe(v.number(), v.finite(), v.gtValue(0), v.description("Amperes."));
  const count = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(mostOfACount));
  const feet = v.pipe(v.number(), v.finite(), v.gtValue(0), v.description("Length in feet."));
  const material = v.picklist(materials);
  const size = v.pipe(
    v.picklist(conductorSizes),
    v.description("Trade size, for example 4/0 AWG or 500 kcmil."),
  );

  const conductor = v.strictObject({ size, material });
  const numberOfSets = v.pipe(count, v.description("Sets in parallel."));
  const set = v.union([
    v.strictObject({ count: numberOfSets, size, material }),
    v.strictObject({
      count: numberOfSets,
      phases: v.pipe(
        v.array(v.nullable(conductor)),
        v.minLength(1),
        v.maxLength(mostPhases),
        v.description(
          "One conductor per phase, always in the same order; null where a set leaves a phase out.",
        ),
      ),
    }),
  ]);

  const conductors = v.strictObject({
    sets: v.pipe(v.array(set), v.minLength(1), v.maxLength(mostSetEntries)),
  });

  const supply = v.union([
    conductors,
    v.strictObject({
      forLoad: v.pipe(
        v.strictObject({ amperes, material, sets: count }),
        v.description("No conductors are chosen yet: those that this load requires, in so many sets."),
      ),
    }),
  ]);

  const raceways = v.pipe(
    v.strictObject({
      count: v.pipe(count, v.description("Raceways or cables that the sets are divided over evenly.")),
      kind: v.picklist(["nonflexible-metal", "flexible-metal", "nonmetallic"]),
    }),
    v.description("How the sets run; one nonmetallic raceway unless told."),
  );

  const load = v.pipe(
    v.strictObject({
      amperes: v.pipe(
        amperes,
        v.description("Amperes of the grounded conductor, of all its parallel parts together."),
      ),
      circuitAmperes: v.pipe(
        amperes,
        v.description("Rating of the circuit, which decides the temperature of its terminations."),
      ),
      listedFor75: v.optional(v.boolean()),
    }),
    v.description("Load of the grounded conductor, whose requirement stands beside the table's."),
  );

  const run = v.strictObject({
    id,
    from: reference(
      "the place where it starts: the source, a box, or at a service a disconnect that is not service equipment",
    ),
    to: reference("the place where it ends: a box or a disconnect"),
    supply,
    raceways: v.optional(raceways),
    racewayJumpers: v.optional(
      v.pipe(
        v.picklist(["per-raceway", "common", "fittings-instead"]),
        v.description(
          "Whether metal raceways get a jumper each or one in common, or, at a service, are bonded by fittings instead; common unless told.",
        ),
      ),
    ),
    load: v.optional(load),
    lengthFeet: v.optional(feet),
  });

  const runs = v.pipe(v.array(run), v.minLength(1), v.maxLength(200));

  const grounding = v.pipe(
    v.picklist(["solidly-grounded", "grounded-phase", "impedance", "ungrounded"]),
    v.description("How the system is grounded; grounded-phase is the corner of a delta."),
  );

  const connection = v.picklist([
    "three-phase-wye",
    "single-phase-three-wire",
    "three-phase-delta",
    "high-leg-delta",
  ]);

  const impedance = v.pipe(
    v.strictObject({ amperes, electrodeConductorAt: v.picklist(["impedance", "first-disconnect"]) }),
    v.description("Present if and only if the system is grounded through an impedance."),
  );

  const electrode = v.pipe(
    v.strictObject({
      id,
      kind: v.picklist([
        "rod",
        "pipe",
        "plate",
        "concrete-encased",
        "ring",
        "metal-water-pipe",
        "structural-metal",
        "other",
      ]),
      ringConductor: v.optional(size),
      from: reference(
        "what its conductor comes from: a disconnect, box, source or building, the common electrode conductor, or another electrode",
      ),
      ferrousRaceway: v.optional(
        v.pipe(
          v.boolean(),
          v.description(
            "Whether its conductor runs in a ferrous metal raceway, whose ends are bonded to it.",
          ),
        ),
      ),
    }),
    v.description("An electrode connected from another electrode is tied by a bonding jumper; no cycles."),
  );

  const electrodes = v.optional(v.pipe(v.array(electrode), v.maxLength(50)));

  const bondedBy = v.pipe(
    v.picklist(["jumper", "grounded-conductor"]),
    v.description("What bonds its metal on the supply side."),
  );

  return {
    id,
    amperes,
    count,
    feet,
    material,
    size,
    conductors,
    supply,
    run,
    runs,
    grounding,
    connection,
    impedance,
    electrode,
    electrodes,
    bondedBy,
  };
}

/** What the definition of drawings is made of. Made by a call marked as pure, so that nobody carries it along who does not read drawings. */
export const parts = /* @__PURE__ */ makeParts();
