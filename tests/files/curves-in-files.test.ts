import { readFileSync } from 'node:fs';
import { DOMParser } from '@xmldom/xmldom';
import SVGPathCommander from 'svg-path-commander';
import { expect, it } from 'vitest';
import { pieceInputsFromShell } from '../../src/core/assembly/piece-input.ts';
import { writeSvg } from '../../src/core/export/index.ts';
import { makeForm } from '../../src/core/pipeline/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { ENGLISH, inEnglish } from '../in-english.ts';

const file = new URL('../../shared/demos/large-bust.loftseam.json', import.meta.url);

/** mm. */
const MARK_LIMIT = 0.05;

function lengthOf(points: Float64Array, end: number): number {
  let length = 0;
  for (let i = 1; i <= end; i++)
    length += Math.hypot(points[2 * i] - points[2 * i - 2], points[2 * i + 1] - points[2 * i - 1]);
  return length;
}

/** Length along the path to the point nearest to a place, sought within 2 mm of a guess by thirds. */
function lengthNearest(d: string, { x, y }: { x: number; y: number }, guess: number): number {
  const away = (s: number): number => {
    const at = SVGPathCommander.getPointAtLength(d, s);
    return Math.hypot(at.x - x, at.y - y);
  };
  let [low, high] = [guess - 2, guess + 2];
  while (high - low > 0.002) {
    const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
    if (away(a) < away(b)) high = b;
    else low = a;
  }
  // Where an edge bends sharply its vertices are taken into the curve by up to a quarter of a millimetre.
  expect(away((low + high) / 2)).toBeLessThan(0.3);
  return (low + high) / 2;
}

/** The written curves, measured by a path library: partners as long as each other between any two marks. */
it('large bust: sewn curves in the file meet mark for mark within 0.05 mm, and are curves', () => {
  const project = parseProject(readFileSync(file, 'utf8'));
  if (!project.ok) throw new Error('the demo is sound');
  const form = makeForm(project.value, { speaker: ENGLISH, isDraft: true });
  if (!form.ok)
    throw new Error(
      form.issues
        .map(({ message }) => message)
        .map(inEnglish)
        .join('\n'),
    );
  const { shell, flat, pieces, drawings } = form.value;
  const root = new DOMParser().parseFromString(writeSvg(drawings[0].drawing, ENGLISH), 'image/svg+xml');
  const paths = new Map(
    Array.from(
      root.getElementsByTagName('path'),
      (p) => [p.getAttribute('id'), p.getAttribute('d')!] as const,
    ),
  );
  const bySeam = new Map<string, number[][]>();
  let [lines, curves] = [0, 0];
  for (const input of pieceInputsFromShell(shell, flat)) {
    const { sewLines } = pieces.find(({ id }) => id === input.id)!;
    const sewn = input.edges.filter(({ kind }) => kind === 'seam');
    for (const { id, letter, points, marks } of sewn) {
      const d = paths.get(`${input.id}/sew/${letter}`);
      // A seam that joins a piece to itself is there twice.
      if (d === undefined || sewn.filter((other) => other.letter === letter).length > 1) continue;
      lines += d.match(/L/g)?.length ?? 0;
      curves += d.match(/C/g)?.length ?? 0;
      // The path starts where the edge does, whose vertices so tell where on the sheet a mark is.
      const [, x, y] = /^M(\S+) (\S+)/.exec(d)!.map(Number);
      const own = sewLines.find((line) => line.id === id)!.points;
      const along = [...marks]
        .sort((a, b) => a.number - b.number)
        .map(({ index }) => {
          const at = { x: x + points[2 * index] - own[0], y: y - points[2 * index + 1] + own[1] };
          return lengthNearest(d, at, lengthOf(points, index));
        });
      const total = SVGPathCommander.getTotalLength(d);
      const isUpwards = along.length < 2 || along[0] < along[1];
      along.unshift(isUpwards ? 0 : total);
      along.push(isUpwards ? total : 0);
      bySeam.set(id, [...(bySeam.get(id) ?? []), along]);
    }
  }
  expect(curves).toBeGreaterThan(lines);

  let pairs = 0;
  for (const [id, partners] of bySeam) {
    if (partners.length < 2) continue;
    const [a, b] = partners.map((along) => along.slice(1).map((s, i) => Math.abs(s - along[i])));
    expect(a).toHaveLength(b.length);
    // A seam with one mark may count it from either end.
    const other = Math.abs(a[0] - b[0]) < Math.abs(a[0] - b[b.length - 1]) ? b : b.toReversed();
    a.forEach((part, k) => {
      pairs++;
      expect(Math.abs(part - other[k]), `${id}, part ${k}`).toBeLessThan(MARK_LIMIT);
    });
  }
  expect(pairs).toBeGreaterThan(50);
});
