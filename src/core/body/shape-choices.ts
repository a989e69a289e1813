import type { Issue, Phrase } from '../base/index.ts';
import { phrase } from './phrases.ts';
import { SHAPE_PART_IDS, SHAPE_PARTS, type ShapePart } from './shape-parts.ts';
import {
  type AnswerTo,
  QUESTIONS,
  type Question,
  SECTION_CHOICES,
  SECTION_LEVELS,
  type SectionLevel,
  type ShapeCategoryId,
  type ShapeChoiceId,
} from './shape-questions.ts';
import type { Figure } from './types.ts';

/** A question the tape cannot answer. Every choice is a number underneath; a typed number is used as it is. */
export interface ShapeCategory {
  readonly id: ShapeCategoryId;
  readonly part: ShapePart;
  readonly name: Phrase;
  readonly why: Phrase;
  /** What the number means. */
  readonly unit: 'ratio' | 'mm' | 'degrees';
  readonly range: readonly [number, number];
  readonly choices: readonly { readonly id: ShapeChoiceId; readonly name: Phrase; readonly value: number }[];
  readonly usual: ShapeChoiceId;
  /** Asked of this figure only: the other has nothing it could change. */
  readonly onlyFigure?: Figure;
  /** It changes nothing while this question has its usual answer. */
  readonly onlyWith?: ShapeCategoryId;
}

/** A question that is not yet sorted under a part. */
type Asked = Omit<ShapeCategory, 'part'>;

const ASKED = new Map(
  [...SECTION_LEVELS.map(askSection), ...QUESTIONS.map(askQuestion)].map((one) => [one.id, one]),
);

/** All questions, part by part. */
export const SHAPE_CATEGORIES: readonly ShapeCategory[] = SHAPE_PART_IDS.flatMap((part) =>
  SHAPE_PARTS[part].map((id) => ({ ...ASKED.get(id)!, part })),
);

function askSection(level: SectionLevel): Asked {
  return {
    id: `${level}Section`,
    name: phrase(`shape.${level}Section.name`),
    why: phrase(`shape.${level}Section.why`),
    unit: 'ratio',
    range: [-0.2, 0.25],
    choices: SECTION_CHOICES.map((choice) => ({ ...choice, name: phrase(`shape.section.${choice.id}`) })),
    usual: 'middling',
  };
}

function askQuestion(question: Question): Asked {
  return {
    ...question,
    name: phrase(`shape.${question.id}.name`),
    why: phrase(`shape.${question.id}.why`),
    choices: question.choices.map((choice) => ({
      ...choice,
      // The type of both ids together forgets which choice belongs to which question.
      name: phrase(`shape.${question.id}.${choice.id}` as AnswerTo<Question>),
    })),
  };
}

/** The questions that change a body of this figure; with the answers given, those alone that then change anything. */
export function shapeCategoriesOf(figure: Figure, answers?: ShapeAnswers): readonly ShapeCategory[] {
  return SHAPE_CATEGORIES.filter(
    ({ onlyFigure, onlyWith }) =>
      (onlyFigure === undefined || onlyFigure === figure) &&
      (onlyWith === undefined || answers === undefined || isUnusual(onlyWith, answers)),
  );
}

/** Choices or numbers by question, as a file has them. */
type ShapeAnswers = Readonly<Record<string, string | number>>;

/** True when a question has another answer than the usual one. */
export function isUnusual(id: ShapeCategoryId, answers: ShapeAnswers): boolean {
  const category = SHAPE_CATEGORIES.find((one) => one.id === id);
  const usual = category?.choices.find((choice) => choice.id === category.usual);
  const answer = answers[id] ?? usual?.id;
  return answer !== usual?.id && answer !== usual?.value;
}

/** The numbers behind the choices, those that this figure is not asked as usual; unknown categories and choices are told, never guessed. */
export function readShapeChoices(
  shape: ShapeAnswers,
  figure: Figure,
): {
  readonly numbers: Readonly<Record<string, number>>;
  readonly issues: readonly Issue[];
} {
  const issues: Issue[] = [];
  const numbers: Record<string, number> = {};
  for (const category of SHAPE_CATEGORIES) {
    numbers[category.id] = category.choices.find((c) => c.id === category.usual)?.value ?? 0;
  }
  for (const [id, value] of Object.entries(shape)) {
    const category = SHAPE_CATEGORIES.find((c) => c.id === id);
    const path = `shape.${id}`;
    if (!category) {
      const known = SHAPE_CATEGORIES.map((c) => c.id);
      issues.push({
        code: 'unknown-shape',
        path,
        severity: 'error',
        message: phrase('body.shape-unknown', { id, known }),
      });
      continue;
    }
    const number = typeof value === 'number' ? value : category.choices.find((c) => c.id === value)?.value;
    if (number === undefined) {
      const choices = category.choices.map((c) => c.id);
      issues.push({
        code: 'unknown-choice',
        path,
        severity: 'error',
        message: phrase('body.choice-unknown', { category: category.name, choices, given: String(value) }),
      });
    } else if (!(number >= category.range[0] && number <= category.range[1])) {
      const [least, most] = category.range;
      issues.push({
        code: 'shape-out-of-range',
        path,
        severity: 'error',
        measured: number,
        limit: number < least ? least : most,
        message: phrase('body.shape-out-of-range', { category: category.name, value: number, least, most }),
      });
    } else if ((category.onlyFigure ?? figure) === figure) numbers[id] = number;
  }
  return { numbers, issues };
}
