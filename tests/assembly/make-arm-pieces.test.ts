import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { flattenArms } from '../../src/core/assembly/flatten-arms.ts';
import { makeArmPieces, nameArmSeams } from '../../src/core/assembly/make-arm-pieces.ts';
import { draftPiece, type PieceInput } from '../../src/core/pattern/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { fitOrThrow, readDemo } from '../body/read-demo.ts';
import { inEnglish } from '../in-english.ts';
import { COARSE, sharedPipeline } from '../shared-pipeline.ts';

/** mm: partner seams, marks on them, girths (our promise to the maker). */
const [seamLimit, markLimit, girthLimit] = [0.1, 0.2, 0.2];
const letters = ['Q', 'R', 'S', 'T'];

const input = readDemo('average');
const arms = flattenArms(fitOrThrow(input, { fair: true }).arms);
if (!arms.ok) throw new Error(inEnglish(arms.issues[0].message));
const { panels, flat } = arms.value;
const seams = nameArmSeams(panels, (k) => letters[k]);
const pieces = makeArmPieces(arms.value, seams);

function alongOf(points: Float64Array): number[] {
  const along = [0];
  for (let i = 2; i < points.length; i += 2) {
    along.push(
      along[along.length - 1] + Math.hypot(points[i] - points[i - 2], points[i + 1] - points[i - 1]),
    );
  }
  return along;
}

/** Distance from the armhole to every mark by number, and to the seam's end as number 0. */
function marksFromArmhole(piece: PieceInput, letter: string): Map<number, number> {
  const place = piece.edges.findIndex((edge) => edge.letter === letter);
  const edge = piece.edges[place];
  const along = alongOf(edge.points);
  const end = along[along.length - 1];
  const startsAtArmhole = piece.edges[(place + piece.edges.length - 1) % piece.edges.length].id === 'armhole';
  const marks = edge.marks.map(({ number, index }): [number, number] => {
    return [number, startsAtArmhole ? along[index] : end - along[index]];
  });
  return new Map([[0, end], ...marks]);
}

describe('pieces of the arms', () => {
  it('sew together: partners are equally long, and their marks meet', () => {
    expect(arms.issues).toEqual([]);
    expect(pieces.map(({ id }) => id)).toEqual([
      'arm-back-right',
      'arm-front-right',
      'arm-back-left',
      'arm-front-left',
    ]);
    for (const { letter, side } of seams) {
      const [a, b] = pieces.filter((piece) => piece.side === side).map((p) => marksFromArmhole(p, letter));
      expect(a.size).toBeGreaterThanOrEqual(5);
      expect([...b.keys()].sort()).toEqual([...a.keys()].sort());
      for (const [number, distance] of a) {
        const gap = Math.abs(distance - b.get(number)!);
        expect(gap, `${letter}${number}`).toBeLessThanOrEqual(number === 0 ? seamLimit : markLimit);
      }
      const stops = [0, ...[...a.values()].sort((x, y) => x - y)];
      expect(Math.max(...stops.slice(1).map((x, i) => x - stops[i]))).toBeLessThan(130);
    }
  });

  it('keep the typed girths on the flat', () => {
    const ids = { upperArm: 'upperArmGirth', elbow: 'elbowGirth', wrist: 'wristGirth' } as const;
    for (const side of ['right', 'left'] as const) {
      for (const [line, measure] of Object.entries(ids)) {
        const lines = pieces
          .filter((piece) => piece.side === side)
          // The wrist is an edge.
          .flatMap(({ levelLines, edges }) => [...levelLines, ...edges].filter(({ id }) => id === line));
        expect(lines.length).toBe(2);
        const sum = lines.reduce((total, { points }) => total + alongOf(points).at(-1)!, 0);
        expect(Math.abs(sum - (input.measures[measure] as number)), `${line} ${side}`).toBeLessThan(
          girthLimit,
        );
      }
    }
  });

  it('do not fold, and left mirrors right', () => {
    // Measured on the average body: rms 0.015, p95 0.033, at most 0.07. The bounds are ours: no cloth eases more than 15 %.
    for (const { strain } of flat) {
      expect(strain.summary.flipped).toBe(0);
      expect(strain.summary.rms).toBeLessThan(0.02);
      expect(strain.summary.p95).toBeLessThan(0.04);
      expect(Math.max(strain.summary.max, -strain.summary.min)).toBeLessThan(0.15);
    }
    for (const half of [0, 1]) {
      const [right, left] = [flat[half].positions, flat[half + 2].positions];
      left.forEach((x, i) => {
        expect(Math.abs(x - (i % 2 === 0 ? -right[i] : right[i]))).toBeLessThan(1e-9);
      });
    }
  });

  it('say how the arms were held when measured, where it was told, and have room for it', () => {
    expect(pieces.flatMap(({ notes }) => notes ?? [])).toEqual([]);
    for (const piece of makeArmPieces(arms.value, seams, 'flexed')) {
      expect(piece.notes?.map(inEnglish)).toEqual(['Arm girths taken bent, with a fist']);
      const drafted = draftPiece(piece, { say: inEnglish, project: '', body: 'bust', date: '' });
      expect(drafted.issues.map(({ message }) => inEnglish(message))).toEqual([]);
    }
  });

  it('can be drafted, the right way round', () => {
    for (const piece of pieces) {
      const drafted = draftPiece(piece, {
        say: inEnglish,
        project: 'Lantern Yard Players',
        body: 'bust',
        date: '',
      });
      expect(drafted.issues.map(({ message }) => message)).toEqual([]);
      expect(drafted.ok).toBe(true);
    }
  });

  it('are none without arm measures', () => {
    const none = flattenArms([]);
    expect(none.ok && none.value.panels).toEqual([]);
  });

  it('come with the whole form, on a sheet of their own, under letters no other seam has', () => {
    const project = parseProject(readFileSync('shared/demos/average.loftseam.json', 'utf8'));
    if (!project.ok) throw new Error(inEnglish(project.issues[0].message));
    const made = sharedPipeline.makeForm(project.value, COARSE);
    if (!made.ok) throw new Error(inEnglish(made.issues[0].message));
    const { inside, pieces: shell, drawings, report } = made.value;
    expect(drawings.map(({ material }) => material)).toContain('arms');
    expect(report.inside?.arms.map(({ id }) => id)).toEqual(panels.map(({ id }) => id));
    const lettersOf = (isArm: boolean): Set<string> =>
      new Set(
        [...shell, ...(inside?.pieces ?? [])]
          .filter(({ material }) => (material === 'arms') === isArm)
          .flatMap(({ sewLines }) => sewLines.map(({ name }) => name))
          .filter((name) => /^[A-Z]+$/.test(name)),
      );
    const arm = lettersOf(true);
    expect(arm.size).toBe(4);
    for (const letter of lettersOf(false)) expect(arm.has(letter), letter).toBe(false);
  });
});
