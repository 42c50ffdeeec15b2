import type { Arrangement, Connection, ConnectionNote } from "../../installation/arrangements/arrangement.js";
import { jumperAtSource, jumperInEachEnclosure } from "../../installation/conductor-words.js";
import { capital } from "./names.js";

/** How each arrangement is called. */
export const arrangementNames: Readonly<Record<Arrangement["id"], string>> = {
  "jumper-in-each-enclosure": /* @__PURE__ */ capital(jumperInEachEnclosure),
  "one-jumper-in-listed-assembly": "One jumper in a listed assembly",
  "jumper-at-source": /* @__PURE__ */ capital(jumperAtSource),
  "jumpers-at-source-and-disconnect": "Jumpers at the source and at the disconnect",
  "common-electrode-conductor": "A common electrode conductor with taps",
  "individual-electrode-conductors": "An electrode conductor from each",
  "electrode-conductor-at-one-place": "One electrode conductor on the supply side",
  "jumper-in-each-raceway": "A jumper in each raceway",
  "one-common-raceway-jumper": "One jumper for all raceways",
};

/** What there is to say about the verdict beside its section. */
export const arrangementStatusWords: Readonly<Record<Arrangement["status"], string>> = {
  permitted: "",
  "permitted-without-parallel-path": ", only if no parallel path for the grounded conductor arises",
  "not-permitted": "not permitted",
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
  "tap-into-each-enclosure":
    "a tap runs into every enclosure and joins the common conductor, which stays without a splice",
  "from-each-enclosure": "connected in every enclosure, each with a conductor of its own to the electrodes",
  "at-one-place-ahead":
    "connected in a wireway or other accessible enclosure on the supply side of the disconnects",
  "frame-may-serve-as-common": "the metal frame of the building may serve as the common conductor",
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
