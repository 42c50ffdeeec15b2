import type { Issue } from "../input/input-error.js";
import { readShape } from "../input/read-shape.js";
import { isRecord, issueAt, wholeOf } from "../input/reader.js";
import type { Shape } from "../input/shapes.js";
import { coherenceFaults } from "./coherence.js";
import { dataOf, inWordsOfPiping } from "./examine.js";
import { duplicateIds } from "./ids.js";
import { installedFaults } from "./installed/references.js";
import { installedShape } from "./installed/shape.generated.js";
import { referenceFaults } from "./references.js";
import { type Installation, installationShape } from "./shape.generated.js";
import { tableFaults } from "./table-limits.js";

/**
 * What is wrong in an installation that is still being filled in: what is missing is not wrong yet, and what is there is checked as far as
 * it goes. Parts that are whole are held against each other, references included; a reference to a part that is not whole yet is right.
 *
 * @param source - JSON text, or the value that it would parse to
 * @returns everything that is wrong so far, as {@link readInstallation} would list it; empty if nothing is
 *
 * @example
 * ```ts
 * import { issuesSoFar } from "bondmil";
 * issuesSoFar({ format: 1, code: { year: "1999" } }).map(({ path }) => path); // => ["code.year"]
 * issuesSoFar({ format: 1, services: [{ id: "S1" }] }); // => []
 * ```
 */
export function issuesSoFar(source: unknown): readonly Issue[] {
  const { data, faults } = dataOf(source);
  if (faults.length > 0) return faults;
  const issues: Issue[] = [];
  readShape(wholeOf(data, issues), installationShape);
  const { whole, places } = wholeParts(data);
  const ids = idsIn(data);
  const between = [
    ...duplicateIds(whole),
    ...referenceFaults(whole).filter((one) => !ids.has(one.received)),
    ...coherenceFaults(whole),
    ...installedFaults(whole).filter((one) => !ids.has(one.received)),
    ...(issues.some(({ keys: [first] }) => first === "code" || first === "materials")
      ? []
      : tableFaults(whole)),
  ].map((one) => replaced(one, places));
  return [...issues.map(inWordsOfPiping), ...between].filter(
    ({ code }) => code !== "missing" && code !== "empty-list",
  );
}

interface Parts {
  readonly whole: Installation;
  /** For each list, where its whole items stand in what is given. */
  readonly places: Readonly<Record<string, readonly number[]>>;
}

/** The lists of an installation, whose items stand for themselves. */
function listShapesOf(shape: Shape): readonly (readonly [list: string, item: Shape])[] {
  const members = shape.is === "object" ? Object.entries(shape.members) : [];
  return members.flatMap(([name, member]) => (member.is === "list" ? [[name, member.of] as const] : []));
}

/** The parts of an installation that are whole, as an installation. */
function wholeParts(data: unknown): Parts {
  const given = isRecord(data) ? data : {};
  const found = listShapesOf(installationShape).map(([list, shape]) => {
    const items = Array.isArray(given[list]) ? (given[list] as readonly unknown[]) : [];
    const read = items.map((item) => readShape<object>(wholeOf(item), shape));
    return [list, read.flatMap((item, place) => (item === undefined ? [] : [{ item, place }]))] as const;
  });
  const whole = Object.fromEntries(found.map(([list, items]) => [list, items.map(({ item }) => item)]));
  const places = Object.fromEntries(found.map(([list, items]) => [list, items.map(({ place }) => place)]));
  const { code, materials } = given;
  const installed = readShape<Installation["installed"]>(wholeOf(given["installed"]), installedShape);
  return {
    whole: {
      ...whole,
      code,
      materials,
      ...(installed && { installed }),
    } as unknown as Installation,
    places,
  };
}

/** An issue of the whole parts at its place in what is given. */
function replaced(issue: Issue, places: Parts["places"]): Issue {
  const [list, place, ...rest] = issue.keys;
  const given = typeof list === "string" && typeof place === "number" ? places[list]?.[place] : undefined;
  if (list === undefined || given === undefined) return issue;
  const { path, keys } = issueAt([list, given, ...rest], issue.code, "", undefined, "");
  return { ...issue, path, keys };
}

/** Every id that is given anywhere, as an issue shows it. */
function idsIn(data: unknown): ReadonlySet<string> {
  const ids = new Set<string>();
  const seen = new Set<unknown>();
  const waiting = [data];
  while (waiting.length > 0) {
    const value = waiting.pop();
    if (typeof value !== "object" || value === null || seen.has(value)) continue;
    seen.add(value);
    for (const [key, inner] of Object.entries(value)) {
      if (typeof inner === "string" && (key === "id" || key === "to")) ids.add(JSON.stringify(inner));
      waiting.push(inner);
    }
  }
  return ids;
}
