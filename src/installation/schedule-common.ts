import { chosenReading } from "../edition/index.js";
import { sizeCommonConductorOfDerivedSystems } from "../rules/common-derived-electrode-conductor.js";
import { sizeElectrodeBondingJumper } from "../rules/electrode-bonding-jumper.js";
import { sizeGroundingElectrodeConductor } from "../rules/grounding-electrode-conductor.js";
import type { SizingResult } from "../rules/result.js";
import type { Supply } from "../supply/index.js";
import {
  type DerivedInCode,
  type DrawnDerivedSystem,
  isBoundToSource,
  wholeSupply,
} from "./derived-system.js";
import type { DrawingInCode, ScheduledConductor } from "./schedule.js";
import {
  asElectrode,
  type DrawnElectrode,
  isOnCommon,
  racewayJumpersOf,
  servedBy,
} from "./schedule-electrodes.js";
import { scheduled } from "./scheduled.js";
import { hasGroundedConductor, supplyTo } from "./supplies.js";

/** A common electrode conductor with the derived systems that tap it and the electrodes on it. */
interface Common extends DrawingInCode {
  readonly id: string;
  readonly systems: readonly DrawnDerivedSystem[];
  readonly electrodes: readonly DrawnElectrode[];
}

/** The common electrode conductors that several derived systems tap, each once, with the taps and what hangs on them. */
export function commonConductors({ drawing, code }: DrawingInCode): readonly ScheduledConductor[] {
  const all = drawing.derivedSystems ?? [];
  const ids = new Set(all.flatMap(({ commonElectrodeConductor: common }) => common?.id ?? []));
  return [...ids].flatMap((id) => {
    const systems = all.filter(({ commonElectrodeConductor: common }) => common?.id === id);
    const electrodes = systems.flatMap(({ electrodes: own = [] }) =>
      own.filter((one) => isOnCommon(one, own, id)),
    );
    const common: Common = { drawing, code, id, systems, electrodes };
    return [...conductorsTo(common), ...systems.flatMap((system) => tapsOf(common, system))];
  });
}

/** The common conductor, as far as each electrode that it reaches itself, and the jumpers to those beyond. */
function conductorsTo(common: Common): readonly ScheduledConductor[] {
  const { drawing, code, id, electrodes } = common;
  const conductor = { material: drawing.materials.electrodeConductors };
  if (electrodes.length === 0) {
    const result = sizeCommonConductorOfDerivedSystems({ code, conductor, electrodes: [{ kind: "other" }] });
    return [scheduled(`grounding-electrode-conductor ${id}`, id, "electrodes", result)];
  }
  return electrodes.flatMap((electrode) => {
    const { id: end, from } = electrode;
    const served = servedBy(electrode, electrodes);
    const made =
      from === id
        ? scheduled(
            `grounding-electrode-conductor ${end}`,
            from,
            end,
            sizeCommonConductorOfDerivedSystems({
              code,
              conductor,
              electrodes: electrodes.map(asElectrode),
            }),
          )
        : scheduled(
            `electrode-bonding-jumper ${end}`,
            from,
            end,
            largestOf(
              common.systems.map((system) =>
                sizeElectrodeBondingJumper({
                  code,
                  supply: wholeSupply({ drawing, code, system }),
                  jumper: conductor,
                  to: served,
                }),
              ),
            ),
          );
    return [made, ...racewayJumpersOf(common, electrode, made)];
  });
}

/** One tap of a system from its jumper; from each jumper where there are several and each wants a connection. */
function tapsOf(common: Common, system: DrawnDerivedSystem): readonly ScheduledConductor[] {
  const { drawing, code, id, electrodes } = common;
  const served = electrodes
    .filter(({ from }) => from === id)
    .flatMap((electrode) => servedBy(electrode, electrodes));
  const tap = (place: string, supply: Supply): ScheduledConductor => {
    const result = sizeGroundingElectrodeConductor({
      code,
      of: "separately-derived",
      supply,
      conductor: { material: drawing.materials.electrodeConductors },
      electrodes: served.length > 0 ? served : [{ kind: "other" }],
      part: "tap",
      ...(system.source.controlTransformer && { controlTransformer: true }),
    });
    return scheduled(`grounding-electrode-tap ${place}`, place, id, result);
  };
  const at: DerivedInCode = { drawing, code, system };
  const inEnclosures =
    system.jumperAt === "disconnects" && hasGroundedConductor(system) && !isBoundToSource(at);
  const [first, ...others] = system.disconnects;
  if (!inEnclosures || first === undefined) return [tap(system.source.id, wholeSupply(at))];
  const isEach = chosenReading(code, "electrode-connection-with-several-jumpers") === "at-each-jumper";
  if (isEach) return system.disconnects.map((one) => tap(one.id, supplyTo(system.runs, one.id, code.year)));
  return [tap(first.id, others.length === 0 ? supplyTo(system.runs, first.id, code.year) : wholeSupply(at))];
}

function largestOf(results: readonly SizingResult[]): SizingResult {
  const [first, ...others] = results;
  if (first === undefined) throw new TypeError("a common conductor has a system that taps it");
  return others.reduce((so, one) => (one.requiredArea > so.requiredArea ? one : so), first);
}
