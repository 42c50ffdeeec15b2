import {
  type Code,
  type JumperInput,
  type Role,
  type SizingResult,
  sizeMainBondingJumper,
  sizeSupplySideBondingJumper,
  sizeSystemBondingJumper,
} from "../../src/index.js";
import type { CheckInput } from "./model.js";

/** The part of a result that a check speaks of. */
export type CheckedResult = Pick<SizingResult, "outcome" | "requiredArea" | "steps">;

/** What is put to the test: for each role, a function of the code and a check's input. */
export type Library = Readonly<Record<Role, (code: Code, input: CheckInput) => CheckedResult>>;

/** This library. The casts rest on the schema, which fixes the shape of each role's input. */
export const library: Library = {
  "main-bonding-jumper": (code, input) => sizeMainBondingJumper({ ...(input as JumperShape), code }),
  "system-bonding-jumper": (code, input) => sizeSystemBondingJumper({ ...(input as JumperShape), code }),
  "supply-side-bonding-jumper": (code, input) => {
    // The supply of a check is already that of one raceway or of all, so the size does not depend on the word.
    const { scope: _, ...jumper } = input;
    return sizeSupplySideBondingJumper({ ...(jumper as JumperShape), code });
  },
};

type JumperShape = Omit<JumperInput, "code">;
