import type { ConductorEnd, Landing } from "../installation/conductor-identity.js";
import type { Marked } from "./group.js";

/** Where a line meets a place: its grounded conductor, its grounding bar or its metal. Ungrounded conductors have no other choice. */
export type Port = "grounded" | "grounding" | "metal";

const ports: Readonly<Record<Landing, Port>> = {
  "neutral-bar": "grounded",
  "grounded-phase-bar": "grounded",
  "neutral-bus": "grounded",
  "grounded-phase-bus": "grounded",
  "neutral-terminal": "grounded",
  "grounded-phase-terminal": "grounded",
  "grounded-conductor": "grounded",
  "grounding-bar": "grounding",
  "grounding-bus": "grounding",
  enclosure: "metal",
};

/** Where a conductor meets the place at one of its ends; without a landing, what its role lets one expect. */
export function portOf({ conductor }: Marked, end: ConductorEnd): Port {
  if (end.kind === "neutral-point" || end.kind === "grounded-conductor") return "grounded";
  if ((end.kind === "place" || end.kind === "assembly") && end.on !== undefined) return ports[end.on];
  switch (conductor.role) {
    case "grounded-conductor":
    case "impedance-grounding-conductor":
      return "grounded";
    case "equipment-grounding-conductor":
      return "grounding";
    default:
      return "metal";
  }
}

/** Whether what is landed on is a part of the grounded conductor. */
export function landsOnGrounded(end: ConductorEnd): boolean {
  return end.kind === "place" && end.on !== undefined && ports[end.on] === "grounded";
}

/** Whether a conductor lands on a bar, and is no conductor that passes through. */
export function isAtBar(end: ConductorEnd): boolean {
  return (
    (end.kind === "place" || end.kind === "assembly") &&
    end.on !== undefined &&
    end.on !== "grounded-conductor" &&
    end.on !== "enclosure"
  );
}

/** The column in which a conductor runs from one place to another. */
export function columnOf({ conductor }: Marked): "grounded" | "grounding" {
  const { role } = conductor;
  return role === "grounded-conductor" || role === "impedance-grounding-conductor" ? "grounded" : "grounding";
}

/** Whether a conductor is a short jumper at the fitting of a raceway. */
export function isAtFitting({ conductor }: Marked): boolean {
  return conductor.from.kind === "raceway-fitting";
}
