import { type Members, readShape } from "../../input/read-shape.js";
import { placeIn, type Reader, refuse } from "../../input/reader.js";
import { areaIn, type InRaceway, sizesLike } from "./areas.js";
import { type RacewayFillQuestion, racewayFillQuestionShape } from "./shape.generated.js";
import { boresOf } from "./trade-sizes.js";

/** Checks a question about a raceway; everything wrong is noted. */
export function readFillQuestion(at: Reader): RacewayFillQuestion | undefined {
  return readShape<RacewayFillQuestion>(at, racewayFillQuestionShape, refine);
}

function refine(
  at: Reader,
  { edition, raceway, tradeSize, conductors, added }: Members<RacewayFillQuestion>,
): void {
  if (edition === undefined) return;
  if (raceway !== undefined && tradeSize !== undefined) {
    const known = boresOf(edition, raceway).map((bore) => bore.tradeSize);
    if (!known.includes(tradeSize)) {
      refuse(
        placeIn(at, ["tradeSize"], tradeSize),
        "unknown-value",
        `a trade size of ${raceway}, ${known[0]} to ${known.at(-1)}`,
        "take a smaller one, or another kind of raceway",
        known,
      );
    }
  }
  refuseUnlisted(at, "conductors", edition, conductors);
  refuseUnlisted(at, "added", edition, added);
}

/** Refuses conductors of which the tables have no area. */
function refuseUnlisted(
  at: Reader,
  key: string,
  edition: RacewayFillQuestion["edition"],
  conductors: readonly InRaceway[] = [],
): void {
  conductors.forEach((one, i) => {
    if ("squareInches" in one || areaIn(edition, one) !== null) return;
    const sizes = sizesLike(edition, one);
    const made =
      "bare" in one ? `${one.bare} bare` : `${one.compact === true ? "compact " : ""}${one.insulation}`;
    const listed =
      sizes.length === 0
        ? `${made} is not in the table`
        : `${made} from ${sizes[0]} to ${sizes.at(-1)}, as the table lists it`;
    refuse(
      placeIn(at, [key, i, "size"], one.size),
      "unknown-value",
      listed,
      "give squareInches as the maker states them",
      sizes,
    );
  });
}
