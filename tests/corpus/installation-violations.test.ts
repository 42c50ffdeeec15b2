import { violationCodes } from "bondmil";
import { describe, expect, it } from "vitest";
import { expectedOf, installationEntriesOf, type Statement } from "../../corpus/tools/installations/model.js";
import { readInstallationChecks, validateInstallationChecks } from "../../corpus/tools/installations/read.js";

const { files } = validateInstallationChecks(readInstallationChecks());
const expected = installationEntriesOf(files).flatMap(({ check }) => expectedOf(check));

describe.each(violationCodes)("%s", (code) => {
  const isSaid = (is: (statement: Statement) => boolean): boolean => expected.some(is);

  it("is somewhere found by an answer", () =>
    expect(isSaid((one) => "violation" in one && one.violation === code)).toBe(true));
  it("is somewhere not found by one", () =>
    expect(isSaid((one) => "noViolation" in one && one.noViolation === code)).toBe(true));
});
