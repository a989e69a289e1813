import type { SeamedShell, ShellPanel } from '../seams/index.ts';

/**
 * Panels in the order in which they lie side by side, wrong side up, from left to right: round the body as seen from inside, begun
 * behind the widest gap, so that neighbours stay neighbours. O(n log n).
 */
export function orderPanels(shell: SeamedShell, ids: readonly string[]): string[] {
  const own = shell.panels
    .filter(({ id }) => ids.includes(id))
    .map((panel) => ({ id: panel.id, angle: angleOf(panel) }))
    // From inside, angles rise to the left.
    .sort((a, b) => b.angle - a.angle || (a.id < b.id ? -1 : 1));
  if (own.length < 2) return own.map(({ id }) => id);
  const gaps = own.map(({ angle }, i) => {
    const before = own[(i + own.length - 1) % own.length].angle;
    return before - angle + (i === 0 ? 2 * Math.PI : 0);
  });
  const first = gaps.indexOf(Math.max(...gaps));
  return [...own.slice(first), ...own.slice(0, first)].map(({ id }) => id);
}

/** Where round the body a panel's middle lies, radians from 0 to 2π. */
function angleOf({ chart }: ShellPanel): number {
  let [x, y] = [0, 0];
  for (let i = 0; i < chart.length; i += 2) {
    x += Math.cos(chart[i]);
    y += Math.sin(chart[i]);
  }
  return (Math.atan2(y, x) + 2 * Math.PI) % (2 * Math.PI);
}
