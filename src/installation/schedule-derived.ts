import { supplySideJumperWithBothEnds } from "../edition/tables/placements.generated.js";
import { groundingElectrodeConductorFacts } from "../edition/tables/roles.generated.js";
import {
  controlTransformerElectrode,
  derivedElectrodeConnection,
  impedanceJumper,
  outdoorSource,
  systemJumperPlace,
  systemJumperSeveralEnclosures,
  ungroundedDerived,
} from "../edition/tables/sections.generated.js";
import { systemBondingJumper } from "../roles/system-bonding-jumper/index.js";
import { isAlwaysWire } from "../rules/amendment-effects.js";
import { notRequired } from "../rules/finish.js";
import { derivedCautions } from "./derived-cautions.js";
import { derivedElectrodeStarts } from "./derived-electrodes.js";
import {
  type DerivedInCode,
  isBoundToSource,
  isExcusedFromElectrode,
  jumperChoices,
  mayHaveBothEnds,
  servingToDisconnect,
  wholeServing,
} from "./derived-system.js";
import { derivedViolations } from "./derived-violations.js";
import { landingAtDerived } from "./electrode-landing.js";
import { electrodesOf } from "./electrodes-of.js";
import { groundedBar, groundedTerminal, landing } from "./landing.js";
import { inMaterialsOf } from "./materials-of.js";
import { racewayJumpersOfRuns } from "./raceway-jumpers.js";
import { ratingCautions } from "./rating-cautions.js";
import type { RunsOfSystem } from "./runs-of-system.js";
import type { ScheduledConductor, ScheduledPart } from "./schedule.js";
import { type ElectrodesOf, electrodePart, isOnCommon } from "./schedule-electrodes.js";
import { impedanceConductors } from "./schedule-impedance.js";
import { groundedConductorsOf, type JumperPlace } from "./schedule-runs.js";
import { behindSourceDevice } from "./schedule-source-device.js";
import { ofSystem, scheduled } from "./scheduled.js";
import type { Serving } from "./serving.js";
import { astrayFromImpedance, groundingCautions, noGroundedConductors } from "./special-groundings.js";
import { hasGroundedConductor, racewaysOf } from "./supplies.js";
import { inForm, wantedJumper } from "./wanted-jumper.js";

/** Every conductor of a separately derived system. */
export function derivedPart(drawn: DerivedInCode): ScheduledPart {
  const at = inMaterialsOf(drawn, drawn.system);
  const { installation, code, system } = at;
  const { id, source, impedance, runs, grounding, commonElectrodeConductor: common } = system;
  const kind = "separately-derived";
  const { sharedRaceways } = system;
  const inRuns: RunsOfSystem = {
    installation,
    code,
    kind,
    grounding,
    source: source.id,
    boxes: [],
    sharedRaceways,
  };
  const servings = [wholeServing(at)];
  const isExcused = isExcusedFromElectrode(code, system);
  const own = derivedElectrodes(at);
  const electrodes = electrodePart(own);
  const { deviceAmperes } = source;
  const hasNone = own.electrodes.length === 0 && common === undefined && !isExcused;
  return {
    conductors: ofSystem(id, [
      ...systemJumpers(at),
      ...impedanceConductors({
        ...{ installation, code, id, source: source.id, impedance, servings },
        disconnects: system.disconnects.map((one) => one.id),
      }),
      ...(deviceAmperes === undefined
        ? aheadOfDevices(at, inRuns)
        : runs.flatMap((run) => behindSourceDevice(at, run, deviceAmperes))),
      ...noGroundedConductors({ installation, code, system, source: source.id }),
      ...(isExcused ? [excusedElectrode(at)] : []),
      ...electrodes.conductors,
    ]),
    violations: [...derivedViolations(at), ...astrayFromImpedance(system, [source.id], code)],
    cautions: [
      ...derivedCautions(at),
      ...groundingCautions(system, code),
      ...ratingCautions(system.disconnects, runs, code.year),
      ...(electrodes.cautions ?? []),
    ],
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

/** What runs with the conductors from a source to the devices of its disconnects. */
function aheadOfDevices(at: DerivedInCode, inRuns: RunsOfSystem): readonly ScheduledConductor[] {
  const { runs } = at.system;
  return [
    ...racewayJumpersOfRuns(inRuns, runs, replacesSupplySideJumper(at)),
    ...runs.flatMap((run) => jumperPlaces(at).flatMap((place) => groundedConductorsOf(inRuns, run, place))),
  ];
}

/** What the electrode conductors of a derived system go by; those on a common conductor are not among them. */
export function derivedElectrodes(at: DerivedInCode): ElectrodesOf {
  const { code, system } = at;
  const { installation } = inMaterialsOf(at, system);
  const { grounding, commonElectrodeConductor: common } = system;
  const all = electrodesOf(installation, system);
  const own = isExcusedFromElectrode(code, system)
    ? []
    : all.filter((one) => !isOnCommon(one, all, common?.id));
  return {
    installation,
    code,
    system: "separately-derived",
    electrodes: own,
    servings: [wholeServing(at)],
    startsOf: (electrode) => derivedElectrodeStarts(at, own, electrode),
    landingOf: (from) => landingAtDerived(system, from),
    ungrounded: grounding === "ungrounded",
    impedance: grounding === "impedance",
  };
}

/** The system bonding jumpers of a derived system: at its source, in its enclosures, or both. */
export function systemJumpers(at: DerivedInCode): readonly ScheduledConductor[] {
  const { system, code } = at;
  const { source, grounding, disconnects } = system;
  const own = inMaterialsOf(at, system);
  const wanted = inForm(wantedJumper(own), system.jumperForm);
  if (!hasGroundedConductor(system)) {
    const isImpedance = grounding === "impedance";
    const why = isImpedance ? "impedance-grounded" : "ungrounded-system";
    const citation = (isImpedance ? impedanceJumper : ungroundedDerived)[code.year];
    const result = notRequired(systemBondingJumper.facts, code, wanted.conductor.material, why, citation);
    return [scheduled({ subject: system.id }, source.id, landing(source.id, "enclosure"), result)];
  }
  const sizing = disconnects.length > 1 ? systemJumperSeveralEnclosures[code.year] : undefined;
  const placement = (isBoundToSource(at) ? outdoorSource : systemJumperPlace)[code.year];
  return jumperChoices(at).flatMap(({ jumperAt, alternative }) => {
    const jumper = (place: string, { by, supply }: Serving): ScheduledConductor => {
      const there = disconnects.find(({ id }) => id === place);
      const result = systemBondingJumper.decide({
        code,
        supply,
        ...inForm(wantedJumper(inMaterialsOf(own, there)), system.jumperForm),
      });
      const who = { subject: place, ...(alternative && { alternative }) };
      const [from, to] =
        place === source.id
          ? [groundedTerminal(system, place), landing(place, "enclosure")]
          : [groundedBar(system, place), landing(place, "grounding-bar")];
      return scheduled(who, from, to, result, { by, placement, sizing });
    };
    return [
      ...(jumperAt === "disconnects" ? [] : [jumper(source.id, wholeServing(at))]),
      ...(jumperAt === "source" ? [] : disconnects.map(({ id }) => jumper(id, servingToDisconnect(at, id)))),
    ];
  });
}

/** Where the grounded conductor of a run finds its jumper in each arrangement: at the source, or in the enclosure. */
function jumperPlaces(at: DerivedInCode): readonly JumperPlace[] {
  return jumperChoices(at).map(({ jumperAt, alternative }) => ({
    jumperAt: jumperAt === "source" ? "source" : "enclosure",
    ...(alternative && { alternative }),
  }));
}

/** Whether jumpers at both ends make the supply-side jumper between them needless. */
export function replacesSupplySideJumper(at: DerivedInCode): boolean {
  const { system, code } = at;
  const drawn = system.jumperAt === "both-ends" && hasGroundedConductor(system);
  if (isAlwaysWire(code, "supply-side-bonding-jumper")) return false;
  const isKnown = system.runs.every((run) => racewaysOf(run, system).kind !== "unknown");
  return drawn && mayHaveBothEnds(at) && isKnown && !supplySideJumperWithBothEnds[code.year];
}

function excusedElectrode({ system, code, installation }: DerivedInCode): ScheduledConductor {
  const result = notRequired(
    groundingElectrodeConductorFacts,
    code,
    installation.materials.electrodeConductors,
    "control-transformer",
    controlTransformerElectrode[code.year],
  );
  return scheduled({ subject: system.id }, system.source.id, { kind: "electrodes" }, result);
}
