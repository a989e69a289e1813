import { verbatim } from '../base/index.ts';
import type { NamedLine, PieceEdge, PieceInput, PieceMark } from '../pattern/index.ts';
import { phrase } from './phrases.ts';
import { markedRungs, type PlaceOnSleeve } from './places-on-sleeve.ts';
import type { TabSize } from './tab-slots.ts';
import type { DesignedBrace, InsideForm, InsideShape } from './types.ts';

/** The tube's cut mark stands so far under the neck plate, mm. */
const TUBE_MARK = 30;

/**
 * The pole sleeve: as wide as the tube's girth and its ease, as long as the tube shows between the plates, with the
 * places of all ties and straps, level by level, and a mark where the tube is to end. Closed by the seam behind, in which
 * the back tie is caught. y = 0 is the top of the base plate.
 */
export function sleeveInput(
  form: InsideForm,
  shape: InsideShape,
  placeOf: (brace: DesignedBrace) => PlaceOnSleeve,
  closingLetter: string,
): PieceInput {
  const { sleeveGirth: width, zBottom, zTop } = shape.pole;
  const height = zTop - zBottom;
  const onSleeve = shape.braces.filter(({ to }) => to === 'sleeve');
  const back = onSleeve.find((brace) => (brace.sleeveShare ?? 0) === 0);
  const stops = (back?.rungs ?? [])
    .filter(({ levelId }, k, all) => levelId !== undefined && k > 0 && k < all.length - 1)
    .map(({ z, levelId }) => ({ y: z - zBottom, levelId }));
  const ends = back ? [back.rungs[0].z - zBottom, back.rungs[back.rungs.length - 1].z - zBottom] : [];
  const side = (x: number, isUp: boolean): PieceEdge => {
    const ys = [0, height, ...ends, ...stops.map(({ y }) => y)].sort((a, b) => a - b);
    const order = isUp ? ys : ys.toReversed();
    const marks = stops.map(({ y, levelId }, k): PieceMark => {
      return { kind: 'level', number: k + 1, index: order.indexOf(y), ...(levelId ? { levelId } : {}) };
    });
    const points = Float64Array.from(order.flatMap((y) => [x, y]));
    return { kind: 'seam', id: 'sleeve-closing', letter: closingLetter, points, marks, bodyHalf: 'front' };
  };
  const cross = (id: string, ...points: number[]): PieceEdge => {
    return {
      kind: 'opening',
      id,
      letter: '',
      points: Float64Array.from(points),
      marks: [],
      bodyHalf: 'front',
    };
  };
  const sewnOn = onSleeve.filter((brace) => (brace.sleeveShare ?? 0) > 0);
  const places = sewnOn.map((brace): NamedLine => {
    const x = (brace.sleeveShare ?? 0) * width;
    const [low, high] = [brace.rungs[0], brace.rungs[brace.rungs.length - 1]].map(
      ({ to }) => to[2] - zBottom,
    );
    const name = phrase('brace.on-sleeve', { letter: placeOf(brace).letter, brace: brace.nameOnSleeve });
    return { id: brace.id, name, points: Float64Array.of(x, low, x, high) };
  });
  const ticks = sewnOn.flatMap((brace): NamedLine[] => {
    const x = (brace.sleeveShare ?? 0) * width;
    const { letter, before } = placeOf(brace);
    return markedRungs(brace).map(({ to, levelId, mark }, k): NamedLine => {
      const level = form.levels.find(({ id }) => id === levelId);
      const y = to[2] - zBottom;
      const points = Float64Array.of(x - 4, y, x + 4, y);
      const notch = `${letter}${before + k + 1}`;
      const name = level ? phrase('brace.on-sleeve', { letter: notch, brace: level.name }) : verbatim(notch);
      return { id: `${brace.id}-${level?.id ?? mark}`, name, points };
    });
  });
  return {
    id: 'pole-sleeve',
    name: phrase('sleeve.name'),
    side: 'centre',
    edges: [
      cross('base plate', 0, 0, width, 0),
      side(width, true),
      cross('neck plate', width, height, 0, height),
      side(0, false),
    ],
    levelLines: [...places, tubeEnd(shape, width)],
    stitchLines: ticks,
    material: 'webs',
  };
}

/** Where the tube shows last: it goes on through the neck plate and is cut off level with its top. */
function tubeEnd({ pole }: InsideShape, width: number): NamedLine {
  const y = pole.zTop - pole.zBottom - TUBE_MARK;
  return {
    id: 'tube-end',
    name: phrase('sleeve.tube-end', { above: TUBE_MARK }),
    points: Float64Array.of(0, y, width, y),
  };
}

/** Tabs that hold the sleeve's lower end to the base plate, one for each of its slots. */
export function tabInputs({ width: w, height: h }: TabSize, count: number): PieceInput[] {
  return Array.from({ length: count }, (_, i) => {
    const edge = (id: string, ...points: number[]): PieceEdge => {
      return {
        kind: 'opening',
        id,
        letter: '',
        points: Float64Array.from(points),
        marks: [],
        bodyHalf: 'front',
      };
    };
    return {
      id: `tab-${i + 1}`,
      name: phrase('sleeve.tab', { number: i + 1 }),
      side: 'centre',
      edges: [
        edge('base plate', 0, 0, w, 0),
        edge('side', w, 0, w, h),
        edge('sleeve', w, h, 0, h),
        edge('side', 0, h, 0, 0),
      ],
      levelLines: [],
      material: 'webs',
    };
  });
}
