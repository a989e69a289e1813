import { describe, expect, it } from 'vitest';
import { proposeLine, proposeMoves } from '../../src/core/advice/index.ts';
import { flattenProblemFromShell } from '../../src/core/assembly/flatten-problem.ts';
import { flattenTogether, measureFormStrain } from '../../src/core/flatten/index.ts';
import { cutIntoPanels, findLayout, type SeamLayout } from '../../src/core/seams/index.ts';
import { inEnglish } from '../in-english.ts';
import { torso } from '../seams/sample-forms.ts';

const upright8 = findLayout('upright8')!;
/** The front princess line led 35 mm too far in at the bust. */
const misled: SeamLayout = {
  ...upright8,
  lines: upright8.lines.map((line) =>
    line.id === 'princessFront'
      ? {
          ...line,
          through: line.through.map((anchor) =>
            anchor.landmark === 'bustPointRight' && !anchor.level ? { ...anchor, u: 0.25 } : anchor,
          ),
        }
      : line,
  ),
};
const coarse = { targetTriangles: 1200 };

/** The same figures by a way of their own: cut and unrolled afresh, no memory. */
function strainOf(layout: SeamLayout) {
  const cut = cutIntoPanels(torso.surface, torso.form, layout, coarse);
  if (!cut.ok) throw new Error(inEnglish(cut.issues[0].message));
  const flat = flattenTogether(flattenProblemFromShell(cut.value));
  if (!flat.ok) throw new Error(inEnglish(flat.issues[0].message));
  return measureFormStrain(
    cut.value.panels.map((panel) => panel.mesh),
    flat.value,
  );
}

describe('proposals', () => {
  it('move lines to less strain, tell how far, and leave the layout as it was', () => {
    const copy = structuredClone(misled);
    const found = proposeMoves(torso.surface, torso.form, misled, { ...coarse, rounds: 1 });
    if (!found.ok) throw new Error(inEnglish(found.issues[0].message));
    const { before, after, changes, layout } = found.value;
    expect(misled).toEqual(copy);
    expect(after.steep).toBeLessThan(0.97 * before.steep);
    expect(changes.some((text) => /princess front.*cm.* towards the back/.test(inEnglish(text)))).toBe(true);
    expect(strainOf(misled)).toEqual(before);
    expect(strainOf(layout)).toEqual(after);
  });

  it('add the one line that lowers strain most', () => {
    const found = proposeLine(torso.surface, torso.form, upright8, coarse);
    if (!found.ok) throw new Error(inEnglish(found.issues[0].message));
    const { before, after, layout } = found.value;
    expect(layout.lines).toHaveLength(upright8.lines.length + 1);
    expect(after.steep).toBeLessThan(before.steep);
    expect(strainOf(layout)).toEqual(after);
    // A level seam at the bust is among the trials, so the best is no worse.
    const bust = strainOf(findLayout('upright8Bust')!);
    expect(after.steep).toBeLessThanOrEqual(bust.steep * (1 + 1e-12));
  });

  it('stop when asked, keep to the number of panels, and name a layout that is no base', () => {
    const options = { ...coarse, isCancelled: () => true };
    expect(proposeMoves(torso.surface, torso.form, upright8, options).issues).toMatchObject([
      { code: 'cancelled' },
    ]);
    expect(
      proposeLine(torso.surface, torso.form, upright8, { ...coarse, mostPanels: 9 }).issues,
    ).toMatchObject([{ code: 'no-line-helps' }]);
    const broken = { ...upright8, lines: upright8.lines.filter((line) => line.id !== 'neckBase') };
    expect(proposeMoves(torso.surface, torso.form, broken, coarse).issues).toMatchObject([
      { code: 'layout-unsound' },
    ]);
  });
});

describe('strain of a whole form', () => {
  // By hand: three quarters of the area at ±1 %, one quarter at ±2 %.
  it('weighs panels by their area', () => {
    // Two triangles of half the area each.
    const square = (area: number) => ({
      positions: Float64Array.of(0, 0, 0, area, 0, 0, area, 1, 0, 0, 1, 0),
      triangles: Uint32Array.of(0, 1, 2, 0, 2, 3),
    });
    const panel = (strain: number, area3d: number) => ({
      positions: new Float64Array(),
      strain: {
        major: Float64Array.of(strain, strain),
        minor: Float64Array.of(-strain, -strain),
        direction: new Float64Array(2),
        summary: { rms: 0, p95: 0, p99: 0, min: 0, max: 0, flipped: 0, area3d, areaFlat: area3d },
      },
    });
    const { rms, p95, p99, steep } = measureFormStrain(
      [square(300), square(100)],
      [panel(0.01, 300), panel(0.02, 100)],
    );
    expect(rms).toBeCloseTo(Math.sqrt(0.75 * 1e-4 + 0.25 * 4e-4), 12);
    expect([p95, p99]).toEqual([0.02, 0.02]);
    expect(steep).toBeCloseTo((0.75 * 1e-8 + 0.25 * 16e-8) ** 0.25, 12);
  });
});
