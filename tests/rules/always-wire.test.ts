import {
  type Amendment,
  type Code,
  cableTrayAsEquipmentGroundingConductor,
  electrodeRacewayBondingJumper,
  groundedConductor,
  groundingElectrodeConductor,
  intersystemBondingConductor,
  otherPipingBondingJumper,
  type Role,
  type SizingResult,
  size,
  structuralMetalBondingJumper,
  supplySideBondingJumper,
  waterPipingBondingJumper,
} from "bondmil";
import { describe, expect, it } from "vitest";

/** Every amendment here is invented. */
const citation = { jurisdiction: "Nowhere", section: "Sec. 1" };
const cited = "Nowhere, Sec. 1";
const year = "2020";
const supply = { sets: [{ count: 1, size: "3/0 AWG", material: "copper" }] } as const;
const conductor = { material: "copper" } as const;
const under = (role: Role, more: Partial<Amendment> = {}): Code => ({
  year,
  amendments: [{ kind: "always-wire", role, citation, ...more } as Amendment],
});
const said = ({ cautions }: Pick<SizingResult, "cautions">) =>
  cautions.filter(({ section }) => section === cited).map(({ code }) => code);

const served: readonly (readonly [Role, string, (code: Code) => SizingResult])[] = [
  ...(["nonflexible-metal-raceway", "grounded-conductor", "bonding-fittings"] as const).map(
    (instead) =>
      [
        "supply-side-bonding-jumper",
        instead,
        (code: Code) => size(supplySideBondingJumper, { code, supply, conductor, instead }),
      ] as const,
  ),
  [
    "grounding-electrode-conductor",
    "control transformer",
    (code) =>
      size(groundingElectrodeConductor, {
        code,
        system: "separately-derived",
        supply: { sets: [{ count: 1, size: "14 AWG", material: "copper" }] },
        conductor,
        electrodes: [{ kind: "metal-water-pipe" }],
        controlTransformer: true,
      }),
  ],
  [
    "water-piping-bonding-jumper",
    "the pipe is the electrode",
    (code) =>
      size(waterPipingBondingJumper, {
        code,
        system: "separately-derived",
        supply,
        conductor,
        isElectrode: true,
      }),
  ],
  [
    "structural-metal-bonding-jumper",
    "the frame is the electrode",
    (code) =>
      size(structuralMetalBondingJumper, { code, system: "service", supply, conductor, isElectrode: true }),
  ],
  [
    "intersystem-bonding-conductor",
    "on the enclosure",
    (code) => size(intersystemBondingConductor, { code, termination: "on-enclosure" }),
  ],
];

describe("an amendment that always requires a wire", () => {
  it.each(served)("of %s: nothing serves in its place, %s", (role, _, ask) => {
    expect(ask({ year }).outcome.kind).toBe("not-required");
    const sized = ask(under(role));
    expect(sized.outcome.kind).toBe("conductor");
    expect(said(sized)).toEqual(["always-wire"]);
    const open = ask(under(role, { when: { location: "rooftop" } }));
    expect(open.outcome.kind).toBe("not-required");
    expect(said(open)).toEqual(["amendment-condition-unknown"]);
    const other = role === "main-bonding-jumper" ? "system-bonding-jumper" : "main-bonding-jumper";
    expect(ask(under(other))).toEqual(ask({ year }));
  });

  it("is without effect where there is nothing that the wire would bond", () => {
    const idle = [
      size(electrodeRacewayBondingJumper, {
        code: under("electrode-raceway-bonding-jumper"),
        ferrous: false,
        enclosed: [{ size: "4 AWG", material: "copper" }],
        conductor,
      }),
      size(groundedConductor, {
        code: under("grounded-conductor"),
        system: "separately-derived",
        supply,
        conductor,
        jumperAt: "source",
      }),
    ];
    for (const one of idle) {
      expect(one.outcome.kind).toBe("not-required");
      expect(said(one)).toEqual(["amendment-without-effect"]);
    }
  });

  it("leaves no equipment grounding conductor to serve in place of a jumper to piping", () => {
    const codes = (code: Code) =>
      size(otherPipingBondingJumper, { code, deviceAmperes: 60, conductor }).cautions.map((one) => one.code);
    expect(codes({ year })).toEqual(["equipment-grounding-conductor-may-serve"]);
    expect(codes(under("other-piping-bonding-jumper"))).toEqual(["always-wire"]);
  });
});

describe("a cable tray under amendments", () => {
  const tray = (code: Code, metal: "steel" | "aluminum" = "steel") =>
    size(cableTrayAsEquipmentGroundingConductor, { code, amperes: 100, metal });

  it("does not serve where a wire is always required", () => {
    const code = under("equipment-grounding-conductor");
    expect(tray(code).outcome).toEqual({ kind: "not-permitted", largestAmperes: 0 });
    expect(said(tray(code))).toEqual(["always-wire"]);
  });

  it("serves under the condition of another place, and under amendments of other roles", () => {
    const onRoofs = under("equipment-grounding-conductor", { when: { location: "rooftop" } });
    expect(tray(onRoofs).outcome).toEqual(tray({ year }).outcome);
    expect(said(tray(onRoofs))).toEqual(["amendment-condition-unknown"]);
    expect(said(tray({ ...onRoofs, circumstances: { location: "indoors" } }))).toEqual([
      "amendment-condition-not-met",
    ]);
    expect(tray({ ...onRoofs, circumstances: { location: "rooftop" } }).outcome.kind).toBe("not-permitted");
    expect(tray(under("main-bonding-jumper"))).toEqual(tray({ year }));
  });

  it("says where its metal is forbidden", () => {
    const code: Code = {
      year,
      amendments: [{ kind: "material", role: "every-role", material: "aluminum", citation }],
    };
    expect(said(tray(code, "aluminum"))).toEqual(["material-forbidden"]);
    expect(tray(code)).toEqual(tray({ year }));
  });
});
