import { type EditionYear, editionYears, type Role, roleIds } from "../../../src/index.js";
import type { Line } from "../runner/text.js";
import { type Account, type Fate, fateOf, type Judged } from "./account.js";

/** How many wrong programs, each in each edition, fared in which way. */
export interface Tally {
  /** Those that decide anything otherwise. */
  readonly acting: number;
  readonly published: number;
  /** Among the published ones, those that a source notices which states the edition itself. */
  readonly stated: number;
  readonly arithmetic: number;
  readonly unnoticed: number;
}

interface Point {
  readonly role: Role;
  readonly year: EditionYear;
  readonly fate: Fate;
  readonly stated: boolean;
}

/** Every wrong program of every role in every edition, with its fate. */
export function pointsOf(all: readonly Judged[], account: Account): readonly Point[] {
  return all.flatMap((judged) =>
    editionYears.map((year) => ({
      role: judged.role,
      year,
      fate: fateOf(judged, year, account),
      stated: judged.notices.get(year)?.stated ?? false,
    })),
  );
}

/** Counts some of them. */
export function tallyOf(points: readonly Point[], of: (point: Point) => boolean = () => true): Tally {
  const some = points.filter((point) => of(point) && point.fate !== "without-effect");
  const count = (fate: Fate): number => some.filter((point) => point.fate === fate).length;
  return {
    acting: some.length,
    published: count("published"),
    stated: some.filter(({ fate, stated }) => fate === "published" && stated).length,
    arithmetic: count("arithmetic"),
    unnoticed: count("unnoticed"),
  };
}

/** The counts as cells of a table. */
export function cellsOf({ acting, published, stated, arithmetic, unnoticed }: Tally): Line {
  const share = acting === 0 ? "" : `${Math.round((published / acting) * 100)} %`;
  return [acting, published, share, stated, arithmetic, unnoticed];
}

/** Names of the columns of {@link cellsOf}. */
export const tallyHead = [
  "programs",
  "published",
  "share",
  "by their edition",
  "only arithmetic",
  "unnoticed",
];

/** Rows by role, by edition, without 2026, and over all. */
export function tallyRows(points: readonly Point[]): {
  readonly byRole: readonly Line[];
  readonly byEdition: readonly Line[];
} {
  const row = (name: string, of: (point: Point) => boolean) => [name, ...cellsOf(tallyOf(points, of))];
  return {
    byRole: [
      ...roleIds.map((role) => row(role, (point) => point.role === role && point.year !== "2026")),
      row("all", ({ year }) => year !== "2026"),
    ],
    byEdition: [
      ...editionYears.map((year) => row(year, (point) => point.year === year)),
      row("2008 to 2023", ({ year }) => year !== "2026"),
      row("all", () => true),
    ],
  };
}
