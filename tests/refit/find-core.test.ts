import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Body, fitBody, surfaceOfBody } from '../../src/core/body/index.ts';
import { parseProject, serializeProject } from '../../src/core/project/index.ts';
import { findCore } from '../../src/core/refit/index.ts';

type Point = readonly [number, number];

function bodyOf(demo: string, measures: Readonly<Record<string, number>> = {}) {
  const read = parseProject(readFileSync(`shared/demos/${demo}.loftseam.json`, 'utf8'));
  if (!read.ok) throw new Error(demo);
  const input = { ...read.value.body, measures: { ...read.value.body.measures, ...measures } };
  const body = fitBody(input, undefined, { fair: true });
  if (!body.ok) throw new Error(demo);
  return { name: demo, project: read.value, input, body: body.value };
}

/** Segments in which the level plane meets triangles between rows of the body's surface, 4 mm apart, 200 round. */
function sectionAt(body: Body, z: number): (readonly [Point, Point])[] {
  const surface = surfaceOfBody(body);
  const [low, high] = surface.vRange;
  const [round, rows] = [200, Math.round((high - low) / 4)];
  const chart = Float64Array.from({ length: 2 * round * (rows + 1) }, (_, i) =>
    i % 2 === 0
      ? (2 * Math.PI * ((i >> 1) % round)) / round
      : low + ((high - low) * Math.floor((i >> 1) / round)) / rows,
  );
  const p = surface.evaluate(chart);
  const found: (readonly [Point, Point])[] = [];
  for (let i = 0; i < rows; i++) {
    for (let j = 0; j < round; j++) {
      const [a, b] = [i * round + j, i * round + ((j + 1) % round)];
      for (const corners of [
        [a, b, b + round],
        [a, b + round, a + round],
      ]) {
        const ends: Point[] = [];
        for (let k = 0; k < 3; k++) {
          const [s, t] = [3 * corners[k], 3 * corners[(k + 1) % 3]];
          const [from, to] = [p[s + 2] - z, p[t + 2] - z];
          if (from < 0 === to < 0) continue;
          const f = from / (from - to);
          ends.push([p[s] + f * (p[t] - p[s]), p[s + 1] + f * (p[t + 1] - p[s + 1])]);
        }
        if (ends.length === 2) found.push([ends[0], ends[1]]);
      }
    }
  }
  return found;
}

/** How far a point lies outside a section, 0 inside it: crossings of a ray, then the nearest segment. */
function outsideOf(section: readonly (readonly [Point, Point])[], [x, y]: Point): number {
  let isInside = false;
  let nearest = Number.POSITIVE_INFINITY;
  for (const [[ax, ay], [bx, by]] of section) {
    if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) isInside = !isInside;
    const [ux, uy] = [bx - ax, by - ay];
    const t = Math.min(1, Math.max(0, ((x - ax) * ux + (y - ay) * uy) / (ux * ux + uy * uy || 1)));
    nearest = Math.min(nearest, Math.hypot(x - ax - t * ux, y - ay - t * uy));
  }
  return isInside ? 0 : nearest;
}

describe('the core of two people', () => {
  const people = [bodyOf('average'), bodyOf('straight')];
  const found = findCore(people);
  if (!found.ok) throw new Error('core');
  const core = found.value;

  it('tells by how much it is under the smallest of them, and warns of that', () => {
    const waist = core.tapes.find(({ id }) => id === 'waistGirth');
    // As typed in the demos.
    expect(waist?.people.map(Math.round)).toEqual([765, 780]);
    expect(waist?.under).toBeCloseTo(765 - (waist?.core ?? 0), 0);
    // By the section of its own surface, a polygon of 200 chords.
    const around = sectionAt(core.body, 0).reduce(
      (sum, [a, b]) => sum + Math.hypot(a[0] - b[0], a[1] - b[1]),
      0,
    );
    expect(Math.abs(around - (waist?.core ?? 0))).toBeLessThan(3);
    const most = Math.max(...core.tapes.map(({ under }) => under));
    const told = found.issues.find(({ code }) => code === 'core-smaller');
    expect(told?.measured ?? most).toBe(most);
    expect(told !== undefined).toBe(most > 10);
  });

  it('lies inside both: points of its sections are within 1.5 mm of their sections, level by level', () => {
    // Above the armpits sections run through the armholes, which no surface closes.
    for (const z of [-230, -190, -140, -80, -30, 0, 40, 80, 120, 150]) {
      const own = sectionAt(core.body, z);
      expect(own.length).toBeGreaterThan(100);
      for (const [i, { body }] of people.entries()) {
        const section = sectionAt(body, z);
        for (const [[x, y]] of own) expect(outsideOf(section, [x, y - core.toFront[i]])).toBeLessThan(1.5);
      }
    }
  });

  it('fills nine tenths of what both have in common, counted on a grid of 5 mm', () => {
    let [filled, common] = [0, 0];
    for (const z of [-190, -80, 0, 80, 130]) {
      const own = sectionAt(core.body, z);
      const others = people.map(({ body }) => sectionAt(body, z));
      for (let x = -200; x <= 200; x += 5) {
        for (let y = -200; y <= 200; y += 5) {
          if (others.some((section, i) => outsideOf(section, [x, y - core.toFront[i]]) > 0)) continue;
          common++;
          if (outsideOf(own, [x, y]) === 0) filled++;
        }
      }
    }
    expect(common).toBeGreaterThan(5000);
    expect(filled / common).toBeGreaterThan(0.9);
  });

  it('is a project like any other', () => {
    const project = { ...people[0].project, name: 'core', body: core.input };
    const again = parseProject(serializeProject(project));
    expect(again.ok && again.value.body).toEqual(core.input);
  });

  it('is refused for one person alone', () => {
    const alone = findCore(people.slice(0, 1));
    expect(alone.issues.map(({ path, measured, limit }) => [path, measured, limit])).toEqual([
      ['bodies', 1, 2],
    ]);
  });
});
