/** From row to row, in heights of letters. */
export const ROW = 1.15;
/** How wide a letter is, in its height. */
const LETTER_WIDTH = 0.56;
/** Heights at which room is looked for, and most rows of a name. */
const LEVELS = 11;
const MOST_ROWS = 3;

/** Where a name stands on a piece, in its own units: y up, `room` from side to side. */
export interface NamePlace {
  readonly rows: readonly string[];
  /** Height of its letters. */
  readonly size: number;
  /** Its arrow has no room under it and stands after it. */
  readonly isBeside: boolean;
  readonly x: number;
  readonly y: number;
  readonly room: number;
}

/** Smaller letters, in the size wished, and how long an arrow after them is, in their height. */
const SMALLER = 0.85;
const ARROW_LETTERS = 5;

/**
 * The name in as few rows as have room in a closed outline (n × 2, as it lies), where it is widest, with room for an arrow under it; else in one row
 * of smaller letters with the arrow after it; without rows where it has no room.
 * O(n) for each height tried.
 */
export function placeName(outline: Float64Array, name: string, size: number): NamePlace {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 1; i < outline.length; i += 2) {
    low = Math.min(low, outline[i]);
    high = Math.max(high, outline[i]);
  }
  const heights = Array.from({ length: LEVELS }, (_, k) => low + ((high - low) * (k + 1)) / (LEVELS + 1));
  for (let count = 1; count <= MOST_ROWS; count++) {
    // The rows and the arrow under them.
    const half = ((count + 0.9) * ROW * size) / 2;
    const best = widest(heights.map((y) => freeBand(outline, y, half)));
    const letters = Math.floor(best.room / (LETTER_WIDTH * size)) - 1;
    const rows = foldLetters(name, letters);
    if (rows.length <= count && rows.every((row) => row.length <= letters))
      return { ...best, rows, size, isBeside: false };
  }
  const small = SMALLER * size;
  const best = widest(heights.map((y) => freeBand(outline, y, (ROW * small) / 2)));
  if (best.room > (name.length + ARROW_LETTERS) * LETTER_WIDTH * small)
    return { ...best, rows: [name], size: small, isBeside: true };
  return { ...widest(heights.map((y) => freeBand(outline, y, 0))), rows: [], size, isBeside: false };
}

type Band = Pick<NamePlace, 'x' | 'y' | 'room'>;

/** How far a name goes to either side of its middle, in its own units. */
export function halfWidthOf(name: string, size: number): number {
  return (name.length * LETTER_WIDTH * size) / 2;
}

/** Of bands about as wide as the widest the one in the middle of them. */
function widest(bands: readonly Band[]): Band {
  const most = Math.max(...bands.map(({ room }) => room));
  const wide = bands.filter(({ room }) => room >= 0.97 * most);
  return wide[Math.floor(wide.length / 2)];
}

/** The widest stretch that is inside an outline over a whole band of heights. */
function freeBand(outline: Float64Array, y: number, half: number): Band {
  const levels = half > 0 ? [y - half, y - half / 2, y, y + half / 2, y + half] : [y];
  const free = levels
    .map((level) => stretchesAt(outline, level))
    .reduce((a, b) =>
      a.flatMap(([l, r]) =>
        b.flatMap(([left, right]): [number, number][] =>
          Math.min(r, right) > Math.max(l, left) ? [[Math.max(l, left), Math.min(r, right)]] : [],
        ),
      ),
    );
  const [left, right] = free.reduce((a, b) => (b[1] - b[0] > a[1] - a[0] ? b : a), [0, 0]);
  return { x: (left + right) / 2, y, room: right - left };
}

/** From where to where a height is inside a closed outline. */
function stretchesAt(outline: Float64Array, level: number): [number, number][] {
  const crossings: number[] = [];
  for (let i = 0; i < outline.length; i += 2) {
    const k = (i + 2) % outline.length;
    const [a, b] = [outline[i + 1], outline[k + 1]];
    if (a > level === b > level) continue;
    crossings.push(outline[i] + ((level - a) / (b - a)) * (outline[k] - outline[i]));
  }
  crossings.sort((a, b) => a - b);
  return crossings.flatMap((left, i): [number, number][] =>
    i % 2 === 0 && i + 1 < crossings.length ? [[left, crossings[i + 1]]] : [],
  );
}

function foldLetters(name: string, most: number): string[] {
  const rows: string[] = [];
  for (const word of name.split(' ')) {
    const last = rows.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= most)
      rows[rows.length - 1] = `${last} ${word}`;
    else rows.push(word);
  }
  return rows;
}
