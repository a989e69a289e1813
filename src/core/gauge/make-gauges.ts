import {
  failure,
  type Issue,
  type Phrase,
  type Result,
  type Severity,
  success,
  withUsual,
} from '../base/index.ts';
import { boundsOfPolyline, reversePolyline } from '../math/index.ts';
import type { NamedLine, PieceEdge, PieceInput } from '../pattern/index.ts';
import { GAUGE_OPTIONS, type GaugeOptions } from './gauge-options.ts';
import type { GaugedForm } from './gauged-form.ts';
import { type HalfSection, halfOfSection } from './half-of-section.ts';
import { outlineFromSide } from './outline-from-side.ts';
import { phrase } from './phrases.ts';

/** Asks for the side views among the levels. */
export const PROFILE = 'profile';

/**
 * Gauges of card to hold against the filled form from outside: a right and a left half ring for each level asked for, as seen from above,
 * front up; and the front and back of the side view. Outer edges are straight and square, the inner one lies `clearance`
 * outside the form as it is before its cover goes on. Pieces of the material `gauge`, to be cut without allowance. Fails with every unknown level, every
 * option out of its range, and every level asked for by name that has no closed outline; others of these
 * are left out with a warning. O(triangles × gauges).
 */
export function makeGauges(form: GaugedForm, options: GaugeOptions = {}): Result<PieceInput[]> {
  const { clearance, strip } = withUsual(GAUGE_OPTIONS, options);
  const known = [...form.levels.map(({ id }) => id), PROFILE];
  const asked = options.levels ?? known;
  const issues = [...findOutOfRange({ clearance, strip }), ...findUnknown(asked, known)];
  if (issues.length > 0) return failure(issues);
  const made = form.levels
    .filter(({ id }) => asked.includes(id))
    .map((level): Result<PieceInput[]> => {
      const height = level.z - form.base;
      const [right, left] = (['right', 'left'] as const).map((side) => {
        const half = halfOfSection(form.closed, level.z, side, clearance - form.cover);
        return half && ringPiece({ half, side, level, height, clearance, strip });
      });
      if (right && left) return success([right, left]);
      const issue = levelOpen(level.name, options.levels ? 'error' : 'warning');
      return options.levels ? failure([issue]) : success([], [issue]);
    });
  const profiles = asked.includes(PROFILE)
    ? (['front', 'back'] as const).flatMap((side) => {
        const line = outlineFromSide(form.shell, side, clearance - form.cover);
        return line ? [profilePiece(line, side, form, clearance, strip)] : [];
      })
    : [];
  const found = made.flatMap((result) => result.issues);
  if (made.some(({ ok }) => !ok)) return failure(found);
  return success([...made.flatMap((result) => (result.ok ? result.value : [])), ...profiles], found);
}

function edge(id: string, points: readonly number[] | Float64Array): PieceEdge {
  return { kind: 'opening', id, letter: '', points: Float64Array.from(points), marks: [], bodyHalf: 'front' };
}

interface Ring {
  readonly half: HalfSection;
  readonly side: 'right' | 'left';
  readonly level: GaugedForm['levels'][number];
  readonly height: number;
  readonly clearance: number;
  readonly strip: number;
}

/** Tips lie along the middle plane, the outer side along it too: a square held to them tells whether it is held straight. */
function ringPiece({ half, side, level, height, clearance, strip }: Ring): PieceInput {
  const { edge: inner, fromMiddle } = half;
  const { minX, minY, maxX, maxY } = boundsOfPolyline(inner);
  const [outer, low, high] = [side === 'right' ? maxX + strip : minX - strip, minY - strip, maxY + strip];
  const last = inner.length - 2;
  const [first, end] = [inner.subarray(0, 2), inner.subarray(last)];
  // Counter-clockwise round the piece: its opening is run against the form's own direction.
  const [from, to] = side === 'right' ? ([low, high] as const) : ([high, low] as const);
  const tips = side === 'right' ? (['back', 'front'] as const) : (['front', 'back'] as const);
  return {
    id: `gauge-${level.id}-${side}`,
    name: phrase('gauge.ring', { level: level.name }),
    side,
    material: 'gauge',
    edges: [
      edge(tips[0], [...first, first[0], from]),
      edge('outer', [first[0], from, outer, from, outer, to, end[0], to]),
      edge(tips[1], [end[0], to, ...end]),
      edge('inner', reversePolyline(inner)),
    ],
    levelLines: [sideLine(inner, outer)],
    grainWord: phrase('gauge.front-to-back'),
    notes: [
      phrase('gauge.hold-ring', { level: level.name, height }),
      phrase('gauge.clearance', { clearance }),
      ...(['front', 'back'] as const).map((tip) => phrase('gauge.tip', { side: tip, from: fromMiddle[tip] })),
    ],
  };
}

/** Across the strip where the form is widest. */
function sideLine(inner: Float64Array, outer: number): NamedLine {
  let widest = 0;
  for (let i = 2; i < inner.length; i += 2) if (Math.abs(inner[i]) > Math.abs(inner[widest])) widest = i;
  const [x, y] = [inner[widest], inner[widest + 1]];
  return { id: 'side', name: phrase('gauge.side-of-form'), points: Float64Array.of(x, y, outer, y) };
}

/** Foot level with the base edge; every level is drawn across. */
function profilePiece(
  line: Float64Array,
  side: 'front' | 'back',
  { levels, base }: GaugedForm,
  clearance: number,
  strip: number,
): PieceInput {
  const { minX, maxX } = boundsOfPolyline(line);
  const outer = side === 'front' ? maxX + strip : minX - strip;
  const last = line.length - 2;
  const [first, end] = [line.subarray(0, 2), line.subarray(last)];
  const ends = side === 'front' ? (['down', 'up'] as const) : (['up', 'down'] as const);
  return {
    id: `gauge-${PROFILE}-${side}`,
    name: phrase('gauge.profile', { side }),
    side: 'centre',
    material: 'gauge',
    edges: [
      edge(ends[0], [...first, outer, first[1]]),
      edge('outer', [outer, first[1], outer, end[1]]),
      edge(ends[1], [outer, end[1], ...end]),
      edge('inner', reversePolyline(line)),
    ],
    levelLines: levels.map(({ id, name, z }) => ({
      id,
      name: phrase('gauge.height', { level: name, height: z - base }),
      points: Float64Array.of(depthAt(line, z), z, outer, z),
    })),
    grainWord: phrase('gauge.upright'),
    notes: [phrase('gauge.hold-profile'), phrase('gauge.clearance', { clearance })],
  };
}

/** y where the line passes height `z`, of the first passage. */
function depthAt(line: Float64Array, z: number): number {
  for (let i = 0; i + 3 < line.length; i += 2) {
    const [a, b] = [line[i + 1] - z, line[i + 3] - z];
    if (a * b <= 0 && a !== b) return line[i] + (a / (a - b)) * (line[i + 2] - line[i]);
  }
  return line[0];
}

function findUnknown(asked: readonly string[], known: readonly string[]): Issue[] {
  const unknown = asked.filter((name) => !known.includes(name));
  return unknown.map((name) => {
    const message = phrase('gauge.unknown-level', { name, known });
    return { code: 'unknown-gauge', path: 'gauges.levels', message, severity: 'error' };
  });
}

function findOutOfRange(values: Readonly<Record<'clearance' | 'strip', number>>): Issue[] {
  return (['clearance', 'strip'] as const).flatMap((option) => {
    const { min: least, max: most } = GAUGE_OPTIONS[option];
    const value = values[option];
    if (value >= least && value <= most) return [];
    const message = phrase('gauge.out-of-range', { option, value, least, most });
    const limit = value > most ? most : least;
    const path = `gauges.${option}`;
    return [{ code: 'gauge-out-of-range', path, message, severity: 'error', measured: value, limit }];
  });
}

function levelOpen(level: Phrase, severity: Severity): Issue {
  const message = phrase('gauge.level-open', { level });
  return { code: 'gauge-level-open', path: 'gauges.levels', message, severity };
}
