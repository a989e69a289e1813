import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import DxfParser, { type IEntity, type IPoint, type IPolylineEntity } from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { InvariantError } from '../../src/core/base/index.ts';
import { type Drawing, makeLayer, makePath, makeText } from '../../src/core/drawing/index.ts';
import { type DxfBlock, writeDxf } from '../../src/core/export/index.ts';
import { boundsOfPoints } from '../../src/core/math/index.ts';
import { draftPiece, drawPieces, type Piece } from '../../src/core/pattern/index.ts';
import { inEnglish } from '../in-english.ts';
import { measurePolygonArea } from '../oracles/polygon-area.ts';
import { LABEL, samplePanels } from '../pattern/synthetic-panels.ts';
import { samplePieces } from '../sheet/sample-pieces.ts';

const PYTHON = '/usr/bin/python3';

function hasEzdxf(): boolean {
  return spawnSync(PYTHON, ['-c', 'import ezdxf']).status === 0;
}

function blockOf(piece: Piece, x = 0): DxfBlock {
  const { minX, minY, maxX, maxY } = boundsOfPoints([piece.cutLine])!;
  const drawing: Drawing = {
    width: maxX - minX,
    height: maxY - minY,
    title: inEnglish(piece.name),
    layers: drawPieces([piece], [{ dx: -minX, dy: maxY }]),
  };
  return { name: piece.id, drawing, x, y: 0, notes: ['Quantity: 1'] };
}

function read(text: string) {
  const dxf = new DxfParser().parseSync(text);
  if (!dxf) throw new Error('not read');
  return dxf;
}

function polylines(entities: readonly IEntity[], layer: string): readonly IPoint[][] {
  return entities
    .filter((entity) => entity.layer === layer && entity.type === 'POLYLINE')
    .map((entity) => (entity as IPolylineEntity).vertices);
}

it('names outward notches on layer 4, each a point of 6 by 4 mm on the boundary', () => {
  const drafted = draftPiece(samplePanels()[1], LABEL, { notchShape: 'outward' });
  if (!drafted.ok) throw new Error('a sound panel');
  const dxf = read(writeDxf({ blocks: [blockOf(drafted.value)], sheetHeight: 800 }));
  const entities = Object.values(dxf.blocks)[0].entities;
  const [boundary] = polylines(entities, '1');
  const points = polylines(entities, '4');
  // One point per mark at the front.
  const wanted = samplePanels()[1].edges.reduce((sum, { marks }) => sum + marks.length, 0);
  expect(points).toHaveLength(wanted);
  for (const [a, tip, b] of points) {
    expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeCloseTo(6, 3);
    expect(Math.hypot(tip.x - (a.x + b.x) / 2, tip.y - (a.y + b.y) / 2)).toBeCloseTo(4, 3);
    const nearest = Math.min(...boundary.map(({ x, y }) => Math.hypot(x - tip.x, y - tip.y)));
    expect(nearest).toBeLessThan(0.01);
  }
});

describe('drafted pieces, read by an independent parser', () => {
  const pieces = samplePieces();
  const text = writeDxf({ blocks: pieces.map((piece, i) => blockOf(piece, 300 * i)), sheetHeight: 800 });
  const dxf = read(text);

  it('is in millimetres, by its header and in words', () => {
    expect(dxf.header.$INSUNITS).toBe(4);
    expect(dxf.header.$MEASUREMENT).toBe(1);
    expect(text).toContain('Units: METRIC');
  });

  it('has one block per piece, each inserted once', () => {
    expect(Object.keys(dxf.blocks)).toHaveLength(pieces.length);
    const inserts = dxf.entities.filter(({ type }) => type === 'INSERT');
    expect(inserts).toHaveLength(pieces.length);
  });

  it('has one boundary on layer 1 with the area of the cut line, seams on 14, in every block', () => {
    for (const [i, { entities }] of Object.values(dxf.blocks).entries()) {
      const outlines = polylines(entities, '1');
      expect(outlines).toHaveLength(1);
      // Points are left out where the line stays within 0.015 mm, and rounded: at most 0.02 mm along the whole outline.
      const area = measurePolygonArea(outlines[0].map(({ x, y }) => [x, y]));
      const cutLine = pairs(pieces[i].cutLine);
      expect(Math.abs(area - measurePolygonArea(cutLine))).toBeLessThan(0.02 * lengthOf(cutLine));
      expect(entities.some(({ layer }) => layer === '14')).toBe(true);
      expect(entities.some(({ layer }) => layer === '15')).toBe(true);
    }
  });

  it('stands upright, as the pieces do: y grows upwards, mirror images are not swapped', () => {
    const [{ entities }] = Object.values(dxf.blocks);
    const [outline] = polylines(entities, '1');
    const { minX, minY } = boundsOfPoints([pieces[0].cutLine])!;
    // Every point written is one of the piece's, in the same order round it.
    let k = 0;
    for (const [x, y] of pairs(pieces[0].cutLine)) {
      if (k === outline.length) break;
      if (Math.hypot(outline[k].x - (x - minX), outline[k].y - (y - minY)) < 1e-3) k++;
    }
    expect(k).toBe(outline.length);
  });

  it('puts slits on 4, the grain on 7, level lines on 8', () => {
    const layers = new Set(
      Object.values(dxf.blocks).flatMap(({ entities }) => entities.map(({ layer }) => layer)),
    );
    expect([...layers].map(Number).sort((a, b) => a - b)).toEqual([1, 2, 3, 4, 7, 8, 14, 15]);
    const [{ entities }] = Object.values(dxf.blocks);
    expect(entities.filter(({ layer }) => layer === '4')).toHaveLength(pieces[0].notches.length);
  });

  // An extra check where Debian's python3-ezdxf is installed; the parser above is always there.
  it.skipIf(!hasEzdxf())('passes the audit of a second independent reader', () => {
    const folder = mkdtempSync(path.join(tmpdir(), 'dxf-'));
    try {
      const file = path.join(folder, 'panels.dxf');
      writeFileSync(file, text);
      const script = `import ezdxf,sys
d=ezdxf.readfile(sys.argv[1])
print(d.units, len(d.audit().errors), len([b for b in d.blocks if not b.name.startswith('*')]), len(d.modelspace().query('INSERT')))`;
      const said = execFileSync(PYTHON, ['-c', script, file], { encoding: 'utf8' });
      expect(said.trim()).toBe(`4 0 ${pieces.length} ${pieces.length}`);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });

  it('is plain ASCII and the same twice', () => {
    expect(text).toMatch(/^[\x20-\x7e\r\n]*$/);
    expect(writeDxf({ blocks: pieces.map((piece, i) => blockOf(piece, 300 * i)), sheetHeight: 800 })).toBe(
      text,
    );
  });
});

it('writes letters beyond ASCII by number, and tells a cut-out from an outline', () => {
  const drawing: Drawing = {
    width: 100,
    height: 100,
    title: 'plate',
    layers: [
      makeLayer('cut', [
        makePath([0, 0, 100, 0, 100, 100, 0, 100], { closed: true }),
        makePath([40, 40, 60, 40, 60, 60, 40, 60], { closed: true }),
      ]),
      makeLayer('text', [makeText(10, 20, 'Größe %%c\n½', 5, { angle: -Math.PI / 2, anchor: 'middle' })]),
    ],
  };
  const text = writeDxf({ blocks: [{ name: 'plate é', drawing, x: 0, y: 0, notes: [] }], sheetHeight: 100 });
  expect(text).toContain('Gr\\U+00F6\\U+00DFe % %c \\U+00BD');
  const [{ entities }] = Object.values(read(text).blocks);
  expect(polylines(entities, '1')).toHaveLength(1);
  expect(polylines(entities, '11')).toHaveLength(1);
});

it('refuses two blocks of one name, and numbers that are none', () => {
  const drawing: Drawing = {
    width: 1,
    height: 1,
    title: '',
    layers: [makeLayer('cut', [makePath([0, 0, Number.NaN, 1])])],
  };
  const block = { name: 'a', drawing: { ...drawing, layers: [] }, x: 0, y: 0, notes: [] };
  expect(() => writeDxf({ blocks: [block, block], sheetHeight: 1 })).toThrow(InvariantError);
  expect(() => writeDxf({ blocks: [{ ...block, drawing }], sheetHeight: 1 })).toThrow(InvariantError);
});

function lengthOf(ring: readonly [number, number][]): number {
  return ring.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = ring[(i + 1) % ring.length];
    return sum + Math.hypot(nextX - x, nextY - y);
  }, 0);
}

function pairs(points: Float64Array): [number, number][] {
  return Array.from({ length: points.length / 2 }, (_, i) => [points[2 * i], points[2 * i + 1]]);
}
