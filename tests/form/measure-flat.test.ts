import { describe, expect, it } from 'vitest';
import { flattenProblemFromShell } from '../../src/core/assembly/flatten-problem.ts';
import { nameFlattenIssues } from '../../src/core/assembly/name-flatten-issues.ts';
import { pieceInputsFromShell } from '../../src/core/assembly/piece-input.ts';
import { InvariantError, verbatim } from '../../src/core/base/index.ts';
import type { FlatDisk } from '../../src/core/flatten/index.ts';
import { measureLevels, measureSeams } from '../../src/core/form/measure-flat.ts';
import type { SeamedShell } from '../../src/core/seams/index.ts';
import { inEnglish } from '../in-english.ts';
import { makeTubeShell, tube } from './tube-shell.ts';

/** A tube of chords unrolls to rectangles: width = columns × chord, closed form. `stretch` spoils one panel on purpose. */
const chord = 2 * tube.radius * Math.sin(Math.PI / (2 * tube.columns));
const rowHeight = tube.height / tube.rows;

function unroll(shell: SeamedShell, stretch: (panel: number, row: number) => number = () => 0): FlatDisk[] {
  const width = tube.columns + 1;
  return shell.panels.map((panel, index) => ({
    positions: Float64Array.from(
      Array.from(panel.sourceVertex, (_, i) => {
        const row = Math.floor(i / width);
        return [(i % width) * chord, row * rowHeight + stretch(index, row)];
      }).flat(),
    ),
    strain: {
      major: new Float64Array(),
      minor: new Float64Array(),
      direction: new Float64Array(),
      summary: { rms: 0, p95: 0, p99: 0, min: 0, max: 0, flipped: 0, area3d: 0, areaFlat: 0 },
    },
  }));
}

describe('what is measured on the flat panels', () => {
  it('finds partner seams equal on an exact unrolling', () => {
    const shell = makeTubeShell();
    for (const seam of measureSeams(shell, unroll(shell))) {
      expect(seam.lengthsFlat[0]).toBeCloseTo(tube.height, 12);
      expect(seam.lengthsFlat[1]).toBeCloseTo(tube.height, 12);
      expect(seam.maxMarkGap).toBeLessThan(1e-12);
    }
  });

  it('sees a longer side, and a mark that sits too high though the lengths agree', () => {
    const shell = makeTubeShell();
    const longer = measureSeams(
      shell,
      unroll(shell, (panel, row) => (panel === 1 && row === tube.rows ? 3 : 0)),
    );
    expect(longer[0].lengthsFlat.map((x) => Math.round(x * 1e9) / 1e9)).toEqual([80, 83]);
    expect(longer[0].maxMarkGap).toBeCloseTo(3, 12);
    const shifted = measureSeams(
      shell,
      unroll(shell, (panel, row) => (panel === 0 && row === tube.levelRow ? 2 : 0)),
    );
    expect(shifted[1].lengthsFlat[0]).toBeCloseTo(shifted[1].lengthsFlat[1], 12);
    expect(shifted[1].maxMarkGap).toBeCloseTo(2, 12);
  });

  it('adds a level line up over the panels, counting a level seam once', () => {
    for (const twoTiers of [false, true]) {
      const shell = makeTubeShell(twoTiers);
      const [waist] = measureLevels(shell, unroll(shell));
      expect(waist.length3d).toBeCloseTo(2 * tube.columns * chord, 9);
      expect(waist.lengthFlat).toBeCloseTo(2 * tube.columns * chord, 9);
    }
  });

  it('reports a shrunken level line as it lies', () => {
    const shell = makeTubeShell();
    const flat = unroll(shell);
    for (let i = 0; i < flat[0].positions.length; i += 2) flat[0].positions[i] *= 0.98;
    expect(measureLevels(shell, flat)[0].lengthFlat).toBeCloseTo(2 * tube.columns * chord * 0.99, 9);
  });

  it('refuses a shell whose seam is missing on one side', () => {
    const shell = makeTubeShell();
    const [front, back] = shell.panels;
    const broken = { ...shell, panels: [front, { ...back, edges: back.edges.slice(0, 1) }] };
    expect(() => measureSeams(broken, unroll(broken))).toThrow(InvariantError);
  });
});

describe('the shell stated for flattening', () => {
  it('joins every seam point to its partner', () => {
    for (const twoTiers of [false, true]) {
      const shell = makeTubeShell(twoTiers);
      const problem = flattenProblemFromShell(shell);
      expect(problem.joins).toHaveLength(shell.seams.length);
      problem.joins.forEach((join, k) => {
        const source = (side: typeof join.a) =>
          Array.from(side.vertices, (vertex) => shell.panels[side.disk].sourceVertex[vertex]);
        expect(source(join.a)).toEqual([...shell.seams[k].points]);
        expect(source(join.b)).toEqual([...shell.seams[k].points]);
        expect(shell.panels[join.a.disk].id).toBe(shell.seams[k].panels[0]);
      });
    }
  });

  it('keeps level lines inside panels, level seams and upright seams, each once', () => {
    // One level path per half, one per upright seam (both have one chart angle).
    expect(flattenProblemFromShell(makeTubeShell(false)).keptPaths).toHaveLength(2 + 2);
    expect(flattenProblemFromShell(makeTubeShell(true)).keptPaths).toHaveLength(2 + 4);
  });

  it('leaves out seams that wander round the body', () => {
    const shell = makeTubeShell();
    const chart = shell.chart.slice();
    chart[2 * shell.seams[0].points[2]] += 0.01;
    expect(flattenProblemFromShell({ ...shell, chart }).keptPaths).toHaveLength(2 + 1);
  });
});

describe('the panels stated for drafting', () => {
  it('gives partners the same mark numbers at the same place on the body', () => {
    const shell = makeTubeShell();
    const pieces = pieceInputsFromShell(shell, unroll(shell));
    const marks = pieces.flatMap((piece, p) =>
      piece.edges.flatMap((edge, e) =>
        edge.marks.map((mark) => ({
          name: `${edge.letter}${mark.number}`,
          source: shell.panels[p].sourceVertex[shell.panels[p].edges[e].vertices[mark.index]],
        })),
      ),
    );
    expect(marks).toHaveLength(4);
    for (const mark of marks) {
      const partners = marks.filter((m) => m.name === mark.name);
      expect(partners.map((m) => m.source)).toEqual([mark.source, mark.source]);
    }
  });

  it('hands over closed counter-clockwise outlines in mm', () => {
    const shell = makeTubeShell();
    for (const piece of pieceInputsFromShell(shell, unroll(shell))) {
      let twiceArea = 0;
      piece.edges.forEach((edge, e) => {
        const next = piece.edges[(e + 1) % piece.edges.length].points;
        expect([...edge.points.slice(-2)]).toEqual([...next.slice(0, 2)]);
        for (let i = 2; i < edge.points.length; i += 2) {
          twiceArea += edge.points[i - 2] * edge.points[i + 1] - edge.points[i] * edge.points[i - 1];
        }
      });
      expect(twiceArea / 2).toBeCloseTo(tube.columns * chord * tube.height, 9);
      expect(piece.levelLines).toHaveLength(1);
    }
  });

  it('tells front from back', () => {
    const shell = makeTubeShell();
    const halves = pieceInputsFromShell(shell, unroll(shell)).map((p) => p.edges.map((e) => e.bodyHalf));
    // Base and neck of the front panel lie in front; side seams count as front on both pieces.
    expect(halves).toEqual([
      ['front', 'front', 'front', 'front'],
      ['back', 'front', 'back', 'front'],
    ]);
  });
});

describe('issues of flattening', () => {
  it('are told with the names a maker knows', () => {
    const shell = makeTubeShell();
    const issue = (path: string) => ({
      code: 'x',
      path,
      message: verbatim('It is off.'),
      severity: 'error' as const,
    });
    const told = nameFlattenIssues(
      ['disks.1.mesh', 'keptPaths.0', 'keptPaths.3', 'joins.1', ''].map(issue),
      shell,
    );
    expect(told.map(({ path, message }) => [path, inEnglish(message)])).toEqual([
      ['panels.back0', 'Back0: It is off.'],
      ['panels', 'Waist line on front0: It is off.'],
      ['panels', 'Seam B, left0: It is off.'],
      ['lines.left0', 'Seam B, left0: It is off.'],
      ['', 'It is off.'],
    ]);
  });
});
