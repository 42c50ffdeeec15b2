import { assemblyDivided } from "../edition/tables/placements.generated.js";
import {
  listedAssembly,
  mainJumperPlace,
  numberOfDisconnects,
  outdoorTransformerElectrode,
} from "../edition/tables/sections.generated.js";
import type { PlacedCaution } from "./schedule.js";
import { isAssembly, type ServiceInCode } from "./service.js";
import { hasGroundedConductor } from "./supplies.js";

/** What to know of a service as a whole. */
export function serviceCautions({ service, code: { year } }: ServiceInCode): readonly PlacedCaution[] {
  const { id, utility, boxes = [] } = service;
  const assembled = isAssembly(service) && hasGroundedConductor(service);
  const found: readonly (readonly [boolean, PlacedCaution])[] = [
    [assembled, { code: "assembly-size-inferred", section: listedAssembly[year].section, at: id }],
    [
      assembled && assemblyDivided[year],
      { code: "assembly-narrowed", section: numberOfDisconnects[year].section, at: id },
    ],
    [
      utility.outdoorTransformer && hasGroundedConductor(service),
      {
        code: "outdoor-transformer-electrode",
        section: outdoorTransformerElectrode[year].section,
        at: utility.id,
      },
    ],
  ];
  const wireways = boxes.filter(({ kind, bondedBy }) => {
    return bondedBy === "jumper" && (kind === "wireway" || kind === "gutter");
  });
  return [
    ...found.flatMap(([holds, caution]) => (holds ? [caution] : [])),
    ...wireways.map((box): PlacedCaution => {
      return { code: "jumper-in-wireway", section: mainJumperPlace[year].section, at: box.id };
    }),
  ];
}
