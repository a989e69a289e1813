import type { PDFContext, PDFDocument, PDFFont, PDFPage, PDFRef } from '@cantoo/pdf-lib';
import { assertInvariant, mmPerInch, type Say } from '../base/index.ts';
import {
  type Drawing,
  type DrawingLayer,
  type DrawingPath,
  type DrawingStyle,
  type DrawingText,
  fitCurves,
} from '../drawing/index.ts';
import { CURVE_TOLERANCE } from './curve-tolerance.ts';
import { styleOfLayer, textColourOfLayer, titleOfLayer } from './layer-styles.ts';

const POINTS_PER_MM = 72 / mmPerInch;
/** A page side of more than 14 400 units is not allowed (ISO 32000-1 annex C). */
const LONGEST_SIDE = 14_400 / POINTS_PER_MM;

/** Six letters before the name say that only some glyphs are there (ISO 32000-1 §9.6.4). */
const SUBSET_TAG = 'LOFTSE';

export interface PdfContent {
  readonly pages: readonly Drawing[];
  readonly title: string;
  /** Words of the layers' names. */
  readonly say: Say;
  /** A TrueType font file; the glyphs used are embedded. */
  readonly font: Uint8Array;
  /** PostScript name of the font. */
  readonly fontName: string;
  /** Name of the program, written into the file. */
  readonly creator: string;
}

/**
 * Drawings as pages of a PDF 1.7 file, each page as large as its drawing. Content is written in millimetres under one
 * scaling per page; curves are fitted within 0.015 mm of their points, numbers carry three decimals. Every layer name is an optional-content group that readers can switch
 * (ISO 32000-1 §8.11). No dates and no random ids: same drawings, same bytes. Rejects a page longer than 5.08 m, numbers
 * that are not finite, and colours other than `#rrggbb`.
 */
export async function writePdf({
  pages,
  title,
  say,
  font,
  fontName,
  creator,
}: PdfContent): Promise<Uint8Array> {
  // Both packages are large and wanted seldom: fetched when they are.
  const [pdf, fontkit] = await Promise.all([import('@cantoo/pdf-lib'), import('fontkit')]);
  const { PDFName } = pdf;
  const document = await pdf.PDFDocument.create({ updateMetadata: false });
  document.registerFontkit(layingOutOnce(fontkit));
  document.setTitle(title, { showInWindowTitleBar: true });
  document.setCreator(creator);
  document.setProducer(creator);
  const embedded = await document.embedFont(font, { subset: true, customName: `${SUBSET_TAG}+${fontName}` });
  const groups = addLayerGroups(pdf, document.context, pages, say);
  const letters = createLetters(embedded);
  for (const drawing of pages) addPage(pdf, document, drawing, embedded, letters, groups);
  const refs = [...groups.values()].map(({ ref }) => ref);
  if (refs.length > 0) {
    const properties = document.context.obj({ OCGs: refs, D: { Order: refs, ON: refs, Name: 'Layers' } });
    document.catalog.set(PDFName.of('OCProperties'), document.context.register(properties));
  }
  // Printing must not scale (ISO 32000-1 table 150); most readers follow it.
  document.catalog.set(
    PDFName.of('ViewerPreferences'),
    document.context.obj({ PrintScaling: 'None', DisplayDocTitle: true }),
  );
  return document.save({ useObjectStreams: true, addDefaultPage: false, updateFieldAppearances: false });
}

type Pdf = typeof import('@cantoo/pdf-lib');

interface LayerGroup {
  readonly ref: PDFRef;
  /** Key in a page's resources. */
  readonly key: string;
}

function addLayerGroups(
  { PDFName, PDFHexString }: Pdf,
  context: PDFContext,
  pages: readonly Drawing[],
  say: Say,
): Map<string, LayerGroup> {
  const groups = new Map<string, LayerGroup>();
  for (const { layers } of pages) {
    for (const { name } of layers) {
      if (groups.has(name)) continue;
      const group = context.obj({ Type: 'OCG' });
      group.set(PDFName.of('Name'), PDFHexString.fromText(say(titleOfLayer(name))));
      groups.set(name, { ref: context.register(group), key: `L${groups.size}` });
    }
  }
  return groups;
}

function addPage(
  { PDFName }: Pdf,
  document: PDFDocument,
  drawing: Drawing,
  font: PDFFont,
  letters: Letters,
  groups: ReadonlyMap<string, LayerGroup>,
): void {
  const { width, height } = drawing;
  const longest = Math.max(width, height);
  assertInvariant(
    longest <= LONGEST_SIDE,
    'export',
    `a PDF page is at most ${LONGEST_SIDE} mm long`,
    longest,
  );
  const page: PDFPage = document.addPage([width * POINTS_PER_MM, height * POINTS_PER_MM]);
  const { context } = document;
  const properties = context.obj({});
  for (const { name } of drawing.layers) {
    const { key, ref } = groups.get(name) as LayerGroup;
    properties.set(PDFName.of(key), ref);
  }
  page.node.normalizedEntries();
  page.node.Resources()?.set(PDFName.of('Properties'), properties);
  page.node.setFontDictionary(PDFName.of('F'), font.ref);

  // One unit is one millimetre, y runs down.
  const scale = POINTS_PER_MM.toFixed(6);
  const content = [
    `q ${scale} 0 0 -${scale} 0 ${(height * POINTS_PER_MM).toFixed(4)} cm 1 j`,
    ...drawing.layers.map((layer) => writeLayer(layer, letters, groups.get(layer.name)?.key ?? '')),
    'Q',
  ].join('\n');
  page.node.set(PDFName.of('Contents'), context.register(context.flateStream(content)));
}

function writeLayer({ name, items, lettersWithin }: DrawingLayer, font: Letters, key: string): string {
  const style = styleOfLayer(name);
  const lines = [`/OC /${key} BDC q`, strokeState(style)];
  for (const item of items) {
    if (item.kind === 'path') lines.push(writePath(item, style));
  }
  if (lettersWithin) {
    const { minX, minY, maxX, maxY } = lettersWithin;
    lines.push(`${[minX, minY, maxX - minX, maxY - minY].map(format).join(' ')} re W n`);
  }
  lines.push(`${writeColour(textColourOfLayer(name))} rg`);
  for (const item of items) {
    if (item.kind === 'text') lines.push(writeText(item, font));
  }
  return [...lines, 'Q EMC'].filter((line) => line !== '').join('\n');
}

function strokeState({ stroke, strokeWidth, dash, fill }: DrawingStyle): string {
  return [
    stroke && stroke !== 'none' ? `${writeColour(stroke)} RG` : '',
    strokeWidth === undefined ? '' : `${format(strokeWidth)} w`,
    dash ? `[${dash.map(format).join(' ')}] 0 d` : '',
    fill && fill !== 'none' ? `${writeColour(fill)} rg` : '',
  ]
    .filter((part) => part !== '')
    .join(' ');
}

function writePath({ points, closed, style }: DrawingPath, inherited: DrawingStyle): string {
  if (points.length < 4) return '';
  const { startX, startY, pieces, isCurve } = fitCurves(points, closed, CURVE_TOLERANCE);
  const parts = [`${format(startX)} ${format(startY)} m`];
  for (let i = 0; i < isCurve.length; i++) {
    const numbers = pieces.subarray(isCurve[i] === 1 ? 6 * i : 6 * i + 4, 6 * i + 6);
    parts.push(`${[...numbers].map(format).join(' ')} ${isCurve[i] === 1 ? 'c' : 'l'}`);
  }
  const { stroke, fill = 'none' } = { ...inherited, ...style };
  const isStroked = stroke !== undefined && stroke !== 'none';
  const isFilled = fill !== 'none';
  if (!isStroked && !isFilled) return '';
  const paint = isStroked && isFilled ? 'B' : isFilled ? 'f' : 'S';
  const path = `${parts.join(' ')}${closed ? ' h' : ''} ${paint}`;
  return style ? `q ${strokeState(style)} ${path} Q` : path;
}

function writeText(
  { x, y, text, size, angle = 0, anchor = 'start', colour }: DrawingText,
  font: Letters,
): string {
  const { glyphs, width: unit } = font(text.replace(/\p{Cc}/gu, ' '));
  if (glyphs === '') return '';
  const width = unit * size;
  const back = anchor === 'start' ? 0 : anchor === 'middle' ? width / 2 : width;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const matrix = [cos, sin, sin, -cos].map((value) => value.toFixed(5).replace(/^-(0\.0+)$/, '$1'));
  const at = `${format(x - back * cos)} ${format(y - back * sin)}`;
  const letters = `BT /F ${format(size)} Tf ${matrix.join(' ')} ${at} Tm <${glyphs}> Tj ET`;
  return colour ? `q ${writeColour(colour)} rg ${letters} Q` : letters;
}

type Fontkit = Parameters<PDFDocument['registerFontkit']>[0];

/** Letters are set twice in a row, for their glyphs and for their width: done once, in half the time. */
function layingOutOnce(fontkit: Fontkit): Fontkit {
  return {
    create(...wanted) {
      const font = fontkit.create(...wanted);
      if (!font || !('layout' in font)) return font;
      const layout = font.layout.bind(font);
      let last: { readonly key: string; readonly run: ReturnType<typeof layout> } | undefined;
      font.layout = (text, ...rest) => {
        const key = JSON.stringify([text, rest]);
        if (last?.key !== key) last = { key, run: layout(text, ...rest) };
        return last.run;
      };
      return font;
    },
  };
}

/** A text's glyphs as they stand in the file, '' for blanks alone, and its width at a size of 1. */
type Letters = (text: string) => { readonly glyphs: string; readonly width: number };

/** Setting letters takes most of the time of a file, and names of levels and seams come again and again. */
function createLetters(font: PDFFont): Letters {
  const known = new Map<string, ReturnType<Letters>>();
  return (text) => {
    const before = known.get(text);
    if (before) return before;
    const runs = text.trim() === '' ? [] : splitByDirection(text);
    const letters = {
      glyphs: runs.map((run) => font.encodeText(run).asString()).join(''),
      width: runs.reduce((sum, run) => sum + font.widthOfTextAtSize(run, 1), 0),
    };
    known.set(text, letters);
    return letters;
  };
}

/** Hebrew, Arabic and their neighbours, with the spaces and signs between their words. */
const RIGHT_TO_LEFT =
  /[\u0590-\u08FF\uFB1D-\uFDFF\uFE70-\uFEFF]+(?:[\s\p{P}]+[\u0590-\u08FF\uFB1D-\uFDFF\uFE70-\uFEFF]+)*/gu;

/**
 * The text in stretches of one direction each, in the order they are set from the left: the font library turns a stretch
 * round as a whole. Right-to-left stretches parted by Latin words or numbers keep their places, a simplification of the
 * Unicode bidirectional algorithm (UAX 9).
 */
function splitByDirection(text: string): string[] {
  const runs: string[] = [];
  let from = 0;
  for (const found of text.matchAll(RIGHT_TO_LEFT)) {
    runs.push(text.slice(from, found.index), found[0]);
    from = found.index + found[0].length;
  }
  return [...runs, text.slice(from)].filter((run) => run !== '');
}

function writeColour(colour: string): string {
  const parts = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(colour);
  assertInvariant(parts !== null, 'export', 'colours in a PDF are #rrggbb', colour);
  return parts
    .slice(1)
    .map((part) => format(Number.parseInt(part, 16) / 255))
    .join(' ');
}

/** Three decimals, without trailing zeros or a negative zero. */
function format(value: number): string {
  assertInvariant(Number.isFinite(value), 'export', 'every number in a drawing is finite', value);
  const text = value.toFixed(3).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}
