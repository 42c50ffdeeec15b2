import type { Json } from "../state/data.js";

/** Invented. The conductor to the water pipe that was found is short. */
export const dwelling: Json = {
  format: 1,
  title: "House on the hill",
  code: { year: "2020" },
  materials: {
    bondingJumpers: "copper",
    groundedConductors: "aluminum",
    electrodeConductors: "copper",
    equipmentGrounding: "copper",
  },
  services: [
    {
      id: "S1",
      grounding: "solidly-grounded",
      connection: "single-phase-three-wire",
      utility: { id: "pole transformer", outdoorTransformer: true },
      boxes: [{ id: "meter", kind: "meter", bondedBy: "grounded-conductor" }],
      runs: [
        {
          id: "drop",
          from: "pole transformer",
          to: "meter",
          supply: { sets: [{ count: 1, size: "4/0 AWG", material: "aluminum" }] },
          raceways: { count: 1, kind: "nonmetallic" },
        },
        {
          id: "entrance",
          from: "meter",
          to: "main panel",
          supply: { sets: [{ count: 1, size: "4/0 AWG", material: "aluminum" }] },
          raceways: { count: 1, kind: "nonmetallic" },
        },
      ],
      disconnects: [{ id: "main panel", designation: "service-disconnect", amperes: 200 }],
      housing: "separate-enclosures",
      electrodes: [
        { electrode: "water pipe", from: "main panel" },
        { id: "rod 1", kind: "rod", from: "main panel" },
        { id: "rod 2", kind: "rod", from: "rod 1" },
      ],
    },
  ],
  circuits: [
    { id: "range", from: "main panel", to: "range outlet", device: { amperes: 50 }, wiring: "raceway" },
  ],
  piping: [{ id: "water pipe", of: "S1", kind: "water", isElectrode: true }],
  installed: {
    found: [
      { role: "main-bonding-jumper", of: "main panel", size: "4 AWG", material: "copper" },
      { role: "grounding-electrode-conductor", of: "water pipe", size: "6 AWG", material: "copper" },
    ],
  },
};
