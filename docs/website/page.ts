import type { Section } from "./markdown.js";

/** A page of the site before it is laid out. */
export interface Page {
  /** Its path on the site. */
  readonly path: string;
  /** Its source: a path in the repository, or in the folder of the generated reference as if that stood in `docs/`. */
  readonly source: string;
  readonly title: string;
  readonly html: string;
  readonly sections: readonly Section[];
  /** Scripts that it loads, as paths on the site, beside the one of all pages. */
  readonly scripts?: readonly string[];
}

/** A line of the navigation: a page, or a place in it. */
export interface NavigationEntry {
  readonly title: string;
  readonly href: string;
  readonly below: readonly NavigationEntry[];
}

/** Pages under one heading of the navigation. */
export interface NavigationGroup {
  readonly title: string;
  readonly entries: readonly NavigationEntry[];
}
