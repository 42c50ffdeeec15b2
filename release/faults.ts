/** The papers of a release, as text. */
export interface Papers {
  readonly home: string;
  readonly manifest: string;
  readonly citation: string;
  readonly changelog: string;
  readonly results: string;
}

interface Manifest {
  readonly version: string;
  readonly homepage?: string;
  readonly repository?: { readonly url?: string };
  readonly bugs?: { readonly url?: string };
}

/** What keeps these papers from being published; empty if nothing does. */
export function faultsOf({ home, manifest, citation, changelog, results }: Papers): readonly string[] {
  const { repository } = JSON.parse(home) as { readonly repository: string };
  const { version, ...fields } = JSON.parse(manifest) as Manifest;
  const addresses = [fields.homepage, fields.repository?.url, fields.bugs?.url];
  const faults: string[] = [];
  if (/^https:\/\/[^/]*\.invalid(?:[:/]|$)/.test(repository))
    faults.push("release/home.json has the placeholder; set the address and run: npm run pages -- home");
  else if (!/^https:\/\/[^/]+\.[^/]+\/./.test(repository))
    faults.push(`release/home.json has no https address: ${repository}`);
  if (addresses.some((one) => one?.includes(repository) !== true) || !citation.includes(`"${repository}"`))
    faults.push("package.json or CITATION.cff has another address; run: npm run pages -- home");
  if (version === "0.0.0") faults.push("the version is 0.0.0; run: npx changeset version");
  if (!changelog.includes(`\n## ${version}\n`)) faults.push(`CHANGELOG.md has nothing on ${version}`);
  if (!new RegExp(`^version: ${version.replaceAll(".", "\\.")}$`, "m").test(citation))
    faults.push(`CITATION.cff is not of ${version}; run: npm run pages -- home`);
  if ((JSON.parse(results) as { readonly version: string }).version !== version)
    faults.push(`release/results.json is not of ${version}; run: npm run reproduce -- --write`);
  return faults;
}
