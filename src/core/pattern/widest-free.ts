/**
 * How wide the widest free rectangle of each height is, both in cells; heights 0 … rows. `taken`: row by row, 1 = taken. Every
 * largest rectangle is met once, by a stack over the free heights above each row (the largest rectangle in a histogram). O(cells).
 */
export function widestFree(taken: Uint8Array, columns: number, rows: number): Uint32Array {
  const widest = new Uint32Array(rows + 1);
  const heights = new Uint32Array(columns + 1);
  const [starts, risen] = [new Uint32Array(columns + 1), new Uint32Array(columns + 1)];
  for (let row = 0; row < rows; row++) {
    let depth = 0;
    for (let column = 0; column <= columns; column++) {
      // One column more, of height 0, closes what is open at the right edge.
      const isFree = column < columns && taken[row * columns + column] === 0;
      const height = isFree ? heights[column] + 1 : 0;
      heights[column] = height;
      let start = column;
      while (depth > 0 && risen[depth - 1] >= height) {
        depth--;
        start = starts[depth];
        widest[risen[depth]] = Math.max(widest[risen[depth]], column - start);
      }
      if (height === 0) continue;
      starts[depth] = start;
      risen[depth++] = height;
    }
  }
  widest[0] = columns;
  return widest;
}
