import type { Json } from "../state/data.js";

/** Invented. Nothing is sized until one of the candidates is taken. */
export const loadToChooseBy: Json = {
  format: 1,
  title: "Boat house",
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
      runs: [
        {
          id: "lateral",
          from: "pad transformer",
          to: "main",
          supply: {
            toChoose: {
              load: { continuous: 120, other: 180 },
              device: 400,
              conductor: { insulation: "XHHW-2", materials: ["copper", "aluminum"] },
              place: { location: "wet" },
              limits: { mostSets: 2 },
            },
          },
          raceways: { count: 1, kind: "nonmetallic" },
        },
      ],
      disconnects: [{ id: "main", designation: "service-disconnect", amperes: 400 }],
      housing: "separate-enclosures",
      electrodes: [{ id: "footing", kind: "concrete-encased", from: "main" }],
    },
  ],
};
