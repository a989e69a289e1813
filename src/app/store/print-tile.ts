import { withUsual } from '../../core/base/index.ts';
import { type ClothPrint, LAYING_OPTIONS } from '../../core/laying/index.ts';
import type { ClothPhoto } from './types.ts';

/**
 * One repeat of a print with the middle of a motif in its middle, as the cloth lies: to the right along it, up across it. Lengths
 * in mm on the cloth; the tile at (firstAlong, firstAcross) has its middle there.
 */
export interface PrintTile {
  readonly picture: HTMLCanvasElement;
  readonly along: number;
  readonly across: number;
  readonly firstAlong: number;
  readonly firstAcross: number;
}

const MOST_PIXELS = 768;
const PIXELS_PER_MM = 4;
/** A way in which the print does not change is drawn this long where nothing else says, mm. */
const ANY_LENGTH = 100;
const GROUND = '#efe6d3';
const INK = '#2c5a78';
const SECOND = '#b3503a';

/** Null for plain cloth. A photo that is not there is drawn as an empty field with a rim. */
export function printTileOf(print: ClothPrint, photo: ClothPhoto | null): Promise<PrintTile | null> {
  const known = made.find((tile) => tile.print === print && tile.photo === photo);
  if (known) return known.tile;
  const tile = makeTile(print, photo);
  made.unshift({ print, photo, tile });
  made.length = Math.min(made.length, MOST_KEPT);
  return tile;
}

const MOST_KEPT = 4;
/** Plan and body show the same tiles. */
const made: { print: ClothPrint; photo: ClothPhoto | null; tile: Promise<PrintTile | null> }[] = [];

async function makeTile(print: ClothPrint, photo: ClothPhoto | null): Promise<PrintTile | null> {
  const { kind, across, along, firstAcross, firstAlong } = withUsual(LAYING_OPTIONS.print, print);
  if (kind === 'plain') return null;
  const size = {
    along: along || across || ANY_LENGTH,
    across: across || along || ANY_LENGTH,
  };
  const scale = Math.min(PIXELS_PER_MM, MOST_PIXELS / Math.max(size.along, size.across));
  const picture = document.createElement('canvas');
  picture.width = Math.max(2, Math.round(size.along * scale));
  picture.height = Math.max(2, Math.round(size.across * scale));
  const context = picture.getContext('2d', { willReadFrequently: true });
  if (!context) return null;
  context.fillStyle = GROUND;
  context.fillRect(0, 0, picture.width, picture.height);
  context.translate(picture.width / 2, picture.height / 2);
  // From here on a repeat is one long each way, its top to the right.
  context.scale(picture.width, picture.height);
  if (kind === 'photo') await drawPhoto(context, photo);
  else if (kind === 'dots') drawMotif(context, size.along / size.across);
  else {
    if (kind !== 'stripesAcross') drawStripes(context, 'along', kind === 'checks');
    if (kind !== 'stripesAlong') drawStripes(context, 'across', kind === 'checks');
  }
  return { picture, ...size, firstAlong, firstAcross };
}

/** Stripes that run along the cloth, or across it: a broad one in the middle and a fine one between. */
function drawStripes(context: CanvasRenderingContext2D, way: 'along' | 'across', isThin: boolean): void {
  const stripe = (from: number, breadth: number) =>
    way === 'along'
      ? context.fillRect(-0.5, from - breadth / 2, 1, breadth)
      : context.fillRect(from - breadth / 2, -0.5, breadth, 1);
  context.globalAlpha = isThin ? 0.55 : 0.85;
  context.fillStyle = INK;
  stripe(0, 0.36);
  context.fillStyle = SECOND;
  for (const at of [-0.5, 0.5]) stripe(at, 0.05);
  context.globalAlpha = 1;
}

/** A flower on its stalk, head to the top. `ratio`: how much longer the repeat is along than across. */
function drawMotif(context: CanvasRenderingContext2D, ratio: number): void {
  context.save();
  // As wide as it is long, whatever the repeat.
  context.scale(Math.min(1, 1 / ratio), Math.min(1, ratio));
  context.strokeStyle = '#4d7148';
  context.lineWidth = 0.035;
  context.beginPath();
  context.moveTo(-0.34, 0);
  context.lineTo(0.05, 0);
  context.stroke();
  context.fillStyle = '#4d7148';
  for (const side of [-1, 1]) ellipse(context, -0.16, side * 0.09, 0.1, 0.045, side * 0.7);
  context.fillStyle = SECOND;
  for (let petal = 0; petal < 5; petal++) {
    const angle = (2 * Math.PI * petal) / 5;
    ellipse(context, 0.14 + 0.11 * Math.cos(angle), 0.11 * Math.sin(angle), 0.095, 0.075, angle);
  }
  context.fillStyle = '#e4b23e';
  ellipse(context, 0.14, 0, 0.07, 0.07, 0);
  context.restore();
}

function ellipse(
  context: CanvasRenderingContext2D,
  ...[x, y, along, across, angle]: readonly [number, number, number, number, number]
): void {
  context.beginPath();
  context.ellipse(x, y, along, across, angle, 0, 2 * Math.PI);
  context.fill();
}

async function drawPhoto(context: CanvasRenderingContext2D, photo: ClothPhoto | null): Promise<void> {
  const picture = photo && (await createImageBitmap(photo.file).catch(() => null));
  if (!photo || !picture) {
    context.fillStyle = INK;
    context.fillRect(-0.49, -0.49, 0.98, 0.98);
    context.fillStyle = GROUND;
    context.fillRect(-0.47, -0.47, 0.94, 0.94);
    // An arrow to the top.
    context.fillStyle = INK;
    context.beginPath();
    context.moveTo(0.3, 0);
    context.lineTo(-0.1, 0.18);
    context.lineTo(-0.1, -0.18);
    context.fill();
    return;
  }
  const { x, y, width, height } = photo.repeat ?? { x: 0, y: 0, width: photo.width, height: photo.height };
  // A photo is taken with its top up; on the cloth that is the far end, to the right.
  context.rotate(Math.PI / 2);
  context.drawImage(picture, x, y, width, height, -0.5, -0.5, 1, 1);
  picture.close();
}
