import * as v from "valibot";
import { code } from "../../edition/shape.js";
import { flag, listOf, says } from "../../input/define.js";
import { wantedWire } from "../../rules/shape.js";
import { conductor } from "../../supply/shape.js";

export const electrodeRacewayBondingJumperInput = v.pipe(
  v.strictObject({
    code,
    ferrous: v.pipe(
      flag("whether the raceway is of ferrous metal"),
      says("Whether the raceway, armor or enclosure is ferrous: only then must both ends be bonded."),
    ),
    enclosed: v.pipe(listOf(conductor), says("The grounding electrode conductors inside, as installed.")),
    conductor: v.pipe(wantedWire, says("The conductor to be sized.")),
  }),
  says("A jumper that bonds the end of a metal raceway around grounding electrode conductors."),
);
