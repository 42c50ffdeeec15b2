import * as v from "valibot";
import { conductorSize } from "../../conductor/shape.js";
import { editionYear } from "../../edition/shape.js";
import { between, count, flag, listOf, says } from "../../input/define.js";
import { insulations, racewayKinds, tradeSizes } from "./kinds.js";

export const racewayKind = v.pipe(
  v.picklist(racewayKinds),
  says("Kind of conduit or tubing whose dimensions Chapter 9 Table 4 gives."),
);

export const tradeSize = v.pipe(
  v.picklist(tradeSizes),
  says("Trade size; tubing and intermediate metal conduit end at 4."),
);

export const insulation = v.pipe(
  v.picklist(insulations),
  says("Type of insulation that Chapter 9 Table 5 gives an area for."),
);

const howMany = v.pipe(count("conductors"), says("How many of them are in the raceway."));

export const insulatedInRaceway = v.pipe(
  v.strictObject({
    count: howMany,
    size: conductorSize,
    insulation,
    compact: v.optional(
      v.pipe(
        flag("whether its strands are compact"),
        says("Whether its strands are compact, so that Table 5A gives its area."),
      ),
    ),
    withoutCovering: v.optional(
      v.pipe(
        flag("whether it lacks the outer covering"),
        says("Of RHH, RHW and RHW-2, whether it lacks the outer covering. With it, it is much larger."),
      ),
    ),
  }),
  says("Insulated conductors of one size and type in a raceway."),
);

export const bareInRaceway = v.pipe(
  v.strictObject({
    count: howMany,
    size: conductorSize,
    bare: v.pipe(v.picklist(["stranded", "solid"]), says("How the bare conductor is made.")),
  }),
  says("Bare conductors of one size in a raceway, by their overall area (Chapter 9 note 8 and Table 8)."),
);

export const measuredInRaceway = v.pipe(
  v.strictObject({
    count: howMany,
    squareInches: v.pipe(
      between("square inches", 0.0001, 100, "give the area of one, with its insulation"),
      says("Area of one, with its insulation; the part of a ten-thousandth counts as a whole one."),
    ),
  }),
  says("Conductors or cables that the tables do not list, by the area that their maker states (note 5)."),
);

const inRaceway = v.union([insulatedInRaceway, bareInRaceway, measuredInRaceway]);

export const racewayFillQuestion = v.pipe(
  v.strictObject({
    edition: v.pipe(editionYear, says("Edition whose tables are used.")),
    raceway: racewayKind,
    tradeSize: v.optional(
      v.pipe(tradeSize, says("The raceway that is there; without it the smallest that takes all is used.")),
    ),
    nipple: v.optional(
      v.pipe(
        flag("whether it is a nipple"),
        says(
          "Whether it is a nipple of at most 24 in between enclosures, which may be filled to 60 percent (note 4).",
        ),
      ),
    ),
    conductors: v.pipe(
      listOf(inRaceway),
      says("All that is in it: grounding and bonding conductors count like all others (note 3)."),
    ),
    added: v.optional(
      v.pipe(
        listOf(inRaceway),
        says(
          "What is to be pulled in besides, such as a required jumper; the answer then also says how it was without.",
        ),
      ),
    ),
  }),
  says("A raceway and what it holds or is to hold."),
);
