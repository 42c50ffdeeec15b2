import type { Role } from "../../../src/index.js";
import file from "../../wrong-programs/mistakes.json" with { type: "json" };
import type { Mistake as PublishedMistake } from "../runner/model.js";
import { type Program, rightProgram, type Wrong } from "./program.js";
import { ofAreas } from "./programs/areas.js";
import { ofEditions } from "./programs/editions.js";
import { ofElectrodes } from "./programs/electrodes.js";
import { ofLimits } from "./programs/limits.js";
import { ofMaterials } from "./programs/materials.js";
import { ofRatings } from "./programs/ratings.js";
import { ofRows } from "./programs/rows.js";
import { ofSums } from "./programs/sums.js";
import { ofSystems } from "./programs/systems.js";
import { ofWhole } from "./programs/whole.js";

/** A mistake by its name, as the list has it. */
export interface NamedMistake {
  readonly id: string;
  /** What the program does, in the words of the trade. */
  readonly mistake: string;
  /** Written in haste, of a kind that published answers make, or a change between editions. */
  readonly from: "naive" | { readonly published: PublishedMistake } | { readonly change: string };
  /** Conductors of which it can be made. */
  readonly roles: readonly Role[];
}

/** The list, by what the mistakes are about; a test holds it against its schema. */
export const mistakeGroups = file.groups as unknown as Readonly<Record<string, readonly NamedMistake[]>>;

/** Every mistake of the list. */
export const namedMistakes: readonly NamedMistake[] = Object.values(mistakeGroups).flat();

/** What makes a wrong program, by the name of its mistake. */
export const wrongs: Readonly<Record<string, Wrong>> = {
  ...ofWhole,
  ...ofAreas,
  ...ofEditions,
  ...ofSums,
  ...ofRows,
  ...ofMaterials,
  ...ofLimits,
  ...ofElectrodes,
  ...ofRatings,
  ...ofSystems,
};

/** The library with one mistake made in it. */
export function programOf({ id }: NamedMistake): Program {
  const make = wrongs[id];
  if (make === undefined) throw new TypeError(`there is no program for ${id}`);
  return make(rightProgram);
}
