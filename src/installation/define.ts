import * as v from "valibot";
import { material } from "../conductor/shape.js";
import { byHand, flag, positive, says, text } from "../input/define.js";

export const named = v.pipe(
  v.string(),
  v.regex(/^\S(.*\S)?$/),
  byHand({ read: ["readId", "installation/read-id"] }),
);

export const id = v.pipe(named, says("Name on the drawing. Every id is unique in the document."));

export const reference = (what: string) => v.pipe(text(what), says(`Id of ${what}.`));

export const feet = v.pipe(positive("feet"), says("Length in feet."));

export const yes = (what: string, more: string) => v.pipe(flag(what), says(more));

const metals = {
  bondingJumpers: v.optional(v.pipe(material, says("Material of its bonding jumpers."))),
  groundedConductors: v.optional(v.pipe(material, says("Material of its grounded conductors."))),
  electrodeConductors: v.optional(v.pipe(material, says("Material of its grounding electrode conductors."))),
  equipmentGrounding: v.optional(v.pipe(material, says("Material of its equipment grounding conductors."))),
};

/** Materials of what belongs to one thing, which only has conductors of these kinds. */
export const ownMaterials = <K extends keyof typeof metals>(...kinds: readonly K[]) => {
  const entries = Object.fromEntries(kinds.map((kind) => [kind, metals[kind]])) as Pick<typeof metals, K>;
  return v.optional(
    v.pipe(
      v.strictObject(entries),
      says(
        "Materials of its own conductors. The nearest wins: what is left out is of the material of what it belongs to, and last of the installation's.",
      ),
    ),
  );
};
