import { describe, expect, it } from 'vitest';
import { InvariantError } from '../../src/core/base/index.ts';
import { cornersOfText, makeText } from '../../src/core/drawing/index.ts';
import { draftPiece, type Piece, type PieceInput, type PieceText } from '../../src/core/pattern/index.ts';
import { inEnglish } from '../in-english.ts';
import { distanceTo, doQuadsOverlap, isInside, lengthOf, sample } from './brute-force.ts';
import { edge, LABEL, piece, polygonPiece, samplePanels, straight, upright } from './synthetic-panels.ts';

function draft(input: PieceInput, options = {}): Piece {
  const result = draftPiece(input, LABEL, options);
  if (!result.ok)
    throw new Error(
      result.issues
        .map(({ message }) => message)
        .map(inEnglish)
        .join('\n'),
    );
  return result.value;
}

/** Text corners in the piece's coordinates: the drawing's, with y turned over both ways. */
function cornersOf({ x, y, text, size, anchor, angle }: PieceText): Float64Array {
  return cornersOfText(makeText(x, -y, text, size, { anchor, angle: -angle })).map((v, i) =>
    i % 2 ? -v : v,
  );
}

/** Whether any point of the line, taken every 0.25 mm, is in the box (4 × 2). */
function isTouched(box: Float64Array, points: Float64Array, closed: boolean): boolean {
  const reach = Math.hypot(box[4] - box[0], box[5] - box[1]) / 2 + 1;
  const [cx, cy] = [(box[0] + box[4]) / 2, (box[1] + box[5]) / 2];
  return sample(points, closed, 0.25).some(
    ([x, y]) => Math.abs(x - cx) < reach && Math.abs(y - cy) < reach && isInside(box, x, y),
  );
}

function ringOf(input: PieceInput): Float64Array {
  return Float64Array.from(input.edges.flatMap(({ points }) => [...points.subarray(0, -2)]));
}

const PANELS = samplePanels().map((input) => [input.id, input] as const);

describe.each(PANELS)('%s', (_, input) => {
  const drafted = draft(input);
  const ring = ringOf(input);

  it('keeps the sew lines to the bit', () => {
    expect(drafted.sewLines.map(({ points }) => points)).toEqual(input.edges.map(({ points }) => points));
    expect(drafted.sewLines.map(({ id }) => id)).toEqual(input.edges.map(({ id }) => id));
  });

  it('slits every mark from the cut line inwards, a third of the allowance at most', () => {
    const wanted = input.edges.flatMap(({ marks, bodyHalf }) =>
      marks.flatMap(() => (bodyHalf === 'front' ? [1] : [1, 2])),
    );
    expect(drafted.notches).toHaveLength(wanted.length);
    for (const { points } of drafted.notches) {
      expect(lengthOf(points)).toBeCloseTo(3, 6);
      expect(lengthOf(points)).toBeLessThanOrEqual(10 / 3);
      expect(distanceTo(drafted.cutLine, true, points[0], points[1])).toBeLessThan(1e-3);
      expect(isInside(drafted.cutLine, points[2], points[3])).toBe(true);
      expect(distanceTo(ring, true, points[2], points[3])).toBeGreaterThan((10 * 2) / 3 - 0.01);
      expect(isInside(ring, points[2], points[3])).toBe(false);
    }
  });

  it('puts each notch opposite its mark', () => {
    for (const { letter, points, marks } of input.edges) {
      for (const mark of marks) {
        if (!letter) continue;
        const own = drafted.notches.filter(({ name }) => name === `${letter}${mark.number}`);
        const x = own.reduce((sum, notch) => sum + notch.points[0], 0) / own.length;
        const y = own.reduce((sum, notch) => sum + notch.points[1], 0) / own.length;
        const away = Math.hypot(x - points[2 * mark.index], y - points[2 * mark.index + 1]);
        expect(away).toBeLessThan(10.3);
        // Half of a pair lies 2.5 mm to either side.
        for (const notch of own) {
          const side = Math.hypot(notch.points[0] - x, notch.points[1] - y);
          expect(Math.abs(side - (own.length - 1) * 2.5)).toBeLessThan(0.5);
        }
      }
    }
  });

  it('names every mark, edge and level', () => {
    const words = drafted.texts.map(({ text }) => text);
    for (const { letter, marks } of input.edges) {
      if (!letter) continue;
      expect(words).toContain(letter);
      for (const { number } of marks) expect(words).toContain(`${letter}${number}`);
    }
    for (const { name } of input.levelLines) expect(words).toContain(inEnglish(name));
  });

  it('writes the whole label', () => {
    const words = drafted.texts.map(({ text }) => text).join(' | ');
    for (const part of [
      inEnglish(input.name),
      LABEL.project,
      LABEL.body,
      LABEL.date,
      'cut 1',
      input.material,
    ]) {
      expect(words).toContain(part);
    }
    expect(words).toContain(input.side);
    // 10 mm / 25.4 = 0.394 in is no sixteenth (6/16 = 0.375, 7/16 = 0.4375), and is not told as one.
    expect(words).toContain('Allowance 10 mm |');
    for (const { size } of drafted.texts) expect(size).toBeGreaterThanOrEqual(2.5);
  });

  it('lets no text touch a line, leave the piece or overlap another text', () => {
    const boxes = drafted.texts.map(cornersOf);
    const lines = [
      { points: drafted.cutLine, closed: true },
      ...[...drafted.sewLines, ...drafted.levelLines, ...drafted.notches].map(({ points }) => ({
        points,
        closed: false,
      })),
      { points: drafted.grainLine, closed: false },
    ];
    boxes.forEach((box, i) => {
      const { text } = drafted.texts[i];
      for (let k = 0; k < 8; k += 2) expect(isInside(drafted.cutLine, box[k], box[k + 1]), text).toBe(true);
      for (const { points, closed } of lines) {
        expect(isTouched(box, points, closed), text).toBe(false);
      }
      for (let j = 0; j < i; j++) {
        expect(doQuadsOverlap(box, boxes[j]), `${text} / ${drafted.texts[j].text}`).toBe(false);
      }
    });
  });

  it('never writes upside down: 20° beyond upright at most, so that along one upright edge all reads the same way', () => {
    for (const { angle } of drafted.texts) expect(Math.cos(angle - Math.PI / 9)).toBeGreaterThan(-1e-9);
  });

  it('draws the grain straight up, inside, over a third of the piece', () => {
    const [x0, y0, x1, y1] = drafted.grainLine;
    expect(x1).toBe(x0);
    const ys = drafted.cutLine.filter((_, i) => i % 2 === 1);
    expect(y1 - y0).toBeGreaterThanOrEqual((Math.max(...ys) - Math.min(...ys)) / 3);
    for (const [x, y] of sample(drafted.grainLine, false, 1)) {
      expect(isInside(ring, x, y)).toBe(true);
      expect(distanceTo(ring, true, x, y)).toBeGreaterThan(2);
    }
  });

  it('repeats itself', () => {
    expect(draft(input)).toEqual(drafted);
  });
});

describe('notches', () => {
  const marks = [{ kind: 'balance', index: 7, number: 4 }] as const;
  const square = (allowanceMarks: typeof marks | [], half: 'front' | 'back'): PieceInput =>
    piece('sq', 'Square', [
      edge(
        'lower',
        'A',
        straight(
          [
            [0, 0],
            [100, 0],
          ],
          5,
        ),
        allowanceMarks,
        half,
      ),
      edge(
        'rest',
        'B',
        straight(
          [
            [100, 0],
            [100, 100],
            [0, 100],
            [0, 0],
          ],
          5,
        ),
      ),
    ]);

  it.each([3, 4.5, 6, 9, 10, 25])('stay within a third of an allowance of %d mm', (allowance) => {
    const { notches } = draft(square(marks, 'front'), { allowance });
    expect(notches).toHaveLength(1);
    const [x0, y0, x1, y1] = notches[0].points;
    expect([x0, x1]).toEqual([35, 35]);
    expect(y0).toBeCloseTo(-allowance, 3);
    expect(y1 - y0).toBeCloseTo(Math.min(3, allowance / 3), 6);
  });

  it('come single in front and in pairs on the back, centred on the mark', () => {
    expect(draft(square(marks, 'front')).notches.map(({ id }) => id)).toEqual(['A4']);
    const pair = draft(square(marks, 'back')).notches;
    expect(pair.map(({ id }) => id)).toEqual(['A4/1', 'A4/2']);
    expect(pair.map(({ points }) => points[0])).toEqual([32.5, 37.5]);
  });

  it('carry the same name on both partners', () => {
    const right = draft(upright('p', 'P', ['X', 'A'], 150, 'straight'));
    const left = draft(upright('q', 'Q', ['A', 'Y'], 150, 'straight'));
    const names = (drafted: Piece): string[] =>
      drafted.notches
        .map(({ name }) => name)
        .filter((name) => name.startsWith('A'))
        .sort();
    expect(names(right)).toEqual(['A1', 'A2', 'A3', 'A4', 'A5']);
    expect(names(left)).toEqual(names(right));
  });

  it('spare the corners', () => {
    const input = piece('sq', 'Square', [
      edge(
        'lower',
        'A',
        straight(
          [
            [0, 0],
            [100, 0],
          ],
          5,
        ),
        [
          { kind: 'level', index: 0, number: 1 },
          { kind: 'level', index: 20, number: 2 },
        ],
      ),
      edge(
        'rest',
        'B',
        straight(
          [
            [100, 0],
            [100, 100],
            [0, 100],
            [0, 0],
          ],
          5,
        ),
      ),
    ]);
    expect(draft(input).notches).toHaveLength(0);
  });
});

describe('allowances', () => {
  const square = polygonPiece([
    [0, 0],
    [200, 0],
    [200, 200],
    [0, 200],
  ]);

  it('follow the edge id and are named on the label', () => {
    const drafted = draft(square, { allowance: 12.7, allowanceByEdge: { 'side-0': 25.4 } });
    const ys = drafted.cutLine.filter((_, i) => i % 2 === 1);
    expect(Math.min(...ys)).toBeCloseTo(-25.4, 3);
    expect(Math.max(...ys)).toBeCloseTo(212.7, 3);
    const words = drafted.texts.map(({ text }) => text);
    expect(words).toContain('Allowance 1/2 in (12.7 mm)');
    expect(words).toContain('at A: 1 in (25.4 mm)');
  });

  it.each([
    [{ allowance: 2 }, 'allowance', 2, 3],
    [{ allowance: -10 }, 'allowance', -10, 3],
    [{ allowance: 61 }, 'allowance', 61, 50],
    [{ allowance: Number.NaN }, 'allowance', Number.NaN, 3],
    [{ allowanceByEdge: { 'side-2': 0 } }, 'allowanceByEdge.side-2', 0, 3],
  ])('%o are refused once, with the limit', (options, path, measured, limit) => {
    const result = draftPiece(square, LABEL, options);
    expect(result.ok).toBe(false);
    expect(result.issues).toHaveLength(1);
    expect(result.issues[0]).toMatchObject({
      code: 'allowance-out-of-range',
      path,
      measured,
      limit,
      severity: 'error',
    });
  });

  it('may be 0 on an opening: cut on the sew line, no slit', () => {
    const input = piece('o', 'Open', [
      edge(
        'neck',
        '',
        straight(
          [
            [0, 0],
            [200, 0],
          ],
          5,
        ),
        [{ kind: 'balance', index: 20, number: 1 }],
      ),
      edge(
        'rest',
        'B',
        straight(
          [
            [200, 0],
            [200, 200],
            [0, 200],
            [0, 0],
          ],
          5,
        ),
      ),
    ]);
    const drafted = draft(input, { allowanceByEdge: { neck: 0 } });
    expect(drafted.notches).toHaveLength(0);
    expect(distanceTo(drafted.cutLine, true, 100, 0)).toBeLessThan(1e-3);
    expect(drafted.texts.map(({ text }) => text)).toContain('mid neck');
  });

  it('that cover the piece are an issue with the missing width', () => {
    const strip = polygonPiece([
      [0, 0],
      [16, 0],
      [16, 300],
      [0, 300],
    ]);
    const result = draftPiece(strip, LABEL);
    expect(result.ok).toBe(false);
    expect(result.issues[0].code).toBe('allowance-covers-piece');
    // Half of 16 mm less 10 mm.
    expect(result.issues[0].measured).toBeCloseTo(-2, 1);
    expect(draftPiece(strip, LABEL, { allowance: 6 }).ok).toBe(true);
  });

  it('that close a hollow are an issue', () => {
    const pocket = polygonPiece([
      [0, 0],
      [200, 0],
      [200, 150],
      [108, 150],
      [108, 110],
      [130, 110],
      [130, 50],
      [70, 50],
      [70, 110],
      [92, 110],
      [92, 150],
      [0, 150],
    ]);
    const result = draftPiece(pocket, LABEL);
    expect(result.issues.map(({ code }) => code)).toContain('allowance-closes-hollow');
    expect(result.ok).toBe(false);
  });

  it('that overlap along a slot are a warning with the length', () => {
    const slotted = polygonPiece([
      [0, 0],
      [200, 0],
      [200, 200],
      [106, 200],
      [106, 80],
      [94, 80],
      [94, 200],
      [0, 200],
    ]);
    const result = draftPiece(slotted, LABEL);
    expect(result.ok).toBe(true);
    const issue = result.issues.find(({ code }) => code === 'allowances-overlap');
    expect(issue?.severity).toBe('warning');
    // Both sides of the slot, 120 mm each and 12 mm across.
    expect(issue?.measured).toBeGreaterThan(230);
    expect(issue?.measured).toBeLessThan(253);
  });
});

describe('outlines that are no piece', () => {
  it.each([
    [
      'flat',
      'outline-degenerate',
      [
        [0, 0],
        [200, 0],
        [100, 0.1],
      ],
    ],
    [
      'clockwise',
      'outline-inside-out',
      [
        [0, 0],
        [0, 200],
        [200, 200],
        [200, 0],
      ],
    ],
    [
      'figure of eight',
      'outline-crosses-itself',
      [
        [0, 0],
        [200, 0],
        [0, 60],
        [200, 200],
      ],
    ],
  ] as const)('%s', (_, code, corners) => {
    const result = draftPiece(polygonPiece(corners), LABEL);
    expect(result.ok).toBe(false);
    expect(result.issues.map((issue) => issue.code)).toEqual([code]);
    expect(result.issues[0].path).toBe('pieces.polygon');
  });

  it('names all faults at once', () => {
    const clockwise = polygonPiece([
      [0, 0],
      [0, 200],
      [200, 200],
      [200, 0],
    ]);
    const codes = draftPiece(clockwise, LABEL, { allowance: 1 }).issues.map(({ code }) => code);
    expect(codes).toEqual(['allowance-out-of-range', 'outline-inside-out']);
  });

  it('throws when edges do not chain or are not numbers', () => {
    const gap = piece('g', 'Gap', [
      edge('a', 'A', Float64Array.of(0, 0, 100, 0)),
      edge('b', 'B', Float64Array.of(100, 0.5, 50, 90, 0, 0)),
    ]);
    expect(() => draftPiece(gap, LABEL)).toThrow(InvariantError);
    const nan = piece('n', 'NaN', [
      edge('a', 'A', Float64Array.of(0, 0, 100, 0)),
      edge('b', 'B', Float64Array.of(100, 0, Number.NaN, 90, 0, 0)),
    ]);
    expect(() => draftPiece(nan, LABEL)).toThrow(/finite/);
    const lost = piece('l', 'Lost mark', [
      edge('a', 'A', Float64Array.of(0, 0, 100, 0), [{ kind: 'balance', index: 2, number: 1 }]),
      edge('b', 'B', Float64Array.of(100, 0, 50, 90, 0, 0)),
    ]);
    expect(() => draftPiece(lost, LABEL)).toThrow(/points 0 to 1/);
  });
});

describe('little room', () => {
  it('shortens or drops lettering with a warning, never silently', () => {
    const strip = polygonPiece([
      [0, 0],
      [22, 0],
      [22, 90],
      [0, 90],
    ]);
    const result = draftPiece(strip, {
      ...LABEL,
      project: 'A very long project name indeed, far too long for this',
    });
    expect(result.ok).toBe(true);
    expect(result.issues.some(({ code }) => code.startsWith('label-'))).toBe(true);
    expect(result.issues.every(({ severity }) => severity === 'warning')).toBe(true);
  });
});

describe('the label', () => {
  const rowsOf = (drafted: Piece): PieceText[] => drafted.texts.filter(({ anchor }) => anchor === 'start');

  it('runs along a narrow piece and straight across a wide one', () => {
    const narrow = rowsOf(draft(upright('n', 'Narrow', ['A', 'B'], 44, 'straight')));
    const wide = rowsOf(draft(upright('w', 'Wide', ['A', 'B'], 300, 'straight')));
    expect(new Set(narrow.map(({ angle }) => angle))).toEqual(new Set([Math.PI / 2]));
    expect(new Set(wide.map(({ angle }) => angle))).toEqual(new Set([0]));
    expect(wide[0].size).toBeGreaterThan(narrow[0].size);
  });

  it('folds long rows where that lets it be larger, losing no word', () => {
    const info = { ...LABEL, project: 'The tale of the lamp lighter and her seven cats (112.0 cm = 44 in)' };
    const result = draftPiece(
      polygonPiece([
        [0, 0],
        [110, 0],
        [110, 160],
        [0, 160],
      ]),
      info,
    );
    if (!result.ok) throw new Error('refused');
    const words = rowsOf(result.value).map(({ text }) => text);
    expect(words.every((row) => row.length <= 22)).toBe(true);
    expect(words.join(' ')).toContain(info.project);
    expect(words.some((row) => row.includes('(112.0 cm = 44 in)'))).toBe(true);
  });
});

it('moves with the piece: only the place changes', () => {
  const input = samplePanels()[1];
  const moved: PieceInput = {
    ...input,
    edges: input.edges.map((one) => ({
      ...one,
      points: one.points.map((v, i) => v + (i % 2 ? -500 : 1000)),
    })),
    levelLines: input.levelLines.map((line) => ({
      ...line,
      points: line.points.map((v, i) => v + (i % 2 ? -500 : 1000)),
    })),
  };
  const [first, second] = [draft(input), draft(moved)];
  expect(lengthOf(second.cutLine, true)).toBeCloseTo(lengthOf(first.cutLine, true), 2);
  for (const [x, y] of sample(second.cutLine, true, 5)) {
    expect(distanceTo(first.cutLine, true, x - 1000, y + 500)).toBeLessThan(1e-3);
  }
});
