import { describe, expect, it } from 'vitest';
import { verbatim } from '../../src/core/base/index.ts';
import { type PieceMark, smoothPiece } from '../../src/core/pattern/index.ts';
import { lengthOf } from './brute-force.ts';
import { curve, edge, piece, straight } from './synthetic-panels.ts';

const MARKS: readonly PieceMark[] = [5, 10, 15].map((index, k) => ({
  kind: 'balance',
  index,
  number: k + 1,
}));
const CHORD = 8;

/** Twenty chords of 8 mm on a circle of the radius, or straight. */
function chords(radius: number): Float64Array {
  if (!Number.isFinite(radius)) return curve((t) => [20 * CHORD * t, 0], 20);
  const step = 2 * Math.asin(CHORD / (2 * radius));
  return curve((t) => [radius * Math.sin(20 * step * t), radius * (1 - Math.cos(20 * step * t))], 20);
}

const smooth = (points: Float64Array) =>
  smoothPiece(piece('p', 'P', [edge('a', 'A', points, MARKS)])).edges[0];

function turns(points: Float64Array): number[] {
  const found: number[] = [];
  for (let i = 2; i < points.length - 2; i += 2) {
    const a = Math.atan2(points[i + 1] - points[i - 1], points[i] - points[i - 2]);
    const b = Math.atan2(points[i + 3] - points[i + 1], points[i + 2] - points[i]);
    found.push(Math.abs(Math.atan2(Math.sin(b - a), Math.cos(b - a))));
  }
  return found;
}

describe('edges as smooth curves', () => {
  // Twenty chords of 8 mm are 160 mm, between two marks 40 mm, whatever they bend round (closed form).
  it.each([40, 60, 100, 250, 1000, Number.POSITIVE_INFINITY])(
    'R %d mm: as long as the chords, mark for mark',
    (radius) => {
      const { points, marks } = smooth(chords(radius));
      expect(Math.abs(lengthOf(points) - 160)).toBeLessThan(0.02);
      const stops = [0, ...marks.map(({ index }) => index), points.length / 2 - 1];
      for (let k = 1; k < stops.length; k++) {
        const part = lengthOf(points.slice(2 * stops[k - 1], 2 * stops[k] + 2));
        expect(Math.abs(part - 40)).toBeLessThan(0.01);
      }
    },
  );

  it('lies on a circle a third of the sagitta inside that of the vertices, away from the ends', () => {
    const radius = 60;
    const { points, marks } = smooth(chords(radius));
    const third = (radius - Math.sqrt(radius * radius - (CHORD * CHORD) / 4)) / 3;
    for (let i = marks[0].index; i <= marks[2].index; i++) {
      const away = Math.hypot(points[2 * i], points[2 * i + 1] - radius) - (radius - third);
      expect(Math.abs(away)).toBeLessThan(0.005);
    }
  });

  it('turns by little at every point', () => {
    const before = Math.max(...turns(chords(60)));
    expect(before).toBeGreaterThan(0.13);
    expect(Math.max(...turns(smooth(chords(60)).points))).toBeLessThan(before / 3);
  });

  it('keeps ends, straight edges and corners within an edge', () => {
    const arc = chords(60);
    const { points } = smooth(arc);
    expect(points.subarray(0, 2)).toEqual(arc.subarray(0, 2));
    expect(points.subarray(-2)).toEqual(arc.subarray(-2));
    const bent = straight(
      [
        [0, 0],
        [80, 0],
        [80, 60],
      ],
      8,
    );
    const kept = smoothPiece(piece('p', 'P', [edge('a', 'A', bent)])).edges[0].points;
    expect(kept).toHaveLength(bent.length);
    expect(Math.max(...kept.map((value, i) => Math.abs(value - bent[i])))).toBeLessThan(1e-9);
  });

  it('moves level lines along with the vertices they end on', () => {
    const arc = chords(60);
    const level = {
      id: 'waist',
      name: verbatim('Waist'),
      points: Float64Array.of(-50, 30, arc[20], arc[21]),
    };
    const result = smoothPiece(piece('p', 'P', [edge('a', 'A', arc, MARKS)], [level]));
    const { points, marks } = result.edges[0];
    const end = result.levelLines[0].points.subarray(2);
    expect(end).toEqual(points.subarray(2 * marks[1].index, 2 * marks[1].index + 2));
    expect(result.levelLines[0].points.subarray(0, 2)).toEqual(level.points.subarray(0, 2));
  });
});
