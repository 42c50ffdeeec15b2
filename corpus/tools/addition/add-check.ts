import { isDeepStrictEqual } from "node:util";
import { Ajv2020 } from "ajv/dist/2020.js";
import { type Role, roleIds } from "../../../src/index.js";
import type { Source } from "../../../tables/tools/source.js";
import {
  type Check,
  type CheckFile,
  type CheckGroup,
  type Corpus,
  entriesOf,
  type Flag,
} from "../runner/model.js";
import { shapeFaults } from "../runner/shape-faults.js";
import { type Documents, validate } from "../runner/validate.js";

/** A check to be added, with what it brings along. */
export interface Addition {
  readonly role: Role;
  readonly source: string;
  /** The source's entry in the register, where it is a new one. */
  readonly register?: Source;
  /** New flags of the role's file. */
  readonly flags?: Readonly<Record<string, Flag>>;
  /** An empty id is numbered after the source. */
  readonly check: Check;
}

/** Files as they are to be, by their path in the repository; or what is wrong, and then nothing changes. */
export type Added =
  | { readonly id: string; readonly files: ReadonlyMap<string, object> }
  | { readonly faults: readonly string[] };

const shape = new Ajv2020({ allErrors: true }).compile<Addition>({
  type: "object",
  additionalProperties: false,
  required: ["role", "source", "check"],
  properties: {
    role: { enum: roleIds },
    source: { type: "string", minLength: 1 },
    register: { type: "object" },
    flags: { type: "object" },
    check: { type: "object" },
  },
});

/** Puts a check into a valid corpus; the corpus with the check in it is validated as a whole. */
export function addCheck(documents: Documents, addition: unknown): Added {
  if (!shape(addition)) return { faults: shapeFaults("draft", shape.errors ?? [], addition) };
  const { corpus, faults } = validate(documents);
  if (corpus === null || faults.length > 0)
    return { faults: ["the corpus is not valid as it is:", ...faults] };
  const file = corpus.files.find(({ role }) => role === addition.role);
  if (file === undefined) return { faults: [`corpus/${addition.role}.json: there is no such file`] };
  const clashes = clashesOf(corpus, file, addition);
  if (clashes.length > 0) return { faults: clashes };

  const id = addition.check.id || nextId(corpus, addition.source);
  const { register } = addition;
  const name = `${addition.role}.json`;
  const changed = withCheck(file, addition, { ...addition.check, id });
  const sources =
    register === undefined ? corpus.sources : { ...corpus.sources, [addition.source]: register };
  const files = new Map([...documents.files, [name, changed]]);
  const after = validate({ ...documents, files, sources });
  if (after.faults.length > 0) return { faults: after.faults };
  return {
    id,
    files: new Map<string, object>([
      [`corpus/${name}`, changed],
      ...(register === undefined ? [] : [["tables/sources.json", sources] as const]),
    ]),
  };
}

/** What would be written over, or be there twice, without the schema seeing it. */
function clashesOf(corpus: Corpus, file: CheckFile, addition: Addition): readonly string[] {
  const { source, register, flags = {}, check } = addition;
  const twin = entriesOf({ files: [file] }).find(
    (entry) =>
      entry.source === source &&
      entry.check.locator === check.locator &&
      isDeepStrictEqual(entry.check.input, check.input),
  );
  return [
    ...(register !== undefined && Object.hasOwn(corpus.sources, source)
      ? [`register: ${source} is in the register already; leave the member out`]
      : []),
    ...(register === undefined && !Object.hasOwn(corpus.sources, source)
      ? [`source: ${source} is not in tables/sources.json; describe it in the member "register"`]
      : []),
    ...Object.keys(flags)
      .filter((flag) => Object.hasOwn(file.flags, flag))
      .map((flag) => `flags: ${flag} is explained already; leave it out`),
    ...(twin === undefined ? [] : [`check: ${twin.check.id} has the same source, locator and input`]),
  ];
}

/** The next number after a source; withdrawn ids count, because an id is never used again. */
function nextId(corpus: Corpus, source: string): string {
  const taken = new Set([
    ...entriesOf(corpus).map(({ check }) => check.id),
    ...corpus.files.flatMap((file) => Object.keys(file.withdrawn ?? {})),
  ]);
  let number = 1;
  while (taken.has(`${source}-${number}`)) number++;
  return `${source}-${number}`;
}

function withCheck(file: CheckFile, { source, flags }: Addition, check: Check): CheckFile {
  const isNew = !file.groups.some((group) => group.source === source);
  const groups: readonly CheckGroup[] = isNew
    ? [...file.groups, { source, checks: [check] }]
    : file.groups.map((group) =>
        group.source === source ? { ...group, checks: [...group.checks, check] } : group,
      );
  return { ...file, count: file.count + 1, flags: { ...file.flags, ...flags }, groups };
}
