import { placeOnLine } from './inside-lines.ts';
import { type PlacedBrace, strapRows } from './place-braces.ts';
import type { BraceRung, DesignedBrace, InsideForm, PoleFit } from './types.ts';

/** A brace's designed lengths: how much longer than the straight distance it is at a height, mm. */
export interface KnownExtra {
  readonly v: number;
  readonly extra: number;
}

/** Where on the pulled sleeve a brace is sewn. */
export function anchorOf(pole: PoleFit, brace: PlacedBrace): readonly [number, number] {
  return [pole.reach * brace.pull[0], pole.y + pole.reach * brace.pull[1]];
}

/**
 * The brace rung by rung, its length between designed rows interpolated smoothly. `known` rises; `shellDepth` is taken off for
 * every end on the shell.
 */
export function rungsOfBrace(
  form: InsideForm,
  pole: PoleFit,
  brace: PlacedBrace,
  rows: readonly number[],
  known: readonly KnownExtra[],
  shellDepth: number,
): DesignedBrace {
  const ends = brace.to === 'sleeve' ? 1 : 2;
  const level = form.levels.find(({ id }) => id === brace.levelId);
  const free = level ? strapRows(form, level) : [...rows, ...(brace.above ?? [])];
  const own = withMarks(free, [brace.from, brace.to], form);
  const rungs = own.map((v): BraceRung => {
    const from = pointOnLine(form, brace.from, v);
    const [x, y] = anchorOf(pole, brace);
    const to: readonly [number, number, number] =
      brace.to === 'sleeve' ? [x, y, from[2]] : pointOnLine(form, brace.to, v);
    const straight = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const levelId = form.levels.find((level) => level.v === v)?.id;
    const length = straight + interpolate(known, v) - ends * shellDepth;
    return { v, z: from[2], from, to, length, ...(levelId === undefined ? {} : { levelId }) };
  });
  const { id, name, nameOnSleeve, kind, side, from, to, sleeveShare } = brace;
  const share = sleeveShare === undefined ? {} : { sleeveShare };
  return { id, name, nameOnSleeve, kind, side, from, to, rungs, ...share };
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

function interpolate(known: readonly KnownExtra[], v: number): number {
  const k = known.findIndex((entry) => entry.v >= v);
  if (k < 0) return known[known.length - 1]?.extra ?? 0;
  if (k === 0) return known[0].extra;
  const t = (v - known[k - 1].v) / (known[k].v - known[k - 1].v);
  const smooth = t * t * (3 - 2 * t);
  return known[k - 1].extra + smooth * (known[k].extra - known[k - 1].extra);
}
