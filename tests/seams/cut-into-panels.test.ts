import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  eulerCharacteristic,
  findBoundaryLoops,
  type Mesh,
  measureArea,
  measurePath,
  measureSmallestAngles,
  measureTriangleNormals,
  validateMesh,
} from '../../src/core/mesh/index.ts';
import {
  cutIntoPanels,
  findLayout,
  LAYOUTS,
  MAX_MARK_GAP,
  MIN_MARK_GAP,
  type SeamedShell,
  type SeamLayout,
  type ShellPanel,
} from '../../src/core/seams/index.ts';
import { inEnglish } from '../in-english.ts';
import {
  barrel,
  CYLINDER_RADIUS,
  cylinder,
  leaningTorso,
  type SampleForm,
  surfaceOf,
  TOP,
  torso,
} from './sample-forms.ts';

const SEED = 20260417;

function cut(sample: SampleForm, layout: SeamLayout | string, targetTriangles = 1500): SeamedShell {
  const found = typeof layout === 'string' ? findLayout(layout)! : layout;
  const result = cutIntoPanels(sample.surface, sample.form, found, { targetTriangles });
  expect(result.issues).toEqual([]);
  if (!result.ok) throw new Error('not cut');
  return result.value;
}

function codesOf(sample: SampleForm, layout: SeamLayout): string[] {
  const result = cutIntoPanels(sample.surface, sample.form, layout, { targetTriangles: 1500 });
  expect(result.ok).toBe(false);
  return result.issues.map((issue) => issue.code);
}

/** Everything that must hold of any cut shell. */
function checkShell(shell: SeamedShell): void {
  expect(validateMesh(shell.mesh)).toEqual([]);
  // A trunk with four openings: sphere less four disks.
  expect(eulerCharacteristic(shell.mesh)).toBe(2 - 4);
  expect(findBoundaryLoops(shell.mesh)).toHaveLength(4);
  checkCover(shell);
  for (const panel of shell.panels) checkPanel(shell, panel);
  checkSeams(shell);
  checkLevels(shell);
  checkOpenings(shell);
}

function checkCover(shell: SeamedShell): void {
  const area = shell.panels.reduce((sum, panel) => sum + measureArea(panel.mesh), 0);
  expect(area / measureArea(shell.mesh)).toBeCloseTo(1, 10);
  const triangles = shell.panels.reduce((sum, panel) => sum + panel.mesh.triangles.length, 0);
  expect(triangles).toBe(shell.mesh.triangles.length);
  expect(new Set(shell.panels.map((panel) => panel.id)).size).toBe(shell.panels.length);
  expect(new Set(shell.seams.map((seam) => seam.id)).size).toBe(shell.seams.length);
  expect(new Set(shell.seams.map((seam) => seam.letter)).size).toBe(shell.seams.length);
}

function checkPanel(shell: SeamedShell, panel: ShellPanel): void {
  expect(validateMesh(panel.mesh)).toEqual([]);
  expect(eulerCharacteristic(panel.mesh)).toBe(1);
  const loops = findBoundaryLoops(panel.mesh);
  expect(loops).toHaveLength(1);
  // The edges are the whole border, in its direction, each starting where the one before ends.
  const walk = panel.edges.flatMap((edge) => Array.from(edge.vertices.slice(0, -1)));
  const start = loops[0].indexOf(walk[0]);
  expect(walk).toEqual([...loops[0].slice(start), ...loops[0].slice(0, start)]);
  panel.edges.forEach((edge, i) => {
    expect(panel.edges[(i + 1) % panel.edges.length].vertices[0]).toBe(
      edge.vertices[edge.vertices.length - 1],
    );
  });
  for (let v = 0; v < panel.sourceVertex.length; v++) {
    for (let d = 0; d < 3; d++) {
      expect(panel.mesh.positions[3 * v + d]).toBe(shell.mesh.positions[3 * panel.sourceVertex[v] + d]);
    }
    const turns = (panel.chart[2 * v] - shell.chart[2 * panel.sourceVertex[v]]) / (2 * Math.PI);
    expect(Math.abs(turns - Math.round(turns))).toBeLessThan(1e-12);
  }
}

function checkSeams(shell: SeamedShell): void {
  for (const seam of shell.seams) {
    const sides = seam.panels.map((id, k) => {
      const panel = shell.panels.find((candidate) => candidate.id === id)!;
      // Left of the seam's direction the border runs along it, right of it against it.
      const edge = panel.edges.find(
        (e) => e.kind === 'seam' && e.id === seam.id && e.reversed === (k === 1),
      )!;
      const shellVertices = Array.from(edge.vertices, (v) => panel.sourceVertex[v]);
      return edge.reversed ? shellVertices.reverse() : shellVertices;
    });
    expect(sides[0]).toEqual(Array.from(seam.points));
    expect(sides[1]).toEqual(Array.from(seam.points));
    expect(seam.length3d).toBeCloseTo(measurePath(shell.mesh, seam.points), 9);
    checkMarks(shell, seam);
  }
}

function checkMarks(shell: SeamedShell, seam: SeamedShell['seams'][number]): void {
  const { marks, points } = seam;
  expect(marks[0]).toMatchObject({ kind: 'end', index: 0 });
  expect(marks[marks.length - 1]).toMatchObject({ kind: 'end', index: points.length - 1 });
  for (let i = 1; i < marks.length; i++) {
    const gap = measurePath(shell.mesh, points.slice(marks[i - 1].index, marks[i].index + 1));
    expect(gap).toBeLessThanOrEqual(MAX_MARK_GAP);
    if (marks.length > 2) expect(gap).toBeGreaterThanOrEqual(MIN_MARK_GAP);
  }
}

function checkLevels(shell: SeamedShell): void {
  const edges = edgeSet(shell.mesh);
  for (const level of shell.levels) {
    const v = shell.chart[2 * level.vertices[0] + 1];
    let turned = 0;
    level.vertices.forEach((a, i) => {
      const b = level.vertices[(i + 1) % level.vertices.length];
      expect(edges.has(`${a},${b}`)).toBe(true);
      expect(shell.chart[2 * a + 1]).toBe(v);
      const step = shell.chart[2 * b] - shell.chart[2 * a];
      turned += step < -Math.PI ? step + 2 * Math.PI : step;
    });
    expect(turned).toBeCloseTo(2 * Math.PI, 9);
    expect(new Set(level.vertices).size).toBe(level.vertices.length);
    // Parts inside panels and seams along the level make up the whole line.
    const inside = shell.panels.flatMap((panel) =>
      panel.levels
        .filter((part) => part.id === level.id)
        .map((part) => measurePath(panel.mesh, part.vertices)),
    );
    const sewn = shell.seams.filter((seam) => seam.alongLevel === level.id).map((seam) => seam.length3d);
    const total = [...inside, ...sewn].reduce((sum, length) => sum + length, 0);
    expect(total).toBeCloseTo(level.length3d, 8);
  }
}

function edgeSet(mesh: Mesh): Set<string> {
  const edges = new Set<string>();
  for (let e = 0; e < mesh.triangles.length; e++) {
    const a = mesh.triangles[e];
    const b = mesh.triangles[e % 3 === 2 ? e - 2 : e + 1];
    edges.add(`${a},${b}`).add(`${b},${a}`);
  }
  return edges;
}

function checkOpenings(shell: SeamedShell): void {
  const borders = findBoundaryLoops(shell.mesh);
  for (const opening of shell.openings) {
    // A border has the surface on its left; the opening seen from outside is walked the other way.
    const reversed = Array.from(opening.vertices).reverse();
    const border = borders.find((loop) => loop.includes(reversed[0]))!;
    const start = reversed.indexOf(border[0]);
    expect([...reversed.slice(start), ...reversed.slice(0, start)]).toEqual(Array.from(border));
  }
}

describe('every layout on every form', () => {
  for (const sample of [cylinder, barrel, torso, leaningTorso]) {
    it.each(LAYOUTS.map((layout) => layout.id))(`${sample.name}: %s`, (id) => {
      checkShell(cut(sample, id));
    });
  }
});

describe('closed forms on the cylinder', () => {
  const shell = cut(cylinder, 'upright8', 6000);

  it('level girths are 2πR less the chords, uprights their height', () => {
    for (const level of shell.levels) {
      const n = level.vertices.length;
      expect(level.length3d).toBeLessThan(2 * Math.PI * CYLINDER_RADIUS);
      // Chords of n nearly equal parts: relative loss (π/n)²/6, a third more for uneven ones.
      expect(1 - level.length3d / (2 * Math.PI * CYLINDER_RADIUS)).toBeLessThan(
        (1.4 * (Math.PI / n) ** 2) / 6,
      );
    }
    // From the base to the neck's base, 40 mm below the top.
    const centreFront = shell.seams.find((seam) => seam.id === 'centreFront')!;
    expect(centreFront.length3d).toBeCloseTo(TOP - 40, 9);
    const centreBack = shell.seams.filter((seam) => seam.lineId === 'centreBack');
    expect(centreBack.map((seam) => seam.length3d)).toEqual([
      expect.closeTo(TOP - 40, 9),
      expect.closeTo(40, 9),
    ]);
  });

  it('area is that of the chart less two ovals', () => {
    const oval = Math.PI * 0.3 * CYLINDER_RADIUS * 35;
    const whole = 2 * Math.PI * CYLINDER_RADIUS * TOP - 2 * oval;
    expect(measureArea(shell.mesh) / whole).toBeGreaterThan(0.997);
    expect(measureArea(shell.mesh) / whole).toBeLessThan(1.0005);
  });

  it('seams cross levels at their own heights, each with a mark', () => {
    const side = shell.seams.find((seam) => seam.id === 'sideRight')!;
    const heights = side.marks
      .filter((mark) => mark.kind === 'level')
      .map((mark) => shell.mesh.positions[3 * side.points[mark.index] + 2]);
    // The upper chest lies 10 mm below the armpit: too near the end for a mark of its own.
    expect(heights).toEqual([100, 190, 300, 390, 450]);
  });
});

describe('shape of triangles', () => {
  it.each([
    ['torso', torso],
    ['barrel', barrel],
    ['leaning torso', leaningTorso],
  ])('%s: count within a tenth, hardly a sliver, all facing outwards', (_, sample) => {
    const shell = cut(sample, 'upright8', 5000);
    const count = shell.mesh.triangles.length / 3;
    expect(count).toBeGreaterThan(4500);
    expect(count).toBeLessThan(5500);
    const angles = Array.from(measureSmallestAngles(shell.mesh), (angle) => (angle * 180) / Math.PI);
    expect(Math.min(...angles)).toBeGreaterThan(12);
    expect(angles.filter((angle) => angle < 20).length / count).toBeLessThan(0.005);
    expect(angles.filter((angle) => angle < 30).length / count).toBeLessThan(0.05);
    expect(countInward(sample, shell)).toBe(0);
  });
});

/** Triangles whose normal leans away from the surface's own normal ∂u × ∂v at their middle. */
function countInward(sample: SampleForm, shell: SeamedShell): number {
  const normals = measureTriangleNormals(shell.mesh);
  let count = 0;
  for (const panel of shell.panels) {
    const { triangles } = panel.mesh;
    const own = measureTriangleNormals(panel.mesh);
    for (let e = 0; e < triangles.length; e += 3) {
      const [u, v] = [0, 1].map(
        (d) =>
          (panel.chart[2 * triangles[e] + d] +
            panel.chart[2 * triangles[e + 1] + d] +
            panel.chart[2 * triangles[e + 2] + d]) /
          3,
      );
      const h = 1e-4;
      const p = sample.surface.evaluate(Float64Array.of(u - h, v, u + h, v, u, v - 100 * h, u, v + 100 * h));
      const a = [p[3] - p[0], p[4] - p[1], p[5] - p[2]];
      const b = [p[9] - p[6], p[10] - p[7], p[11] - p[8]];
      const dot =
        own[e] * (a[1] * b[2] - a[2] * b[1]) +
        own[e + 1] * (a[2] * b[0] - a[0] * b[2]) +
        own[e + 2] * (a[0] * b[1] - a[1] * b[0]);
      if (!(dot > 0)) count++;
    }
  }
  expect(normals.length).toBe(shell.mesh.triangles.length);
  return count;
}

describe('left and right', () => {
  it('mirrors a symmetric form bit for bit', () => {
    const shell = cut(torso, 'upright12Bust');
    const left = shell.panels.filter((panel) => panel.side === 'left');
    // All but the neck band, which reaches over both halves.
    expect(left).toHaveLength((shell.panels.length - 1) / 2);
    for (const panel of left) {
      const right = shell.panels.find((candidate) => candidate.id === panel.mirrorOf)!;
      expect(right.side).toBe('right');
      const mirrored = right.mesh.positions.map((value, i) => (i % 3 === 0 ? 0 - value : value));
      expect(panel.mesh.positions.map((value) => value + 0)).toEqual(mirrored.map((value) => value + 0));
      const turned = right.mesh.triangles.map(
        (_, e, all) => all[e % 3 === 0 ? e : e % 3 === 1 ? e + 1 : e - 1],
      );
      expect(panel.mesh.triangles).toEqual(turned);
    }
  });

  it('evaluates both halves of an asymmetric form', () => {
    const shell = cut(leaningTorso, 'upright8');
    expect(shell.panels.every((panel) => panel.mirrorOf === undefined)).toBe(true);
    const again = leaningTorso.surface.evaluate(shell.chart);
    for (let i = 0; i < again.length; i++) expect(shell.mesh.positions[i]).toBe(again[i]);
  });

  it('puts every vertex of a symmetric form on its surface', () => {
    const shell = cut(torso, 'upright8');
    const again = torso.surface.evaluate(shell.chart);
    for (let i = 0; i < again.length; i++)
      expect(Math.abs(shell.mesh.positions[i] - again[i])).toBeLessThan(1e-9);
  });
});

describe('layouts', () => {
  it('have the panels and seams their names promise', () => {
    const count = (id: string): [number, number] => {
      const shell = cut(torso, id);
      return [shell.panels.length, shell.seams.length];
    };
    // 8: 4 panels a half; centre seams 2, and a half has princess front and back, side, shoulder in two. The neck
    // band adds a panel, its part of the centre back and two parts of the neck base on each half.
    expect(count('upright8')).toEqual([9, 17]);
    expect(count('upright12')).toEqual([13, 21]);
    // Two front columns divided; upright front seams in two, the side ends panels once more, two level parts.
    expect(count('upright8Bust')).toEqual([13, 26]);
    expect(count('upright12Bust')).toEqual([19, 34]);
    // Every panel in two; uprights in two but the shoulders; four waist parts a half.
    expect(count('upright8Waist')).toEqual([17, 33]);
    // No side seams: two panels less.
    expect(count('upright6')[0]).toBe(6 + 1);
    expect(count('upright8Armhole')[0]).toBe(8 + 1);
    expect(count('upright16')[0]).toBe(16 + 1);
    // Above the yoke one back panel on each half, below it two.
    expect(count('upright8Yoke')[0]).toBe(8 + 2 + 1);
    // Two front columns divided on each half.
    expect(count('upright8Underbust')[0]).toBe(8 + 4 + 1);
    expect(count('upright8Hip')[0]).toBe(8 + 8 + 1);
  });

  it('take level seams at any height: round the neck, and across the back from armhole to centre', () => {
    const upright8 = findLayout('upright8')!;
    const yoke: SeamLayout['lines'][number] = {
      id: 'yoke',
      name: 'yoke',
      side: 'right',
      alongHeight: { v: 560 },
      through: [{ landmark: 'baseCentreBack' }, { armhole: 0.7 }],
    };
    const princessBack = upright8.lines.find((line) => line.id === 'princessBack')!;
    const toYoke = {
      ...princessBack,
      through: [...princessBack.through.slice(0, -2), { landmark: 'bladePointRight', onLine: 'yoke' }],
    };
    const lines = upright8.lines.map((line) => (line.id === 'princessBack' ? toYoke : line));
    const shell = cut(cylinder, { ...upright8, lines: [...lines, yoke] }, 6000);
    checkShell(shell);
    // Each half of the back: two panels below the yoke, one above.
    expect(shell.panels).toHaveLength(9 + 2);
    // Arc of the cylinder: R times the angle from centre back to the oval, less the chords.
    const oval = 0.3 * Math.sqrt(1 - ((560 - 565) / 35) ** 2);
    const along = shell.seams.filter((seam) => seam.lineId === 'yoke' && seam.id.includes('Right'));
    const length = along.reduce((sum, seam) => sum + seam.length3d, 0);
    expect(along.every((seam) => seam.isLevel && seam.alongLevel === undefined)).toBe(true);
    expect(length / (CYLINDER_RADIUS * (Math.PI / 2 - oval))).toBeCloseTo(1, 2);
    const neck = shell.seams.filter((seam) => seam.lineId === 'neckBase');
    const girth = neck.reduce((sum, seam) => sum + seam.length3d, 0);
    expect(girth / (2 * Math.PI * CYLINDER_RADIUS)).toBeCloseTo(1, 2);
  });

  it('lead princess lines past the bust point and the blade point to the middle of the shoulder', () => {
    const shell = cut(torso, 'upright8', 5000);
    const passes = (id: string, u: number, v: number): boolean => {
      const seam = shell.seams.find((candidate) => candidate.id === id)!;
      const at = torso.surface.evaluate(Float64Array.of(u, v));
      let near = Infinity;
      for (let i = 1; i < seam.points.length; i++)
        near = Math.min(near, distanceTo(shell.mesh, seam.points[i - 1], seam.points[i], at));
      return near < 0.6;
    };
    // 0.07 outside the bust point and 0.08 outside the shoulder blade, rad.
    expect(passes('princessFrontRight', 1.08 - 0.07, 450)).toBe(true);
    expect(passes('princessFrontLeft', Math.PI - 1.08 + 0.07, 450)).toBe(true);
    expect(passes('princessBackRight', -0.95 + 0.08, 480)).toBe(true);
    expect(passes('princessFrontRight', 0, 630)).toBe(true);
  });

  it('give names without repeats that say where a panel is', () => {
    expect(
      cut(torso, 'upright8Bust')
        .panels.filter((panel) => panel.side === 'right')
        .map((panel) => inEnglish(panel.name))
        .sort(),
    ).toEqual([
      'centre back right',
      'lower centre front right',
      'lower side front right',
      'side back right',
      'upper centre front right',
      'upper side front right',
    ]);
  });

  it('without a centre front seam have front panels that reach over both halves', () => {
    const upright8 = findLayout('upright8')!;
    const layout = { ...upright8, lines: upright8.lines.filter((line) => line.id !== 'centreFront') };
    const shell = cut(torso, layout);
    checkShell(shell);
    expect(shell.panels).toHaveLength(8);
    expect(shell.panels.filter((panel) => panel.side === 'centre').map((panel) => panel.id)).toEqual([
      'centreFront',
      'neckBand',
    ]);
  });
});

function distanceTo(mesh: Mesh, a: number, b: number, q: Float64Array): number {
  const p = mesh.positions;
  let [along, length] = [0, 0];
  for (let d = 0; d < 3; d++) {
    const edge = p[3 * b + d] - p[3 * a + d];
    along += edge * (q[d] - p[3 * a + d]);
    length += edge * edge;
  }
  const t = Math.min(1, Math.max(0, along / length));
  return Math.hypot(...[0, 1, 2].map((d) => p[3 * a + d] + t * (p[3 * b + d] - p[3 * a + d]) - q[d]));
}

describe('faults are told by line', () => {
  const upright8 = findLayout('upright8')!;
  const without = (...ids: string[]): SeamLayout => ({
    ...upright8,
    lines: upright8.lines.filter((line) => !ids.includes(line.id)),
  });
  const withThrough = (id: string, through: SeamLayout['lines'][number]['through']): SeamLayout => ({
    ...upright8,
    lines: upright8.lines.map((line) => (line.id === id ? { ...line, through } : line)),
  });

  it('a ring round the trunk', () => {
    const shoulder = upright8.lines.find((line) => line.id === 'shoulder')!;
    const toTop = { ...shoulder, through: [...shoulder.through, { landmark: 'neckTopSideRight' }] };
    const layout = { ...upright8, lines: [toTop] };
    expect(codesOf(torso, layout)).toEqual(['panel-not-a-disk']);
  });

  it('an armhole that no line reaches', () => {
    expect(codesOf(torso, without('side', 'shoulder', 'princessFront', 'princessBack'))).toEqual([
      'armhole-not-reached',
    ]);
  });

  it('a line that ends nowhere', () => {
    const layout = withThrough('side', [{ landmark: 'baseSideRight' }, { u: 0, v: 505 }]);
    const result = cutIntoPanels(torso.surface, torso.form, layout, { targetTriangles: 1500 });
    expect(result.issues).toMatchObject([{ code: 'line-end-loose', path: 'lines.side' }]);
  });

  it('lines that cross', () => {
    const layout = withThrough('princessFront', [
      { u: -0.4, v: 0 },
      { u: 0.5, v: 300 },
      { landmark: 'bustPointRight' },
      {
        landmark: 'shoulderPointRight',
        toward: { landmark: 'neckSideRight', fraction: 0.5 },
        onLine: 'shoulder',
      },
    ]);
    const result = cutIntoPanels(torso.surface, torso.form, layout, { targetTriangles: 1500 });
    expect(result.issues).toMatchObject([{ code: 'lines-cross', path: 'lines.princessFront' }]);
    expect(inEnglish(result.issues[0].message)).toContain('side');
  });

  it('a line over the armhole, over the centre, downwards, to unknown places', () => {
    const to = (...through: SeamLayout['lines'][number]['through']): string[] =>
      codesOf(torso, withThrough('princessFront', through));
    expect(to({ u: 0.9, v: 0 }, { u: 0.2, v: 545 }, { landmark: 'neckTopFront', u: -0.5 })).toContain(
      'lines-cross',
    );
    expect(to({ u: 0.9, v: 0 }, { u: 2, v: 545 })).toEqual(['line-leaves-half']);
    expect(to({ u: 0.9, v: 300 }, { u: 0.9, v: 100 })).toEqual(['line-not-rising']);
    expect(to({ u: 0.9, v: 0 }, { landmark: 'elbow' })).toEqual(['landmark-unknown']);
    expect(to({ u: 0.9, v: 0 }, { level: 'knee', u: 1 })).toEqual(['level-unknown']);
    expect(to({ u: 0.9, v: 0 })).toEqual(['line-too-short']);
    expect(to({ u: 0.9, v: 0 }, { u: 0.9, v: 690, onLine: 'nowhere' })).toEqual(['line-unknown']);
    expect(to({ u: 0.9, v: 0 }, { u: 0.9, v: 550, onLine: 'shoulder' })).toEqual(['line-misses-line']);
  });

  it('a piece too small to sew, as a warning', () => {
    // From the armhole to the neck side a little in front of the shoulder seam; the princess lines keep clear of it.
    const through: Record<string, SeamLayout['lines'][number]['through']> = {
      centreFront: [{ landmark: 'baseCentreFront' }, { landmark: 'neckTopFront' }],
      shoulder: [{ armhole: 0.5 }, { landmark: 'neckSideRight' }, { landmark: 'neckTopSideRight' }],
      princessFront: [
        { u: 0.95, v: 0 },
        { landmark: 'bustPointRight' },
        { landmark: 'neckTopFront', u: -0.6 },
      ],
      princessBack: [
        { u: -0.95, v: 0 },
        { landmark: 'bladePointRight' },
        { landmark: 'neckTopFront', u: -2.5 },
      ],
    };
    const lines: SeamLayout['lines'] = [
      ...without('neckBase').lines.map((line) => ({ ...line, through: through[line.id] ?? line.through })),
      {
        id: 'sliver',
        name: 'sliver',
        side: 'right',
        through: [{ armhole: 0.49 }, { u: 0.12, v: 640 }, { landmark: 'neckSideRight', onLine: 'shoulder' }],
      },
    ];
    const result = cutIntoPanels(
      torso.surface,
      torso.form,
      { ...upright8, lines },
      { targetTriangles: 1500 },
    );
    expect(result.ok).toBe(true);
    expect(result.issues.map((issue) => issue.code)).toEqual([
      'panel-small',
      'panel-small',
      'panel-spike',
      'panel-narrow',
    ]);
    expect(inEnglish(result.issues[0].message)).toContain('sliver');
  });

  it('a level seam that runs over the armhole or ends nowhere', () => {
    const across = (to: SeamLayout['lines'][number]['through'][number]): string[] =>
      codesOf(torso, {
        ...upright8,
        lines: [
          ...upright8.lines,
          {
            id: 'across',
            name: 'across',
            side: 'right',
            alongHeight: { v: 560 },
            through: [{ landmark: 'baseCentreBack' }, to],
          },
        ],
      });
    expect(across({ landmark: 'baseCentreFront' })).toEqual(['lines-cross']);
    expect(across({ u: -0.7 })).toEqual(['line-end-loose']);
    expect(across({ landmark: 'knee' })).toEqual(['landmark-unknown']);
  });

  it('a level that runs into the armhole', () => {
    const form = {
      ...torso.form,
      levels: torso.form.levels.map((level) => (level.id === 'upperChest' ? { ...level, v: 560 } : level)),
    };
    const result = cutIntoPanels(torso.surface, form, upright8, { targetTriangles: 1500 });
    expect(result.issues).toMatchObject([
      { code: 'level-meets-armhole', path: 'levels.upperChest', measured: 560 },
    ]);
  });
});

describe('any smooth form and any honest place of the lines', () => {
  it('cuts soundly, and the same way twice', () => {
    const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        fc.record({
          wave: within(0, 0.12),
          twist: within(-0.1, 0.1),
          depth: within(0.7, 1.2),
          bust: within(0.85, 1.2),
          waist: within(0.3, 0.45),
          outer: within(0.62, 0.75),
          count: fc.integer({ min: 400, max: 2500 }),
          layout: fc.constantFrom(...LAYOUTS.map((layout) => layout.id)),
        }),
        (it) => {
          const surface = surfaceOf([0, TOP], false, (u, v) => {
            const [x, y, z] = torso.surface.evaluate(Float64Array.of(u, v));
            const girth = 1 + it.wave * Math.sin(v / 60) + it.twist * Math.cos(2 * u);
            return [x * girth, y * girth * it.depth, z];
          });
          const form = {
            ...torso.form,
            landmarks: { ...torso.form.landmarks, bustPointRight: { u: it.bust, v: 450 } },
          };
          const layout = findLayout(it.layout)!;
          const moved = {
            ...layout,
            lines: layout.lines.map((line) => ({
              ...line,
              through: line.through.map((anchor) =>
                anchor.level === 'waist' && anchor.toward
                  ? {
                      ...anchor,
                      toward: {
                        ...anchor.toward,
                        fraction: line.id.startsWith('outer')
                          ? it.outer
                          : line.id.startsWith('inner')
                            ? it.waist / 2
                            : it.waist,
                      },
                    }
                  : anchor,
              ),
            })),
          };
          const result = cutIntoPanels(surface, form, moved, { targetTriangles: it.count });
          // Narrow pieces and sharp corners may well come of it; faults may not.
          expect(result.issues.filter((issue) => issue.severity === 'error')).toEqual([]);
          if (!result.ok) return;
          checkShell(result.value);
          // Cutting is half of the time: every third or so is cut once more.
          if (it.count % 3 === 0)
            expect(cutIntoPanels(surface, form, moved, { targetTriangles: it.count })).toEqual(result);
        },
      ),
      { seed: SEED, numRuns: 12 },
    );
  });
});
