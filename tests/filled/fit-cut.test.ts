import { beforeAll, describe, expect, it } from 'vitest';
import { fitCut } from '../../src/core/filled/index.ts';
import type { Form } from '../../src/core/form/index.ts';
import { demoToFill } from './filled-demo.ts';

/**
 * The average demo cut for its filling, the fit made on 3000 triangles, and filled here anew on 6000 from the body's shape, by the
 * statics that tests/statics holds to laws of shells. Bounds: what the tape's log allows (girth −0/+5, width and depth 3; common
 * practice, no source), 8 mm for what a hand feels (ours).
 */
describe('an average form cut for its filling', () => {
  let made: ReturnType<typeof demoToFill>;
  let plain: Form;
  let filled: ReturnType<(typeof made)['fill']>;
  beforeAll(() => {
    made = demoToFill('average', 6000, true);
    plain = demoToFill('average', 6000).form;
    filled = made.fill();
  });

  it('comes out as the body, on other triangles than it was fitted on', () => {
    for (const { id, asked, found } of filled.levels) {
      expect(found.girth - asked.girth, `girth ${id}`).toBeGreaterThan(0);
      expect(found.girth - asked.girth, `girth ${id}`).toBeLessThan(5);
      expect(Math.abs(found.width - asked.width), `width ${id}`).toBeLessThan(3);
      expect(Math.abs(found.depth - asked.depth), `depth ${id}`).toBeLessThan(3);
    }
    expect(filled.distance.rms).toBeLessThan(2.5);
    expect(filled.distance.within).toBeGreaterThan(0.995);
    expect(filled.throat.distance).toBeLessThan(8);
  });

  it('is told so, within what other triangles change', () => {
    const told = made.form.report.filled;
    expect(Math.abs((told?.rms ?? 0) - filled.distance.rms)).toBeLessThan(0.5);
    told?.levels.forEach(({ id, asked, found }, k) => {
      // Told of the body itself, not of the chords of a mesh.
      expect(asked.girth, id).toBeCloseTo(made.form.body.sections[id as 'waist'].girth, 9);
      const here = filled.levels[k];
      expect(Math.abs(found.girth - asked.girth - here.found.girth + here.asked.girth), id).toBeLessThan(2.5);
    });
    expect(made.form.inside?.levels.map(({ finished }) => finished)).toEqual(
      told?.levels.map(({ found }) => found),
    );
  });

  it('has partners equal mark by mark, and no stretch of cloth face down', () => {
    for (const seam of made.form.report.seams) {
      const [a, b] = seam.lengthsFlat;
      expect(Math.abs(a - b - seam.easeMm)).toBeLessThan(0.01);
      expect(seam.maxMarkGap).toBeLessThan(0.01);
    }
    made.form.shell.panels.forEach(({ mesh: { triangles } }, p) => {
      const flat = made.form.flat[p].positions;
      for (let t = 0; t < triangles.length; t += 3) {
        const [a, b, c] = [0, 1, 2].map((k) => 2 * triangles[t + k]);
        const [x1, y1, x2, y2] = [
          flat[b] - flat[a],
          flat[b + 1] - flat[a + 1],
          flat[c] - flat[a],
          flat[c + 1] - flat[a + 1],
        ];
        expect(x1 * y2 - y1 * x2).toBeGreaterThan(0);
      }
    });
  });

  it('leaves the rims of its openings as long as its plates', () => {
    for (const id of ['base', 'neck', 'armholeRight', 'armholeLeft'])
      expect(Math.abs(rimOf(made.form, id) - rimOf(plain, id)), id).toBeLessThan(0.3);
  });

  it('is alike on both sides, as the body is', () => {
    const { panels } = made.form.shell;
    panels.forEach(({ mirrorOf }, p) => {
      if (mirrorOf === undefined) return;
      const source = made.form.flat[panels.findIndex(({ id }) => id === mirrorOf)].positions;
      made.form.flat[p].positions.forEach((x, i) => {
        expect(x).toBeCloseTo(i % 2 === 0 ? -source[i] : source[i], 9);
      });
    });
  });

  it('is cut as unrolled where the project wants that', () => {
    const unrolled = demoToFill('average', 6000, true, { recut: false }).form;
    expect(unrolled.filled).toBeUndefined();
    expect(unrolled.flat.map(({ positions }) => positions)).toEqual(
      plain.flat.map(({ positions }) => positions),
    );
  });
});

describe('fitting', () => {
  it('can be stopped', () => {
    const { given } = demoToFill('average', 1500);
    let asked = 0;
    const upright = given.flat.map(({ positions }) => positions);
    const stopped = fitCut(
      { ...given, upright, grain: upright.map(() => 0) },
      { shouldStop: () => ++asked > 3 },
    );
    expect(stopped.ok).toBe(false);
    expect(asked).toBe(4);
  });
});

function rimOf({ shell, flat }: Form, id: string): number {
  let sum = 0;
  shell.panels.forEach(({ edges }, p) => {
    for (const { kind, id: own, vertices } of edges) {
      if (kind !== 'opening' || own !== id) continue;
      const { positions } = flat[p];
      for (let k = 1; k < vertices.length; k++) {
        const [a, b] = [2 * vertices[k - 1], 2 * vertices[k]];
        sum += Math.hypot(positions[b] - positions[a], positions[b + 1] - positions[a + 1]);
      }
    }
  });
  return sum;
}
