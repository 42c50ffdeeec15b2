import {
  type ByEdition,
  type Citation,
  type Code,
  chosenReading,
  citeAmendment,
  enforcedReading,
} from "../edition/index.js";
import {
  supplySideSourceElectrodeConductor,
  supplySideSourceIsServiceLike,
} from "../edition/tables/placements.generated.js";
import {
  impedanceElectrode,
  mainJumperImpedance,
  mainJumperPlace,
  serviceBoxes,
  serviceElectrodeConnection,
  serviceUngroundedElectrode,
  supplySideConnections,
  supplySideSourceBonding,
} from "../edition/tables/sections.generated.js";
import type { DesignationAnswer, DesignationBonding, DesignationStanding } from "./designation.js";
import type { Grounding } from "./system-roles.js";

/** Where a disconnect lies: it is the service disconnect, lies ahead of it, or belongs to another source there. */
export type Place = "service" | "ahead" | "source";

/** What is asked of a designated disconnect. */
export interface Asked {
  readonly code: Code;
  readonly grounding: Grounding;
  readonly namedInEdition: boolean;
  readonly designatedBy: Citation;
}

/** What a place answers. */
export type Answer = Pick<
  DesignationBonding,
  "mainBondingJumper" | "box" | "electrodeConductor" | "beyond" | "readings"
>;

/** How a place is bonded and grounded. */
export const answers: Readonly<Record<Place, (at: Asked) => Answer>> = {
  service: (at) => ({
    mainBondingJumper: withoutMainJumper(at) ?? {
      standing: "required",
      note: at.namedInEdition ? "within-its-enclosure" : "not-named-in-this-edition",
      citation: mainJumperPlace[at.code.year],
    },
    box: boxOf(at, ["main-bonding-jumper"], mainJumperPlace),
    electrodeConductor: electrodeConductor(at, "required"),
    beyond: "feeder",
    readings: [],
  }),
  ahead: (at) => ({
    mainBondingJumper: withoutMainJumper(at) ?? {
      standing: "not-required",
      note: "jumper-is-in-the-service-disconnect",
      citation: at.designatedBy,
    },
    box: boxOf(at, ["grounded-conductor", "supply-side-bonding-jumper"], supplySideConnections),
    electrodeConductor: electrodeConductor(at, "permitted"),
    beyond: "service-conductors",
    readings: [],
  }),
  source: (at) => ({
    mainBondingJumper: withoutMainJumper(at) ?? asAService(at),
    box: supplySideSourceIsServiceLike[at.code.year]
      ? boxOf(at, ["main-bonding-jumper"], supplySideSourceBonding)
      : boxOf(at, ["grounded-conductor", "supply-side-bonding-jumper"], supplySideSourceBonding),
    beyond: "conductors-of-the-source",
    ...electrodeConductorOfSource(at),
  }),
};

function asAService({ code: { year } }: Asked): DesignationAnswer {
  const citation = supplySideSourceBonding[year];
  return supplySideSourceIsServiceLike[year]
    ? { standing: "required", note: "as-a-service", citation }
    : { standing: "disputed", note: "no-rule-in-this-edition", citation };
}

function withoutMainJumper({ code: { year }, grounding }: Asked): DesignationAnswer | null {
  if (grounding === "ungrounded") {
    const citation = serviceUngroundedElectrode[year];
    return { standing: "not-required", note: "ungrounded-system", citation };
  }
  if (grounding !== "impedance") return null;
  return { standing: "not-required", note: "through-the-impedance", citation: mainJumperImpedance[year] };
}

/** Without a solidly grounded conductor only a supply-side bonding jumper is left. */
function boxOf(
  { code: { year }, grounding }: Asked,
  bondedBy: DesignationBonding["box"]["bondedBy"],
  topic: ByEdition<Citation>,
): DesignationBonding["box"] {
  return grounding === "ungrounded" || grounding === "impedance"
    ? { bondedBy: ["supply-side-bonding-jumper"], citation: serviceBoxes[year] }
    : { bondedBy, citation: topic[year] };
}

function electrodeConductor(
  { code: { year }, grounding }: Asked,
  standing: DesignationStanding,
): DesignationAnswer {
  switch (grounding) {
    case "ungrounded": {
      const citation = serviceUngroundedElectrode[year];
      return { standing, note: "to-a-metal-enclosure-on-supply-side", citation };
    }
    case "impedance":
      return { standing, note: "through-the-impedance", citation: impedanceElectrode[year] };
    default:
      return { standing, note: "anywhere-on-supply-side", citation: serviceElectrodeConnection[year] };
  }
}

function electrodeConductorOfSource(at: Asked): Pick<Answer, "electrodeConductor" | "readings"> {
  const { code, grounding } = at;
  const citation = supplySideSourceBonding[code.year];
  const rule = supplySideSourceElectrodeConductor[code.year];
  if (rule === "no-rule") {
    return {
      electrodeConductor: { standing: "disputed", note: "no-rule-in-this-edition", citation },
      readings: [],
    };
  }
  // The letters for ungrounded systems were moved along.
  if (rule === "named" || grounding === "ungrounded") {
    return { electrodeConductor: { standing: "required", note: "section-names-it", citation }, readings: [] };
  }
  const id = "electrode-conductor-of-supply-side-source";
  const chosen = chosenReading(code, id);
  const by = enforcedReading(code, id);
  const standing = chosen === "required" ? "required" : "permitted";
  return {
    electrodeConductor: { standing, note: "letters-left-behind", citation },
    readings: [{ id, chosen, ...(by && { enforcedBy: citeAmendment(by) }) }],
  };
}
