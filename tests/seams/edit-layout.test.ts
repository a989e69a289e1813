import { describe, expect, it } from 'vitest';
import {
  eulerCharacteristic,
  findBoundaryLoops,
  measureArea,
  measurePath,
  validateMesh,
} from '../../src/core/mesh/index.ts';
import {
  cutIntoPanels,
  findLayout,
  joinPanels,
  listMovablePoints,
  movePointBy,
  removeLine,
  type SeamedShell,
  type SeamLayout,
  splitPanel,
} from '../../src/core/seams/index.ts';
import { inEnglish } from '../in-english.ts';
import { CYLINDER_RADIUS, cylinder, type SampleForm, TOP, torso } from './sample-forms.ts';

const upright8 = findLayout('upright8')!;

function cut(sample: SampleForm, layout: SeamLayout): SeamedShell {
  const result = cutIntoPanels(sample.surface, sample.form, layout, { targetTriangles: 3000 });
  if (!result.ok) throw new Error(inEnglish(result.issues[0].message));
  return result.value;
}

describe('panels joined into a region', () => {
  const shell = cut(cylinder, upright8);

  it('is a disk of all their triangles, its border theirs less the seam between', () => {
    const ids = ['centreFrontRight', 'sideFrontRight'];
    const region = joinPanels(shell, ids);
    if (!region.ok) throw new Error(inEnglish(region.issues[0].message));
    const { mesh, edges } = region.value;
    expect(validateMesh(mesh)).toEqual([]);
    expect(eulerCharacteristic(mesh)).toBe(1);
    const panels = shell.panels.filter((panel) => ids.includes(panel.id));
    expect(measureArea(mesh)).toBeCloseTo(
      panels.reduce((sum, panel) => sum + measureArea(panel.mesh), 0),
      6,
    );
    expect(edges.map((edge) => edge.id)).not.toContain('princessFrontRight');
    const border = edges.reduce((sum, edge) => sum + measurePath(mesh, edge.vertices), 0);
    const [loop] = findBoundaryLoops(mesh);
    expect(border).toBeCloseTo(measurePath(mesh, loop, true), 6);
  });

  it('names regions that are apart, rings, or unknown', () => {
    const codeOf = (...ids: string[]): string[] => joinPanels(shell, ids).issues.map((issue) => issue.code);
    expect(codeOf('sideFrontRight', 'sideFrontLeft')).toEqual(['region-not-a-disk']);
    // Round the armhole: both panels of the right side, joined at the side and at the shoulder.
    expect(codeOf('sideFrontRight', 'sideBackRight')).toEqual(['region-not-a-disk']);
    expect(codeOf('sleeve')).toEqual(['panel-unknown']);
    expect(codeOf()).toEqual(['region-empty']);
  });
});

describe('lines taken away and added', () => {
  it('joins panels by leaving out a line, unless another line ends on it', () => {
    const without = removeLine(upright8, 'princessBack');
    if (!without.ok) throw new Error(inEnglish(without.issues[0].message));
    expect(cut(torso, without.value).panels).toHaveLength(8 + 1 - 2);
    expect(removeLine(upright8, 'shoulder').issues).toMatchObject([{ code: 'line-carries-line' }]);
    expect(removeLine(upright8, 'hem').issues).toMatchObject([{ code: 'line-unknown' }]);
  });

  it('divides a panel lengthwise into two halves of about the same size, on both sides of the body', () => {
    for (const id of ['centreBackRight', 'centreFrontRight', 'sideFrontRight']) {
      const shell = cut(torso, upright8);
      const lineOf = (seam: string) => shell.seams.find((candidate) => candidate.id === seam)?.lineId;
      const panel = shell.panels.find((candidate) => candidate.id === id)!;
      const split = splitPanel(upright8, panel, lineOf, torso.form);
      if (!split.ok) throw new Error(inEnglish(split.issues[0].message));
      const after = cut(torso, split.value.layout);
      expect(after.panels).toHaveLength(shell.panels.length + 2);
      const seam = after.seams.find((candidate) => candidate.lineId === split.value.line.id)!;
      const sides = seam.panels.map((name) => measureArea(after.panels.find((p) => p.id === name)!.mesh));
      expect(sides[0] + sides[1]).toBeCloseTo(measureArea(panel.mesh), -3);
      expect(Math.min(...sides) / (sides[0] + sides[1])).toBeGreaterThan(0.3);
    }
  });

  it('refuses to divide a panel of the left half: lines are of the right one', () => {
    const panel = cut(torso, upright8).panels.find((candidate) => candidate.id === 'sideBackLeft')!;
    const split = splitPanel(upright8, panel, () => undefined, torso.form);
    expect(split.issues).toMatchObject([{ code: 'panel-not-split' }]);
    expect(inEnglish(split.issues[0].message)).toContain('side back left');
  });

  it('refuses a line that would lie on its own mirror image', () => {
    const line = {
      id: 'own',
      name: 'own line',
      side: 'right' as const,
      through: [{ landmark: 'baseCentreFront' }, { landmark: 'baseCentreFront', v: 300 }],
    };
    const made = cutIntoPanels(
      torso.surface,
      torso.form,
      { ...upright8, lines: [...upright8.lines, line] },
      { targetTriangles: 3000 },
    );
    expect(made.issues).toMatchObject([{ code: 'line-on-centre', path: 'lines.own' }]);
  });

  // On the cylinder a move of the chart is a turn: mm / 140 radians, for every anchor that is no armhole or shoulder.
  it('moves lines by their points', () => {
    const points = listMovablePoints(upright8).filter((point) => point.lineId === 'princessFront');
    expect(points).toHaveLength(6);
    const moved = points.slice(0, 5).reduce((layout, point) => movePointBy(layout, point, 14), upright8);
    const angleAt = (layout: SeamLayout, v: number): number => {
      const shell = cut(cylinder, layout);
      const seam = shell.seams.find((candidate) => candidate.id === 'princessFrontRight')!;
      const point = seam.points.find((p) => Math.abs(shell.chart[2 * p + 1] - v) < 1e-9) as number;
      return shell.chart[2 * point];
    };
    for (const v of [0, 100, 300, 450]) expect(angleAt(moved, v) - angleAt(upright8, v)).toBeCloseTo(0.1, 6);
    expect(listMovablePoints(upright8).some((point) => point.lineId === 'centreFront')).toBe(false);
    const neck = listMovablePoints(upright8).find((point) => point.lineId === 'neckBase')!;
    const lower = movePointBy(upright8, neck, -20).lines.find((line) => line.id === 'neckBase')!;
    expect(lower.alongHeight).toEqual({ landmark: 'neckSideRight', v: -20 });
  });
});

describe('pieces that sew badly', () => {
  it('warns of strips under 25 mm with the width they have', () => {
    // 20 mm on the cylinder beside the centre front.
    const strip: SeamLayout['lines'][number] = {
      id: 'strip',
      name: 'strip',
      side: 'right',
      through: [
        { u: Math.PI / 2 - 20 / CYLINDER_RADIUS, v: 0 },
        { u: Math.PI / 2 - 20 / CYLINDER_RADIUS, v: TOP },
      ],
    };
    const result = cutIntoPanels(
      cylinder.surface,
      cylinder.form,
      {
        ...upright8,
        lines: [
          ...upright8.lines.filter(
            (line) =>
              line.id !== 'neckBase' &&
              line.id !== 'centreFront' &&
              line.id !== 'shoulder' &&
              !line.id.startsWith('princess'),
          ),
          strip,
          {
            id: 'shoulder',
            name: 'shoulder',
            side: 'right',
            through: [{ armhole: 0.5 }, { landmark: 'neckTopSideRight' }],
          },
          {
            id: 'middle',
            name: 'middle',
            side: 'centre',
            through: [{ landmark: 'baseCentreFront' }, { landmark: 'neckTopFront' }],
          },
        ],
      },
      { targetTriangles: 3000 },
    );
    expect(result.ok).toBe(true);
    const narrow = result.issues.filter((issue) => issue.code === 'panel-narrow');
    expect(narrow).toHaveLength(1);
    expect(narrow[0].measured).toBeCloseTo(20, 1);
    expect(inEnglish(narrow[0].message)).toContain('2 cm');
  });

  it('warns of corners under 30° with their angle', () => {
    // A line that leaves the centre back at 1 in 3: atan(1/3) = 18.4° on the cylinder.
    const slant: SeamLayout['lines'][number] = {
      id: 'slant',
      name: 'slant',
      side: 'right',
      through: [
        { landmark: 'baseCentreBack', v: 330 },
        { u: -Math.PI / 2 + 30 / CYLINDER_RADIUS, v: 420 },
        { armhole: 0.8 },
      ],
    };
    const lines = upright8.lines.filter((line) => line.id !== 'princessBack');
    const result = cutIntoPanels(
      cylinder.surface,
      cylinder.form,
      { ...upright8, lines: [...lines, slant] },
      { targetTriangles: 6000 },
    );
    expect(result.issues.filter((issue) => issue.severity === 'error')).toEqual([]);
    const spikes = result.issues.filter((issue) => issue.code === 'panel-spike');
    expect(spikes.length).toBeGreaterThan(0);
    expect(spikes[0].measured).toBeGreaterThan(10);
    expect(spikes[0].measured).toBeLessThan(22);
    expect(inEnglish(spikes[0].message)).toContain('slant');
  });
});
