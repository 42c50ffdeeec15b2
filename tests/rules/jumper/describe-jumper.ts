import { describeCap } from "./describe-cap.js";
import { describeOtherMaterial } from "./describe-other-material.js";
import { describeResult } from "./describe-result.js";
import { describeSize } from "./describe-size.js";
import type { JumperFacts, Sizer } from "./facts.js";

/** The questions that are asked of every jumper that is sized from its supply. */
export function describeJumper(size: Sizer, facts: JumperFacts): void {
  describeResult(size, facts);
  describeSize(size, facts);
  describeOtherMaterial(size, facts);
  describeCap(size, facts);
}
