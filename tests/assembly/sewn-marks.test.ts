import { readFileSync } from 'node:fs';
import path from 'node:path';
import { DOMParser } from '@xmldom/xmldom';
import SVGPathCommander from 'svg-path-commander';
import { expect, it } from 'vitest';
import { writeSvg } from '../../src/core/export/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { ENGLISH, inEnglish } from '../in-english.ts';
import { sharedPipeline } from '../shared-pipeline.ts';

/** Between two marks one partner may be longer than the other by so much, mm: far below what a needle can tell. Ours. */
const LIMIT = 0.02;
const STEPS = 64;

/** Points of a path, its curves by the closed form of a cubic Bézier. */
function pointsOf(d: string): [number, number][] {
  const points: [number, number][] = [];
  let [x, y] = [0, 0];
  for (const [command, ...n] of new SVGPathCommander(d).normalize().segments as [string, ...number[]][]) {
    if (command === 'C') {
      for (let k = 1; k < STEPS; k++) {
        const [t, u] = [k / STEPS, 1 - k / STEPS];
        const weigh = (a: number, b: number, c: number, e: number) =>
          u ** 3 * a + 3 * u * u * t * b + 3 * u * t * t * c + t ** 3 * e;
        points.push([weigh(x, n[0], n[2], n[4]), weigh(y, n[1], n[3], n[5])]);
      }
    }
    if (command === 'Z') continue;
    [x, y] = n.slice(-2);
    points.push([x, y]);
  }
  return points;
}

/** Where the straight line on from a slit crosses the seam line nearest to it, as length along the seam line. */
function crossing(slit: readonly [number, number][], seam: readonly [number, number][]): number {
  const [[px, py], [qx, qy]] = [slit[0], slit[slit.length - 1]];
  const [dx, dy] = [qx - px, qy - py];
  let [along, found, nearest] = [0, Number.NaN, Number.POSITIVE_INFINITY];
  for (let i = 1; i < seam.length; i++) {
    const [[ax, ay], [bx, by]] = [seam[i - 1], seam[i]];
    const length = Math.hypot(bx - ax, by - ay);
    const [a, b] = [(ax - px) * dy - (ay - py) * dx, (bx - px) * dy - (by - py) * dx];
    if (a * b <= 0 && a !== b) {
      const t = a / (a - b);
      const away = Math.hypot(ax + t * (bx - ax) - qx, ay + t * (by - ay) - qy);
      if (away < nearest) [nearest, found] = [away, along + t * length];
    }
    along += length;
  }
  return found;
}

const demos = ['average', 'large-bust', 'uneven-shoulders'];

it.each(demos)('%s: sewn partners on the written sheet agree mark for mark', (name) => {
  const file = path.join(import.meta.dirname, `../../shared/demos/${name}.loftseam.json`);
  const project = parseProject(readFileSync(file, 'utf8'));
  if (!project.ok) throw new Error(inEnglish(project.issues[0].message));
  const form = sharedPipeline.makeForm(project.value, {
    speaker: ENGLISH,
    targetTriangles: 3000,
    date: '2026-01-31',
  });
  if (!form.ok) throw new Error(inEnglish(form.issues[0].message));
  const shell = form.value.drawings.find(({ material }) => material === 'shell')!;
  const page = new DOMParser().parseFromString(writeSvg(shell.drawing, ENGLISH), 'image/svg+xml');
  const paths = Array.from(page.getElementsByTagName('path')).map((element) => {
    return { id: element.getAttribute('id') ?? '', d: element.getAttribute('d') ?? '' };
  });

  // Piece, seam letter and mark number → places of its slits along the seam line; their mean is the mark.
  const marks = new Map<string, Map<number, Map<string, number>>>();
  const seamOf = new Map(
    paths.filter(({ id }) => id.includes('/sew/')).map(({ id, d }) => [id, pointsOf(d)]),
  );
  const slits = new Map<string, number[]>();
  for (const { id, d } of paths) {
    const slit = /^([^/]+)\/notch\/([A-Z]+)(\d+)(\/|$)/.exec(id);
    const seam = slit && seamOf.get(`${slit[1]}/sew/${slit[2]}`);
    if (!slit || !seam) continue;
    const key = slit.slice(1, 4).join(' ');
    slits.set(key, [...(slits.get(key) ?? []), crossing(pointsOf(d), seam)]);
  }
  for (const [key, places] of slits) {
    const [piece, letter, number] = key.split(' ');
    const ofLetter = marks.get(letter) ?? new Map<number, Map<string, number>>();
    const ofNumber = ofLetter.get(Number(number)) ?? new Map<string, number>();
    ofNumber.set(piece, places.reduce((a, b) => a + b, 0) / places.length);
    marks.set(letter, ofLetter.set(Number(number), ofNumber));
  }

  let compared = 0;
  for (const [letter, ofLetter] of marks) {
    const numbers = [...ofLetter.keys()].sort((a, b) => a - b);
    for (let i = 1; i < numbers.length; i++) {
      const [before, after] = [ofLetter.get(numbers[i - 1])!, ofLetter.get(numbers[i])!];
      const lengths = [...after].flatMap(([piece, at]) => {
        const from = before.get(piece);
        return from === undefined ? [] : [Math.abs(at - from)];
      });
      if (lengths.length !== 2) continue;
      expect(Math.abs(lengths[0] - lengths[1]), `${letter}${numbers[i]}`).toBeLessThan(LIMIT);
      compared++;
    }
  }
  expect(compared).toBeGreaterThan(20);
});
