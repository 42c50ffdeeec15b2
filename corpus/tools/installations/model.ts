import type { Amendment, EditionYear, Installation, Role, ViolationCode } from "../../../src/index.js";
import type { Standing, Voice } from "../runner/model.js";

/** A conductor that is required, or that none is; what is left out is not compared. Places are ids of the document. */
export interface LineStatement {
  readonly role: Role;
  /** Id of what the conductor belongs to or serves. */
  readonly subject: string;
  readonly size?: string;
  /** How many alike. */
  readonly quantity?: number;
  readonly required?: false;
  /** Why none is required. */
  readonly why?: string;
  readonly from?: string;
  readonly to?: string;
  /** Section that says where it goes, or that none is required. */
  readonly placement?: string;
}

/** Something that is forbidden, at these places and no others. */
interface ViolationStatement {
  readonly violation: ViolationCode;
  readonly at: readonly string[];
  readonly section?: string;
}

/** Something that is not forbidden here. */
interface NoViolationStatement {
  readonly noViolation: ViolationCode;
}

/** One thing that a source says of an installation. */
export type Statement = LineStatement | ViolationStatement | NoViolationStatement;

/** Why what a source says is not taken as it stands. */
interface Dispute {
  readonly section: string;
  readonly reason: string;
  /** What the text requires. */
  readonly expectByText: readonly Statement[];
}

/** A published answer about an installation. */
export interface InstallationCheck {
  readonly id: string;
  /** Edition that the source names or is dated by; `null` if it does not say. */
  readonly stated: EditionYear | null;
  /** Editions under which the answer is expected; the stated one alone where there is one. */
  readonly holds: readonly EditionYear[];
  /** Name of a document of the file. */
  readonly installation: string;
  /** Local amendments that are in force, where a source speaks of them. */
  readonly amendments?: readonly Amendment[];
  /** What the source says. */
  readonly expect: readonly Statement[];
  readonly locator: string;
  readonly standing: Standing;
  readonly voice: Voice;
  /** What the document has and the source does not say. */
  readonly assumed: readonly string[];
  readonly note?: string;
  readonly dispute?: Dispute;
}

/** An installation without its code, which the runner adds for each edition. */
export type UncodedInstallation = Omit<Installation, "code">;

/** The checks on one topic, grouped by source. */
export interface InstallationCheckFile {
  readonly id: string;
  readonly topic: string;
  /** Number of checks in the file. */
  readonly count: number;
  readonly installations: Readonly<Record<string, UncodedInstallation>>;
  readonly groups: readonly { readonly source: string; readonly checks: readonly InstallationCheck[] }[];
}

/** A check with its file and its source. */
export interface InstallationEntry {
  readonly file: InstallationCheckFile;
  readonly source: string;
  readonly check: InstallationCheck;
}

/** Every check, in the order of the files. */
export function installationEntriesOf(files: readonly InstallationCheckFile[]): readonly InstallationEntry[] {
  return files.flatMap((file) =>
    file.groups.flatMap(({ source, checks }) => checks.map((check) => ({ file, source, check }))),
  );
}

/** What a check is judged by: what the source says, or, where it is disputed, what the text requires. */
export function expectedOf({ expect, dispute }: InstallationCheck): readonly Statement[] {
  return dispute?.expectByText ?? expect;
}
