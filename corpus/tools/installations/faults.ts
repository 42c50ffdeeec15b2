import { roleIds, violationCodes } from "../../../src/index.js";
import { countFaults, voiceFaults } from "../runner/references.js";
import {
  type InstallationCheck,
  type InstallationCheckFile,
  installationEntriesOf,
  type Statement,
  type UncodedInstallation,
} from "./model.js";

/** What a schema cannot see: ids that come twice, documents that nobody names, places that a document does not have. */
export function installationFaults(files: readonly InstallationCheckFile[]): readonly string[] {
  const entries = installationEntriesOf(files);
  const ids = entries.map(({ check }) => check.id);
  const twice = new Set(ids.filter((id, index) => ids.indexOf(id) !== index));
  return [
    ...[...twice].map((id) => `${id}: two checks have this id`),
    ...files.flatMap((file) => countFaults(file.id, file)),
    ...files.flatMap(idleDocuments),
    ...entries.flatMap(({ file, check }) =>
      checkFaults(check, file.installations[check.installation]).map((fault) => `${check.id}: ${fault}`),
    ),
  ];
}

function idleDocuments(file: InstallationCheckFile): readonly string[] {
  const used = new Set(installationEntriesOf([file]).map(({ check }) => check.installation));
  return Object.keys(file.installations)
    .filter((name) => !used.has(name))
    .map((name) => `${file.id}: no check has the installation ${name}`);
}

function checkFaults(check: InstallationCheck, document: UncodedInstallation | undefined): readonly string[] {
  const { stated, holds, expect, dispute } = check;
  if (document === undefined) return [`unknown installation ${check.installation}`];
  const names = namesIn(document);
  const isOneSided = stated !== null && (holds.length !== 1 || holds[0] !== stated);
  const byText = dispute?.expectByText ?? [];
  return [
    ...(isOneSided ? [`states ${stated}, so it holds there alone, not in ${holds.join(", ")}`] : []),
    ...voiceFaults(check),
    ...(JSON.stringify(byText) === JSON.stringify(expect) ? ["source and text say the same"] : []),
    ...[...expect, ...byText].flatMap((one) => statementFaults(one, names)),
  ];
}

function statementFaults(statement: Statement, names: ReadonlySet<string>): readonly string[] {
  const unknown = (what: string, known: readonly string[], given: string): readonly string[] =>
    known.includes(given) ? [] : [`unknown ${what} ${given}`];
  const places = (given: readonly (string | undefined)[]): readonly string[] =>
    given.flatMap((one) => (one === undefined || names.has(one) ? [] : [`the document has no ${one}`]));
  if ("noViolation" in statement) return unknown("violation", violationCodes, statement.noViolation);
  if ("violation" in statement)
    return [...unknown("violation", violationCodes, statement.violation), ...places(statement.at)];
  const { role, subject, from, to } = statement;
  return [...unknown("role", roleIds, role), ...places([subject, from, to])];
}

/** Every id of a document, and the names of what its circuits supply. */
function namesIn(value: unknown): ReadonlySet<string> {
  if (typeof value !== "object" || value === null) return new Set();
  return new Set(
    Object.entries(value).flatMap(([key, inner]) =>
      typeof inner === "string" ? (key === "id" || key === "to" ? [inner] : []) : [...namesIn(inner)],
    ),
  );
}
