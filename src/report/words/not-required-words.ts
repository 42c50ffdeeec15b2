import type { NotRequiredReason } from "../../rules/result.js";

/** Why a conductor is not required. */
export const notRequiredWords: Readonly<Record<NotRequiredReason, string>> = {
  "bonding-fittings-serve": "threaded or listed fittings bond the raceway in its place",
  "nonmetallic-raceway": "a nonmetallic raceway has no metal that could be bonded",
  "bonded-with-its-wiring":
    "no supply conductors run through it; the equipment grounding conductor that runs with its wiring bonds it",
  "bonded-by-its-raceway": "no supply conductors run through it; the metal raceway to it bonds it",
  "metal-raceway-serves": "a nonflexible metal raceway serves in its place",
  "grounded-conductor-serves": "the grounded conductor bonds this part",
  "jumpers-at-both-ends": "system bonding jumpers at both ends take its place",
  "jumper-at-source": "the jumper is at the source, so the table sets no minimum size; its load decides",
  "nonferrous-raceway": "only ferrous raceways around an electrode conductor are bonded at both ends",
  "termination-on-enclosure": "the termination is mounted on and connected to the enclosure or raceway",
  "communications-unlikely": "communications systems are unlikely here",
  "control-transformer": "a small control transformer needs none where its enclosure is bonded",
  "building-on-one-branch-circuit":
    "a building on a single branch circuit with an equipment grounding conductor needs no electrode",
  "part-is-the-electrode": "the part is itself the electrode of the system",
  "part-serves-as-electrode-conductor": "the part itself serves as the common grounding electrode conductor",
  "bonded-by-another-part": "another part of the electrode system bonds it",
  "ungrounded-system": "an ungrounded system has no conductor that it could bond",
  "impedance-grounded": "the system is grounded through its impedance, whose own jumper takes this place",
  "not-service-equipment":
    "it lies ahead of the service disconnect, whose enclosure has the main bonding jumper",
  "supply-side-source-before-its-rule":
    "this edition has no rule that treats such a source as a service; ask the authority having jurisdiction",
  "jumper-of-other-system-serves":
    "the source is not separately derived: its grounded conductor is bonded by the jumper of the system that it is tied to",
  "electrode-conductor-of-other-system-serves":
    "the source is not separately derived: the electrode conductor of the system that it is tied to serves",
  "no-conductors-ahead-of-the-device":
    "no conductors run ahead of the overcurrent device in the source; an equipment grounding conductor runs with those behind it",
  "source-and-disconnect-in-one-enclosure":
    "the first disconnect is in the enclosure of the source; an equipment grounding conductor runs with the conductors behind it",
  "grounded-conductor-is-fault-path":
    "the grounded conductor of this existing building stays the fault path, which is permitted only where no equipment grounding conductor runs with it",
  "grounded-conductor-kept-apart":
    "at a building on a feeder the grounded conductor is kept apart from the enclosure, the equipment grounding conductors and the electrodes",
  "supply-side-jumper-instead":
    "no overcurrent device stands where the conductors start; the supply-side bonding jumper to the disconnect takes its place",
  "flexible-conduit-serves":
    "the flexible conduit is within the limits in which it serves itself, with listed fittings and all of it in the path counted",
  "no-grounded-conductor":
    "the system has no grounded conductor that runs from its source to its disconnects",
};
