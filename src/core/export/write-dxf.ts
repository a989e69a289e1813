import table from '../../../shared/layers.json' with { type: 'json' };
import { assertInvariant } from '../base/index.ts';
import type { Drawing, DrawingItem, DrawingPath, DrawingText } from '../drawing/index.ts';
import { isInsidePolygon, thinPolyline } from '../math/index.ts';
import { CURVE_TOLERANCE } from './curve-tolerance.ts';

/** One piece as a block. */
export interface DxfBlock {
  /** Unique in the file. */
  readonly name: string;
  readonly drawing: Drawing;
  /** Where the drawing's top left corner is on the sheet, mm, y down. */
  readonly x: number;
  readonly y: number;
  /** Lines such as `Quantity: 1`, written as annotation text. */
  readonly notes: readonly string[];
}

export interface DxfContent {
  readonly blocks: readonly DxfBlock[];
  /** Height of the sheet, mm: its lower edge becomes y = 0. */
  readonly sheetHeight: number;
}

const LAYERS = table.dxf;
/** A point of an outline where its direction changes by more is a turn point, else a curve point. Ours. */
const TURN = Math.PI / 9;
const TURN_POINTS = 2;
const CURVE_POINTS = 3;
const NOTE_SIZE = 5;

/**
 * Pieces as an ASCII DXF in millimetres, one block per piece and one insert per block, on the numbered layers of the
 * apparel piece exchange (ASTM D6673-10; `shared/layers.json`): boundary 1, turn points 2, curve points 3, notches 4, grain 7,
 * internal lines 8, internal cut-outs 11, sew lines 14, text 15. Entities are those of release 12, which every reader knows;
 * the header names the unit, and so does a text, because many readers ignore the header. Characters beyond ASCII are written
 * `\U+XXXX`. Curves are thinned to points that keep within 0.015 mm of them. Same content, same text. Throws on a block name used twice and on numbers that are not finite.
 */
export function writeDxf({ blocks, sheetHeight }: DxfContent): string {
  const names = blocks.map(({ name }) => blockName(name));
  const repeated = names.find((name, i) => names.indexOf(name) !== i);
  assertInvariant(repeated === undefined, 'export', 'every block of a DXF has its own name', repeated);
  const width = Math.max(0, ...blocks.map(({ x, drawing }) => x + drawing.width));
  const lines = [
    ...section('HEADER', [
      [9, '$ACADVER', 1, 'AC1009'],
      [9, '$DWGCODEPAGE', 3, 'ANSI_1252'],
      [9, '$INSUNITS', 70, 4],
      [9, '$MEASUREMENT', 70, 1],
      [9, '$EXTMIN', 10, 0, 20, 0, 30, 0],
      [9, '$EXTMAX', 10, width, 20, sheetHeight, 30, 0],
    ]),
    ...section('TABLES', [
      [0, 'TABLE', 2, 'LTYPE', 70, 1],
      [0, 'LTYPE', 2, 'CONTINUOUS', 70, 0, 3, 'Solid', 72, 65, 73, 0, 40, 0],
      [0, 'ENDTAB'],
      [0, 'TABLE', 2, 'LAYER', 70, layerNumbers().length],
      ...layerNumbers().map((n, i): Group[] => [
        0,
        'LAYER',
        2,
        `${n}`,
        70,
        0,
        62,
        (i % 6) + 1,
        6,
        'CONTINUOUS',
      ]),
      [0, 'ENDTAB'],
      [0, 'TABLE', 2, 'STYLE', 70, 1],
      [0, 'STYLE', 2, 'STANDARD', 70, 0, 40, 0, 41, 1, 50, 0, 71, 0, 42, 5, 3, 'txt', 4, ''],
      [0, 'ENDTAB'],
    ]),
    ...section(
      'BLOCKS',
      blocks.flatMap((block, i) => writeBlock(block, names[i])),
    ),
    ...section('ENTITIES', [
      ...blocks.map(({ x, y, drawing }, i): Group[] => [
        ...[0, 'INSERT', 8, `${LAYERS.cut.number}`, 2, names[i]],
        ...point(10, x, sheetHeight - y - drawing.height),
      ]),
      textEntity('Units: METRIC (millimetres)', 0, -10, NOTE_SIZE),
    ]),
    '  0',
    'EOF',
    '',
  ];
  return lines.join('\r\n');
}

/** Group codes and values in turn. */
type Group = number | string;

function section(name: string, records: readonly Group[][]): string[] {
  const lines: string[] = ['  0', 'SECTION', '  2', name];
  for (const record of records) {
    for (let i = 0; i < record.length; i += 2) {
      const code = record[i] as number;
      lines.push(`${code}`.padStart(3), formatValue(code, record[i + 1]));
    }
  }
  return [...lines, '  0', 'ENDSEC'];
}

/** Codes 10–59 hold real numbers, 60–79 whole ones; the rest is text. */
function formatValue(code: number, value: Group): string {
  if (typeof value === 'string') return value;
  assertInvariant(Number.isFinite(value), 'export', 'every number in a drawing is finite', value);
  return code >= 10 && code < 60 ? shortest(value) : `${value}`;
}

/** Four decimals without the noughts that say nothing; a real number keeps one behind its point. */
function shortest(value: number): string {
  return value
    .toFixed(4)
    .replace(/^-(0\.0+)$/, '$1')
    .replace(/(\.\d+?)0+$/, '$1');
}

function layerNumbers(): number[] {
  return [...Object.values(LAYERS).map(({ number }) => number), TURN_POINTS, CURVE_POINTS].sort(
    (a, b) => a - b,
  );
}

function writeBlock({ drawing, notes }: DxfBlock, name: string): Group[][] {
  const outlines = drawing.layers
    .filter((layer) => layer.name === 'cut')
    .flatMap(({ items }) => items.filter((item): item is DrawingPath => item.kind === 'path' && item.closed));
  return [
    [0, 'BLOCK', 8, `${LAYERS.cut.number}`, 2, name, 70, 0, ...point(10, 0, 0), 3, name],
    ...drawing.layers.flatMap((layer) =>
      layer.items.flatMap((item) => writeItem(item, layer.name, drawing.height, outlines)),
    ),
    ...notes.map((note, i) => textEntity(note, 0, -(i + 2) * 2 * NOTE_SIZE, NOTE_SIZE)),
    [0, 'ENDBLK', 8, `${LAYERS.cut.number}`],
  ];
}

function writeItem(
  item: DrawingItem,
  layer: string,
  height: number,
  outlines: readonly DrawingPath[],
): Group[][] {
  if (item.kind === 'text') return [writeLettering(item, height)];
  const number = layerOfPath(item, layer, outlines);
  const { closed } = item;
  const turns = turnPoints(item);
  const kept = thinPolyline(item.points, closed, CURVE_TOLERANCE, turns);
  const at = (k: number): [number, number] => [
    item.points[2 * kept[k]],
    height - item.points[2 * kept[k] + 1],
  ];
  const count = kept.length;
  if (count < 2) return [];
  if (count === 2 && !closed)
    return [[0, 'LINE', 8, `${number}`, ...point(10, ...at(0)), ...point(11, ...at(1))]];
  const polyline: Group[][] = [
    [0, 'POLYLINE', 8, `${number}`, 66, 1, 70, closed ? 1 : 0, ...point(10, 0, 0)],
    ...Array.from({ length: count }, (_, i): Group[] => [
      0,
      'VERTEX',
      8,
      `${number}`,
      ...point(10, ...at(i)),
    ]),
    [0, 'SEQEND', 8, `${number}`],
  ];
  if (number !== LAYERS.cut.number) return polyline;
  const marks = Array.from({ length: count }, (_, i): Group[] => [
    ...[0, 'POINT', 8, `${turns.has(kept[i]) ? TURN_POINTS : CURVE_POINTS}`],
    ...point(10, ...at(i)),
  ]);
  return [...polyline, ...marks];
}

/** The number a path belongs on: a closed cut inside another is a cut-out, an open one a notch; the grain has its own. */
function layerOfPath(path: DrawingPath, layer: string, outlines: readonly DrawingPath[]): number {
  if (layer === 'cut') {
    if (!path.closed) return LAYERS.notch.number;
    const [x, y] = path.points;
    const isInside = outlines.some((other) => other !== path && isInsidePolygon(other.points, x, y));
    return isInside ? LAYERS.hole.number : LAYERS.cut.number;
  }
  if (layer === 'sew') return LAYERS.sew.number;
  // A point that stands out of the outline is part of it and a notch as well.
  if (/\/notch\//.test(path.id ?? '')) return LAYERS.notch.number;
  return /\/grain(\/|$)/.test(path.id ?? '') ? LAYERS.grain.number : LAYERS.mark.number;
}

/** Corners of the line as it was drawn: thinned, a curve turns more from point to point. */
function turnPoints({ points, closed }: DrawingPath): ReadonlySet<number> {
  const count = points.length / 2;
  const turns = new Set<number>();
  for (let i = closed ? 0 : 1; i < (closed ? count : count - 1); i++) {
    const [h, j] = [(i + count - 1) % count, (i + 1) % count];
    const before = Math.atan2(points[2 * i + 1] - points[2 * h + 1], points[2 * i] - points[2 * h]);
    const after = Math.atan2(points[2 * j + 1] - points[2 * i + 1], points[2 * j] - points[2 * i]);
    if (Math.abs(Math.atan2(Math.sin(after - before), Math.cos(after - before))) > TURN) turns.add(i);
  }
  return turns;
}

function writeLettering(
  { x, y, text, size, angle = 0, anchor = 'start' }: DrawingText,
  height: number,
): Group[] {
  const entity = textEntity(text, x, height - y, size);
  const degrees = (-angle * 180) / Math.PI;
  const alignment = { start: 0, middle: 1, end: 2 }[anchor];
  const second = alignment === 0 ? [] : [72, alignment, ...point(11, x, height - y)];
  return [...entity, 50, ((degrees % 360) + 360) % 360, ...second];
}

function textEntity(text: string, x: number, y: number, size: number): Group[] {
  return [0, 'TEXT', 8, `${LAYERS.text.number}`, ...point(10, x, y), 40, size, 1, escapeText(text)];
}

function point(code: number, x: number, y: number): Group[] {
  return [code, x, code + 10, y, code + 20, 0];
}

/** Control characters become blanks, `%%` would start a code of its own, what is not ASCII is numbered. */
function escapeText(text: string): string {
  const plain = text.replace(/\p{Cc}/gu, ' ').replaceAll('%%', '% %');
  return plain.replace(
    /[^\x20-\x7e]/g,
    (unit) => `\\U+${unit.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}`,
  );
}

/** Release 12 knows letters, digits, `$`, `-` and `_`, at most 31 of them, in upper case. */
function blockName(name: string): string {
  return name
    .replace(/([a-z])([A-Z])/g, '$1_$2')
    .toUpperCase()
    .replace(/[^A-Z0-9$_-]/g, '_')
    .slice(0, 31);
}
