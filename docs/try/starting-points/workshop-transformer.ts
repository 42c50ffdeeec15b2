import type { Json } from "../state/data.js";

/** Invented. The place of the system bonding jumper can be changed, and what follows from it is drawn. */
export const workshopTransformer: Json = {
  format: 1,
  title: "Workshop transformer",
  code: { year: "2023" },
  materials: {
    bondingJumpers: "copper",
    groundedConductors: "copper",
    electrodeConductors: "copper",
    equipmentGrounding: "copper",
  },
  existing: [{ id: "main switchboard" }],
  derivedSystems: [
    {
      id: "workshop",
      source: { id: "T1", kind: "transformer", outdoors: false },
      grounding: "solidly-grounded",
      connection: "three-phase-wye",
      jumperAt: "source",
      runs: [
        {
          id: "secondary",
          from: "T1",
          to: "panel A",
          supply: { sets: [{ count: 2, size: "4/0 AWG", material: "copper" }] },
          raceways: { count: 2, kind: "nonflexible-metal" },
          lengthFeet: 12,
        },
      ],
      disconnects: [{ id: "panel A", amperes: 400 }],
      electrodes: [{ electrode: "steel frame", from: "T1" }],
    },
  ],
  circuits: [
    { id: "primary", from: "main switchboard", to: "T1", device: { amperes: 200 }, wiring: "raceway" },
    {
      id: "lathe feeder",
      from: "panel A",
      to: "lathe",
      device: { amperes: 60 },
      conductors: { sets: [{ count: 1, size: "6 AWG", material: "copper" }] },
      wiring: "raceway",
    },
  ],
  structuralMetal: [{ id: "steel frame", of: "workshop" }],
};
