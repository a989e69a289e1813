import { assertInvariant, type Say } from '../base/index.ts';
import {
  type Drawing,
  type DrawingItem,
  type DrawingLayer,
  type DrawingPath,
  type DrawingStyle,
  type DrawingText,
  fitCurves,
} from '../drawing/index.ts';
import { CURVE_TOLERANCE } from './curve-tolerance.ts';
import { styleOfLayer, textColourOfLayer } from './layer-styles.ts';
import { phrase } from './phrases.ts';

const FONTS = "Arial, Helvetica, 'Liberation Sans', sans-serif";

export interface SvgOptions {
  /** Words that tell the size; letters are drawn as they are. */
  readonly say: Say;
  /** CSS colour by layer name, for machines that tell cutting from drawing by colour; `none` leaves a layer out. */
  readonly colours?: Readonly<Record<string, string>>;
  /** For pictures to look at, a third less to keep: two decimals, and lines drawn alike one after the other in one path. */
  readonly isCompact?: boolean;
  /** One stroke width for all, mm, without dashes, for machines that take only hairlines. */
  readonly hairline?: number;
}

/** What is written with: how numbers are written, and the ids so far. */
interface Pen {
  readonly ids: Set<string>;
  readonly number: (value: number) => string;
  readonly isCompact: boolean;
}

/**
 * The drawing as SVG 1.1: width and height in mm and a viewBox in mm, so that one user unit is one millimetre
 * everywhere; the only transforms are rotations of texts. One group per layer, its id and `data-layer` the
 * layer's name. Curves are fitted within 0.015 mm of their points (`fitCurves`). With three decimals a point moves
 * by at most 0.0007 mm. Same drawing, same text.
 * Throws on a number that is not finite and on an id used twice.
 */
export function writeSvg(drawing: Drawing, options: SvgOptions): string {
  const { width, height, title } = drawing;
  const { isCompact = false } = options;
  const decimals = isCompact ? 2 : 3;
  const pen: Pen = { ids: new Set(), number: (value) => formatNumber(value, decimals), isCompact };
  const { number } = pen;
  const size = options.say(phrase('drawing.size', { width, height }));
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="${number(width)}mm" height="${number(height)}mm" viewBox="0 0 ${number(width)} ${number(height)}">`,
    `<title>${escapeXml(title)}</title>`,
    `<desc>${escapeXml(size)}</desc>`,
    ...drawing.layers.flatMap((layer) => writeLayer(layer, pen, options)),
    '</svg>',
    '',
  ].join('\n');
}

function writeLayer(layer: DrawingLayer, pen: Pen, { colours, hairline }: Omit<SvgOptions, 'say'>): string[] {
  const colour = colours?.[layer.name];
  if (colour === 'none') return [];
  const style =
    hairline === undefined ? styleOfLayer(layer.name) : { stroke: '#000000', strokeWidth: hairline };
  const coloured = colour === undefined ? style : { ...style, stroke: colour };
  const name = escapeXml(layer.name);
  const fonts = ` font-family="${escapeXml(FONTS)}"`;
  const letters = colour ?? textColourOfLayer(layer.name);
  return [
    `<g${writeId(layer.name, pen)} data-layer="${name}"${writeStyle({ fill: 'none', ...coloured }, pen)} stroke-linejoin="round"${fonts}>`,
    ...runsOf(layer.items, pen).map((run) => writeRun(run, pen, letters)),
    '</g>',
  ];
}

/** Items that are written in one; each alone unless compact. */
function runsOf(items: readonly DrawingItem[], { isCompact }: Pen): DrawingItem[][] {
  const runs: DrawingItem[][] = [];
  for (const item of items) {
    const last = runs.at(-1)?.[0];
    if (isCompact && last && isLineAlike(last, item)) runs.at(-1)?.push(item);
    else runs.push([item]);
  }
  return runs;
}

/** Open lines that are only stroked, the same way: dashes begin anew with each part of a path (SVG 1.1, 11.4). */
function isLineAlike(one: DrawingItem, other: DrawingItem): boolean {
  const isLine = (item: DrawingItem): item is DrawingPath =>
    item.kind === 'path' && !item.closed && item.id === undefined && item.style?.fill === undefined;
  return isLine(one) && isLine(other) && JSON.stringify(one.style) === JSON.stringify(other.style);
}

function writeRun([first, ...rest]: readonly DrawingItem[], pen: Pen, textColour: string): string {
  if (first.kind === 'text') return writeText(first, pen, textColour);
  return writePath([first, ...rest.filter(({ kind }) => kind === 'path')] as DrawingPath[], pen);
}

function writePath(paths: readonly DrawingPath[], pen: Pen): string {
  const [{ id, style = {} }] = paths;
  const d = paths.flatMap((path) => commandsOf(path, pen)).join(' ');
  return d === '' ? '' : `<path${writeId(id, pen)}${writeStyle(style, pen)} d="${d}"/>`;
}

function commandsOf(path: DrawingPath, { number, isCompact }: Pen): string[] {
  if (path.points.length === 0) return [];
  const { startX, startY, pieces, isCurve } = fitCurves(path.points, path.closed, CURVE_TOLERANCE);
  const commands = [`M${number(startX)} ${number(startY)}`];
  // What closes a path need not be drawn when it is straight.
  const drawn = path.closed && isCurve[isCurve.length - 1] === 0 ? isCurve.length - 1 : isCurve.length;
  for (let i = 0; i < drawn; i++) {
    const from = isCurve[i] === 1 ? 6 * i : 6 * i + 4;
    const numbers = [...pieces.subarray(from, 6 * i + 6)].map(number).join(' ');
    // A letter stands for all commands of its kind that follow.
    const isSame = isCompact && i > 0 && isCurve[i] === isCurve[i - 1];
    commands.push(`${isSame ? '' : isCurve[i] === 1 ? 'C' : 'L'}${numbers}`);
  }
  if (path.closed) commands.push('Z');
  return commands;
}

function writeText(text: DrawingText, pen: Pen, colour: string): string {
  const { number } = pen;
  const x = number(text.x);
  const y = number(text.y);
  const degrees = ((text.angle ?? 0) * 180) / Math.PI;
  const turn = degrees === 0 ? '' : ` transform="rotate(${number(degrees)} ${x} ${y})"`;
  const anchor = text.anchor && text.anchor !== 'start' ? ` text-anchor="${text.anchor}"` : '';
  return `<text${writeId(text.id, pen)} x="${x}" y="${y}" font-size="${number(text.size)}"${anchor}${turn} fill="${text.colour ?? colour}" stroke="none">${escapeXml(text.text)}</text>`;
}

function writeId(id: string | undefined, { ids }: Pen): string {
  if (id === undefined) return '';
  assertInvariant(!ids.has(id), 'export', 'every id in a drawing is used once', id);
  ids.add(id);
  return ` id="${escapeId(id)}"`;
}

function writeStyle(style: DrawingStyle, { number }: Pen): string {
  const parts: string[] = [];
  if (style.fill !== undefined) parts.push(` fill="${escapeXml(style.fill)}"`);
  if (style.stroke !== undefined) parts.push(` stroke="${escapeXml(style.stroke)}"`);
  if (style.strokeWidth !== undefined) parts.push(` stroke-width="${number(style.strokeWidth)}"`);
  if (style.dash) parts.push(` stroke-dasharray="${style.dash.map(number).join(' ')}"`);
  return parts.join('');
}

/** Without trailing zeros or a negative zero. */
function formatNumber(value: number, decimals: number): string {
  assertInvariant(Number.isFinite(value), 'export', 'every number in a drawing is finite', value);
  const text = value.toFixed(decimals).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}

/** An id may hold no white space: that and control characters are percent-encoded, and so is the percent sign. */
function escapeId(id: string): string {
  return escapeXml(id.replace(/[\s%\p{Cc}]/gu, (character) => encodeURIComponent(character)));
}

/** Markup characters as references; what XML 1.0 cannot hold at all becomes U+FFFD. */
function escapeXml(text: string): string {
  return text
    .replace(/[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/gu, '\u{FFFD}')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&apos;');
}
