import type { Citation } from "../edition/index.js";
import { commonConductorOfDerivedSystems } from "../edition/tables/named-sizes.generated.js";
import {
  buildingElectrodes,
  derivedElectrodeConnection,
  electrodeBonding,
  impedanceElectrode,
  outdoorSource,
  serviceElectrodeCommon,
  serviceElectrodeConnection,
  serviceElectrodeIndividual,
  serviceElectrodeOnePlace,
  serviceUngroundedElectrode,
  ungroundedDerivedElectrode,
} from "../edition/tables/sections.generated.js";
import { type DerivedInCode, isBoundOutdoors } from "./derived-system.js";
import type { Installation } from "./document.js";
import type { ScheduledConductor } from "./schedule.js";
import { enclosuresOf, type ServiceInCode } from "./service.js";

/**
 * The section that says where an electrode conductor, its tap or a jumper between electrodes is connected; `null` for any other conductor, where
 * none is required, and where it is the section that sizes the conductor.
 */
export function placementOf(installation: Installation, one: ScheduledConductor): Citation | null {
  const citation = one.quantity === 0 ? null : connectedBy(installation, one);
  return citation?.section === one.result.citation.section ? null : citation;
}

function connectedBy(installation: Installation, one: ScheduledConductor): Citation | null {
  const { code } = installation;
  const { year } = code;
  if (one.role === "electrode-bonding-jumper") return electrodeBonding[year];
  if (one.role !== "grounding-electrode-conductor") return null;
  const service = installation.services?.find(({ id }) => id === one.system);
  if (service !== undefined) return ofService({ installation, code, service }, one);
  const system = installation.derivedSystems?.find(({ id }) => id === one.system);
  if (one.part !== "tap" && system !== undefined && one.from.kind === "place") {
    const isCommon = one.from.id === system.commonElectrodeConductor?.id;
    return isCommon
      ? commonConductorOfDerivedSystems[year].citation
      : ofDerived({ installation, code, system });
  }
  if (one.part === "tap" || isCommonStart(installation, one))
    return commonConductorOfDerivedSystems[year].citation;
  return buildingElectrodes[year];
}

function ofService(at: ServiceInCode, { part, from }: ScheduledConductor): Citation {
  const { service, code } = at;
  const { year } = code;
  if (service.grounding === "impedance") return impedanceElectrode[year];
  const start = from.kind === "place" ? from.id : "";
  if (part === "tap" || start === service.commonElectrodeConductor?.id) return serviceElectrodeCommon[year];
  if (service.grounding === "ungrounded") return serviceUngroundedElectrode[year];
  const enclosures = enclosuresOf(at);
  if (enclosures.length < 2) return serviceElectrodeConnection[year];
  const isEnclosure = enclosures.some(({ disconnects }) => disconnects.includes(start));
  return (isEnclosure ? serviceElectrodeIndividual : serviceElectrodeOnePlace)[year];
}

function ofDerived(at: DerivedInCode): Citation {
  const { year } = at.code;
  if (at.system.grounding === "impedance") return impedanceElectrode[year];
  if (isBoundOutdoors(at)) return outdoorSource[year];
  return (at.system.grounding === "ungrounded" ? ungroundedDerivedElectrode : derivedElectrodeConnection)[
    year
  ];
}

function isCommonStart({ derivedSystems = [] }: Installation, { from }: ScheduledConductor): boolean {
  return (
    from.kind === "place" &&
    derivedSystems.some(({ commonElectrodeConductor: common }) => common?.id === from.id)
  );
}
