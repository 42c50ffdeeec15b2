import { fingerprintOf, InputError, type Issue } from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";

/** The textbook form of 64-bit FNV-1a. */
function fnv1a(text: string): string {
  let hash = 0xcbf29ce484222325n;
  for (const byte of new TextEncoder().encode(text))
    hash = ((hash ^ BigInt(byte)) * 0x100000001b3n) & 0xffffffffffffffffn;
  return hash
    .toString(16)
    .padStart(16, "0")
    .replace(/(.{4})(?=.)/g, "$1-");
}

function issueOf(run: () => unknown): Issue {
  try {
    run();
  } catch (error) {
    if (error instanceof InputError && error.issues[0] !== undefined) return error.issues[0];
  }
  throw new Error("one issue was expected");
}

function pathOf(keys: readonly (string | number)[]): string {
  return keys
    .map((key) => (typeof key === "number" ? `[${key}]` : `.${key}`))
    .join("")
    .replace(/^\./, "");
}

describe("the fingerprint", () => {
  it("has the published value of the hash", () => {
    // FNV-1a of the one byte of the text 7, and of an empty object.
    expect(fingerprintOf(7)).toBe(fnv1a("7"));
    expect(fnv1a("a")).toBe("af63-dc4c-8601-ec8c");
    expect(fnv1a("foobar")).toBe("8594-4171-f739-67e8");
  });

  it("is the hash of JSON without spaces", () => {
    fc.assert(
      fc.property(fc.jsonValue(), (data) => {
        const plain = fingerprintOf(JSON.parse(JSON.stringify(data)));
        expect(fingerprintOf(data)).toBe(plain);
        if (typeof data !== "object" || data === null) expect(plain).toBe(fnv1a(JSON.stringify(data)));
      }),
    );
    expect(fingerprintOf({ b: [1, { d: "é", c: null }], a: 0.5 })).toBe(
      fnv1a('{"a":0.5,"b":[1,{"c":null,"d":"é"}]}'),
    );
  });

  it("is the same hash where the text is long, also of letters of several bytes", () => {
    const words = Array.from({ length: 40_000 }, (_, i) => `é${i}\ud83d\udd0c`);
    expect(fingerprintOf(words)).toBe(fnv1a(JSON.stringify(words)));
  });

  it("names what JSON cannot write by its place, whatever was written before", () => {
    const before = { deep: [[{ deeper: [1, 2, 3] }]] };
    const place = fc.array(fc.oneof(fc.stringMatching(/^[b-z]{1,4}$/), fc.nat({ max: 3 })), { maxLength: 6 });
    fc.assert(
      fc.property(place, fc.constantFrom(Number.NaN, new Date(0), 1n), (keys, strange) => {
        const data = keys.reduceRight<unknown>(
          (inner, key) =>
            typeof key === "string"
              ? { a: before, [key]: inner }
              : [...Array.from({ length: key }, () => before), inner],
          strange,
        );
        expect(issueOf(() => fingerprintOf(data))).toMatchObject({ path: pathOf(keys), code: "wrong-type" });
      }),
    );
  });

  it("refuses data that holds itself, and writes a hundred levels", () => {
    const own: unknown[] = [];
    own.push(own);
    expect(issueOf(() => fingerprintOf(own)).message).toContain("expected at most 100 levels");
    const nested = (levels: number): unknown => (levels === 0 ? 7 : [nested(levels - 1)]);
    expect(fingerprintOf(nested(100))).toBe(fnv1a(JSON.stringify(nested(100))));
    expect(() => fingerprintOf(nested(101))).toThrow(InputError);
  });

  it("does not depend on the order of keys, and tells lists apart", () => {
    expect(fingerprintOf({ a: 1, b: 2 })).toBe(fingerprintOf({ b: 2, a: 1, c: undefined }));
    expect(fingerprintOf([1, 2])).not.toBe(fingerprintOf([2, 1]));
  });
});
