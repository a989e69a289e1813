import { describe, expect, it } from 'vitest';
import type { FlatDisk } from '../../src/core/flatten/index.ts';
import { tracerOfPanels } from '../../src/core/flatten/trace-on-panels.ts';
import type { SeamedShell } from '../../src/core/seams/index.ts';

/**
 * Two panels side by side of a cylinder of radius 100, cut at u = 0, 1, 2, high as given; a cylinder unrolls to
 * (radius · u, v) (closed form). The second panel's chart lies a whole turn away, and its flat piece is moved by 500.
 */
function cylinder(height: number, columns: number, rows: number) {
  const panels = [0, 1].map((first, panel) => {
    const chart: number[] = [];
    const flat: number[] = [];
    const triangles: number[] = [];
    for (let row = 0; row <= rows; row++) {
      for (let k = 0; k <= columns; k++) {
        const [u, v] = [first + k / columns, (height * row) / rows];
        chart.push(u + 2 * Math.PI * panel, v);
        flat.push(100 * u + 500 * panel, v);
        if (k === columns || row === rows) continue;
        const a = row * (columns + 1) + k;
        const c = a + columns + 2;
        triangles.push(a, a + 1, c, a, c, c - 1);
      }
    }
    return { chart: Float64Array.from(chart), flat: Float64Array.from(flat), triangles };
  });
  const shell = {
    panels: panels.map(({ chart, triangles }) => ({
      chart,
      mesh: { triangles: Uint32Array.from(triangles) },
    })),
  } as unknown as SeamedShell;
  return { shell, flat: panels.map(({ flat }) => ({ positions: flat })) as unknown as FlatDisk[] };
}

describe('a line traced on flat panels', () => {
  it.each([
    [400, 7, 53],
    [37, 3, 2],
    [900, 5, 4],
  ])('lies where the cylinder unrolls to (height %d, %d × %d)', (height, columns, rows) => {
    const { shell, flat } = cylinder(height, columns, rows);
    const chart: number[] = [];
    for (let i = 0; i <= 40; i++) chart.push(0.02 + (1.96 * i) / 40, height * (0.01 + (0.98 * i) / 40));
    const stretches = tracerOfPanels(shell, flat)(Float64Array.from(chart));
    expect(stretches?.length).toBe(40);
    stretches?.forEach(({ panel, a, b }, i) => {
      const middle = 0.5 * (chart[2 * i] + chart[2 * i + 2]);
      if (Math.abs(middle - 1) > 1e-6) expect(panel).toBe(middle < 1 ? 0 : 1);
      for (const [end, k] of [
        [a, i],
        [b, i + 1],
      ] as const) {
        expect(end[0]).toBeCloseTo(100 * chart[2 * k] + 500 * panel, 9);
        expect(end[1]).toBeCloseTo(chart[2 * k + 1], 9);
      }
    });
  });

  it('is none where it leaves the panels', () => {
    const { shell, flat } = cylinder(400, 7, 53);
    expect(tracerOfPanels(shell, flat)(Float64Array.of(0.5, 200, 3, 200))).toBeNull();
    expect(tracerOfPanels(shell, flat)(Float64Array.of(0.5, 300, 0.5, 900))).toBeNull();
  });
});
