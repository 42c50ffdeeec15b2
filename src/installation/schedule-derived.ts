import { supplySideJumperWithBothEnds } from "../edition/tables/placements.generated.js";
import {
  controlTransformerElectrode,
  derivedElectrodeConnection,
  impedanceJumper,
  ungroundedDerived,
} from "../edition/tables/sections.generated.js";
import { notRequired } from "../rules/finish.js";
import { sizeSystemBondingJumper } from "../rules/system-bonding-jumper.js";
import { derivedCautions } from "./derived-cautions.js";
import { derivedElectrodeStarts } from "./derived-electrodes.js";
import {
  arrangementsOf,
  type DerivedInCode,
  mayHaveBothEnds,
  servingToDisconnect,
  wholeServing,
} from "./derived-system.js";
import { derivedViolations } from "./derived-violations.js";
import type { ScheduledConductor, ScheduledPart } from "./schedule.js";
import { type ElectrodesOf, electrodePart, isOnCommon } from "./schedule-electrodes.js";
import { impedanceConductors } from "./schedule-impedance.js";
import {
  groundedConductorsOf,
  type JumperPlace,
  noJumperBetween,
  parallelCautions,
  type RunsOfSystem,
  racewayJumpersOf,
} from "./schedule-runs.js";
import { ofSystem, scheduled } from "./scheduled.js";
import type { Serving } from "./serving.js";
import { hasGroundedConductor } from "./supplies.js";

/** Every conductor of a separately derived system. */
export function derivedPart(at: DerivedInCode): ScheduledPart {
  const { drawing, code, system } = at;
  const { id, source, impedance, runs, grounding, commonElectrodeConductor: common } = system;
  const kind = "separately-derived";
  const inRuns: RunsOfSystem = { drawing, code, kind, grounding };
  const servings = [wholeServing(at)];
  const isExcused = source.controlTransformer === true;
  const own = derivedElectrodes(at);
  const electrodes = electrodePart(own);
  const hasNone = own.electrodes.length === 0 && common === undefined && !isExcused;
  return {
    conductors: ofSystem(id, [
      ...systemJumpers(at),
      ...impedanceConductors({ drawing, code, id, source: source.id, impedance, servings }),
      ...runs.flatMap((run) =>
        replacesSupplySideJumper(at) ? [noJumperBetween(inRuns, run)] : racewayJumpersOf(inRuns, run),
      ),
      ...runs.flatMap((run) => jumperPlaces(at).flatMap((place) => groundedConductorsOf(inRuns, run, place))),
      ...(isExcused ? [excusedElectrode(at)] : []),
      ...electrodes.conductors,
    ]),
    violations: derivedViolations(at),
    cautions: [...derivedCautions(at), ...parallelCautions(runs, at), ...(electrodes.cautions ?? [])],
    notSized: hasNone
      ? [
          {
            what: `grounding electrode conductor of ${id}`,
            see: derivedElectrodeConnection[code.year].section,
          },
        ]
      : [],
  };
}

/** What the electrode conductors of a derived system go by; those on a common conductor are not among them. */
export function derivedElectrodes(at: DerivedInCode): ElectrodesOf {
  const { drawing, code, system } = at;
  const { source, grounding, commonElectrodeConductor: common, electrodes: all = [] } = system;
  const isExcused = source.controlTransformer === true;
  const own = isExcused ? [] : all.filter((one) => !isOnCommon(one, all, common?.id));
  return {
    drawing,
    code,
    of: "separately-derived",
    electrodes: own,
    servings: [wholeServing(at)],
    startsOf: (electrode) => derivedElectrodeStarts(at, own, electrode),
    ungrounded: grounding === "ungrounded",
  };
}

function systemJumpers(at: DerivedInCode): readonly ScheduledConductor[] {
  const { system, code, drawing } = at;
  const { source, grounding, disconnects } = system;
  const material = drawing.materials.bondingJumpers;
  if (!hasGroundedConductor(system)) {
    const isImpedance = grounding === "impedance";
    const why = isImpedance ? "impedance-grounded" : "ungrounded-system";
    const citation = (isImpedance ? impedanceJumper : ungroundedDerived)[code.year];
    const result = notRequired("system-bonding-jumper", code, material, why, citation);
    return [scheduled(`system-bonding-jumper ${system.id}`, "grounded conductor", source.id, result)];
  }
  return arrangementsOf(at).flatMap(({ jumperAt, alternative }) => {
    const jumper = (place: string, { by, supply }: Serving): ScheduledConductor => {
      const result = sizeSystemBondingJumper({ code, supply, jumper: { material } });
      const options = { by, ...(alternative && { alternative }) };
      return scheduled(`system-bonding-jumper ${place}`, "grounded conductor", place, result, options);
    };
    return [
      ...(jumperAt === "disconnects" ? [] : [jumper(source.id, wholeServing(at))]),
      ...(jumperAt === "source" ? [] : disconnects.map(({ id }) => jumper(id, servingToDisconnect(at, id)))),
    ];
  });
}

/** Where the grounded conductor of a run finds its jumper in each arrangement: at the source, or in the enclosure. */
function jumperPlaces(at: DerivedInCode): readonly JumperPlace[] {
  return arrangementsOf(at).map(({ jumperAt, alternative }) => ({
    jumperAt: jumperAt === "source" ? "source" : "enclosure",
    ...(alternative && { alternative }),
  }));
}

/** Whether jumpers at both ends make the supply-side jumper between them needless. */
function replacesSupplySideJumper(at: DerivedInCode): boolean {
  const { system, code } = at;
  const drawn = system.jumperAt === "both-ends" && hasGroundedConductor(system);
  return drawn && mayHaveBothEnds(at) && !supplySideJumperWithBothEnds[code.year];
}

function excusedElectrode({ system, code, drawing }: DerivedInCode): ScheduledConductor {
  const result = notRequired(
    "grounding-electrode-conductor",
    code,
    drawing.materials.electrodeConductors,
    "control-transformer",
    controlTransformerElectrode[code.year],
  );
  return scheduled(`grounding-electrode-conductor ${system.id}`, system.source.id, "electrodes", result);
}
