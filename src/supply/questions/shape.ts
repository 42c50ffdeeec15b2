import * as v from "valibot";
import { temperatureColumn } from "../../ampacity/shape.js";
import { material } from "../../conductor/shape.js";
import { editionYear } from "../../edition/shape.js";
import { between, called, says } from "../../input/define.js";
import { supply } from "../shape.js";

export const assumptionQuestion = v.pipe(
  v.strictObject({
    edition: v.pipe(editionYear, says("Edition whose ampacity table is used.")),
    supply: v.pipe(supply, says("The installed conductors.")),
    material: v.pipe(material, says("Material of the conductor to be sized.")),
    temperature: v.pipe(
      temperatureColumn,
      says("Temperature column in which ampacities are compared, in degrees Celsius."),
    ),
  }),
  says("Installed conductors, and the material of those that are to be assumed in their place."),
);

export const transformerRating = v.pipe(
  v.strictObject({
    kva: v.pipe(
      between("kilovolt-amperes", 0.001, 10_000_000),
      says("Apparent power in kilovolt-amperes, from 0.001 to 10,000,000."),
    ),
    volts: v.pipe(
      between("volts", 1, 1_000_000),
      says("Volts of the side whose current is to be found, from line to line; from 1 to 1,000,000."),
    ),
    phases: v.pipe(
      v.picklist([1, 3]),
      called("phases of the transformer"),
      says("Phases of the transformer."),
    ),
  }),
  says("What stands on the nameplate of a transformer."),
);
