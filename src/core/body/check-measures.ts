import { type Issue, mmPerInch, type Phrase } from '../base/index.ts';
import { checkBackLength } from './check-back-length.ts';
import { findGirthsOff } from './find-girths-off.ts';
import { findMistakes } from './find-mistakes.ts';
import { meanValue } from './known-to-survey.ts';
import { isConfirmed, isThirdReadingWanted, limitOfReadings } from './limit-of-readings.ts';
import { FIRST_MEASURES, findMeasure, MEASURES, type MeasureDefinition, nameOfMeasure } from './measures.ts';
import { type MeasureRule, phrase } from './phrases.ts';
import { rangeOfMeasure } from './range-of-measure.ts';
import { checkStance } from './read-stance.ts';
import type { BodyInput, Figure, MeasureValue, SidedValue } from './types.ts';

/** Beyond the working range by this factor a measure is refused, not only doubted. */
const REFUSE_BELOW = 0.7;
const REFUSE_ABOVE = 1.3;

/**
 * Faults a person can mend before any fitting: missing, negative, in the wrong unit, absurd, or contradicting each
 * other. All at once, each naming field and limit. Rules: geometry where marked hard, common practice where soft.
 */
export function checkMeasures(input: BodyInput): readonly Issue[] {
  const issues: Issue[] = [];
  for (const id of FIRST_MEASURES) {
    if (input.measures[id] === undefined) {
      issues.push(
        error('measure-missing', id, phrase('body.measure-missing', { measure: nameOfMeasure(id) })),
      );
    }
  }
  for (const [id, value] of Object.entries(input.measures)) {
    const measure = findMeasure(id);
    if (!measure) {
      issues.push(
        error(
          'unknown-measure',
          id,
          phrase('body.measure-unknown', { id, known: MEASURES.map((m) => m.id) }),
        ),
      );
      continue;
    }
    issues.push(...checkValue(measure, value, input));
  }
  issues.push(...checkReadings(input));
  if (!issues.some((i) => i.severity === 'error')) issues.push(...checkRelations(input));
  // Of the impossible nothing need be foretold: it is mended first.
  if (!issues.some((i) => i.severity === 'error' || i.code === 'back-shorter-than-height'))
    issues.push(...findGirthsOff(input), ...findMistakes(input));
  return issues.filter((issue) => !isSettled(issue, input));
}

/** Two readings agree: whatever was asked about the measure is answered. What is wrong with it stays wrong. */
function isSettled({ path, severity }: Issue, input: BodyInput): boolean {
  const [section, id] = path.split('.');
  return severity === 'warning' && section === 'measures' && id !== undefined && isConfirmed(input, id);
}

function checkValue(measure: MeasureDefinition, value: MeasureValue, input: BodyInput): Issue[] {
  if (typeof value === 'number') return checkNumber(measure, value, measure.id, input);
  if (!measure.sided) {
    return [
      error('measure-not-sided', measure.id, phrase('body.measure-not-sided', { measure: measure.name })),
    ];
  }
  const issues = (['left', 'right'] as const).flatMap((side) =>
    checkNumber(measure, value[side], `${measure.id}.${side}`, input),
  );
  return issues.some((i) => i.severity === 'error') ? issues : [...issues, ...checkSides(measure, value)];
}

/** Left and right unlike by this much are asked about, mm (common practice, no source). */
const SIDES_ASK = 15;
/**
 * And by this much refused, mm: a curved spine drops one shoulder by up to 90, and one hip may stand 60 higher than the other;
 * more than that no form is made of (common practice, no source).
 */
const SIDES_REFUSE = 60;
const SIDES_REFUSE_OF: Readonly<Record<string, number>> = { shoulderDrop: 90 };

function checkSides(measure: MeasureDefinition, { left, right }: SidedValue): Issue[] {
  const gap = Math.abs(left - right);
  const told = { measure: measure.name, gap, left, right };
  const limit = SIDES_REFUSE_OF[measure.id] ?? SIDES_REFUSE;
  if (gap > limit) {
    return [
      error('sides-contradict', measure.id, phrase('body.sides-contradict', { ...told, limit }), gap, limit),
    ];
  }
  if (gap > SIDES_ASK) {
    return [warning('sides-differ', measure.id, phrase('body.sides-differ', told), gap, SIDES_ASK)];
  }
  return [];
}

function checkNumber(measure: MeasureDefinition, value: number, path: string, input: BodyInput): Issue[] {
  const [low, high] = rangeOfMeasure(measure, input);
  if (!Number.isFinite(value))
    return [
      error('measure-not-a-number', path, phrase('body.measure-not-a-number', { measure: measure.name })),
    ];
  if (value <= 0) {
    return [
      error(
        'measure-not-positive',
        path,
        phrase('body.measure-not-positive', { measure: measure.name, value }),
        value,
        0,
      ),
    ];
  }
  const refuseBelow = REFUSE_BELOW * low;
  const refuseAbove = REFUSE_ABOVE * high;
  if (value >= refuseBelow && value <= refuseAbove) {
    if (value >= low && value <= high) return [];
    const limit = value < low ? low : high;
    return [
      warning(
        'measure-unusual',
        path,
        phrase('body.measure-unusual', { measure: measure.name, value, low, high }),
        value,
        limit,
      ),
    ];
  }
  const limit = value < refuseBelow ? refuseBelow : refuseAbove;
  const meant = unitMeant(value, low, high);
  return [
    error(
      'measure-out-of-range',
      path,
      phrase('body.measure-out-of-range', {
        measure: measure.name,
        value,
        low: refuseBelow,
        high: refuseAbove,
        ...(meant ? { meant } : {}),
      }),
      value,
      limit,
    ),
  ];
}

/** What to write in the file, which is in millimetres, if the number would do in another unit; else nothing. */
function unitMeant(value: number, low: number, high: number) {
  const fits = (factor: number): boolean => value * factor >= 0.9 * low && value * factor <= 1.1 * high;
  if (fits(10)) return { unit: 'cm', inFile: value * 10 } as const;
  return fits(mmPerInch) ? ({ unit: 'in', inFile: value * mmPerInch } as const) : undefined;
}

function checkReadings(input: BodyInput): Issue[] {
  const issues: Issue[] = [];
  for (const [id, readings] of Object.entries(input.readings ?? {})) {
    const measure = findMeasure(id);
    if (!measure) {
      issues.push({
        ...error('unknown-measure', id, phrase('body.measure-unknown', { id })),
        path: `readings.${id}`,
      });
      continue;
    }
    if (isThirdReadingWanted(measure, input.figure, readings)) {
      const limit = limitOfReadings(measure, input.figure);
      const spread = Math.abs(readings[0] - readings[1]);
      issues.push({
        ...warning(
          'readings-differ',
          id,
          phrase('body.readings-differ', { measure: measure.name, gap: spread, limit }),
          spread,
          limit,
        ),
        path: `readings.${id}`,
      });
    }
  }
  return issues;
}

function checkRelations(input: BodyInput): Issue[] {
  const issues: Issue[] = [];
  const get = (id: string): number | undefined =>
    input.measures[id] === undefined ? undefined : meanValue(input.measures[id]);
  const below = (small: string, large: string, factor: number, rule: MeasureRule): void => {
    const a = get(small);
    const b = get(large);
    if (a === undefined || b === undefined || a < factor * b) return;
    issues.push(
      error(
        'measures-contradict',
        small,
        phrase('body.measures-contradict', { ...namePair(small, a, large, b), rule }),
        a,
        factor * b,
      ),
    );
  };
  below('neckToBustPoint', 'frontWaistLength', 1, 'shorter');
  below('bustPointSpan', 'bustGirth', 0.5, 'less-than-half');
  below('acrossBack', 'bustGirth', 0.5, 'less-than-half');
  below('acrossFront', 'bustGirth', 0.5, 'less-than-half');
  below('waistToHighHip', 'waistToHip', 1, 'shorter');
  below('shoulderDrop', 'shoulderLength', 1, 'less');
  below('waistHeight', 'napeHeight', 1, 'lower');
  for (const level of ['bust', 'underbust', 'waist', 'highHip', 'hip']) issues.push(...checkBox(level, get));
  issues.push(...checkBackLength(get), ...checkConfirmations(get, input.figure), ...checkStance(input));
  return issues;
}

/** A convex section in a w × d box has 2 √(w² + d²) ≤ girth ≤ 2 (w + d): the rhombus and the rectangle. Hard. */
function checkBox(level: string, get: (id: string) => number | undefined): Issue[] {
  const girth = get(`${level}Girth`);
  const width = get(`${level}Width`);
  const depth = get(`${level}Depth`);
  if (girth === undefined) return [];
  const issues: Issue[] = [];
  for (const [id, size] of [
    [`${level}Width`, width],
    [`${level}Depth`, depth],
  ] as const) {
    if (size !== undefined && 2 * size >= girth) {
      issues.push(
        error(
          'measures-contradict',
          id,
          phrase('body.half-of-girth', namePair(id, size, `${level}Girth`, girth)),
          size,
          girth / 2,
        ),
      );
    }
  }
  if (width === undefined || depth === undefined) return issues;
  const least = 2 * Math.hypot(width, depth);
  const most = 2 * (width + depth);
  if (girth < least || girth > most) {
    issues.push(
      error(
        'measures-contradict',
        `${level}Girth`,
        phrase('body.girth-of-box', {
          measure: nameOfMeasure(`${level}Girth`),
          girth,
          width,
          depth,
          least,
          most,
        }),
        girth,
        girth < least ? least : most,
      ),
    );
  }
  return issues;
}

/** Rare but real bodies: ask, never refuse (shares in the survey: hip below bust about 9 %, waist above bust about 1 %). */
function checkConfirmations(get: (id: string) => number | undefined, figure: Figure): Issue[] {
  const issues: Issue[] = [];
  const ask = (small: string, large: string, figures: readonly Figure[]): void => {
    const a = get(small);
    const b = get(large);
    if (a === undefined || b === undefined || a < b || !figures.includes(figure)) return;
    issues.push(
      warning('please-confirm', small, phrase('body.please-confirm', namePair(small, a, large, b)), a, b),
    );
  };
  ask('waistGirth', 'bustGirth', ['bust', 'chest']);
  ask('waistGirth', 'hipGirth', ['bust', 'chest']);
  ask('underbustGirth', 'bustGirth', ['bust']);
  return issues;
}

function namePair(first: string, firstValue: number, second: string, secondValue: number) {
  return { first: nameOfMeasure(first), firstValue, second: nameOfMeasure(second), secondValue };
}

function error(code: string, id: string, message: Phrase, measured?: number, limit?: number): Issue {
  return makeIssue('error', code, id, message, measured, limit);
}

function warning(code: string, id: string, message: Phrase, measured?: number, limit?: number): Issue {
  return makeIssue('warning', code, id, message, measured, limit);
}

function makeIssue(
  severity: 'error' | 'warning',
  code: string,
  id: string,
  message: Phrase,
  measured?: number,
  limit?: number,
): Issue {
  return {
    code,
    path: `measures.${id}`,
    message,
    severity,
    ...(measured === undefined ? {} : { measured }),
    ...(limit === undefined ? {} : { limit }),
  };
}
