import type {
  CautionCode,
  Code,
  Conductor,
  ConductorSize,
  EditionYear,
  Input,
  Material,
  mainBondingJumper,
  Readings,
  SizingResult,
  Step,
  Supply,
  SupplySet,
} from "bondmil";

/** So many sets of one size. */
export function sets(count: number, size: ConductorSize, material: Material): SupplySet {
  return { count, size, material };
}

/** One set whose phases differ; the sizes of one material, `null` for a phase left out. */
export function phases(sizes: readonly (ConductorSize | null)[], material: Material): SupplySet {
  return { count: 1, phases: sizes.map((size): Conductor | null => size && { size, material }) };
}

/** A whole input; the conductor is given by its material alone or in full. */
export function ask(
  year: EditionYear,
  supply: SupplySet | readonly SupplySet[],
  conductor: Material | Input<typeof mainBondingJumper>["conductor"],
  more: { readonly readings?: Partial<Readings>; readonly temperature?: 60 | 75 | 90 } = {},
): Input<typeof mainBondingJumper> {
  const { readings, temperature } = more;
  const code: Code = { year, ...(readings && { readings }) };
  const supplied: Supply = { sets: Array.isArray(supply) ? supply : [supply as SupplySet] };
  return {
    code,
    supply: supplied,
    conductor: typeof conductor === "string" ? { material: conductor } : conductor,
    ...(temperature && { temperature }),
  };
}

/** The size of the outcome, or `area-only`. */
export function sizeIn({ outcome }: SizingResult): string {
  return outcome.kind === "conductor" ? outcome.size : outcome.kind;
}

/** What a reader of the result sees first. */
export function brief(result: SizingResult): readonly [string, number, string | null] {
  return [sizeIn(result), result.requiredArea, result.governs];
}

/** Codes of all cautions, in order. */
export function cautionsOf({ cautions }: SizingResult): readonly CautionCode[] {
  return cautions.map(({ code }) => code);
}

/** Section of one caution; `undefined` if it is absent. */
export function sectionOf({ cautions }: SizingResult, code: CautionCode): string | null | undefined {
  return cautions.find((caution) => caution.code === code)?.section;
}

/** The kinds of the steps, in order. */
export function kinds({ steps }: SizingResult): readonly Step["kind"][] {
  return steps.map(({ kind }) => kind);
}

/** The one step of a kind. */
export function step<K extends Step["kind"]>({ steps }: SizingResult, kind: K): Extract<Step, { kind: K }> {
  const found = steps.filter((one): one is Extract<Step, { kind: K }> => one.kind === kind);
  if (found.length !== 1 || found[0] === undefined) throw new Error(`${found.length} steps of kind ${kind}`);
  return found[0];
}
