import type { Caution, CautionCode } from "../../rules/caution.js";

/** What each caution says. */
export const cautionWords: Readonly<Record<CautionCode, string>> = {
  "assumed-conductors":
    "The supply is of another material, so conductors of the jumper's material with equal ampacity are assumed; which ones are assumed changes the size, so they are shown.",
  "no-single-conductor-of-equal-ampacity":
    "No single conductor of the jumper's material has the ampacity of the installed one; the area of equal conductance is assumed instead, never several smaller conductors.",
  "mixed-supply-materials":
    "Copper and aluminum stand side by side in this supply; all are replaced by assumed conductors of the jumper's material. The text does not name this case.",
  "no-cap-across-materials":
    "The conductor comes out larger than the ungrounded conductors. The sentence that limits it is not applied across materials.",
  "cap-applied":
    "The size is limited to the area of the ungrounded conductor or set. Where that sentence stands in the note on large supplies, another reading does not apply it to small ones.",
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
  "jumper-in-wireway":
    "A jumper in a wireway or gutter is a supply-side bonding jumper; it does not replace the main bonding jumper in each enclosure.",
  "conductors-below-rating":
    "The ungrounded conductors to this disconnect carry less than its rating, by more than the next standard size would allow. Check both: every size here follows from the conductors.",
  "electrode-limit-not-for-material":
    "For this electrode the section names a largest size in other materials only, so the table stands.",
  "common-conductor-of-services-only":
    "This edition describes a common electrode conductor with taps for services; for a building on a feeder ask the authority having jurisdiction.",
  "busbar-tie-inferred":
    "This edition gives the conductor to such a busbar no size of its own; that of a termination is taken.",
  "impaired-knockouts-need-jumpers":
    "Bonded by fittings: ordinary locknuts and bushings do not count, and reducing washers and oversized, concentric or eccentric knockouts still get a jumper around them.",
  "load-not-counted":
    "No load is given for the grounded conductor; its load may require more than what is said here.",
  "no-load-stated":
    "The load of the grounded conductor is stated as zero. The minimum size for the fault path applies all the same.",
  "no-device-sized-by-conductors":
    "This edition sizes the jumper by the feeder's device; none is given, so it is sized by the feeder conductors, which as a rule require at least as much.",
  "equipment-grounding-conductor-may-serve":
    "The equipment grounding conductor of the circuit that is likely to energize the piping may serve in its place.",
  "electrode-to-be-supplemented":
    "A lone rod, pipe or plate is supplemented by another electrode unless it measures 25 ohms or less; a metal water pipe always is.",
  "electrode-conductor-protection-unknown":
    "An electrode conductor smaller than 6 AWG runs in a raceway or cable armor that protects it; nothing tells what protects this one.",
  "jumper-around-removable":
    "The path over a metal water pipe does not rely on what is likely to be taken out of it. The jumper around it is long enough that the part can be taken out with the jumper in place.",
  "outdoor-transformer-electrode":
    "Where the utility's transformer stands outdoors, at least one more electrode connection is made outside the building.",
  "only-without-parallel-path":
    "Jumpers at both ends are permitted only where no parallel path for the grounded conductor arises; metal raceways and jumpers between the ends are such paths.",
  amended: "An amendment is in force here.",
  "amendment-without-effect":
    "An amendment for this conductor is in force, but nothing in this result hangs on it.",
  "amendment-superseded":
    "An amendment is in force here, but a later one of the same cell or reading takes its place.",
  "enforced-reading-overrules-chosen":
    "An amendment enforces how an open text is read, and the code chooses another alternative. The enforced one is applied, the chosen one is not.",
  "amendment-condition-unknown":
    "An amendment may be in force here: whether its condition holds is not stated, so it was not applied.",
  "amendment-condition-not-met": "An amendment does not apply here, because its condition is not met.",
  "always-wire": "An amendment requires a wire-type conductor, also where a raceway or armor could serve.",
  "material-forbidden": "An amendment forbids this material for this conductor.",
  "outdoor-source": "An outdoor source has its electrode connection at the source.",
  "limited-to-circuit-conductors":
    "The conductor is limited to the area of the circuit conductors; the table or the increase alone would require more.",
  "no-baseline-given":
    "No baseline is given for the circuit conductors, so no increase is counted. If they are larger than they had to be, size again with the conductors that the increase is counted from.",
  "baseline-before-increase":
    "In this edition every increase counts, whatever its reason: the baseline is the conductors before the increase.",
  "baseline-minimum-for-installation":
    "In this edition the increase is counted from the smallest conductors with sufficient ampacity for the installation.",
  "baseline-by-temperature-and-number":
    "In this edition what the correction for temperature and the adjustment for the number of conductors require is no increase: the baseline includes it.",
  "no-increase-for-temperature-or-number":
    "The circuit conductors are larger because temperature or the number of conductors requires it; this edition does not count that as an increase.",
  "smaller-than-baseline":
    "The circuit conductors are smaller than their baseline. A decrease never lowers the size; were the two mixed up?",
  "short-by-rounding":
    "The next smaller size misses the requirement by less than the rounding of the table of conductor areas. The table's areas decide, so the larger size stands.",
  "qualified-person-may-size":
    "A qualified person may size the conductor otherwise, if it is an effective ground-fault current path.",
  "table-size-not-standard":
    "The table names a size that the list of conductors does not have; the next standard size is offered.",
  "increased-circuit-decides":
    "Of the circuits that share the conductor, not the one with the largest device decides.",
  "motor-fuse-rating-given":
    "With an instantaneous-trip device the largest dual-element time-delay fuse permitted for the motor decides. Its rating is taken as given.",
  "aluminum-grounding-restrictions":
    "Aluminum and copper-clad aluminum have restrictions where corrosion threatens and near concrete, masonry or earth.",
  "full-size-in-each":
    "Parallel runs in several raceways or cables have a conductor of this size in each of them; it is not divided.",
  "cable-conductors-may-be-combined":
    "Where the cables share one raceway, tray or gutter, their own equipment grounding conductors may be combined with one of this size added beside them.",
  "tray-by-qualified-persons":
    "A cable tray serves as equipment grounding conductor only where qualified persons maintain the installation.",
  "tray-identified-and-marked":
    "The tray and its fittings must be identified for the purpose and marked with the area of their metal.",
  "tray-bonded":
    "Tray sections, fittings and raceways that join them must be bonded together; a break is bridged by a bonding jumper.",
  "larger-than-shared-branch-circuit":
    "The conductors are larger than a circuit of 50 A has. A branch circuit of more than 50 A serves a single piece of equipment; a supply for anything else is a feeder, and the building then needs electrodes and their conductor. Conductors enlarged for voltage drop make no difference.",
  "same-size-in-aluminum":
    "The section compares sizes and not materials: aluminum of the same size as a copper conductor carries less than it.",
  "not-excused-in-this-edition":
    "This edition has no exception for such a place, so that the conductor is required all the same.",
  "factory-jumper-serves":
    "The jumper between grounded conductor and frame that the factory fitted is the system bonding jumper and stays. Hold its size against the one required, or take it out where the jumper is to be elsewhere.",
  "grounded-phase-devices":
    "No overcurrent device may open the grounded conductor of a corner-grounded system unless it opens all conductors at once, and breakers need a voltage rating for such a system.",
  "impedance-conditions":
    "Grounding through an impedance is for three-phase systems of 480 to 1000 V that serve no loads between line and neutral, have ground detectors and are kept by qualified persons; the conductor from the neutral point is insulated.",
  "building-on-ungrounded-system":
    "The system is ungrounded: the equipment grounding conductor runs with the supply conductors and is connected to the disconnect enclosure and the electrodes of the building.",
  "connect-grounded-conductor-at-building":
    "The grounded conductor is the fault path of this building: it is connected to the enclosure of the disconnect and to the electrode conductor there. The section gives that connection no size.",
  "feeder-increase-not-counted":
    "The ungrounded conductors of this feeder were increased; the minimum size of its grounded conductor is counted without that increase.",
  "load-side-jumper-behind-device":
    "A jumper is required in this edition on the load side of the generator's overcurrent device too; draw the circuit that starts there, with its device.",
  "common-conductor-inferred":
    "No text sizes a common grounding electrode conductor for several system bonding jumpers of one system. It is sized as the electrode conductor of that system, or as the reading that is chosen says; have it approved.",
  "electrode-conductor-of-sufficient-size":
    "The pipe is an electrode, but its electrode conductor need not be as large as this jumper. Where the electrode conductor is of at least this size, it serves as the jumper.",
  "piping-may-continue-electrode":
    'A metal water pipe is among the electrodes there. Where this piping continues it, the electrode conductor bonds the piping as far as it is as large as this jumper: say in "bondedTo" of the piping which electrode that is.',
};

/** A caution with its section. */
export function cautionSentence({ code, section }: Caution): string {
  return `${cautionWords[code]}${section === null ? "" : ` [${section}]`}`;
}
