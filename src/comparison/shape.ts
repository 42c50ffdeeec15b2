import * as v from "valibot";
import { conductorSize, material } from "../conductor/shape.js";
import { editionYear } from "../edition/shape.js";
import { anyObject, count, listOf, positive, says } from "../input/define.js";

/** Editions side by side; one may be named again. */
const mostEditions = 20;

/** Sizes, and counts, of one sweep: there is a row for every size with every count in every edition. */
const mostOfEach = 100;

const editionsSaying = (description: string) =>
  v.optional(v.pipe(listOf(editionYear, mostEditions), says(description)));
const over = <const Over extends string>(word: Over) => v.pipe(v.literal(word), says("What is compared."));

export const editionsRequest = v.pipe(
  v.strictObject({
    over: over("editions"),
    editions: editionsSaying("Editions in the order of the columns; all of them, oldest first, by default."),
    input: v.pipe(anyObject, says("What the role takes, without an edition.")),
  }),
  says("A comparison of editions."),
);

export const readingsRequest = v.pipe(
  v.strictObject({ over: over("readings"), input: v.pipe(anyObject, says("What the role takes.")) }),
  says("A comparison of readings."),
);

export const amendmentsRequest = v.pipe(
  v.strictObject({
    over: over("amendments"),
    input: v.pipe(anyObject, says("What the role takes, with its amendments.")),
  }),
  says("A comparison of amendments."),
);

export const compareRequest = v.pipe(
  v.variant("over", [editionsRequest, readingsRequest, amendmentsRequest]),
  says("What one input of a role is compared over."),
);

const editions = editionsSaying("All editions by default.");
const ofConductor = v.pipe(material, says("Material of the conductor to be sized."));
const changes = v.optional(
  v.pipe(anyObject, says("Changes to the plainest question, which the role checks.")),
);

export const supplySweep = v.pipe(
  v.strictObject({
    editions,
    supplyMaterial: v.pipe(material, says("Material of the ungrounded conductors.")),
    material: ofConductor,
    sizes: v.optional(
      v.pipe(
        listOf(conductorSize, mostOfEach),
        says("Sizes of the supply conductors; every standard size by default."),
      ),
    ),
    counts: v.optional(
      v.pipe(listOf(count("sets"), mostOfEach), says("Numbers of sets; 1 to 20 by default.")),
    ),
    with: changes,
  }),
  says("The supplies for which a role is sized, and under which editions."),
);

export const ratingSweep = v.pipe(
  v.strictObject({
    editions,
    material: ofConductor,
    ratings: v.optional(
      v.pipe(
        listOf(positive("amperes")),
        says("Ratings in amperes; the last rating of each row of the tables of these editions by default."),
      ),
    ),
    with: changes,
  }),
  says("The overcurrent devices for which a role is sized, and under which editions."),
);
