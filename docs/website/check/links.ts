import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { join, posix } from "node:path";
import { Parser } from "htmlparser2";

/** What the link check reads of a page: its ids, and its links with whether the browser would load them. */
interface Anatomy {
  readonly ids: readonly string[];
  readonly links: readonly { readonly target: string; readonly isLoaded: boolean }[];
}

/** Attributes that hold a link. */
const linking = ["href", "src", "action", "poster", "data"];

/** Every fault of the links of a site in a folder: what leads nowhere, leads out of the folder, or would be loaded from elsewhere. */
export function linkFaults(site: string): readonly string[] {
  const pages = readdirSync(site, { recursive: true, encoding: "utf8" })
    .map((path) => path.replaceAll("\\", "/"))
    .filter((path) => path.endsWith(".html"))
    .sort();
  const anatomies = new Map(pages.map((path) => [path, anatomyOf(readFileSync(join(site, path), "utf8"))]));
  const faults = [...anatomies].flatMap(([page, { ids, links }]) => [
    ...ids.filter((id, i) => ids.indexOf(id) !== i).map((id) => `${page} has the id "${id}" twice`),
    ...links.flatMap(({ target, isLoaded }) => {
      const why = faultOf(site, page, target, isLoaded, anatomies);
      return why === undefined ? [] : [`${page}: ${target} ${why}`];
    }),
  ]);
  return [...new Set(faults)];
}

function anatomyOf(html: string): Anatomy {
  const ids: string[] = [];
  const links: { target: string; isLoaded: boolean }[] = [];
  const parser = new Parser({
    onopentag: (name, attributes) => {
      if (attributes["id"] !== undefined) ids.push(attributes["id"]);
      for (const attribute of linking) {
        const target = attributes[attribute];
        if (target !== undefined) links.push({ target, isLoaded: !["a", "form"].includes(name) });
      }
    },
  });
  parser.end(html);
  return { ids, links };
}

function faultOf(
  site: string,
  page: string,
  target: string,
  isLoaded: boolean,
  anatomies: ReadonlyMap<string, Anatomy>,
): string | undefined {
  if (target === "") return "is an empty link";
  if (target.startsWith("data:") && isLoaded) return undefined;
  if (/^(?:[a-z][a-z0-9+.-]*:|\/)/i.test(target)) {
    if (isLoaded) return "is loaded from outside of the site";
    return /^(?:https?:\/\/|mailto:)/.test(target) ? undefined : "is no address that every host can serve";
  }
  const [path = "", anchor] = target.split("#");
  const file = path === "" ? page : posix.join(posix.dirname(page), decodeURI(path.replace(/\?.*$/, "")));
  if (file.startsWith("..")) return "leads out of the site";
  if (!existsSync(join(site, file)) || !statSync(join(site, file)).isFile()) return "is not there";
  if (anchor === undefined) return undefined;
  const other = anatomies.get(file);
  if (other === undefined) return "has an anchor in what is no page";
  return other.ids.includes(decodeURIComponent(anchor)) ? undefined : "has an anchor that is not there";
}
