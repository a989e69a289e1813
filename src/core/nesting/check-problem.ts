import type { Issue, Phrase } from '../base/index.ts';
import { crossesItself } from './crosses-itself.ts';
import { withoutRepeats } from './grow-outline.ts';
import { boxOf } from './make-shapes.ts';
import { phrase } from './phrases.ts';
import { turnVector } from './turn-vector.ts';
import type { NestItem, NestProblem, NestTurn } from './types.ts';

/** What turning an outline may add to its width. */
const ROUNDING = 1e-9;

/** Everything that stands in the way of laying the items at all; empty when nothing does. */
export function checkProblem(problem: NestProblem): Issue[] {
  const { items, width, gap, flaws = [], sheets } = problem;
  const issues: Issue[] = [];
  if (!sheets && !(width !== undefined && width > 0 && width < Infinity))
    issues.push(
      issue('strip-without-width', 'width', phrase('nesting.strip-without-width', { width: width ?? 0 })),
    );
  if (!(gap >= 0 && gap < Infinity))
    issues.push(issue('gap-negative', 'gap', phrase('nesting.gap-negative', { gap })));
  flaws.forEach((flaw, k) => {
    if (!isOutline(flaw))
      issues.push(issue('flaw-not-finite', `flaws.${k}`, phrase('nesting.flaw-not-finite', { flaw: k + 1 })));
  });
  sheets?.forEach((sheet, k) => {
    const [path, values] = [`sheets.${k}`, { sheet: k + 1 }];
    if (!isOutline(sheet.outline) || !sheet.flaws.every(isOutline))
      issues.push(issue('sheet-not-finite', path, phrase('nesting.sheet-not-finite', values)));
    else if (crossesItself(withoutRepeats(sheet.outline)))
      issues.push(issue('sheet-crosses-itself', path, phrase('nesting.sheet-crosses-itself', values)));
  });
  const known = new Map<string, boolean>();
  const crosses = (outline: Float64Array): boolean => {
    const key = outline.join();
    const found = known.get(key) ?? crossesItself(withoutRepeats(outline));
    known.set(key, found);
    return found;
  };
  items.forEach((item, k) => {
    issues.push(...checkItem(item, `items.${k}`, crosses));
  });
  return issues.length > 0 ? issues : items.flatMap((item, k) => checkRoom(item, `items.${k}`, problem));
}

function issue(code: string, path: string, message: Phrase, of: Partial<Issue> = {}): Issue {
  return { code, path, message, severity: 'error', ...of };
}

function isOutline(outline: Float64Array): boolean {
  return outline.length >= 6 && outline.length % 2 === 0 && outline.every(Number.isFinite);
}

function checkItem(item: NestItem, path: string, crosses: (outline: Float64Array) => boolean): Issue[] {
  const values = { item: item.id };
  const places = [item.held, item.start].flatMap((place) =>
    place ? [place.x, place.y, item.turns[place.turn]?.angle ?? Number.NaN] : [],
  );
  if (
    !isOutline(item.outline) ||
    ![...places, ...item.turns.map(({ angle }) => angle)].every(Number.isFinite)
  )
    return [issue('item-not-finite', path, phrase('nesting.item-not-finite', values))];
  if (item.turns.length === 0)
    return [issue('item-without-turn', path, phrase('nesting.item-without-turn', values))];
  return crosses(item.outline)
    ? [issue('item-crosses-itself', path, phrase('nesting.item-crosses-itself', values))]
    : [];
}

/** An item that no turn brings onto strip or sheet. */
function checkRoom(item: NestItem, path: string, { width = 0, sheets }: NestProblem): Issue[] {
  if (item.held) return [];
  const boxes = item.turns.map((turn) => boxInTurn(item.outline, turn));
  if (!sheets) {
    const needed = Math.min(...boxes.map(([, bottom, , top], k) => widthFor(bottom, top, item.turns[k])));
    if (needed <= width * (1 + ROUNDING)) return [];
    const message = phrase('nesting.item-too-wide', { item: item.id, needed, width });
    return [issue('item-too-wide', path, message, { measured: needed, limit: width })];
  }
  const rooms = sheets.map(({ outline }) => boxOf(outline));
  const lacks = boxes.map((box) => Math.min(...rooms.map((room) => lackOf(box, room))));
  const least = Math.min(...lacks);
  if (least <= 1 + ROUNDING) return [];
  const [left, bottom, right, top] = boxes[lacks.indexOf(least)];
  const size = { length: right - left, height: top - bottom };
  return [issue('item-too-large', path, phrase('nesting.item-too-large', { item: item.id, ...size }))];
}

type Box = ReturnType<typeof boxOf>;

/** How much of it is too much: at most 1 where the box has room in the other. */
function lackOf([left, bottom, right, top]: Box, [l, b, r, t]: Box): number {
  return Math.max((right - left) / (r - l), (top - bottom) / (t - b));
}

/** The least width of a strip on which an item of this bottom and top about its origin has a place. */
function widthFor(bottom: number, top: number, { latticeY }: NestTurn): number {
  if (!latticeY) return top - bottom;
  const { period, phase } = latticeY;
  return phase + period * Math.ceil((-bottom - phase) / period - ROUNDING) + top;
}

function boxInTurn(outline: Float64Array, { angle, mirrored }: NestTurn): Box {
  const { cosine, sine } = turnVector(angle);
  const turned = outline.slice();
  for (let i = 0; i < outline.length; i += 2) {
    const x = mirrored ? -outline[i] : outline[i];
    turned[i] = cosine * x - sine * outline[i + 1];
    turned[i + 1] = sine * x + cosine * outline[i + 1];
  }
  return boxOf(turned);
}
