import type { Say } from '../base/index.ts';
import { boundsOfItems, type Drawing, type DrawingItem, makePath, makeText } from '../drawing/index.ts';
import { boundsOfPolyline } from '../math/index.ts';
import type { NamedLine, Piece } from '../pattern/index.ts';
import { finishDrawing } from './finish-drawing.ts';
import { GHOST_DASH, lineStyle, TINTS, WORD_SIZE } from './line-styles.ts';
import { phrase } from './phrases.ts';
import { type LetteredPlace, placeLetters } from './place-letters.ts';

/** Across the sleeve, where lines lie a centimetre apart, and up it. */
const ACROSS = 1 / 2;
const UP = 1 / 9;
/** How much of a strap, of another brace and of the closing seam's tie is drawn, mm of paper. */
const STRAP = 21;
const FLAP = 7;

/**
 * The pole sleeve unrolled with its marks up, every brace lying on it along its own line and broken off, lines by their letters;
 * wider than it is, which words below it say. mm of paper.
 */
export function drawSleeve(sleeve: Piece, title: string, say: Say): Drawing {
  const edges = sleeve.draft?.input.edges ?? [];
  const sides = edges.filter(({ kind }) => kind === 'seam').map(({ letter, points }) => ({ letter, points }));
  const middle = middleOf(sleeve.cutLine);
  const stitched = sleeve.levelLines.flatMap((line): Stitched[] => {
    const { letter } = line.name.values;
    return typeof letter === 'string' ? [{ line, letter, isStrap: line.id.startsWith('strap') }] : [];
  });
  const cut = makePath(onPage(sleeve.cutLine), {
    closed: true,
    style: { ...lineStyle('outline'), fill: TINTS.right },
  });
  const painted = [cut, ...stitched.flatMap((one) => flapOf(one, middle))];
  const bold = [...stitched.map(({ line }) => line), ...sides].map(({ points }) =>
    makePath(onPage(points), { style: lineStyle('bold') }),
  );
  const around = boundsOfItems([...painted, ...bold]) ?? { minX: 0, minY: 0, maxX: 0, maxY: 0 };
  const words = makeText(
    (around.minX + around.maxX) / 2,
    around.maxY + 2 + WORD_SIZE,
    say(phrase('picture.stretched')),
    WORD_SIZE,
    { anchor: 'middle', colour: '#000000' },
  );
  const letters = lettersOf(
    stitched.map(({ letter, line }) => ({ letter, points: line.points })),
    sides,
  );
  return finishDrawing(title, painted, [...bold, ...placeLetters(letters, around), words]);
}

/** A line of the sleeve to which a brace is stitched. */
interface Stitched {
  readonly line: NamedLine;
  readonly letter: string;
  readonly isStrap: boolean;
}

function onPage(points: Float64Array): Float64Array {
  return points.map((value, i) => (i % 2 === 0 ? ACROSS * value : -UP * value));
}

function middleOf(points: Float64Array): number {
  const { minX, maxX } = boundsOfPolyline(points);
  return (minX + maxX) / 2;
}

/** The brace from its line to its own side, the broken end dotted; one in the middle lies to the right of the page. */
function flapOf({ line: { points }, isStrap }: Stitched, middle: number): DrawingItem[] {
  const { minX, minY, maxY } = boundsOfPolyline(onPage(points));
  const way = minX < ACROSS * middle - 0.5 ? -1 : 1;
  const far = isStrap ? ACROSS * middle + way * (STRAP + ACROSS * middle) : minX + way * FLAP;
  const outline = [minX, minY, far, minY, far, maxY, minX, maxY];
  return [
    makePath(outline, { closed: true, style: { fill: TINTS.web, stroke: 'none' } }),
    makePath([far, minY, minX, minY, minX, maxY, far, maxY], { style: lineStyle('seam') }),
    makePath([far, minY, far, maxY], { style: lineStyle('seam', GHOST_DASH) }),
  ];
}

/** Each letter once: at the middle of its lowest line; that of the closing seam at both edges. */
function lettersOf(
  lines: readonly { readonly letter: string; readonly points: Float64Array }[],
  sides: readonly { readonly letter: string; readonly points: Float64Array }[],
): LetteredPlace[] {
  const place = (letter: string, points: Float64Array, share: number): LetteredPlace => {
    const { minX, maxX, minY, maxY } = boundsOfPolyline(onPage(points));
    return { letter, x: (minX + maxX) / 2, y: maxY - share * (maxY - minY) };
  };
  const lowest = lines.filter(({ letter, points }) => {
    const low = (line: Float64Array): number => boundsOfPolyline(line).minY;
    return lines.every((other) => other.letter !== letter || low(other.points) >= low(points));
  });
  return [
    ...lowest.map(({ letter, points }) => place(letter, points, 0.5)),
    ...sides.map(({ letter, points }) => place(letter, points, 0.25)),
  ];
}
