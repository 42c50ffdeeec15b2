import { type Members, readShape } from "../input/read-shape.js";
import { member, placeIn, type Reader } from "../input/reader.js";
import { isKept, kept } from "./kept-code.js";
import { refuseCells } from "./refuse-cells.js";
import { refuseSenseless } from "./refuse-senseless.js";
import { refuseServiceRating } from "./refuse-service-rating.js";
import { type Amendment, type Code, codeShape } from "./shape.generated.js";

/** Checks a code in an input, its amendments against the tables of its edition. One that was checked before and is kept is right. */
export function readCode(at: Reader): Code | undefined {
  if (isKept(at.value)) return at.value;
  const code = readShape<Code>(at, codeShape, refine);
  if (code?.amendments === undefined) return code && kept(code);
  return kept({ ...code, amendments: withoutRepeats(code.amendments) });
}

function refine(at: Reader, { year, amendments, circumstances }: Members<Code>): void {
  if (amendments === undefined) return;
  const list = member(at, "amendments");
  for (const [i, one] of amendments.entries()) refuseSenseless(placeIn(list, [i], one), one);
  if (year === undefined) return;
  refuseCells(list, year, amendments);
  refuseServiceRating(at, { year, amendments, ...(circumstances && { circumstances }) });
}

/** The same amendment twice is one; the last stands, because a later one of the same place counts. */
function withoutRepeats(amendments: readonly Amendment[]): readonly Amendment[] {
  const last = new Map(amendments.map((one, place) => [JSON.stringify(one), place]));
  return amendments.filter((one, place) => last.get(JSON.stringify(one)) === place);
}
