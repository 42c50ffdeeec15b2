import type { ByEdition, Citation, Code, Role } from "../edition/index.js";
import { generatorJumpersBy } from "../edition/tables/placements.generated.js";
import {
  derivedElectrodeConnection,
  derivedGroundedConductor,
  derivedPipingAndMetal,
  derivedSupplySideJumper,
  electrodeBonding,
  electrodeRaceway,
  equipmentGroundingByDevice,
  generatorJumpers,
  impedanceAmpacity,
  impedanceElectrode,
  impedanceJumper,
  impedanceNoOtherConnection,
  intersystemTermination,
  loadSideJumper,
  neutralLoad,
  notSeparatelyDerived,
  otherPiping,
  serviceStructuralMetal,
  serviceWaterPiping,
  supplySideJumperSize,
  systemJumperPlace,
  ungroundedDerived,
  ungroundedDerivedElectrode,
  ungroundedDerivedSupplySide,
} from "../edition/tables/sections.generated.js";
import type { Grounding } from "./shape.generated.js";

/** Stable code of what there is to say about a role of a source; its words are rendered from it. */
export type FollowsNote =
  | "at-one-point"
  | "from-source-to-first-disconnect"
  | "source-and-disconnect-in-one-enclosure"
  | "at-the-system-bonding-jumper"
  | "from-metal-enclosures"
  | "at-the-impedance"
  | "system-bonding-jumper-instead"
  | "jumper-of-other-system-serves"
  | "electrode-conductor-of-other-system-serves"
  | "generator-to-disconnect"
  | "on-load-side-of-generator-device"
  | "no-conductors-ahead-of-the-device"
  | "ahead-of-the-device"
  | "from-the-device"
  | "ungrounded-system"
  | "not-through-an-impedance"
  | "through-the-impedance"
  | "own-rule";

/** Whether a role is required, not required, or left to a rule that the kind of system does not change. */
export interface RoleFollows {
  /** Whether such a conductor is required. */
  readonly status: "required" | "not-required" | "by-its-own-rule";
  /** Stable code of a remark; its words are rendered from it. */
  readonly note: FollowsNote;
  /** Where the edition says so. */
  readonly citation: Citation;
}

/** What follows for every role. */
export type Follows = Readonly<Record<Role, RoleFollows>>;

/** What decides the roles of a source. */
export interface ClassifiedSource {
  readonly code: Code;
  readonly kind: "separately-derived" | "not-separately-derived";
  readonly source: {
    readonly kind: "transformer" | "generator" | "other";
    readonly overcurrentDevice: "integral" | "not-integral";
  };
  readonly grounding: Grounding;
}

type Some = Partial<Follows>;

/** What the kind of system of a source requires of every role. */
export function rolesThatFollow(classified: ClassifiedSource): Follows {
  const { code, kind } = classified;
  const by = saying(code);
  return {
    ...ownRules(by, kind),
    ...(kind === "separately-derived" ? ofDerivedSystem(classified, by) : ofTiedSource(classified, by)),
  };
}

interface Saying {
  readonly required: (note: FollowsNote, topic: ByEdition<Citation>) => RoleFollows;
  readonly not: (note: FollowsNote, topic: ByEdition<Citation>) => RoleFollows;
  readonly own: (topic: ByEdition<Citation>) => RoleFollows;
}

function saying({ year }: Code): Saying {
  return {
    required: (note, topic) => ({ status: "required", note, citation: topic[year] }),
    not: (note, topic) => ({ status: "not-required", note, citation: topic[year] }),
    own: (topic) => ({ status: "by-its-own-rule", note: "own-rule", citation: topic[year] }),
  };
}

function ownRules({ not, own }: Saying, kind: ClassifiedSource["kind"]): Follows {
  const isDerived = kind === "separately-derived";
  return {
    "main-bonding-jumper": isDerived
      ? not("system-bonding-jumper-instead", systemJumperPlace)
      : not("jumper-of-other-system-serves", notSeparatelyDerived),
    "system-bonding-jumper": own(systemJumperPlace),
    "supply-side-bonding-jumper": own(supplySideJumperSize),
    "grounded-conductor": own(isDerived ? derivedGroundedConductor : neutralLoad),
    "impedance-grounding-conductor": not("not-through-an-impedance", impedanceAmpacity),
    "impedance-bonding-jumper": not("not-through-an-impedance", impedanceJumper),
    "equipment-grounding-conductor": own(equipmentGroundingByDevice),
    "equipment-bonding-jumper": own(loadSideJumper),
    "water-piping-bonding-jumper": own(isDerived ? derivedPipingAndMetal : serviceWaterPiping),
    "other-piping-bonding-jumper": own(otherPiping),
    "structural-metal-bonding-jumper": own(isDerived ? derivedPipingAndMetal : serviceStructuralMetal),
    "grounding-electrode-conductor": own(derivedElectrodeConnection),
    "electrode-bonding-jumper": own(electrodeBonding),
    "electrode-raceway-bonding-jumper": own(electrodeRaceway),
    "intersystem-bonding-conductor": own(intersystemTermination),
  };
}

function ofDerivedSystem({ grounding, source }: ClassifiedSource, by: Saying): Some {
  const { required, not } = by;
  const isUngrounded = grounding === "ungrounded";
  const jumper = isUngrounded ? ungroundedDerivedSupplySide : derivedSupplySideJumper;
  const path: Some =
    source.overcurrentDevice === "integral"
      ? {
          "supply-side-bonding-jumper": not("source-and-disconnect-in-one-enclosure", jumper),
          "equipment-grounding-conductor": required("from-the-device", equipmentGroundingByDevice),
        }
      : { "supply-side-bonding-jumper": required("from-source-to-first-disconnect", jumper) };
  if (isUngrounded) {
    return {
      ...path,
      "main-bonding-jumper": not("ungrounded-system", ungroundedDerived),
      "system-bonding-jumper": not("ungrounded-system", ungroundedDerived),
      "grounded-conductor": not("ungrounded-system", ungroundedDerived),
      "grounding-electrode-conductor": required("from-metal-enclosures", ungroundedDerivedElectrode),
    };
  }
  if (grounding === "impedance") {
    return {
      ...path,
      "main-bonding-jumper": not("through-the-impedance", impedanceNoOtherConnection),
      "system-bonding-jumper": not("through-the-impedance", impedanceNoOtherConnection),
      "grounded-conductor": not("through-the-impedance", impedanceNoOtherConnection),
      "impedance-grounding-conductor": required("through-the-impedance", impedanceAmpacity),
      "impedance-bonding-jumper": required("through-the-impedance", impedanceJumper),
      "grounding-electrode-conductor": required("at-the-impedance", impedanceElectrode),
    };
  }
  return {
    ...path,
    "system-bonding-jumper": required("at-one-point", systemJumperPlace),
    "grounding-electrode-conductor": required("at-the-system-bonding-jumper", derivedElectrodeConnection),
  };
}

/** A source whose grounded conductor is that of another system: the connections of that system serve. */
function ofTiedSource(classified: ClassifiedSource, by: Saying): Some {
  const { not } = by;
  return {
    "system-bonding-jumper": not("jumper-of-other-system-serves", notSeparatelyDerived),
    "grounding-electrode-conductor": not("electrode-conductor-of-other-system-serves", notSeparatelyDerived),
    ...(classified.source.kind === "generator"
      ? ofTiedGenerator(classified, by)
      : ofOtherTied(classified, by)),
  };
}

function ofTiedGenerator({ code, source }: ClassifiedSource, { required, not }: Saying): Some {
  const ahead: Some =
    source.overcurrentDevice === "integral"
      ? { "supply-side-bonding-jumper": not("no-conductors-ahead-of-the-device", generatorJumpers) }
      : { "supply-side-bonding-jumper": required("generator-to-disconnect", generatorJumpers) };
  if (generatorJumpersBy[code.year] === "both-sides") {
    const note = "on-load-side-of-generator-device";
    return { ...ahead, "equipment-bonding-jumper": required(note, generatorJumpers) };
  }
  if (source.overcurrentDevice === "not-integral") return ahead;
  return {
    ...ahead,
    "equipment-grounding-conductor": required("from-the-device", equipmentGroundingByDevice),
  };
}

function ofOtherTied({ source }: ClassifiedSource, { required, not }: Saying): Some {
  if (source.overcurrentDevice === "integral") {
    return {
      "supply-side-bonding-jumper": not("no-conductors-ahead-of-the-device", supplySideJumperSize),
      "equipment-grounding-conductor": required("from-the-device", equipmentGroundingByDevice),
    };
  }
  return { "supply-side-bonding-jumper": required("ahead-of-the-device", supplySideJumperSize) };
}
