import { editionYears, feederTap, transformerSecondary } from "bondmil";
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
      amperes: (200 * 480) / 624,
    });
    expect(
      transformerSecondary({ ...secondary, feederTap: { ...feederTap, primaryFeet: 6 } }).rules[4]?.unmet,
    ).toEqual(["at-most-25-feet"]);
  });

  it("says where a device is more than the table permits", () => {
    const codes = (primaryDevice: number) =>
      transformerSecondary({ ...secondary, primaryDevice }).cautions.map(({ code }) => code);
    expect(codes(225)).not.toContain("device-above-permitted");
    expect(codes(250)).toContain("device-above-permitted");
  });
});
