import { readFileSync } from "node:fs";

interface Home {
  readonly repository: string;
}

/** The papers that name the place of the project and its version, with both as they are: package.json and CITATION.cff. */
export function homePapers(): Readonly<Record<string, string>> {
  const { repository } = JSON.parse(read("release/home.json")) as Home;
  const manifest = JSON.parse(read("package.json")) as { readonly version: string };
  const written = {
    ...manifest,
    homepage: `${repository}#readme`,
    repository: { type: "git", url: `git+${repository}.git` },
    bugs: { url: `${repository}/issues` },
  };
  return {
    "package.json": `${JSON.stringify(inOrder(written), null, 2)}\n`,
    "CITATION.cff": read("CITATION.cff")
      .replace(/^version: .*$/m, `version: ${manifest.version}`)
      .replace(/^repository-code: .*$/m, `repository-code: "${repository}"`),
  };
}

/** Homepage, repository and bugs after the license, where people look for them. */
function inOrder(manifest: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  const { homepage, repository, bugs, ...others } = manifest;
  return Object.fromEntries(
    Object.entries(others).flatMap((entry) =>
      entry[0] === "license"
        ? [entry, ["homepage", homepage], ["repository", repository], ["bugs", bugs]]
        : [entry],
    ),
  );
}

function read(path: string): string {
  return readFileSync(new URL(`../../${path}`, import.meta.url), "utf8");
}
