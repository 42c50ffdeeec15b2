import {
  checkOf,
  type FoundConductor,
  InputError,
  type Installation,
  issuesSoFar,
  readInstallation,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { piece } from "./found.js";
import { derived, installation, service } from "./installations.js";

const data = installation(
  {
    services: [
      service({
        electrodes: [
          { id: "E1", kind: "metal-water-pipe", from: "D1" },
          { id: "E2", kind: "concrete-encased", from: "D1" },
        ],
      }),
    ],
    derivedSystems: [derived({ electrodes: [] })],
  },
  "2017",
);
type Installed = NonNullable<Installation["installed"]>;

function refused(installed: Installed) {
  try {
    checkOf({ ...data, installed });
  } catch (error) {
    if (error instanceof InputError)
      return error.issues.map(({ code, path, expected, alternatives }) => ({
        code,
        path,
        expected,
        alternatives,
      }));
    throw error;
  }
  return [];
}
it("names the places among which a found one has to choose by their ids", () => {
  const two = { ...data.services?.[0] } as NonNullable<Installation["services"]>[number];
  const drawn = {
    ...data,
    services: [
      {
        ...two,
        boxes: [{ id: "M1", kind: "meter", bondedBy: "jumper" }],
        runs: [
          { ...two.runs[0], id: "R0", to: "M1" },
          { ...two.runs[0], from: "M1" },
        ],
        electrodes: [
          { id: "E1", kind: "concrete-encased", from: "D1" },
          { electrode: "E1", from: "M1" },
        ],
      },
    ],
    installed: {
      found: [{ role: "grounding-electrode-conductor", of: "E1", size: "4 AWG", material: "copper" }],
    },
  };
  expect(() => checkOf(drawn as never)).toThrow('installed.found[0].at: missing, expected one of "D1", "M1"');
});

const found = (one: object) =>
  refused({ found: [{ size: "4 AWG", material: "copper", ...one } as FoundConductor] });

describe("what is installed is refused", () => {
  it("where it may be one of several, with each of them", () => {
    expect(found({ role: "grounding-electrode-conductor", at: "D1" })).toEqual([
      {
        code: "missing",
        path: "installed.found[0].of",
        expected: 'one of "E1", "E2"',
        alternatives: ["E1", "E2"],
      },
    ]);
    expect(found({ role: "grounded-conductor" })).toMatchObject([{ expected: 'one of "R1", "Y1"' }]);
  });

  it("where it has no place and that decides", () => {
    expect(found({ role: "equipment-bonding-jumper" })).toMatchObject([
      { code: "missing", path: "installed.found[0].at" },
    ]);
    expect(found({ role: "main-bonding-jumper", at: "D1", connectsGroundedConductor: true })).toEqual([]);
    expect(
      found({ role: "grounding-electrode-conductor", of: "E1", connectsGroundedConductor: true }),
    ).toMatchObject([{ code: "missing", path: "installed.found[0].at" }]);
  });

  it("where a name is not there, with all that are equally near", () => {
    expect(found({ role: "grounding-electrode-conductor", of: "E3" })).toMatchObject([
      {
        code: "dangling-reference",
        path: "installed.found[0].of",
        expected: expect.stringContaining('one of "E1", "E2"'),
      },
    ]);
    expect(refused({ asScheduled: ["nowhere at all"] })).toMatchObject([
      { code: "dangling-reference", path: "installed.asScheduled[0]" },
    ]);
    expect(refused({ asScheduled: ["U1"] })).toMatchObject([
      { code: "unknown-value", path: "installed.asScheduled[0]" },
    ]);
    const second = { role: "water-piping-bonding-jumper", of: "W9" };
    expect(found({ role: "grounding-electrode-conductor", of: "E1", servesAlso: [second] })).toMatchObject([
      { path: "installed.found[0].servesAlso[0].of" },
    ]);
  });

  it("where its form is missing, or said twice", () => {
    const role = { role: "main-bonding-jumper", at: "D1" };
    const issues = (one: object) => refused({ found: [{ ...role, ...one } as FoundConductor] });
    expect(issues({ material: "copper" })).toMatchObject([
      { code: "missing", path: "installed.found[0].size" },
    ]);
    expect(issues({ size: "4 AWG" })).toMatchObject([
      { code: "missing", path: "installed.found[0].material" },
    ]);
    expect(issues({ size: "4 AWG", busArea: 9, material: "copper" })).toMatchObject([
      { code: "unknown-key", path: "installed.found[0].busArea" },
    ]);
    expect(issues({ instead: "bonding-fittings", quantity: 2 })).toMatchObject([
      { code: "unknown-key", path: "installed.found[0].quantity" },
    ]);
    expect(issues({ ...piece("main-bonding-jumper D1", "4 AWG"), quantity: 0 })).toMatchObject([
      { code: "not-positive", path: "installed.found[0].quantity" },
    ]);
  });

  it("where the edition that it was built under refuses the installation", () => {
    const busbar = { id: "I1", at: "D1", termination: "busbar" as const };
    const modern = { ...data, intersystem: [busbar] };
    const old = { ...piece("main-bonding-jumper D1", "1/0 AWG"), edition: "2008" as const };
    expect(() => checkOf({ ...modern, installed: { found: [old] } })).toThrow(
      expect.objectContaining({ issues: [expect.objectContaining({ path: "installed.found[0].edition" })] }),
    );
  });

  it("when it is read and while it is filled in, as far as its names go", () => {
    const astray = { ...data, installed: { found: [piece("main-bonding-jumper D7", "4 AWG")] } };
    expect(() => readInstallation(astray)).toThrow(InputError);
    expect(issuesSoFar(astray).map(({ path }) => path)).toEqual(["installed.found[0].of"]);
    expect(issuesSoFar({ ...data, installed: { found: [{ role: "main-bonding-jumper" }] } })).toEqual([]);
  });
});
