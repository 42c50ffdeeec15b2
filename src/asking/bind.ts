import { readCode } from "../edition/read-code.js";
import { InputError, type Issue } from "../input/input-error.js";
import { isRecord, member, readAll, refuse, refuseType, wholeOf } from "../input/reader.js";
import { checkRole } from "./check-role.js";
import type { Sizing } from "./size.js";

/**
 * Holds what stays the same in a loop, as the code and the conductor, and sizes by what changes. The results are those of {@link size}, with
 * every step; what is held is checked now and copied, so that a change of it afterwards changes no result.
 *
 * @param role - the value of a role
 * @param held - the members of its input that stay the same, the code among them
 * @returns a function of the other members; it throws an {@link InputError} listing everything that is wrong in them
 * @throws {@link InputError} listing everything that is wrong in what is held
 *
 * @example
 * ```ts
 * import { bind, mainBondingJumper } from "bondmil";
 * const jumper = bind(mainBondingJumper, { code: { year: "2023" }, conductor: { material: "copper" } });
 * const requiredFor = (count: number) =>
 *   jumper({ supply: { sets: [{ count, size: "600 kcmil", material: "copper" }] } }).requiredArea;
 * [1, 2, 3].map(requiredFor); // => [105600, 150000, 225000]
 * ```
 */
export function bind<Input extends { readonly code: unknown }, Result, Held extends keyof Input = never>(
  role: Sizing<Input, Result>,
  held: Pick<Input, Held | "code">,
): (rest: Omit<Input, Held | "code">) => Result {
  checkRole(role);
  const own = readHeld(role, held);
  return (rest) => {
    const input = isRecord(rest) ? together(own, rest) : rest;
    return role.decide(readAll<Input>(input, (at) => role.read(at)));
  };
}

/** What is held, copied, with the kept code, which is not checked again. What is still missing is given later. */
function readHeld<Input>(role: Sizing<Input, unknown>, held: unknown): Readonly<Record<string, unknown>> {
  const code = readAll(held, (at) => {
    if (!isRecord(at.value)) return refuseType(at, "an object with code", "give an object");
    const read = readCode(member(at, "code"));
    for (const issue of issuesOfHeld(role, at.value)) at.issues.push(issue);
    return read;
  });
  return { ...JSON.parse(JSON.stringify(held)), code };
}

/** What is wrong in the members beside the code that are there. */
function issuesOfHeld<Input>(role: Sizing<Input, unknown>, held: object): readonly Issue[] {
  const whole = wholeOf(held);
  role.read(whole);
  return whole.issues.filter(({ keys: [key] }) => key !== "code" && Object.hasOwn(held, key ?? ""));
}

/** What is held with the rest; what is held cannot be given again. */
function together(held: Readonly<Record<string, unknown>>, rest: Readonly<Record<string, unknown>>): object {
  const input: Record<string, unknown> = { ...rest };
  for (const key in held) {
    if (input[key] !== undefined) return refuseAgain(held, rest);
    input[key] = held[key];
  }
  return input;
}

function refuseAgain(held: object, rest: Readonly<Record<string, unknown>>): never {
  const at = wholeOf(rest);
  for (const key of Object.keys(held)) {
    if (rest[key] === undefined) continue;
    refuse(member(at, key), "unknown-key", "no member that is held", "leave it out");
  }
  throw new InputError(at.issues);
}
