import {
  derivedSupplySideJumper,
  serviceBoxes,
  serviceRacewayFittings,
} from "../../edition/tables/sections.generated.js";
import type { Supply } from "../../supply/index.js";
import { racewayJumper } from "../raceway-jumpers.js";
import type { ScheduledConductor } from "../schedule.js";
import { scheduled } from "../scheduled.js";
import { parallelCautions } from "../violations/parallel.js";
import {
  type Arrangement,
  type ArrangementComparison,
  arrangementOf,
  type Connection,
  compareArrangements,
} from "./arrangement.js";
import { bareInstallation, joinedSupply, wantedIn } from "./model.js";
import type { RacewayJumpersInput } from "./shape.generated.js";

/**
 * The two ways to bond several metal raceways on the supply side: a supply-side bonding jumper in each, by the ungrounded conductors in that
 * raceway, or one jumper in common, by all of them (250.102(C)(2)). One raceway has one way.
 */
export function arrangeRacewayJumpers(input: RacewayJumpersInput): ArrangementComparison {
  const { code, raceways } = input;
  const several = raceways.length > 1;
  const each = raceways.map(({ id, supply }) =>
    jumper(input, id, supply, several ? "raceway" : "single-raceway"),
  );
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
  scope: "raceway" | "single-raceway" | "all",
): ScheduledConductor {
  const { code, system: kind = "service", conductor, raceways } = input;
  const bare = bareInstallation(code, conductor.material, wantedIn(input));
  const result = racewayJumper({ ...bare, kind }, supply, scope);
  const by = scope === "raceway" ? [subject] : raceways.map(({ id }) => id);
  return kind === "service"
    ? scheduled(
        { subject },
        { kind: "grounded-conductor" },
        { kind: "raceway-fitting", of: subject },
        result,
        {
          by,
          insteadPermitted: { by: "bonding-fittings", citation: serviceRacewayFittings[code.year] },
        },
      )
    : scheduled({ subject }, { kind: "source" }, { kind: "first-disconnect" }, result, { by });
}

function arranged(
  input: RacewayJumpersInput,
  id: Arrangement["id"],
  conductors: readonly ScheduledConductor[],
): Arrangement {
  const { code, system = "service", raceways } = input;
  const at = raceways.map((raceway) => raceway.id);
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
    // What the sets of a raceway serve is not asked, as little as of a wireway.
    cautions: parallelCautions(
      raceways.map(({ id: to, supply }) => ({ id: to, to, supply })),
      code.year,
      at.map((raceway) => ({ id: raceway, kind: "wireway" })),
    ),
  });
}
