import {
  areaOf,
  type ConductorColumn,
  editionYears,
  type Input,
  type mainBondingJumper,
  type StandardSize,
  size,
  standardSizeFor,
  standardSizes,
} from "bondmil";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Policy } from "../../src/edition/policy.js";
import type { SupplyAreaTable } from "../../src/edition/supply-area-table.js";
import { mainBondingJumperPolicies } from "../../src/edition/tables/policies.generated.js";
import { sizeBySupply } from "../../src/sizing/size-by-supply.js";
import { request, supplyOf } from "./arbitraries.js";
import { jumpers } from "./roles.js";

describe.each(jumpers)("limits: $id", (role) => {
  it("is met by a size on which the requirement lands exactly", () => {
    const large = standardSizes.filter((one) => areaOf(one) >= areaOf("3/0 AWG"));
    for (const year of editionYears) {
      for (const one of large) {
        for (const material of ["copper", "aluminum"] as const) {
          // Eight sets of a size: one eighth is that size.
          const supply = { sets: [{ count: 8, size: one, material }] };
          const result = size(role, { code: { year }, supply, conductor: { material } });
          const isAboveRows = 8 * areaOf(one) > (material === "copper" ? 1100000 : 1750000);
          if (!isAboveRows || result.governs === "floor") continue;
          expect(result.requiredArea).toBe(areaOf(one));
          expect(result.outcome).toEqual({ kind: "conductor", size: one, quantity: 1 });
        }
      }
    }
  });

  it("names the smallest standard size with the required area", () => {
    fc.assert(
      fc.property(request, (input: Input<typeof mainBondingJumper>) => {
        const { outcome, requiredArea } = size(role, {
          ...input,
          conductor: { material: input.conductor.material },
        });
        const [smallest] = standardSizes.filter((one) => areaOf(one) >= requiredArea);
        expect(outcome).toEqual(
          smallest === undefined
            ? { kind: "area-only", requiredArea, why: "above-largest-standard-size" }
            : { kind: "conductor", size: smallest, quantity: 1 },
        );
      }),
    );
  });

  it("says which kind of step decided, and such a step has the required area", () => {
    fc.assert(
      fc.property(request, (input: Input<typeof mainBondingJumper>) => {
        const { steps, governs, requiredArea } = size(role, input);
        expect(steps).toContainEqual(expect.objectContaining({ kind: governs, requiredArea }));
      }),
    );
  });

  it("asks for a bus of the same area as for a wire", () => {
    fc.assert(
      fc.property(request, (input: Input<typeof mainBondingJumper>) => {
        const { material } = input.conductor;
        const wire = size(role, { ...input, conductor: { material } });
        const bus = size(role, { ...input, conductor: { material, form: "bus" } });
        expect(bus.requiredArea).toBe(wire.requiredArea);
        expect(bus.governs).toBe(wire.governs);
        expect(bus.outcome).toEqual({ kind: "area-only", requiredArea: wire.requiredArea, why: "bus" });
      }),
    );
  });
});

/** No edition has a floor and a cap for one jumper, so the kernel is given a table and a policy that have both. */
describe("the kernel", () => {
  const base = mainBondingJumperPolicies.byEdition["2011"];
  const answers = fc.constantFrom<StandardSize>(...standardSizes);

  it("lets the floor win over the cap and the cap over the row", () => {
    const setting = fc.record({
      threshold: fc.integer({ min: 1, max: 2000000 }),
      row: answers,
      last: answers,
      supply: supplyOf({ materials: ["copper"] }),
      cap: fc.constantFrom<Policy["cap"]>("none", "set"),
      lastRowFloor: fc.boolean(),
    });
    fc.assert(
      fc.property(setting, ({ threshold, row, last, supply, cap, lastRowFloor }) => {
        const both = (value: number): Readonly<Record<ConductorColumn, number>> => ({
          copper: value,
          aluminum: value,
        });
        const table: SupplyAreaTable = {
          number: "a table",
          rows: [{ through: both(threshold), copper: row, aluminum: row }],
          threshold: both(threshold),
          last: { copper: last, aluminum: last },
        };
        const { steps, requiredArea, governs } = sizeBySupply({
          table,
          policy: { ...base, cap, lastRowFloor },
          supply,
          material: "copper",
          temperature: 75,
          assume: () => [],
        });
        const sum = steps.find(({ kind }) => kind === "sum");
        const installed = sum?.kind === "sum" ? sum.area : Number.NaN;
        const asked = installed <= threshold ? areaOf(row) : Math.ceil(installed / 8);
        const limit = cap === "set" ? installed : Number.POSITIVE_INFINITY;
        const floor = lastRowFloor && installed > threshold ? areaOf(last) : 0;
        expect(requiredArea).toBe(Math.max(floor, Math.min(limit, asked)));
        if (floor > Math.min(limit, asked)) expect(governs).toBe("floor");
        else if (limit < asked) expect(governs).toBe("cap");
        else expect(governs).toBe(installed <= threshold ? "row" : "one-eighth");
      }),
      { numRuns: 2000 },
    );
  });

  it("meets a floor above the cap at least once", () => {
    const table: SupplyAreaTable = {
      number: "a table",
      rows: [],
      threshold: { copper: 1000, aluminum: 1000 },
      last: { copper: "6 AWG", aluminum: "6 AWG" },
    };
    const { governs, requiredArea } = sizeBySupply({
      table,
      policy: { ...base, cap: "set", lastRowFloor: true },
      supply: { sets: [{ count: 1, size: "10 AWG", material: "copper" }] },
      material: "copper",
      temperature: 75,
      assume: () => [],
    });
    expect([governs, requiredArea, standardSizeFor(requiredArea)]).toEqual(["floor", 26240, "6 AWG"]);
  });
});
