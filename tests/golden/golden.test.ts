import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { DOMParser } from '@xmldom/xmldom';
import validator from 'gltf-validator';
import SVGPathCommander from 'svg-path-commander';
import { describe, expect, it } from 'vitest';
import { verbatim } from '../../src/core/base/index.ts';
import { writeGlb, writeSvg } from '../../src/core/export/index.ts';
import { arrangePieces, draftPiece } from '../../src/core/pattern/index.ts';
import { readGlb } from '../export/read-glb.ts';
import { tube } from '../export/synthetic-meshes.ts';
import { ENGLISH, inEnglish } from '../in-english.ts';
import { polygonPiece } from '../pattern/synthetic-panels.ts';

/**
 * Files as they were once written and looked at. A change shows as a difference; what they are worth is measured
 * from the stored files themselves. `LOFTSEAM_WRITE_GOLDEN=1` writes them anew.
 */
const isWriting = process.env.LOFTSEAM_WRITE_GOLDEN === '1';

function stored(name: string, fresh: Uint8Array | string): Buffer {
  const file = new URL(name, import.meta.url);
  if (isWriting) writeFileSync(file, fresh);
  expect(existsSync(file), `${name} is stored`).toBe(true);
  return readFileSync(file);
}

describe('square-and-wedge.svg', () => {
  const inputs = [
    {
      ...polygonPiece([
        [0, 0],
        [200, 0],
        [200, 150],
        [0, 150],
      ]),
      id: 'square',
      name: verbatim('Square'),
    },
    {
      ...polygonPiece([
        [0, 0],
        [140, 0],
        [30, 210],
      ]),
      id: 'wedge',
      name: verbatim('Wedge'),
    },
  ];
  const pieces = inputs.map((input) => {
    const result = draftPiece(input, {
      say: inEnglish,
      project: 'Golden',
      body: 'nobody',
      date: '2026-01-01',
    });
    if (!result.ok) throw new Error(input.id);
    return result.value;
  });
  const sheet = arrangePieces(pieces, { say: inEnglish, sheetWidth: 600, title: 'Square and wedge' });
  if (!sheet.ok) throw new Error('sheet');
  const fresh = writeSvg(sheet.value, ENGLISH);
  const file = stored('square-and-wedge.svg', fresh).toString('utf8');
  const root = new DOMParser().parseFromString(file, 'image/svg+xml').documentElement!;
  const path = (id: string): string => {
    const found = Array.from(root.getElementsByTagName('path')).find((p) => p.getAttribute('id') === id);
    return found?.getAttribute('d') ?? '';
  };

  it('is what is written today', () => {
    expect(fresh).toBe(file);
  });

  it('measures 200 × 150 on the sew line and 220 × 170 on the cut line', () => {
    for (const [letter, length] of [
      ['A', 200],
      ['B', 150],
      ['C', 200],
      ['D', 150],
    ] as const) {
      expect(Math.abs(SVGPathCommander.getTotalLength(path(`square/sew/${letter}`)) - length)).toBeLessThan(
        0.05,
      );
    }
    const box = SVGPathCommander.getPathBBox(path('square/cut'));
    expect(box.width).toBeCloseTo(220, 2);
    expect(box.height).toBeCloseTo(170, 2);
    expect(Math.abs(SVGPathCommander.getPathArea(path('square/cut')))).toBeCloseTo(220 * 170, 0);
  });

  it('measures the wedge by Pythagoras', () => {
    const lengths = [140, Math.hypot(110, 210), Math.hypot(30, 210)];
    for (const [i, letter] of ['A', 'B', 'C'].entries()) {
      const length = SVGPathCommander.getTotalLength(path(`wedge/sew/${letter}`));
      expect(Math.abs(length - lengths[i])).toBeLessThan(0.05);
    }
  });

  it('holds bars of 100 mm and 4 in', () => {
    expect(SVGPathCommander.getTotalLength(path('test/bar-100-x'))).toBeCloseTo(100, 2);
    expect(SVGPathCommander.getTotalLength(path('test/bar-4in-y'))).toBeCloseTo(101.6, 2);
  });
});

const freshTube = await writeGlb({
  meshes: [{ name: 'tube', mesh: tube(120, 80, 500, 24, 6) }],
  generator: 'Loftseam',
});

describe('tube.glb', () => {
  const file = new Uint8Array(stored('tube.glb', freshTube));

  it('is what is written today', () => {
    expect(freshTube).toEqual(file);
  });

  it('is valid and measures 0.24 × 0.5 × 0.16 m', async () => {
    expect((await validator.validateBytes(file)).issues.numErrors).toBe(0);
    const { positions } = readGlb(file);
    const spans = [0, 1, 2].map((axis) => {
      const values = positions.filter((_, i) => i % 3 === axis);
      return Math.max(...values) - Math.min(...values);
    });
    for (const [i, span] of [0.24, 0.5, 0.16].entries()) expect(spans[i]).toBeCloseTo(span, 6);
  });
});
