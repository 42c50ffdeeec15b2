import type { Material } from "../../conductor/index.js";
import type { Code } from "../../edition/index.js";
import type { Installation } from "../document.js";
import type { InstallationInCode, WantedJumper } from "../schedule.js";
import type { DrawnService, ServiceInCode } from "../service.js";
import { joined } from "../supplies.js";
import type { MainJumpersInput, SuppliedPlace } from "./shape.generated.js";

/** An installation of one material without parts, to ask the questions of the schedule about a part that is not drawn in a document. */
export function bareInstallation(code: Code, material: Material, wanted?: WantedJumper): InstallationInCode {
  const installation: Installation = {
    format: 1,
    title: "",
    code: { year: code.year },
    materials: {
      bondingJumpers: material,
      groundedConductors: material,
      electrodeConductors: material,
      equipmentGrounding: material,
    },
  };
  return { installation, code, ...(wanted && { wanted }) };
}

/** The conductor that the bonding jumpers of a question are sized as. */
export function wantedIn({
  conductor,
  temperature,
}: Pick<MainJumpersInput, "conductor" | "temperature">): WantedJumper {
  return { conductor, ...(temperature && { temperature }) };
}

/** Enclosures of a service, perhaps with a box ahead of them. */
export interface Enclosures {
  readonly enclosures: readonly SuppliedPlace[];
  readonly box?: SuppliedPlace | undefined;
  /** Whether the conductors to the enclosures come from the box; from the drop or lateral otherwise. */
  readonly isFromBox: boolean;
  /** Name of a common electrode conductor. */
  readonly common?: string;
}

/** The service that enclosures make, as an installation would have it; each run is called like the place where it ends. */
export function serviceOf(
  bare: InstallationInCode,
  { enclosures, box, isFromBox, common }: Enclosures,
  housing: DrawnService["housing"] = "separate-enclosures",
): ServiceInCode {
  const taken = [...enclosures, ...(box === undefined ? [] : [box])].map(({ id }) => id);
  const utility = freeName("utility", taken);
  const start = isFromBox && box !== undefined ? box.id : utility;
  const raceways = { count: 1, kind: "nonmetallic" } as const;
  const service: DrawnService = {
    id: freeName("service", taken),
    grounding: "solidly-grounded",
    connection: "three-phase-wye",
    utility: { id: utility, outdoorTransformer: false },
    boxes: box === undefined ? [] : [{ id: box.id, kind: "wireway", bondedBy: "jumper" }],
    runs: [
      ...(box === undefined ? [] : [{ id: box.id, from: utility, to: box.id, supply: box.supply, raceways }]),
      ...enclosures.map(({ id, supply }) => ({ id, from: start, to: id, supply, raceways })),
    ],
    disconnects: enclosures.map(({ id }) => ({ id, designation: "service-disconnect", amperes: 1 })),
    housing,
    ...(common !== undefined && { commonElectrodeConductor: { id: freeName(common, taken) } }),
  };
  return { ...bare, service };
}

/** All sets of several places as one supply. */
export function joinedSupply(places: readonly SuppliedPlace[]): SuppliedPlace["supply"] {
  return joined(places.map(({ supply }) => supply));
}

/** A name that no place has. */
export function freeName(name: string, taken: readonly string[]): string {
  return taken.includes(name) ? freeName(`other ${name}`, taken) : name;
}
