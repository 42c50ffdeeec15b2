import type { Built } from "../built.js";
import type { Dice } from "../dice.js";

/** A law of one installation: what breaks it, in words; nothing where it holds. */
export interface Law {
  readonly name: string;
  readonly breaches: (built: Built, dice: Dice) => readonly string[];
}
