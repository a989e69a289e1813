import { formatBoth, formatDifference, type Issue, mmPerInch, plain, wordsOf } from '../base/index.ts';
import { findMistakes } from './find-mistakes.ts';
import { meanValue } from './known-to-survey.ts';
import { isThirdReadingWanted, limitOfReadings } from './limit-of-readings.ts';
import { FIRST_MEASURES, findMeasure, MEASURES, type MeasureDefinition } from './measures.ts';
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
        error('measure-missing', id, `${nameOf(id)} is missing; the five first measures are needed.`),
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
          `There is no measure called “${id}”. Known: ${MEASURES.map((m) => m.id).join(', ')}.`,
        ),
      );
      continue;
    }
    issues.push(...checkValue(measure, value, input.figure));
  }
  issues.push(...checkReadings(input));
  if (!issues.some((i) => i.severity === 'error'))
    issues.push(...checkRelations(input), ...findMistakes(input));
  return issues;
}

function checkValue(measure: MeasureDefinition, value: MeasureValue, figure: Figure): Issue[] {
  if (typeof value === 'number') return checkNumber(measure, value, measure.id, figure);
  if (!measure.sided) {
    return [
      error('measure-not-sided', measure.id, `${wordsOf(measure.name)} takes one value, not left and right.`),
    ];
  }
  const issues = (['left', 'right'] as const).flatMap((side) =>
    checkNumber(measure, value[side], `${measure.id}.${side}`, figure),
  );
  return issues.some((i) => i.severity === 'error') ? issues : [...issues, ...checkSides(measure, value)];
}

/** Left and right unlike by this much are asked about, and by this much refused, mm (common practice, no source). */
const SIDES_ASK = 15;
const SIDES_REFUSE = 60;

function checkSides(measure: MeasureDefinition, { left, right }: SidedValue): Issue[] {
  const gap = Math.abs(left - right);
  const told = `${wordsOf(measure.name)} differs by ${formatDifference(gap)} between left, ${formatBoth(left)}, and right, ${formatBoth(right)}`;
  if (gap > SIDES_REFUSE) {
    return [
      error(
        'sides-contradict',
        measure.id,
        `${told}; at most ${formatBoth(SIDES_REFUSE)} can be made. Re-measure both sides.`,
        gap,
        SIDES_REFUSE,
      ),
    ];
  }
  if (gap > SIDES_ASK) {
    return [
      warning(
        'sides-differ',
        measure.id,
        `${told}. Some bodies are so: if a second measuring gives the same, leave it so, or give one value for both.`,
        gap,
        SIDES_ASK,
      ),
    ];
  }
  return [];
}

function checkNumber(measure: MeasureDefinition, value: number, path: string, figure: Figure): Issue[] {
  const [low, high] = measure.range[figure];
  if (!Number.isFinite(value))
    return [error('measure-not-a-number', path, `${wordsOf(measure.name)} is not a number.`)];
  if (value <= 0) {
    return [
      error(
        'measure-not-positive',
        path,
        `${wordsOf(measure.name)} is ${formatBoth(value)}; it must be above 0.`,
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
        `${wordsOf(measure.name)} is ${formatBoth(value)}; most adults lie between ${formatBoth(low)} and ${formatBoth(high)}. If a second measuring gives the same, leave it so.`,
        value,
        limit,
      ),
    ];
  }
  const limit = value < refuseBelow ? refuseBelow : refuseAbove;
  const hint = hintOfUnit(value, low, high);
  return [
    error(
      'measure-out-of-range',
      path,
      `${wordsOf(measure.name)} is ${formatBoth(value)}; it must lie between ${formatBoth(refuseBelow)} and ${formatBoth(refuseAbove)}.${hint}`,
      value,
      limit,
    ),
  ];
}

/** What to write in the file, which is in millimetres, if the number would do in another unit; else nothing. */
function hintOfUnit(value: number, low: number, high: number): string {
  const fits = (factor: number): boolean => value * factor >= 0.9 * low && value * factor <= 1.1 * high;
  const hint = (unit: string, factor: number): string =>
    ` If the file was written in ${unit}, it must say ${Number((value * factor).toFixed(1))}: files are in millimetres.`;
  if (fits(10)) return hint('centimetres', 10);
  return fits(mmPerInch) ? hint('inches', mmPerInch) : '';
}

function checkReadings(input: BodyInput): Issue[] {
  const issues: Issue[] = [];
  for (const [id, readings] of Object.entries(input.readings ?? {})) {
    const measure = findMeasure(id);
    if (!measure) {
      issues.push({
        ...error('unknown-measure', id, `There is no measure called “${id}”.`),
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
          `The two readings of ${wordsOf(measure.name)} differ by ${formatDifference(spread)}; up to ${formatDifference(limit)} is usual. Take a third.`,
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
  const below = (small: string, large: string, factor: number, why: string): void => {
    const a = get(small);
    const b = get(large);
    if (a === undefined || b === undefined || a < factor * b) return;
    issues.push(
      error(
        'measures-contradict',
        small,
        `${nameOf(small)}, ${formatBoth(a)}, ${why} ${nameOf(large)}, ${formatBoth(b)}: re-measure both.`,
        a,
        factor * b,
      ),
    );
  };
  below('neckToBustPoint', 'frontWaistLength', 1, 'must be shorter than');
  below('bustPointSpan', 'bustGirth', 0.5, 'must be less than half of');
  below('acrossBack', 'bustGirth', 0.5, 'must be less than half of');
  below('acrossFront', 'bustGirth', 0.5, 'must be less than half of');
  below('waistToHighHip', 'waistToHip', 1, 'must be shorter than');
  below('shoulderDrop', 'shoulderLength', 1, 'must be less than');
  below('waistHeight', 'napeHeight', 1, 'must be below');
  for (const level of ['bust', 'underbust', 'waist', 'highHip', 'hip']) issues.push(...checkBox(level, get));
  issues.push(...checkConfirmations(get, input.figure));
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
          `${nameOf(id)}, ${formatBoth(size)}, must be less than half of ${nameOf(`${level}Girth`)}, ${formatBoth(girth)}.`,
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
        `${nameOf(`${level}Girth`)} is ${formatBoth(girth)}, but a body ${formatBoth(width)} wide and ${formatBoth(depth)} deep measures between ${formatBoth(least)} and ${formatBoth(most)} round. Re-measure the three.`,
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
      warning(
        'please-confirm',
        small,
        `${nameOf(small)}, ${formatBoth(a)}, is not below ${nameOf(large)}, ${formatBoth(b)}. Some bodies are so: if a second measuring gives the same, leave it so.`,
        a,
        b,
      ),
    );
  };
  ask('waistGirth', 'bustGirth', ['bust', 'chest']);
  ask('waistGirth', 'hipGirth', ['bust', 'chest']);
  ask('underbustGirth', 'bustGirth', ['bust']);
  return issues;
}

function nameOf(id: string): string {
  return wordsOf(findMeasure(id)?.name ?? plain(id));
}

function error(code: string, id: string, message: string, measured?: number, limit?: number): Issue {
  return makeIssue('error', code, id, message, measured, limit);
}

function warning(code: string, id: string, message: string, measured?: number, limit?: number): Issue {
  return makeIssue('warning', code, id, message, measured, limit);
}

function makeIssue(
  severity: 'error' | 'warning',
  code: string,
  id: string,
  message: string,
  measured?: number,
  limit?: number,
): Issue {
  return {
    code,
    path: `measures.${id}`,
    message: plain(message),
    severity,
    ...(measured === undefined ? {} : { measured }),
    ...(limit === undefined ? {} : { limit }),
  };
}
