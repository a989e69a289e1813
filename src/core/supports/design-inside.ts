import type { Issue } from '../base/index.ts';
import { type LevelCase, makeLevelCase } from './balance-level.ts';
import { describeLevel } from './describe-level.ts';
import { type Brace, designLevel, type LevelDesign } from './design-level.ts';
import { fitPole } from './fit-pole.ts';
import { angleFromBack, placeOnLine } from './inside-lines.ts';
import { type PlacedBrace, placeBraces, strapRows } from './place-braces.ts';
import { sliceTarget } from './section-target.ts';
import type {
  BraceRung,
  DesignedBrace,
  InsideForm,
  InsideOptions,
  InsideShape,
  LevelFinding,
  PoleFit,
  WebPlaces,
} from './types.ts';

/** Rungs of a web are this far apart, mm of chart height. */
const RUNG_GAP = 12;
/** Rows further apart than this get another one designed between them, mm. */
const DESIGN_GAP = 70;
const JUDGED = ['hip', 'waist'];

interface Row {
  readonly v: number;
  readonly levelId?: string;
  readonly level: LevelCase;
  readonly active: readonly number[];
  readonly design: LevelDesign;
}

/**
 * Webs, ties and straps for a form, and what the stuffed form then measures. On a pressure of filling the cloth takes
 * the shape of `solveSection`; the lengths of the braces are those that keep it nearest the body, row by row. The back
 * and front ties end on the pole sleeve; a pair of webs runs from front to back; straps hold the sides at hip and bust.
 * With `webPlaces` left open, seams are tried first. About 25 balances at each of 11 rows.
 */
export function designInside(
  form: InsideForm,
  options: InsideOptions,
): { shape: InsideShape; issues: Issue[] } {
  const wanted = options.wantedDeviation ?? 3;
  const rows = rungRows(form, options.boardThickness ?? 8);
  const { pole, issues } = fitPole(form, options.tubeDiameter ?? 25, options.boardThickness ?? 8, rows);
  const attempt = (places: WebPlaces, only?: readonly string[]): { shape: InsideShape; issues: Issue[] } => {
    const placed = placeBraces(form, rows, places, options.straps ?? true);
    const heights = designRows(form, rows).filter((v) => {
      return only === undefined || form.levels.some((level) => level.v === v && only.includes(level.id));
    });
    const shape = shapeOf(form, pole, rows, heights, placed.braces, places, placed.panelLines);
    return { shape, issues: placed.issues };
  };
  const isGoodOnSeams = (): boolean =>
    attempt('seams', JUDGED).shape.levels.every(({ held }) => Math.abs(held.deviation) <= wanted);
  const { shape, issues: lineIssues } = attempt(options.webPlaces ?? (isGoodOnSeams() ? 'seams' : 'panels'));
  return {
    shape,
    issues: [...issues, ...lineIssues, ...checkBraces(shape), ...judgeLevels(shape.levels, wanted)],
  };
}

/** Heights of the rungs: from just above the base plate to the upper chest, every level line among them. */
function rungRows(form: InsideForm, boardThickness: number): number[] {
  const bottom = form.surface.vRange[0] + boardThickness + 12;
  const stops = [bottom, ...form.levels.map((level) => level.v).filter((v) => v > bottom + 5)];
  return stops.flatMap((v, i) => {
    if (i === 0) return [v];
    const count = Math.ceil((v - stops[i - 1]) / RUNG_GAP);
    return Array.from({ length: count }, (_, k) =>
      k === count - 1 ? v : stops[i - 1] + ((v - stops[i - 1]) * (k + 1)) / count,
    );
  });
}

/** The rows whose lengths are designed: the ends, every level, and one between rows far apart. */
function designRows(form: InsideForm, rows: readonly number[]): number[] {
  const isLevel = (v: number): boolean => form.levels.some((level) => level.v === v);
  const chosen: number[] = [];
  rows.forEach((v, i) => {
    const next = rows.slice(i).find((w) => w > v && (isLevel(w) || w === rows[rows.length - 1])) ?? v;
    const last = chosen[chosen.length - 1];
    const isFar = v - last >= DESIGN_GAP / 2 && next - v >= DESIGN_GAP / 2 - RUNG_GAP;
    if (i === 0 || i === rows.length - 1 || isLevel(v) || isFar) chosen.push(v);
  });
  return chosen;
}

function shapeOf(
  form: InsideForm,
  pole: PoleFit,
  rows: readonly number[],
  heights: readonly number[],
  placed: readonly PlacedBrace[],
  webPlaces: WebPlaces,
  panelLines: InsideShape['panelLines'],
): InsideShape {
  const designed: Row[] = [];
  for (const v of heights) {
    const level = form.levels.find((candidate) => candidate.v === v);
    const active = placed.flatMap((brace, j) =>
      brace.levelId === undefined || brace.levelId === level?.id ? [j] : [],
    );
    designed.push(designRow(form, pole, placed, active, v, level?.id));
  }
  const levels = designed.flatMap((row): LevelFinding[] => {
    const level = form.levels.find(({ id }) => id === row.levelId);
    if (!level) return [];
    const slack = row.active.filter((_, k) => !row.design.balance.ties[k].isTaut).map((j) => placed[j].name);
    return [describeLevel(level, row.level, row.design, slack)];
  });
  return {
    pole,
    webPlaces,
    levels,
    braces: placed.map((brace, j) => rungsOfBrace(form, pole, brace, j, rows, designed)),
    panelLines,
    rings: designed.map(({ design, level }) => liftRing(design.ring, level.target.heights)),
  };
}

function designRow(
  form: InsideForm,
  pole: PoleFit,
  placed: readonly PlacedBrace[],
  active: readonly number[],
  v: number,
  levelId: string | undefined,
): Row {
  const angles = new Map<string, number>();
  const nameOf = (line: PlacedBrace['from']): string => `${line.id}/${line.side}`;
  for (const j of active) {
    for (const line of [placed[j].from, placed[j].to]) {
      if (line !== 'sleeve') angles.set(nameOf(line), angleFromBack(placeOnLine(line, v)?.u ?? 0));
    }
  }
  const held = [...angles].sort((a, b) => a[1] - b[1]);
  const indexOf = (line: PlacedBrace['from']): number => held.findIndex(([name]) => name === nameOf(line));
  const groups = [...new Set(active.map((j) => placed[j].group))];
  const braces: Brace[] = active.map((j) => ({
    from: indexOf(placed[j].from),
    to: placed[j].to === 'sleeve' ? anchorOf(pole, placed[j]) : indexOf(placed[j].to),
    group: groups.indexOf(placed[j].group),
  }));
  const target = sliceTarget(
    form.surface,
    v,
    held.map(([, u]) => u),
  );
  const level = makeLevelCase(target);
  return {
    v,
    level,
    active,
    design: designLevel(level, braces),
    ...(levelId === undefined ? {} : { levelId }),
  };
}

/** Extra length of the k-th active brace; a slack brace is left as long as the body is deep there. */
function extraOf(row: Row, k: number): number {
  return row.design.balance.ties[k].isTaut ? row.design.extraOfBrace[k] : 0;
}

function anchorOf(pole: PoleFit, brace: PlacedBrace): readonly [number, number] {
  return [pole.reach * brace.pull[0], pole.y + pole.reach * brace.pull[1]];
}

function rungsOfBrace(
  form: InsideForm,
  pole: PoleFit,
  brace: PlacedBrace,
  j: number,
  rows: readonly number[],
  designed: readonly Row[],
): DesignedBrace {
  const known = designed.flatMap((row) => {
    const k = row.active.indexOf(j);
    return k < 0 ? [] : [{ v: row.v, extra: extraOf(row, k) }];
  });
  const plain =
    brace.levelId === undefined
      ? rows
      : strapRows(form.levels.find(({ id }) => id === brace.levelId)?.v ?? 0);
  const own = withMarks(plain, [brace.from, brace.to], form);
  const rungs = own.map((v): BraceRung => {
    const from = pointOnLine(form, brace.from, v);
    const [x, y] = anchorOf(pole, brace);
    const to: readonly [number, number, number] =
      brace.to === 'sleeve' ? [x, y, from[2]] : pointOnLine(form, brace.to, v);
    const straight = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const levelId = form.levels.find((level) => level.v === v)?.id;
    const length = straight + interpolate(known, v);
    return { v, z: from[2], from, to, length, ...(levelId === undefined ? {} : { levelId }) };
  });
  const { id, name, kind, side, from, to } = brace;
  return { id, name, kind, side, from, to, rungs };
}

/** The rows with one exactly at every mark of the lines, so that partners meet mark on mark; near plain rows give way. */
function withMarks(
  rows: readonly number[],
  lines: readonly (DesignedBrace['from'] | 'sleeve')[],
  form: InsideForm,
): number[] {
  const [first, last] = [rows[0], rows[rows.length - 1]];
  const marks = lines.flatMap((line) =>
    line === 'sleeve' ? [] : line.seams.flatMap((seam) => seam.marks.map((mark) => seam.v[mark.index])),
  );
  const fixed = marks.filter((v) => v > first + 1 && v < last - 1);
  const isLevel = (v: number): boolean => form.levels.some((level) => level.v === v);
  const kept = rows.filter(
    (v) => v === first || v === last || isLevel(v) || fixed.every((mark) => Math.abs(mark - v) > 3),
  );
  return [...new Set([...kept, ...fixed])].sort((a, b) => a - b);
}

function pointOnLine(form: InsideForm, line: DesignedBrace['from'], v: number): [number, number, number] {
  const u = placeOnLine(line, v)?.u ?? 0;
  const [x, y, z] = form.surface.evaluate(Float64Array.of(u, v));
  return [x, y, z];
}

function interpolate(known: readonly { readonly v: number; readonly extra: number }[], v: number): number {
  const k = known.findIndex((entry) => entry.v >= v);
  if (k < 0) return known[known.length - 1]?.extra ?? 0;
  if (k === 0) return known[0].extra;
  const t = (v - known[k - 1].v) / (known[k].v - known[k - 1].v);
  const smooth = t * t * (3 - 2 * t);
  return known[k - 1].extra + smooth * (known[k].extra - known[k - 1].extra);
}

function liftRing(ring: Float64Array, heights: Float64Array): Float64Array {
  const out = new Float64Array(3 * heights.length);
  heights.forEach((z, i) => {
    out.set([ring[2 * i], ring[2 * i + 1], z], 3 * i);
  });
  return out;
}

/** Webs that would meet the pole or cross to the other side. */
function checkBraces({ braces, pole }: InsideShape): Issue[] {
  const room = pole.reach + 3;
  return braces.flatMap((brace): Issue[] => {
    if (brace.kind !== 'web') return [];
    const sign = brace.side === 'right' ? 1 : -1;
    const nearest = brace.rungs.reduce(
      (least, { from, to }) => Math.min(least, sign * from[0], sign * to[0]),
      1e9,
    );
    if (nearest >= room) return [];
    const message = `${brace.name} would come ${nearest.toFixed(0)} mm from the middle, where the pole needs ${room.toFixed(0)} mm: the webs would cross the pole. Take a thinner tube or webs further out.`;
    return [
      { code: 'webs-cross', path: 'webPlaces', message, severity: 'error', measured: nearest, limit: room },
    ];
  });
}

/** Bust and upper chest may deviate by this, mm: the cloth is there more bent than a sleeve can be (ours). */
const CHEST_LIMIT = 6.5;

/** Names each level that stays further off than wanted, with what to do about it. */
function judgeLevels(levels: readonly LevelFinding[], wanted: number): Issue[] {
  return levels.flatMap(({ id, name, held }): Issue[] => {
    const limit = id === 'bust' || id === 'upperChest' ? Math.max(wanted, CHEST_LIMIT) : wanted;
    if (Math.abs(held.deviation) <= limit) return [];
    const isFlat = held.deviation < 0;
    const isCup = id === 'bust' && isFlat && held.y > 0 && Math.abs(held.x) > 30;
    const remedy = isCup
      ? 'put a firm packed cup there'
      : isFlat
        ? 'put a layer of wadding under the cloth there'
        : 'fill it less there, or sew on one more strap to the pole sleeve';
    const message = `${name}: the stuffed form will be ${Math.abs(held.deviation).toFixed(1)} mm ${isFlat ? 'flatter' : 'fuller'} than the body at the ${held.where} (${limit.toFixed(1)} mm wanted); ${remedy}.`;
    return [
      {
        code: 'level-deviates',
        path: 'wantedDeviation',
        message,
        severity: 'warning',
        measured: Math.abs(held.deviation),
        limit,
      },
    ];
  });
}
