import {
  cableTrayAsEquipmentGroundingConductor,
  electrodeBondingJumper,
  electrodeRacewayBondingJumper,
  equipmentGroundingConductor,
  groundedConductor,
  InputError,
  type Issue,
  largestDevice,
  reserveOf,
  type Sizing,
  size,
} from "bondmil";
import { describe, expect, it } from "vitest";

const code = { year: "2020" };
const conductor = { material: "copper" };
const supply = { sets: [{ count: 1, size: "3/0 AWG", material: "copper" }] };
const device = { amperes: 60 };

const asked =
  <Asked>(role: Sizing<Asked, unknown>) =>
  (input: never): unknown =>
    size<Asked, unknown>(role, input);

function issuesOf(ask: (input: never) => unknown, input: unknown): readonly Issue[] {
  try {
    ask(input as never);
  } catch (error) {
    if (error instanceof InputError) return error.issues;
    throw error;
  }
  return [];
}

const equipment = (circuit: unknown, more: object = {}) =>
  issuesOf(asked(equipmentGroundingConductor), { code, circuits: [circuit], conductor, ...more });
const neutral = { code, system: "service", supply, conductor };

describe("a text in place of an object is one fault, at its own path", () => {
  it.each([
    ["", issuesOf(asked(cableTrayAsEquipmentGroundingConductor), "text")],
    ["", issuesOf(asked(electrodeBondingJumper), "text")],
    ["", issuesOf(asked(electrodeRacewayBondingJumper), "text")],
    ["", issuesOf((input) => largestDevice(equipmentGroundingConductor, input), "text")],
    ["", issuesOf(reserveOf, "text")],
    ["conductor", equipment({ device }, { conductor: "text" })],
    ["run", equipment({ device }, { run: "text" })],
    ["circuits[0]", equipment("text")],
    ["circuits[0].device.aheadOfFeeder", equipment({ device: { aheadOfFeeder: "text" } })],
    ["circuits[0].increasedFrom", equipment({ device, conductors: supply, increasedFrom: "text" })],
    ["load", issuesOf(asked(groundedConductor), { ...neutral, load: "text" })],
  ])("%s", (path, issues) => {
    expect(issues).toMatchObject([{ code: "wrong-type", path }]);
  });

  it("leaves what is beside it to be read", () => {
    const issues = equipment({
      device: { motor: { kind: "inverse-time-or-fuse", deviceAmperes: 60 }, volts: 480 },
    });
    expect(issues).toMatchObject([{ code: "unknown-key", path: "circuits[0].device.volts" }]);
  });
});

describe("an object that is missing", () => {
  it("is told with the members that it has to have, apart from those that it may have", () => {
    const [noCode, noRun] = issuesOf(asked(equipmentGroundingConductor), {
      circuits: [{ device }],
      run: 7,
      conductor,
    });
    expect(noCode).toMatchObject({
      path: "code",
      expected: "an object with year, and perhaps readings, amendments, circumstances",
    });
    expect(noRun?.expected).toMatch(/^an object /);
  });
});
