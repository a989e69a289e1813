import { DOMParser, type Element } from '@xmldom/xmldom';
import SVGPathCommander from 'svg-path-commander';
import { describe, expect, it } from 'vitest';
import { InvariantError } from '../../src/core/base/index.ts';
import { type Drawing, makeLayer, makePath, makeText } from '../../src/core/drawing/index.ts';
import { writeSvg } from '../../src/core/export/index.ts';
import { arrangePieces, draftPiece } from '../../src/core/pattern/index.ts';
import { ENGLISH, inEnglish } from '../in-english.ts';
import { lengthOf } from '../pattern/brute-force.ts';
import { LABEL, samplePanels } from '../pattern/synthetic-panels.ts';

/** A seam may come out of the file this much longer or shorter, mm. */
const SEAM_TOLERANCE = 0.05;

/** Strict reading: any warning of the XML parser is a failure. */
function read(svg: string): Element {
  const parser = new DOMParser({
    onError: (level, message) => {
      // Ours, on purpose, where XML has no character for what was typed.
      if (message.includes('replacement character')) return;
      throw new Error(`${level}: ${message}`);
    },
  });
  return parser.parseFromString(svg, 'image/svg+xml').documentElement!;
}

function elements(root: Element, name: string): Element[] {
  return Array.from(root.getElementsByTagName(name));
}

function byId(root: Element): Map<string, Element> {
  const all = elements(root, '*').filter((element) => element.hasAttribute('id'));
  return new Map(all.map((element) => [element.getAttribute('id')!, element]));
}

function lengthOfPath(path: Element): number {
  return SVGPathCommander.getTotalLength(path.getAttribute('d')!);
}

/** From a point to a polyline (x, y, x, y …). */
function distanceToLine(line: readonly number[], x: number, y: number): number {
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i + 3 < line.length; i += 2) {
    const [ex, ey] = [line[i + 2] - line[i], line[i + 3] - line[i + 1]];
    const squared = ex * ex + ey * ey;
    const t =
      squared === 0 ? 0 : Math.min(1, Math.max(0, ((x - line[i]) * ex + (y - line[i + 1]) * ey) / squared));
    best = Math.min(best, Math.hypot(line[i] + t * ex - x, line[i + 1] + t * ey - y));
  }
  return best;
}

const INPUTS = samplePanels();

function sheet(): Drawing {
  const pieces = INPUTS.map((input) => {
    const result = draftPiece(input, LABEL);
    if (!result.ok) throw new Error(input.id);
    return result.value;
  });
  const result = arrangePieces(pieces, { say: inEnglish, title: 'Pieces & more <1 sheet>' });
  if (!result.ok) throw new Error('sheet');
  return result.value;
}

describe('a sheet read back', () => {
  const drawing = sheet();
  const svg = writeSvg(drawing, ENGLISH);
  const root = read(svg);
  const ids = byId(root);

  it('is true to size: 1 unit = 1 mm', () => {
    expect(root.getAttribute('width')).toBe('1400mm');
    expect(root.getAttribute('height')).toBe(`${drawing.height}mm`);
    expect(root.getAttribute('viewBox')).toBe(`0 0 1400 ${drawing.height}`);
    for (const element of elements(root, '*')) {
      const transform = element.getAttribute('transform');
      if (transform) expect(transform).toMatch(/^rotate\(-?[\d.]+ -?[\d.]+ -?[\d.]+\)$/);
    }
  });

  it('keeps every seam within the tolerance, every piece and edge', () => {
    let count = 0;
    for (const { id, edges } of INPUTS) {
      for (const { letter, id: edgeId, points } of edges) {
        const path = ids.get(`${id}/sew/${letter || edgeId}`)!;
        expect(Math.abs(lengthOfPath(path) - lengthOf(points)), `${id} ${edgeId}`).toBeLessThan(
          SEAM_TOLERANCE,
        );
        count++;
      }
    }
    expect(count).toBeGreaterThan(25);
  });

  it('draws no cut line farther than 0.02 mm from the polyline it stands for (sampled by a path library)', () => {
    let count = 0;
    for (const layer of drawing.layers)
      for (const item of layer.items) {
        if (item.kind !== 'path' || !item.id?.includes('/cut')) continue;
        const d = ids.get(item.id)!.getAttribute('d')!;
        const length = SVGPathCommander.getTotalLength(d);
        const dense = Array.from({ length: 1500 }, (_, i) =>
          SVGPathCommander.getPointAtLength(d, (length * i) / 1500),
        );
        const ring = [...item.points, item.points[0], item.points[1]];
        for (const { x, y } of dense) expect(distanceToLine(ring, x, y), item.id).toBeLessThan(0.02);
        count++;
      }
    expect(count).toBe(INPUTS.length);
  });

  it('keeps the bars to the micrometre', () => {
    for (const [id, length] of [
      ['test/bar-100-x', 100],
      ['test/bar-100-y', 100],
      ['test/bar-4in-x', 101.6],
      ['test/bar-4in-y', 101.6],
      ['test/square-100', 400],
    ] as const) {
      expect(Math.abs(lengthOfPath(ids.get(id)!) - length)).toBeLessThan(0.0015);
    }
    const box = SVGPathCommander.getPathBBox(ids.get('test/square-100')!.getAttribute('d')!);
    expect(box.width).toBeCloseTo(100, 3);
    expect(box.height).toBeCloseTo(100, 3);
  });

  it('groups by layer', () => {
    const groups = elements(root, 'g');
    expect(groups.map((group) => group.getAttribute('id'))).toEqual(['cut', 'sew', 'mark', 'text']);
    expect(groups.map((group) => group.getAttribute('data-layer'))).toEqual(['cut', 'sew', 'mark', 'text']);
    expect(ids.get('front-right/cut')!.parentNode).toBe(groups[0]);
    expect(ids.get('front-right/sew/A')!.parentNode).toBe(groups[1]);
  });

  it('closes outlines and leaves lines unfilled', () => {
    expect(ids.get('front-right/cut')!.getAttribute('d')).toMatch(/Z$/);
    expect(ids.get('front-right/sew/A')!.getAttribute('d')).not.toMatch(/Z/);
    for (const group of elements(root, 'g')) expect(group.getAttribute('fill')).toBe('none');
  });

  it('draws strokes a machine takes for hairlines and a person still sees', () => {
    for (const group of elements(root, 'g')) {
      const width = Number(group.getAttribute('stroke-width'));
      expect(width).toBeGreaterThanOrEqual(0.2);
      expect(width).toBeLessThanOrEqual(0.35);
    }
  });

  it('has only plain SVG attributes and names each id once', () => {
    expect(svg).not.toMatch(/xmlns:|xlink|inkscape|sodipodi|px/);
    expect(svg.match(/ id="/g)!.length).toBe(ids.size);
  });

  it('is the same text for the same drawing', () => {
    expect(writeSvg(sheet(), ENGLISH)).toBe(svg);
  });
});

describe('what people type', () => {
  const nasty = `<b>"Q&A" 'x'</b> ]]> \u0007 \ud800 ünï 縫`;
  const drawing: Drawing = {
    width: 100,
    height: 50,
    title: nasty,
    layers: [
      makeLayer('a&b <c>', [
        makePath([0, 0, 10, 10], { id: 'wren"s piece/<cut> 100%', style: { stroke: '"><script>' } }),
        makeText(1, 2, nasty, 5, { id: 'note' }),
      ]),
    ],
  };
  const root = read(writeSvg(drawing, ENGLISH));
  // XML 1.0 has no character for a bell or half a surrogate pair: both become U+FFFD.
  const cleaned = nasty.replace('\u0007', '\ufffd').replace('\ud800', '\ufffd');

  it('comes back as text, never as markup', () => {
    expect(elements(root, 'title')[0].textContent).toBe(cleaned);
    expect(elements(root, 'text')[0].textContent).toBe(cleaned);
    expect(elements(root, 'b')).toHaveLength(0);
    expect(elements(root, 'script')).toHaveLength(0);
    expect(elements(root, 'path')[0].getAttribute('stroke')).toBe('"><script>');
    expect(elements(root, 'g')[0].getAttribute('data-layer')).toBe('a&b <c>');
  });

  it('gives ids without white space, still told apart', () => {
    expect(elements(root, 'path')[0].getAttribute('id')).toBe('wren"s%20piece/<cut>%20100%25');
  });
});

describe('numbers', () => {
  const draw = (points: number[]): string => {
    const layers = [makeLayer('cut', [makePath(points)])];
    return read(writeSvg({ width: 10, height: 10, title: '', layers }, ENGLISH))
      .getElementsByTagName('path')[0]
      .getAttribute('d')!;
  };

  it('carry three decimals, no exponent, no negative zero', () => {
    expect(draw([1 / 3, -1e-7, 1200, 1e-9, 0.0005, 99.99951])).toBe('M0.333 0 L1200 0 L0.001 100');
  });

  it('must be finite', () => {
    expect(() => draw([0, Number.NaN])).toThrow(InvariantError);
    expect(() => draw([Number.POSITIVE_INFINITY, 0])).toThrow(InvariantError);
  });
});

it('refuses an id used twice', () => {
  const layers = [
    makeLayer('cut', [makePath([0, 0, 1, 1], { id: 'x' }), makePath([0, 0, 1, 1], { id: 'x' })]),
  ];
  expect(() => writeSvg({ width: 1, height: 1, title: '', layers }, ENGLISH)).toThrow(/used once/);
});

it('turns text clockwise on the page', () => {
  const layers = [makeLayer('text', [makeText(5, 6, 'up', 4, { angle: -Math.PI / 2, anchor: 'middle' })])];
  const text = read(writeSvg({ width: 10, height: 10, title: '', layers }, ENGLISH)).getElementsByTagName(
    'text',
  )[0];
  expect(text.getAttribute('transform')).toBe('rotate(-90 5 6)');
  expect(text.getAttribute('text-anchor')).toBe('middle');
});
