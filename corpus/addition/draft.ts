import type { Role } from "../../src/index.js";
import type { Standing } from "../runner/model.js";
import type { Documents } from "../runner/validate.js";
import { type SchemaNode, skeletonOf } from "./skeleton.js";

interface ChecksSchema {
  readonly $defs: Readonly<Record<string, SchemaNode>>;
  readonly allOf: readonly {
    readonly if: {
      readonly properties: { readonly role: { readonly const?: string; readonly enum?: readonly string[] } };
    };
    readonly then: unknown;
  }[];
}

/** What a draft is for. */
export interface DraftOf {
  readonly role: Role;
  readonly source: string;
  readonly standing: Standing;
}

/** An addition that still has to be filled in, with a place for the source if the register does not have it. */
export function draftOf({ role, source, standing }: DraftOf, documents: Documents): object {
  const schema = documents.checksSchema as ChecksSchema;
  const register = documents.sourcesSchema as { readonly additionalProperties: SchemaNode };
  const known = Object.hasOwn(documents.sources as object, source);
  return {
    role,
    source,
    // The register has null for what is not known, so that null is where a draft begins.
    ...(known
      ? {}
      : {
          register: {
            ...(skeletonOf(register.additionalProperties, {}) as object),
            url: null,
            date: null,
            copies: null,
          },
        }),
    check: {
      id: "",
      stated: null,
      holds: [],
      flags: [],
      input: skeletonOf(inputOf(schema, role), schema.$defs),
      expect: { size: "" },
      locator: "",
      standing,
      ...(standing === "disputed" ? { dispute: disputeIn(schema) } : {}),
    },
  };
}

/** The definition that the schema's condition for a role points at. */
function inputOf({ allOf }: ChecksSchema, role: Role): SchemaNode {
  const condition = allOf.find(({ if: { properties } }) =>
    (properties.role.enum ?? [properties.role.const]).includes(role),
  );
  const ref = /"input":(\{"\$ref":"[^"]+"\})/.exec(JSON.stringify(condition?.then) ?? "")?.[1];
  if (ref === undefined) throw new Error(`the schema of the checks has no input for ${role}`);
  return JSON.parse(ref) as SchemaNode;
}

function disputeIn({ $defs }: ChecksSchema): object {
  const mistakes = ($defs["mistake"]?.oneOf ?? []).map((one) => one.const);
  return {
    section: "",
    mistake: [...mistakes, "null"].join("|"),
    readings: ["", ""],
    reason: "",
    expectByText: { size: "" },
  };
}
