import type { Form } from '../form/index.ts';
import { measurePolyline } from '../math/index.ts';
import type { Piece } from '../pattern/index.ts';
import { MINUTES, type Op } from '../sewing/index.ts';
import { GATES, type Work } from './work-of-form.ts';
import { edgeOfOpening, type PlannedStep } from './work-parts.ts';

/** Minutes of what has no length and no pieces: our estimate, no source. */
const FIXED: Readonly<Record<string, number>> = {
  use: 30,
  measure: 60,
  cloth: 90,
  'test-tube': 90,
  print: 20,
  trial: 90,
  magnets: 20,
  'sew-arms': 0,
  pole: 30,
  close: 30,
  rest: 20,
  lids: 40,
  stand: 60,
  tapes: 30,
  arms: 10,
};
/** Once a step of sewing: thread, bobbin, looking for the place. */
const SET_UP = 5;
const CLOTHS = ['shell', 'webs', 'covers', 'arms', 'test-tube'];

/** How long a step takes, hours: our estimate, from its seams, pieces and litres. */
export function hoursOfStep(work: Work, { step, ops }: PlannedStep): number {
  const own = FIXED[step.id] ?? (step.phase === 'sew' ? SET_UP : 0);
  const joined = ops.reduce((sum, op) => sum + minutesOfOp(work, op), 0);
  const checked = MINUTES.check * step.checks.length;
  return (own + joined + checked + (BY_STEP[step.id]?.(work) ?? 0) + ofZone(work, step.id)) / 60;
}

function minutesOfOp(work: Work, op: Op): number {
  if (op.does === 'draw-out') return MINUTES.packing;
  if (op.does !== 'join') return 0;
  return (MINUTES.seam[op.how] * lengthOfJoint(work, op.joint)) / 1000;
}

/** Of a seam, or of an edge sewn to a plate, mm. */
function lengthOfJoint({ form, seams }: Work, joint: string): number {
  const [length] = seams.get(joint)?.lengths ?? [];
  if (length !== undefined) return length;
  const opening = form.shell.openings.find(({ id }) => `${GATES[id]}-edge` === joint);
  if (opening) return edgeOfOpening(form, opening.id);
  const board = joint
    .replace(/^wrist-(.*)-edge$/, 'wrist-plate-$1-1')
    .replace(/^cap-(.*)-edge$/, 'arm-plate-$1-1');
  return sum(innerOf(form, (id) => id === board).map(({ cutLine }) => measurePolyline(cutLine, true)));
}

/** What else a step takes than its seams and checks. */
const BY_STEP: Readonly<Record<string, (work: Work) => number>> = {
  trial: ({ form }) =>
    cutting(form.pieces) +
    (MINUTES.tacked * sum(form.report.seams.map(({ lengthsFlat }) => lengthsFlat[0]))) / 1000,
  'test-tube': ({ form }) => cutting(innerOf(form, (id) => id.startsWith('test-tube'))),
  cut: ({ form }) => {
    const all = [...form.pieces, ...(form.inside?.pieces ?? [])];
    const cloth = all.filter(({ material, id }) => CLOTHS.includes(material) && !id.startsWith('test-tube'));
    return MINUTES.pattern * all.length + cutting(cloth);
  },
  mark: ({ form }) => {
    const levels = sum(form.report.levels.map(({ lengthFlat }) => lengthFlat));
    const lines = sum((form.inside?.shape.panelLines ?? []).map(({ chart }) => heightOf(chart)));
    return (MINUTES.basted * (levels + lines)) / 1000;
  },
  'sew-sleeve': ({ form, has }) => {
    const braces = form.inside?.shape.braces ?? [];
    const straps = braces.filter(({ kind }) => kind === 'strap').length;
    const tabs = has.tabs ? innerOf(form, (id) => id.startsWith('tab-')).length : 0;
    return MINUTES.hem * (braces.length + 1) + MINUTES.slot * straps + MINUTES.tab * tabs;
  },
  boards: ({ form, has }) =>
    MINUTES.board * innerOf(form, (id, material) => material === 'card' && id.endsWith('-1')).length +
    (has.block ? MINUTES.block : 0),
  magnets: ({ form }) =>
    2 * MINUTES.magnet * innerOf(form, (id) => /^(armhole|arm|cushion)-plate-.*-1$/.test(id)).length,
  covers: ({ form }) =>
    MINUTES.cover *
    innerOf(form, (id, material) => material === 'covers' && !id.startsWith('cushion')).length,
  bind: ({ form, has }) =>
    (MINUTES.rim *
      sum(
        innerOf(form, (id) => /^(base|neck|armhole|arm|wrist)-plate-.*1$/.test(id))
          .filter(({ id }) => !has.cover(id.slice(0, -2)))
          .map(({ cutLine }) => measurePolyline(cutLine, true)),
      )) /
    1000,
  'sew-arms': ({ form }) => MINUTES.arm * form.body.arms.length,
  'fill-arms': ({ form }) => 2 * MINUTES.litre * litresOfArms(form),
  cushions: ({ form }) => MINUTES.cushion * innerOf(form, (id) => /^cushion-.*-cover$/.test(id)).length,
  supports: ({ form }) => MINUTES.support * innerOf(form, (id) => id.startsWith('shoulder-support')).length,
};

/** Arms are narrow: a litre takes twice as long. */
function litresOfArms({ inside }: Form): number {
  const bought = inside?.materials.find(({ id }) => id === 'arm-fill')?.quantity ?? 0;
  return inside && inside.fill.buy > 0 ? (bought / inside.fill.buy) * inside.fill.volumeL : 0;
}

function ofZone({ zones }: Work, step: string): number {
  const zone = zones.find(({ id }) => step === `fill-${id}`);
  return zone ? MINUTES.litre * zone.volumeL : 0;
}

/** Pieces of cloth, laid and cut. */
function cutting(pieces: readonly Piece[]): number {
  const round = sum(pieces.map(({ cutLine }) => measurePolyline(cutLine, true)));
  return MINUTES.piece * pieces.length + (MINUTES.outline * round) / 1000;
}

function innerOf({ inside }: Form, isWanted: (id: string, material: string) => boolean): Piece[] {
  return (inside?.pieces ?? []).filter(({ id, material }) => isWanted(id, material));
}

/** From the lower to the upper end of a line on the chart, mm. */
function heightOf(chart: Float64Array): number {
  const heights = chart.filter((_, i) => i % 2 === 1);
  return Math.max(...heights) - Math.min(...heights);
}

function sum(values: readonly number[]): number {
  return values.reduce((all, value) => all + value, 0);
}
