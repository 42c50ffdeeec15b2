import type { Json } from "./data.js";
import { fieldOf, type Schema } from "./fields.js";
import { freeName, idsIn } from "./references.js";

/** How the names of new things begin, by the member that they stand in. */
const stems: Readonly<Record<string, string>> = {
  services: "S",
  utility: "utility ",
  derivedSystems: "system ",
  source: "T",
  runs: "R",
  disconnects: "D",
  boxes: "box ",
  boxesWithoutSupply: "box ",
  buses: "bus ",
  electrodes: "E",
  electrodesNotConnected: "E",
  circuits: "F",
  buildings: "building ",
  generators: "G",
  transferSwitches: "ATS",
  piping: "pipe ",
  structuralMetal: "frame ",
  existing: "panel ",
  sharedRaceways: "raceway ",
  commonElectrodeConductor: "ground bus ",
};

/**
 * A new value for a schema. It has names and what can be only one way; what somebody has to know is left out, so that the library says
 * that it is missing.
 */
export function freshFor(schema: Schema, name: string, document: Json): Json | undefined {
  const taken = new Set(idsIn(document));
  return fresh(schema, name, taken, true);
}

function fresh(schema: Schema, name: string, taken: Set<string>, isNeeded: boolean): Json | undefined {
  const field = fieldOf(schema);
  switch (field.kind) {
    case "fixed":
      return field.value;
    case "id": {
      const id = freeName(stems[name] ?? "part ", taken);
      taken.add(id);
      return id;
    }
    case "nothing":
      return null;
    case "pairs":
      return {};
    case "list": {
      const item = fresh(field.item, name, taken, false);
      return item === undefined ? [] : [item];
    }
    case "variants":
      return fresh(field.of[0] ?? {}, name, taken, isNeeded);
    case "object":
      return Object.fromEntries(
        field.members
          .filter(({ isRequired }) => isRequired)
          .flatMap((member): readonly (readonly [string, Json])[] => {
            const inner = member.name === "id" ? name : member.name;
            const value = fresh(member.schema, inner, taken, false);
            return value === undefined ? [] : [[member.name, value]];
          }),
      );
    default:
      return undefined;
  }
}
