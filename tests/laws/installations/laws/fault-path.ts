import type { ViolationCode } from "bondmil";
import type { Built } from "../built.js";
import { ownersOf, racewaysOf, type System } from "../parts.js";
import { connectionsOf, earth, metal, neutral } from "./connections.js";
import type { Law } from "./law.js";

/** From every enclosure and metal part of a grounded system a fault has a way back to its source. */
export const wayBack: Law = {
  name: "every metal part of a grounded system has a way back to its source",
  breaches: (built) =>
    inEachAlternative(built, (system, graph) => {
      if (system.grounding === "ungrounded") return [];
      const source = neutral("utility" in system ? system.utility.id : system.source.id);
      const reached = graph.from(source);
      return metalOf(built, system)
        .filter((part) => !reached.has(metal(part)))
        .map((part) => `${part} has no way back to ${source}`);
    }),
};

/** All metal of an ungrounded system is connected, and connected to its electrode conductor. */
export const bondedToEarth: Law = {
  name: "all metal of an ungrounded system is bonded together and to its electrode conductor",
  breaches: (built) =>
    inEachAlternative(built, (system, graph) => {
      if (system.grounding !== "ungrounded" || isExcused(built, system)) return [];
      const common = system.commonElectrodeConductor;
      const reached = new Set([
        ...graph.from(earth(system.id)),
        ...(common ? graph.from(earth(common.id)) : []),
      ]);
      return metalOf(built, system)
        .filter((part) => !reached.has(metal(part)))
        .map((part) => `${part} is not bonded to the electrodes of ${system.id}`);
    }),
};

const alternatives = ["jumper-at-source", "jumper-in-each-enclosure"] as const;

function inEachAlternative(
  built: Built,
  breaches: (system: System, graph: ReturnType<typeof connectionsOf>) => readonly string[],
): readonly string[] {
  const { services = [], derivedSystems = [] } = built.installation;
  return alternatives.flatMap((alternative) => {
    const graph = connectionsOf(built, alternative);
    return [...services, ...derivedSystems].flatMap((system) => breaches(system, graph));
  });
}

/** Enclosures, metal raceways, piping and frames of a system, without those of which a violation speaks, and raceways to them. */
function metalOf({ installation, schedule }: Built, system: System): readonly string[] {
  const said = new Set(
    schedule.violations.filter(({ code }) => ofPlaces.includes(code)).flatMap(({ at }) => at),
  );
  const raceways = system.runs.filter(
    (run) => "utility" in system && racewaysOf(run).kind !== "nonmetallic" && !said.has(run.to),
  );
  const parts = [...(installation.piping ?? []), ...(installation.structuralMetal ?? [])];
  return [
    ...("utility" in system ? (system.boxes ?? []) : [system.source]),
    ...system.disconnects,
    ...raceways,
    ...parts.filter((one) => "of" in one && ownersOf(one).includes(system.id)),
  ]
    .map(({ id }) => id)
    .filter((id) => !said.has(id));
}

/** Violations by which a conductor is missing, or not where it should be. */
const ofPlaces: readonly ViolationCode[] = [
  "jumper-not-permitted-here",
  "electrode-conductor-not-at-jumper",
  "electrode-conductor-missing",
];

/** Whether a system needs no electrode conductor. */
function isExcused({ schedule }: Built, { id }: System): boolean {
  return schedule.conductors.some(
    (one) => one.id === `grounding-electrode-conductor ${id}` && one.quantity === 0,
  );
}
