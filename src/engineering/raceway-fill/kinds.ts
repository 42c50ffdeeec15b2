/** Kinds of conduit and tubing whose dimensions are held (Chapter 9 Table 4). */
export const racewayKinds = [
  "electrical-metallic-tubing",
  "intermediate-metal",
  "rigid-metal",
  "pvc-schedule-40",
  "pvc-schedule-80",
] as const;

/** Trade sizes, smallest first. Not every kind has the largest two. */
export const tradeSizes = [
  "1/2",
  "3/4",
  "1",
  "1-1/4",
  "1-1/2",
  "2",
  "2-1/2",
  "3",
  "3-1/2",
  "4",
  "5",
  "6",
] as const;

/** A column of Table 5 or 5A: the types of insulation that share one area. */
export type AreaColumn = "thhn" | "xhhw" | "thw" | "rhw" | "rhwUncovered";

/** Types of insulation that Table 5 gives areas for, each with its column. */
export const columnOfInsulation = {
  THHN: "thhn",
  THWN: "thhn",
  "THWN-2": "thhn",
  XHH: "xhhw",
  XHHW: "xhhw",
  "XHHW-2": "xhhw",
  TW: "thw",
  THW: "thw",
  "THW-2": "thw",
  THHW: "thw",
  RHH: "rhw",
  RHW: "rhw",
  "RHW-2": "rhw",
} as const satisfies Readonly<Record<string, AreaColumn>>;

/** Types that Table 5A gives areas for, each with its column; of the others none is compact. */
export const compactColumnOf: Readonly<Partial<Record<Insulation, "thhn" | "xhhw" | "thw">>> = {
  THHN: "thhn",
  THWN: "thhn",
  "THWN-2": "thhn",
  XHHW: "xhhw",
  "XHHW-2": "xhhw",
  THW: "thw",
  "THW-2": "thw",
  THHW: "thw",
};

/** One of the types of {@link columnOfInsulation}. */
type Insulation = keyof typeof columnOfInsulation;

/** The types of {@link columnOfInsulation}. */
export const insulations = /* @__PURE__ */ Object.keys(
  columnOfInsulation,
) as readonly (keyof typeof columnOfInsulation)[];
