/**
 * The main job on an invented drawing: a pottery with a service in three enclosures behind a wireway, and a transformer for
 * its kiln hall. Prints every jumper with its size, place and reason, under the edition named here.
 */
import { arrangeSeparatelyDerivedSystem, arrangeService, writeArrangements } from "bondmil";

const code = { year: "2023" } as const;

const service = arrangeService({
  code,
  wireway: { id: "W1", supply: { sets: [{ count: 3, size: "500 kcmil", material: "aluminum" }] } },
  enclosures: [
    { id: "D1 kilns", supply: { sets: [{ count: 2, size: "500 kcmil", material: "aluminum" }] } },
    { id: "D2 glazing", supply: { sets: [{ count: 1, size: "250 kcmil", material: "aluminum" }] } },
    { id: "D3 shop", supply: { sets: [{ count: 1, size: "2 AWG", material: "copper" }] } },
  ],
  jumper: { material: "copper" },
});

const kilnHall = arrangeSeparatelyDerivedSystem({
  code,
  source: { id: "T1", outdoors: false },
  enclosures: [
    { id: "K1", supply: { sets: [{ count: 3, size: "600 kcmil", material: "copper" }] } },
    { id: "K2", supply: { sets: [{ count: 1, size: "350 kcmil", material: "copper" }] } },
  ],
  jumper: { material: "copper", form: "bus" },
});

console.log(writeArrangements(service, "Pottery, service"));
console.log(`\n${writeArrangements(kilnHall, "Pottery, kiln hall transformer")}`);
