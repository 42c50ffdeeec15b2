import { type Input, type mainBondingJumper, size } from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { request } from "./arbitraries.js";
import { jumpers } from "./roles.js";

function deepFreeze<T>(value: T): T {
  if (typeof value === "object" && value !== null) Object.values(Object.freeze(value)).forEach(deepFreeze);
  return value;
}

/** Every object and list inside a value. */
function objectsIn(value: unknown, found = new Set<object>()): ReadonlySet<object> {
  if (typeof value === "object" && value !== null && !found.has(value)) {
    found.add(value);
    for (const one of Object.values(value)) objectsIn(one, found);
  }
  return found;
}

function numbersIn(value: unknown): readonly number[] {
  if (typeof value === "number") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

describe.each(jumpers)("plain data: $id", (role) => {
  it("leaves its input as it was", () => {
    fc.assert(
      fc.property(request, (input: Input<typeof mainBondingJumper>) => {
        const before = JSON.stringify(input);
        size(role, deepFreeze(input));
        expect(JSON.stringify(input)).toBe(before);
      }),
    );
  });

  it("gives a result that survives JSON", () => {
    fc.assert(
      fc.property(request, (input: Input<typeof mainBondingJumper>) => {
        const result = size(role, input);
        expect(JSON.parse(JSON.stringify(result))).toStrictEqual(result);
      }),
    );
  });

  it("shares nothing with its input", () => {
    fc.assert(
      fc.property(request, (input: Input<typeof mainBondingJumper>) => {
        const given = objectsIn(input);
        expect([...objectsIn(size(role, input))].filter((one) => given.has(one))).toEqual([]);
      }),
    );
  });

  it("gives the same answer again", () => {
    fc.assert(
      fc.property(request, (input: Input<typeof mainBondingJumper>) => {
        expect(size(role, structuredClone(input))).toStrictEqual(size(role, input));
      }),
    );
  });

  it("counts in whole positive numbers only", () => {
    fc.assert(
      fc.property(request, (input: Input<typeof mainBondingJumper>) => {
        expect(numbersIn(size(role, input)).filter((one) => !(Number.isSafeInteger(one) && one > 0))).toEqual(
          [],
        );
      }),
    );
  });
});
