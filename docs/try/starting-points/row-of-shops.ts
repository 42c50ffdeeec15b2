import type { Json } from "../state/data.js";

const tenants = [
  ["bakery", "3/0 AWG", 200],
  ["cobbler", "1 AWG", 125],
  ["florist", "3 AWG", 100],
  ["laundry", "4/0 AWG", 225],
] as const;

/** Invented. The single rod needs a further electrode, so that something is not permitted from the start. */
export const rowOfShops: Json = {
  format: 1,
  title: "Row of shops",
  code: { year: "2023" },
  materials: {
    bondingJumpers: "copper",
    groundedConductors: "copper",
    electrodeConductors: "copper",
    equipmentGrounding: "copper",
  },
  services: [
    {
      id: "S1",
      grounding: "solidly-grounded",
      connection: "three-phase-wye",
      utility: { id: "pad transformer", outdoorTransformer: true },
      boxes: [{ id: "gutter", kind: "gutter", bondedBy: "jumper" }],
      runs: [
        {
          id: "lateral",
          from: "pad transformer",
          to: "gutter",
          supply: { sets: [{ count: 2, size: "350 kcmil", material: "copper" }] },
          raceways: { count: 2, kind: "nonmetallic" },
          lengthFeet: 60,
        },
        ...tenants.map(([id, size]) => ({
          id: `to ${id}`,
          from: "gutter",
          to: id,
          supply: { sets: [{ count: 1, size, material: "copper" }] },
          raceways: { count: 1, kind: "nonflexible-metal" },
          racewayJumpers: "fittings-instead",
        })),
      ],
      disconnects: tenants.map(([id, , amperes]) => ({ id, designation: "service-disconnect", amperes })),
      housing: "separate-enclosures",
      commonElectrodeConductor: { id: "ground bus" },
      electrodes: [{ id: "rod", kind: "rod", from: "ground bus" }],
    },
  ],
  circuits: [
    {
      id: "oven feeder",
      from: "bakery",
      to: "oven panel",
      device: { amperes: 100 },
      conductors: { sets: [{ count: 1, size: "3 AWG", material: "copper" }] },
      wiring: "raceway",
    },
  ],
  structuralMetal: [{ id: "steel frame", of: "S1" }],
};
