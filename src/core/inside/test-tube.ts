import type { Phrase } from '../base/index.ts';
import type { PieceEdge, PieceInput } from '../pattern/index.ts';
import { phrase } from './phrases.ts';
import { sewnGirthOfTestTube, TEST_TUBE_GIRTH } from './test-tube-growth.ts';

/** Between its ends, mm. */
export const TEST_TUBE_HEIGHT = 300;
/** Heights at which the filled tube is measured, mm. */
const MEASURED_AT = [100, 150, 200] as const;

/**
 * A tube to sew from the shell's own cloth and interfacing before the form is cut, grain upright as in the panels, with two
 * round ends. Filled as hard as the form will be and measured at its three lines, it tells by how much this cloth grows.
 * What to do with it stands on it.
 */
export function testTubeInputs(
  seamLetters: readonly [closing: string, end: string],
  clothThickness?: number,
): PieceInput[] {
  const width = TEST_TUBE_GIRTH;
  const [closing, end] = seamLetters;
  const ys = [0, ...MEASURED_AT, TEST_TUBE_HEIGHT];
  const upright = (x: number, isUp: boolean): PieceEdge => {
    const order = isUp ? ys : ys.toReversed();
    return {
      kind: 'seam',
      id: 'test-tube-closing',
      letter: closing,
      points: Float64Array.from(order.flatMap((y) => [x, y])),
      marks: MEASURED_AT.map((y, k) => ({ kind: 'level', number: k + 1, index: order.indexOf(y) })),
      bodyHalf: 'front',
    };
  };
  const across = (id: string, from: number, to: number, y: number): PieceEdge => {
    const quarters = [0, 0.25, 0.5, 0.75, 1].map((t) => from + t * (to - from));
    const numbers = from < to ? [1, 2, 3] : [3, 2, 1];
    return {
      kind: 'seam',
      id,
      letter: end,
      points: Float64Array.from(quarters.flatMap((x) => [x, y])),
      marks: numbers.map((number, k) => ({ kind: 'balance', number, index: k + 1 })),
      bodyHalf: 'front',
    };
  };
  const tube: PieceInput = {
    id: 'test-tube',
    name: phrase('test-tube.name'),
    side: 'centre',
    edges: [
      across('test-tube-bottom', 0, width, 0),
      upright(width, true),
      across('test-tube-top', width, 0, TEST_TUBE_HEIGHT),
      upright(0, false),
    ],
    levelLines: MEASURED_AT.map((y, k) => {
      return {
        id: `measure-${k + 1}`,
        name: phrase('test-tube.line', { number: k + 1 }),
        points: Float64Array.of(0, y, width, y),
      };
    }),
    material: 'test-tube',
    notes: [
      phrase('test-tube.why'),
      ...instructionsOfTestTube(closing, end, clothThickness).map((text, k) =>
        phrase('test-tube.numbered', { number: k + 1, text }),
      ),
    ],
  };
  return [tube, endOfTube('bottom', end), endOfTube('top', end)];
}

/** What to do with tube and ends, step by step, for sheet and order of work. */
export function instructionsOfTestTube(closing: string, end: string, clothThickness?: number): Phrase[] {
  return [
    phrase('test-tube.cut'),
    phrase('test-tube.sew', { closingLetter: closing, endLetter: end }),
    phrase('test-tube.stuff'),
    phrase('test-tube.measure'),
    phrase('test-tube.type', { girth: sewnGirthOfTestTube(clothThickness) }),
  ];
}

/** A disc whose rim, as the polygon that is sewn, is as long as the tube's end. */
function endOfTube(place: 'bottom' | 'top', letter: string): PieceInput {
  const count = 120;
  const radius = TEST_TUBE_GIRTH / (2 * count * Math.sin(Math.PI / count));
  const points = Float64Array.from({ length: 2 * (count + 1) }, (_, i) => {
    const angle = (2 * Math.PI * (i >> 1)) / count - Math.PI / 2;
    return radius * (i % 2 === 0 ? Math.cos(angle) : Math.sin(angle));
  });
  const half = count / 2;
  const edge = (from: number, to: number, numbers: readonly number[]): PieceEdge => ({
    kind: 'seam',
    id: `test-tube-${place}`,
    letter,
    points: points.slice(2 * from, 2 * to + 2),
    marks: numbers.map((number, k) => ({
      kind: 'balance',
      number,
      index: ((k + 1) * (to - from)) / (numbers.length + 1),
    })),
    bodyHalf: 'front',
  });
  return {
    id: `test-tube-${place}`,
    name: phrase('test-tube.end', { end: place }),
    side: 'centre',
    edges: [edge(0, half, [1]), edge(half, count, [3])],
    levelLines: [],
    material: 'test-tube',
  };
}
