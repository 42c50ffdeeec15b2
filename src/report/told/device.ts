import type {
  CurrentCarrying,
  DeviceAnswer,
  DwellingConductor,
  RequiredByLoad,
} from "../../ampacity/index.js";
import {
  circuitWords,
  deviceCautionWords,
  deviceLimitWords,
  loadOfWords,
  neutralWords,
} from "../words/ampacity-words.js";
import { amperesWords, leastAmperesWords, said } from "./ampacity.js";
import { evidenceFact } from "./facts.js";
import type { Told } from "./told.js";

/** The device that may protect conductors. */
export function tellDevice(result: DeviceAnswer): Told {
  const { edition, ampacity, most, standard, limitedBy, permitted, neighbors, cautions, citation } = result;
  const largest =
    standard === null ? "no standard rating is as small" : `the largest standard rating is ${standard} A`;
  const others = neighbors.map((one) => `${one} A`).join(" and ");
  return {
    name: "Overcurrent device of conductors",
    editions: [edition],
    facts: [evidenceFact(result.evidence)],
    statements: [
      said("ampacity", "ampacity", `The conductors together carry ${amperesWords(ampacity)}`),
      said(
        "device",
        "device",
        `A device may be rated up to ${amperesWords(most)}, by ${deviceLimitWords[limitedBy]}; ${largest}`,
        citation,
      ),
      ...(permitted === null
        ? []
        : [
            said(
              "outcome",
              "outcome",
              `The rating in question is ${permitted ? "permitted" : "not permitted"}`,
              citation,
            ),
          ]),
    ],
    beside: others === "" ? [] : [`Beside it on the list: ${others}.`],
    readings: [],
    cautions: cautions.map((code) => ({ code, words: deviceCautionWords[code] })),
    row: { most, standard },
  };
}

/** The conductors of a dwelling. */
export function tellDwelling(result: DwellingConductor): Told {
  const { edition, size, by, required, amperes, citation, evidence } = result;
  const words =
    by === "list" || required === null
      ? `The list of sizes names ${size}, whatever corrections and adjustments would be`
      : `${size} carries ${amperesWords(amperes)}, at least 83 percent of the rating, ${leastAmperesWords(required)}`;
  return {
    name: "Conductors that carry the whole load of a dwelling",
    editions: [edition],
    facts: [evidenceFact(evidence)],
    statements: [said("outcome", "outcome", words, citation)],
    beside: [],
    readings: [],
    cautions: [],
    row: { size, amperes },
  };
}

/** What a load requires. */
export function tellRequired({
  edition,
  of,
  listedForAll,
  load,
  conductors,
  device,
  evidence,
}: RequiredByLoad): Told {
  const share = listedForAll ? "100 percent of all" : "125 percent of the continuous part and the rest";
  return {
    name: `What the load of a ${loadOfWords[of]} requires`,
    editions: [edition],
    facts: [evidenceFact(evidence)],
    statements: [
      said("load", "load", `The load is ${amperesWords(load)}`),
      said(
        "conductors",
        "conductors",
        `Before correction and adjustment the conductors reach ${leastAmperesWords(conductors.amperes)}, ${share}`,
        conductors.citation,
      ),
      ...(device === null
        ? []
        : [
            said(
              "device",
              "device",
              `The device is rated at least ${leastAmperesWords(device.amperes)}`,
              device.citation,
            ),
          ]),
    ],
    beside: [],
    readings: [],
    cautions: [],
    row: { load },
  };
}

/** How many conductors count as current-carrying. */
export function tellCurrentCarrying({
  edition,
  count,
  circuits,
  spares,
  citation,
  evidence,
}: CurrentCarrying): Told {
  return {
    name: "Current-carrying conductors",
    editions: [edition],
    facts: [evidenceFact(evidence)],
    statements: [
      ...circuits.map(({ kind, count: alike, each, because }) =>
        said(
          "circuit",
          "circuit",
          `${alike} x ${circuitWords[kind]}: ${each} each${because === undefined ? "" : `, for ${neutralWords[because]}`}`,
        ),
      ),
      ...(spares === 0 ? [] : [said("spares", "spares", `Spare conductors: ${spares}`)]),
      said("outcome", "outcome", `${count} conductors count`, citation),
    ],
    beside: [],
    readings: [],
    cautions: [],
    row: { count },
  };
}
