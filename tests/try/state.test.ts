import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { startingPoints } from "../../docs/try/starting-points/starting-points.js";
import { answerTo, drawingApart, issuesByPath, summaryOf } from "../../docs/try/state/answer.js";
import { candidatesIn, withCandidate } from "../../docs/try/state/candidates.js";
import { type Json, valueAt, withItem, without, withValue } from "../../docs/try/state/data.js";
import { fieldOf, installation, type Schema, schemaAt, variantOf } from "../../docs/try/state/fields.js";
import { foundLines, withFound } from "../../docs/try/state/found.js";
import { freshFor } from "../../docs/try/state/fresh.js";
import { begin, changed, redone, undone } from "../../docs/try/state/history.js";
import { carriedBy, fragmentOf } from "../../docs/try/state/link.js";
import { copyOf, idsIn, withName } from "../../docs/try/state/references.js";

function named(part: string): Json {
  const found = startingPoints.find(({ name }) => name.includes(part));
  if (found === undefined) throw new Error(`there is no starting point "${part}"`);
  return found.document;
}

const json = fc.jsonValue({ maxDepth: 3 }) as fc.Arbitrary<Json>;
const keys = fc.array(fc.oneof(fc.constantFrom("a", "b", "__proto__", "constructor"), fc.nat(3)), {
  minLength: 1,
  maxLength: 4,
});

describe("values at places", () => {
  it("what is put at a place is found there, and the rest is as it was", () => {
    fc.assert(
      fc.property(json, keys, json, (value, place, wanted) => {
        const before = JSON.stringify(value);
        const [last] = place.slice(-1);
        const changedValue = withValue(value, place, wanted);
        expect(JSON.stringify(value)).toBe(before);
        // A place beyond the end of a list is the next one.
        if (place.every((key) => typeof key === "string"))
          expect(valueAt(changedValue, place)).toEqual(wanted);
        if (typeof last === "string" && place.every((key) => typeof key === "string"))
          expect(valueAt(without(changedValue, place), place)).toBeUndefined();
      }),
    );
    expect(({} as Record<string, unknown>)["polluted"]).toBeUndefined();
  });

  it("items are added and removed where they are said to be", () => {
    const list = { of: [1, 2, 3] };
    expect(withItem(list, ["of"], 9, 0)).toEqual({ of: [1, 9, 2, 3] });
    expect(withItem({}, ["of"], 9)).toEqual({ of: [9] });
    expect(without(list, ["of", 1])).toEqual({ of: [1, 3] });
    expect(without(list, ["none"])).toBe(list);
  });
});

describe("history", () => {
  it("takes back and forth whatever was done, typing in one field as one step", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.nat(), fc.constantFrom("a", "b"))), (steps) => {
        const done = steps.reduce((so, [value, place]) => changed(so, value, place), begin(-1));
        let back = done;
        for (let i = 0; i <= steps.length; i++) back = undone(back);
        expect(back.now).toBe(-1);
        for (let i = 0; i <= steps.length; i++) back = redone(back);
        expect(back.now).toBe(done.now);
      }),
    );
    const typed = ["1", "12", "120"].reduce((so, text) => changed(so, text, "amperes"), begin(""));
    expect(undone(typed).now).toBe("");
  });
});

describe("fields", () => {
  it("there is a field for everything in every installation to begin with", () => {
    const visit = (document: Json, at: readonly (string | number)[]): void => {
      const value = valueAt(document, at);
      const schema = schemaAt(document, at);
      expect(schema, at.join(".")).toBeDefined();
      expect(fieldOf(schema as Schema).kind).toBeDefined();
      if (typeof value === "object" && value !== null)
        for (const key of Object.keys(value))
          visit(document, [...at, Array.isArray(value) ? Number(key) : key]);
    };
    for (const { document } of startingPoints) visit(document, []);
  });

  it("knows names, references and readings apart", () => {
    const run = schemaAt(named("Row of shops"), ["services", 0, "runs", 0]) as Schema;
    const kinds = Object.fromEntries(
      (
        fieldOf(run) as { readonly members: readonly { readonly name: string; readonly schema: Schema }[] }
      ).members.map(({ name, schema }) => [name, fieldOf(schema).kind]),
    );
    expect(kinds).toMatchObject({ id: "id", from: "reference", to: "reference", lengthFeet: "number" });
    expect(kinds).toMatchObject({ racewayJumpers: "choice", supply: "variants" });
    expect(fieldOf(schemaAt({}, ["code"]) as Schema).kind).toBe("object");
  });

  it("finds the variant that a value is of", () => {
    const variants = (fieldOf(schemaAt({}, ["piping", 0]) as Schema) as { readonly of: readonly Schema[] })
      .of;
    const kinds = ["water", "water-of-occupancy", "other"];
    expect(kinds.map((kind) => variantOf(variants, { id: "p", kind }))).toEqual([0, 1, 2]);
  });

  it("makes new things with names that nothing has, and leaves open what somebody has to know", () => {
    const fresh = freshFor(schemaAt({}, ["services", 0]) as Schema, "services", named("Row of shops"));
    expect(fresh).toEqual({
      id: "S2",
      utility: { id: "utility 1" },
      runs: [{ id: "R1", supply: { sets: [{}] } }],
      disconnects: [{ id: "D1" }],
    });
    expect(freshFor(installation, "installation", {})).toMatchObject({ format: 1 });
  });
});

describe("names", () => {
  it("go along to whatever goes there", () => {
    const document = withName(named("Row of shops"), ["services", 0, "disconnects", 0, "id"], "bread");
    expect(valueAt(document, ["services", 0, "runs", 1, "to"])).toBe("bread");
    expect(valueAt(document, ["circuits", 0, "from"])).toBe("bread");
    expect(answerTo(document).kind).toBe("sized");
  });

  it("do not merge two things into one", () => {
    const document = withName(named("Row of shops"), ["services", 0, "disconnects", 0, "id"], "laundry");
    expect(valueAt(document, ["services", 0, "runs", 1, "to"])).toBe("bakery");
    const answer = answerTo(document);
    expect(answer.kind === "issues" && answer.issues.map(({ code }) => code)).toContain("duplicate-id");
  });

  it("of a copy are its own, and what goes to it inside goes to the copy", () => {
    const document = named("Row of shops");
    const copy = copyOf(valueAt(document, ["services", 0]) as Json, document);
    const ids = idsIn(copy);
    expect(ids.filter((id) => idsIn(document).includes(id))).toEqual([]);
    const both = withItem(document, ["services"], copy);
    const answer = answerTo(both);
    expect(answer.kind === "issues" ? answer.issues : answer.kind).toBe("sized");
  });
});

describe("answers", () => {
  it("are given for every installation to begin with that has its conductors", () => {
    expect(startingPoints.map(({ document }) => summaryOf(answerTo(document)))).toEqual([
      "2023 edition: 17 conductors sized, 1 violation.",
      "2020 edition: 7 conductors sized, no violation.",
      "2023 edition: 4 conductors sized, no violation.",
      "No sizes: one thing is missing or wrong.",
      "2023 edition: 0 conductors sized, no violation.",
    ]);
  });

  it("say where each issue is, whatever a document holds", () => {
    fc.assert(
      fc.property(json, (value) => {
        const answer = answerTo(value);
        expect(answer.kind === "issues" && issuesByPath(answer).size).toBeGreaterThan(0);
      }),
    );
    const broken = withValue(named("Dwelling"), ["services", 0, "disconnects", 0, "amperes"], "many");
    expect([...issuesByPath(answerTo(broken)).keys()]).toEqual(["services.[0].disconnects.[0].amperes"]);
  });

  it("follow the candidate that is taken", () => {
    const document = named("Boat house");
    const candidates = candidatesIn(document);
    if (candidates.kind === "none") throw new Error(candidates.why);
    const [open] = candidates.runs;
    const taken = open?.offered.find(({ sets }) => sets === 2);
    if (open === undefined || taken === undefined) throw new Error("nothing is offered");
    const chosen = withCandidate(document, open.keys, taken);
    expect(valueAt(chosen, [...open.keys, "raceways", "count"])).toBe(2);
    expect(answerTo(chosen).kind).toBe("sized");
  });
});

describe("the drawing", () => {
  it("stands apart from the rest of the report, with its heading, and nothing is lost", () => {
    const answer = answerTo(named("Row of shops"));
    if (answer.kind !== "sized") throw new Error("there is no report");
    const { drawing, rest } = drawingApart(answer.report);
    expect(drawing[0]).toMatchObject({ kind: "heading", text: "Drawing" });
    expect(drawing.at(-1)?.kind).toBe("drawing");
    expect(rest.map(({ kind }) => kind)).not.toContain("drawing");
    expect(new Set([...drawing, ...rest])).toEqual(new Set(answer.report.parts));
    const blank = answerTo(named("Blank sheet"));
    if (blank.kind !== "sized") throw new Error("there is no report");
    expect(drawingApart(blank.report)).toEqual({ drawing: [], rest: blank.report.parts });
  });
});

describe("found conductors", () => {
  it("stand in the document and are taken out again", () => {
    const document = named("Transformer");
    const answer = answerTo(document);
    if (answer.kind !== "sized") throw new Error("there is no schedule");
    const [line] = foundLines(answer.schedule(), document);
    if (line === undefined) throw new Error("nothing is required");
    const seen = withFound(document, line, "4 AWG");
    expect(valueAt(seen, ["installed", "found", 0])).toEqual({
      role: "system-bonding-jumper",
      of: "T1",
      size: "4 AWG",
      material: "copper",
    });
    const [again] = foundLines(answer.schedule(), seen);
    if (again === undefined) throw new Error("nothing is required");
    expect(again.size).toBe("4 AWG");
    expect(withFound(seen, again, "")).toEqual(document);
  });

  it("are known by their conductor without the place where one end is", () => {
    const document = named("Dwelling");
    const answer = answerTo(document);
    if (answer.kind !== "sized") throw new Error("there is no schedule");
    const lines = foundLines(answer.schedule(), document).filter(({ size }) => size !== "");
    expect(lines.map(({ name, size }) => [name, size])).toEqual([
      ["main bonding jumper main panel", "4 AWG"],
      ["grounding electrode conductor water pipe from main panel", "6 AWG"],
    ]);
  });
});

describe("links", () => {
  it("carry any document, and only a document", async () => {
    await fc.assert(
      fc.asyncProperty(json, async (document) => {
        const plain = JSON.parse(JSON.stringify(document)) as Json;
        expect(await carriedBy(await fragmentOf(plain))).toEqual({ kind: "document", document: plain });
      }),
      { numRuns: 50 },
    );
    expect(await carriedBy("#part-2")).toEqual({ kind: "nothing" });
    expect(await carriedBy("#installation=%%%")).toEqual({ kind: "unreadable" });
  });

  it("refuse what unfolds to more than an installation", async () => {
    const fragment = await fragmentOf("0".repeat(3_000_000));
    expect(fragment.length).toBeLessThan(10_000);
    expect(await carriedBy(fragment)).toEqual({ kind: "unreadable" });
  });
});
