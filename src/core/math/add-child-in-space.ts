import { type LdltSymbolic, strideOfRest } from './ldlt-symbolic.ts';

/**
 * Adds child c's remainder (at `from` in the stack) into parent s: its own columns, or its remainder at `restAt`. For blocks of
 * three; places rise, so that a row goes into the panel first and then into the remainder.
 */
export function addChildInSpace(
  { rowStart, columnStart, panelStart, parentPlace }: LdltSymbolic,
  panels: Float64Array,
  stack: Float64Array,
  c: number,
  from: number,
  s: number,
  restAt: number,
): void {
  const width = 3 * (columnStart[s + 1] - columnStart[s]);
  const parentStride = strideOfRest(3 * (rowStart[s + 1] - rowStart[s]), 3);
  const first = rowStart[c];
  const count = rowStart[c + 1] - first;
  const stride = strideOfRest(3 * count, 3);
  let inPanel = 0;
  while (inPanel < count && 3 * parentPlace[first + inPanel] < width) inPanel++;
  for (let i = 0; i < count; i++) {
    for (let a = 0; a < 3; a++) {
      const row = 3 * parentPlace[first + i] + a;
      const panelRow = panelStart[s] + row * width;
      const restRow = restAt + (row - width) * parentStride - width;
      let take = from + (3 * i + a) * stride;
      const toPanel = Math.min(inPanel, i + 1);
      for (let j = 0; j < toPanel; j++, take += 3) {
        const to = panelRow + 3 * parentPlace[first + j];
        panels[to] += stack[take];
        panels[to + 1] += stack[take + 1];
        panels[to + 2] += stack[take + 2];
      }
      for (let j = inPanel; j <= i; j++, take += 3) {
        const to = restRow + 3 * parentPlace[first + j];
        stack[to] += stack[take];
        stack[to + 1] += stack[take + 1];
        stack[to + 2] += stack[take + 2];
      }
    }
  }
}
