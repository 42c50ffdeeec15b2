import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

const read = (path: string) => readFileSync(new URL(`../../tables/${path}`, import.meta.url), "utf8");
const explained = new Set(
  [...read("README.md").matchAll(/^\| (?:`[^|]*)?\| `([a-z-]+)` \|/gm)].map(([, word]) => word),
);

describe.each(["policies", "rating-policies"])("the words of %s.csv", (name) => {
  const [head = [], ...rows] = read(`csv/${name}.csv`)
    .trim()
    .split("\r\n")
    .map((line) => line.split(","));
  const columns = ["sum", "cap", "otherMaterial", "increase", "shared"].filter((column) =>
    head.includes(column),
  );

  it.each(columns)("are explained in the README: %s", (column) => {
    const words = new Set(rows.map((row) => row[head.indexOf(column)]));
    expect([...words].filter((word) => !explained.has(word))).toEqual([]);
  });
});
