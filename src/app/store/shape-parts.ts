import {
  isUnusual,
  SHAPE_PART_IDS,
  type ShapeCategory,
  type ShapePart,
  shapeCategoriesOf,
} from '../../core/body/index.ts';
import type { Project } from '../../core/project/index.ts';

/** Questions of shape that stand together. */
export interface PartOfShape {
  readonly part: ShapePart;
  readonly categories: readonly ShapeCategory[];
  /** How many have another answer than the usual one. */
  readonly unusual: number;
  /** Shown from the start. */
  readonly startsOpen: boolean;
}

/** What most bodies differ in. */
const OPEN_PARTS: readonly ShapePart[] = ['posture', 'belly'];

/** The questions this figure has, part by part; parts without any are left out. */
export function partsOfShape({
  figure,
  shape = {},
}: Pick<Project['body'], 'figure' | 'shape'>): PartOfShape[] {
  const all = shapeCategoriesOf(figure, shape);
  return SHAPE_PART_IDS.map((part) => {
    const categories = all.filter((category) => category.part === part);
    const unusual = categories.filter(({ id }) => isUnusual(id, shape)).length;
    return { part, categories, unusual, startsOpen: unusual > 0 || OPEN_PARTS.includes(part) };
  }).filter(({ categories }) => categories.length > 0);
}

/** Every question this figure has, those first that are seen first. */
export function categoriesAsSeen(body: Project['body']): ShapeCategory[] {
  const parts = partsOfShape(body).toSorted((a, b) => Number(b.startsOpen) - Number(a.startsOpen));
  return parts.flatMap(({ categories }) => categories);
}
