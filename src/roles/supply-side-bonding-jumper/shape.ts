import * as v from "valibot";
import { flag, says } from "../../input/define.js";
import { bySupply, systemKind } from "../../rules/shape.js";

export const supplySideBondingJumperInput = v.pipe(
  v.strictObject({
    ...bySupply,
    system: v.optional(
      v.pipe(
        systemKind,
        says(
          "A service by default. In a separately derived system the jumper is capped at the derived ungrounded conductors.",
        ),
      ),
    ),
    scope: v.optional(
      v.pipe(
        v.picklist(["raceway", "single-raceway", "all"]),
        says(
          "Whether the jumper serves one of several raceways, by the ungrounded conductors in that raceway; the single raceway that holds all sets; or all that there is, in several raceways or in boxes. All by default.",
        ),
      ),
    ),
    ungrounded: v.optional(
      v.pipe(
        flag("whether the system has no grounded conductor"),
        says(
          "Whether a separately derived system is ungrounded. The size is the same; another section requires the jumper.",
        ),
      ),
    ),
    instead: v.optional(
      v.pipe(
        v.picklist(["nonflexible-metal-raceway", "grounded-conductor", "bonding-fittings"]),
        says(
          "What bonds in place of a wire or bus: a nonflexible metal raceway, or, at boxes and raceways of a service, the grounded conductor or fittings that are permitted for it. No jumper is then required.",
        ),
      ),
    ),
  }),
  says("A supply-side bonding jumper to be sized."),
);
