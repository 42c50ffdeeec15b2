import {
  groundingElectrodeConductorFacts,
  supplySideBondingJumperFacts,
  systemBondingJumperFacts,
} from "../edition/tables/roles.generated.js";
import { generatorJumpers, neutralLoad, serviceLoadSide } from "../edition/tables/sections.generated.js";
import { equipmentBondingJumper } from "../roles/equipment-bonding-jumper/index.js";
import { equipmentGroundingConductor } from "../roles/equipment-grounding-conductor/index.js";
import { groundedConductor } from "../roles/grounded-conductor/index.js";
import { supplySideBondingJumper } from "../roles/supply-side-bonding-jumper/index.js";
import { notRequired } from "../rules/finish.js";
import type { NotRequiredReason } from "../rules/result.js";
import { type Follows, rolesThatFollow } from "../systems/system-roles.js";
import type { Installation } from "./document.js";
import { landing } from "./landing.js";
import { inMaterialsOf } from "./materials-of.js";
import type { InstallationInCode, ScheduledConductor, ScheduledPart } from "./schedule.js";
import { shareOfLoad } from "./schedule-runs.js";
import { scheduled } from "./scheduled.js";
import { shareOf, supplyOf } from "./supplies.js";
import { parallelViolations } from "./violations/parallel.js";

type DrawnGenerator = NonNullable<Installation["generators"]>[number];

/** What generators that are not separately derived require, and what the systems that they are tied to spare them (250.35(B)). */
export function generatorPart(at: InstallationInCode): ScheduledPart {
  const { code } = at;
  const generators = at.installation.generators ?? [];
  const ahead = generators.filter(({ deviceAmperes }) => deviceAmperes === undefined);
  return {
    conductors: generators.flatMap((one) => conductorsOf(inMaterialsOf(at, one), one)),
    violations: [
      ...generators.flatMap(({ id, factoryJumper }) =>
        factoryJumper === "in-place"
          ? [
              {
                code: "factory-jumper-to-be-removed",
                ...serviceLoadSide[code.year],
                at: [id],
                remedies: [{ code: "remove-connection" }],
              } as const,
            ]
          : [],
      ),
      ...parallelViolations(
        generators.map(({ id, supply }) => ({ id, supply })),
        code.year,
      ),
    ],
    cautions: [
      ...ahead.flatMap((one) => {
        const follows = followsOf(at, one)["equipment-bonding-jumper"];
        return follows.status === "required"
          ? [
              {
                code: "load-side-jumper-behind-device",
                section: follows.citation.section,
                at: one.id,
              } as const,
            ]
          : [];
      }),
    ],
    notSized: generators.flatMap(({ id, groundedConductor: drawn, deviceAmperes }) =>
      drawn === undefined || drawn.load !== undefined || deviceAmperes !== undefined
        ? []
        : [{ what: `grounded conductor of ${id}`, see: neutralLoad[code.year].section }],
    ),
  };
}

/** What the kind of system of such a generator requires of every role. */
function followsOf({ code }: InstallationInCode, { deviceAmperes }: DrawnGenerator): Follows {
  return rolesThatFollow({
    code,
    kind: "not-separately-derived",
    source: {
      kind: "generator",
      overcurrentDevice: deviceAmperes === undefined ? "not-integral" : "integral",
    },
    grounding: "solidly-grounded",
  });
}

function conductorsOf(at: InstallationInCode, generator: DrawnGenerator): readonly ScheduledConductor[] {
  const { installation, code } = at;
  const { id, to, supply: drawn, deviceAmperes } = generator;
  const follows = followsOf(at, generator);
  const supply = supplyOf(drawn, code.year);
  const { materials } = installation;
  const jumper = { material: materials.bondingJumpers };
  const none = (
    facts: Parameters<typeof notRequired>[0],
    why: NotRequiredReason,
    material = materials.bondingJumpers,
  ) => notRequired(facts, code, material, why, follows[facts.role].citation);
  const noJumper = none(systemBondingJumperFacts, "jumper-of-other-system-serves");
  const noElectrode = none(
    groundingElectrodeConductorFacts,
    "electrode-conductor-of-other-system-serves",
    materials.electrodeConductors,
  );
  return [
    scheduled({ subject: id }, landing(id, "neutral-terminal"), landing(id, "enclosure"), noJumper),
    ...(deviceAmperes === undefined
      ? [
          scheduled(
            { subject: id },
            landing(id, "enclosure"),
            to,
            supplySideBondingJumper.decide({ code, supply, conductor: jumper }),
            { by: [id], run: generator, placement: generatorJumpers[code.year] },
          ),
        ]
      : [
          scheduled(
            { subject: id },
            id,
            to,
            none(supplySideBondingJumperFacts, "no-conductors-ahead-of-the-device"),
          ),
          behindDevice(at, generator, follows, deviceAmperes),
        ]),
    ...groundedConductorOf(at, generator),
    scheduled({ subject: id }, id, { kind: "electrodes" }, noElectrode),
  ];
}

/** What runs with the conductors behind the device of the generator: since 2011 the equipment grounding conductor of a feeder. */
function behindDevice(
  { installation, code }: InstallationInCode,
  generator: DrawnGenerator,
  follows: Follows,
  amperes: number,
): ScheduledConductor {
  const { id, to, supply, raceways = 1 } = generator;
  const circuits = [{ device: { amperes }, conductors: supplyOf(supply, code.year) }];
  const { bondingJumpers, equipmentGrounding } = installation.materials;
  const result =
    follows["equipment-bonding-jumper"].status === "required"
      ? equipmentBondingJumper.decide({ code, circuits, conductor: { material: bondingJumpers } })
      : equipmentGroundingConductor.decide({
          code,
          circuits,
          conductor: { material: equipmentGrounding },
          ...(raceways > 1 && { run: { kind: "parallel-raceways" as const } }),
        });
  return scheduled({ subject: id }, id, to, result, { run: generator, times: raceways });
}

/** The grounded conductor, as that of a feeder; without a device or a load nothing tells its size. */
function groundedConductorOf(
  { installation, code }: InstallationInCode,
  generator: DrawnGenerator,
): readonly ScheduledConductor[] {
  const { id, to, supply, deviceAmperes, groundedConductor: drawn, raceways = 1 } = generator;
  const device = deviceAmperes ?? drawn?.load?.circuitAmperes;
  if (drawn === undefined || device === undefined) return [];
  const { load } = drawn;
  const result = groundedConductor.decide({
    code,
    system: "service",
    supply: shareOf(supplyOf(supply, code.year), raceways),
    scope: raceways > 1 ? "raceway" : "all",
    conductor: { material: installation.materials.groundedConductors },
    feederDeviceAmperes: device,
    ...(load && { load: shareOfLoad(load, raceways) }),
  });
  return [scheduled({ subject: id }, id, to, result, { by: [id], times: raceways, run: generator })];
}
