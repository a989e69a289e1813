import { kgPerPound, type Phrase, plain, withUsual } from '../base/index.ts';
import { measurePolygonArea, measurePolyline } from '../math/index.ts';
import type { Piece } from '../pattern/index.ts';
import { depthOfShell } from './cloth-growth.ts';
import { INSIDE_OPTIONS } from './inside-options.ts';
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
}

/** Firm filling, kg/m³ (common practice, no source). */
const FIRM = { low: 50, high: 80 } as const;
const SPARE = 1.2;
const BAG = 1;
/** Metres of thread a metre of lockstitch takes, two rows sewn (common practice: 2.5 to 3 m a row). */
const THREAD_PER_METRE = 2 * 3;
/** Cut cloth over pieces: what falls off between them (common practice). */
const CUTTING_LOSS = 1.2;

/** Filling of `volumeL` litres. */
export function massOfFill(volumeL: number): FillMass {
  const [low, high] = [(volumeL * FIRM.low) / 1000, (volumeL * FIRM.high) / 1000];
  const buy = high * SPARE;
  return { volumeL, low, high, buy, bags: Math.ceil(buy / BAG) };
}

/** Both systems, as lengths on pieces are told: `1.6 to 2.6 kg (3.5 to 5.6 lb)`. */
function sayRange(low: number, high: number): string {
  const [inKg, inPounds] = [1, kgPerPound].map(
    (unit) => `${(low / unit).toFixed(1)} to ${(high / unit).toFixed(1)}`,
  );
  return `${inKg} kg (${inPounds} lb)`;
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

/** Magnets in each plate that meets another, and plates of one side: on torso, arm and pin cushion. */
const MAGNETS_A_PLATE = 2;
const PLATES_A_SIDE = 3;

function armLines(form: InsideForm, litres: number, area: number): MaterialLine[] {
  const sides = form.arms.length;
  const { low, high, buy } = massOfFill(litres);
  return [
    {
      id: 'arms',
      name: plain('cloth and interfacing for the arms'),
      quantity: area,
      unit: 'm²',
      note: plain('as the shell'),
    },
    {
      id: 'arm-fill',
      name: plain('polyester fibre for the arms'),
      quantity: buy,
      unit: 'kg',
      note: plain(`${sayRange(low, high)}, softer above the elbow; beside that of the torso`),
    },
    {
      id: 'magnets',
      name: plain('disc magnets that locate arms and pin cushions'),
      quantity: MAGNETS_A_PLATE * PLATES_A_SIDE * sides,
      unit: 'pieces',
      note: plain('sewn in and counted; keep from children and 15 cm from implants'),
    },
    {
      id: 'pegs',
      name: plain('wooden pegs that carry the arms'),
      quantity: sides,
      unit: 'pieces',
      note: plain('glued into the arm’s plate'),
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
  const { boardThickness, tubeDiameter } = withUsual(INSIDE_OPTIONS, options);
  const areaOf = (pieces: readonly Piece[]): number =>
    pieces.reduce((sum, piece) => sum + Math.abs(measurePolygonArea(piece.cutLine)), 0) / 1e6;
  const of = (material: string): Piece[] => inner.filter((piece) => piece.material === material);
  const seams = [...shell, ...of('webs'), ...of('arms')].flatMap(({ sewLines }) => sewLines);
  // Every seam is on two pieces, so half the sew lines' length is sewn.
  const sewn = seams.reduce((sum, { points }) => sum + measurePolyline(points), 0) / 2 / 1000;
  // The layers over the shell take as much of the body's volume as its area times their thickness.
  const layers = (form.area * depthOfShell(options)) / 1e6;
  const fill = massOfFill(form.volumeL - layers - volumeOfParts(shape, inner, boardThickness));
  const armLitres = form.arms.reduce((sum, { volumeL }) => sum + volumeL, 0);
  const tubeInside = shape.pole.zTop - shape.pole.zBottom + 2 * boardThickness;
  const tubeAll = form.waistHeight + shape.pole.zTop + boardThickness;
  const cloth = (id: string, name: string, area: number, note: string): MaterialLine => {
    return { id, name: plain(name), quantity: area * CUTTING_LOSS, unit: 'm²', note: plain(note) };
  };
  const lines: MaterialLine[] = [
    cloth('shell', 'shell cloth', areaOf(shell), 'firm woven cotton; wash and press before cutting'),
    cloth(
      'interfacing',
      'woven fusible interfacing',
      areaOf(shell),
      'fuse before cutting out: fused cloth shrinks',
    ),
    cloth(
      'webs',
      'cloth for webs, ties and sleeve',
      areaOf(of('webs')),
      'the same firm cloth, grain upright',
    ),
    cloth('covers', 'cloth for the covers of the plates', areaOf(of('covers')), ''),
    cloth(
      'card',
      `corrugated card for the plates, ${boardThickness} mm thick once both layers are glued`,
      areaOf(of('card')),
      'flutes (the waves in the card) of the two layers crossing',
    ),
    {
      id: 'foam',
      name: plain('firm foam for the neck block'),
      quantity: 1,
      unit: 'pieces',
      note: plain('cut by the three templates'),
    },
    {
      id: 'tube',
      name: plain(`pole: a tube, outside ${tubeDiameter} mm (measure with calipers)`),
      quantity: tubeAll,
      unit: 'mm',
      note: plain(`from floor to neck plate; ${tubeInside.toFixed(0)} mm of it inside the form`),
    },
    {
      id: 'thread',
      name: plain('strong polyester thread'),
      quantity: sewn * THREAD_PER_METRE,
      unit: 'm',
      note: plain('every seam sewn twice'),
    },
    {
      id: 'cord',
      name: plain('waxed cord'),
      quantity: 4,
      unit: 'm',
      note: plain('to lace plate covers and close the last opening'),
    },
    {
      id: 'fill',
      name: plain('polyester fibre'),
      quantity: fill.buy,
      unit: 'kg',
      note: plain(`${sayRange(fill.low, fill.high)} firm, and a fifth to spare`),
    },
  ];
  if (form.arms.length > 0) lines.push(...armLines(form, armLitres, areaOf(of('arms')) * CUTTING_LOSS));
  return { lines, fill };
}
