import type { SupplyCandidatesQuestion } from "../candidates/supply-candidates.js";
import type { EditionYear } from "../edition/edition-year.js";
import type { Installation } from "../installation/document.js";
import type { startable } from "./facts/of-installation.js";

/** What a first document is about. */
export type First = (typeof startable)[number];

/** Small documents that are valid as they stand and hold each part that most installations have, for somebody to edit. */
export function firstDocument(
  holds: First,
  year: EditionYear,
  $schema: string,
): Installation | SupplyCandidatesQuestion {
  switch (holds) {
    case "service":
      return { $schema, format: 1, title: "My service", code: { year }, materials, ...service };
    case "transformer":
      return { $schema, format: 1, title: "My transformer", code: { year }, materials, ...transformer };
    case "load":
      return { code: { year }, ...load };
  }
}

const materials = {
  bondingJumpers: "copper",
  groundedConductors: "aluminum",
  electrodeConductors: "copper",
  equipmentGrounding: "copper",
} as const;

const service: Pick<Installation, "services" | "circuits"> = {
  services: [
    {
      id: "service",
      grounding: "solidly-grounded",
      connection: "single-phase-three-wire",
      utility: { id: "utility pole", outdoorTransformer: true },
      boxes: [{ id: "meter", kind: "meter", bondedBy: "grounded-conductor" }],
      runs: [
        {
          id: "drop",
          from: "utility pole",
          to: "meter",
          supply: { sets: [{ count: 1, size: "4/0 AWG", material: "aluminum" }] },
          raceways: { count: 1, kind: "nonmetallic" },
          lengthFeet: 30,
        },
        {
          id: "entrance",
          from: "meter",
          to: "main panel",
          supply: { sets: [{ count: 1, size: "4/0 AWG", material: "aluminum" }] },
          raceways: { count: 1, kind: "nonflexible-metal" },
          load: { amperes: 90, circuitAmperes: 200 },
          lengthFeet: 8,
        },
      ],
      disconnects: [{ id: "main panel", designation: "service-disconnect", amperes: 200 }],
      housing: "separate-enclosures",
      electrodes: [
        { id: "footing", kind: "concrete-encased", from: "main panel" },
        { id: "water pipe", kind: "metal-water-pipe", from: "main panel" },
      ],
    },
  ],
  circuits: [
    {
      id: "feeder",
      from: "main panel",
      to: "panel B",
      device: { amperes: 60 },
      conductors: { sets: [{ count: 1, size: "4 AWG", material: "aluminum" }] },
      wiring: "raceway",
      lengthFeet: 40,
    },
  ],
};

const transformer: Pick<Installation, "existing" | "derivedSystems" | "circuits"> = {
  existing: [{ id: "switchboard" }],
  derivedSystems: [
    {
      id: "derived system",
      source: { id: "transformer", kind: "transformer", outdoors: false },
      grounding: "solidly-grounded",
      connection: "three-phase-wye",
      runs: [
        {
          id: "secondary",
          from: "transformer",
          to: "panel L",
          supply: { sets: [{ count: 1, size: "1 AWG", material: "copper" }] },
          raceways: { count: 1, kind: "nonflexible-metal" },
          load: { amperes: 80, circuitAmperes: 125 },
          lengthFeet: 10,
        },
      ],
      disconnects: [{ id: "panel L", amperes: 125 }],
      jumperAt: "source",
      electrodes: [{ id: "building steel", kind: "structural-metal", from: "transformer" }],
    },
  ],
  circuits: [
    {
      id: "primary",
      from: "switchboard",
      to: "transformer",
      device: { amperes: 70 },
      conductors: { sets: [{ count: 1, size: "4 AWG", material: "copper" }] },
      wiring: "raceway",
      lengthFeet: 60,
    },
  ],
};

const load: Omit<SupplyCandidatesQuestion, "code"> = {
  system: { kind: "feeder", ungrounded: 3, grounded: { currentCarrying: false } },
  load: { continuous: 0, other: 400 },
  conductor: { insulation: "THWN-2", materials: ["copper", "aluminum"] },
  place: { location: "wet" },
  limits: { mostSets: 2 },
  raceways: ["pvc-schedule-40"],
  bonding: { material: "copper" },
};
