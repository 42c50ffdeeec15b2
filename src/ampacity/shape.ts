import * as v from "valibot";
import { conductorSize, material } from "../conductor/shape.js";
import { editionYear } from "../edition/shape.js";
import { called, positive, says } from "../input/define.js";

export const temperatureColumn = v.pipe(
  v.picklist([60, 75, 90]),
  called("temperature column in degrees Celsius"),
  says("Temperature column of the ampacity table, in degrees Celsius."),
);

const ofColumn = {
  edition: v.pipe(editionYear, says("Edition whose ampacity table is used.")),
  material: v.pipe(material, says("Material; copper-clad aluminum shares the aluminum columns.")),
  temperature: temperatureColumn,
};

export const ampacityQuestion = v.pipe(
  v.strictObject({ ...ofColumn, size: conductorSize }),
  says("A conductor whose ampacity is to be found."),
);

export const conductorQuestion = v.pipe(
  v.strictObject({ ...ofColumn, amperes: v.pipe(positive("amperes"), says("Amperes to carry.")) }),
  says("A current for which a conductor is to be found."),
);
