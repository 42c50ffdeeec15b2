import type { Material } from "../conductor/material.js";
import { materials } from "../conductor/material.js";
import { parseSize } from "../conductor/parse.js";
import type { ConductorSize } from "../conductor/size.js";
import { InputError } from "../input/input-error.js";
import { failed, type Outcome } from "./failure.js";

/** A supply as an option gives it. */
interface GivenSupply {
  readonly supply: {
    readonly sets: readonly {
      readonly count: number;
      readonly size: ConductorSize;
      readonly material: Material;
    }[];
  };
}

const symbols: Readonly<Record<string, Material>> = {
  cu: "copper",
  al: "aluminum",
  ...Object.fromEntries(materials.map((one) => [one, one])),
};

/** A supply as schedules write it: `4 x 500 kcmil Al`, unlike sets with `+` between. */
export function supplyOf(text: string): Outcome<GivenSupply> {
  const sets: GivenSupply["supply"]["sets"][number][] = [];
  for (const one of text.split("+")) {
    const [, count = "", written = "", metal = ""] =
      /^\s*(?:(\d{1,9})\s*x\s*)?(.*?)\s+(copper-clad aluminum|\S+)\s*$/i.exec(one) ?? [];
    const material = symbols[metal.toLowerCase()];
    if (material === undefined || written === "") {
      return wrong(
        "--supply",
        text,
        "sets, size and material, such as '4 x 500 kcmil Al' or '1 x 4/0 AWG copper'",
      );
    }
    const size = sizeOf("--supply", written);
    if (size.failure !== undefined) return size;
    sets.push({ count: count === "" ? 1 : Number(count), size: size.value.size, material });
  }
  return { value: { supply: { sets } } };
}

/** A size as people write it. */
export function sizeOf(option: string, text: string): Outcome<{ readonly size: ConductorSize }> {
  try {
    return { value: { size: parseSize(text) } };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return failed("usage", `${option}: ${error.issues[0]?.message}.`);
  }
}

/** A number under the name that it has in a question. */
export function numberOf<Name extends string>(
  option: string,
  text: string,
  name: Name,
): Outcome<{ readonly [_ in Name]: number }> {
  return /^\d+(?:\.\d+)?$/.test(text)
    ? { value: { [name]: Number(text) } as { readonly [_ in Name]: number } }
    : wrong(option, text, "a number, such as 200");
}

function wrong(option: string, text: string, expected: string): Outcome<never> {
  return failed("usage", `${option} does not know "${text}": ${expected}.`);
}
