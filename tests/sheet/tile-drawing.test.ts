import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cornersOfText, type Drawing, makeLayer, makePath } from '../../src/core/drawing/index.ts';
import { writePdf } from '../../src/core/export/index.ts';
import { findPaper, PAPERS, planTiles, printPieces, tileDrawing } from '../../src/core/sheet/index.ts';
import { inEnglish } from '../in-english.ts';
import { lengthOf } from '../pattern/brute-force.ts';
import { type GreyImage, rasterisePdf } from '../rasterise-pdf.ts';
import { samplePieces } from './sample-pieces.ts';

const INFO = { say: inEnglish, project: 'Lantern Yard Players', body: 'bust 94.0 cm', date: '2026-11-25' };
const FONT = readFileSync('node_modules/dejavu-fonts-ttf/ttf/DejaVuSans.ttf');

describe('the table of papers', () => {
  it('is that of ISO 216: A0 one square metre, sides as 1 to √2, each size half the one before', () => {
    const [a0, a3, a4] = ['a0', 'a3', 'a4'].map((id) => findPaper(id)!);
    expect(Math.abs((a0.width * a0.height!) / 1e6 - 1)).toBeLessThan(0.001);
    for (const { width, height } of [a0, a3, a4]) expect(height! / width).toBeCloseTo(Math.SQRT2, 2);
    expect(a4.height).toBe(a3.width);
    expect(a3.height! / 2).toBe(a4.width);
  });

  it('is that of ANSI Y14.1 in inches: 8.5 × 11 and 11 × 17; rolls 24 and 36', () => {
    const inches = (id: string) => [findPaper(id)!.width / 25.4, (findPaper(id)!.height ?? 0) / 25.4];
    expect(inches('letter')).toEqual([expect.closeTo(8.5, 9), expect.closeTo(11, 9)]);
    expect(inches('ledger')).toEqual([expect.closeTo(11, 9), expect.closeTo(17, 9)]);
    expect(inches('roll24')[0]).toBeCloseTo(24, 9);
    expect(inches('roll36')[0]).toBeCloseTo(36, 9);
  });

  it('has one page that fits on A4 and on Letter', () => {
    const both = findPaper('both')!;
    for (const id of ['a4', 'letter']) {
      expect(both.width).toBeLessThanOrEqual(findPaper(id)!.width);
      expect(both.height!).toBeLessThanOrEqual(findPaper(id)!.height!);
    }
  });
});

describe('what cannot be printed', () => {
  it.each([
    [{ paper: 'foolscap' }, 'unknown-paper', 'paper'],
    [{ margin: 80 }, 'paper-too-small', 'margin'],
    [{ margin: -1 }, 'margin-out-of-range', 'margin'],
    [{ margin: Number.NaN }, 'margin-out-of-range', 'margin'],
    [{ overlap: 100 }, 'overlap-out-of-range', 'overlap'],
  ])('%o is an issue', (options, code, path) => {
    const planned = planTiles(options);
    expect(planned.ok).toBe(false);
    expect(planned.issues).toEqual([expect.objectContaining({ code, path, severity: 'error' })]);
  });

  it('names every paper there is', () => {
    const { message } = planTiles({ paper: 'foolscap' }).issues[0];
    for (const { id } of PAPERS) expect(inEnglish(message)).toContain(id);
  });
});

/** A drawing of one open line. */
function lineDrawing(points: number[], width: number, height: number): Drawing {
  return { width, height, title: 'line', layers: [makeLayer('cut', [makePath(points, { id: 'line' })])] };
}

function tile(drawing: Drawing, options = {}) {
  const tiled = tileDrawing(drawing, { say: inEnglish, ...options });
  if (!tiled.ok) throw new Error(inEnglish(tiled.issues[0].message));
  return tiled.value;
}

it('keeps the length of every line, whatever it is cut into (butt joints)', () => {
  // Off the borders, because a line along a border belongs to both pages.
  const point = fc.tuple(fc.nat(1000), fc.nat(1000)).map(([i, j]) => [0.137 + 0.69 * i, 0.151 + 0.89 * j]);
  fc.assert(
    fc.property(fc.array(point, { minLength: 2, maxLength: 12 }), (points) => {
      const { pages } = tile(lineDrawing(points.flat(), 700, 900), { joint: 'butt' });
      let whole = 0;
      for (let i = 1; i < points.length; i++)
        whole += Math.hypot(points[i][0] - points[i - 1][0], points[i][1] - points[i - 1][1]);
      let sum = 0;
      for (const { layers } of pages)
        for (const item of layers[0].items) if (item.kind === 'path') sum += lengthOf(item.points);
      expect(sum).toBeCloseTo(whole, 6);
    }),
    { numRuns: 40, seed: 7 },
  );
});

it('joins only pages that a line passes between, and leaves the empty ones out', () => {
  // Cells are 180 × 259 mm. One line in column A from row 1 to 2, one within C1: column B stays empty.
  const drawing: Drawing = {
    width: 540,
    height: 518,
    title: 'two',
    layers: [
      makeLayer('cut', [
        makePath([20, 100, 60, 400]),
        makePath([400, 50, 450, 200, 420, 30], { closed: true }),
      ]),
    ],
  };
  const { tiles, joints } = tile(drawing);
  expect(tiles.map(({ name }) => name)).toEqual(['A1', 'A2', 'C1']);
  expect(joints).toEqual([{ number: 1, first: 0, second: 1, isUpright: false }]);
  expect(tiles[2].group).not.toBe(tiles[0].group);
});

it('keeps a page that lies wholly inside an outline', () => {
  const square = makePath([5, 5, 715, 5, 715, 1030, 5, 1030], { closed: true });
  const { tiles, joints } = tile({
    width: 720,
    height: 1036,
    title: 's',
    layers: [makeLayer('cut', [square])],
  });
  expect(tiles).toHaveLength(16);
  expect(joints).toHaveLength(24);
});

describe('a print of made-up pieces', () => {
  const pieces = samplePieces();
  const job = (options = {}) => {
    const made = printPieces(pieces, INFO, options);
    if (!made.ok) throw new Error(inEnglish(made.issues[0].message));
    return made.value;
  };

  it('stays off the margins, except for letters on the waste side of joints', () => {
    const { tiled } = job();
    for (const page of tiled.pages) {
      for (const { items } of page.layers) {
        for (const item of items) {
          if (item.kind !== 'path') continue;
          for (let i = 0; i < item.points.length; i += 2) {
            expect(item.points[i]).toBeGreaterThanOrEqual(10 - 1e-9);
            expect(item.points[i]).toBeLessThanOrEqual(200 + 1e-9);
            expect(item.points[i + 1]).toBeGreaterThanOrEqual(10 - 1e-9);
            expect(item.points[i + 1]).toBeLessThanOrEqual(287 + 1e-9);
          }
        }
      }
    }
  });

  it('gives both pages of a joint the same diamonds, at the same places of the drawing', () => {
    const { tiled } = job();
    expect(tiled.joints.length).toBeGreaterThan(5);
    for (const { number, first, second, isUpright } of tiled.joints) {
      const tips = [first, second].map((index) => {
        const { cell } = tiled.tiles[index];
        const join = tiled.pages[index].layers.find(({ name }) => name === 'join')!;
        return [1, 2].map((k) => {
          const own = join.items.filter((item) => item.id?.startsWith(`joint/${number}/diamond-${k}/`));
          const along = own.flatMap((item) =>
            item.kind === 'path' ? [...item.points].filter((_, i) => i % 2 === (isUpright ? 1 : 0)) : [],
          );
          const shift = (isUpright ? cell.minY : cell.minX) - 10;
          return (Math.min(...along) + Math.max(...along)) / 2 + shift;
        });
      });
      expect(tips[0][0]).toBeCloseTo(tips[1][0], 9);
      expect(tips[0][1]).toBeCloseTo(tips[1][1], 9);
      expect(Math.abs(tips[0][0] - tips[0][1])).toBeGreaterThan(25);
    }
  });

  it('sets the checking crosses exactly as far apart as they say', () => {
    const { tiled } = job();
    let checked = 0;
    const found = new Map<string, { x: number; y: number; length: number }>();
    for (const [i, page] of tiled.pages.entries()) {
      const { items } = page.layers.find(({ name }) => name === 'page')!;
      for (const [k, item] of items.entries()) {
        const parts = /^check\/(\d+)\/(from|to)\/across$/.exec(item.id ?? '');
        if (!parts || item.kind !== 'path') continue;
        const words = items[k + 3];
        const length = words.kind === 'text' ? Number.parseFloat(words.text) : Number.NaN;
        const { cell } = tiled.tiles[i];
        const place = {
          x: (item.points[0] + item.points[2]) / 2 + cell.minX,
          y: item.points[1] + cell.minY,
          length,
        };
        const other = found.get(parts[1]);
        if (!other) found.set(parts[1], place);
        else {
          expect(other.length).toBe(length);
          expect(Math.hypot(place.x - other.x, place.y - other.y)).toBeCloseTo(length, 9);
          checked++;
        }
      }
    }
    expect(checked).toBeGreaterThan(3);
  });

  it('puts page names, crosses and diamond numbers where no line and no lettering is', () => {
    const { tiled } = job();
    for (const page of tiled.pages) {
      const own = page.layers.filter(({ name }) => ['cut', 'sew', 'mark', 'text'].includes(name));
      const { items } = page.layers.find(({ name }) => name === 'page')!;
      for (const item of items) {
        if (item.kind !== 'text') continue;
        const box = boundsOf(cornersOfText(item));
        // The foot is below the rectangle to which letters are cut.
        if (box.y0 > own[0].lettersWithin!.maxY) continue;
        for (const other of own.flatMap((layer) => layer.items)) {
          const points = other.kind === 'path' ? other.points : cornersOfText(other);
          expect(touchesBox(points, other.kind === 'text' || other.closed, box), item.text).toBe(false);
        }
      }
    }
  });

  it('numbers pages through, piece by piece, and joins pages of one piece alone', () => {
    const { tiled } = job();
    expect(tiled.tiles.map(({ name }) => name)).toEqual(tiled.tiles.map((_, i) => `${i + 1}`));
    const piecesOf = tiled.tiles.map(({ caption }) => caption.split(', '));
    expect(new Set(piecesOf.flat())).toEqual(new Set(pieces.map(({ name }) => inEnglish(name))));
    for (const { first, second } of tiled.joints)
      expect(piecesOf[first].filter((piece) => piecesOf[second].includes(piece))).toHaveLength(1);
    // What lies on several pages has them one after the other.
    for (const piece of new Set(piecesOf.flat())) {
      const own = piecesOf.flatMap((names, i) => (names.includes(piece) ? [i] : []));
      expect(own[own.length - 1] - own[0]).toBe(own.length - 1);
    }
  });

  it.each(['overlap', 'butt'])(
    'prints no words over each other beside joints and at the foot (%s)',
    (joint) => {
      const { tiled } = job({ joint });
      for (const { layers } of tiled.pages) {
        const texts = layers
          .filter(({ name }) => name === 'join' || name === 'page')
          .flatMap(({ items }) => items.filter((item) => item.kind === 'text'));
        for (const [i, a] of texts.entries()) {
          for (const b of texts.slice(i + 1)) {
            const [p, q] = [boundsOf(cornersOfText(a)), boundsOf(cornersOfText(b))];
            const isApart = p.x1 <= q.x0 || q.x1 <= p.x0 || p.y1 <= q.y0 || q.y1 <= p.y0;
            expect(isApart, `${a.text} / ${b.text}`).toBe(true);
          }
        }
      }
    },
  );

  it('lists every piece with the pages it is on', () => {
    const { pages, tiled } = job();
    const words = pages[1].layers.flatMap(({ items }) =>
      items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])),
    );
    for (const { name } of pieces) expect(words.some((text) => text.includes(inEnglish(name)))).toBe(true);
    for (const { name } of tiled.tiles) expect(words).toContain(name);
  });

  it('keeps words of any length on the page', () => {
    const long = 'Größe <b>שלום</b> '.repeat(12);
    const made = printPieces(pieces, { say: inEnglish, project: long, body: long, date: long });
    if (!made.ok) throw new Error(inEnglish(made.issues[0].message));
    for (const [i, page] of made.value.pages.entries()) {
      for (const { name, items, lettersWithin } of page.layers) {
        for (const item of items) {
          // Words of the pieces may reach over a joint and are cut there.
          if (item.kind !== 'text' || lettersWithin) continue;
          const { x0, x1 } = boundsOf(cornersOfText(item));
          expect(Math.min(x0, page.width - x1), `${i} ${name} ${item.text}`).toBeGreaterThanOrEqual(5);
        }
      }
    }
  });

  it('prints all on one page of a roll, and small pieces whole', () => {
    const roll = job({ paper: 'roll36' });
    expect(roll.tiled.tiles).toHaveLength(1);
    expect(roll.tiled.joints).toHaveLength(0);
    const large = job({ paper: 'a0' });
    expect(large.tiled.joints).toHaveLength(0);
  });

  it('lays more than a page description can hold on several pages of a roll, joining none', async () => {
    const many = Array.from({ length: 5 }, (_, n) =>
      pieces.map((piece) => ({ ...piece, id: `${piece.id}-${n}` })),
    );
    const made = printPieces(many.flat(), INFO, { paper: 'roll24' });
    if (!made.ok) throw new Error(inEnglish(made.issues[0].message));
    const { tiled, pages } = made.value;
    expect(tiled.tiles.length).toBeGreaterThan(1);
    expect(tiled.joints).toHaveLength(0);
    // ISO 32000-1 annex C: a page is at most 14 400 units of 1/72 in on a side.
    for (const { height } of pages) expect((height / 25.4) * 72).toBeLessThanOrEqual(14_400);
    const bytes = await writePdf({
      pages,
      title: 'roll',
      say: inEnglish,
      font: FONT,
      fontName: 'DejaVuSans',
      creator: 'test',
    });
    expect(bytes.length).toBeGreaterThan(1000);
  });

  it('assembled, has no line off by more than 0.1 mm (poppler at 254 dpi, 1 pixel)', async () => {
    const two = printPieces(pieces.slice(0, 2), INFO);
    if (!two.ok) throw new Error(inEnglish(two.issues[0].message));
    const { tiled, drawing } = two.value;
    // Dashes begin anew on every page, so the dashed layer cannot be compared by pixels.
    const solid = (page: Drawing): Drawing => ({
      ...page,
      layers: page.layers.filter(({ name }) => name === 'cut' || name === 'mark'),
    });
    const content = { say: inEnglish, title: 't', font: FONT, fontName: 'DejaVuSans', creator: 't' };
    const [whole] = rasterisePdf(await writePdf({ ...content, pages: [solid(drawing)] }), 254);
    const parts = rasterisePdf(await writePdf({ ...content, pages: tiled.pages.map(solid) }), 254);
    const assembled: GreyImage = {
      width: whole.width,
      height: whole.height,
      pixels: new Uint8Array(whole.width * whole.height).fill(255),
    };
    for (const [i, { cell }] of tiled.tiles.entries()) {
      const [x0, y0] = [Math.round(cell.minX * 10), Math.round(cell.minY * 10)];
      for (let y = y0; y < Math.min(whole.height, Math.round(cell.maxY * 10)); y++) {
        for (let x = x0; x < Math.min(whole.width, Math.round(cell.maxX * 10)); x++)
          assembled.pixels[y * whole.width + x] =
            parts[i].pixels[(y - y0 + 100) * parts[i].width + x - x0 + 100];
      }
    }
    expect(countDark(whole)).toBeGreaterThan(10_000);
    expect(countLoose(whole, assembled)).toBe(0);
    expect(countLoose(assembled, whole)).toBe(0);
  });
});

const DARK = 140;

function countDark({ pixels }: GreyImage): number {
  let count = 0;
  for (const value of pixels) if (value < DARK) count++;
  return count;
}

/** Dark pixels of one picture that have no dark pixel within one pixel in the other. */
function countLoose(a: GreyImage, b: GreyImage): number {
  let loose = 0;
  for (let y = 0; y < a.height; y++) {
    for (let x = 0; x < a.width; x++) {
      if (a.pixels[y * a.width + x] >= DARK) continue;
      let isMet = false;
      for (let dy = -1; dy <= 1 && !isMet; dy++)
        for (let dx = -1; dx <= 1 && !isMet; dx++) isMet = b.pixels[(y + dy) * b.width + x + dx] < DARK + 60;
      if (!isMet) loose++;
    }
  }
  return loose;
}

interface Box {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

function boundsOf(points: Float64Array): Box {
  const xs = points.filter((_, i) => i % 2 === 0);
  const ys = points.filter((_, i) => i % 2 === 1);
  return { x0: Math.min(...xs), y0: Math.min(...ys), x1: Math.max(...xs), y1: Math.max(...ys) };
}

/** Whether a line, sampled every 0.2 mm, comes into the box. */
function touchesBox(points: Float64Array, isClosed: boolean, { x0, y0, x1, y1 }: Box): boolean {
  const count = points.length / 2;
  for (let i = 0; i < (isClosed ? count : count - 1); i++) {
    const j = (i + 1) % count;
    const [ax, ay, bx, by] = [points[2 * i], points[2 * i + 1], points[2 * j], points[2 * j + 1]];
    if (Math.max(ax, bx) < x0 || Math.min(ax, bx) > x1 || Math.max(ay, by) < y0 || Math.min(ay, by) > y1)
      continue;
    const steps = Math.max(1, Math.ceil(Math.hypot(bx - ax, by - ay) / 0.2));
    for (let k = 0; k <= steps; k++) {
      const [x, y] = [ax + ((bx - ax) * k) / steps, ay + ((by - ay) * k) / steps];
      if (x > x0 && x < x1 && y > y0 && y < y1) return true;
    }
  }
  return false;
}
