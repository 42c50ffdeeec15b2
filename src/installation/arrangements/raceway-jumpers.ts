import type { TemperatureColumn } from "../../ampacity/index.js";
import { type Code, readCode } from "../../edition/index.js";
import { derivedSupplySideJumper, serviceBoxes } from "../../edition/tables/sections.generated.js";
import { member, optional, type Reader, readList, readObject } from "../../input/reader.js";
import { readWantedConductor, type WantedConductor } from "../../rules/by-supply-input.js";
import { readSystemKind, type SystemKind } from "../../rules/system-kind.js";
import { readColumn } from "../../supply/for-load.js";
import type { Supply } from "../../supply/index.js";
import { areOneSupply } from "../../supply/read.js";
import type { ScheduledConductor } from "../schedule.js";
import { parallelCautions, racewayCautions, racewayJumper } from "../schedule-runs.js";
import { scheduled } from "../scheduled.js";
import {
  type Arrangement,
  type ArrangementComparison,
  arrangementOf,
  type Connection,
  compareArrangements,
} from "./arrangement.js";
import { readSuppliedPlace, refuseDuplicates, type SuppliedPlace, wantedIn, withKeys } from "./enclosure.js";
import { bareInstallation, joinedSupply } from "./model.js";

/** Metal raceways that end together, each with the ungrounded conductors in it. */
export interface RacewayJumpersInput {
  /** The code that it is held under: an edition, its amendments and readings. */
  readonly code: Code;
  /** A service by default. */
  readonly system?: SystemKind;
  /** The raceways, each with the ungrounded conductors in it. */
  readonly raceways: readonly SuppliedPlace[];
  /** The conductor. */
  readonly conductor: WantedConductor;
  /** Temperature column, in degrees Celsius. */
  readonly temperature?: TemperatureColumn;
}

/**
 * The two ways to bond several metal raceways on the supply side: a supply-side bonding jumper in each, by the ungrounded conductors in that
 * raceway, or one jumper in common, by all of them (250.102(C)(2)). One raceway has one way.
 */
export function arrangeRacewayJumpers(input: RacewayJumpersInput): ArrangementComparison {
  const { code, raceways } = input;
  const several = raceways.length > 1;
  const each = raceways.map(({ id, supply }) => jumper(input, id, supply, several ? "raceway" : "all"));
  const arrangements = [arranged(input, "jumper-in-each-raceway", each)];
  if (several) {
    const all = jumper(input, "all raceways", joinedSupply(raceways), "all");
    arrangements.push(arranged(input, "one-common-raceway-jumper", [all]));
  }
  return compareArrangements(code.year, arrangements);
}

function jumper(
  input: RacewayJumpersInput,
  subject: string,
  supply: Supply,
  scope: "raceway" | "all",
): ScheduledConductor {
  const { code, system: kind = "service", conductor, raceways } = input;
  const bare = bareInstallation(code, conductor.material, wantedIn(input));
  const result = racewayJumper({ ...bare, kind }, supply, scope);
  const by = scope === "raceway" ? [subject] : raceways.map(({ id }) => id);
  return kind === "service"
    ? scheduled({ subject }, { kind: "grounded-conductor" }, subject, result, { by })
    : scheduled({ subject }, { kind: "source" }, { kind: "first-disconnect" }, result, { by });
}

function arranged(
  input: RacewayJumpersInput,
  id: Arrangement["id"],
  conductors: readonly ScheduledConductor[],
): Arrangement {
  const { code, system = "service", raceways } = input;
  const at = raceways.map((raceway) => raceway.id);
  const runs = raceways.map(({ id: name, supply }) => ({
    id: name,
    from: name,
    to: name,
    supply,
    raceways: { count: 1, kind: "nonflexible-metal" as const },
  }));
  const boxes = serviceBoxes[code.year];
  const connection: Pick<Connection, "note" | "citation"> =
    system === "service"
      ? { note: "by-jumper-or-grounded-conductor", citation: boxes }
      : { note: "from-source-to-each-enclosure", citation: derivedSupplySideJumper[code.year] };
  return arrangementOf({
    id,
    status: "permitted",
    citation: conductors[0]?.result.citation ?? boxes,
    conductors,
    connections: [{ kind: "supply-side-bonding-jumper", status: "required", at, ...connection }],
    violations: [],
    cautions: [
      ...(system === "service" ? racewayCautions(runs, { code }) : []),
      ...parallelCautions(runs, { code }),
    ],
  });
}

/** Checks the question about the jumpers of raceways. */
export function readRacewayJumpers(at: Reader): RacewayJumpersInput | undefined {
  if (!readObject(at, ["code", "system", "raceways", "conductor", "temperature"])) return undefined;
  const code = readCode(member(at, "code"));
  const system = optional(member(at, "system"), readSystemKind);
  const raceways = readList(member(at, "raceways"), readSuppliedPlace);
  const conductor = readWantedConductor(member(at, "conductor"));
  const temperature = optional(member(at, "temperature"), readColumn);
  if (raceways === undefined || code === undefined || conductor === undefined) return undefined;
  refuseDuplicates(at, withKeys("raceways", raceways));
  const sets = raceways.flatMap(({ supply }) => supply.sets);
  if (!areOneSupply(member(at, "raceways"), sets)) return undefined;
  return { code, raceways, conductor, ...(system && { system }), ...(temperature && { temperature }) };
}
