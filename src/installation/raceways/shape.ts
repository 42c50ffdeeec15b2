import * as v from "valibot";
import { anyOf, count, says } from "../../input/define.js";
import { id, ownMaterials } from "../define.js";

const racewayKind = v.pipe(
  v.picklist(["nonflexible-metal", "flexible-metal", "nonmetallic", "unknown"]),
  says(
    "What it is made of. Nonmetallic stands for conductors in no raceway too, such as a drop; unknown gives both outcomes.",
  ),
);

export const raceways = v.pipe(
  v.strictObject({
    count: v.pipe(
      count("raceways or cables"),
      says("Raceways or cables that the sets are divided over evenly."),
    ),
    kind: racewayKind,
  }),
  says("How the sets run. What they run in is never assumed: a run has this member, or `in`."),
);

export const sharedRaceway = v.pipe(
  v.strictObject({
    id,
    kind: racewayKind,
    bondedBy: v.optional(
      v.pipe(
        v.picklist(["jumper", "fittings"]),
        says(
          "What bonds it if it is metal; only that of a service is bonded by fittings. A jumper by default.",
        ),
      ),
    ),
    materials: ownMaterials("bondingJumpers"),
  }),
  says("A raceway, nipple or wireway that several runs share; one jumper bonds it, by all conductors in it."),
);

export const sharedRaceways = v.optional(
  v.pipe(anyOf(sharedRaceway, 100), says("Raceways, nipples and wireways that several runs share.")),
);
