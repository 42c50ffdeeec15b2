import type { Installation } from "./document.js";
import { type Fault, fault, type Keys } from "./fault.js";
import { runsIn } from "./shared-raceways.js";

type Service = NonNullable<Installation["services"]>[number];
type Derived = NonNullable<Installation["derivedSystems"]>[number];
type Run = Service["runs"][number];

/** Raceways of which nothing is said, or that contradict what is said of them. What a run lies in decides whether a jumper is required. */
export function racewayFaults(
  system: Service | Derived,
  at: Keys,
  kind: "service" | "derived",
): readonly Fault[] {
  const { runs, sharedRaceways = [] } = system;
  return [
    ...runs.flatMap((run, i) => [
      ...toldOnce(run, [...at, "runs", i]),
      ...fittingsFaults(run, kind, [...at, "runs", i]),
    ]),
    ...sharedRaceways.flatMap((shared, i) => {
      const keys = [...at, "sharedRaceways", i];
      const { id, kind: material, bondedBy } = shared;
      const isEmpty = runsIn(runs, shared).length === 0;
      const isOdd = bondedBy === "fittings" && (kind === "derived" || material === "nonmetallic");
      return [
        ...(isEmpty
          ? [
              fault(
                "dangling-reference",
                [...keys, "id"],
                `a run with in: "${id}"`,
                id,
                "name it in the runs that lie in it",
              ),
            ]
          : []),
        ...(isOdd ? [onlyOfServices([...keys, "bondedBy"], '"jumper"', bondedBy)] : []),
      ];
    }),
  ];
}

function toldOnce({ raceways, in: shared, racewayJumpers }: Run, at: Keys): readonly Fault[] {
  if (raceways === undefined && shared === undefined) {
    const expected =
      'the raceways of the run, as { "count": 1, "kind": "nonmetallic" }; kind is "nonflexible-metal", "flexible-metal", "nonmetallic" (also for conductors in no raceway) or "unknown"';
    const advice =
      "what it runs in decides whether a bonding jumper is required; where it shares a raceway, give in instead";
    return [fault("missing", [...at, "raceways"], expected, raceways, advice)];
  }
  if (shared === undefined) return [];
  return [
    ...(raceways === undefined
      ? []
      : [
          fault(
            "unknown-key",
            [...at, "raceways"],
            `no raceways beside in: "${shared}"`,
            raceways,
            "remove one of the two",
          ),
        ]),
    ...(racewayJumpers === undefined
      ? []
      : [
          fault(
            "unknown-key",
            [...at, "racewayJumpers"],
            `no jumpers of its own beside in: "${shared}"`,
            racewayJumpers,
            "the raceway that it shares says what bonds it",
          ),
        ]),
  ];
}

/** Fittings bond nothing but the metal raceways of a service (250.92), and how locknuts bond is told of those alone. */
function fittingsFaults(
  { raceways, racewayJumpers: how }: Run,
  kind: "service" | "derived",
  at: Keys,
): readonly Fault[] {
  const isOfMetal = how === "fittings-instead" || how === "locknuts";
  if (!isOfMetal || (kind === "service" && raceways?.kind !== "nonmetallic")) return [];
  return [onlyOfServices([...at, "racewayJumpers"], '"per-raceway" or "common"', how)];
}

function onlyOfServices(keys: Keys, expected: string, given: string): Fault {
  const advice = "only the metal raceways of a service may be bonded by fittings instead";
  return fault("unknown-value", keys, expected, given, advice);
}
