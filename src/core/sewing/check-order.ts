import { type Phrase, verbatim } from '../base/index.ts';
import type { Finding, NameOf } from './finding.ts';
import { phrase } from './phrases.ts';
import { runOp } from './run-op.ts';
import { type SewingState, startState } from './sewing-state.ts';
import type { OrderFault, ProvenStep, WorkInput } from './types.ts';

/**
 * Sews the form in thought, step by step, and tells everything that cannot be done: empty for an order that can be followed. `names`:
 * how parts, facts, openings and levels are called. Cost: that of `wayOfSeam` for every seam of the shell.
 */
export function checkOrder(
  input: WorkInput,
  steps: readonly ProvenStep[],
  names: Readonly<Record<string, Phrase>> = {},
): OrderFault[] {
  const joints = new Map(input.joints.map((joint) => [joint.id, joint.name]));
  const name: NameOf = (id) => names[id] ?? joints.get(id) ?? verbatim(id);
  const state = startState(input);
  const told = new Set<string>();
  const faults = steps.flatMap((step) => {
    const found = step.ops.flatMap((op) => runOp(op, state, input, name));
    const all = [...found, ...judgeList(step, input), ...judgeCautions(step, state, told, name)];
    return all.map((finding): OrderFault => ({ step: step.id, ...finding }));
  });
  const last = steps[steps.length - 1]?.id ?? '';
  const atEnd = [...judgeEnd(input, state, name), ...judgeNames(input)];
  return [...faults, ...atEnd.map((finding): OrderFault => ({ step: last, ...finding }))];
}

/** The list of seams of a step is in the order of its text. */
function judgeList({ ops, listed }: ProvenStep, input: WorkInput): Finding[] {
  const lettered = new Set(input.joints.filter(({ letter }) => letter !== '').map(({ id }) => id));
  const sewn = ops.flatMap((op) => (op.does === 'join' && lettered.has(op.joint) ? [op.joint] : []));
  const isSame = sewn.length === listed.length && sewn.every((id, k) => id === listed[k]);
  return isSame ? [] : [{ rule: 'seam-list', reason: phrase('sewing.other-order') }];
}

/** A caution is told once, at the first step where the danger is, or before. */
function judgeCautions(
  { ops, cautions }: ProvenStep,
  state: SewingState,
  told: Set<string>,
  name: NameOf,
): Finding[] {
  const twice = cautions.filter((caution) => told.has(caution));
  for (const caution of cautions) told.add(caution);
  const dangers = ops.flatMap((op) => (op.does === 'danger' ? [op.of] : []));
  const late = dangers.filter((danger) => !told.has(danger));
  // What was not told in time is named once.
  for (const danger of late) told.add(danger);
  for (const danger of dangers) state.dangers.add(danger);
  return [
    ...twice.map((caution): Finding => {
      return { rule: 'caution-place', reason: phrase('sewing.caution-twice', { caution: name(caution) }) };
    }),
    ...late.map((caution): Finding => {
      return { rule: 'caution-place', reason: phrase('sewing.caution-late', { caution: name(caution) }) };
    }),
  ];
}

function judgeEnd(input: WorkInput, state: SewingState, name: NameOf): Finding[] {
  const unjoined = input.joints.flatMap(({ id, name: seam }): Finding[] => {
    const count = state.joined.get(id) ?? 0;
    if (count === 1) return [];
    return [
      {
        rule: 'joined-not-once',
        reason: phrase(count === 0 ? 'sewing.not-joined' : 'sewing.joined-twice', { seam }),
      },
    ];
  });
  const unused = input.pieces
    .filter((id) => !state.used.has(id))
    .map((id): Finding => {
      return { rule: 'piece-unused', reason: phrase('sewing.piece-unused', { part: name(id) }) };
    });
  const loose = [...state.loose].map((id): Finding => {
    return { rule: 'enclosed-unfixed', reason: phrase('sewing.enclosed-unfixed', { part: name(id) }) };
  });
  const chain = isCarried(state)
    ? []
    : [{ rule: 'load-chain', reason: phrase('sewing.load-chain') } as const];
  return [...unjoined, ...unused, ...loose, ...chain];
}

/** From the garment, contact by contact, down to the floor. */
function isCarried({ contacts }: SewingState): boolean {
  const reached = new Set(['garment']);
  for (const part of reached) for (const next of contacts.get(part) ?? []) reached.add(next);
  return reached.has('floor');
}

/** No two seams have the same letter and the same name. */
function judgeNames({ joints }: WorkInput): Finding[] {
  const seen = new Set<string>();
  return joints.flatMap(({ letter, name: seam }): Finding[] => {
    if (letter === '') return [];
    const key = JSON.stringify([letter, seam]);
    const isTwice = seen.has(key) || seen.has(JSON.stringify(seam));
    seen.add(key).add(JSON.stringify(seam));
    return isTwice ? [{ rule: 'seam-list', reason: phrase('sewing.same-name', { seam, letter }) }] : [];
  });
}
