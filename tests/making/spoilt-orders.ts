import type { Op, OrderRule, ProvenStep, WorkInput } from '../../src/core/sewing/index.ts';

/** What the order before this one did wrong, or what another might: how the good order and its input are spoilt. */
export interface Spoilt {
  readonly rule: OrderRule;
  readonly at?: string;
  readonly what: string;
  readonly steps?: (steps: readonly ProvenStep[]) => readonly ProvenStep[];
  readonly given?: (input: WorkInput) => WorkInput;
}

const placeOf = (steps: readonly ProvenStep[], id: string) => steps.findIndex((step) => step.id === id);

/** One step moved to right before another. */
const move = (id: string, before: string) => (steps: readonly ProvenStep[]) => {
  const rest = steps.filter((step) => step.id !== id);
  return rest.toSpliced(placeOf(rest, before), 0, steps[placeOf(steps, id)]);
};
const change = (id: string, by: (ops: readonly Op[]) => readonly Op[]) => (steps: readonly ProvenStep[]) =>
  steps.map((step) => (step.id === id ? { ...step, ops: by(step.ops) } : step));
const drop = (id: string) => (steps: readonly ProvenStep[]) => steps.filter((step) => step.id !== id);
const add = (id: string, op: Op) => change(id, (ops) => [...ops, op]);
const edit = (id: string, does: Op['does'], by: (op: Op) => Op) =>
  change(id, (ops) => ops.map((op) => (op.does === does ? by(op) : op)));
const last = (id: string, isIt: (op: Op) => boolean) =>
  change(id, (ops) => [...ops.filter((op) => !isIt(op)), ...ops.filter(isIt)]);
const tell =
  (id: string, ...cautions: string[]) =>
  (steps: readonly ProvenStep[]) =>
    steps.map((step) => (step.id === id ? { ...step, cautions } : step));

export const SPOILT: readonly Spoilt[] = [
  {
    rule: 'part-missing',
    at: 'arms',
    what: 'arms are held on before they are sewn',
    steps: move('arms', 'sew-arms'),
  },
  {
    rule: 'part-missing',
    at: 'covers',
    what: 'plates are covered before magnets go under the covers',
    steps: move('covers', 'magnets'),
  },
  {
    rule: 'fact-missing',
    at: 'boards',
    what: 'plates are fitted before there is an edge to fit them to',
    steps: move('boards', 'sew-front'),
  },
  {
    rule: 'fact-missing',
    at: 'test-tube',
    what: 'the tube is of unwashed cloth',
    steps: move('test-tube', 'cloth'),
  },
  {
    rule: 'fact-missing',
    at: 'trial',
    what: 'the trial shell is cut smaller by a growth it will not have',
    steps: edit('trial', 'wear', (op) => ({ ...op, growth: true }) as Op),
  },
  {
    rule: 'packed-untold',
    at: 'sew-closing',
    what: 'the last seam is simply sewn, and turned through the base',
    steps: edit('sew-closing', 'join', (op) => ({ ...op, how: 'plain' }) as Op),
  },
  {
    rule: 'packed-untold',
    at: 'sew-side',
    what: 'the back is closed first and sides are sewn over webs “turned to the middle”',
    steps: (steps) => {
      const at = (id: string) => steps[placeOf(steps, id)];
      const closing = at('sew-closing').ops.map((op) => ({ ...op, how: 'plain' }) as Op);
      const back = { ...at('sew-back'), ops: [...at('sew-back').ops, ...closing] };
      const bare = steps
        .filter(({ id }) => id !== 'sew-closing')
        .map((step) => (step.id === 'sew-back' ? back : step));
      return move('sew-inner-back', 'sew-shoulder')(bare);
    },
  },
  {
    rule: 'pack-too-tight',
    at: 'sew-closing',
    what: 'cloth of 3 mm is packed',
    given: (given) => ({ ...given, cloth: 3 }),
  },
  {
    rule: 'pack-too-tight',
    at: 'sew-closing',
    what: 'supports are in while the shell is closed',
    steps: (steps) => {
      const boards = steps.filter(({ id }) => ['boards', 'magnets', 'covers', 'supports'].includes(id));
      const rest = steps.filter((step) => !boards.includes(step));
      return rest.toSpliced(placeOf(rest, 'sew-closing'), 0, ...boards);
    },
  },
  {
    rule: 'no-free-edge',
    at: 'sew-inner-back',
    what: 'webs are sewn to the back of a closed shell',
    steps: move('sew-inner-back', 'boards'),
  },
  {
    rule: 'head-does-not-pass',
    at: 'trial',
    what: 'the trial shell is closed behind and has a neck of its own girth',
    steps: edit('trial', 'wear', (op) => ({ ...op, through: 305 }) as Op),
  },
  {
    rule: 'insert-blocked',
    at: 'supports',
    what: 'supports go in after the armhole plates',
    steps: change('supports', (ops) => [
      ...ops.filter(({ does }) => does !== 'insert' && does !== 'fix'),
      ...ops.filter(({ does }) => does === 'insert' || does === 'fix'),
    ]),
  },
  {
    rule: 'insert-blocked',
    at: 'pole',
    what: 'the neck block goes in after the neck plate',
    steps: last('pole', (op) => op.does === 'insert' && op.part === 'neck-block'),
  },
  {
    rule: 'enclosed-unfixed',
    at: 'close',
    what: 'tabs are sewn to a plate already set in',
    steps: (steps) =>
      change('close', (ops) => [
        ...ops.filter((op) => op.does !== 'fix' || op.part !== 'tabs'),
        { does: 'fix', part: 'tabs', to: 'base-plate', from: 'base' },
      ])(steps),
  },
  {
    rule: 'no-hole',
    at: 'close',
    what: 'the base plate has no hole for the pole',
    given: (given) => ({
      ...given,
      solids: given.solids.map((solid) =>
        solid.id === 'base-plate' ? { ...solid, holes: ['tabs'] } : solid,
      ),
    }),
  },
  {
    rule: 'no-hole',
    at: 'close',
    what: 'the base plate goes over a pole in its foot',
    steps: add('pole', { does: 'put-on', part: 'foot', end: 'pole/base' }),
  },
  {
    rule: 'open-neighbour',
    at: 'fill-hip-base',
    what: 'the hip is judged while the base is open',
    steps: add('fill-hip-base', { does: 'read', fact: 'size-hip', how: 'round', level: 'hip' }),
  },
  {
    rule: 'open-neighbour',
    at: 'fill-bust-underbust',
    what: 'a level is judged with nothing below it',
    steps: add('fill-bust-underbust', { does: 'read', fact: 'early', how: 'round', level: 'underbust' }),
  },
  {
    rule: 'pulled-though-joined',
    at: 'fill-waist-highHip',
    what: 'ties are pulled to their marked lengths',
    steps: add('fill-waist-highHip', { does: 'pull', brace: 'tie-front' }),
  },
  {
    rule: 'measured-limp',
    at: 'pole',
    what: 'the height of the bust is taken on the empty shell',
    steps: add('pole', { does: 'read', fact: 'bust-height', how: 'limp' }),
  },
  {
    rule: 'threaded-late',
    at: 'sew-inner-back',
    what: 'straps are drawn through a web already closed',
    steps: last('sew-inner-back', ({ does }) => does === 'thread'),
  },
  { rule: 'piece-unused', what: 'pin cushions have pieces and no step', steps: drop('cushions') },
  {
    rule: 'piece-unused',
    what: 'lids have no step',
    steps: change('lids', (ops) => ops.filter(({ does }) => does !== 'fix')),
  },
  {
    rule: 'seam-list',
    at: 'sew-arms',
    what: 'outer seam first, says the text, and the list says inner',
    steps: (steps) =>
      steps.map((step) => (step.id === 'sew-arms' ? { ...step, listed: step.listed.toReversed() } : step)),
  },
  {
    rule: 'seam-list',
    what: 'two seams have one name',
    given: (given) => ({
      ...given,
      joints: given.joints.map((joint) =>
        joint.id === 'shoulderRight2'
          ? { ...joint, name: given.joints.find(({ id }) => id === 'shoulderRight1')!.name }
          : joint,
      ),
    }),
  },
  {
    rule: 'load-chain',
    what: 'no collar carries the base plate',
    steps: change('close', (ops) => ops.filter((op) => op.does !== 'carry' || op.from !== 'base-plate')),
  },
  {
    rule: 'beyond-reach',
    at: 'fill-top-upperChest',
    what: 'shoulders and neck are filled from the base alone',
    steps: edit('fill-top-upperChest', 'fill', (op) => ({ ...op, through: 'base', by: 'arm' }) as Op),
  },
  { rule: 'caution-place', at: 'cut', what: 'a caution is told again', steps: tell('cut', 'blades') },
  { rule: 'caution-place', at: 'magnets', what: 'a caution is not told in time', steps: tell('magnets') },
  {
    rule: 'allowance-too-small',
    at: 'turn-out',
    what: 'the back tie goes onto allowances of 10 mm',
    given: (given) => ({
      ...given,
      joints: given.joints.map((joint) =>
        joint.id === 'tie-back/centreBack1' ? { ...joint, allowances: [10, 10] } : joint,
      ),
    }),
  },
  {
    rule: 'beyond-reach',
    at: 'fill-top-upperChest',
    what: 'an arm is to pass the gap under an armhole plate',
    steps: edit('fill-top-upperChest', 'fill', (op) => ({ ...op, by: 'arm' }) as Op),
  },
  {
    rule: 'allowance-too-small',
    at: 'close',
    what: 'the edge of the base is cut with 5 mm to turn in',
    given: (given) => ({
      ...given,
      joints: given.joints.map((joint) => (joint.id === 'base-edge' ? { ...joint, allowances: [5] } : joint)),
    }),
  },
  {
    rule: 'joined-not-once',
    what: 'a shoulder is sewn again',
    steps: change('sew-shoulder', (ops) => [...ops, ops[0]]),
  },
  {
    rule: 'joined-not-once',
    what: 'a shoulder is forgotten',
    steps: change('sew-shoulder', (ops) => ops.slice(1)),
  },
];
