import { type Finding, type NameOf, partMissing } from './finding.ts';
import { wayOfSeam, wayToFreeEdge } from './judge-seam.ts';
import { LAP_ROLLED, LEAST_ALLOWANCE, SEW_RATIO } from './limits-of-work.ts';
import { phrase } from './phrases.ts';
import type { SewingState } from './sewing-state.ts';
import type { Joint, Method, Op, WorkInput } from './types.ts';

/** Sews two edges together in the way the step tells, and judges that way. */
export function joinEdges(
  { joint: id, how }: Extract<Op, { does: 'join' }>,
  state: SewingState,
  input: WorkInput,
  name: NameOf,
): Finding[] {
  const joint = input.joints.find((one) => one.id === id);
  if (!joint) return [partMissing(id, name)];
  const found = [
    ...joint.parts.filter((part) => !state.made.has(part)).map((part) => partMissing(part, name)),
    ...judgeWay(joint, how, state, input, name),
    ...judgeAllowance(joint, how),
    ...judgeStrap(joint, state, input, name),
  ];
  for (const part of joint.parts) state.used.add(part);
  state.joined.set(id, (state.joined.get(id) ?? 0) + 1);
  return found;
}

function judgeWay(
  { id, name: seam, isShell }: Joint,
  how: Method,
  state: SewingState,
  input: WorkInput,
  name: NameOf,
): Finding[] {
  const isJoined = (other: string): boolean => state.joined.has(other);
  if (how === 'lap') {
    if (wayToFreeEdge(input, id, isJoined) <= LAP_ROLLED) return [];
    return [{ rule: 'no-free-edge', reason: phrase('sewing.no-free-edge', { seam, most: LAP_ROLLED }) }];
  }
  if (!isShell || (how !== 'plain' && how !== 'packed')) return [];
  const way = wayOfSeam(input, id, isJoined);
  if (way.kind === 'plain') return [];
  if (how === 'plain') return [{ rule: 'packed-untold', reason: phrase('sewing.packed-untold', { seam }) }];
  const stiff = [...state.inserted].find(
    (part) => input.solids.find((solid) => solid.id === part)?.stuff === 'rigid',
  );
  if (stiff) {
    return [{ rule: 'pack-too-tight', reason: phrase('sewing.pack-is-stiff', { seam, part: name(stiff) }) }];
  }
  const { mouth, pack } = way;
  if (mouth >= SEW_RATIO * pack) return [];
  const reason = phrase('sewing.pack-too-tight', { seam, mouth, pack, least: SEW_RATIO });
  return [{ rule: 'pack-too-tight', reason }];
}

function judgeAllowance({ name: seam, allowances }: Joint, how: Method): Finding[] {
  const least = LEAST_ALLOWANCE[how];
  const allowance = Math.min(...allowances);
  // Inches are rounded down to a fraction.
  if (allowances.length === 0 || allowance >= least - 1) return [];
  const reason = phrase('sewing.allowance-too-small', { seam, allowance, least });
  return [{ rule: 'allowance-too-small', reason }];
}

/** A strap that passes a slot was pulled through it before its far end is sewn on. */
function judgeStrap(joint: Joint, state: SewingState, input: WorkInput, name: NameOf): Finding[] {
  const strap = input.braces.find(({ from, through }) => through && from.includes(joint.id));
  if (!strap || state.threaded.has(strap.id)) return [];
  return [{ rule: 'threaded-late', reason: phrase('sewing.threaded-late', { part: name(strap.id) }) }];
}
