import type { Issue, Phrase } from '../base/index.ts';
import { crossesItself } from './crosses-itself.ts';
import { withoutRepeats } from './grow-outline.ts';
import { boxOf } from './make-shapes.ts';
import { phrase } from './phrases.ts';
import { turnVector } from './turn-vector.ts';
import type { NestItem, NestProblem, NestTurn } from './types.ts';

/** Everything that stands in the way of laying the items at all; empty when nothing does. */
export function checkProblem(problem: NestProblem): Issue[] {
  const { items, width, flaws = [], sheets } = problem;
  const issues: Issue[] = [];
  if (!sheets && !(width !== undefined && width > 0 && width < Infinity))
    issues.push(
      issue('strip-without-width', 'width', phrase('nesting.strip-without-width', { width: width ?? 0 })),
    );
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
  const places = [item.held, item.start].flatMap((place) => (place ? [place.x, place.y] : []));
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
  const sizes = item.turns.map((turn) => sizeOf(item.outline, turn));
  if (!sheets) {
    const needed = Math.min(...sizes.map(({ height }) => height));
    if (needed <= width) return [];
    const message = phrase('nesting.item-too-wide', { item: item.id, needed, width });
    return [issue('item-too-wide', path, message, { measured: needed, limit: width })];
  }
  const rooms = sheets.map(({ outline }) => sizeOf(outline));
  const lacks = sizes.map(({ length, height }) =>
    Math.min(...rooms.map((room) => Math.max(length / room.length, height / room.height))),
  );
  const least = Math.min(...lacks);
  if (least <= 1) return [];
  const nearest = sizes[lacks.indexOf(least)];
  return [issue('item-too-large', path, phrase('nesting.item-too-large', { item: item.id, ...nearest }))];
}

/** Of the box. */
function sizeOf(outline: Float64Array, turn: NestTurn = { angle: 0, mirrored: false }) {
  const { cosine, sine } = turnVector(turn.angle);
  const turned = outline.slice();
  for (let i = 0; i < outline.length; i += 2) {
    const x = turn.mirrored ? -outline[i] : outline[i];
    turned[i] = cosine * x - sine * outline[i + 1];
    turned[i + 1] = sine * x + cosine * outline[i + 1];
  }
  const [left, bottom, right, top] = boxOf(turned);
  return { length: right - left, height: top - bottom };
}
