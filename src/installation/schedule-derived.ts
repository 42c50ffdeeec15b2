import { supplySideJumperWithBothEnds } from "../edition/tables/placements.generated.js";
import {
  controlTransformerElectrode,
  derivedElectrodeConnection,
  impedanceJumper,
  ungroundedDerived,
} from "../edition/tables/sections.generated.js";
import { isAlwaysWire } from "../rules/amendment-effects.js";
import { notRequired } from "../rules/finish.js";
import { sizeSystemBondingJumper } from "../rules/system-bonding-jumper.js";
import type { Supply } from "../supply/index.js";
import { derivedCautions } from "./derived-cautions.js";
import { type DerivedInCode, isBoundToSource, mayHaveBothEnds, wholeSupply } from "./derived-system.js";
import type { ScheduledConductor, ScheduledPart } from "./schedule.js";
import { electrodePart, isOnCommon, type PlaceSupply } from "./schedule-electrodes.js";
import { impedanceConductors } from "./schedule-impedance.js";
import {
  groundedConductorsOf,
  type JumperPlace,
  noJumperBetween,
  parallelCautions,
  type RunsOfSystem,
  racewayJumpersOf,
} from "./schedule-runs.js";
import { scheduled } from "./scheduled.js";
import { hasGroundedConductor, supplyTo } from "./supplies.js";

/** Every conductor of a separately derived system. */
export function derivedPart(at: DerivedInCode): ScheduledPart {
  const { drawing, code, system } = at;
  const { id, source, impedance, runs, grounding, commonElectrodeConductor: common } = system;
  const kind = "separately-derived";
  const inRuns: RunsOfSystem = { drawing, code, kind, grounding };
  const supply = wholeSupply(at);
  const isExcused =
    source.controlTransformer === true && !isAlwaysWire(code, "grounding-electrode-conductor");
  const all = system.electrodes ?? [];
  const own = isExcused ? [] : all.filter((one) => !isOnCommon(one, all, common?.id));
  const electrodes = electrodePart({
    drawing,
    code,
    of: kind,
    electrodes: own,
    supply,
    supplyAt: (place) => electrodeStart(at, place),
    ungrounded: grounding === "ungrounded",
  });
  const hasNone = own.length === 0 && common === undefined && !isExcused;
  return {
    conductors: [
      ...systemJumpers(at),
      ...impedanceConductors({ drawing, code, id, source: source.id, impedance, supply }),
      ...runs.flatMap((run) =>
        replacesSupplySideJumper(at) ? [noJumperBetween(inRuns, run)] : racewayJumpersOf(inRuns, run),
      ),
      ...runs.flatMap((run) => jumperPlaces(at).flatMap((place) => groundedConductorsOf(inRuns, run, place))),
      ...(isExcused ? [excusedElectrode(at)] : []),
      ...electrodes.conductors,
    ],
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

function systemJumpers(at: DerivedInCode): readonly ScheduledConductor[] {
  const { system, code, drawing } = at;
  const { source, jumperAt, grounding, disconnects, runs } = system;
  const material = drawing.materials.bondingJumpers;
  if (!hasGroundedConductor(system)) {
    const isImpedance = grounding === "impedance";
    const why = isImpedance ? "impedance-grounded" : "ungrounded-system";
    const citation = (isImpedance ? impedanceJumper : ungroundedDerived)[code.year];
    const result = notRequired("system-bonding-jumper", code, material, why, citation);
    return [scheduled(`system-bonding-jumper ${system.id}`, "grounded conductor", source.id, result)];
  }
  const jumper = (place: string, supply: Supply, alternative?: string): ScheduledConductor =>
    scheduled(
      `system-bonding-jumper ${place}`,
      "grounded conductor",
      place,
      sizeSystemBondingJumper({ code, supply, jumper: { material } }),
      alternative === undefined ? {} : { alternative },
    );
  const atSource = (alternative?: string): ScheduledConductor =>
    jumper(source.id, wholeSupply(at), alternative);
  const atDisconnects = (alternative?: string): readonly ScheduledConductor[] =>
    disconnects.map(({ id }) => jumper(id, supplyTo(runs, id, code.year), alternative));
  switch (jumperAt) {
    case "source":
      return [atSource()];
    case "disconnects":
      return atDisconnects();
    case "both-ends":
      return [atSource(), ...atDisconnects()];
    case "compare":
      return isBoundToSource(at) ? [atSource()] : [atSource(sourceAlone), ...atDisconnects(inEachEnclosure)];
  }
}

const sourceAlone = "jumper-at-source";
const inEachEnclosure = "jumper-in-each-enclosure";

/** Where the grounded conductor of a run finds its jumper: at the source, in the enclosure, or both ways if they are compared. */
function jumperPlaces(at: DerivedInCode): readonly JumperPlace[] {
  const { jumperAt } = at.system;
  if (jumperAt === "source" || (jumperAt === "compare" && isBoundToSource(at)))
    return [{ jumperAt: "source" }];
  if (jumperAt !== "compare") return [{ jumperAt: "enclosure" }];
  return [
    { jumperAt: "source", alternative: sourceAlone },
    { jumperAt: "enclosure", alternative: inEachEnclosure },
  ];
}

/** Whether jumpers at both ends make the supply-side jumper between them needless. */
function replacesSupplySideJumper(at: DerivedInCode): boolean {
  const { system, code } = at;
  const drawn = system.jumperAt === "both-ends" && hasGroundedConductor(system);
  if (isAlwaysWire(code, "supply-side-bonding-jumper")) return false;
  return drawn && mayHaveBothEnds(at) && !supplySideJumperWithBothEnds[code.year];
}

/** The source or a disconnect from which an electrode conductor starts. */
function electrodeStart(at: DerivedInCode, place: string): PlaceSupply | undefined {
  const { source, disconnects, runs } = at.system;
  if (place === source.id) return { supply: wholeSupply(at) };
  const isDisconnect = disconnects.some(({ id }) => id === place);
  return isDisconnect ? { supply: supplyTo(runs, place, at.code.year) } : undefined;
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
