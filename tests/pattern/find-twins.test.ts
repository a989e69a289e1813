import { describe, expect, it } from 'vitest';
import {
  draftPiece,
  drawTwins,
  findTwins,
  type Piece,
  type PieceEdge,
  type PieceInput,
} from '../../src/core/pattern/index.ts';
import { joinNames } from '../../src/language/join-names.ts';
import { inEnglish } from '../in-english.ts';
import { edge, LABEL, piece, straight } from './synthetic-panels.ts';

/** A panel with one slanted side, seams A to D, notched on two of them. */
function panel(id: string, side: 'right' | 'left', letters: string, notchAt = 5): PieceInput {
  const [a, b, c, d] = letters;
  const mark = (index: number, number: number) => ({ kind: 'balance' as const, index, number });
  const edges = [
    edge(
      'base',
      '',
      straight([
        [0, 0],
        [160, 0],
      ]),
    ),
    edge(
      'b',
      b,
      straight(
        [
          [160, 0],
          [140, 300],
        ],
        10,
      ),
      [mark(notchAt, 1), mark(20, 2)],
    ),
    edge(
      'c',
      c,
      straight([
        [140, 300],
        [0, 310],
      ]),
    ),
    edge(
      'a',
      a,
      straight(
        [
          [0, 310],
          [0, 0],
        ],
        10,
      ),
      [mark(12, 1)],
    ),
  ];
  return { ...piece(id, `${d} ${side}`, edges, [], side), material: 'shell' };
}

/** The same seen in a mirror: x turned about, edges run the other way round. */
function mirror(input: PieceInput): PieceInput {
  const edges = input.edges.toReversed().map((own): PieceEdge => {
    const count = own.points.length / 2;
    const points = Float64Array.from({ length: 2 * count }, (_, i) => {
      const from = count - 1 - (i >> 1);
      return i % 2 === 0 ? -own.points[2 * from] : own.points[2 * from + 1];
    });
    return { ...own, points, marks: own.marks.map((mark) => ({ ...mark, index: count - 1 - mark.index })) };
  });
  return { ...input, edges };
}

function draft(input: PieceInput): Piece {
  const made = draftPiece(input, LABEL, { allowance: 12 });
  if (!made.ok) throw new Error(inEnglish(made.issues[0].message));
  return made.value;
}

const RIGHT = draft(panel('frontRight', 'right', 'ABCP'));
const LEFT = draft(mirror(panel('frontLeft', 'left', 'AEFP')));
const wordsOf = ({ texts }: Piece): string[] => texts.map(({ text }) => text);

describe('twins', () => {
  it('are found by measuring: mirrored, alike, and not at all', () => {
    expect(findTwins([RIGHT, LEFT])).toEqual([{ right: 0, left: 1, kind: 'mirrored' }]);
    const alike = draft(panel('backLeft', 'left', 'AEFP'));
    expect(findTwins([RIGHT, alike])).toEqual([{ right: 0, left: 1, kind: 'alike' }]);
    // A notch 10 mm off, another cloth, another side.
    expect(findTwins([RIGHT, draft(mirror(panel('frontLeft', 'left', 'AEFP', 6)))])).toEqual([]);
    expect(findTwins([RIGHT, { ...LEFT, material: 'webs' }])).toEqual([]);
    expect(findTwins([RIGHT, { ...LEFT, side: 'centre' }])).toEqual([]);
  });

  it('are apart where a line is off by more than a tenth of a millimetre, and twins where by less', () => {
    const move = (by: number): Piece => ({
      ...LEFT,
      cutLine: LEFT.cutLine.map((value, i) => (i === 41 ? value + by : value)),
    });
    expect(findTwins([RIGHT, move(0.06)])).toHaveLength(1);
    const far = LEFT.cutLine.findIndex((_, i) => i % 2 === 0 && Math.abs(LEFT.cutLine[i]) > 100);
    const bent = { ...LEFT, cutLine: LEFT.cutLine.map((value, i) => (i === far ? value - 0.4 : value)) };
    expect(findTwins([RIGHT, bent])).toEqual([]);
  });

  it('share one drawing that names the seams, notches and halves of both', () => {
    const both = drawTwins(RIGHT, LEFT, 'mirrored', LABEL);
    if (!both) throw new Error('not drawn');
    expect(inEnglish(both.name)).toBe('P right/left');
    const words = wordsOf(both);
    // A is the same on both, B of the right one is E of the left one.
    expect(words).toEqual(expect.arrayContaining(['A', 'B/E', 'C/F', 'A1', 'B1/E1', 'B2/E2']));
    expect(words.join(' ')).toContain('cut a right and a left');
    expect(words.join(' ')).toContain('letters: right/left');
    // Nothing but the words is another: it is the right piece that is drawn.
    expect(both.cutLine).toEqual(RIGHT.cutLine);
    expect(both.notches.map(({ points }) => points)).toEqual(RIGHT.notches.map(({ points }) => points));
  });

  it('join their names word by word', () => {
    expect(joinNames('side back right', 'side back left')).toBe('side back right/left');
    expect(joinNames('plate right, 1 – N out', 'plate left, 1 – S out')).toBe(
      'plate right/left, 1 – N/S out',
    );
    expect(joinNames('one', 'another one')).toBe('one + another one');
    expect(joinNames('lid', 'lid')).toBe('lid');
  });
});
