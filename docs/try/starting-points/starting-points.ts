import type { Json } from "../state/data.js";
import { dwelling } from "./dwelling.js";
import { loadToChooseBy } from "./load-to-choose-by.js";
import { rowOfShops } from "./row-of-shops.js";
import { workshopTransformer } from "./workshop-transformer.js";

/** An installation to begin with. All of them are invented. */
export interface StartingPoint {
  readonly name: string;
  readonly document: Json;
}

const copper = {
  bondingJumpers: "copper",
  groundedConductors: "copper",
  electrodeConductors: "copper",
  equipmentGrounding: "copper",
};

const blank: Json = { format: 1, title: "Untitled", code: { year: "2023" }, materials: copper };

export const startingPoints: readonly StartingPoint[] = [
  { name: "Row of shops: four enclosures on a gutter, one rod too few", document: rowOfShops },
  { name: "Dwelling, 200 A, some conductors found on site", document: dwelling },
  { name: "Transformer of a workshop", document: workshopTransformer },
  { name: "Boat house: a load whose conductors are to be chosen", document: loadToChooseBy },
  { name: "Blank sheet", document: blank },
];
