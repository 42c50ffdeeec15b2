import { readFileSync } from "node:fs";

/** The module with the version of the package, so that the library reads no file. */
export function versionModule(): string {
  const manifest = readFileSync(new URL("../../package.json", import.meta.url), "utf8");
  const { version } = JSON.parse(manifest) as { readonly version: string };
  return `// Generated from package.json by "npm run pages -- version"; do not edit.

/**
 * The version of the library, which every document names.
 *
 * @example
 * \`\`\`ts
 * import { version } from "bondmil";
 * /^\\d+\\.\\d+\\.\\d+/.test(version); // => true
 * \`\`\`
 */
export const version = ${JSON.stringify(version)};
`;
}
