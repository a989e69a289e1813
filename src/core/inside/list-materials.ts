import { type Phrase, verbatim, withUsual } from '../base/index.ts';
import { boundsOfPoints, measurePolygonArea, measurePolyline } from '../math/index.ts';
import type { Piece } from '../pattern/index.ts';
import { depthOfShell } from './cloth-growth.ts';
import { ASSUMED_DENSITY, densityOfFilling, type FillDensity } from './density-of-filling.ts';
import { poleInsideForm } from './fit-pole.ts';
import { INSIDE_OPTIONS } from './inside-options.ts';
import { packingOfTube } from './packing-of-tube.ts';
import { phrase } from './phrases.ts';
import { TEST_TUBE_HEIGHT } from './test-tube.ts';
import { TEST_TUBE_GIRTH } from './test-tube-growth.ts';
import type { InsideForm, InsideOptions, InsideShape } from './types.ts';

/** One line of the list to buy by. */
export interface MaterialLine {
  readonly id: string;
  readonly name: Phrase;
  readonly quantity: number;
  readonly unit: 'm²' | 'm' | 'kg' | 'mm' | 'L' | 'pieces';
  readonly note: Phrase;
}

export interface FillMass {
  /** Litres to be filled. */
  readonly volumeL: number;
  /** Firm filling, kg. */
  readonly low: number;
  readonly high: number;
  /** kg to buy: the upper figure and a fifth more. */
  readonly buy: number;
  readonly bags: number;
  /** By the usual density, as nobody weighed what the test tube took. */
  readonly isAssumed: boolean;
}

const SPARE = 1.2;
const BAG = 1;
/** Metres of thread a metre of lockstitch takes, two rows sewn (common practice: 2.5 to 3 m a row). */
const THREAD_PER_METRE = 2 * 3;
/** Cut cloth over pieces: what falls off between them (common practice). */
const CUTTING_LOSS = 1.2;

/** Filling of `volumeL` litres. */
export function massOfFill(volumeL: number, density: FillDensity = ASSUMED_DENSITY): FillMass {
  const { isAssumed } = density;
  const [low, high] = [(volumeL * density.low) / 1000, (volumeL * density.high) / 1000];
  const buy = high * SPARE;
  return { volumeL, low, high, buy, bags: Math.ceil(buy / BAG), isAssumed };
}

/** Litres that pole, base plate and neck block take from the filling. */
function volumeOfParts(shape: InsideShape, pieces: readonly Piece[], boardThickness: number): number {
  const { radius, zBottom, zTop } = shape.pole;
  const tube = Math.PI * radius * radius * (zTop - zBottom);
  const base = pieces.find(({ id }) => id === 'base-plate-1');
  const plate = base ? Math.abs(measurePolygonArea(base.cutLine)) * boardThickness : 0;
  const foot = pieces.find(({ id }) => id === 'neck-block-foot');
  const profile = pieces.find(({ id }) => id === 'neck-block-side');
  const heights = profile ? profile.cutLine.filter((_, i) => i % 2 === 1) : new Float64Array([0]);
  const height = Math.max(...heights) - Math.min(...heights);
  const block = foot ? Math.abs(measurePolygonArea(foot.cutLine)) * height * 0.7 : 0;
  return (tube + plate + block) / 1e6;
}

/** Wood glue between two layers of card, kg/m² of a layer (common practice, no source: 150 to 200 g). */
const GLUE = 0.2;
/** Round a block of foam for its saw cuts, mm (ours). */
const SAW = 10;
/** Magnets in each plate that meets another, and plates of one side: on torso, arm and pin cushion. */
const MAGNETS_A_PLATE = 2;
const PLATES_A_SIDE = 3;

function armLines(form: InsideForm, litres: number, area: number, options: InsideOptions): MaterialLine[] {
  const sides = form.arms.length;
  const { low, high, buy } = massOfFill(litres, densityOfFilling(options));
  const { magnetDiameter, pegDiameter } = withUsual(INSIDE_OPTIONS, options);
  return [
    {
      id: 'arms',
      name: phrase('buy.arms'),
      quantity: area,
      unit: 'm²',
      note: phrase('buy.arms.note'),
    },
    {
      id: 'arm-fill',
      name: phrase('buy.arm-fill'),
      quantity: buy,
      unit: 'kg',
      note: phrase('buy.arm-fill.note', { low, high }),
    },
    {
      id: 'magnets',
      name: phrase('buy.magnets'),
      quantity: MAGNETS_A_PLATE * PLATES_A_SIDE * sides,
      unit: 'pieces',
      note: phrase('buy.magnets.note', { diameter: magnetDiameter }),
    },
    {
      id: 'pegs',
      name: phrase('buy.pegs'),
      quantity: sides,
      unit: 'pieces',
      note: phrase('buy.pegs.note', { diameter: pegDiameter }),
    },
  ];
}

/** Everything to have at hand before cutting. `shell` and `inner` are the finished pieces. */
export function listMaterials(
  form: InsideForm,
  shape: InsideShape,
  shell: readonly Piece[],
  inner: readonly Piece[],
  options: InsideOptions,
): { lines: MaterialLine[]; fill: FillMass } {
  const { boardThickness } = withUsual(INSIDE_OPTIONS, options);
  const of = (material: string): Piece[] => inner.filter((piece) => piece.material === material);
  const seams = [...shell, ...of('webs'), ...of('arms')].flatMap(({ sewLines }) => sewLines);
  // Every seam is on two pieces, so half the sew lines' length is sewn.
  const sewn = seams.reduce((sum, { points }) => sum + measurePolyline(points), 0) / 2 / 1000;
  // The layers over the shell take as much of the body's volume as its area times their thickness.
  const layers = (form.area * depthOfShell(options)) / 1e6;
  const fill = massOfFill(
    form.volumeL - layers - volumeOfParts(shape, inner, boardThickness),
    densityOfFilling(options),
  );
  const armLitres = form.arms.reduce((sum, { volumeL }) => sum + volumeL, 0);
  const lines: MaterialLine[] = [
    ...sheetLines(
      areaOf(shell),
      areaOf(of('webs')),
      areaOf(of('covers')),
      areaOf(of('card')),
      boardThickness,
    ),
    ...foamLines(of('foam')),
    tubeLine(form, shape, options),
    ...standLines(options),
    ...sewingLines(sewn),
    ...glueLines(areaOf(of('card'))),
    ...bindingLines(inner, boardThickness),
    {
      id: 'fill',
      name: phrase('buy.fill'),
      quantity: fill.buy,
      unit: 'kg',
      note: phrase('buy.fill.note', {
        low: fill.low,
        high: fill.high,
        assumed: fill.isAssumed ? ASSUMED_DENSITY : null,
      }),
    },
    ...tubeTestLines(areaOf(of('test-tube'))),
  ];
  if (form.arms.length > 0)
    lines.push(...armLines(form, armLitres, areaOf(of('arms')) * CUTTING_LOSS, options));
  return { lines, fill };
}

/** Sum of the cut outlines, m². */
function areaOf(pieces: readonly Piece[]): number {
  return pieces.reduce((sum, piece) => sum + Math.abs(measurePolygonArea(piece.cutLine)), 0) / 1e6;
}

/** What is bought by the area; areas of the pieces in m². */
function sheetLines(
  shell: number,
  webs: number,
  covers: number,
  card: number,
  boardThickness: number,
): MaterialLine[] {
  const sheets = (id: string, name: Phrase, area: number, note: Phrase): MaterialLine => {
    return { id, name, quantity: area * CUTTING_LOSS, unit: 'm²', note };
  };
  const cloth = (id: 'shell' | 'interfacing' | 'webs', area: number): MaterialLine => {
    return sheets(id, phrase(`buy.${id}`), area, phrase(`buy.${id}.note`));
  };
  return [
    cloth('shell', shell),
    cloth('interfacing', shell),
    cloth('webs', webs),
    ...(covers > 0 ? [sheets('covers', phrase('buy.covers'), covers, verbatim(''))] : []),
    sheets('card', phrase('buy.card', { thickness: boardThickness }), card, phrase('buy.card.note')),
  ];
}

/** One block from which the neck's is cut: its outline from above, as high as its profile. */
function foamLines(templates: readonly Piece[]): MaterialLine[] {
  const sizeOf = (id: string) => {
    const outline = templates.find((piece) => piece.id === id)?.cutLine;
    const { minX = 0, minY = 0, maxX = 0, maxY = 0 } = (outline && boundsOfPoints([outline])) ?? {};
    return { width: maxX - minX, height: maxY - minY };
  };
  const foot = sizeOf('neck-block-foot');
  if (foot.width === 0) return [];
  const size = {
    width: foot.width + 2 * SAW,
    depth: foot.height + 2 * SAW,
    height: sizeOf('neck-block-side').height + SAW,
  };
  return [
    {
      id: 'foam',
      name: phrase('buy.foam'),
      quantity: 1,
      unit: 'pieces',
      note: phrase('buy.foam.note', size),
    },
  ];
}

/** One collar carries the neck plate, the other the base plate. */
const COLLARS = 2;
/** Where tube and pole lie in each other they are packed at both ends. */
const PACKINGS = 2;

/** What the pole stands in, and what carries the form on it. */
function standLines(options: InsideOptions): MaterialLine[] {
  const { tubeDiameter, legs, legRadius, standMass } = withUsual(INSIDE_OPTIONS, options);
  return [
    {
      id: 'collar',
      name: phrase('buy.collar'),
      quantity: COLLARS,
      unit: 'pieces',
      note: phrase('buy.collar.note', { diameter: tubeDiameter }),
    },
    {
      id: 'disc',
      name: phrase('buy.disc'),
      quantity: 1,
      unit: 'pieces',
      note: phrase('buy.disc.note', { diameter: tubeDiameter }),
    },
    ...packingLines(options),
    {
      id: 'foot',
      name: phrase('buy.foot'),
      quantity: standMass,
      unit: 'kg',
      note: phrase('buy.foot.note', { legs, radius: legRadius }),
    },
  ];
}

/** Between the form's tube and a stand's own pole in it. */
function packingLines(options: InsideOptions): MaterialLine[] {
  const thickness = packingOfTube(options);
  if (thickness === undefined || thickness <= 0) return [];
  return [
    {
      id: 'packing',
      name: phrase('buy.packing'),
      quantity: PACKINGS,
      unit: 'pieces',
      note: phrase('buy.packing.note', { thickness }),
    },
  ];
}

/** `card`: m² of single layers; every two have a film of glue between them. */
function glueLines(card: number): MaterialLine[] {
  const glue = (card / 2) * GLUE;
  return glue > 0
    ? [{ id: 'glue', name: phrase('buy.glue'), quantity: glue, unit: 'kg', note: phrase('buy.glue.note') }]
    : [];
}

/** A tape lies so far over each face of a board, mm (ours: it holds the holes there), and is sold in widths of whole steps. */
const OVER_FACE = 16;
const TAPE_STEP = 5;
/** What is lost at joins and where it is snipped (ours). */
const TAPE_SPARE = 1.1;
const RIMS = ['base-plate', 'neck-plate', 'armhole-plate-right', 'armhole-plate-left'];

/** Width of the tape round the rim of a board without a cover, mm. */
export function widthOfBinding(boardThickness: number): number {
  return TAPE_STEP * Math.ceil((boardThickness + 2 * OVER_FACE) / TAPE_STEP);
}

function bindingLines(inner: readonly Piece[], boardThickness: number): MaterialLine[] {
  const isCovered = (plate: string): boolean => inner.some(({ id }) => id === `${plate}-cover`);
  const bare = inner.filter(({ id }) => RIMS.some((plate) => id === `${plate}-1` && !isCovered(plate)));
  const round = bare.reduce((sum, { cutLine }) => sum + measurePolyline(cutLine, true), 0);
  if (round === 0) return [];
  const note = phrase('buy.binding.note', { width: widthOfBinding(boardThickness) });
  return [
    {
      id: 'binding',
      name: phrase('buy.binding'),
      quantity: (TAPE_SPARE * round) / 1000,
      unit: 'm',
      note,
    },
  ];
}

/** The trial of the cloth, if it is drawn: its cloth in m², and what it is stuffed with. */
function tubeTestLines(area: number): MaterialLine[] {
  if (area === 0) return [];
  const litres = (TEST_TUBE_GIRTH ** 2 / (4 * Math.PI)) * (TEST_TUBE_HEIGHT / 1e6);
  const { low, high } = massOfFill(litres);
  return [
    {
      id: 'test-tube',
      name: phrase('buy.test-tube'),
      quantity: area * CUTTING_LOSS,
      unit: 'm²',
      note: phrase('buy.test-tube.note', { low, high }),
    },
  ];
}

function tubeLine(form: InsideForm, shape: InsideShape, options: InsideOptions): MaterialLine {
  const { boardThickness, tubeDiameter } = withUsual(INSIDE_OPTIONS, options);
  const tubeInside = poleInsideForm(shape.pole, boardThickness);
  const tubeAll = form.waistHeight + shape.pole.zTop + boardThickness;
  return {
    id: 'tube',
    name: phrase('buy.tube', { diameter: tubeDiameter }),
    quantity: tubeAll,
    unit: 'mm',
    note: phrase('buy.tube.note', {
      insideForm: tubeInside,
      isHeightAssumed: form.isWaistHeightAssumed === true,
    }),
  };
}

/** `sewn`: metres of seams. */
function sewingLines(sewn: number): MaterialLine[] {
  return [
    {
      id: 'thread',
      name: phrase('buy.thread'),
      quantity: sewn * THREAD_PER_METRE,
      unit: 'm',
      note: phrase('buy.thread.note'),
    },
    {
      id: 'cord',
      name: phrase('buy.cord'),
      quantity: 4,
      unit: 'm',
      note: phrase('buy.cord.note'),
    },
    {
      id: 'needles',
      name: phrase('buy.needles'),
      quantity: 1,
      unit: 'pieces',
      note: phrase('buy.needles.note'),
    },
    { id: 'tape', name: phrase('buy.tape'), quantity: 1, unit: 'pieces', note: phrase('buy.tape.note') },
  ];
}
