import {
  type AnyRole,
  compare,
  comparisonDocument,
  editionYears,
  type Input,
  render,
  roleIds,
  roles,
  size,
} from "bondmil";
import { describe, expect, it } from "vitest";
import { entriesOf } from "../../corpus/tools/runner/model.js";
import { readDocuments } from "../../corpus/tools/runner/read.js";
import { validate } from "../../corpus/tools/runner/validate.js";
import { plainText } from "../../src/report/render/markdown.js";
import { cautionWords } from "../../src/report/words/caution-words.js";

const { corpus } = validate(readDocuments());
const asked =
  corpus === null
    ? []
    : entriesOf(corpus).map(({ role, check }) => ({ role, id: check.id, input: check.input }));
const compared = asked.map(({ role: name, id, input: given }) => {
  const role: AnyRole = roles[name];
  const input = given as Omit<Input<AnyRole>, "code">;
  return { role, id, input, editions: compare(role, { over: "editions", input }) };
});

describe("every input of the corpus, in all editions", () => {
  it("is there for every role", () => {
    expect(new Set(compared.map(({ role }) => role.id))).toEqual(new Set(roleIds));
    expect(compared.length).toBeGreaterThan(250);
  });

  it("has the single results", () => {
    for (const { role, input, editions } of compared) {
      expect(editions.map(({ edition }) => edition)).toEqual(editionYears);
      for (const { edition, result } of editions) {
        if (result !== undefined)
          expect(result).toStrictEqual(size(role, { ...input, code: { year: edition } }));
      }
    }
  });

  it("says why an area changes, and never only that it does", () => {
    const silent = compared.flatMap(({ id, editions }) =>
      editions.flatMap(({ edition, effect, changes }) => {
        if (effect === "first" || effect === "same") return [];
        const reasons = changes.filter(
          ({ kind, what }) =>
            ["value", "policy", "reading"].includes(kind) && what !== "required-area" && what !== "reading",
        );
        return reasons.length > 0 ? [] : [`${id} ${edition}`];
      }),
    );
    expect(silent).toEqual([]);
    expect(
      compared.flatMap(({ editions }) => editions).filter(({ effect }) => effect === "larger").length,
    ).toBeGreaterThan(5);
  });

  it("can be written, with every change, every step and every caution", () => {
    for (const { id, editions } of compared) {
      const text = render(comparisonDocument(editions, { title: id }), { as: "markdown" });
      const bullets = text.split("\n## Each edition in full")[0]?.match(/^- /gm) ?? [];
      const changes = editions.slice(1).flatMap((one) => one.changes);
      expect(bullets).toHaveLength(changes.length);
      const steps = editions.flatMap(({ result }) => result?.steps ?? []);
      for (const { citation } of steps) expect(text).toContain(citation.section);
      for (const { code } of editions.flatMap(({ result }) => result?.cautions ?? []))
        expect(text).toContain(plainText(cautionWords[code]));
    }
  });

  it("has under every open reading what its result says that it would have", () => {
    let open = 0;
    for (const { role, input, editions } of compared) {
      for (const { edition, result } of editions) {
        if (result === undefined) continue;
        const { otherwise } = compare(role, {
          over: "readings",
          input: { ...input, code: { year: edition } },
        });
        const said = result.readings.flatMap((one) =>
          one.otherwise.map((other) => [one.id, one.chosen, other.alternative, other.requiredArea]),
        );
        open += said.length;
        expect(
          otherwise.map((one) => [one.reading, one.chosen, one.alternative, one.result.requiredArea]),
        ).toEqual(said);
      }
    }
    expect(open).toBeGreaterThan(50);
  });
});
