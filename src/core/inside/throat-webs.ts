import type { Issue } from '../base/index.ts';
import { add, cross, dot, normalise, scale, subtract } from '../math/index.ts';
import { topOnSleeve } from './fit-pole.ts';
import { angleAtWidth, drawPanelLine } from './inside-lines.ts';
import { phrase } from './phrases.ts';
import type {
  BraceRung,
  DesignedBrace,
  InsideForm,
  InsideLine,
  InsideShape,
  PoleFit,
  Side,
} from './types.ts';

/** They begin so far over the end of the front tie, and end so far under the neck, where its band is sewn on, mm of chart height. */
const OVER_TIE = 12;
const UNDER_NECK = 14;
/** Rungs are about so far apart, mm of chart height. */
const RUNG_GAP = 12;
/**
 * From the middle of the front to their lower and upper end, mm, the best first. Measured on the filled demos: wider apart at the
 * neck they hold the hollows beside it too (worst place 16 to 18 mm out, for 18 to 20 where they go straight up).
 */
const BESIDE: readonly Slope[] = [
  [28, 46],
  [30, 40],
  [34, 46],
  [24, 36],
  [30, 30],
  [24, 24],
  [36, 36],
  [18, 30],
  [40, 50],
  [18, 18],
];
type Slope = readonly [low: number, high: number];
/** From the line to a seam of the panel: the allowance pressed open, and room to stitch, mm. */
const BESIDE_SEAM = 14;
/** A web less high than this is not worth its sewing, mm of chart height. */
const LEAST_HEIGHT = 50;
/** Where on the sleeve's girth the right one is sewn: an eighth beside the front tie. */
const SLEEVE_SHARE = 3 / 8;
/** Threads run so far from level towards square to the cloth: half way (measured on the filled demos). */
const TOWARDS_NORMAL = 0.5;
/** Step for the cloth's normal, radians and mm of chart height. */
const NEAR = { u: 0.01, v: 1 } as const;

const SIDES = ['right', 'left'] as const;

export interface ThroatWebs {
  readonly braces: readonly DesignedBrace[];
  readonly panelLines: InsideShape['panelLines'];
  readonly issues: readonly Issue[];
}

/**
 * One pair of webs in the throat, where a hollow cannot stand under pressure and the front tie has ended: each is stitched to the
 * front along a line beside the middle that leans outwards, from over the tie (whose end is at chart height `tieTop`) to under the neck, or less far
 * where only that keeps clear of the panel's seams, and goes to the sleeve. As deep as the body is along its threads, less
 * `shellDepth`. Drawn lines take letters from `firstLetter` on. Issues: `throat-web-without-room`. O(rungs × places tried).
 */
export function throatWebs(
  form: InsideForm,
  pole: PoleFit,
  tieTop: number,
  shellDepth: number,
  firstLetter: number,
): ThroatWebs {
  const rows = rowsOfThroat(tieTop + OVER_TIE, form.neckBaseV - UNDER_NECK);
  const { widthAt, own: clear } = placeBeside(form, rows);
  const end = clear.findIndex((v) => {
    const u = angleAtWidth(form, v, widthAt(v));
    return rungAt(form, u, v, placeOnSleeve(pole, 'right'), shellDepth).to[2] > topOnSleeve(pole);
  });
  const own = end < 0 ? clear : clear.slice(0, end);
  if (own.length < 2 || own[own.length - 1] - own[0] < LEAST_HEIGHT) return without();
  const drawn = SIDES.map((side, k) => drawLine(form, side, widthAt, own, form.letterOf(firstLetter + k)));
  const lines = drawn.filter((line) => line !== null);
  if (lines.length < drawn.length) return without();
  return {
    braces: lines.map((line, k) => makeWeb(form, pole, line, SIDES[k], shellDepth)),
    panelLines: lines.map(({ id, name, side, seams: [{ letter, u, v, marks }] }) => ({
      id: `${id}/${side}`,
      letter,
      name,
      chart: Float64Array.from({ length: 2 * u.length }, (_, i) => (i % 2 === 0 ? u : v)[i >> 1]),
      marks: marks.map(({ index, number }) => ({ index, number })),
    })),
    issues: [],
  };
}

function without(): ThroatWebs {
  const message = phrase('inside.throat-web-without-room', { room: BESIDE_SEAM, least: LEAST_HEIGHT });
  const issue: Issue = { code: 'throat-web-without-room', path: 'throat', message, severity: 'warning' };
  return { braces: [], panelLines: [], issues: [issue] };
}

function rowsOfThroat(bottom: number, top: number): number[] {
  if (top <= bottom) return [];
  const count = Math.ceil((top - bottom) / RUNG_GAP);
  return Array.from({ length: count + 1 }, (_, k) => bottom + ((top - bottom) * k) / count);
}

interface Beside {
  /** From the middle to the right one at a chart height, mm. */
  readonly widthAt: (v: number) => number;
  /** The rows over which it keeps clear of seams. */
  readonly own: readonly number[];
}

/** The first slope that keeps clear of seams over all rows, else the one that does over the most from the lowest up. */
function placeBeside(form: InsideForm, rows: readonly number[]): Beside {
  const [bottom, top] = [rows[0], rows[rows.length - 1]];
  let best: Beside = { widthAt: () => 0, own: [] };
  for (const [low, high] of BESIDE) {
    const widthAt = (v: number): number => low + ((high - low) * (v - bottom)) / (top - bottom);
    const own = rows.slice(0, rowsOnOnePanel(form, rows, widthAt));
    if (own.length > best.own.length) best = { widthAt, own };
    if (own.length === rows.length) break;
  }
  return best;
}

/** How many rows from the lowest up the lines of both sides, and room beside them, lie on one panel each. */
function rowsOnOnePanel(form: InsideForm, rows: readonly number[], widthAt: Beside['widthAt']): number {
  const counts = [1, -1].map((sign) => {
    const [panels, ...beside] = [0, -BESIDE_SEAM, BESIDE_SEAM].map((by) => {
      return panelsAlong(
        form,
        rows.map((v) => [angleAtWidth(form, v, sign * (widthAt(v) + by)), v]),
      );
    });
    const isClear = (panel: number | undefined, k: number): boolean =>
      panel !== undefined && panel === panels[0] && beside.every((own) => own[k] === panel);
    const end = panels.findIndex((panel, k) => !isClear(panel, k));
    return end < 0 ? rows.length : end === 0 ? 0 : end + 1;
  });
  return Math.min(...counts);
}

/** The panel of every stretch, undefined where there is none. */
function panelsAlong(
  form: InsideForm,
  points: readonly (readonly [number, number])[],
): (number | undefined)[] {
  return points.slice(1).map((point, k) => {
    return form.measureOnPanels(Float64Array.from([...points[k], ...point]))?.panels[0];
  });
}

/** Its marks, where web and sleeve are pinned to it too, a third and two thirds of the way up. */
function drawLine(
  form: InsideForm,
  side: Side,
  widthAt: Beside['widthAt'],
  rows: readonly number[],
  letter: string,
): InsideLine | null {
  const what = { id: 'throat', name: phrase('brace.throat-line'), side, half: 'front' } as const;
  const line = drawPanelLine(
    form,
    what,
    rows,
    (v) => angleAtWidth(form, v, signOf(side) * widthAt(v)),
    letter,
  );
  if (!line) return null;
  const [seam] = line.seams;
  const last = rows.length - 1;
  const inner = new Set([Math.round(last / 3), Math.round((2 * last) / 3)]);
  const marks = [...inner].filter((index) => index > 0 && index < last);
  const numbered = marks.map((index, k) => ({ kind: 'balance' as const, number: k + 1, index }));
  return { ...line, seams: [{ ...seam, marks: numbered }] };
}

function makeWeb(
  form: InsideForm,
  pole: PoleFit,
  line: InsideLine,
  side: Side,
  shellDepth: number,
): DesignedBrace {
  const [{ u, v, marks }] = line.seams;
  const sleeveShare = side === 'right' ? SLEEVE_SHARE : 1 - SLEEVE_SHARE;
  const onSleeve = placeOnSleeve(pole, side);
  return {
    id: `throat-${side}`,
    name: phrase('brace.throat', { side }),
    nameOnSleeve: phrase('brace.throat-alone'),
    kind: 'throat',
    side,
    from: line,
    to: 'sleeve',
    sleeveShare,
    rungs: Array.from(v, (height, k): BraceRung => {
      const mark = marks.find(({ index }) => index === k);
      const rung = rungAt(form, u[k], height, onSleeve, shellDepth);
      return mark ? { ...rung, mark: mark.number } : rung;
    }),
  };
}

function placeOnSleeve({ y, reach }: PoleFit, side: Side): readonly [number, number] {
  const angle = Math.PI * (2 * SLEEVE_SHARE - 0.5);
  return [signOf(side) * reach * Math.cos(angle), y + reach * Math.sin(angle)];
}

function signOf(side: Side): 1 | -1 {
  return side === 'right' ? 1 : -1;
}

/** A thread from the cloth to the sleeve, half way between level and square to the cloth. */
function rungAt(
  form: InsideForm,
  u: number,
  v: number,
  [x, y]: readonly [number, number],
  shellDepth: number,
): BraceRung {
  const { at, inwards } = cloth(form, u, v);
  const level = normalise([x - at[0], y - at[1], 0]);
  // What of the normal lies in the upright plane that the thread is to lie in.
  const way = normalise(add(scale(level, dot(inwards, level)), [0, 0, inwards[2]]));
  const turned = TOWARDS_NORMAL * Math.atan2(way[2], dot(way, level));
  const to = [x, y, at[2] + Math.tan(turned) * Math.hypot(x - at[0], y - at[1])] as const;
  const length = Math.hypot(...subtract(to, at)) - shellDepth;
  return { v, z: at[2], from: at, to, length };
}

function cloth(form: InsideForm, u: number, v: number) {
  const points = form.surface.evaluate(
    Float64Array.of(u, v, u - NEAR.u, v, u + NEAR.u, v, u, v - NEAR.v, u, v + NEAR.v),
  );
  const [at, ...beside] = [0, 1, 2, 3, 4].map((k): [number, number, number] => {
    return [points[3 * k], points[3 * k + 1], points[3 * k + 2]];
  });
  // u goes to the wearer's left in front, so that across × up looks inwards there.
  const inwards = normalise(cross(subtract(beside[3], beside[2]), subtract(beside[1], beside[0])));
  return { at, inwards };
}
