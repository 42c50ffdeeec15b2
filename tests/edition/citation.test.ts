import { describe, expect, it } from "vitest";
import {
  type Citation,
  type CitedEvidence,
  citeAsAmended,
  distinctCitations,
  inferred,
  restingOn,
} from "../../src/edition/citation.js";

const cite = (section: string, evidence: CitedEvidence = "single"): Citation => ({ section, evidence });

describe("a citation", () => {
  it("of what no text gives is known from memory, and of an amendment as its author vouches", () => {
    expect(inferred(cite("250.30", "confirmed"))).toEqual(cite("250.30", "memory"));
    expect(inferred(cite("Example County, 1", "vouched"))).toEqual(cite("Example County, 1", "vouched"));
  });

  it("is as sure as the weakest that it rests on, unless an author vouches for it", () => {
    const others = [cite("250.66", "carried"), cite("250.66", "confirmed")];
    expect(restingOn(cite("250.30"), others)).toEqual(cite("250.30", "carried"));
    expect(restingOn(cite("250.30", "memory"), others)).toEqual(cite("250.30", "memory"));
    expect(restingOn(cite("250.30"), [])).toEqual(cite("250.30"));
    expect(restingOn(cite("Example County, 1", "vouched"), others)).toEqual(
      cite("Example County, 1", "vouched"),
    );
  });

  it("of an amended row names the amendment beside the table", () => {
    expect(citeAsAmended(cite("Table 250.66"), "Example County, 1")).toEqual(
      cite("Table 250.66 as amended by Example County, 1"),
    );
    expect(citeAsAmended(cite("Table 250.66"), undefined)).toEqual(cite("Table 250.66"));
  });

  it("stands once among others, where it says the same", () => {
    const all = [cite("250.66"), cite("250.66", "memory"), cite("250.30"), cite("250.66")];
    expect(distinctCitations(all)).toEqual([cite("250.66"), cite("250.66", "memory"), cite("250.30")]);
  });
});
