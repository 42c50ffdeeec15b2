import type { InstallationInCode, WantedJumper } from "./schedule.js";

/** The bonding jumpers to be sized: of the installation's material, or as a question without a whole document says. */
export function wantedJumper({ installation, wanted }: InstallationInCode): WantedJumper {
  return wanted ?? { conductor: { material: installation.materials.bondingJumpers } };
}

/** The same jumpers in the form in which the document draws one of them. */
export function inForm(wanted: WantedJumper, form: "wire" | "bus" | undefined): WantedJumper {
  return form === undefined ? wanted : { ...wanted, conductor: { ...wanted.conductor, form } };
}
