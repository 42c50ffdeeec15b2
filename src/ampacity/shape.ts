import * as v from "valibot";
import { byHand, says } from "../input/define.js";

export const temperatureColumn = v.pipe(
  v.picklist([60, 75, 90]),
  says("Temperature column of the ampacity table, in degrees Celsius."),
  byHand({ type: ["TemperatureColumn", "ampacity/index"], read: ["readColumn", "ampacity/read"] }),
);
