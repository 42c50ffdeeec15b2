/** Of which letters a text consists, and how many columns it takes where it is shown. */
export interface Letters {
  readonly of: (text: string) => readonly string[];
  readonly widthOf: (text: string) => number;
}

/** Every code point a letter of one column: as good as can be known without tables of letters. */
export const codePoints: Letters = {
  of: (text) => [...text],
  widthOf: (text) => [...text].length,
};
