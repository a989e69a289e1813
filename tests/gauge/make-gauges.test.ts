import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { surfaceOfProject } from '../../src/core/assembly/index.ts';
import { exportForm } from '../../src/core/files/index.ts';
import type { Form } from '../../src/core/form/index.ts';
import { type GaugedForm, makeGauges } from '../../src/core/gauge/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { ENGLISH, inEnglish } from '../in-english.ts';
import { COARSE, sharedPipeline } from '../shared-pipeline.ts';

type Point = readonly [number, number];

/** A solid whose section is the same at every height: `at` goes round it counter-clockwise, angles from 0 to 2π. mm. */
function solid(at: (angle: number) => Point): GaugedForm {
  const [round, rows] = [720, 20];
  const positions: number[] = [];
  const triangles: number[] = [];
  for (let i = 0; i <= rows; i++) {
    for (let j = 0; j < round; j++) {
      positions.push(...at((2 * Math.PI * (j + 0.5)) / round), (500 * i) / rows);
      if (i === rows) continue;
      const [a, b] = [i * round + j, i * round + ((j + 1) % round)];
      triangles.push(a, b, b + round, a, b + round, a + round);
    }
  }
  const mesh = { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) };
  const name = { id: 'level.waist', values: {} };
  return { closed: mesh, shell: mesh, levels: [{ id: 'waist', name, z: 210 }], base: 0, cover: 0 };
}

const OVAL = solid((t) => [140 * Math.cos(t), 105 * Math.sin(t)]);
/** Two lobes in front, as breasts are: the middle lies 24 mm behind them. */
const LOBED = solid((t) => {
  const front = Math.max(0, Math.sin(t)) ** 2;
  return [140 * Math.cos(t), 100 * Math.sin(t) + front * 30 * Math.cos(t) ** 2 * 3];
});

function gaugesOf(form: GaugedForm, options = {}) {
  const made = makeGauges(form, options);
  if (!made.ok) throw new Error(made.issues.map(({ message }) => inEnglish(message)).join());
  return made.value;
}

function edgeOf(piece: ReturnType<typeof gaugesOf>[number], id: string): Point[] {
  const edge = piece.edges.find((one) => one.id === id);
  return pairs(edge?.points ?? []);
}

function pairs(flat: ArrayLike<number>): Point[] {
  return Array.from({ length: flat.length / 2 }, (_, i) => [flat[2 * i], flat[2 * i + 1]]);
}

function lengthOf(line: readonly Point[]): number {
  return line.slice(1).reduce((sum, [x, y], i) => sum + Math.hypot(x - line[i][0], y - line[i][1]), 0);
}

/** Distance of a point from a segment, as school geometry has it. */
function toSegment([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): number {
  const [ux, uy] = [bx - ax, by - ay];
  const square = ux * ux + uy * uy;
  const t = square === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * ux + (y - ay) * uy) / square));
  return Math.hypot(x - ax - t * ux, y - ay - t * uy);
}

describe('half rings', () => {
  it.each([0, 2, 5.5])('round an oval are its girth and 2π × the clearance of %s mm long (Steiner)', (c) => {
    const [right, left] = gaugesOf(OVAL, { clearance: c, levels: ['waist'] });
    // Perimeter of the ellipse by the trapezium rule, which for a periodic integrand is exact to rounding.
    const n = 4000;
    let girth = 0;
    for (let i = 0; i < n; i++) {
      const t = (2 * Math.PI * i) / n;
      girth += ((2 * Math.PI) / n) * Math.hypot(140 * Math.sin(t), 105 * Math.cos(t));
    }
    const found = lengthOf(edgeOf(right, 'inner')) + lengthOf(edgeOf(left, 'inner'));
    expect(Math.abs(found - girth - 2 * Math.PI * c)).toBeLessThan(0.1);
  });

  it('are smaller by a cover that goes on later', () => {
    const lengths = [0, 3].map((cover) => {
      const [right] = gaugesOf({ ...OVAL, cover }, { clearance: 2, levels: ['waist'] });
      return lengthOf(edgeOf(right, 'inner'));
    });
    expect(Math.abs(lengths[0] - lengths[1] - Math.PI * 3)).toBeLessThan(0.05);
  });

  it('have tips along the middle plane, square to the outer side, and a strip of the asked width where narrowest', () => {
    const [right] = gaugesOf(OVAL, { clearance: 2, strip: 45, levels: ['waist'] });
    for (const tip of ['front', 'back']) for (const [x] of edgeOf(right, tip)) expect(x).toBe(0);
    const outer = edgeOf(right, 'outer');
    expect(Math.max(...outer.map(([x]) => x))).toBeCloseTo(140 + 2 + 45, 1);
    expect(Math.max(...outer.map(([, y]) => y))).toBeCloseTo(105 + 2 + 45, 1);
    expect(Math.min(...outer.map(([, y]) => y))).toBeCloseTo(-105 - 2 - 45, 1);
  });

  it('can be put on from the side past what is deeper than the middle', () => {
    const [right, left] = gaugesOf(LOBED, { levels: ['waist'] });
    const n = 360;
    for (const [piece, sign] of [[right, 1] as const, [left, -1] as const]) {
      const ring = piece.edges.flatMap(({ points }) => pairs(points));
      for (let away = 0; away <= 200; away += 8) {
        for (let i = 0; i < n; i++) {
          const t = (2 * Math.PI * i) / n;
          const front = Math.max(0, Math.sin(t)) ** 2;
          const x = 140 * Math.cos(t) - sign * away;
          const y = 100 * Math.sin(t) + front * 90 * Math.cos(t) ** 2;
          expect(isWithin(ring, x, y)).toBe(false);
        }
      }
      // It still goes past the lobe's tip: nothing is cut off that could be held there.
      expect(Math.abs(edgeOf(piece, 'front')[0][0])).toBeLessThan(110);
    }
  });

  it('name every level they do not know, and lengths out of range, with the limit', () => {
    const made = makeGauges(OVAL, { levels: ['knee', 'waist', 'ankle'], clearance: 12, strip: 20 });
    expect(made.ok).toBe(false);
    expect(made.issues.map(({ path, limit }) => [path, limit])).toEqual([
      ['gauges.clearance', 10],
      ['gauges.strip', 30],
      ['gauges.levels', undefined],
      ['gauges.levels', undefined],
    ]);
  });

  it('leave out a level without a closed outline where all are wanted, and refuse it by name', () => {
    const gap = { ...OVAL, levels: [{ ...OVAL.levels[0], z: 700 }] };
    const all = makeGauges(gap);
    expect(all.ok && all.value.map(({ id }) => id)).toEqual(['gauge-profile-front', 'gauge-profile-back']);
    expect(all.issues.map(({ severity }) => severity)).toEqual(['warning']);
    expect(makeGauges(gap, { levels: ['waist'] }).ok).toBe(false);
  });
});

/** Even-odd rule. */
function isWithin(ring: readonly Point[], x: number, y: number): boolean {
  let inside = false;
  for (const [i, [ax, ay]] of ring.entries()) {
    const [bx, by] = ring[(i + 1) % ring.length];
    if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
  }
  return inside;
}

describe('gauges in files', () => {
  it('read again from the drawing lie their clearance off the form, cut apart here', async () => {
    const form = averageDraft();
    const svg = await svgOf(form);
    for (const level of form.shell.levels) {
      const z = form.shell.mesh.positions[3 * level.vertices[0] + 2];
      const cuts = cutOpen(form, z);
      for (const [side, sign] of [['right', 1] as const, ['left', -1] as const]) {
        const own = cuts.filter(([a, b]) => sign * (a[0] + b[0]) > 0);
        compare(pathOf(svg, `gauge-${level.id}-${side}`), own, [sign, 0]);
      }
    }
    const [front, back] = [Math.PI / 2, -Math.PI / 2].map((u) => middleLine(form, u));
    compare(pathOf(svg, 'gauge-profile-front'), front, [1, 0]);
    compare(pathOf(svg, 'gauge-profile-back'), back, [-1, 0]);
  });
});

const CLEARANCE = 2;
const STRIP = 40;

/**
 * The cut line from the file, moved so that its outer side lies where clearance and strip put it, against the section: what is nearer to
 * it than half the strip is the inner edge, and lies the clearance off; and there is a great deal of it.
 */
function compare(read: readonly Point[], section: readonly (readonly [Point, Point])[], [sign]: Point) {
  const widest = Math.max(...section.flat().map(([x]) => sign * x));
  const outer = Math.max(...read.map(([x]) => sign * x));
  const dx = sign * (widest + CLEARANCE + STRIP - outer);
  const middleOf = (ys: readonly number[]) => 0.5 * (Math.min(...ys) + Math.max(...ys));
  const reach = section.flat();
  // Right and left edges reach equally far above and below; side views begin and end where the shell does.
  const dy = middleOf(reach.map(([, y]) => y)) - middleOf(read.map(([, y]) => y));
  const moved = read.map(([x, y]): Point => [x + dx, y + dy]);
  const far = moved.map((point) => Math.min(...section.map(([a, b]) => toSegment(point, a, b))));
  const inner = far.filter((distance) => distance < STRIP / 2);
  expect(inner.length).toBeGreaterThan(30);
  // Triangles are 8 mm long: where the front bends sharply, chords and curve part by a few tenths. Card is cut no finer.
  for (const distance of inner) expect(Math.abs(distance - CLEARANCE)).toBeLessThan(0.5);
  const squares = inner.map((distance) => (distance - CLEARANCE) ** 2);
  expect(Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length)).toBeLessThan(0.1);
}

function averageDraft(): Form {
  const read = parseProject(readFileSync('shared/demos/average.loftseam.json', 'utf8'));
  if (!read.ok) throw new Error('demo');
  const made = sharedPipeline.makeForm(read.value, { ...COARSE, targetTriangles: 20000, isDraft: true });
  if (!made.ok) throw new Error('form');
  return made.value;
}

async function svgOf(form: Form): Promise<string> {
  const bytes = readFileSync('node_modules/dejavu-fonts-ttf/ttf/DejaVuSans.ttf');
  const files = await exportForm(form, {
    say: ENGLISH.say,
    formats: ['gauges'],
    font: { name: 'DejaVuSans', bytes },
  });
  const svg = files.ok ? files.value.find(({ name }) => name === 'gauges.svg')?.content : undefined;
  if (typeof svg !== 'string') throw new Error('gauges.svg');
  return svg;
}

/** Corners of a cut line, y up; curves by points on them. */
function pathOf(svg: string, id: string): Point[] {
  const d = new RegExp(`<path id="${id}/cut" d="([^"]+)"`).exec(svg)?.[1];
  if (!d) throw new Error(id);
  const points: Point[] = [];
  for (const [, command, rest] of d.matchAll(/([MLC])([^MLCZ]*)/g)) {
    const at = pairs(
      rest
        .trim()
        .split(/[\s,]+/)
        .map(Number),
    );
    if (command !== 'C') {
      const before = points[points.length - 1];
      // Short sides are chords of the curve.
      if (before && Math.hypot(at[0][0] - before[0], at[0][1] - before[1]) < 20)
        points.push([0.5 * (before[0] + at[0][0]), 0.5 * (before[1] + at[0][1])]);
      points.push(...at);
    } else {
      for (let k = 0; k < at.length; k += 3) {
        const [p, q, r, s] = [points[points.length - 1], at[k], at[k + 1], at[k + 2]];
        for (let t = 0.1; t < 1.05; t += 0.1) {
          const mix = (i: 0 | 1) =>
            (1 - t) ** 3 * p[i] + 3 * (1 - t) ** 2 * t * q[i] + 3 * (1 - t) * t * t * r[i] + t ** 3 * s[i];
          points.push([mix(0), mix(1)]);
        }
      }
    }
  }
  return points.map(([x, y]) => [x, -y]);
}

/** Front or back of the body of this demo, which is the same right and left, by its surface and not by any mesh. */
function middleLine({ project, body }: Form, u: number): (readonly [Point, Point])[] {
  const surface = surfaceOfProject(project, body);
  const [low, high] = surface.vRange;
  const chart = Float64Array.from({ length: 1002 }, (_, i) =>
    i % 2 === 0 ? u : low + ((high - low) * (i >> 1)) / 500,
  );
  const line = surface.evaluate(chart);
  const at = (i: number): Point => [line[3 * i + 1], line[3 * i + 2]];
  return Array.from({ length: 500 }, (_, i) => [at(i), at(i + 1)] as const);
}

/** Where the level plane meets each triangle of the closed form. */
function cutOpen({ closedMesh }: Form, at: number): (readonly [Point, Point])[] {
  const { positions: p, triangles } = closedMesh;
  const found: (readonly [Point, Point])[] = [];
  for (let f = 0; f < triangles.length; f += 3) {
    const ends: Point[] = [];
    for (let k = 0; k < 3; k++) {
      const [a, b] = [3 * triangles[f + k], 3 * triangles[f + ((k + 1) % 3)]];
      const [below, above] = [p[a + 2] - at, p[b + 2] - at];
      if (below < 0 === above < 0) continue;
      const t = below / (below - above);
      ends.push([p[a] + t * (p[b] - p[a]), p[a + 1] + t * (p[b + 1] - p[a + 1])]);
    }
    if (ends.length === 2) found.push([ends[0], ends[1]]);
  }
  return found;
}
