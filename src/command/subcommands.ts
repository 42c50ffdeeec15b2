import type { SubcommandFact } from "./facts/fact.js";
import { ofConductor } from "./facts/of-conductor.js";
import { ofInstallation } from "./facts/of-installation.js";
import { ofLines } from "./facts/of-lines.js";

/** Every subcommand, in the order in which they are taught. */
export const subcommands: readonly SubcommandFact[] = [...ofInstallation, ...ofConductor, ...ofLines];
