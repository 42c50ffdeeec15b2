/** What every document ends with. */
export const closingNotes: readonly string[] = [
  "Sizes are minimums of the named edition. Local amendments and the authority having jurisdiction decide.",
  "Listed equipment follows its listing. Work on services is dangerous and belongs to licensed people.",
  "This checks arithmetic, not an installation.",
  "NFPA 70 and NEC are marks of the National Fire Protection Association, with which this project is not affiliated.",
];
