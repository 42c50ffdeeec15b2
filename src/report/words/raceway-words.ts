import type { RacewayFillCautionCode, RacewayKind } from "../../engineering/raceway-fill/raceway-fill.js";

/** Kinds of raceway as the trade names them. */
export const racewayNames: Readonly<Record<RacewayKind, string>> = {
  "electrical-metallic-tubing": "EMT",
  "intermediate-metal": "IMC",
  "rigid-metal": "RMC",
  "pvc-schedule-40": "Schedule 40 PVC",
  "pvc-schedule-80": "Schedule 80 PVC",
};

/** What each caution on a raceway says. */
export const racewayFillCautionWords: Readonly<Record<RacewayFillCautionCode, string>> = {
  "may-jam":
    "Three alike conductors in a raceway of about three times their diameter may wedge where it bends; take another size if the pull is long.",
  "rounded-up-in-nipple":
    "The count is rounded up in a nipple. Note 7 does not exclude nipples, but some inspectors do not apply it there; ask before it is built.",
};
