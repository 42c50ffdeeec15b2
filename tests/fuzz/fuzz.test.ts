import { describe, expect, it } from "vitest";
import { callable, type Entry, entries, notCalled } from "./entries.js";
import { faultOf } from "./judge.js";
import { mutated } from "./mutate.js";
import { type Random, randomFrom } from "./random.js";

const count = Number(process.env["FUZZ_INPUTS"] ?? 6000);
const isLarge = count >= 100_000;
const seed = Number(process.env["FAST_CHECK_SEED"] ?? Date.now() % 2 ** 31);

const called = Object.entries(entries).filter(([, { slow }]) => isLarge || slow === undefined);
const total = called.reduce((sum, [, { weight = 1 }]) => sum + weight, 0);

describe("every exported function", () => {
  it("has an entry here, and every entry is exported", () => {
    expect([...Object.keys(entries), ...Object.keys(notCalled)].sort()).toEqual([...callable].sort());
  });

  it.each(called)("%s answers its right arguments with a result", (_, { call, args }) => {
    for (const one of args) {
      let answer: unknown;
      expect(() => {
        answer = call(...(one as never[]));
      }).not.toThrow();
      expect(faultOf(() => answer, [])).toBeNull();
    }
  });

  it(`gives a result or the one error for ${count} inputs with seed ${seed}`, {
    timeout: 24 * 3600_000,
  }, () => {
    const random = randomFrom(seed);
    const faults = new Map<string, string>();
    const began = performance.now();
    let slowest = { name: "", seconds: 0 };
    for (let i = 0; i < count; i += 1) {
      const [name, entry] = drawn(random);
      const args = mutated(random.pick(entry.args), random);
      const start = performance.now();
      const fault = faultOf(entry.call, args);
      const seconds = (performance.now() - start) / 1000;
      if (seconds > slowest.seconds) slowest = { name: `input ${i}, ${name}`, seconds };
      const known = `${name}: ${fault?.split("\n").slice(0, 2).join(" ")}`;
      if (fault !== null && !faults.has(known) && faults.size < 50)
        faults.set(known, `input ${i}: ${name}\n${fault}`);
    }
    const seconds = ((performance.now() - began) / 1000).toFixed(1);
    const longest = `the slowest ${slowest.seconds.toFixed(2)} s (${slowest.name})`;
    console.log(`fuzz: ${count} inputs, seed ${seed}, ${seconds} s, ${longest}`);
    expect([...faults.values()].join("\n\n")).toBe("");
  });
});

/** A function, as often as its weight has it. */
function drawn(random: Random): readonly [string, Entry] {
  let left = random.next() * total;
  for (const one of called) {
    left -= one[1].weight ?? 1;
    if (left <= 0) return one;
  }
  return called[0] as [string, Entry];
}
