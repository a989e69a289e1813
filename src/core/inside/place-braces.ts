import type { Issue, Phrase } from '../base/index.ts';
import { doesLineReach, drawPanelLine, findLine, strapAngle, webAngle } from './inside-lines.ts';
import { phrase } from './phrases.ts';
import type { BracePlan } from './plan-braces.ts';
import type { InsideForm, InsideLine, InsideShape, WebPlaces } from './types.ts';

/** A brace and the lines it runs between, before its lengths are known. */
export interface PlacedBrace {
  readonly id: string;
  readonly name: Phrase;
  /** Beside its letter, on the sleeve. */
  readonly nameOnSleeve: Phrase;
  readonly kind: 'tie' | 'web' | 'strap';
  readonly side: 'right' | 'left' | 'centre';
  readonly from: InsideLine;
  readonly to: InsideLine | 'sleeve';
  /** Direction from the pole in which it pulls at the sleeve. */
  readonly pull: readonly [number, number];
  /** Where on the sleeve's girth it is sewn, from the closing seam behind towards the wearer's right. */
  readonly sleeveShare?: number;
  /** Braces of one group are equally long. */
  readonly group: string;
  /** Only at this level. */
  readonly levelId?: string;
  /** Rows over those of all braces, up to which it goes on. */
  readonly above?: readonly number[];
}

const SIDES = ['right', 'left'] as const;
/** Half the height of a strap, mm, and how far under its level its middle lies where armholes begin right over it. */
const STRAP_HALF = 20;
const UNDER_ARMHOLE = 14;

/** How far over its level the middle of a strap lies, mm. */
export function shiftOfStrap(levelId: string): number {
  return levelId === 'upperChest' ? -UNDER_ARMHOLE : 0;
}

/** Rungs of a strap about its level, the level among them. */
export function strapRows(form: InsideForm, level: InsideForm['levels'][number]): number[] {
  const middle = level.z + shiftOfStrap(level.id);
  const heights = [-1, -0.5, 0, 0.5, 1].map((t) => middle + t * STRAP_HALF);
  const apart = heights.filter((z) => Math.abs(z - level.z) > 4);
  return [...apart.map((z) => rowAt(form, level.v, z)), level.v].sort((a, b) => a - b);
}

/** A body short or long there has rows nearer or further apart than their chart heights: at most so many times. */
const MOST_SPREAD = 4;

/** Chart height of the row at a height of the side, near a row that is known. Heights rise with the rows: bisection to 0.01 mm. */
function rowAt({ surface }: InsideForm, near: number, z: number): number {
  const reach = MOST_SPREAD * (STRAP_HALF + UNDER_ARMHOLE);
  let [low, high] = [near - reach, near + reach];
  while (high - low > 0.01) {
    const row = (low + high) / 2;
    if (surface.evaluate(Float64Array.of(0, row))[2] < z) low = row;
    else high = row;
  }
  return (low + high) / 2;
}

/**
 * Centre ties, one pair of webs and the plan's straps, each on a seam where there is one, else on a line on the panels. The tie
 * behind goes on over the rows of `nape`, where they can be followed.
 */
export function placeBraces(
  form: InsideForm,
  rows: readonly number[],
  nape: readonly number[],
  places: WebPlaces,
  plan: BracePlan,
): { braces: PlacedBrace[]; panelLines: InsideShape['panelLines']; issues: Issue[] } {
  const pen: LinePen = { form, rows, panelLines: [], issues: [] };
  const braces = [
    ...placeCentreTies(pen, nape),
    ...SIDES.flatMap((side) => placeWeb(pen, places, plan, side)),
    ...form.levels.flatMap((level) => placeStraps(pen, places, plan, level)),
  ];
  return { braces, panelLines: pen.panelLines, issues: pen.issues };
}

/** Draws lines on the panels, and keeps what was drawn and what left them. */
interface LinePen {
  readonly form: InsideForm;
  readonly rows: readonly number[];
  readonly panelLines: { id: string; letter: string; name: Phrase; chart: Float64Array }[];
  readonly issues: Issue[];
}

/** A line on the panels through the angles at these heights, with a letter of its own; null where it leaves them. */
function drawLine(
  { form, rows, panelLines, issues }: LinePen,
  what: Omit<InsideLine, 'seams'>,
  angleAt: (v: number) => number,
  heights: readonly number[] = rows,
): InsideLine | null {
  const letter = form.letterOf(form.letterCount + panelLines.length);
  const line = drawPanelLine(form, what, heights, angleAt, letter);
  if (!line) {
    const message = phrase('inside.line-leaves-panels', { line: what.name, side: what.side });
    issues.push({ code: 'line-leaves-panels', path: 'webPlaces', message, severity: 'error' });
    return null;
  }
  const chart = new Float64Array(2 * heights.length);
  heights.forEach((v, i) => {
    chart.set([line.seams[0].u[i], v], 2 * i);
  });
  panelLines.push({ id: `${what.id}/${what.side}`, letter, name: what.name, chart });
  return line;
}

/** The seam of that id where one is wanted and reaches over all rows, else a line on the panels. */
function seamOrLine(
  pen: LinePen,
  id: string,
  what: Pick<InsideLine, 'name' | 'side' | 'half'>,
  angleAt: (v: number) => number,
  wantsSeam: boolean,
): InsideLine | null {
  const seam = wantsSeam ? findLine(pen.form, id, what.side) : undefined;
  return doesLineReach(seam, pen.rows) ? seam : drawLine(pen, { id, ...what }, angleAt);
}

const CENTRES = [
  { half: 'front', id: 'centreFront', u: Math.PI / 2, pull: [0, 1], sleeveShare: 0.5 },
  { half: 'back', id: 'centreBack', u: -Math.PI / 2, pull: [0, -1], sleeveShare: 0 },
] as const;

function placeCentreTies(pen: LinePen, nape: readonly number[]): PlacedBrace[] {
  return CENTRES.flatMap(({ half, id, u, pull, sleeveShare }): PlacedBrace[] => {
    const what = { name: phrase('brace.centre-line', { half }), side: 'centre', half } as const;
    const above = half === 'back' ? nape : [];
    const higher = { ...pen, rows: [...pen.rows, ...above] };
    const from = seamOrLine(higher, id, what, () => u, true);
    if (!from) return [];
    const name = phrase('brace.tie', { half });
    return [
      {
        id: `tie-${half}`,
        name,
        nameOnSleeve: name,
        kind: 'tie',
        side: 'centre',
        from,
        to: 'sleeve',
        pull,
        sleeveShare,
        group: half,
        ...(above.length > 0 && { above }),
      },
    ];
  });
}

function placeWeb(pen: LinePen, places: WebPlaces, plan: BracePlan, side: 'right' | 'left'): PlacedBrace[] {
  const [from, to] = (['front', 'back'] as const).map((half) =>
    seamOrLine(
      pen,
      places === 'seams' ? `princess${half === 'front' ? 'Front' : 'Back'}` : `web-${half}`,
      { name: phrase('brace.web-line', { half }), side, half },
      (v) => webAngle(pen.form, half, side, v, plan.webShares),
      places === 'seams',
    ),
  );
  if (!from || !to) return [];
  const group = pen.form.surface.isMirrorSymmetric ? 'web' : `web ${side}`;
  const name = phrase('brace.web', { side });
  return [{ id: `web-${side}`, name, nameOnSleeve: name, kind: 'web', side, from, to, pull: [0, 0], group }];
}

function placeStraps(
  pen: LinePen,
  places: WebPlaces,
  plan: BracePlan,
  level: InsideForm['levels'][number],
): PlacedBrace[] {
  const shares = plan.straps[level.id] ?? [];
  return shares.flatMap((share) => {
    const place = placeOfStrap(share, shares.length);
    return SIDES.flatMap((side) => placeStrap(pen, places, level, share, place, side));
  });
}

function placeStrap(
  pen: LinePen,
  places: WebPlaces,
  level: InsideForm['levels'][number],
  share: number,
  place: 'front' | 'back' | undefined,
  side: 'right' | 'left',
): PlacedBrace[] {
  const { form } = pen;
  const { id: levelId } = level;
  const id = place ? `strap-${levelId}-${place}` : `strap-${levelId}`;
  const strap = { level: level.name, ...(place && { place }) };
  const heights = strapRows(form, level);
  const seam = findLine(form, 'side', side);
  const from =
    places === 'seams' && share === 0.5 && doesLineReach(seam, heights)
      ? seam
      : drawLine(
          pen,
          { id, name: phrase('brace.strap-line'), side, half: 'side' },
          (height) => strapAngle(form, share, side, height),
          heights,
        );
  if (!from) return [];
  const isMirrored = form.surface.isMirrorSymmetric;
  return [
    {
      id: `${id}-${side}`,
      name: phrase('brace.strap', { ...strap, side }),
      nameOnSleeve: phrase('brace.strap-alone', strap),
      kind: 'strap',
      side,
      from,
      to: 'sleeve',
      ...onSleeve(share, side),
      group: isMirrored ? `strap ${levelId} ${share}` : `strap ${levelId} ${share} ${side}`,
      levelId,
    },
  ];
}

/** Tells the straps of one level apart. */
function placeOfStrap(share: number, count: number): 'front' | 'back' | undefined {
  if (count === 1) return undefined;
  if (share > 0.55) return 'back';
  return share < 0.47 ? 'front' : undefined;
}

/** The nearest eighth of the sleeve's girth: closer places could not be told apart on it. */
function onSleeve(share: number, side: 'right' | 'left') {
  const right = Math.round(8 * (0.5 * (1 - share))) / 8;
  const angle = Math.PI * (2 * right - 0.5);
  const sign = side === 'right' ? 1 : -1;
  const pull = [sign * Math.cos(angle), Math.sin(angle)] as const;
  return { pull, sleeveShare: side === 'right' ? right : 1 - right };
}
