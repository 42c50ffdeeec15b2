// The places that the search finds come from places.js, the engine from minisearch.js: nothing is fetched.
const places = window.bondmilPlaces;
const byId = new Map(places.map((place) => [place.id, place]));
const engine = new window.MiniSearch({
  fields: ["title", "page", "text"],
  searchOptions: { boost: { title: 4, page: 2 }, prefix: true, fuzzy: 0.15, combineWith: "AND" },
});
engine.addAll(places);

const MOST = 40;
const field = document.querySelector("main input[type=search]");
const said = document.querySelector("#said");
const list = document.querySelector(".results");

const make = (name, text) => {
  const element = document.createElement(name);
  element.textContent = text;
  return element;
};

/** The part of a text around the first word that was found. */
const around = (text, words) => {
  const lower = text.toLowerCase();
  const found = words.map((word) => lower.indexOf(word)).filter((at) => at >= 0);
  const begin = Math.max(0, Math.min(...found, text.length) - 60);
  const from = found.length === 0 ? 0 : begin;
  return `${from > 0 ? "..." : ""}${text.slice(from, from + 180)}${from + 180 < text.length ? "..." : ""}`;
};

const line = ({ id, terms }) => {
  const { href, title, page, text } = byId.get(id);
  const link = make("a", title);
  link.href = href;
  const item = document.createElement("li");
  item.append(link, page === title ? "" : ` in ${page}`, make("p", around(text, terms)));
  return item;
};

const search = () => {
  const asked = field.value.trim();
  const found = asked === "" ? [] : engine.search(asked);
  list.replaceChildren(...found.slice(0, MOST).map(line));
  said.textContent =
    asked === ""
      ? ""
      : found.length > MOST
        ? `${found.length} places, of which the first ${MOST} are listed`
        : `${found.length} ${found.length === 1 ? "place" : "places"}`;
  const address = new URL(location.href);
  address.searchParams.set("q", asked);
  history.replaceState(null, "", address);
};

field.value = new URLSearchParams(location.search).get("q") ?? "";
field.addEventListener("input", search);
search();
