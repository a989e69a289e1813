import { type OrderedSeam, orderSeams } from '../assembly/index.ts';
import { withUsual } from '../base/index.ts';
import type { Form, WorkSeam } from '../form/index.ts';
import { type DesignedBrace, INSIDE_OPTIONS, type InsideLine } from '../inside/index.ts';
import {
  boundsOfPolyline,
  measurePolygonArea,
  measurePolyline,
  nearestAlong,
  reversePolyline,
} from '../math/index.ts';
import type { Foot, Joint, LevelRing, SolidPart, WorkBrace, WorkInput } from '../sewing/index.ts';
import type { FillZone } from '../simulate/index.ts';
import { allowancesOfJoint } from './allowances-of-joint.ts';
import { fillZones } from './filling-of-form.ts';
import { type LacedEdge, phrase } from './phrases.ts';
import { seamsOfForm } from './seams-of-form.ts';
import { edgeOfOpening } from './work-parts.ts';

/** What the order of work is made of, gathered once. */
export interface Work {
  readonly form: Form;
  readonly input: WorkInput;
  /** Of the shell, in the order of sewing. */
  readonly order: readonly OrderedSeam[];
  /** What is filled, from the top down. */
  readonly zones: readonly FillZone[];
  /** Every seam with its name, by id. */
  readonly seams: ReadonlyMap<string, WorkSeam>;
  readonly has: {
    readonly inside: boolean;
    readonly arms: boolean;
    readonly throat: boolean;
    readonly plates: boolean;
    /** Of plates, by their ids. */
    readonly cover: (plate: string) => boolean;
    readonly cushions: boolean;
    readonly supports: boolean;
    readonly block: boolean;
    readonly tabs: boolean;
  };
}

/** Openings through which things are put in, as the steps name them. */
export const GATES = {
  base: 'base',
  neck: 'neck',
  armholeRight: 'armhole-right',
  armholeLeft: 'armhole-left',
} as const;

export function workOfForm(form: Form): Work {
  const order = orderSeams(form.shell, form.body.landmarks.neckFront.v);
  const seams = seamsOfForm(form, order);
  const pieces = form.inside?.pieces ?? [];
  const hasPiece = (start: string): boolean => pieces.some(({ id }) => id.startsWith(start));
  const has = {
    inside: form.inside !== undefined,
    arms: hasPiece('arm-front'),
    throat: hasPiece('throat-'),
    plates: hasPiece('base-plate'),
    cover: (plate: string) => pieces.some(({ id }) => id.startsWith(plate) && id.endsWith('-cover')),
    cushions: hasPiece('cushion-'),
    supports: hasPiece('shoulder-support'),
    block: hasPiece('neck-block'),
    tabs: hasPiece('tab-'),
  };
  const zones = fillZones(form);
  return { form, order, zones, seams, has, input: inputOf(form, zones, seams, has) };
}

function inputOf(
  form: Form,
  zones: readonly FillZone[],
  seams: ReadonlyMap<string, WorkSeam>,
  has: Work['has'],
): WorkInput {
  const { clothThickness } = withUsual(INSIDE_OPTIONS, form.project.inside);
  const inner = form.inside?.pieces ?? [];
  const braces = bracesOf(form);
  return {
    cloth: clothThickness,
    pieces: [...form.shell.panels, ...inner].map(({ id }) => id),
    rings: form.shell.levels.map((level) => ringOf(form, level, braces)),
    joints: [...seams.values()]
      .flatMap((seam) => jointOf(form, seam))
      .concat(lacings(form, has))
      .map((joint) => ({ ...joint, allowances: allowancesOfJoint(form, joint) })),
    braces,
    gates: Object.fromEntries(form.shell.openings.map(({ id }) => [GATES[id], edgeOfOpening(form, id)])),
    solids: solidsOf(form),
    regions: [...regionsOf(form, zones), ...armRegions(seams)],
  };
}

/** A plate as it is set in: with its cover, or with tape round its rim. */
export function dressed({ has }: Work, plate: string): string {
  return `${plate}-${has.cover(plate) ? 'covered' : 'bound'}`;
}

/** The step that makes a plate ready to be set in. */
export function dressingOf({ has }: Work, plate: string): 'covers' | 'bind' {
  return has.cover(plate) ? 'covers' : 'bind';
}

/** Panels, braces and what else meets in a seam. */
function jointOf(form: Form, { id, letter, name, kind }: WorkSeam): Joint[] {
  const seam = form.shell.seams.find((one) => one.id === id);
  if (seam) return [{ id, parts: [...new Set(seam.panels)], allowances: [], isShell: true, letter, name }];
  const [piece] = id.split('/');
  const braces = form.inside?.shape.braces ?? [];
  const brace = braces.find((one) => one.id === piece);
  const common = { id, allowances: [], isShell: kind === 'shell', letter, name };
  if (id === SLEEVE_CLOSING) {
    const back = braces.filter(({ to, sleeveShare }) => to === 'sleeve' && (sleeveShare ?? 0) === 0);
    return [{ ...common, parts: ['pole-sleeve', ...back.map((one) => one.id)] }];
  }
  if (!brace) return [{ ...common, parts: partsOfTube(id) }];
  if (/\/sleeve-/.test(id)) return [{ ...common, parts: [piece, 'pole-sleeve'] }];
  const toEdge = brace.kind === 'throat' ? { toEdge: riseOf(brace) } : {};
  return [{ ...common, parts: [piece], ...toEdge }];
}

export const SLEEVE_CLOSING = 'pole-sleeve/sleeve-closing';

function partsOfTube(id: string): string[] {
  const side = id.endsWith('right') ? 'right' : 'left';
  if (id.startsWith('arm-')) return [`arm-front-${side}`, `arm-back-${side}`];
  return id === 'test-tube-closing' ? ['test-tube'] : ['test-tube', id];
}

/** From the lower end of its line to the upper, near which the neck's edge is, mm. */
function riseOf({ rungs }: DesignedBrace): number {
  return rungs[rungs.length - 1].v - rungs[0].v;
}

/** Edges that are laced or sewn by hand and have no letter. */
function lacings({ shell, body }: Form, has: Work['has']): Joint[] {
  if (!has.plates) return [];
  const lacing = (of: LacedEdge, id: string, ...parts: string[]): Joint => {
    return { id, parts, allowances: [], isShell: false, letter: '', name: phrase('work.edge', { of }) };
  };
  const edges = shell.openings.map(({ id }) => {
    const of = id === 'base' || id === 'neck' ? id : 'armhole';
    return lacing(of, `${GATES[id]}-edge`, PLATE_OF[GATES[id]]);
  });
  const arms = has.arms
    ? body.arms.flatMap(({ side }) => [
        lacing('wrist', `wrist-${side}-edge`, `arm-front-${side}`, `wrist-plate-${side}`),
        lacing('cap', `cap-${side}-edge`, `arm-front-${side}`, `arm-plate-${side}`),
      ])
    : [];
  return [...edges, ...arms];
}

/** The plate that closes each opening. */
export const PLATE_OF: Readonly<Record<string, string>> = {
  base: 'base-plate',
  neck: 'neck-plate',
  'armhole-right': 'armhole-plate-right',
  'armhole-left': 'armhole-plate-left',
};

function bracesOf(form: Form): WorkBrace[] {
  const pieces = form.inside?.pieces ?? [];
  const braces = form.inside?.shape.braces ?? [];
  return braces.map(({ id, kind, side, from, to, sleeveShare }): WorkBrace => {
    const lines = pieces.find((piece) => piece.id === id)?.sewLines ?? [];
    const jointsOn = (line: InsideLine): string[] =>
      lines
        .filter((edge) => line.seams.some((seam) => seam.id === edge.id))
        .map((edge) => `${id}/${edge.id}`);
    const onSleeve = (sleeveShare ?? 0) === 0 ? SLEEVE_CLOSING : `${id}/sleeve-${id}`;
    const web = braces.find((one) => one.kind === 'web' && one.side === side);
    return {
      id,
      kind,
      side,
      from: jointsOn(from),
      to: to === 'sleeve' ? [onSleeve] : jointsOn(to),
      isOnSleeve: to === 'sleeve',
      ...(kind === 'strap' && web && { through: web.id }),
    };
  });
}

function ringOf(
  form: Form,
  { id, vertices }: Form['shell']['levels'][number],
  braces: readonly WorkBrace[],
): LevelRing {
  const { positions } = form.shell.mesh;
  const raw = Float64Array.from({ length: 2 * vertices.length }, (_, i) => {
    return positions[3 * vertices[i >> 1] + (i % 2)];
  });
  const loop = measurePolygonArea(raw) < 0 ? reversePolyline(raw) : raw;
  const footAt = (x: number, y: number): Foot => ({ at: nearestAlong(loop, true, x, y), x, y });
  const onLoop = new Set(vertices);
  const seams = form.shell.seams.flatMap((seam): [string, Foot][] => {
    const v = seam.isLevel ? undefined : seam.points.find((point) => onLoop.has(point));
    return v === undefined ? [] : [[seam.id, footAt(positions[3 * v], positions[3 * v + 1])]];
  });
  const feet: [string, Foot][] = [];
  const widths: [string, number][] = [];
  for (const brace of form.inside?.shape.braces ?? []) {
    const rung = brace.rungs.find(({ levelId }) => levelId === id);
    const own = braces.find((one) => one.id === brace.id);
    if (!rung || !own) continue;
    widths.push([brace.id, rung.length]);
    for (const joint of own.from) feet.push([joint, footAt(rung.from[0], rung.from[1])]);
    if (brace.to === 'sleeve') continue;
    for (const joint of own.to) feet.push([joint, footAt(rung.to[0], rung.to[1])]);
  }
  const sleeve = form.inside?.shape.pole.sleeveGirth;
  if (sleeve !== undefined) widths.push(['sleeve', sleeve]);
  return {
    id,
    girth: measurePolyline(loop, true),
    seams: Object.fromEntries(seams),
    feet: Object.fromEntries(feet),
    widths: Object.fromEntries(widths),
  };
}

/** Boards, foam and tabs, with what passes through them: through every layer, and through the cover where there is one. */
function solidsOf(form: Form): SolidPart[] {
  const pieces = form.inside?.pieces ?? [];
  const { boardThickness } = withUsual(INSIDE_OPTIONS, form.project.inside);
  const boards = pieces.filter(({ id, material }) => material === 'card' && !id.endsWith('-2'));
  const solids = boards.map(({ id, cutLine }): SolidPart => {
    const { minX, maxX, minY, maxY } = boundsOfPolyline(cutLine);
    const part = id.replace(/-1$/, '');
    const least = Math.min(maxX - minX, maxY - minY);
    return { id: part, stuff: 'rigid', girth: 2 * (least + boardThickness), holes: holesOf(pieces, part) };
  });
  const foot = pieces.find(({ id }) => id === 'neck-block-foot');
  const block: SolidPart[] = foot
    ? [
        {
          id: 'neck-block',
          stuff: 'foam',
          girth: measurePolyline(foot.cutLine, true),
          holes: (foot.cutouts ?? []).map(({ id }) => id),
        },
      ]
    : [];
  return [...solids, ...block, { id: 'tabs', stuff: 'limp', girth: 0, holes: [] }];
}

/** A cover is turned in along the edge of every hole it leaves free. */
function holesOf(pieces: NonNullable<Form['inside']>['pieces'], part: string): string[] {
  const layers = [`${part}-1`, `${part}-2`, `${part}-cover`].flatMap((id) => {
    const piece = pieces.find((one) => one.id === id);
    if (!piece) return [];
    const isCover = id.endsWith('-cover');
    const holes = isCover
      ? piece.sewLines.flatMap((line) => (line.id.startsWith('turn-') ? [line.id.slice(5)] : []))
      : (piece.cutouts ?? []).map((hole) => hole.id);
    return [new Set(holes.map((hole) => (hole.startsWith('tab-') ? 'tabs' : hole)))];
  });
  const [first = new Set<string>(), ...others] = layers;
  return [...first].filter((hole) => others.every((layer) => layer.has(hole)));
}

/** The zones of filling, with the hand's way to the far end of each from the base and from the gaps under the armhole plates. */
function regionsOf(form: Form, zones: readonly FillZone[]): WorkInput['regions'] {
  const pole = form.inside?.shape.pole;
  if (!pole) return [];
  const heights = new Map<string, number>(form.body.levels.map(({ id, z }) => [id, z]));
  const gap = lowestOfArmhole(form);
  return zones.map(({ id, upper, lower }) => {
    const top = upper === undefined ? pole.zTop : (heights.get(upper) ?? pole.zTop);
    const bottom = lower === undefined ? pole.zBottom : (heights.get(lower) ?? pole.zBottom);
    const fromGap = Math.max(Math.abs(top - gap), Math.abs(bottom - gap));
    return {
      id,
      ...(upper && { upper }),
      ...(lower && { lower }),
      depth: { base: top - pole.zBottom, 'gap-right': fromGap, 'gap-left': fromGap },
    };
  });
}

/** An arm rolled down on itself like a stocking is half as deep. */
function armRegions(seams: ReadonlyMap<string, WorkSeam>): WorkInput['regions'] {
  return (['right', 'left'] as const).flatMap((side) => {
    const [length] = seams.get(`arm-outer-${side}`)?.lengths ?? [];
    return length === undefined ? [] : [{ id: `arm-${side}`, depth: { [`arm-${side}`]: length / 2 } }];
  });
}

function lowestOfArmhole({ shell: { mesh, openings } }: Form): number {
  const heights = openings
    .filter(({ id }) => id.startsWith('armhole'))
    .flatMap(({ vertices }) => [...vertices].map((v) => mesh.positions[3 * v + 2]));
  return Math.min(...heights);
}
