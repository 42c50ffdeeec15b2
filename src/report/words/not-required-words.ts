import type { NotRequiredReason } from "../../rules/result.js";

/** Why a conductor is not required. */
export const notRequiredWords: Readonly<Record<NotRequiredReason, string>> = {
  "bonding-fittings-serve": "threaded or listed fittings bond the raceway in its place",
  "nonmetallic-raceway": "a nonmetallic raceway has no metal that would have to be bonded",
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
  "ungrounded-system": "an ungrounded system has no conductor that it could bond",
  "impedance-grounded": "the system is grounded through its impedance, whose own jumper takes this place",
  "not-service-equipment":
    "it lies ahead of the service disconnect, whose enclosure has the main bonding jumper",
  "supply-side-source-before-its-rule":
    "this edition has no rule that treats such a source as a service; ask the authority having jurisdiction",
};
