// Generated from tables/short-time-withstand.json by "npm run generate"; do not edit.
import type { WithstandFacts } from "../withstand-facts.js";

export const withstandFacts: WithstandFacts = {
  formula: { section: "Table 240.92(B)", evidence: "single" },
  sizes: { section: "Chapter 9 Table 8", evidence: "bracketed" },
  metals: {
    copper: { factor: 0.0297, offset: 234, highestFinal: 1083 },
    aluminum: { factor: 0.0125, offset: 228, highestFinal: 657 },
  },
  limits: {
    leastSeconds: 0.1,
    mostSeconds: 5,
    lowestInitial: -50,
    leastRise: 1,
    mostAmperes: 1000000,
    mostArea: 100000000,
  },
  crossCheck: {
    metal: "copper",
    circularMilsPerAmpere: 42.25,
    seconds: 5,
    initial: 75,
    final: 150,
    restsOn: "one-practitioner-source",
    evidence: "carried",
  },
};
