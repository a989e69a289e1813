import type { Arm } from '../body/index.ts';
import type { DesignedBrace, InsideShape } from '../inside/index.ts';
import type { SeamedShell, ShellPanel } from '../seams/index.ts';
import { surfaceOfDome, surfaceOfLoop, surfaceOfRows, surfaceOfTube } from './solid-surfaces.ts';
import type { Scene, SceneLine, Sheet, Surface } from './types.ts';
import { type OpenSeams, type WeldedPanels, weldPanels } from './weld-panels.ts';

/** What a scene is made of; a form has all of it. */
export interface SceneParts {
  readonly shell: SeamedShell;
  readonly shape?: InsideShape;
  readonly arms?: readonly Arm[];
  /** Upright boards under the shoulder seams: closed outlines, n × 3 mm. */
  readonly supports?: readonly { readonly side: 'right' | 'left'; readonly outline: Float64Array }[];
}

export interface SceneChoices {
  readonly open?: OpenSeams;
  /** Lines beside seams and levels, such as tapes: n × 3 mm, drawn where they are seen. */
  readonly tapes?: readonly { readonly id: string; readonly points: Float64Array }[];
  /** Pole and foot under the form: the floor's height and the foot's radius, mm. */
  readonly stand?: { readonly floor: number; readonly radius: number; readonly legs: number };
}

/** Ends of braces lie on the shell; drawn so far short of it they do not show through, mm. */
const SHORT = 4;
/** Of the padding on a cushion, and round the pole to the sleeve, mm. */
const CUSHION = 25;
const SLEEVE_ROOM = 1.5;

/**
 * Everything of a form that can be drawn in space: panels as sewn, plates in the openings, braces, sleeve, pole, arms or, in their
 * place, cushions. What of it is shown is chosen when it is drawn. Ids: panels and braces have their own, the others are
 * `plate-base`, `cushion-right`, `support-left`, `arm-left`, `sleeve`, `pole`, `foot`. Cost: that of `weldPanels`,
 * unless the panels, sewn along the same seams, are given.
 */
export function makeScene(
  parts: SceneParts,
  choices: SceneChoices = {},
  welded: WeldedPanels = weldPanels(parts.shell, choices.open),
): Scene {
  const { shell, shape, arms = [], supports = [] } = parts;
  const sheets: Sheet[] = shell.panels.map(sheetOfPanel);
  const { surface, lines } = welded;
  const surfaces: Surface[] = [surface];
  const put = (sheet: Sheet, make: (number: number) => Surface): void => {
    surfaces.push(make(sheets.length));
    sheets.push(sheet);
  };
  for (const { id, vertices } of shell.openings) {
    const loop = loopOf(shell, vertices);
    const place = placeOfOpening(id);
    put({ id: `plate-${id}`, kind: 'plate', ...place }, (number) => surfaceOfLoop(loop, number));
    if (place.side === 'centre') continue;
    put({ id: `cushion-${place.side}`, kind: 'cushion', ...place }, (n) => surfaceOfDome(loop, CUSHION, n));
  }
  for (const brace of shape?.braces ?? []) {
    put(sheetOfBrace(brace), (number) => surfaceOfRows(rowsOfBrace(brace), false, number));
  }
  if (shape) putPole(shape, choices, put);
  for (const { side, outline } of supports) {
    const sheet: Sheet = { id: `support-${side}`, kind: 'support', half: 'front', side };
    put(sheet, (number) => surfaceOfLoop(outline, number));
  }
  for (const arm of arms) {
    const sheet: Sheet = { id: `arm-${arm.side}`, kind: 'arm', half: 'front', side: arm.side };
    put(sheet, (number) => surfaceOfRows(rowsOfArm(arm), true, number));
  }
  return { sheets, surfaces, lines: [...lines, ...tapeLines(choices, sheets)] };
}

function sheetOfPanel({ id, side, chart }: ShellPanel): Sheet {
  let sum = 0;
  for (let i = 0; i < chart.length; i += 2) sum += Math.sin(chart[i]);
  return { id, kind: 'panel', half: sum >= 0 ? 'front' : 'back', side };
}

function placeOfOpening(id: string): Pick<Sheet, 'half' | 'side'> {
  const side = id === 'armholeRight' ? 'right' : id === 'armholeLeft' ? 'left' : 'centre';
  return { half: 'front', side };
}

/** Counter-clockwise seen from outside the closed body: the opening's own turn. */
function loopOf({ mesh: { positions } }: SeamedShell, vertices: Uint32Array): Float64Array {
  return Float64Array.from({ length: 3 * vertices.length }, (_, i) => {
    return positions[3 * vertices[Math.floor(i / 3)] + (i % 3)];
  });
}

function sheetOfBrace({ id, kind, side, from }: DesignedBrace): Sheet {
  return { id, kind, side, half: from.half === 'back' ? 'back' : 'front' };
}

function rowsOfBrace({ rungs, to }: DesignedBrace): number[][] {
  return rungs.map((rung) => {
    const way = [0, 1, 2].map((k) => rung.to[k] - rung.from[k]);
    const length = Math.hypot(...way);
    const near = Math.min(SHORT / length, 0.4);
    const far = to === 'sleeve' ? 0 : near;
    return [near, 0.5, 1 - far].flatMap((t) => way.map((value, k) => rung.from[k] + t * value));
  });
}

function putPole(
  { pole }: InsideShape,
  { stand }: SceneChoices,
  put: (sheet: Sheet, make: (number: number) => Surface) => void,
): void {
  const { y, radius, zBottom, zTop } = pole;
  const place = { half: 'back', side: 'centre' } as const;
  const foot = stand ? stand.floor + LEG : zBottom - 2 * radius;
  put({ id: 'pole', kind: 'pole', ...place }, (n) => surfaceOfTube(y, radius, foot, zTop, n));
  put({ id: 'sleeve', kind: 'sleeve', ...place }, (n) =>
    surfaceOfTube(y, radius + SLEEVE_ROOM, zBottom, zTop - radius, n),
  );
  for (let leg = 0; stand && leg < stand.legs; leg++) {
    // One leg points forward: to the edge between two others the form tips first.
    const angle = Math.PI / 2 + (2 * Math.PI * leg) / stand.legs;
    put({ id: `leg-${leg + 1}`, kind: 'stand', ...place }, (n) =>
      surfaceOfRows(rowsOfLeg(y, stand, angle), true, n),
    );
  }
}

/** Half the thickness of a leg, and how much higher it begins than it ends, mm. */
const LEG = 10;
const LEG_RISE = 60;

function rowsOfLeg(
  y: number,
  { floor, radius }: { floor: number; radius: number },
  angle: number,
): number[][] {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return [0, radius].map((r) =>
    Array.from({ length: 8 }, (_, k) => {
      const turn = (2 * Math.PI * k) / 8;
      const across = LEG * Math.cos(turn);
      const z = floor + LEG + (r === 0 ? LEG_RISE : 0) + LEG * Math.sin(turn);
      return [r * cos - across * sin, y + r * sin + across * cos, z];
    }).flat(),
  );
}

function rowsOfArm({ rows, columns, points, side }: Arm): number[][] {
  return Array.from({ length: rows }, (_, row) => {
    const ring = Array.from({ length: columns }, (_, k) => {
      // The left arm is the right one in the mirror: turned round, its outside is outside again.
      const column = side === 'right' ? k : columns - 1 - k;
      const at = 3 * (row * columns + column);
      return [...points.subarray(at, at + 3)];
    });
    return ring.flat();
  });
}

/** They lie on the body, on whichever panel: shown with any. Their normals point away from the pole's line. */
function tapeLines({ tapes = [] }: SceneChoices, sheets: readonly Sheet[]): SceneLine[] {
  const panels = sheets.flatMap(({ kind }, number) => (kind === 'panel' ? [number] : []));
  return tapes.map(({ id, points }) => {
    const normals = Float64Array.from(points, (_, i) => {
      const at = i - (i % 3);
      return i % 3 === 2 ? 0 : points[i] / Math.hypot(points[at], points[at + 1]);
    });
    return { id, kind: 'tape', points, normals, sheets: panels };
  });
}
