import * as v from "valibot";
import { byHand, says } from "../input/define.js";
import { materials } from "./material.js";
import { conductorSizes } from "./size.js";

export const conductorSize = v.pipe(
  v.picklist(conductorSizes),
  says("Trade size, for example 4/0 AWG or 500 kcmil."),
  byHand({ type: ["ConductorSize", "conductor/index"], read: ["readSize", "conductor/read"] }),
);

export const material = v.pipe(
  v.picklist(materials),
  says("Material of a conductor."),
  byHand({ type: ["Material", "conductor/index"], read: ["readMaterial", "conductor/read"] }),
);
