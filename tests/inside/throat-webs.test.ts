import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Form } from '../../src/core/form/index.ts';
import type { InsideForm } from '../../src/core/inside/index.ts';
import { throatWebs } from '../../src/core/inside/throat-webs.ts';
import type { Piece } from '../../src/core/pattern/index.ts';
import { type Project, parseProject } from '../../src/core/project/index.ts';
import { LAYOUTS } from '../../src/core/seams/index.ts';
import { inEnglish } from '../in-english.ts';
import { formToMake } from '../making/form-to-make.ts';
import { COARSE, sharedPipeline } from '../shared-pipeline.ts';

function readDemo(id: string): Project {
  const file = path.join(import.meta.dirname, `../../shared/demos/${id}.loftseam.json`);
  const project = parseProject(readFileSync(file, 'utf8'));
  if (!project.ok) throw new Error(inEnglish(project.issues[0].message));
  return project.value;
}

function make(project: Project): Form {
  const form = sharedPipeline.makeForm(project, COARSE);
  if (!form.ok) throw new Error(form.issues.map((i) => `${i.path}: ${inEnglish(i.message)}`).join('\n'));
  return form.value;
}

const SIDES = ['right', 'left'] as const;

/** Sum of the chords of a polyline, n × 2. */
function lengthOf(points: Float64Array): number {
  let sum = 0;
  for (let i = 2; i < points.length; i += 2)
    sum += Math.hypot(points[i] - points[i - 2], points[i + 1] - points[i - 1]);
  return sum;
}

/** The nearest place of a polyline to a point: how far along it, and how far from it. */
function nearestOn(line: Float64Array, x: number, y: number): { along: number; gap: number } {
  let best = { along: 0, gap: Number.POSITIVE_INFINITY };
  let before = 0;
  for (let i = 0; i + 3 < line.length; i += 2) {
    const [dx, dy] = [line[i + 2] - line[i], line[i + 3] - line[i + 1]];
    const length = Math.hypot(dx, dy);
    const t = Math.min(1, Math.max(0, ((x - line[i]) * dx + (y - line[i + 1]) * dy) / length ** 2));
    const gap = Math.hypot(line[i] + t * dx - x, line[i + 1] + t * dy - y);
    if (gap < best.gap) best = { along: before + t * length, gap };
    before += length;
  }
  return best;
}

/** From the lower end, wherever the line was begun. */
function fromBelow(line: Float64Array, along: number): number {
  return line[1] < line[line.length - 1] ? along : lengthOf(line) - along;
}

/** The line of the throat on the panels: all stretches of it, with the pieces they are drawn on. */
function drawnLines(form: Form, side: 'right' | 'left') {
  return form.pieces.flatMap((piece) =>
    piece.levelLines.filter(({ id }) => id === `throat/${side}`).map((line) => ({ piece, line })),
  );
}

function pieceOf(form: Form, id: string): Piece {
  const piece = form.inside?.pieces.find((one) => one.id === id);
  if (!piece) throw new Error(id);
  return piece;
}

describe('throat webs as pieces', () => {
  const form = make(readDemo('average'));
  const sleeve = pieceOf(form, 'pole-sleeve');

  it.each(SIDES)('%s: letters, lengths and marks are those of the line on the panel', (side) => {
    const web = pieceOf(form, `throat-${side}`);
    const [drawn, ...others] = drawnLines(form, side);
    expect(others).toEqual([]);
    const [letter] = inEnglish(drawn.line.name).split(' ');
    const edge = web.sewLines.find(({ name }) => name === letter)!;
    expect(web.sewLines.filter(({ name }) => name === letter).length).toBe(1);
    expect(Math.abs(lengthOf(edge.points) - lengthOf(drawn.line.points))).toBeLessThan(0.2);
    for (const number of [1, 2]) {
      const name = `${letter}${number}`;
      const [x0, y0, x1, y1] = drawn.piece.levelLines.find(
        ({ id }) => id === `throat/${side}/${number}`,
      )!.points;
      const tick = nearestOn(drawn.line.points, (x0 + x1) / 2, (y0 + y1) / 2);
      expect(tick.gap).toBeLessThan(0.05);
      const [slit] = web.notches.filter((notch) => notch.name === name);
      // A slit stands square to the edge at its mark.
      const notch = nearestOn(edge.points, slit.points[0], slit.points[1]);
      const own = fromBelow(edge.points, notch.along);
      const theirs = fromBelow(drawn.line.points, tick.along);
      expect(Math.abs(own - theirs), name).toBeLessThan(0.3);
    }
  });

  it.each(SIDES)('%s: the other edge is as long as its place on the sleeve, mark on mark', (side) => {
    const web = pieceOf(form, `throat-${side}`);
    const place = sleeve.levelLines.find(({ id }) => id === `throat-${side}`)!;
    const [letter] = inEnglish(place.name).split(' ');
    const edge = web.sewLines.find(({ name }) => name === letter)!;
    expect(Math.abs(lengthOf(edge.points) - lengthOf(place.points))).toBeLessThan(0.2);
    for (const number of [1, 2]) {
      const name = `${letter}${number}`;
      const [x0, y0, x1, y1] = sleeve.sewLines.find((one) => one.name === name)!.points;
      const tick = nearestOn(place.points, (x0 + x1) / 2, (y0 + y1) / 2);
      expect(tick.gap).toBeLessThan(0.01);
      const [slit] = web.notches.filter((notch) => notch.name === name);
      const notch = nearestOn(edge.points, slit.points[0], slit.points[1]);
      const [own, theirs] = [fromBelow(edge.points, notch.along), fromBelow(place.points, tick.along)];
      expect(Math.abs(own - theirs), name).toBeLessThan(0.3);
    }
  });

  it('reach straight from the cloth to the sleeve, as deep as the body is', () => {
    for (const side of SIDES) {
      const web = pieceOf(form, `throat-${side}`);
      const { rungs } = form.inside!.shape.braces.find(({ id }) => id === web.id)!;
      for (const [end, rung] of [
        ['bottom', rungs[0]],
        ['top', rungs[rungs.length - 1]],
      ] as const) {
        const straight = Math.hypot(...rung.to.map((x, k) => x - rung.from[k]));
        const edge = web.sewLines.find(({ id }) => id === end)!;
        expect(Math.abs(lengthOf(edge.points) - straight)).toBeLessThan(0.05);
      }
    }
  });

  it('are each other’s mirror image on a body that is its own', () => {
    const [right, left] = SIDES.map((side) => {
      return form.inside!.shape.braces.find(({ id }) => id === `throat-${side}`)!.rungs;
    });
    expect(right.length).toBe(left.length);
    right.forEach(({ from, to, length }, k) => {
      [from, to].forEach(([x, y, z], end) => {
        const other = end === 0 ? left[k].from : left[k].to;
        expect(Math.hypot(x + other[0], y - other[1], z - other[2])).toBeLessThan(1e-6);
      });
      expect(length).toBeCloseTo(left[k].length, 6);
    });
  });

  it('have letters of their own, each on two partners', () => {
    const pieces = [...form.pieces, ...form.inside!.pieces];
    for (const side of SIDES) {
      const letters = pieceOf(form, `throat-${side}`)
        .sewLines.map(({ name }) => name)
        .filter((name) => /^[A-Z]+$/.test(name));
      expect(new Set(letters).size).toBe(2);
      for (const letter of letters) {
        const bearers = pieces.filter(
          ({ sewLines, levelLines }) =>
            sewLines.some(({ name }) => name === letter) ||
            levelLines.some(({ name }) => inEnglish(name).startsWith(`${letter} `)),
        );
        expect(bearers.length, letter).toBe(2);
      }
    }
  });

  it('are left out when asked, and the tie behind then ends with the others', () => {
    const project = readDemo('average');
    const without = make({ ...project, inside: { ...project.inside, throat: false } });
    const { braces } = without.inside!.shape;
    expect(braces.some(({ kind }) => kind === 'throat')).toBe(false);
    expect(without.pieces.some(({ levelLines }) => levelLines.some(({ id }) => /throat/.test(id)))).toBe(
      false,
    );
    const topOf = (one: Form, id: string): number => {
      const { rungs } = one.inside!.shape.braces.find((brace) => brace.id === id)!;
      return rungs[rungs.length - 1].v;
    };
    expect(topOf(without, 'tie-back')).toBe(topOf(without, 'tie-front'));
    expect(topOf(form, 'tie-back')).toBeGreaterThan(topOf(without, 'tie-back') + 50);
    expect(topOf(form, 'tie-front')).toBe(topOf(without, 'tie-front'));
  });
});

describe('what lies in the throat', () => {
  it.each(['average', 'large-bust', 'rounded-back', 'petite'])(
    '%s: is clear of neck, shoulders and tie',
    (id) => {
      const form = make(readDemo(id));
      const { braces, pole } = form.inside!.shape;
      // The neck block as it is cut, seen from the side: its foot goes straight from the nape to the neck's front.
      const foot = pieceOf(form, 'neck-block-side').sewLines.find(({ id: edge }) => edge === 'foot')!;
      const [back, zBack, front, zFront] = foot.points;
      const rungsOf = (name: string) => braces.find((one) => one.id === name)!.rungs;
      const over = (name: string) => rungsOf(name)[rungsOf(name).length - 1];
      for (const rung of [over('throat-right'), over('throat-left'), over('tie-back')]) {
        for (const [, y, z] of [rung.from, rung.to]) {
          if (y < back || y > front) continue;
          expect(zBack + ((y - back) / (front - back)) * (zFront - zBack) - z).toBeGreaterThan(3);
        }
        expect(rung.to[2]).toBeLessThan(pole.zTop - 30);
      }
      const supports = SIDES.map((side) => pieceOf(form, `shoulder-support-${side}`));
      for (const support of supports) {
        const xs = support.sewLines.flatMap(({ points }) => [...points].filter((_, i) => i % 2 === 0));
        expect(Math.min(...xs.map(Math.abs))).toBeGreaterThan(
          Math.max(...rungsOf('throat-right').map(({ from }) => from[0])),
        );
      }
      for (const side of SIDES) {
        const rungs = rungsOf(`throat-${side}`);
        const top = over('tie-front').z;
        expect(rungs[0].z).toBeGreaterThan(top + 3);
        expect(rungs[0].z).toBeLessThan(top + 15);
        // Upwards on the shell is upwards on the sleeve, or it could not be sewn on flat.
        for (let k = 1; k < rungs.length; k++) {
          expect(rungs[k].z).toBeGreaterThan(rungs[k - 1].z);
          expect(rungs[k].to[2]).toBeGreaterThan(rungs[k - 1].to[2]);
        }
        // From the tube out: between sleeve and cloth there is filling.
        expect(Math.min(...rungs.map(({ length }) => length))).toBeGreaterThan(15);
      }
    },
  );
});

describe('the line of the throat', () => {
  it.each(LAYOUTS.map(({ id }) => id))(
    'of layout %s lies on one front panel each, clear of its seams',
    (layout) => {
      const form = formToMake('uneven-shoulders', layout);
      for (const side of SIDES) {
        const [drawn, ...others] = drawnLines(form, side);
        expect(others).toEqual([]);
        const panel = form.shell.panels.find(({ id }) => id === drawn.piece.id)!;
        expect(Math.max(...panel.chart.filter((_, i) => i % 2 === 0).map(Math.sin))).toBeGreaterThan(0.5);
        const { points } = drawn.line;
        expect(lengthOf(points)).toBeGreaterThan(50);
        for (let i = 0; i < points.length; i += 2) {
          // Ends of the line come near the seam of the neck; an allowance is 10 mm as a rule.
          for (const seam of drawn.piece.sewLines)
            expect(nearestOn(seam.points, points[i], points[i + 1]).gap, seam.name).toBeGreaterThan(9);
        }
      }
    },
  );

  it('stops where a seam comes in its way, and what has no room at all is named', () => {
    const neckBaseV = 400;
    const surface = {
      vRange: [0, 500] as const,
      isMirrorSymmetric: true,
      // A cylinder of 100 mm.
      evaluate: (chart: Float64Array) =>
        Float64Array.from({ length: (3 * chart.length) / 2 }, (_, i) => {
          const [u, v] = chart.subarray(2 * Math.floor(i / 3));
          return [100 * Math.cos(u), 100 * Math.sin(u), v][i % 3];
        }),
    };
    const formWith = (panelAt: (v: number) => number) =>
      ({
        surface,
        levels: [],
        neckBaseV,
        letterOf: (k: number) => `L${k}`,
        measureOnPanels: (chart: Float64Array) => {
          const count = chart.length / 2 - 1;
          const panels = Array.from({ length: count }, (_, k) =>
            panelAt((chart[2 * k + 1] + chart[2 * k + 3]) / 2),
          );
          return { lengths: new Float64Array(count).fill(1), panels };
        },
      }) as unknown as InsideForm;
    const pole = { y: 0, radius: 12, reach: 16, sleeveGirth: 86, zBottom: 0, zTop: 480 };
    const crossed = throatWebs(
      formWith((v) => (v < 330 ? 0 : 1)),
      pole,
      200,
      0,
      0,
    );
    const [{ rungs }] = crossed.braces;
    expect(rungs[rungs.length - 1].v).toBeLessThanOrEqual(330);
    expect(rungs[rungs.length - 1].v).toBeGreaterThan(310);
    const without = throatWebs(
      formWith((v) => (v < 230 ? 0 : 1)),
      pole,
      200,
      0,
      0,
    );
    expect(without.braces).toEqual([]);
    expect(without.issues).toMatchObject([
      { code: 'throat-web-without-room', path: 'throat', severity: 'warning' },
    ]);
    expect(inEnglish(without.issues[0].message)).toMatch(/no line 5 cm high keeps 1\.4 cm from the seams/);
  });

  it('gives threads half way between level and square to the cloth', () => {
    // A cone that narrows by one in one: its normal rises by 45°, inwards it falls by as much, threads by half of it.
    const surface = {
      vRange: [0, 500] as const,
      isMirrorSymmetric: true,
      evaluate: (chart: Float64Array) =>
        Float64Array.from({ length: (3 * chart.length) / 2 }, (_, i) => {
          const [u, v] = chart.subarray(2 * Math.floor(i / 3));
          const r = 200 - 0.25 * v;
          return [r * Math.cos(u), r * Math.sin(u), 0.25 * v][i % 3];
        }),
    };
    const form = {
      surface,
      levels: [],
      neckBaseV: 400,
      letterOf: (k: number) => `L${k}`,
      measureOnPanels: (chart: Float64Array) => {
        const count = chart.length / 2 - 1;
        return { lengths: new Float64Array(count).fill(3), panels: Array.from({ length: count }, () => 0) };
      },
    } as unknown as InsideForm;
    // A thread towards the axis itself, so that the normal lies in its upright plane.
    const pole = { y: 0, radius: 0, reach: 0, sleeveGirth: 0, zBottom: 0, zTop: 480 };
    for (const { from, to } of throatWebs(form, pole, 200, 0, 0).braces[0].rungs) {
      const fall = (from[2] - to[2]) / Math.hypot(from[0], from[1]);
      expect(Math.atan(fall)).toBeCloseTo(Math.PI / 8, 3);
    }
  });
});
