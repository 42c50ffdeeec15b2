import { type Evidence, editionYears, feederTap, transformerSecondary, weakestEvidence } from "bondmil";
import { describe, expect, it } from "vitest";

const tap = {
  edition: "2023",
  feederDevice: 400,
  feet: 20,
  place: "inside",
  endsIn: { device: 100 },
  load: 80,
} as const;
const transformer = {
  kva: 75,
  primaryVolts: 480,
  secondaryVolts: 208,
  phases: 3,
  windings: "other",
} as const;
const secondary = {
  edition: "2023",
  transformer,
  protection: "primary-and-secondary",
  primaryDevice: 125,
  conductors: { feet: 20, place: "inside", endsIn: { device: 250 }, load: 200 },
} as const;

const holding = ({
  rules,
}: {
  readonly rules: readonly { readonly holds: boolean; readonly citation: { readonly section: string } }[];
}) => rules.filter(({ holds }) => holds).map(({ citation }) => citation.section);

const codesOf = ({ cautions }: { readonly cautions: readonly { readonly code: string }[] }) =>
  cautions.map(({ code }) => code);
const unmetOf = ({ rules }: { readonly rules: readonly { readonly unmet: readonly string[] }[] }) =>
  rules.map(({ unmet }) => unmet);

describe("a feeder tap", () => {
  it("is a third of the feeder's device beyond 10 ft, a tenth within where it leaves the enclosure", () => {
    expect(feederTap(tap)).toMatchObject({ amperes: 400 / 3, decides: 1 });
    expect(feederTap({ ...tap, feet: 10 })).toMatchObject({ amperes: 100, decides: 0 });
    const short = { ...tap, feet: 10, feederDevice: 1200, endsIn: { device: 60 }, load: 50 } as const;
    expect(feederTap(short).amperes).toBe(120);
    expect(feederTap({ ...short, leavesEnclosure: false }).amperes).toBe(60);
  });

  it("may end in several devices within 10 ft alone, by the rating of their equipment", () => {
    const endsIn = { devices: [60, 60], equipment: 125 } as const;
    expect(feederTap({ ...tap, feet: 10, endsIn }).amperes).toBe(125);
    expect(feederTap({ ...tap, endsIn })).toMatchObject({ decides: null, amperes: null, smallest: null });
  });

  it("counts primary and secondary of a transformer together, the secondary by the ratio of the voltages", () => {
    const through = {
      ...tap,
      feet: 10,
      transformer: { primaryVolts: 480, secondaryVolts: 208, secondaryFeet: 15 },
    };
    const found = feederTap(through);
    expect(holding(found)).toEqual(["240.21(B)(3)"]);
    expect(found.rules[2]).toMatchObject({ amperes: 400 / 3, secondaryAmperes: (400 * 480) / (208 * 3) });
    expect(holding(feederTap({ ...through, feet: 11 }))).toEqual([]);
  });

  it("goes far in a high bay and outdoors only", () => {
    const highBay = {
      wallFeet: 36,
      horizontalFeet: 25,
      aboveFloorFeet: 30,
      qualified: true,
      unspliced: true,
    };
    const far = { ...tap, feet: 100, feederDevice: 100, endsIn: { device: 30 }, load: 30, highBay } as const;
    const found = feederTap(far);
    expect(holding(found)).toEqual(["240.21(B)(4)"]);
    // A third of 100 A would be 10 AWG copper; the rule names 6 AWG copper and 4 AWG aluminum.
    expect(found.smallest).toEqual({ copper: "6 AWG", aluminum: "4 AWG", temperature: 60 });
    expect(feederTap({ ...far, highBay: { ...highBay, wallFeet: 35 } }).rules[3]?.unmet).toEqual([
      "walls-above-35-feet",
    ]);
    expect(holding(feederTap({ ...tap, feet: 500, place: "outside" }))).toEqual(["240.21(B)(5)"]);
  });

  it("names every condition of every rule that is not met", () => {
    const endsIn = { devices: [60, 60], equipment: 125 } as const;
    expect(unmetOf(feederTap({ ...tap, feet: 101, endsIn }))).toEqual([
      ["at-most-10-feet"],
      ["at-most-25-feet", "one-device"],
      ["supplies-transformer", "at-most-25-feet", "one-device"],
      [
        "high-bay",
        "walls-above-35-feet",
        "at-most-100-feet",
        "tap-at-least-30-feet-above-floor",
        "qualified-persons",
        "unspliced",
        "one-device",
      ],
      ["outside", "one-device"],
    ]);
    const transformer = { primaryVolts: 480, secondaryVolts: 208, secondaryFeet: 6 };
    const highBay = {
      wallFeet: 40,
      horizontalFeet: 26,
      aboveFloorFeet: 29,
      qualified: true,
      unspliced: true,
    };
    expect(unmetOf(feederTap({ ...tap, place: "outside", transformer, highBay }))).toEqual([
      ["at-most-10-feet", "supplies-no-transformer"],
      ["supplies-no-transformer"],
      ["at-most-25-feet"],
      ["at-most-25-feet-horizontal", "tap-at-least-30-feet-above-floor", "supplies-no-transformer"],
      ["supplies-no-transformer"],
    ]);
    const grouped = feederTap({ ...tap, feet: 10, endsIn, transformer }).rules[2];
    expect(grouped).toMatchObject({ unmet: ["one-device"], secondaryAmperes: null, secondaryParts: [] });
  });

  it("through a transformer has secondary conductors for the load and the device at their end too", () => {
    const transformer = { primaryVolts: 480, secondaryVolts: 208, secondaryFeet: 5 };
    const { rules } = feederTap({ ...tap, feederDevice: 100, feet: 5, transformer });
    expect(rules[2]).toMatchObject({ amperes: 100 / 3, secondaryAmperes: 100 });
    expect(rules[2]?.secondaryParts.map(({ from, amperes }) => [from, amperes])).toEqual([
      ["load", 80],
      ["device-at-end", 100],
      ["feeder-device", (100 * 480) / (208 * 3)],
    ]);
  });

  it("has the smaller of the sizes that the rule and its ampacity leave, in each metal", () => {
    const highBay = { wallFeet: 36, horizontalFeet: 0, aboveFloorFeet: 30, qualified: true, unspliced: true };
    const far = { ...tap, feet: 60, feederDevice: 600, endsIn: { device: 200 }, load: 180, highBay } as const;
    expect(feederTap(far).smallest).toEqual({ copper: "3/0 AWG", aluminum: "250 kcmil", temperature: 75 });
    const huge = { ...far, feet: 20, feederDevice: 2500, endsIn: { device: 800 }, load: 700 } as const;
    expect(feederTap(huge).smallest).toEqual({ copper: null, aluminum: null, temperature: 75 });
  });

  it("goes by the rule that asks least, and by the first of those that ask the same", () => {
    expect(feederTap({ ...tap, place: "outside" })).toMatchObject({ decides: 4, amperes: 100 });
    const alike = feederTap({ ...tap, feet: 10, place: "outside", endsIn: { device: 150 } });
    expect(alike).toMatchObject({ decides: 0, amperes: 150 });
    expect(holding(alike)).toHaveLength(3);
    expect(holding(feederTap({ ...tap, feet: 25 }))).toEqual(["240.21(B)(2)"]);
  });

  it("is no surer than the rule that decides", () => {
    for (const edition of editionYears) {
      const { decides, rules, evidence } = feederTap({ ...tap, edition });
      const cited = rules[decides ?? -1]?.citation.evidence ?? "memory";
      expect(weakestEvidence([evidence, cited as Evidence])).toBe(evidence);
    }
  });

  it("comes with what to know", () => {
    const always = ["never-next-rating", "no-tap-from-a-tap"];
    const held = [...always, "protect-from-damage", "terminations-by-rating"];
    expect(codesOf(feederTap(tap))).toEqual(held);
    expect(codesOf(feederTap({ ...tap, load: 0 }))).toEqual([
      ...[...always, "protect-from-damage"],
      ...["load-not-given", "terminations-by-rating"],
    ]);
    expect(codesOf(feederTap({ ...tap, feet: 30, place: "outside" }))).toEqual([
      ...[...always, "protect-from-damage"],
      ...["device-beside-disconnect", "terminations-by-rating"],
    ]);
    expect(codesOf(feederTap({ ...tap, feet: 30 }))).toEqual([...always, "no-rule-holds"]);
  });

  it("is the same in every edition", () => {
    const all = editionYears.map((edition) => feederTap({ ...tap, edition }).amperes);
    expect(new Set(all).size).toBe(1);
  });
});

describe("a transformer and its secondary conductors", () => {
  it("has the devices that the table permits: 125 percent goes up, 250 percent does not", () => {
    const { primary, secondary: other } = transformerSecondary({
      edition: "2023",
      transformer,
      protection: "primary-and-secondary",
      conductors: { feet: 10, place: "inside", load: 0 },
    });
    // 90.2 A: 225.5 A at 250 percent; 208.2 A: 260.2 A at 125 percent.
    expect(primary.permitted).toMatchObject({ percent: 250, rating: 225 });
    expect(other.permitted).toMatchObject({ percent: 125, rating: 300 });
    const alone = transformerSecondary({ ...secondary, protection: "primary-only" });
    expect(alone.primary.permitted).toMatchObject({ percent: 125, rating: 125 });
    expect(alone.secondary.permitted).toBeNull();
  });

  it.each([
    [0.5, 300, 3],
    [2, 167, 6],
    [15, 125, 40],
  ])("of %i kVA at 480 V has %i percent on the primary alone", (kva, percent, rating) => {
    const { primary } = transformerSecondary({
      ...secondary,
      protection: "primary-only",
      primaryDevice: undefined,
      transformer: { ...transformer, kva, phases: 1 },
    } as never);
    expect(primary.permitted).toMatchObject({ percent, rating });
  });

  it("has conductors that carry the device at their end, never the next rating above them", () => {
    expect(transformerSecondary(secondary)).toMatchObject({
      amperes: 250,
      smallest: { copper: "250 kcmil" },
    });
    // 3/0 AWG has 200 A; a device of 225 A asks 4/0 AWG.
    const small = { ...secondary, conductors: { ...secondary.conductors, endsIn: { device: 225 } } };
    expect(transformerSecondary(small).smallest?.copper).toBe("4/0 AWG");
  });

  it("has conductors for a third of the primary device beyond 10 ft, and for a tenth within", () => {
    const small = { ...secondary.conductors, endsIn: { device: 60 }, load: 50 };
    expect(transformerSecondary({ ...secondary, conductors: small }).amperes).toBe((125 * 480) / (208 * 3));
    const short = { ...small, feet: 10, endsIn: { device: 20 }, load: 15 };
    expect(transformerSecondary({ ...secondary, conductors: short })).toMatchObject({
      decides: 1,
      amperes: (125 * 480) / (208 * 10),
    });
  });

  it("lets the primary device protect a two-wire or delta-delta secondary, at any length", () => {
    const long = { ...secondary, conductors: { ...secondary.conductors, feet: 80 } };
    expect(holding(transformerSecondary(long))).toEqual([]);
    const delta = { ...long, transformer: { ...transformer, windings: "delta-delta-three-wire" } } as const;
    expect(holding(transformerSecondary(delta))).toEqual(["240.21(C)(1)"]);
    expect(transformerSecondary(delta).amperes).toBe((125 * 480) / 208);
  });

  it("adds grouped devices in an industrial installation, where the transformer's current counts too", () => {
    const endsIn = { devices: [100, 100, 100], equipment: 400 };
    const industrial = { ...secondary, conductors: { ...secondary.conductors, endsIn, industrial: true } };
    expect(transformerSecondary(industrial)).toMatchObject({ amperes: 300, decides: 2 });
  });

  it("goes by the feeder's device behind a tap", () => {
    const feederTap = { feederDevice: 200, primaryFeet: 5 };
    const { rules } = transformerSecondary({ ...secondary, feederTap });
    expect(rules[4]).toMatchObject({ holds: true, amperes: 250 });
    expect(rules[4]?.parts.at(-1)).toMatchObject({
      from: "feeder-device",
      divisor: 3,
      ratio: 480 / 208,
      amperes: (200 * 480) / 624,
    });
    expect(
      transformerSecondary({ ...secondary, feederTap: { ...feederTap, primaryFeet: 6 } }).rules[4]?.unmet,
    ).toEqual(["at-most-25-feet"]);
  });

  it("begins a row of the table at its current", () => {
    const at = (kva: number) =>
      transformerSecondary({
        ...secondary,
        protection: "primary-only",
        primaryDevice: undefined,
        transformer: { ...transformer, kva, primaryVolts: 100, phases: 1 },
      } as never).primary.permitted?.percent;
    // 9 A and 2 A, and a thousandth below each.
    expect([at(0.9), at(0.899), at(0.2), at(0.199)]).toEqual([125, 167, 167, 300]);
  });

  it("names every condition of every rule that is not met", () => {
    const unknown = {
      ...secondary,
      protection: "primary-only",
      transformer: { ...transformer, windings: "other" },
      conductors: { feet: 26, place: "inside", load: 0 },
    } as const;
    expect(unmetOf(transformerSecondary(unknown))).toEqual([
      ["two-wire-or-delta-delta"],
      ["at-most-10-feet", "device-known"],
      ["industrial", "at-most-25-feet", "device-known"],
      ["outside", "device-known", "one-device"],
      ["supplied-by-tap", "at-most-25-feet", "device-known", "one-device"],
      ["at-most-25-feet", "device-known", "one-device"],
    ]);
    const endsIn = { devices: [100, 100], equipment: 250 };
    const several = { ...secondary, conductors: { ...secondary.conductors, endsIn } };
    expect(unmetOf(transformerSecondary(several))).toEqual([
      ["two-wire-or-delta-delta"],
      ["at-most-10-feet"],
      ["industrial"],
      ["outside", "one-device"],
      ["supplied-by-tap", "one-device"],
      ["one-device"],
    ]);
  });

  it("may run outside at any length to one device", () => {
    const outside = { ...secondary.conductors, feet: 200, place: "outside" } as const;
    expect(holding(transformerSecondary({ ...secondary, conductors: outside }))).toEqual(["240.21(C)(4)"]);
    const inside = { ...secondary.conductors, feet: 25 };
    expect(holding(transformerSecondary({ ...secondary, conductors: inside }))).toEqual(["240.21(C)(6)"]);
  });

  it("has no device where even the smallest is more than the table permits", () => {
    // 50 VA at 480 V: 0.1 A, of which 300 percent is less than the smallest fuse.
    const tiny = {
      ...secondary,
      transformer: { ...transformer, kva: 0.05, phases: 1 },
      protection: "primary-only",
      primaryDevice: undefined,
      conductors: { feet: 5, place: "inside", endsIn: { device: 1 }, load: 0.2, leavesEnclosure: false },
    } as unknown as Parameters<typeof transformerSecondary>[0];
    const found = transformerSecondary(tiny);
    expect(found.primary).toMatchObject({ device: null, given: false, permitted: { rating: null } });
    expect(unmetOf(found)).toEqual([
      ["two-wire-or-delta-delta", "device-known"],
      [],
      ["industrial"],
      ["outside"],
      ["supplied-by-tap"],
      ["device-known"],
    ]);
    expect(codesOf(found)).toEqual(["never-next-rating", "protect-from-damage", "terminations-by-rating"]);
    const leaves = { ...tiny, conductors: { ...tiny.conductors, leavesEnclosure: true } };
    expect(transformerSecondary(leaves).rules[1]?.unmet).toEqual(["device-known"]);
  });

  it("meets a standard rating exactly, and passes over the one that separates the bodies of fuses", () => {
    const at = (kva: number, volts: number) =>
      transformerSecondary({
        ...secondary,
        transformer: { ...transformer, kva, primaryVolts: volts, secondaryVolts: volts, phases: 1 },
      });
    // 80 A: 100 A at 125 percent, and 200 A at 250 percent.
    const { primary, secondary: other } = at(8, 100);
    expect([primary.permitted?.rating, other.permitted?.rating]).toEqual([200, 100]);
    // 480.4 A: 600.5 A at 125 percent.
    expect(at(48.04, 100).secondary.permitted?.rating).toBe(700);
  });

  it("cites the table for each side, and the rule that decides", () => {
    const sections = (question: Parameters<typeof transformerSecondary>[0]) =>
      transformerSecondary(question).citations.map(({ section }) => section);
    expect(sections(secondary)).toEqual(["Table 450.3(B)", "Table 450.3(B)", "240.21(C)(6)"]);
    const long = { ...secondary.conductors, feet: 80 };
    expect(sections({ ...secondary, protection: "primary-only", conductors: long })).toEqual([
      "Table 450.3(B)",
      "240.21(C)",
    ]);
  });

  it("has terminations by the rating of the equipment that holds several devices", () => {
    const ends = (equipment: number) =>
      transformerSecondary({
        ...secondary,
        conductors: { feet: 10, place: "inside", endsIn: { devices: [30, 30], equipment }, load: 40 },
      });
    expect(ends(100)).toMatchObject({ secondary: { device: 60 }, smallest: { temperature: 60 } });
    expect(ends(125)).toMatchObject({ secondary: { device: 60 }, smallest: { temperature: 75 } });
  });

  it("asks no device of the primary within 10 ft where the conductors stay in their enclosure", () => {
    const short = { feet: 10, place: "inside", endsIn: { device: 20 }, load: 15 } as const;
    const stays = { ...secondary, conductors: { ...short, leavesEnclosure: false } };
    expect(transformerSecondary(stays)).toMatchObject({ amperes: 20, decides: 1 });
    expect(transformerSecondary(stays).rules[1]?.parts.map(({ from }) => from)).toEqual([
      "load",
      "device-at-end",
    ]);
  });

  it("goes by the larger of the transformer's current and its one device in an industrial installation", () => {
    const industrial = { ...secondary.conductors, endsIn: { device: 225 }, industrial: true };
    const [, , third] = transformerSecondary({ ...secondary, conductors: industrial }).rules;
    expect(third?.parts.map(({ from }) => from)).toEqual(["transformer-current", "device-at-end"]);
    expect(third?.amperes).toBe(225);
  });

  it("comes with what to know", () => {
    const codes = (change: object, conductors: object = {}) =>
      codesOf(
        transformerSecondary({
          ...secondary,
          ...change,
          conductors: { ...secondary.conductors, ...conductors },
        } as never),
      );
    const first = ["never-next-rating", "protect-from-damage"];
    const last = "terminations-by-rating";
    expect(codes({})).toEqual([...first, last]);
    expect(codes({}, { load: 0 })).toEqual([...first, "load-not-given", last]);
    expect(codes({}, { place: "outside" })).toEqual([...first, "device-beside-disconnect", last]);
    expect(codes({ primaryDevice: undefined })).toEqual([...first, "largest-device-assumed", last]);
    expect(codes({}, { endsIn: undefined })).toEqual([...first, "largest-device-assumed", last]);
    expect(codes({ primaryDevice: 250 })).toEqual([
      ...[...first, "device-above-permitted"],
      ...["thermally-protected-transformer", last],
    ]);
    expect(codes({}, { endsIn: { device: 400 } })).toEqual([...first, "device-above-permitted", last]);
    expect(codes({ protection: "primary-only" })).toEqual([...first, last]);
    expect(codes({}, { feet: 30 })).toEqual(["never-next-rating", "no-rule-holds"]);
    const nowhere = { feet: 30, place: "outside", endsIn: { devices: [30, 30], equipment: 100 } };
    expect(codes({}, nowhere)).toEqual(["never-next-rating", "no-rule-holds"]);
    const delta = { transformer: { ...transformer, windings: "delta-delta-three-wire" } };
    expect(codes(delta, { feet: 80 })).toEqual(["never-next-rating", last]);
    const grouped = (devices: number) => ({
      ...{ endsIn: { devices: Array(devices).fill(30), equipment: 250 }, feet: 10 },
    });
    expect(codes({}, grouped(6))).toEqual([...first, last]);
    expect(codes({}, grouped(7))).toEqual([...first, "grouped-devices-as-one", last]);
  });

  it("says where a device is more than the table permits", () => {
    const codes = (primaryDevice: number) =>
      transformerSecondary({ ...secondary, primaryDevice }).cautions.map(({ code }) => code);
    expect(codes(225)).not.toContain("device-above-permitted");
    expect(codes(250)).toContain("device-above-permitted");
  });
});
