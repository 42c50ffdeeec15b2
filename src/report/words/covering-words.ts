import type { Covering } from "../../installation/covering.js";

/** Whether a conductor is to be insulated, in a word. */
export const coveringWords: Readonly<Record<Covering["kind"], string>> = {
  insulated: "insulated",
  "bare-in-stated-cases": "insulated, bare in stated cases",
  "bare-permitted": "bare permitted",
};
