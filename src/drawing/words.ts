import type { Installation } from "../installation/document.js";
import type { DrawnElectrode } from "../installation/electrodes-of.js";
import type { SymbolKind } from "./drawing.js";
import type { Windings } from "./group.js";

type Service = NonNullable<Installation["services"]>[number];
type Box = NonNullable<Service["boxes"]>[number];
type Disconnect = Service["disconnects"][number];

/** Boxes ahead of the disconnects, as labels. */
export const boxNames: Readonly<Record<Box["kind"], string>> = {
  meter: "meter",
  "transformer-cabinet": "CT cabinet",
  gutter: "gutter",
  wireway: "wireway",
  "pull-box": "pull box",
};

/** What disconnects are marked as, as labels. */
export const disconnectNames: Readonly<Record<Disconnect["designation"], string>> = {
  "service-disconnect": "service disconnect",
  "emergency-disconnect": "emergency disconnect, not service equipment",
  "meter-disconnect": "meter disconnect, not service equipment",
  "supply-side-source": "disconnect of a source on the supply side",
};

type TransferSwitch = NonNullable<Installation["transferSwitches"]>[number];

/** What transfer switches do with the grounded conductor, as labels. */
export const transferNames: Readonly<Record<TransferSwitch["groundedConductor"], string>> = {
  switched: "grounded conductor switched",
  "carried-through": "grounded conductor carried through",
  none: "no grounded conductor",
};

/** Electrodes, as labels. */
export const electrodeNames: Readonly<Record<DrawnElectrode["kind"], string>> = {
  rod: "rod",
  pipe: "pipe",
  plate: "plate",
  "concrete-encased": "concrete-encased electrode",
  ring: "ground ring",
  "metal-water-pipe": "metal water pipe",
  "structural-metal": "structural metal",
  other: "other electrode",
};

/** Electrodes, as symbols. */
export const electrodeSymbols: Readonly<Record<DrawnElectrode["kind"], SymbolKind>> = {
  rod: "rod",
  pipe: "rod",
  plate: "plate",
  "concrete-encased": "concrete",
  ring: "ring",
  "metal-water-pipe": "water-pipe",
  "structural-metal": "frame",
  other: "electrode",
};

type Circuit = NonNullable<Installation["circuits"]>[number];

/** How circuits run, as labels. */
export const wiringNames: Readonly<Record<Circuit["wiring"], string>> = {
  raceway: "raceway",
  "parallel-raceways": "parallel raceways",
  "parallel-cables": "parallel cables",
  "tray-single-conductor": "single conductors in a tray",
  "tray-cable": "cable in a tray",
};

/** The bar on which the grounded conductor of a system lands, as a label. */
export const barNames: Readonly<Record<Service["grounding"], string>> = {
  "solidly-grounded": "N bar",
  "grounded-phase": "phase bar",
  impedance: "N bar",
  ungrounded: "N bar",
};

const connectionNames: Readonly<Record<Service["connection"], string>> = {
  "three-phase-wye": "three-phase wye",
  "single-phase-three-wire": "single-phase three-wire",
  "three-phase-delta": "three-phase delta",
  "high-leg-delta": "high-leg delta",
};

const groundingNames: Readonly<Record<Service["grounding"], string>> = {
  "solidly-grounded": "solidly grounded",
  "grounded-phase": "corner-grounded",
  impedance: "grounded through an impedance",
  ungrounded: "ungrounded",
};

const windingKinds: Readonly<Record<Service["connection"], Windings["kind"]>> = {
  "three-phase-wye": "wye",
  "single-phase-three-wire": "single-phase",
  "three-phase-delta": "delta",
  "high-leg-delta": "high-leg-delta",
};

/** The windings of a system. */
export function windingsOf({ connection, grounding }: Pick<Service, "connection" | "grounding">): Windings {
  const isCorner = connection === "three-phase-delta" && grounding === "grounded-phase";
  return {
    kind: isCorner ? "corner-grounded-delta" : windingKinds[connection],
    words: `${connectionNames[connection]}, ${groundingNames[grounding]}`,
    isGrounded: grounding !== "ungrounded",
  };
}
