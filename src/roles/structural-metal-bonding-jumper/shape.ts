import * as v from "valibot";
import { code } from "../../edition/shape.js";
import { flag, says } from "../../input/define.js";
import { wantedWire } from "../../rules/shape.js";
import { supply } from "../../supply/shape.js";

export const structuralMetalBondingJumperInput = v.pipe(
  v.strictObject({
    code,
    system: v.pipe(
      v.picklist(["service", "building", "separately-derived"]),
      says(
        "Whose jumper it is: of a service, of the disconnect of a building on a feeder, or of a separately derived system.",
      ),
    ),
    supply: v.pipe(
      supply,
      says("Ungrounded conductors of the service, of the feeder, or of the derived system."),
    ),
    conductor: v.pipe(wantedWire, says("The conductor to be sized.")),
    isElectrode: v.optional(
      v.pipe(
        flag("whether the frame is itself the electrode"),
        says(
          "Whether the frame is itself an electrode of that service, building or system, which then needs no further jumper to it.",
        ),
      ),
    ),
  }),
  says("A bonding jumper to exposed structural metal that is interconnected to form a building frame."),
);
