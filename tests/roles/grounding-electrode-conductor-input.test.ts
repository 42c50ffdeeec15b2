import {
  type AnyRole,
  electrodeBondingJumper,
  electrodeRacewayBondingJumper,
  groundingElectrodeConductor,
  InputError,
  intersystemBondingConductor,
  size,
} from "bondmil";
import { describe, expect, it } from "vitest";

const supply = { sets: [{ count: 1, size: "500 kcmil", material: "copper" }] };
const code = { year: "2020" };
const conductor = { material: "copper" };
const electrodes = [{ kind: "rod" }];
const control = {
  code,
  system: "separately-derived",
  supply: { sets: [{ count: 1, size: "12 AWG", material: "copper" }] },
  conductor,
  electrodes,
  controlTransformer: true,
};
const service = { code, system: "service", supply, conductor, electrodes };
const common = { code, system: "separately-derived", part: "common", conductor, electrodes };
const jumper = { code, supply, conductor, electrodes };
const raceway = { code, ferrous: true, enclosed: [{ size: "4 AWG", material: "copper" }], conductor };
const termination = { code, termination: "apart" };

type Case = readonly [string, unknown, readonly string[]];

function refused(role: AnyRole, cases: readonly Case[]): void {
  it.each(cases)("%s", (_, input, issues) => {
    let found: unknown;
    try {
      size(role, input as never);
    } catch (error) {
      if (error instanceof InputError)
        found = error.issues.map(({ path, code: fault }) => `${path}: ${fault}`);
    }
    expect(found).toEqual(issues);
  });
}

describe("a grounding electrode conductor is refused with", () => {
  refused(groundingElectrodeConductor, [
    ["nothing", undefined, [": missing"]],
    ["a key too many", { ...service, raceway: 1 }, ["raceway: unknown-key"]],
    [
      "everything wrong at once",
      { code: {}, system: "panel", supply: {}, conductor: { material: "gold" }, electrodes: [] },
      [
        "code.year: missing",
        "system: unknown-value",
        "supply.sets: missing",
        "conductor.material: unknown-value",
        "electrodes: empty-list",
      ],
    ],
    ["no electrode", { ...service, electrodes: undefined }, ["electrodes: missing"]],
    [
      "an unknown electrode",
      { ...service, electrodes: [{ kind: "tree" }] },
      ["electrodes[0].kind: unknown-value"],
    ],
    [
      "a ring without its conductor",
      { ...service, electrodes: [{ kind: "ring" }] },
      ["electrodes[0].conductor: missing"],
    ],
    [
      "a ring that is too small",
      { ...service, electrodes: [{ kind: "rod" }, { kind: "ring", conductor: "3 AWG" }] },
      ["electrodes[1].conductor: out-of-range"],
    ],
    [
      "a ring that is too small for a common conductor of several derived systems",
      {
        code,
        system: "separately-derived",
        part: "common",
        conductor: { material: "copper" },
        electrodes: [{ kind: "ring", conductor: "3 AWG" }],
      },
      ["electrodes[0].conductor: out-of-range"],
    ],
    [
      "a conductor on another electrode than a ring",
      { ...service, electrodes: [{ kind: "rod", conductor: "4 AWG" }] },
      ["electrodes[0].conductor: unknown-key"],
    ],
    [
      "an area only",
      { ...service, conductor: { material: "copper", form: "bus" } },
      ["conductor.form: unknown-key"],
    ],
    ["an unknown part", { ...service, part: "branch" }, ["part: unknown-value"]],
    [
      "conductors from the drop without a common conductor",
      { ...service, fromDrop: true },
      ["fromDrop: unknown-value"],
    ],
    [
      "conductors from the drop at a building",
      { ...service, system: "building", part: "common", fromDrop: true },
      ["fromDrop: unknown-value"],
    ],
    [
      "a control transformer at a service",
      { ...service, controlTransformer: true },
      ["controlTransformer: unknown-value"],
    ],
    [
      "a service on one branch circuit",
      { ...service, onSingleBranchCircuit: true },
      ["onSingleBranchCircuit: unknown-value"],
    ],
    [
      "a control transformer that is ungrounded",
      { ...control, ungrounded: true },
      ["ungrounded: unknown-value"],
    ],
    [
      "a control transformer with conductors for more than 100 A",
      { ...control, supply: { sets: [{ count: 3, size: "500 kcmil", material: "copper" }] } },
      ["controlTransformer: out-of-range"],
    ],
    [
      "a tap of several enclosures on one branch circuit",
      { ...service, system: "building", part: "tap", onSingleBranchCircuit: true },
      ["part: unknown-value"],
    ],
    [
      "flags that are no flags",
      { ...service, ungrounded: "yes", controlTransformer: 1, fromDrop: 0, onSingleBranchCircuit: "" },
      [
        "fromDrop: wrong-type",
        "ungrounded: wrong-type",
        "controlTransformer: wrong-type",
        "onSingleBranchCircuit: wrong-type",
      ],
    ],
  ]);

  it("but not with flags that are false", () => {
    const flags = {
      fromDrop: false,
      ungrounded: false,
      controlTransformer: false,
      onSingleBranchCircuit: false,
    };
    const sized = (input: unknown) => size(groundingElectrodeConductor, input as never);
    expect(sized({ ...service, ...flags })).toEqual(sized(service));
  });
});

describe("a common conductor of derived systems is refused with", () => {
  refused(groundingElectrodeConductor, [
    ["a supply", { ...common, supply }, ["supply: unknown-key"]],
    ["no electrodes", { ...common, electrodes: [] }, ["electrodes: empty-list"]],
    [
      "nothing else in it",
      { system: "separately-derived", part: "common" },
      ["code: missing", "conductor: missing", "electrodes: missing"],
    ],
  ]);
});

describe("an electrode bonding jumper is refused with", () => {
  refused(electrodeBondingJumper, [
    ["nothing in it", {}, ["code: missing", "supply: missing", "conductor: missing", "electrodes: missing"]],
    ["no electrode beyond it", { ...jumper, electrodes: [] }, ["electrodes: empty-list"]],
    ["a word for a flag", { ...jumper, supplemental: "yes" }, ["supplemental: wrong-type"]],
  ]);
});

describe("a jumper of a raceway is refused with", () => {
  refused(electrodeRacewayBondingJumper, [
    ["nothing in it", {}, ["code: missing", "ferrous: missing", "enclosed: missing", "conductor: missing"]],
    ["nothing inside", { ...raceway, enclosed: [] }, ["enclosed: empty-list"]],
    ["a metal for a flag", { ...raceway, ferrous: "steel" }, ["ferrous: wrong-type"]],
  ]);
});

describe("a conductor to an intersystem termination is refused with", () => {
  refused(intersystemBondingConductor, [
    ["nothing in it", {}, ["code: missing", "termination: missing"]],
    ["an unknown termination", { code, termination: "none" }, ["termination: unknown-value"]],
    [
      "a busbar before there was one",
      { code: { year: "2014" }, termination: "busbar" },
      ["termination: unknown-value"],
    ],
    [
      "an electrode conductor on something else than a busbar",
      { ...termination, electrodeConductorOnBusbar: "3/0 AWG" },
      ["electrodeConductorOnBusbar: unknown-value"],
    ],
    ["a material", { ...termination, conductor }, ["conductor: unknown-key"]],
  ]);
});
