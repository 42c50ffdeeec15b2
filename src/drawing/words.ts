import type { Installation } from "../installation/document.js";
import type { DrawnElectrode } from "../installation/electrodes-of.js";

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
