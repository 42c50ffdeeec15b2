import { sweptOf } from "../comparison/swept.js";
import { roleIds } from "../edition/tables/roles.generated.js";
import { isRecord, member, readAll, readObject, readOneOf } from "../input/reader.js";
import type { AnyRole } from "../roles/definition.js";
import { roles } from "../roles/register.generated.js";
import type { SizingResult } from "../rules/result.js";

/** Whether a line is the question of one conductor, not an installation. */
export function isQuestion(data: unknown): data is object {
  return isRecord(data) && Object.hasOwn(data, "role");
}

/** Sizes the conductor for which a line asks; whatever is wrong has its path in the line. */
export function resultOf(data: object): SizingResult {
  const decide = readAll(data, (at) => {
    readObject(at, ["role", "input"]);
    const id = readOneOf(member(at, "role"), roleIds);
    if (id === undefined) return undefined;
    const role: AnyRole = roles[id];
    const input = role.read(member(at, "input"));
    // It is not called where anything was refused.
    return () => role.decide(input as never) as SizingResult;
  });
  return decide();
}

/** A result as one flat row, with the columns of a sweep. */
export function rowOfResult(result: SizingResult): object {
  const { role, edition, material, cautions } = result;
  return {
    role,
    edition,
    material,
    ...sweptOf({ result }),
    cautions: cautions.map(({ code }) => code).join(" "),
  };
}
