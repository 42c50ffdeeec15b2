import { withstandFacts } from "../edition/tables/short-time-withstand.generated.js";
import { type Members, readShape } from "../input/read-shape.js";
import { member, type Reader, readBetween } from "../input/reader.js";
import { type ShortTimeWithstandInput, shortTimeWithstandInputShape } from "./shape.generated.js";

/** Checks the input of a short-time withstand; everything wrong is noted. */
export function readWithstandInput(at: Reader): ShortTimeWithstandInput | undefined {
  return readShape<ShortTimeWithstandInput>(at, shortTimeWithstandInputShape, refine);
}

/** What the metal, and one temperature, leave for the temperatures. */
function refine(at: Reader, { conductor, temperatures }: Members<ShortTimeWithstandInput>): void {
  if (temperatures === undefined) return;
  const { lowestInitial, leastRise } = withstandFacts.limits;
  const most = withstandFacts.metals[conductor?.material ?? "copper"].highestFinal;
  const place = member(at, "temperatures");
  const read = (key: "initial" | "final", least: number, highest: number): void => {
    readBetween(member(place, key), "degrees Celsius", least, highest, advice);
  };
  read("initial", lowestInitial, most - leastRise);
  read("final", temperatures.initial + leastRise, most);
}

const advice =
  "the final temperature lies at least one degree above the initial one, and the metal melts above both";
