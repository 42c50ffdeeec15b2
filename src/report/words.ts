import type { Connection, ConnectionNote } from "../arrangement/arrangement.js";
import type { CautionCode } from "../rules/caution.js";
import type { NotRequiredReason } from "../rules/result.js";
import type { Supply, SupplySet } from "../supply/index.js";

/** What each caution says. */
export const cautionWords: Readonly<Record<CautionCode, string>> = {
  "assumed-conductors":
    "The supply is of another material, so conductors of the jumper's material with equal ampacity are assumed; which ones are assumed changes the answer, so they are shown.",
  "no-single-conductor-of-equal-ampacity":
    "No single conductor of the jumper's material has the ampacity of the installed one; the area of equal conductance is assumed instead, never several smaller conductors.",
  "mixed-supply-materials":
    "Copper and aluminum stand side by side in this supply; all are replaced by assumed conductors of the jumper's material. The text does not name this case.",
  "no-cap-across-materials":
    "The jumper comes out larger than the ungrounded conductor. The sentence that limits it is not applied across materials.",
  "cap-applied":
    "The jumper is limited to the area of the ungrounded conductor or set. The sentence stands in the note on large supplies; another reading does not apply it here.",
  "single-conductor-above-threshold":
    "The notes of this edition name conductors in parallel only; a single conductor above the table's last row is sized by them all the same.",
  "conductors-required-for-load":
    "No conductors are chosen yet: these are the ones that the load requires. Size again when they are.",
  "parallel-below-1-0":
    "Conductors smaller than 1/0 AWG are permitted in parallel in few cases only. Sized as found.",
  "material-not-named":
    "This edition does not name aluminum or copper-clad aluminum for this jumper, only copper or other corrosion-resistant material. Ask the authority having jurisdiction.",
  "above-largest-standard-size":
    "No standard conductor is large enough. Provide the area as a bus, or divide the supply; several conductors in parallel need the consent of the authority having jurisdiction.",
  "listed-equipment":
    "Listed equipment comes with its own bonding jumper under its product standard; its listing then decides, not this size.",
  "assembly-size-inferred":
    "The text gives the one jumper of a listed assembly no size of its own; it is taken from all conductors that supply the assembly.",
  "assembly-narrowed":
    "Since 2020 several disconnects in one assembly need sections or compartments of their own; six on one bus are no longer one service.",
  "more-than-six-disconnects": "More than six disconnects for one service are not permitted. Sized as found.",
  "jumper-in-wireway":
    "A jumper in a wireway or gutter is a supply-side bonding jumper; it does not replace the main bonding jumper in each enclosure.",
  "outdoor-source": "An outdoor source has its electrode connection at the source.",
};

/** Why a conductor is not required. */
export const notRequiredWords: Readonly<Record<NotRequiredReason, string>> = {
  "metal-raceway-serves": "a nonflexible metal raceway serves in its place",
  "grounded-conductor-serves": "the grounded conductor bonds this part",
};

/** What each connection note says. */
export const connectionWords: Readonly<Record<ConnectionNote, string>> = {
  "bonded-in-each-enclosure": "run to every enclosure and bonded to it inside",
  "bonded-at-assembly-terminal": "run to the common terminal of the assembly",
  "anywhere-on-supply-side":
    "connected at any accessible point from the drop's or lateral's load end to the disconnect",
  "common-individual-or-one-place":
    "one common conductor with taps, one per enclosure, or one place on the supply side",
  "several-on-supply-side-are-normal":
    "several connections of the grounded conductor on the supply side are normal",
  "none-beyond-the-disconnect":
    "a connection of the grounded conductor to metal beyond this point is a fault, save listed exceptions",
  "by-jumper-or-grounded-conductor": "bonded by this jumper or by the grounded conductor",
  "table-minimum-applies":
    "run to every enclosure with at least the table's size, because the jumper is not at the source",
  "sized-for-its-load-only":
    "sized for its load; the table's minimum does not apply, because the jumper is at the source",
  "at-the-jumper": "connected where the jumper is",
  "at-each-jumper": "connected at every enclosure that has a jumper",
  "at-one-jumper": "connected at one place that has a jumper",
  "at-the-source": "connected at the source",
  "from-source-to-each-enclosure": "run from the source to every enclosure",
  "not-required-with-both-jumpers": "not required where both jumpers are in place",
  "only-one-point-per-system": "a second jumper here is a fault: one arrangement per system",
  "at-least-the-jumper": "at least as large as the system bonding jumper",
};

/** How each kind of connection is called. */
export const connectionNames: Readonly<Record<Connection["kind"], string>> = {
  "grounded-conductor": "grounded conductor",
  "grounding-electrode-conductor": "grounding electrode conductor",
  "supply-side-bonding-jumper": "supply-side bonding jumper",
  "second-connection-supply-side": "further connections, supply side",
  "second-connection-load-side": "further connections, load side",
  "second-connection-at-source": "second jumper at the source",
  "second-connection-at-disconnect": "second jumper at a disconnect",
};

/** Cautions that every schedule carries. */
export const standingCautions: readonly string[] = [
  "Sizes are minimums of the named edition. Local amendments and the authority having jurisdiction decide.",
  "Listed equipment follows its listing. Work on services is dangerous and belongs to licensed people.",
  "This checks arithmetic, not an installation.",
  "NFPA 70 and NEC are marks of the National Fire Protection Association, with which this project is not affiliated.",
];

/** Writes a supply, for example `3 x 600 kcmil copper`. */
export function writeSupply(supply: Supply): string {
  return supply.sets.map(writeSet).join(" + ");
}

function writeSet(set: SupplySet): string {
  if (!("phases" in set)) return `${set.count} x ${set.size} ${set.material}`;
  const phases = set.phases.map((one) => (one === null ? "none" : `${one.size} ${one.material}`));
  return `${set.count} x (${phases.join(", ")})`;
}
