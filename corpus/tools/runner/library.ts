import * as bondmil from "../../../src/index.js";
import type { Implementation } from "./answer.js";
import { implementationOf } from "./implementation-of.js";

/** The library of this repository, as an implementation. */
export const library: Implementation = implementationOf(bondmil);
