import type {
  SufficientConductors,
  VoltageDrop,
  VoltageDropCautionCode,
} from "../../engineering/voltage-drop/voltage-drop.js";
import { evidenceFact } from "./facts.js";
import type { Statement, Told } from "./told.js";

/** What each caution on a voltage drop says. */
export const voltageDropCautionWords: Readonly<Record<VoltageDropCautionCode, string>> = {
  "drop-is-no-rule":
    "The code has informational notes on voltage drop, no rule for most circuits; the permitted drop is the designer's.",
  "ampacity-not-asked": "Ampacity is not asked here: the conductors given are taken to have it.",
  "reactance-left-out":
    "Direct-current resistance leaves out reactance and skin effect, which count the more the larger the conductor is.",
  "grounding-conductor-increases":
    "Where the ungrounded conductors are increased so, the equipment grounding conductor is increased in proportion (250.122(B)).",
};

const connections = {
  "three-phase": "three-phase",
  "single-phase": "single-phase",
  direct: "direct current",
} as const;

/** The drop along a run, and the conductors that keep a permitted one. */
export function tellVoltageDrop(result: VoltageDrop): Told {
  const { edition, current, circuitVolts, amperes, feet, conductors, evidence, cautions, sufficient } =
    result;
  const { sets, size, material } = conductors;
  const wires = `${sets} x ${size} ${material}`;
  const { permittedPercent } = result;
  return {
    name: `Voltage drop of ${wires}`,
    editions: [edition],
    facts: [evidenceFact(evidence)],
    statements: [
      said("load", "load", `${amperes} A at ${circuitVolts} V, ${connections[current]}, over ${feet} ft`),
      impedanceOf(result),
      said("outcome", wires, dropWords(result)),
      ...sufficient.map((one) =>
        said("sufficient", `at most ${permittedPercent} percent`, sufficientWords(one, material)),
      ),
    ],
    beside: [],
    readings: [],
    cautions: cautions.map((code) => ({ code, words: voltageDropCautionWords[code] })),
    row: { current, circuitVolts, amperes, feet },
  };
}

function said(step: string, about: string, words: string): Statement {
  return { step, about, words, isWhole: false, area: null, section: null, evidence: null };
}

function impedanceOf({ impedance }: VoltageDrop): Statement {
  const { resistance, reactance, effective, citation } = impedance;
  const parts =
    reactance === null
      ? `resistance ${round(resistance)}`
      : `resistance ${round(resistance)}, reactance ${round(reactance)}, effective ${round(effective)}`;
  return {
    ...said("impedance", "impedance", `${parts} ohms per 1000 ft of one conductor`),
    section: citation.section,
    evidence: citation.evidence,
  };
}

function sufficientWords(one: SufficientConductors, material: string): string {
  return `${one.sets} x ${one.size} ${material}, ${dropWords(one)}${one.increased ? ", an increase" : ""}`;
}

function dropWords({ volts, percent }: { readonly volts: number; readonly percent: number }): string {
  return `${round(volts)} V, ${percent.toFixed(2)} percent`;
}

function round(value: number): string {
  return value.toLocaleString("en-US", { maximumSignificantDigits: 4 });
}
