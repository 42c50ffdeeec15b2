import type { Page } from "./page.js";

/** The page of the search. It works without a network, and from a folder that no server serves. */
export const searchPage: Page = {
  path: "search.html",
  source: "",
  title: "Search",
  sections: [],
  scripts: ["assets/minisearch.js", "assets/places.js", "assets/search.js"],
  html: `<h1>Search</h1>
<form role="search" aria-label="Search the site">
<input type="search" name="q" aria-label="Words, a section or a name" autocomplete="off">
</form>
<p id="said" role="status"></p>
<noscript><p>The search runs in this page and requires JavaScript. The list of pages works without it.</p></noscript>
<ul class="results"></ul>`,
};
