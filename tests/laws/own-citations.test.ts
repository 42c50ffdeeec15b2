import {
  ampacityOf,
  checkOf,
  classifySource,
  currentCarryingConductors,
  deviceFor,
  dwellingConductor,
  feederTap,
  racewayFill,
  requiredByLoad,
  scheduleOf,
  supplyCandidates,
  tableAmpacity,
  transformerSecondary,
  voltageDrop,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { demo, demoNames } from "../installation/installations.js";

const edition = "2023";
const copper = "copper";

const questions: Readonly<Record<string, () => object>> = {
  ampacityOf: () =>
    ampacityOf({
      edition,
      conductor: { size: "3/0 AWG", material: copper, insulation: "THWN-2" },
      place: { location: "wet", ambient: { celsius: 40 }, inchesAboveRoof: 0.5, currentCarrying: 6 },
      terminations: { marked: 75 },
    }),
  "ampacityOf by the equation, in a short raceway": () =>
    ampacityOf({
      edition,
      conductor: { size: "3/0 AWG", material: copper, insulation: "THWN-2" },
      place: {
        location: "wet",
        ambient: { celsius: 40 },
        method: "equation",
        currentCarrying: 6,
        racewayInches: 20,
      },
      terminations: { circuitAmperes: 200 },
    }),
  currentCarryingConductors: () =>
    currentCarryingConductors({
      edition,
      circuits: [{ kind: "four-wire-wye", count: 2, mostlyNonlinear: true }],
    }),
  deviceFor: () =>
    deviceFor({
      edition,
      conductors: { size: "500 kcmil", material: copper, sets: 2, amperes: 380 },
      serves: "service-or-feeder",
      device: "circuit-breaker",
    }),
  dwellingConductor: () =>
    dwellingConductor({ edition, amperes: 200, material: copper, system: "120/240-three-wire" }),
  feederTap: () =>
    feederTap({ edition, feederDevice: 400, feet: 20, place: "inside", endsIn: { device: 150 }, load: 120 }),
  racewayFill: () =>
    racewayFill({
      edition,
      raceway: "rigid-metal",
      conductors: [{ count: 3, size: "3/0 AWG", insulation: "THHN" }],
    }),
  requiredByLoad: () => requiredByLoad({ edition, of: "feeder", continuous: 40, other: 60 }),
  supplyCandidates: () =>
    supplyCandidates({
      code: { year: edition },
      system: { kind: "service", ungrounded: 3, grounded: { currentCarrying: false } },
      load: { continuous: 0, other: 400 },
      conductor: { insulation: "XHHW-2", materials: [copper] },
      place: { location: "dry" },
      limits: { mostSets: 2 },
      raceways: ["rigid-metal"],
      bonding: { material: copper },
    }),
  tableAmpacity: () => tableAmpacity({ edition, size: "4 AWG", material: copper, temperature: 75 }),
  transformerSecondary: () =>
    transformerSecondary({
      edition,
      transformer: { kva: 30, primaryVolts: 480, secondaryVolts: 208, phases: 3, windings: "other" },
      protection: "primary-and-secondary",
      conductors: { feet: 10, place: "inside", load: 80 },
    }),
  ...Object.fromEntries(
    demoNames.flatMap((name) => [
      [`scheduleOf ${name}`, () => scheduleOf(demo(name))],
      [`checkOf ${name}`, () => checkOf(demo(name))],
    ]),
  ),
  classifySource: () =>
    classifySource({
      code: { year: edition },
      source: { kind: "transformer", windings: "separate", overcurrentDevice: "not-integral" },
      grounding: "solidly-grounded",
    }),
  voltageDrop: () =>
    voltageDrop({
      edition,
      current: "three-phase",
      volts: 480,
      amperes: 200,
      feet: 500,
      conductors: { sets: 1, size: "3/0 AWG", material: copper },
      impedance: { from: "table-9", conduit: "steel", powerFactor: 0.85 },
      permittedPercent: 2,
      mostSets: 4,
    }),
};

/** Changes everything that an answer holds. */
function spoil(value: object): void {
  for (const [key, inner] of Object.entries(value)) {
    if (typeof inner === "object" && inner !== null) spoil(inner);
    else Reflect.set(value, key, "spoiled");
  }
}

describe("what an answer holds is its own", () => {
  it.each(Object.entries(questions))("of %s, so that a change of it changes no later answer", (_, ask) => {
    const before = JSON.stringify(ask());
    spoil(ask());
    expect(JSON.stringify(ask())).toBe(before);
  });
});
