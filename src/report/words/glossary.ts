/** Abbreviations that a schedule and its drawing use, as the trade writes them. */
const abbreviations: Readonly<Record<string, string>> = {
  Al: "aluminum",
  AWG: "American wire gauge",
  Cu: "copper",
  cmil: "circular mil, the area of a circle of 0.001 in. diameter",
  EBJ: "equipment bonding jumper",
  EGC: "equipment grounding conductor",
  "G bar": "equipment grounding bar",
  GEC: "grounding electrode conductor",
  kcmil: "1000 circular mils",
  MBJ: "main bonding jumper",
  "N bar": "neutral bar",
  SBJ: "system bonding jumper",
  SSBJ: "supply-side bonding jumper",
};

/** The abbreviations that texts use, each with what it stands for. */
export function glossaryOf(texts: readonly string[]): string {
  const used = new Set(texts.flatMap((text) => text.match(/\b[GN] bar\b|[A-Za-z]+/g) ?? []));
  const named = Object.entries(abbreviations).filter(([short]) => used.has(short));
  return `${named.map(([short, long]) => `${short} ${long}`).join("; ")}.`;
}
