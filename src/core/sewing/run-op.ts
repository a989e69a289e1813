import { type Finding, type NameOf, partMissing } from './finding.ts';
import { joinEdges } from './join-edges.ts';
import { wayOut } from './judge-seam.ts';
import { DRAW_RATIO, FINGERS_GIRTH, FOAM_SHARE, HEAD_GIRTH, TOOLS } from './limits-of-work.ts';
import { phrase } from './phrases.ts';
import type { SewingState } from './sewing-state.ts';
import type { Op, WorkInput } from './types.ts';

type OpOf<Does extends Op['does']> = Extract<Op, { does: Does }>;
type Runner<Does extends Op['does']> = (
  op: OpOf<Does>,
  state: SewingState,
  input: WorkInput,
  name: NameOf,
) => Finding[];

/** Does one op to the form, changing `state`, and tells what of it cannot be done. */
export function runOp(op: Op, state: SewingState, input: WorkInput, name: NameOf): Finding[] {
  const run = RUNNERS[op.does] as Runner<Op['does']>;
  return [...missing(op, state, name), ...run(op, state, input, name)];
}

function missing({ needs = [], facts = [] }: Op, state: SewingState, name: NameOf): Finding[] {
  return [
    ...needs.filter((id) => !state.made.has(id)).map((id) => partMissing(id, name)),
    ...facts
      .filter((id) => !state.facts.has(id))
      .map((id): Finding => {
        return { rule: 'fact-missing', reason: phrase('sewing.fact-missing', { fact: name(id) }) };
      }),
  ];
}

const RUNNERS: { readonly [Does in Op['does']]: Runner<Does> } = {
  make({ part, of }, state, _input, name) {
    const lacking = of.filter((id) => !state.made.has(id));
    for (const id of of) state.used.add(id);
    state.made.add(part);
    return lacking.map((id) => partMissing(id, name));
  },
  join: joinEdges,
  'draw-out'({ seams }, state, input, name) {
    const way = wayOut(input, seams, (id) => state.joined.has(id));
    const [seam] = seams.map(name);
    const stiff = [...state.inserted].find((id) => stuffOf(input, id) === 'rigid');
    if (stiff)
      return [
        { rule: 'pack-too-tight', reason: phrase('sewing.pack-is-stiff', { seam, part: name(stiff) }) },
      ];
    if (way.kind === 'plain' || way.mouth >= DRAW_RATIO * way.pack) return [];
    const { mouth, pack } = way;
    const reason = phrase('sewing.pack-too-tight', { seam, mouth, pack, least: DRAW_RATIO });
    return [{ rule: 'pack-too-tight', reason }];
  },
  thread({ strap }, state, input, name) {
    const own = input.braces.find(({ id }) => id === strap);
    const web = input.braces.find(({ id }) => id === own?.through);
    const isHeld = own?.from.some((id) => state.joined.has(id)) ?? false;
    const isShut =
      web !== undefined && [web.from, web.to].every((end) => end.some((id) => state.joined.has(id)));
    state.threaded.add(strap);
    if (!isHeld && !isShut) return [];
    return [{ rule: 'threaded-late', reason: phrase('sewing.threaded-late', { part: name(strap) }) }];
  },
  pull({ brace }, state, input, name) {
    const own = input.braces.find(({ id }) => id === brace);
    const isHeld =
      own !== undefined && [own.from, own.to].every((end) => end.some((id) => state.joined.has(id)));
    if (!isHeld) return [];
    return [
      { rule: 'pulled-though-joined', reason: phrase('sewing.pulled-though-joined', { part: name(brace) }) },
    ];
  },
  insert({ part, through, over = [] }, state, input, name) {
    const solid = input.solids.find(({ id }) => id === part);
    const found: Finding[] = state.made.has(part) ? [] : [partMissing(part, name)];
    const girth = state.gates.get(through) ?? 0;
    const least = solid ? leastGate(solid.stuff, solid.girth) : 0;
    if (girth < least) {
      const values = { part: name(part), gate: name(through), girth, least };
      found.push({ rule: 'insert-blocked', reason: phrase('sewing.insert-blocked', values) });
    }
    for (const other of over) {
      const names = { part: name(part), other: name(other) };
      if (!solid?.holes.includes(other))
        found.push({ rule: 'no-hole', reason: phrase('sewing.no-hole', names) });
      const end = state.ends.get(`${other}/${through}`);
      if (end)
        found.push({
          rule: 'no-hole',
          reason: phrase('sewing.end-not-free', { part: name(part), other: name(end) }),
        });
    }
    state.inserted.add(part);
    state.used.add(part);
    state.loose.add(part);
    return found;
  },
  fix({ part, from }, state, _input, name) {
    const found: Finding[] = state.made.has(part) ? [] : [partMissing(part, name)];
    if (from !== 'outside' && (state.gates.get(from) ?? 0) < FINGERS_GIRTH) found.push(enclosed(part, name));
    state.loose.delete(part);
    state.used.add(part);
    return found;
  },
  gate({ gate, girth }, state, _input, name) {
    state.gates.set(gate, girth);
    const isShut = [...state.gates.values()].every((open) => open < FINGERS_GIRTH);
    return isShut ? [...state.loose].map((part) => enclosed(part, name)) : [];
  },
  'put-on'({ part, end }, state, _input, name) {
    const found = state.made.has(part) ? [] : [partMissing(part, name)];
    state.ends.set(end, part);
    state.used.add(part);
    return found;
  },
  'take-off'({ end }, state) {
    state.ends.delete(end);
    return [];
  },
  fill({ region, through, by }, state, input, name) {
    const depth = input.regions.find(({ id }) => id === region)?.depth[through] ?? 0;
    const girth = state.gates.get(through) ?? 0;
    const { reach, girth: least } = TOOLS[by];
    state.filled.add(region);
    const found: Finding[] = [];
    if (depth > reach) {
      const reason = phrase('sewing.beyond-reach', { part: name(region), depth, reach });
      found.push({ rule: 'beyond-reach', reason });
    }
    if (girth < least) {
      const values = { part: name(region), gate: name(through), girth, least };
      found.push({ rule: 'beyond-reach', reason: phrase('sewing.hand-does-not-pass', values) });
    }
    return found;
  },
  read({ fact, how, level }, state, input, name) {
    state.facts.add(fact);
    const isLimp = how === 'limp' || (how === 'flat' && state.filled.size > 0);
    if (isLimp)
      return [{ rule: 'measured-limp', reason: phrase('sewing.measured-limp', { fact: name(fact) }) }];
    if (how !== 'round' || level === undefined) return [];
    const beside = input.regions.filter(({ upper, lower }) => upper === level || lower === level);
    if (beside.every((region) => isFull(region, state))) return [];
    return [{ rule: 'open-neighbour', reason: phrase('sewing.open-neighbour', { level: name(level) }) }];
  },
  wear({ part, through, growth }, _state, _input, name) {
    const found: Finding[] = [];
    if (through < HEAD_GIRTH) {
      const reason = phrase('sewing.head-does-not-pass', { girth: through, least: HEAD_GIRTH });
      found.push({ rule: 'head-does-not-pass', reason });
    }
    if (growth)
      found.push({ rule: 'fact-missing', reason: phrase('sewing.cut-for-filling', { part: name(part) }) });
    return found;
  },
  carry({ from, to }, { contacts }) {
    contacts.set(from, new Set(contacts.get(from)).add(to));
    return [];
  },
  danger({ of }, state) {
    state.dangers.add(of);
    return [];
  },
};

/** The regions at both ends are full when their plate is on, too: before that filling gives way there. */
function isFull({ id, upper, lower }: WorkInput['regions'][number], { filled, gates }: SewingState): boolean {
  const isShut = (gate: string): boolean => (gates.get(gate) ?? 0) < 1;
  return filled.has(id) && (upper !== undefined || isShut('neck')) && (lower !== undefined || isShut('base'));
}

function stuffOf(input: WorkInput, part: string): string | undefined {
  return input.solids.find(({ id }) => id === part)?.stuff;
}

/** What an opening must measure round for a thing to go through. */
function leastGate(stuff: string, girth: number): number {
  return stuff === 'rigid' ? girth : stuff === 'foam' ? FOAM_SHARE * girth : 0;
}

function enclosed(part: string, name: NameOf): Finding {
  return { rule: 'enclosed-unfixed', reason: phrase('sewing.enclosed-unfixed', { part: name(part) }) };
}
