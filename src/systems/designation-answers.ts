import {
  type ByEdition,
  type Citation,
  type Code,
  chosenReading,
  citeAmendment,
  enforcedReading,
} from "../edition/index.js";
import { supplySideSourceElectrodeConductor } from "../edition/tables/placements.generated.js";
import {
  impedanceElectrode,
  mainJumperPlace,
  serviceBoxes,
  serviceElectrodeConnection,
  serviceUngroundedElectrode,
  supplySideConnections,
  supplySideSourceBonding,
} from "../edition/tables/sections.generated.js";
import type { DesignationAnswer, DesignationBonding, DesignationStatus } from "./designation.js";
import { isSourceLikeService, serviceWithoutMainJumper } from "./main-jumper.js";
import type { Grounding } from "./shape.generated.js";

/** Where a disconnect lies: it is the service disconnect, lies ahead of it, or belongs to another source there. */
export type Place = "service" | "ahead" | "source";

/** The question about a designated disconnect. */
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
      status: "required",
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
      status: "not-required",
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
    box: isSourceLikeService(at.code)
      ? boxOf(at, ["main-bonding-jumper"], supplySideSourceBonding)
      : boxOf(at, ["grounded-conductor", "supply-side-bonding-jumper"], supplySideSourceBonding),
    beyond: "conductors-of-the-source",
    ...electrodeConductorOfSource(at),
  }),
};

function asAService({ code }: Asked): DesignationAnswer {
  const citation = supplySideSourceBonding[code.year];
  return isSourceLikeService(code)
    ? { status: "required", note: "as-a-service", citation }
    : { status: "disputed", note: "no-rule-in-this-edition", citation };
}

function withoutMainJumper({ code, grounding }: Asked): DesignationAnswer | null {
  const none = serviceWithoutMainJumper(code, grounding);
  if (none === null) return null;
  const [why, citation] = none;
  const note = why === "impedance-grounded" ? "through-the-impedance" : why;
  return { status: "not-required", note, citation };
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
  status: DesignationStatus,
): DesignationAnswer {
  switch (grounding) {
    case "ungrounded": {
      const citation = serviceUngroundedElectrode[year];
      return { status, note: "to-a-metal-enclosure-on-supply-side", citation };
    }
    case "impedance":
      return { status, note: "through-the-impedance", citation: impedanceElectrode[year] };
    default:
      return { status, note: "anywhere-on-supply-side", citation: serviceElectrodeConnection[year] };
  }
}

function electrodeConductorOfSource(at: Asked): Pick<Answer, "electrodeConductor" | "readings"> {
  const { code, grounding } = at;
  const citation = supplySideSourceBonding[code.year];
  const rule = supplySideSourceElectrodeConductor[code.year];
  if (rule === "no-rule") {
    return {
      electrodeConductor: { status: "disputed", note: "no-rule-in-this-edition", citation },
      readings: [],
    };
  }
  // The letters for ungrounded systems were moved along.
  if (rule === "named" || grounding === "ungrounded") {
    return { electrodeConductor: { status: "required", note: "section-names-it", citation }, readings: [] };
  }
  const id = "electrode-conductor-of-supply-side-source";
  const chosen = chosenReading(code, id);
  const by = enforcedReading(code, id);
  const status = chosen === "required" ? "required" : "permitted";
  return {
    electrodeConductor: { status, note: "letters-left-behind", citation },
    readings: [{ id, chosen, ...(by && { enforcedBy: citeAmendment(by) }) }],
  };
}
