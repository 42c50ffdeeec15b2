import { SHEET_WIDTH } from "./drawing.js";

export const MARGIN = 12;
/** How far what hangs on a trunk is set in: the trunk with its lanes, and a gap. */
export const INDENT = 46;
/** Width of a trunk. */
export const TRUNK = 36;
/** Distance of lines that run side by side. */
export const LANE = 9;
/** Distance of a label from the line that it stands beside. */
export const BESIDE = 10;
/** How many trunks stand side by side; what hangs deeper is drawn on a sheet of its own. */
export const MOST_INDENTS = 4;
/** Room of a bar. */
export const BAR = 50;

/**
 * Where lines run, alike on a whole sheet: ungrounded conductors, grounded conductors and equipment grounding conductors have a column each; what
 * goes to electrodes runs in lanes right of all enclosures. Labels stand between the columns, so that none is crossed.
 */
export interface Columns {
  readonly ungrounded: number;
  readonly grounded: number;
  readonly grounding: number;
  /** The right wall of every enclosure. */
  readonly right: number;
  /** Where the right wall of a raceway is. */
  readonly raceway: number;
  readonly laneOf: (lane: number) => number;
}

const MOST_LANES_WIDTH = 160;

export function columnsOf(indents: number, lanes: number): Columns {
  const step = Math.min(LANE, MOST_LANES_WIDTH / Math.max(lanes, 1));
  const room = lanes === 0 ? 0 : 16 + lanes * step;
  const right = Math.floor(SHEET_WIDTH - MARGIN - room);
  const ungrounded = MARGIN + indents * INDENT + 22;
  const width = Math.floor((right - ungrounded) / 3);
  const grounding = ungrounded + 2 * width;
  return {
    ungrounded,
    grounded: ungrounded + width,
    grounding,
    right,
    raceway: grounding - 34,
    laneOf: (lane) => Math.round((right + 14 + lane * step) * 2) / 2,
  };
}
