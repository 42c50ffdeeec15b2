import { version } from "../../src/input/version.generated.js";

/** The same text without the version of the library, which moves with each release. */
export const unversioned = (text: string) => text.replaceAll(`bondmil ${version}`, "bondmil");
