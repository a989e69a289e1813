import type { Issue } from '../base/index.ts';
import type { ArmMeasures } from './arm-frames.ts';
import { MET_WITHIN } from './fit-issues.ts';
import { type Arm, makeRightArm, mirrorArm, traceArmTapes } from './make-arm.ts';
import { findMeasure, MEASURES, nameOfMeasure } from './measures.ts';
import { phrase } from './phrases.ts';
import { liftLoop, pathLength } from './tape-paths.ts';
import type { TapeContext } from './tape-rule.ts';
import type { BodyInput, TapeReading } from './types.ts';

export interface FittedArms {
  readonly arms: readonly Arm[];
  readonly tapes: readonly TapeReading[];
  /** n × 3 paths, keyed like `tapes`. */
  readonly paths: Readonly<Record<string, Float64Array>>;
  readonly issues: readonly Issue[];
}

const ARM_IDS = MEASURES.filter((m) => m.group === 'arms').map((m) => m.id) as (keyof ArmMeasures)[];

/** Both arms when all five arm measures are given; none, and why, when only some are. */
export function fitArms(input: BodyInput, context: TapeContext): FittedArms {
  const given = ARM_IDS.filter((id) => input.measures[id] !== undefined);
  if (given.length === 0) return { arms: [], tapes: [], paths: {}, issues: [] };
  const missing = ARM_IDS.filter((id) => !given.includes(id));
  if (missing.length > 0) return { arms: [], tapes: [], paths: {}, issues: [incomplete(given[0], missing)] };
  const arms: Arm[] = [];
  const tapes: TapeReading[] = [];
  const paths: Record<string, Float64Array> = {};
  const issues: Issue[] = [];
  for (const side of ['right', 'left'] as const) {
    const wanted = wantedOn(input, side);
    const arm = makeArmOn(context, side, wanted);
    if (!arm) issues.push(tooShort(wanted.shoulderToElbow));
    else {
      arms.push(arm);
      for (const { tape, path } of readArm(arm, wanted, input)) {
        tapes.push(tape);
        paths[tape.id] = path;
      }
    }
  }
  return { arms, tapes, paths, issues };
}

function wantedOn(input: BodyInput, side: 'right' | 'left'): ArmMeasures {
  const entries = ARM_IDS.map((id) => {
    const value = input.measures[id];
    return [id, typeof value === 'number' ? value : value[side]];
  });
  return Object.fromEntries(entries);
}

function makeArmOn(context: TapeContext, side: 'right' | 'left', wanted: ArmMeasures): Arm | null {
  if (side === 'right') return makeRightArm(liftLoop(context.evaluator, context.armholes.right), wanted);
  const left = liftLoop(context.evaluator, context.armholes.left);
  const mirrored = new Float64Array(left.length);
  const n = left.length / 3;
  for (let i = 0; i < n; i++) {
    const from = 3 * ((n - i) % n);
    mirrored.set([-left[from], left[from + 1], left[from + 2]], 3 * i);
  }
  const arm = makeRightArm(mirrored, wanted);
  return arm && mirrorArm(arm);
}

/** One reading a measure, or one a side where the sides were typed apart. */
function readArm(
  arm: Arm,
  wanted: ArmMeasures,
  input: BodyInput,
): { tape: TapeReading; path: Float64Array }[] {
  const traced = traceArmTapes(arm);
  return ARM_IDS.flatMap((id) => {
    const isSided = typeof input.measures[id] !== 'number';
    if (!isSided && arm.side === 'left') return [];
    const kind = findMeasure(id)?.kind === 'girth' ? 'girth' : 'length';
    const got = pathLength(traced[id], kind === 'girth');
    const tape: TapeReading = {
      id: isSided ? `${id}.${arm.side}` : id,
      kind,
      target: wanted[id],
      got,
      status: Math.abs(got - wanted[id]) <= MET_WITHIN ? 'met' : 'conflict',
    };
    return [{ tape, path: traced[id] }];
  });
}

function incomplete(first: string, missing: readonly string[]): Issue {
  return {
    code: 'arm-incomplete',
    path: `measures.${first}`,
    severity: 'warning',
    message: phrase('body.arms-incomplete', { missing: missing.map(nameOfMeasure) }),
  };
}

function tooShort(length: number): Issue {
  return {
    code: 'arm-too-short',
    path: 'measures.shoulderToElbow',
    severity: 'warning',
    message: phrase('body.arm-too-short', { length }),
    measured: length,
  };
}
