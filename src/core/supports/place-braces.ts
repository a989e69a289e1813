import type { Issue } from '../base/index.ts';
import { doesLineReach, drawPanelLine, findLine, strapAngle, webAngle } from './inside-lines.ts';
import type { InsideForm, InsideLine, InsideShape, WebPlaces } from './types.ts';

/** A brace and the lines it runs between, before its lengths are known. */
export interface PlacedBrace {
  readonly id: string;
  readonly name: string;
  readonly kind: 'tie' | 'web' | 'strap';
  readonly side: 'right' | 'left' | 'centre';
  readonly from: InsideLine;
  readonly to: InsideLine | 'sleeve';
  /** Direction from the pole in which it pulls at the sleeve. */
  readonly pull: readonly [number, number];
  /** Braces of one group are equally long. */
  readonly group: string;
  /** Only at this level. */
  readonly levelId?: string;
}

const SIDES = ['right', 'left'] as const;
const STRAP_LEVELS = ['hip', 'bust'];
/** Half the height of a strap, mm. */
const STRAP_HALF = 22;

/** Rungs of a strap about its level. */
export function strapRows(v: number): number[] {
  return [-1, -0.5, 0, 0.5, 1].map((t) => v + t * STRAP_HALF);
}

/** Centre ties, one pair of webs and side straps, each on a seam where there is one, else on a line on the panels. */
export function placeBraces(
  form: InsideForm,
  rows: readonly number[],
  places: WebPlaces,
  hasStraps: boolean,
): { braces: PlacedBrace[]; panelLines: InsideShape['panelLines']; issues: Issue[] } {
  const issues: Issue[] = [];
  const panelLines: { id: string; letter: string; name: string; chart: Float64Array }[] = [];
  const drawn = (
    what: Omit<InsideLine, 'seams'>,
    angleAt: (v: number) => number,
    heights: readonly number[] = rows,
  ): InsideLine | null => {
    const letter = form.letterOf(form.letterCount + panelLines.length);
    const line = drawPanelLine(form, what, heights, angleAt, letter);
    if (!line) {
      const message = `The ${what.name} on the ${what.side} leaves the panels, so what is sewn to it is left out. Choose another seam layout, or webs on seams.`;
      issues.push({ code: 'line-leaves-panels', path: 'webPlaces', message, severity: 'error' });
      return null;
    }
    const chart = new Float64Array(2 * heights.length);
    heights.forEach((v, i) => {
      chart.set([line.seams[0].u[i], v], 2 * i);
    });
    panelLines.push({ id: `${what.id}/${what.side}`, letter, name: what.name, chart });
    return line;
  };
  const lineAt = (
    id: string,
    what: Pick<InsideLine, 'name' | 'side' | 'half'>,
    angleAt: (v: number) => number,
    wantsSeam: boolean,
  ): InsideLine | null => {
    const seam = wantsSeam ? findLine(form, id, what.side) : undefined;
    return doesLineReach(seam, rows) ? seam : drawn({ id, ...what }, angleAt);
  };

  const braces: PlacedBrace[] = [];
  const centres = [
    { half: 'front', id: 'centreFront', u: Math.PI / 2, pull: [0, 1] },
    { half: 'back', id: 'centreBack', u: -Math.PI / 2, pull: [0, -1] },
  ] as const;
  for (const { half, id, u, pull } of centres) {
    const what = { name: `centre ${half}`, side: 'centre', half } as const;
    const from = lineAt(id, what, () => u, true);
    if (from)
      braces.push({
        id: `tie-${half}`,
        name: `centre ${half} tie`,
        kind: 'tie',
        side: 'centre',
        from,
        to: 'sleeve',
        pull,
        group: half,
      });
  }
  const isMirrored = form.surface.isMirrorSymmetric;
  for (const side of SIDES) {
    const ends = (['front', 'back'] as const).map((half) =>
      lineAt(
        places === 'seams' ? `princess${half === 'front' ? 'Front' : 'Back'}` : `web-${half}`,
        { name: `web line ${half}`, side, half },
        (v) => webAngle(form, half, side, v),
        places === 'seams',
      ),
    );
    const [from, to] = ends;
    if (from && to)
      braces.push({
        id: `web-${side}`,
        name: `${side} web`,
        kind: 'web',
        side,
        from,
        to,
        pull: [0, 0],
        group: isMirrored ? 'web' : `web ${side}`,
      });
  }
  for (const levelId of hasStraps ? STRAP_LEVELS : []) {
    const level = form.levels.find(({ id }) => id === levelId);
    if (!level) continue;
    for (const side of SIDES) {
      const heights = strapRows(level.v);
      const seam = findLine(form, 'side', side);
      const from =
        places === 'seams' && doesLineReach(seam, heights)
          ? seam
          : drawn(
              { id: `strap-${levelId}`, name: 'strap line', side, half: 'side' },
              (v) => strapAngle(form, levelId, side, v),
              heights,
            );
      if (!from) continue;
      braces.push({
        id: `strap-${levelId}-${side}`,
        name: `${level.name.toLowerCase()} strap ${side}`,
        kind: 'strap',
        side,
        from,
        to: 'sleeve',
        pull: [side === 'right' ? 1 : -1, 0],
        group: isMirrored ? `strap ${levelId}` : `strap ${levelId} ${side}`,
        levelId,
      });
    }
  }
  return { braces, panelLines, issues };
}
