/** An id of the data as words: `supply-side-bonding-jumper: otherMaterial` is "supply-side bonding jumper: other material". */
export function inWords(text: string): string {
  return text
    .replace(/(?<![\w-])[a-z]+(?:-[a-z]+)+(?![\w-])/g, spaced)
    .replace(/(?<![\w-])oneEighth(?!\w)/g, "12.5 percent")
    .replace(/(?<![\w-])[a-z]+(?:[A-Z][a-z]+)+(?![\w-])/g, (id) =>
      id.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`),
    )
    .replace(/(?<=copper|aluminum)(60|75|90)(?!\d)/g, " at $1 C");
}

/** With spaces for hyphens, but for those that the trade writes. */
function spaced(id: string): string {
  return id
    .replaceAll("-", " ")
    .replace(/\b(supply side|copper clad)\b/g, (words) => words.replace(" ", "-"));
}
