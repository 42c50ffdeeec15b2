/** What the names of a folder are used for, as a heading of the reference; in the order in which it lists them. */
const uses: readonly (readonly [folder: string, use: string])[] = [
  ["src/asking/", "Sizing one conductor"],
  ["src/roles/", "Roles"],
  ["src/rules/", "Results and cautions"],
  ["src/sizing/", "Results and cautions"],
  ["src/installation/", "Whole installations"],
  ["src/systems/", "Systems and designations"],
  ["src/candidates/", "Candidates for a supply"],
  ["src/comparison/", "Comparing editions and readings"],
  ["src/report/", "Documents and drawings"],
  ["src/drawing/", "Documents and drawings"],
  ["src/ampacity/", "Ampacity and devices"],
  ["src/supply/", "Supplies, sums and taps"],
  ["src/conductor/", "Sizes and materials"],
  ["src/units/", "Sizes and materials"],
  ["src/engineering/", "Beside the code minimum"],
  ["src/edition/", "Editions, amendments and evidence"],
  ["src/input/", "Checking input"],
  ["corpus/tools/", "Running the checks"],
  ["tables/tools/generator/", "Shapes of the files"],
  ["tables/tools/", "Tables and rules as data"],
];

/** The headings in their order. */
export const useOrder: readonly string[] = [...new Set(uses.map(([, use]) => use))];

/** What a name is used for, by the file that declares it; a folder without a heading is an error, so that none is forgotten. */
export function useOf(file: string): string {
  const found = uses.find(([folder]) => file.startsWith(folder));
  if (found === undefined)
    throw new Error(
      `${file} declares a name of the reference; give its folder a heading in docs/website/reference/uses.ts`,
    );
  return found[1];
}
