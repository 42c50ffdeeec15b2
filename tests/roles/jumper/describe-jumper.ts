import { size } from "bondmil";
import { describeCap } from "./describe-cap.js";
import { describeOtherMaterial } from "./describe-other-material.js";
import { describeResult } from "./describe-result.js";
import { describeSize } from "./describe-size.js";
import type { JumperFacts, JumperRole, Sizer } from "./facts.js";

/** The questions that are asked of every jumper that is sized from its supply. */
export function describeJumper(role: JumperRole, facts: JumperFacts): void {
  const sized: Sizer = (input) => size(role, input);
  describeResult(sized, facts);
  describeSize(sized, facts);
  describeOtherMaterial(sized, facts);
  describeCap(sized, facts);
}
