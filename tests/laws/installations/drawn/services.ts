import { type Dice, several } from "../dice.js";
import { isGrounded, type Run, type Service } from "../parts.js";
import { withBus } from "./buses.js";
import { drawElectrodes, drawUnused } from "./electrodes.js";
import { drawGrounding } from "./groundings.js";
import { drawRun } from "./runs.js";
import { withSharedRaceway } from "./shared-raceways.js";

type Box = NonNullable<Service["boxes"]>[number];
type Disconnect = Service["disconnects"][number];

/** What stands between the utility and the disconnects, with the place from which it is supplied. */
interface Ahead {
  readonly box?: Box;
  readonly disconnect?: Disconnect;
  readonly id: string;
  readonly from: string;
}

/** A service: boxes and disconnects ahead in a chain or a tree, service disconnects, and what hangs on them. */
export function drawService(dice: Dice, n: number): Service {
  const { phases, ...grounded } = drawGrounding(dice);
  const id = `S${n}`;
  const utility = `${id}U`;
  const bond = (): Box["bondedBy"] => {
    if (dice.chance(4)) return "locknuts";
    return isGrounded(grounded) && dice.chance(50) ? "grounded-conductor" : "jumper";
  };
  const ahead = drawAhead(dice, id, utility, bond);
  const starts = [utility, ...ahead.map((one) => one.id)];
  const last = starts.at(-1) ?? utility;
  const disconnects = drawDisconnects(dice, id, bond);
  const supplied = [
    ...ahead.map((one) => ({ from: one.from, to: one.id })),
    ...disconnects.map((one, i) => ({
      from: i === 0 || dice.chance(75) ? last : dice.pick(starts),
      to: one.id,
    })),
  ];
  const hasCommon = dice.chance(25);
  const common = `${id}C`;
  const places = [...ahead, ...disconnects].map((one) => one.id);
  const boxes = ahead.flatMap(({ box }) => box ?? []);
  const hanging = [
    ...places,
    ...disconnects.map((one) => one.id),
    ...(hasCommon ? [common, common, common] : []),
  ];
  const electrodes = drawElectrodes(dice, `${id}E`, hanging);
  const housing = dice.pick(["separate-enclosures", "listed-assembly"] as const);
  const service: Service = {
    id,
    ...grounded,
    utility: { id: utility, outdoorTransformer: dice.chance(40) },
    ...((boxes.length > 0 || dice.chance(20)) && { boxes }),
    ...(dice.chance(10) && {
      boxesWithoutSupply: [
        {
          id: `${id}V`,
          kind: "meter",
          beside: dice.pick(places),
          bondedBy: dice.pick(["equipment-grounding-conductor", "metal-raceway"] as const),
        },
      ],
    }),
    runs: drawRuns(dice, id, supplied, { grounding: grounded.grounding, phases, fittings: true }),
    disconnects: [...ahead.flatMap(({ disconnect }) => disconnect ?? []), ...disconnects],
    housing,
    ...(housing === "listed-assembly" && dice.chance(40) && { assembly: drawAssembly(dice) }),
    ...(hasCommon && { commonElectrodeConductor: { id: common } }),
    ...((electrodes.length > 0 || dice.chance(20)) && { electrodes }),
    ...(dice.chance(8) && { electrodesNotConnected: drawUnused(dice, id) }),
  };
  return withSharedRaceway(dice, withBus(dice, service), true);
}

function drawAssembly(dice: Dice): NonNullable<Service["assembly"]> {
  return {
    compartments: dice.pick(["one-for-each", "shared"] as const),
    ...(dice.chance(40) && { existing: dice.chance(60) }),
  };
}

function drawAhead(dice: Dice, id: string, utility: string, bond: () => Box["bondedBy"]): readonly Ahead[] {
  const made: Ahead[] = [];
  for (const i of several(dice.pick([0, 0, 1, 1, 2, 3]), (at) => at)) {
    const one = `${id}B${i}`;
    const before = made.at(-1)?.id ?? utility;
    const from = dice.chance(80) ? before : dice.pick([utility, ...made.map((other) => other.id)]);
    const amperes = dice.pick([100, 200, 400, 1200]);
    if (dice.chance(30)) {
      const designation = dice.pick(["emergency-disconnect", "meter-disconnect"] as const);
      made.push({ id: one, from, disconnect: { id: one, designation, amperes, bondedBy: bond() } });
    } else {
      const kind = dice.pick(["meter", "transformer-cabinet", "gutter", "wireway", "pull-box"] as const);
      made.push({ id: one, from, box: { id: one, kind, bondedBy: bond() } });
    }
  }
  return made;
}

/** One service disconnect at least; seldom more than six of them, and seldom a source on the supply side. */
function drawDisconnects(dice: Dice, id: string, bond: () => Box["bondedBy"]): Disconnect[] {
  const count = dice.chance(2) ? 7 : dice.pick([1, 1, 1, 2, 2, 3]);
  return several(count, (i) => {
    const designation = i > 0 && dice.chance(20) ? "supply-side-source" : "service-disconnect";
    return {
      id: `${id}D${i}`,
      designation,
      amperes: dice.pick([60, 100, 200, 400, 1200, 4000]),
      ...(designation === "supply-side-source" && dice.chance(50) && { bondedBy: bond() }),
    };
  });
}

/** A run to each place, and now and then a second one in parallel. */
function drawRuns(
  dice: Dice,
  id: string,
  supplied: readonly Pick<Run, "from" | "to">[],
  of: Parameters<typeof drawRun>[2],
): Run[] {
  return supplied.flatMap((one, i) =>
    several(dice.chance(12) ? 2 : 1, (n) => drawRun(dice, { id: `${id}R${i}${"ab"[n]}`, ...one }, of)),
  );
}
