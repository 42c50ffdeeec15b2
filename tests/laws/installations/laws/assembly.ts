import { groundingElectrodeConductor, type ScheduledConductor, type Supply, size } from "bondmil";
import { type Built, idAt, nameOf } from "../built.js";
import { suppliesOf, together } from "../conductors.js";
import { isGrounded, type Service } from "../parts.js";
import type { Law } from "./law.js";

/**
 * The electrode conductor of a listed assembly, before the limits of particular electrodes, is never below the row of the electrode
 * table for what the assembly's main bonding jumper goes by (Table 250.66 note 1 adds the sets).
 */
export const assemblyElectrodes: Law = {
  name: "an assembly's electrode conductor is not below the row for what its main jumper goes by",
  breaches: (built) => (built.installation.services ?? []).flatMap((service) => breachesOf(built, service)),
};

function breachesOf(built: Built, service: Service): readonly string[] {
  const own = disconnectsOf(service).map(({ id }) => id);
  if (service.housing !== "listed-assembly" || own.length < 2 || !isGrounded(service)) return [];
  const { conductors } = built.schedule;
  const main = conductors.find(
    ({ role, subject }) => role === "main-bonding-jumper" && subject === service.id,
  );
  const wanted = main === undefined ? undefined : supplyIn(built, main);
  if (wanted === undefined) return [];
  const electrodes = new Set(service.electrodes?.map(({ id }) => id));
  return conductors
    .filter(
      ({ role, subject, from }) =>
        role === "grounding-electrode-conductor" && electrodes.has(subject) && own.includes(idAt(from) ?? ""),
    )
    .flatMap((one) => {
      const supply = supplyIn(built, one);
      if (supply === undefined) return [];
      const [row, least] = [supply, wanted].map((by) => unlimited(built, by));
      return (row ?? 0) >= (least ?? 0)
        ? []
        : [`${nameOf(one)} has a row of ${row}, its assembly of ${least}`];
    });
}

function disconnectsOf({ disconnects }: Service): Service["disconnects"] {
  return disconnects.filter(({ designation }) => designation === "service-disconnect");
}

/** Circular mils of an electrode conductor without the limit of a particular electrode. */
function unlimited({ installation, schedule: { code } }: Built, supply: Supply): number {
  return size(groundingElectrodeConductor, {
    code,
    system: "service",
    supply,
    conductor: { material: installation.materials.electrodeConductors },
    electrodes: [{ kind: "other" }],
  }).requiredArea;
}

function supplyIn({ installation }: Built, one: ScheduledConductor): Supply | undefined {
  const supplies = suppliesOf(installation);
  const by = one.by.flatMap((id) => supplies.get(id) ?? []);
  if (by.length > 0) return together(by);
  return one.result.steps.flatMap((step) => (step.kind === "sum" ? [step.supply] : []))[0];
}
